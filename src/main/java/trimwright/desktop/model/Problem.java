package trimwright.desktop.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.finding.UnusableInputException;
import trimwright.report.Wording;

/**
 * Something that could not be done.
 *
 * @param title what could not be done
 * @param lines why, and what to do
 * @param unexpected the fault, where it is one of the program and not of the input
 */
public record Problem(String title, List<String> lines, Optional<Throwable> unexpected) {

    private static final int MOST_LINES = 12;

    public Problem {
        lines = List.copyOf(lines);
    }

    /** From whatever went wrong. */
    public static Problem of(String title, Throwable e) {
        if (e instanceof UnusableInputException unusable) {
            List<String> all = unusable.findings().stream().map(Wording::of).toList();
            return new Problem(title, all.size() > MOST_LINES ? shortened(all) : all, Optional.empty());
        }
        if (e instanceof OutOfMemoryError) {
            return new Problem(
                    title,
                    List.of("The memory that Java may use, "
                            + (Runtime.getRuntime().maxMemory() >> 20)
                            + " MiB, is not enough. Give it more, as in java -Xmx4g -jar trimwright.jar."),
                    Optional.empty());
        }
        return new Problem(
                title,
                List.of("The program failed, which it should not: "
                        + e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ", " + e.getMessage()) + "."),
                Optional.of(e));
    }

    private static List<String> shortened(List<String> all) {
        List<String> some = new ArrayList<>(all.subList(0, MOST_LINES));
        some.add("… and " + (all.size() - MOST_LINES) + " more.");
        return some;
    }
}
