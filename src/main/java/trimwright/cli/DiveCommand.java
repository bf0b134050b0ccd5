package trimwright.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.boat.Boat;
import trimwright.boat.DivePlan;
import trimwright.boat.FitCheck;
import trimwright.file.LoadedBoat;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.report.DivePlot;
import trimwright.statics.Condition;
import trimwright.statics.DiveRun;
import trimwright.statics.SurfacingRun;

/** Filling the tanks step by step. */
final class DiveCommand extends BoatCommand {

    private static final int USUAL_STEPS = 20;
    private static final int MOST_STEPS = 1000;
    private static final double DEEPEST_M = 30;
    private static final double USUAL_DEPTH_M = 5;

    private final OptionSpec steps = number(
            10,
            "--steps",
            "N",
            "Number of steps from empty to full, 1 to " + MOST_STEPS + ". Without it, " + USUAL_STEPS + ".");
    private final OptionSpec order = option(
            11,
            "--order",
            "IDS",
            String.class,
            "Fill these tanks one after the other, as in fore,aft; with a plus together, as in fore+aft,middle. Otherwise the"
                    + " plan in the boat file, or all alike.");
    private final OptionSpec draining = number(
            12,
            "--draining",
            "F",
            "Also the way up with water inside the hull: which share, 0 to 1, of what the hull encloses between the two"
                    + " waterlines has not run out yet.");
    private final OptionSpec depth = number(
            13,
            "--depth",
            "M",
            "How deep the table of depths goes, 0.1 to 30 m. Without it, 5 m. Shown for parts that give way to pressure or soak.");
    private final PlotOptions plot = new PlotOptions(
            this, "Draw GM, BG, list, trim and what stands out of the water over the fill of the tanks.");

    DiveCommand() {
        super(
                "dive",
                "Fills the tanks step by step and says how the boat lies and stands at each, where she is least firm, whether she"
                        + " comes back by herself, how large the tank has to be, and what a gram does.",
                "Examples:",
                "  trimwright dive heron.boat.json",
                "  trimwright dive heron.boat.json --water sea --plot dive.svg",
                "  trimwright dive heron.boat.json --draining 0.3",
                "  trimwright dive twin-tank.boat.json --order fore,aft --steps 50 --json",
                "",
                Cautions.HELP);
    }

    @Override
    Answer answer() {
        int stepCount = stepCount();
        Double share = within(draining, 0, 1, "(0 is all run out, 1 is none)");
        Double deepest = within(depth, 0.1, DEEPEST_M, "m");
        LoadedBoat loaded = load();
        Boat told = asToldTo(loaded);
        Boat boat = order.getValue() == null ? told : told.diving(plan(order.getValue()));
        Condition condition = Condition.of(boat);
        DiveRun run = DiveRun.of(condition, stepCount);
        Optional<SurfacingRun> up = share == null ? Optional.empty() : SurfacingRun.of(condition, stepCount, share);
        List<Finding> findings = new ArrayList<>(run.findings());
        up.ifPresent(u -> findings.addAll(u.findings()));
        boolean floats = run.course().steps().get(0).settled().isPresent();
        if (share != null && up.isEmpty() && floats) {
            findings.add(Finding.of(Code.DRAINING_NO_HULL, new Place.Whole()));
        }
        findings.addAll(unusedFills());
        findings.addAll(FitCheck.ofTanks(boat));
        findings.addAll(loaded.allFindings());
        plot.write(DivePlot.of(boat.name(), run, up)).ifPresent(findings::add);
        return DiveAnswer.of(condition, run, up, deepest == null ? USUAL_DEPTH_M : deepest, findings);
    }

    private int stepCount() {
        Double value = within(steps, 1, MOST_STEPS, "steps");
        if (value == null) {
            return USUAL_STEPS;
        }
        if (value != Math.rint(value)) {
            throw misuse("--steps takes a whole number, found " + value + ".");
        }
        return value.intValue();
    }

    /** Groups by commas, tanks of a group by plus signs. */
    private DivePlan plan(String text) {
        Set<String> seen = new HashSet<>();
        List<List<String>> groups = new ArrayList<>();
        for (String group : text.split(",", -1)) {
            List<String> ids = new ArrayList<>();
            for (String word : group.split("\\+", -1)) {
                String id = word.strip();
                if (id.isEmpty()) {
                    throw misuse(
                            "--order takes ids of tanks with commas or plus signs between them, found '" + text + "'.");
                }
                if (!seen.add(id)) {
                    throw misuse("--order fills the tank '" + id + "' twice. Name it once.");
                }
                ids.add(id);
            }
            groups.add(ids);
        }
        return DivePlan.inOrder(groups);
    }

    private List<Finding> unusedFills() {
        List<String> told = fillsTold();
        return told.isEmpty()
                ? List.of()
                : List.of(Finding.of(Code.DIVE_FILLS_UNUSED, new Place.AtOption("--fill"), "found", told));
    }
}
