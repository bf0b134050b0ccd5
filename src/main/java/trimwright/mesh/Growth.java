package trimwright.mesh;

/** How the flat arrays of the readers grow. */
final class Growth {

    /** The longest array that every Java machine can make. */
    private static final int LONGEST = Integer.MAX_VALUE - 8;

    private Growth() {}

    /** The next length after {@code length}, half as long again. */
    static int next(int length) {
        if (length == LONGEST) {
            throw new OutOfMemoryError("array of more than " + LONGEST + " items");
        }
        return (int) Math.min(LONGEST, (long) length + (length >> 1) + 16);
    }
}
