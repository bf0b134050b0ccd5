package trimwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.boat.Boat;
import trimwright.file.LoadedBoat;
import trimwright.finding.Finding;
import trimwright.report.RightingPlot;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;
import trimwright.statics.FlotationFindings;
import trimwright.statics.RightingCurve;
import trimwright.statics.RollPeriod;
import trimwright.statics.Steadiness;
import trimwright.statics.SteadyHeel;

/** The righting lever over the list. */
final class RightingCommand extends BoatCommand {

    private static final double USUAL_STEP_DEG = 5;
    private static final double FINEST_DEG = 0.1;
    private static final double COARSEST_DEG = 45;
    private static final double MOST_GMM = 1e9;

    private final OptionSpec step = number(10, "--step", "DEG", "Step of the list, 0.1 to 45 degrees. Without it, 5.");
    private final OptionSpec torque = number(
            11,
            "--torque",
            "GMM",
            "Also the list under a steady moment, such as that of the propeller, in g·mm; positive to starboard.");
    private final OptionSpec shift = number(
            12,
            "--shift",
            "GMM",
            "Also the list with a weight moved across: its mass in g times its way in mm; positive to starboard.");
    private final PlotOptions plot = new PlotOptions(this, "Draw the levers, surfaced and dived, over the list.");

    RightingCommand() {
        super(
                "righting",
                "Says what brings the boat back from a list: the righting lever surfaced, with the fills at hand, and dived; how far"
                        + " it reaches, how firm she stands, and how long a roll takes.",
                "Examples:",
                "  trimwright righting heron.boat.json",
                "  trimwright righting heron.boat.json --step 2 --fill mbt=0.5 --plot levers.svg",
                "  trimwright righting heron.boat.json --torque 300",
                "  trimwright righting heron.boat.json --shift 500 --json",
                "",
                Cautions.HELP);
    }

    @Override
    Answer answer() {
        Double stepDeg = within(step, FINEST_DEG, COARSEST_DEG, "degrees");
        Double torqueGmm = within(torque, -MOST_GMM, MOST_GMM, "g·mm");
        Double shiftGmm = within(shift, -MOST_GMM, MOST_GMM, "g·mm");
        LoadedBoat loaded = load();
        Boat boat = asToldTo(loaded);
        Condition condition = Condition.of(boat);
        double everyDeg = stepDeg == null ? USUAL_STEP_DEG : stepDeg;
        Optional<RightingCurve> surfaced = RightingCurve.surfaced(condition, everyDeg);
        if (surfaced.isEmpty()) {
            Flotation sinking = Flotation.of(condition);
            List<Finding> sunk = new ArrayList<>(FlotationFindings.of(sinking));
            plot.write(Optional.empty()).ifPresent(sunk::add);
            sunk.addAll(loaded.allFindings());
            return new FloatAnswer(sinking, sunk);
        }
        RightingCurve submerged = RightingCurve.submerged(condition, everyDeg);
        List<Finding> findings = new ArrayList<>(surfaced.get().findings());
        plot.write(RightingPlot.of(boat.name(), surfaced.get(), submerged)).ifPresent(findings::add);
        findings.addAll(loaded.allFindings());
        return new RightingAnswer(
                condition,
                surfaced.get(),
                submerged,
                Steadiness.afloat(condition),
                RollPeriod.afloat(condition),
                Optional.ofNullable(torqueGmm)
                        .map(t -> new RightingAnswer.Leaning(t, SteadyHeel.underTorque(condition, t))),
                Optional.ofNullable(shiftGmm)
                        .map(t -> new RightingAnswer.Leaning(t, SteadyHeel.withWeightMoved(condition, t, 1))),
                findings);
    }
}
