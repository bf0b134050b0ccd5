package trimwright.report.sheet;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.Targets;
import trimwright.finding.Finding;
import trimwright.plan.BallastPlan;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.Tolerance;
import trimwright.report.DiveWords;
import trimwright.report.FloatVerdict;
import trimwright.report.Numbers;
import trimwright.report.RightingPlot;
import trimwright.report.StabilityWords;
import trimwright.report.WaterWords;
import trimwright.report.picture.BoatPicture;
import trimwright.report.picture.Pictures;
import trimwright.report.sheet.Sheet.Section;
import trimwright.statics.Condition;
import trimwright.statics.DiveRun;
import trimwright.statics.DiveStep;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.RightingCurve;
import trimwright.statics.Steadiness;

/** Puts a trim sheet together. */
public final class SheetMaker {

    private static final int PICTURE_WIDTH_PX = 1400;
    private static final int DIVE_STEPS = 20;
    private static final double LIST_STEP_DEG = 5;

    private final Boat boat;
    private final Condition condition;
    private final Flotation afloat;
    private final Optional<DiveRun> dive;
    private final Request request;

    /**
     * What is to be on the sheet.
     *
     * @param boat the boat
     * @param date the day as it is to be printed
     * @param findings what the figures rest on: notes and warnings about the file and its meshes
     * @param plan the ballast plan, where it belongs to it; the pictures then show the boat with the plan carried out
     * @param pool what the readings said, where they belong to it
     * @param tolerance how far she may be off
     */
    public record Request(
            Boat boat,
            String date,
            List<Finding> findings,
            Optional<BallastPlan> plan,
            Optional<PoolEstimate> pool,
            Optional<Tolerance> tolerance) {}

    private SheetMaker(Request request) {
        this.request = request;
        boat = request.plan()
                .filter(BallastPlan::feasible)
                .map(BallastPlan::planned)
                .orElse(request.boat());
        condition = Condition.of(boat).withAllTanksAt(0);
        afloat = Flotation.settling(condition);
        dive = condition.tankVolumeMm3() > 0 && afloat.settled().isPresent()
                ? Optional.of(DiveRun.of(condition, DIVE_STEPS))
                : Optional.empty();
    }

    public static Sheet of(Request request) {
        return new SheetMaker(request).sheet();
    }

    private Sheet sheet() {
        SheetTables tables = new SheetTables(boat, condition);
        List<Section> sections = new ArrayList<>();
        sections.add(first());
        request.plan().ifPresent(plan -> sections.add(new SheetPlan(request.boat(), plan).section()));
        sections.add(new Section("What she weighs", request.plan().isEmpty(), tables.weights()));
        dive.ifPresent(run -> sections.add(new SheetDive(boat, condition, run).section()));
        righting().ifPresent(sections::add);
        sections.add(new Section("What it rests on", false, tables.restsOn(request.findings())));
        tables.prints().ifPresent(blocks -> sections.add(new Section("What the printed parts take up", false, blocks)));
        request.tolerance().ifPresent(t -> sections.add(new Section("How far it may be off", false, SheetPool.of(t))));
        request.pool().ifPresent(p -> sections.add(new Section("What the pool said", false, SheetPool.of(p))));
        sections.add(new Section("In the pool", true, SheetPool.checklist(boat)));
        sections.add(new Section("Cautions", false, List.of(new Block.Points(SheetTables.cautions(boat)))));
        String under = WaterWords.of(boat.water()) + (request.date().isEmpty() ? "" : ". " + request.date() + ".");
        return new Sheet(boat.name(), under, sections);
    }

    private Section first() {
        List<Block> blocks = new ArrayList<>();
        boolean planned = request.plan().filter(BallastPlan::feasible).isPresent();
        blocks.add(new Block.Words((planned ? "With the plan carried out: " : "") + FloatVerdict.of(afloat), true));
        dive.ifPresent(run -> {
            blocks.add(new Block.Words(DiveWords.verdict(run), false));
            DiveWords.leastFirm(run.course()).ifPresent(s -> blocks.add(new Block.Words(s, false)));
        });
        if (dive.isEmpty()) {
            Steadiness.afloat(condition).ifPresent(s -> blocks.add(new Block.Words(StabilityWords.of(s), false)));
        }
        afloat.settled().ifPresent(rest -> blocks.add(picture(condition, rest, "afloat")));
        dive.map(SheetMaker::last)
                .flatMap(step ->
                        step.settled().map(rest -> picture(step.flotation().condition(), rest, "dived")))
                .ifPresent(blocks::add);
        blocks.add(key());
        return new Section("", false, blocks);
    }

    private static DiveStep last(DiveRun run) {
        return run.course().steps().get(run.course().steps().size() - 1);
    }

    private static Block picture(Condition condition, Equilibrium rest, String state) {
        BoatPicture.Scene scene = BoatPicture.Scene.of(condition, rest, "");
        BufferedImage image = BoatPicture.draw(
                new BoatPicture.Scene(
                        scene.boat(),
                        scene.water(),
                        scene.paintedLine(),
                        scene.centreOfBuoyancyMm(),
                        scene.centreOfGravityMm(),
                        scene.metacentreMm(),
                        state,
                        ""),
                PICTURE_WIDTH_PX);
        return new Block.Picture(
                Pictures.png(image),
                image.getWidth() / (double) image.getHeight(),
                "The boat " + state + " from the side and from ahead, with the water, the painted line, B, G and M");
    }

    /** The key figures, each with whether it is as wanted. */
    private Block key() {
        List<List<String>> rows = new ArrayList<>();
        Targets t = boat.targets();
        afloat.settled().ifPresent(rest -> {
            afloat.fromPaintedLine().ifPresent(off -> {
                row(
                        rows,
                        "Water above the paint, bow",
                        off.bowMm(),
                        1,
                        "mm",
                        t.offLineMm().map(m -> "within " + Numbers.brief(m)),
                        t.offLineMm().map(m -> Math.abs(off.bowMm()) <= m));
                row(
                        rows,
                        "Water above the paint, stern",
                        off.sternMm(),
                        1,
                        "mm",
                        t.offLineMm().map(m -> "within " + Numbers.brief(m)),
                        t.offLineMm().map(m -> Math.abs(off.sternMm()) <= m));
            });
            row(
                    rows,
                    "List, + to starboard",
                    rest.heelDeg(),
                    1,
                    "°",
                    t.listDeg().map(m -> "within " + Numbers.brief(m)),
                    t.listDeg().map(m -> Math.abs(rest.heelDeg()) <= m));
            row(
                    rows,
                    "GM across, surfaced",
                    rest.gmTransverseMm(),
                    1,
                    "mm",
                    t.gmMm().map(m -> "at least " + Numbers.brief(m)),
                    t.gmMm().map(m -> rest.gmTransverseMm() >= m));
        });
        row(rows, "Weight, tanks empty", condition.massG(), 0, "g", Optional.empty(), Optional.empty());
        row(rows, "Reserve, tanks empty", condition.reserveG(), 0, "g", Optional.empty(), Optional.empty());
        if (dive.isPresent()) {
            double bg = afloat.submerged().bgMm();
            double residual = afloat.submerged().residualG();
            row(
                    rows,
                    "B above G, dived",
                    bg,
                    1,
                    "mm",
                    t.bgMm().map(m -> "at least " + Numbers.brief(m)),
                    t.bgMm().map(m -> bg >= m));
            row(
                    rows,
                    "Buoyancy left, dived",
                    residual,
                    1,
                    "g",
                    t.residualG().map(b -> Numbers.brief(b.least()) + " to " + Numbers.brief(b.greatest())),
                    t.residualG().map(b -> residual >= b.least() && residual <= b.greatest()));
            last(dive.get())
                    .settled()
                    .ifPresent(rest -> row(
                            rows,
                            "Trim dived, tower out, + bow up",
                            rest.trimDeg(),
                            1,
                            "°",
                            t.divedTrimDeg().map(m -> "within " + Numbers.brief(m)),
                            t.divedTrimDeg().map(m -> Math.abs(rest.trimDeg()) <= m)));
        }
        return new Block.Grid("Key figures", "lrlll", List.of("", "is", "", "wanted", "as wanted"), rows);
    }

    private static void row(
            List<List<String>> rows,
            String what,
            double value,
            int decimals,
            String unit,
            Optional<String> wanted,
            Optional<Boolean> good) {
        rows.add(List.of(
                what,
                Numbers.fixed(value, decimals),
                unit,
                wanted.orElse(""),
                good.map(g -> g ? "✓" : "✗").orElse("")));
    }

    private Optional<Section> righting() {
        Optional<RightingCurve> surfaced = RightingCurve.surfaced(condition, LIST_STEP_DEG);
        if (surfaced.isEmpty()) {
            return Optional.empty();
        }
        RightingCurve submerged = RightingCurve.submerged(condition, LIST_STEP_DEG);
        List<Block> blocks = new ArrayList<>();
        Steadiness.afloat(condition).ifPresent(s -> blocks.add(new Block.Words(StabilityWords.of(s), false)));
        blocks.add(SheetTables.levers(surfaced.get(), submerged));
        RightingPlot.of(boat.name(), surfaced.get(), submerged)
                .ifPresent(plot -> blocks.add(SheetDive.drawing(plot, "Righting levers over the list")));
        return Optional.of(new Section("What brings her back from a list", false, blocks));
    }
}
