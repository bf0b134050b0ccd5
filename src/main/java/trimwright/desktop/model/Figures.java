package trimwright.desktop.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import trimwright.boat.Targets;
import trimwright.plan.Wanted;
import trimwright.report.AttitudeWords;
import trimwright.report.FloatVerdict;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.PaintedOffset;

/** The readings of a floating boat in words and figures, against what is wanted of her. */
public final class Figures {

    private static final double ON_HER_SIDE = 0.5;

    private final Flotation before;
    private final Flotation now;
    private final Measure measure;
    private final Wanted wanted;
    private final List<Figure> figures = new ArrayList<>();

    private Figures(Flotation before, Flotation now, Measure measure) {
        this.before = before;
        this.now = now;
        this.measure = measure;
        wanted = wanted(now);
    }

    /** What is wanted of her; what she leaves open is filled as the ballast plan does. */
    static Wanted wanted(Flotation flotation) {
        Targets targets = flotation.condition().boat().targets();
        return Wanted.of(targets, flotation.condition().massG());
    }

    /**
     * Every reading.
     *
     * @param before the boat before the last change; {@code now} itself when there was none
     */
    public static List<Figure> of(Flotation before, Flotation now, Measure measure) {
        Figures all = new Figures(before, now, measure);
        all.surfaced();
        if (now.condition().tankVolumeMm3() > 0) {
            all.dived();
        }
        return List.copyOf(all.figures);
    }

    /** The whole in a sentence. */
    public static String verdict(Flotation flotation, Measure measure) {
        return FloatVerdict.of(flotation, measure);
    }

    /** The whole in a sign: the worst of what is wanted of her afloat. */
    public static Figure.Standing standing(Flotation flotation) {
        if (flotation.settled().isEmpty() || onHerSide(flotation)) {
            return Figure.Standing.LOST;
        }
        boolean off = of(flotation, flotation, Measure.METRIC).stream()
                .anyMatch(f -> f.standing() == Figure.Standing.OFF || f.standing() == Figure.Standing.LOST);
        return off ? Figure.Standing.OFF : Figure.Standing.GOOD;
    }

    /** That sign in a few words. */
    public static String shortVerdict(Flotation flotation) {
        if (flotation.settled().isEmpty()) {
            return "SHE SINKS";
        }
        if (onHerSide(flotation)) {
            return "SHE FALLS OVER";
        }
        if (standing(flotation) == Figure.Standing.GOOD) {
            return "AS WANTED";
        }
        Optional<PaintedOffset> off = flotation.fromPaintedLine();
        Wanted wanted = wanted(flotation);
        boolean onLine = off.isPresent()
                && Math.max(Math.abs(off.get().bowMm()), Math.abs(off.get().sternMm())) <= wanted.offLineMm();
        if (off.isPresent() && !onLine) {
            return "OFF HER LINE";
        }
        boolean lists = off.map(o -> Math.abs(o.listDeg()) > wanted.listDeg()).orElse(false);
        return lists ? "SHE LISTS" : "NOT YET AS WANTED";
    }

    private static boolean onHerSide(Flotation flotation) {
        return flotation.settled().map(e -> e.plane().up().getZ() < ON_HER_SIDE).orElse(false);
    }

    private void surfaced() {
        double offLine = wanted.offLineMm();
        String within = "±" + measure.length(offLine);
        line("Paint at the bow", f -> f.fromPaintedLine().map(PaintedOffset::bowMm), offLine, within);
        line("Paint at the stern", f -> f.fromPaintedLine().map(PaintedOffset::sternMm), offLine, within);
        settled("List", e -> AttitudeWords.list(e.heelDeg()), listStanding(), "±" + Numbers.degrees(wanted.listDeg()));
        settled("Trim", e -> AttitudeWords.trim(e.trimDeg()), Figure.Standing.PLAIN, "");
        settled(
                "GM afloat",
                e -> measure.length(e.gmTransverseMm()),
                atLeast(now.settled().map(Equilibrium::gmTransverseMm), wanted.gmMm()),
                "≥ " + measure.length(wanted.gmMm()));
        settled("BG afloat", e -> measure.length(e.bgMm()), Figure.Standing.PLAIN, "");
        add(
                "Reserve",
                f -> Optional.of(measure.mass(f.reserveG())),
                now.reserveG() > 0 ? Figure.Standing.PLAIN : Figure.Standing.LOST,
                "");
        add("Weight", f -> Optional.of(measure.mass(f.condition().massG())), Figure.Standing.PLAIN, "");
    }

    private void dived() {
        double bg = now.submerged().up().getZ() < 0
                ? -now.submerged().bgMm()
                : now.submerged().bgMm();
        add(
                "BG dived",
                f -> Optional.of(measure.length(
                        f.submerged().up().getZ() < 0
                                ? -f.submerged().bgMm()
                                : f.submerged().bgMm())),
                atLeast(Optional.of(bg), wanted.bgMm()),
                "≥ " + measure.length(wanted.bgMm()));
        double left = now.submerged().residualG();
        boolean inBand =
                left >= wanted.residualG().least() && left <= wanted.residualG().greatest();
        add(
                "Buoyancy left dived",
                f -> Optional.of(measure.mass(f.submerged().residualG())),
                left < 0 ? Figure.Standing.LOST : inBand ? Figure.Standing.GOOD : Figure.Standing.OFF,
                measure.briefMass(wanted.residualG().least()) + "…"
                        + measure.briefMass(wanted.residualG().greatest()) + " " + measure.massUnit());
        double trim = Math.abs(now.submerged().trimDeg());
        add(
                "Trim dived",
                f -> Optional.of(AttitudeWords.trim(f.submerged().trimDeg())),
                trim <= wanted.divedTrimDeg() ? Figure.Standing.GOOD : Figure.Standing.OFF,
                "±" + Numbers.degrees(wanted.divedTrimDeg()));
    }

    private void line(String name, Function<Flotation, Optional<Double>> offMm, double allowed, String within) {
        if (now.condition().boat().paintedLine().isEmpty()) {
            return;
        }
        Figure.Standing standing = offMm.apply(now)
                .map(off -> Math.abs(off) <= allowed ? Figure.Standing.GOOD : Figure.Standing.OFF)
                .orElse(Figure.Standing.LOST);
        add(name, f -> offMm.apply(f).map(this::fromPaint), standing, within);
    }

    private String fromPaint(double offMm) {
        if (Numbers.roundsToZero(offMm, 1)) {
            return "on the paint";
        }
        return measure.length(Math.abs(offMm)) + (offMm > 0 ? " too deep" : " too high");
    }

    private Figure.Standing listStanding() {
        return now.fromPaintedLine()
                .map(PaintedOffset::listDeg)
                .or(() -> now.settled().map(Equilibrium::heelDeg))
                .map(list -> Math.abs(list) <= wanted.listDeg() ? Figure.Standing.GOOD : Figure.Standing.OFF)
                .orElse(Figure.Standing.LOST);
    }

    private static Figure.Standing atLeast(Optional<Double> value, double least) {
        return value.map(v -> v >= least ? Figure.Standing.GOOD : Figure.Standing.OFF)
                .orElse(Figure.Standing.LOST);
    }

    private void settled(
            String name, Function<Equilibrium, String> words, Figure.Standing standing, String wantedWords) {
        add(name, f -> f.settled().map(words), standing, wantedWords);
    }

    private void add(
            String name, Function<Flotation, Optional<String>> words, Figure.Standing standing, String wantedWords) {
        figures.add(new Figure(
                name, words.apply(before).orElse("sinks"), words.apply(now).orElse("sinks"), standing, wantedWords));
    }
}
