package trimwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.file.BoatAhead;

/** The program as a whole: its commands, and the window without one. A new command is one class, and a name and a line here. */
final class Trimwright implements Callable<Integer> {

    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this).name("trimwright");

    private static final String COMPLETION = "completion";
    private static final String VIEW = "view";

    /** Commands that speak of others, or run them. */
    private static final Set<String> NEED_OTHERS = Set.of(COMPLETION, VIEW);

    /** All commands in the order of the help. */
    private static final List<String> NAMES = List.of(
            "inspect", "float", "waterlines", "dive", "righting", "ballast", "seat", "pool", "sheet", VIEW, COMPLETION);

    private Trimwright(WindowDoor door, List<String> names, Optional<BoatAhead> ahead) {
        AbstractCommand.addHelp(spec);
        spec.version("Trimwright " + version())
                .addOption(OptionSpec.builder("--version")
                        .order(98)
                        .versionHelp(true)
                        .description("Say which version this is.")
                        .build());
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
        for (String name : names) {
            AbstractCommand command = command(name, door);
            if (command instanceof BoatCommand boatCommand) {
                boatCommand.useAhead(ahead);
            }
            spec.addSubcommand(name, command.spec());
        }
    }

    /** As the jar states it. */
    private static String version() {
        String stated = Trimwright.class.getPackage().getImplementationVersion();
        return stated == null ? "(not packaged)" : stated;
    }

    private static AbstractCommand command(String name, WindowDoor door) {
        return switch (name) {
            case "inspect" -> new InspectCommand();
            case "float" -> new FloatCommand();
            case "waterlines" -> new WaterlinesCommand();
            case "dive" -> new DiveCommand();
            case "righting" -> new RightingCommand();
            case "ballast" -> new BallastCommand();
            case "seat" -> new SeatCommand();
            case "pool" -> new PoolCommand();
            case "sheet" -> new SheetCommand();
            case VIEW -> new ViewCommand(door);
            case COMPLETION -> new CompletionCommand();
            default -> throw new IllegalArgumentException(name);
        };
    }

    /** The whole tree of commands. */
    static CommandLine commandLine() {
        return commandLine(WindowDoor::reflective);
    }

    /** The same with another way to the window. */
    static CommandLine commandLine(WindowDoor door) {
        return commandLine(door, NAMES, Optional.empty());
    }

    /** As much of the tree as these arguments ask for: a command that is named needs no other, and the start of the program is short. */
    static CommandLine commandLine(String... args) {
        boolean one = args.length > 0 && NAMES.contains(args[0]) && !NEED_OTHERS.contains(args[0]);
        return commandLine(
                WindowDoor::reflective, one ? List.of(args[0]) : NAMES, one ? ahead(args) : Optional.empty());
    }

    /** The boat that the word behind the command names; "inspect" reads her in a way of its own, and would have her twice. */
    private static Optional<BoatAhead> ahead(String... args) {
        boolean named = args.length > 1 && args[1].endsWith(".boat.json") && !args[0].equals("inspect");
        return named ? Optional.of(BoatAhead.of(args[1])) : Optional.empty();
    }

    private static CommandLine commandLine(WindowDoor door, List<String> names, Optional<BoatAhead> ahead) {
        return new CommandLine(new Trimwright(door, names, ahead).spec)
                // A word that begins with @ is a name like any other.
                .setExpandAtFiles(false)
                .setParameterExceptionHandler(Failures::misused)
                .setExecutionExceptionHandler(Failures::failed);
    }

    /** Without a command: the window. */
    @Override
    public Integer call() {
        return spec.commandLine().getSubcommands().get(VIEW).execute();
    }
}
