package trimwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.boat.Boat;
import trimwright.file.LoadedBoat;
import trimwright.finding.Finding;
import trimwright.immersion.WaterPlane;
import trimwright.plan.pool.Tolerance;
import trimwright.report.FloatVerdict;
import trimwright.report.picture.BoatPicture;
import trimwright.report.picture.Pictures;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;
import trimwright.statics.FlotationFindings;

/** Where she floats. */
final class FloatCommand extends BoatCommand {

    private static final int PICTURE_WIDTH_PX = 1600;
    private static final double MOST_SEED = 1e9;

    private final OptionSpec picture = option(
            1,
            "--picture",
            "OUT.png",
            Path.class,
            "Draw her as she lies, from the side and from ahead, into a new file.");
    private final OptionSpec overwrite = flag(2, "--overwrite", "Replace that file if it is there.");

    private final OptionSpec tolerance = flag(
            3,
            "--tolerance",
            "Also how far all that may be off, from how far each part may be (plusMinus in the boat file).");
    private final OptionSpec draws =
            number(4, "--draws", "N", "With --tolerance: how many boats are drawn, 100 to 100000. Without it, 2000.");
    private final OptionSpec seed =
            number(5, "--seed", "N", "With --tolerance: a whole number that the draws begin from. Without it, 1.");

    FloatCommand() {
        super(
                "float",
                "Says where the boat floats: draughts, list and trim against her painted line, how firmly she stands,"
                        + " and in which other attitudes she could rest.",
                "Examples:",
                "  trimwright float heron.boat.json",
                "  trimwright float heron.boat.json --water sea --fill mbt=0.5",
                "  trimwright float heron.boat.json --picture heron.png",
                "  trimwright float heron.boat.json --tolerance",
                "  trimwright float heron.boat.json --json",
                "",
                Cautions.HELP);
    }

    @Override
    Answer answer() {
        LoadedBoat loaded = load();
        Flotation flotation = Flotation.of(asToldTo(loaded));
        if (picture.getValue() != null) {
            Pictures.writePng(
                    BoatPicture.draw(scene(flotation), PICTURE_WIDTH_PX), picture.getValue(), isGiven(overwrite));
        }
        List<Finding> findings = Stream.concat(FlotationFindings.of(flotation).stream(), loaded.allFindings().stream())
                .toList();
        return new FloatAnswer(flotation, tolerance(flotation), findings);
    }

    private Optional<Tolerance> tolerance(Flotation flotation) {
        Double many = within(draws, Tolerance.FEWEST_DRAWS, Tolerance.MOST_DRAWS, "boats");
        Double start = within(seed, -MOST_SEED, MOST_SEED, "");
        if (!isGiven(tolerance)) {
            if (many != null || start != null) {
                throw misuse("--draws and --seed go with --tolerance. Add that, or leave them out.");
            }
            return Optional.empty();
        }
        int count = many == null ? Tolerance.USUAL_DRAWS : whole(draws, many);
        long from = start == null ? 1 : whole(seed, start);
        return Optional.of(Tolerance.of(flotation.condition().boat(), count, from));
    }

    private int whole(OptionSpec option, double value) {
        if (value != Math.rint(value)) {
            throw misuse(option.longestName() + " takes a whole number, found " + value + ".");
        }
        return (int) value;
    }

    private static BoatPicture.Scene scene(Flotation flotation) {
        Condition condition = flotation.condition();
        String verdict = FloatVerdict.of(flotation);
        return flotation
                .settled()
                .map(rest -> BoatPicture.Scene.of(condition, rest, verdict))
                .orElseGet(() -> goingDown(condition, verdict));
    }

    /** She goes down in no attitude of rest: upright and just under stands for all of them. */
    private static BoatPicture.Scene goingDown(Condition condition, String verdict) {
        Boat boat = condition.boat();
        WaterPlane level = WaterPlane.level(0);
        return new BoatPicture.Scene(
                boat,
                level.at(condition.topMm(level.up())),
                boat.paintedLine(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                boat.name(),
                verdict);
    }
}
