package trimwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The program as a whole: its commands, and the window without one. A new command is one class and one line here. */
final class Trimwright implements Callable<Integer> {

    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this).name("trimwright");

    private Trimwright(WindowDoor door) {
        List<AbstractCommand> commands = List.of(
                new InspectCommand(),
                new FloatCommand(),
                new WaterlinesCommand(),
                new DiveCommand(),
                new RightingCommand(),
                new BallastCommand(),
                new SeatCommand(),
                new PoolCommand(),
                new SheetCommand(),
                new ViewCommand(door),
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
                        "Without a command the window opens.",
                        "",
                        Cautions.HELP);
        for (AbstractCommand command : commands) {
            spec.addSubcommand(command.spec().name(), command.spec());
        }
    }

    /** The whole tree of commands. */
    static CommandLine commandLine() {
        return commandLine(WindowDoor::reflective);
    }

    /** The same with another way to the window. */
    static CommandLine commandLine(WindowDoor door) {
        return new CommandLine(new Trimwright(door).spec)
                .setParameterExceptionHandler(Failures::misused)
                .setExecutionExceptionHandler(Failures::failed);
    }

    /** Without a command: the window. */
    @Override
    public Integer call() {
        return spec.commandLine().getSubcommands().get("view").execute();
    }
}
