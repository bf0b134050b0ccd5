package trimwright.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;

/** A command about one boat. */
abstract class BoatCommand extends AnsweringCommand {

    @Parameters(paramLabel = "BOAT", description = "The boat file, as in heron.boat.json.")
    private Path file;

    /**
     * The boat as the file states her.
     *
     * @throws trimwright.finding.UnusableInputException with every error in the file
     */
    LoadedBoat load() {
        return BoatFile.read(file);
    }
}
