package trimwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trimwright.finding.Finding;
import trimwright.finding.Severity;
import trimwright.report.Wording;

/**
 * A command that answers in text or, with {@code --json}, in one JSON object. The answer is complete before its first letter is
 * printed, so a failure leaves standard output empty.
 */
@Command(
        sortOptions = false,
        parameterListHeading = "%n",
        optionListHeading = "%nOptions:%n",
        descriptionHeading = "%n",
        synopsisHeading = "Usage: ")
abstract class AnsweringCommand implements Callable<Integer> {

    @Option(names = "--json", order = 90, description = "Print one JSON object instead of text.")
    private boolean asJson;

    @Option(
            names = "--stack-trace",
            order = 91,
            description = "If the program itself fails, print where, for a report to its authors.")
    private boolean stackTrace;

    @Option(
            names = {"-h", "--help"},
            order = 92,
            usageHelp = true,
            description = "Show this help.")
    private boolean help;

    @Spec
    private CommandSpec spec;

    /** Works the answer out. */
    abstract Answer answer();

    @Override
    public final Integer call() {
        Answer answer = answer();
        PrintWriter out = spec.commandLine().getOut();
        if (asJson) {
            out.print(json(answer).render());
            warn(answer.findings());
        } else {
            out.print(text(answer));
        }
        return answer.exitCode();
    }

    boolean wantsStackTrace() {
        return stackTrace;
    }

    CommandSpec spec() {
        return spec;
    }

    private static JsonObject json(Answer answer) {
        return answer.json().list("findings", FindingJson.of(answer.findings()));
    }

    private static String text(Answer answer) {
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
        PrintWriter err = spec.commandLine().getErr();
        findings.stream().filter(f -> f.severity() != Severity.NOTE).forEach(f -> err.println(Wording.line(f)));
    }
}
