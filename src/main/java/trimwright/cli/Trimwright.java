package trimwright.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The program as a whole: its commands, and what it says without one. A new command is one class and one line here. */
final class Trimwright implements Runnable {

    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this).name("trimwright");

    private Trimwright() {
        List<AbstractCommand> commands = List.of(
                new InspectCommand(),
                new FloatCommand(),
                new WaterlinesCommand(),
                new DiveCommand(),
                new RightingCommand(),
                new BallastCommand(),
                new SeatCommand(),
                new CompletionCommand());
        AbstractCommand.addHelp(spec);
        spec.usageMessage()
                .width(Page.WIDTH)
                .header("Says where a model hull will float before it gets wet, and how much lead and foam goes where.")
                .synopsisSubcommandLabel("COMMAND")
                .optionListHeading("%nOptions:%n")
                .commandListHeading("%nCommands:%n")
                .footer(
                        "",
                        "Exit codes: 0 done, 1 the answer is \"no\", 2 the input cannot be used.",
                        "Help with a command: trimwright COMMAND --help",
                        "",
                        Cautions.HELP);
        for (AbstractCommand command : commands) {
            spec.addSubcommand(command.spec().name(), command.spec());
        }
    }

    /** The whole tree of commands. */
    static CommandLine commandLine() {
        return new CommandLine(new Trimwright().spec)
                .setParameterExceptionHandler(Failures::misused)
                .setExecutionExceptionHandler(Failures::failed);
    }

    @Override
    public void run() {
        CommandLine line = spec.commandLine();
        line.usage(line.getOut());
    }
}
