package trimwright.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.finding.Finding;
import trimwright.finding.Severity;
import trimwright.report.Wording;

/**
 * A command that answers in text or, with {@code --json}, in one JSON object. The answer is complete before its first letter is
 * printed, so a failure leaves standard output empty.
 */
abstract class AnsweringCommand extends AbstractCommand {

    private final OptionSpec json = flag(90, "--json", "Print one JSON object instead of text.");
    private final OptionSpec stackTrace =
            flag(91, "--stack-trace", "If the program itself fails, print where, for a report to its authors.");

    AnsweringCommand(String name, String description, String... footer) {
        super(name, description, footer);
    }

    /** Works the answer out. */
    abstract Answer answer();

    @Override
    public final Integer call() {
        Answer answer = answer();
        PrintWriter out = spec().commandLine().getOut();
        if (isGiven(json)) {
            out.print(json(answer).render());
            warn(answer.findings());
        } else {
            out.print(text(answer));
        }
        return answer.exitCode();
    }

    boolean wantsStackTrace() {
        return isGiven(stackTrace);
    }

    private static JsonObject json(Answer answer) {
        return answer.json().list("findings", FindingJson.of(answer.findings()));
    }

    static String text(Answer answer) {
        Page page = new Page();
        answer.tell(page);
        if (!answer.findings().isEmpty()) {
            page.heading("What to look at");
            answer.findings().forEach(f -> page.point(Wording.of(f)));
        }
        if (!answer.caution().isEmpty()) {
            page.gap().paragraph(answer.caution());
        }
        return page.toString();
    }

    private void warn(List<Finding> findings) {
        PrintWriter err = spec().commandLine().getErr();
        for (Finding finding : findings) {
            if (finding.severity() != Severity.NOTE) {
                err.println(Wording.line(finding));
            }
        }
    }
}
