package trimwright.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints the script that lets a shell complete commands and options. */
@Command(
        name = "completion",
        description = "Prints a script that lets bash or zsh complete commands and options.",
        footer = {
            "",
            "Examples:",
            "  source <(trimwright completion)",
            "  trimwright completion > ~/.trimwright-completion"
        })
final class CompletionCommand implements Callable<Integer> {

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    private boolean help;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        String script = AutoComplete.bash("trimwright", spec.parent().commandLine());
        spec.commandLine().getOut().print(script);
        return ExitCode.DONE;
    }
}
