package trimwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import trimwright.boat.Boat;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.file.Overrides;

/** A command about one boat, in her own water and with her own fills or in others. */
abstract class BoatCommand extends AnsweringCommand {

    private final PositionalParamSpec file = file("BOAT", "The boat file, as in heron.boat.json.");
    private final OptionSpec water = option(
            80,
            "--water",
            "fresh|sea|DENSITY",
            String.class,
            "Other water than the file's: fresh or sea at the file's temperature, or a density in g/cm³.");
    private final OptionSpec fills = add(OptionSpec.builder("--fill")
            .order(81)
            .paramLabel("ID=F")
            .type(List.class)
            .auxiliaryTypes(String.class)
            .description("How full a tank is, by its id, from 0 to 1. May be repeated."));

    BoatCommand(String name, String description, String... footer) {
        super(name, description, footer);
    }

    /**
     * The boat as her file states her.
     *
     * @throws trimwright.finding.UnusableInputException with every error in the file
     */
    LoadedBoat load() {
        return BoatFile.read(file.<Path>getValue());
    }

    /**
     * The boat in the water and with the fills of the command line.
     *
     * @throws trimwright.finding.UnusableInputException with everything that is wrong about those
     */
    Boat asToldTo(LoadedBoat loaded) {
        List<String> told = fills.getValue();
        return Overrides.apply(loaded.boat(), Optional.ofNullable(water.getValue()), told == null ? List.of() : told);
    }
}
