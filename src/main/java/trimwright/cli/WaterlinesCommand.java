package trimwright.cli;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.file.LoadedBoat;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Waterline;

/** What is immersed at each of a row of trial waterlines. */
final class WaterlinesCommand extends BoatCommand {

    private static final double FURTHEST_MM = 1e6;

    private final OptionSpec from = number(1, "--from", "MM", "Lowest waterline, mm.");
    private final OptionSpec to = number(2, "--to", "MM", "Highest waterline, mm.");
    private final OptionSpec step = number(3, "--step", "MM", "From one waterline to the next, mm.");
    private final OptionSpec list =
            number(4, "--list", "DEG", "List in degrees, to starboard; negative to port. Without it, 0.");
    private final OptionSpec trim =
            number(5, "--trim", "DEG", "Trim in degrees, bow up; negative bow down. Without it, 0.");

    WaterlinesCommand() {
        super(
                "waterlines",
                "A table over trial waterlines, whatever the boat weighs: what is immersed at each.",
                "Heights are measured from the boat's origin, straight up as she lies at the given list and trim. Without"
                        + " --from, --to and --step the table runs over the whole boat in about 20 rows.",
                "",
                "Examples:",
                "  trimwright waterlines heron.boat.json",
                "  trimwright waterlines heron.boat.json --from 60 --to 110 --step 2.5",
                "  trimwright waterlines heron.boat.json --list -5 --trim 1.5 --json");
    }

    @Override
    Answer answer() {
        Heights heights = new Heights(
                within(from, -FURTHEST_MM, FURTHEST_MM, "mm"),
                within(to, -FURTHEST_MM, FURTHEST_MM, "mm"),
                step.getValue());
        double listDeg = orZero(within(list, -180, 180, "degrees"));
        double trimDeg = orZero(within(trim, -90, 90, "degrees"));
        LoadedBoat loaded = load();
        Condition condition = Condition.of(asToldTo(loaded));
        Vector3D up = Equilibrium.up(listDeg, trimDeg);
        List<Double> heightsMm;
        try {
            heightsMm = heights.over(condition.bottomMm(up), condition.topMm(up));
        } catch (IllegalArgumentException e) {
            throw misuse(e.getMessage());
        }
        List<Waterline> table = Waterline.table(condition, WaterPlane.of(up, 0), heightsMm);
        return new WaterlinesAnswer(condition.boat(), loaded.allFindings(), listDeg, trimDeg, table);
    }

    private static double orZero(Double value) {
        return value == null ? 0 : value;
    }
}
