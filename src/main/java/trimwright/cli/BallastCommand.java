package trimwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.plan.BallastPlan;
import trimwright.plan.LineRange;
import trimwright.plan.PlanCheck;
import trimwright.plan.PlanRequest;
import trimwright.plan.Planner;
import trimwright.plan.Shifted;
import trimwright.plan.TradeOff;
import trimwright.plan.WayOut;
import trimwright.statics.Condition;
import trimwright.statics.Flotation;

/** How much lead and foam, and where. */
final class BallastCommand extends BoatCommand {

    private static final int TRADE_OFF_POINTS = 20;
    private static final double LINES_MOST_MM = 20;
    private static final double LINES_STEP_MM = 2;

    private final PlanOptions options = new PlanOptions(this);
    private final OptionSpec tradeOff =
            flag(32, "--trade-off", "Also what stability costs: added mass against BG and GM.");
    private final OptionSpec lines =
            flag(33, "--lines", "Also where the line could be painted, and the mass that each place asks for.");
    private final OptionSpec out =
            option(40, "--write", "OUT", Path.class, "Save the boat with the plan carried out, as a new boat file.");
    private final OptionSpec overwrite =
            flag(41, "--overwrite", "With --write and --plot: an existing file may be replaced.");
    private final PlotOptions plot = new PlotOptions(this, overwrite, "Draw what stability costs, as --trade-off.");

    BallastCommand() {
        super(
                "ballast",
                "Works out how much lead and foam goes where, so that the boat floats on her painted line, dives level and"
                        + " stands up by herself; or says what stands in the way and what would help.",
                "Examples:",
                "  trimwright ballast heron.boat.json",
                "  trimwright ballast heron.boat.json --bg 8 --write heron-trimmed.boat.json",
                "  trimwright ballast heron.boat.json --for stability --mass 800",
                "  trimwright ballast heron.boat.json --add-lead 100",
                "  trimwright ballast heron.boat.json --trade-off --lines --plot cost.svg",
                "",
                Cautions.HELP);
    }

    @Override
    Answer answer() {
        LoadedBoat loaded = load();
        Boat boat = asToldTo(loaded);
        PlanRequest request = options.request(boat);
        List<Finding> findings = new ArrayList<>();
        Optional<Shifted.Best> shifted = Optional.empty();
        Optional<PlanOptions.Move> allowed = options.move(boat);
        if (allowed.isPresent()) {
            PlanOptions.Move move = allowed.get();
            shifted = Shifted.best(request, move.id(), move.fromMm(), move.toMm());
            if (shifted.isPresent()) {
                request = request.withBoat(shifted.get().boat());
            } else {
                findings.add(nowhere(move));
            }
        }
        Planner.Answer answer = Planner.answer(request);
        BallastPlan plan = answer.plan();
        List<WayOut> ways = answer.waysOut();
        findings.addAll(PlanCheck.rooms(boat, plan.rooms()));
        findings.addAll(PlanCheck.loose(boat));
        findings.addAll(loaded.allFindings());
        Optional<Path> written = plan.feasible() ? Optional.ofNullable(out.getValue()) : Optional.empty();
        written.ifPresent(to -> findings.addAll(write(loaded, plan, to)));
        Optional<TradeOff> curve = isGiven(tradeOff) || plot.isWanted()
                ? Optional.of(TradeOff.of(request, TRADE_OFF_POINTS))
                : Optional.empty();
        if (curve.isPresent()) {
            boolean dives = plan.dived().isPresent();
            plot.write(TradeOffPlot.of(boat.name(), curve.get(), request.wanted(), dives))
                    .ifPresent(findings::add);
        }
        return new BallastAnswer(
                request,
                plan,
                Flotation.settling(Condition.of(boat)),
                ways,
                shifted,
                options.isPair(),
                curve,
                isGiven(lines) ? Optional.of(LineRange.of(request, LINES_MOST_MM, LINES_STEP_MM)) : Optional.empty(),
                written,
                findings);
    }

    private static Finding nowhere(PlanOptions.Move move) {
        return Finding.of(
                Code.MOVE_WITHOUT_PLAN,
                new Place.OnPart(move.id()),
                "id",
                move.id(),
                "fromMm",
                move.fromMm(),
                "toMm",
                move.toMm());
    }

    /** The file as it was, with the plan's changes in it: other water and fills of the command line are not written. */
    private List<Finding> write(LoadedBoat loaded, BallastPlan plan, Path to) {
        LoadedBoat changed = loaded;
        for (Part part : loaded.boat().parts()) {
            Optional<Part> planned = plan.planned().part(part.id());
            if (planned.isEmpty()) {
                changed = changed.without(part.id());
            } else if (!planned.get().withFill(part.fill()).equals(part)) {
                changed = changed.replacing(planned.get().withFill(part.fill()));
            }
        }
        return BoatFile.write(changed.plus(plan.pieces()), to, isGiven(overwrite));
    }
}
