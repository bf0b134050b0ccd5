package trimwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The window; where there is no display, what it would show as text. */
final class ViewCommand extends AbstractCommand {

    /** What stands for the window in a terminal, in this order. */
    private static final List<String> AS_TEXT = List.of("float", "dive", "ballast");

    private final WindowDoor door;
    private final PositionalParamSpec file;

    ViewCommand(WindowDoor door) {
        super(
                "view",
                "Opens the window on a boat, or on the mesh of a new hull; on the sample boat when no file is named. Where there"
                        + " is no display, says so and tells about the boat as text.",
                "Examples:",
                "  trimwright view",
                "  trimwright view heron.boat.json",
                "  trimwright view my-hull.stl",
                "",
                Cautions.HELP);
        this.door = door;
        file = PositionalParamSpec.builder()
                .paramLabel("FILE")
                .type(Path.class)
                .converters(new FileName())
                .arity("0..1")
                .description("A boat file, or the mesh of a hull. Without it, the sample boat.")
                .build();
        spec().addPositional(file);
    }

    @Override
    public Integer call() {
        Path told = file.getValue();
        Path shown = told == null ? SampleBoat.path() : told;
        Optional<String> reason = door.open(shown, told == null);
        return reason.map(why -> asText(why, shown)).orElse(ExitCode.DONE);
    }

    private int asText(String why, Path shown) {
        CommandLine own = spec().commandLine();
        PrintWriter out = own.getOut();
        out.println("There is no window here (" + why + "); " + shown + " as text instead.");
        Map<String, CommandLine> commands = own.getParent().getSubcommands();
        int first = ExitCode.DONE;
        for (String name : AS_TEXT) {
            CommandLine command = commands.get(name);
            if (command != null && first != ExitCode.UNUSABLE) {
                out.println();
                out.println("== " + name);
                out.println();
                // A boat without a tank or a painted line has no dive or no plan, which is nothing wrong with viewing
                // her.
                int code = command.execute(shown.toString());
                first = name.equals(AS_TEXT.get(0)) ? code : first;
            }
        }
        return first;
    }
}
