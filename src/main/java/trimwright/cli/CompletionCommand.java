package trimwright.cli;

import picocli.AutoComplete;

/** Prints the script that lets a shell complete commands and options. */
final class CompletionCommand extends AbstractCommand {

    CompletionCommand() {
        super(
                "completion",
                "Prints a script that lets bash or zsh complete commands and options.",
                "The program must be known to the shell by the name trimwright, as in",
                "  alias trimwright='java -jar /path/to/trimwright.jar'",
                "",
                "Examples:",
                "  source <(trimwright completion)",
                "  trimwright completion > ~/.trimwright-completion");
    }

    @Override
    public Integer call() {
        String script = AutoComplete.bash("trimwright", spec().parent().commandLine());
        spec().commandLine().getOut().print(script);
        return ExitCode.DONE;
    }
}
