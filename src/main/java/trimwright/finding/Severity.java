package trimwright.finding;

/** How much a finding matters. */
public enum Severity {
    /** Worth knowing; nothing needs to be done. */
    NOTE,
    /** The result stands, but may not be what the user means. */
    WARNING,
    /** The input cannot be used as it is. */
    ERROR
}
