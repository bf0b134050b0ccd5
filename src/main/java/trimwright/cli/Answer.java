package trimwright.cli;

import java.util.List;
import trimwright.finding.Finding;

/** What a command found out, ready to be said either way. */
interface Answer {

    /** One of {@link ExitCode}. */
    int exitCode();

    /** Everything worth telling besides the numbers; goes into both outputs. */
    List<Finding> findings();

    /** Writes the answer for a person, without the findings. */
    void tell(Page page);

    /** What can hurt when the answer is acted on, for the end of the text; empty for nothing. */
    default String caution() {
        return "";
    }

    /** The answer for a script, without the findings. */
    JsonObject json();
}
