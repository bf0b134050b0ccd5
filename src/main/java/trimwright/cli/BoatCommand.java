package trimwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import trimwright.boat.Boat;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.file.Overrides;

/** A command about one boat, in her own water and with her own fills or in others. */
abstract class BoatCommand extends AnsweringCommand {

    @Parameters(paramLabel = "BOAT", description = "The boat file, as in heron.boat.json.")
    private Path file;

    @Option(
            names = "--water",
            order = 80,
            paramLabel = "fresh|sea|DENSITY",
            description = "Other water than the file's: fresh or sea at the file's temperature, or a density in g/cm³.")
    private String water;

    @Option(
            names = "--fill",
            order = 81,
            paramLabel = "ID=F",
            description = "How full a tank is, by its id, from 0 to 1. May be repeated.")
    private List<String> fills = List.of();

    /**
     * The boat as her file states her.
     *
     * @throws trimwright.finding.UnusableInputException with every error in the file
     */
    LoadedBoat load() {
        return BoatFile.read(file);
    }

    /**
     * The boat in the water and with the fills of the command line.
     *
     * @throws trimwright.finding.UnusableInputException with everything that is wrong about those
     */
    Boat asToldTo(LoadedBoat loaded) {
        return Overrides.apply(loaded.boat(), Optional.ofNullable(water), fills);
    }
}
