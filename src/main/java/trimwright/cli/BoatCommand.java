package trimwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.PositionalParamSpec;
import trimwright.boat.Boat;
import trimwright.file.BoatAhead;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;

/** A command about one boat, in her own water and with her own fills or in others. */
abstract class BoatCommand extends AnsweringCommand {

    private final PositionalParamSpec file = file("BOAT", "The boat file, as in heron.boat.json.");
    private final WaterAndFills waterAndFills = new WaterAndFills(this);
    private Optional<BoatAhead> ahead = Optional.empty();

    BoatCommand(String name, String description, String... footer) {
        super(name, description, footer);
    }

    /** Says what may have been read before the command line was understood. */
    void useAhead(Optional<BoatAhead> boat) {
        ahead = boat;
    }

    /**
     * The boat as her file states her.
     *
     * @throws trimwright.finding.UnusableInputException with every error in the file
     */
    LoadedBoat load() {
        Path path = file.getValue();
        return ahead.filter(boat -> boat.isOf(path)).map(BoatAhead::call).orElseGet(() -> BoatFile.read(path));
    }

    /** The fills of the command line, as they were typed. */
    List<String> fillsTold() {
        return waterAndFills.fillsTold();
    }

    /**
     * The boat in the water and with the fills of the command line.
     *
     * @throws trimwright.finding.UnusableInputException with everything that is wrong about those
     */
    Boat asToldTo(LoadedBoat loaded) {
        return waterAndFills.applyTo(loaded.boat());
    }
}
