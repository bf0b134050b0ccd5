package trimwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The program without a command: says what commands there are. A new command is one class and one line here. */
@Command(
        name = "trimwright",
        header = "Says where a model hull will float before it gets wet, and how much lead and foam goes where.",
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Exit codes: 0 done, 1 the answer is \"no\", 2 the input cannot be used.",
            "Help with a command: trimwright COMMAND --help",
            "",
            Cautions.HELP
        },
        subcommands = {FloatCommand.class, WaterlinesCommand.class, CompletionCommand.class})
final class Trimwright implements Runnable {

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    private boolean help;

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        CommandLine line = spec.commandLine();
        line.usage(line.getOut());
    }
}
