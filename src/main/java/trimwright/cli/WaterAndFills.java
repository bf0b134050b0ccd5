package trimwright.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.boat.Boat;
import trimwright.file.Overrides;

/** The options that put a boat into other water or fill her tanks otherwise than her file says. */
final class WaterAndFills {

    private final OptionSpec water;
    private final OptionSpec fills;

    /** Declares the options on a command. */
    WaterAndFills(AbstractCommand command) {
        water = command.option(
                80,
                "--water",
                "fresh|sea|DENSITY",
                String.class,
                "Other water than the file's: fresh or sea at the file's temperature, or a density in g/cm³.");
        fills = command.add(OptionSpec.builder("--fill")
                .order(81)
                .paramLabel("ID=F")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("How full a tank is, by its id, from 0 to 1. May be repeated."));
    }

    /** Whether any of them is given. */
    boolean areGiven() {
        return water.getValue() != null || fills.getValue() != null;
    }

    /** The fills, as they were typed. */
    List<String> fillsTold() {
        List<String> told = fills.getValue();
        return told == null ? List.of() : told;
    }

    /**
     * The boat in the water and with the fills of the command line.
     *
     * @throws trimwright.finding.UnusableInputException with everything that is wrong about those
     */
    Boat applyTo(Boat boat) {
        return Overrides.apply(boat, Optional.ofNullable(water.getValue()), fillsTold());
    }
}
