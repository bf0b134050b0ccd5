package trimwright.finding;

/**
 * Every kind of finding that the program can make, with its usual severity. The name of the code is what scripts see;
 * its wording lives in {@code trimwright.report.Wording}.
 */
public enum Code {
    // Files
    /** There is no file of that name. */
    FILE_MISSING(Severity.ERROR),
    /** The name is that of a directory. */
    FILE_IS_DIRECTORY(Severity.ERROR),
    /** The file cannot be read; {@code reason}. */
    FILE_UNREADABLE(Severity.ERROR),
    /** The file holds nothing. */
    FILE_EMPTY(Severity.ERROR);

    private final Severity severity;

    Code(Severity severity) {
        this.severity = severity;
    }

    public Severity severity() {
        return severity;
    }
}
