package trimwright.finding;

/** Where a finding sits, so that a person can go there: a place in a file, on a mesh, or in a boat. */
public sealed interface Place {

    /** Nowhere in particular: the finding is about the whole. */
    record Whole() implements Place {}

    /** A file as a whole. */
    record InFile(String file) implements Place {}

    /**
     * A value in a JSON file.
     *
     * @param pointer JSON pointer (RFC 6901); the empty string is the whole document
     */
    record InDocument(String file, String pointer) implements Place {}

    /**
     * An option of the command line.
     *
     * @param option its name, as in {@code --water}
     */
    record AtOption(String option) implements Place {}

    /** A line of a text file, counted from 1. */
    record AtLine(String file, long line) implements Place {}

    /** A byte of a binary file, counted from 0. */
    record AtByte(String file, long offset) implements Place {}

    /** A triangle of a mesh, counted from 0 in the order of the file, and its centroid in mm. */
    record AtTriangle(long triangle, double xMm, double yMm, double zMm) implements Place {}

    /** An edge of a mesh by its end points in mm. */
    record AtEdge(double x0Mm, double y0Mm, double z0Mm, double x1Mm, double y1Mm, double z1Mm) implements Place {}

    /** A point in mm. */
    record AtPoint(double xMm, double yMm, double zMm) implements Place {}

    /** A shell of a mesh, by its number counted from 1 in the order of {@code inspect}. */
    record OnShell(int shell) implements Place {}

    /** A part of the boat by its id. */
    record OnPart(String part) implements Place {}

    /** Two parts of the boat by their ids. */
    record BetweenParts(String part, String other) implements Place {}

    /** A zone of the boat by its id. */
    record InZone(String zone) implements Place {}
}
