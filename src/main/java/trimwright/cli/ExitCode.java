package trimwright.cli;

/** How a command ends, for scripts. */
final class ExitCode {

    /** Done, and the answer is not "no". */
    static final int DONE = 0;
    /** The answer is "no": she sinks, there is no plan, it does not fit, it is not sound. */
    static final int NO = 1;
    /** The input cannot be used, or the program failed. */
    static final int UNUSABLE = 2;

    private ExitCode() {}
}
