package trimwright.finding;

import java.util.List;

/**
 * The input cannot be used. Carries every finding that was made before giving up, not only the first; the edge of the
 * program words them and ends with exit code 2.
 */
public final class UnusableInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Finding> findings;

    public UnusableInputException(List<Finding> findings) {
        super(findings.toString());
        this.findings = List.copyOf(findings);
    }

    public UnusableInputException(Finding finding) {
        this(List.of(finding));
    }

    public List<Finding> findings() {
        return findings;
    }
}
