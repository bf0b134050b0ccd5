package trimwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import trimwright.file.LoadedBoat;
import trimwright.immersion.WaterPlane;
import trimwright.report.Numbers;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Waterline;

/** What is immersed at each of a row of trial waterlines. */
@Command(
        name = "waterlines",
        description = "A table over trial waterlines, whatever the boat weighs: what is immersed at each.",
        footer = {
            "",
            "Heights are measured from the boat's origin, straight up as she lies at the given list and trim. Without"
                    + " --from, --to and --step the table runs over the whole boat in about 20 rows.",
            "",
            "Examples:",
            "  trimwright waterlines heron.boat.json",
            "  trimwright waterlines heron.boat.json --from 60 --to 110 --step 2.5",
            "  trimwright waterlines heron.boat.json --list -5 --trim 1.5 --json"
        })
final class WaterlinesCommand extends BoatCommand {

    private static final int USUAL_ROWS = 20;
    private static final int MOST_ROWS = 10_000;

    @Option(names = "--from", paramLabel = "MM", description = "Lowest waterline, mm.")
    private Double fromMm;

    @Option(names = "--to", paramLabel = "MM", description = "Highest waterline, mm.")
    private Double toMm;

    @Option(names = "--step", paramLabel = "MM", description = "From one waterline to the next, mm.")
    private Double stepMm;

    @Option(
            names = "--list",
            paramLabel = "DEG",
            defaultValue = "0",
            description = "List in degrees, to starboard; negative to port.")
    private double listDeg;

    @Option(
            names = "--trim",
            paramLabel = "DEG",
            defaultValue = "0",
            description = "Trim in degrees, bow up; negative bow down.")
    private double trimDeg;

    @Override
    Answer answer() {
        within("--list", listDeg, -180, 180);
        within("--trim", trimDeg, -90, 90);
        LoadedBoat loaded = load();
        Condition condition = Condition.of(asToldTo(loaded));
        Vector3D up = Equilibrium.up(listDeg, trimDeg);
        List<Double> heights = heights(condition.bottomMm(up), condition.topMm(up));
        List<Waterline> table = Waterline.table(condition, WaterPlane.of(up, 0), heights);
        return new WaterlinesAnswer(condition.boat(), loaded.findings(), listDeg, trimDeg, table);
    }

    /** Multiples of the step where the user gave no start, so that heights are round. */
    private List<Double> heights(double bottomMm, double topMm) {
        double span = (toMm == null ? topMm : toMm) - (fromMm == null ? bottomMm : fromMm);
        if (span < 0) {
            String from = fromMm == null
                    ? "the boat's lowest point at " + Numbers.mm(bottomMm)
                    : "--from " + Numbers.plain(fromMm);
            String to =
                    toMm == null ? "the boat's highest point at " + Numbers.mm(topMm) : "--to " + Numbers.plain(toMm);
            throw misuse("the lowest waterline lies above the highest: " + from + ", " + to + ".");
        }
        double step = stepMm == null ? roundStep(span / USUAL_ROWS) : stepMm;
        if (!(step > 0)) {
            throw misuse("--step must be above 0 mm, found " + Numbers.plain(step) + ".");
        }
        double from = fromMm == null ? step * Math.floor(bottomMm / step) : fromMm;
        double to = toMm == null ? step * Math.ceil(topMm / step) : toMm;
        double rows = Math.floor((to - from) / step * (1 + 1e-12)) + 1;
        if (rows > MOST_ROWS) {
            throw misuse("--step " + Numbers.plain(step) + " gives " + Numbers.plain(rows) + " rows, and at most "
                    + MOST_ROWS + " are printed; take a step of at least "
                    + Numbers.plain((to - from) / (MOST_ROWS - 1)) + " mm.");
        }
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            heights.add(from + i * step);
        }
        return heights;
    }

    /** 1, 2 or 5 times a power of ten, nearest above. */
    private static double roundStep(double least) {
        if (!(least > 0)) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double factor : new double[] {1, 2, 5}) {
            if (least <= factor * power) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    private void within(String option, double value, double least, double greatest) {
        if (!(value >= least && value <= greatest)) {
            throw misuse(option + " takes " + Numbers.plain(least) + " to " + Numbers.plain(greatest)
                    + " degrees, found " + Numbers.plain(value) + ".");
        }
    }

    private ParameterException misuse(String message) {
        return new ParameterException(spec().commandLine(), message);
    }
}
