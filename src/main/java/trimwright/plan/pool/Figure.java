package trimwright.plan.pool;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import trimwright.boat.PaintedLine;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.PaintedOffset;

/** A figure that a builder wants to know of a boat with empty tanks, or dived. */
public enum Figure {
    MASS("massG", "g", (c, f) -> Optional.of(c.massG())),
    G_AHEAD(
            "centreXMm",
            "mm",
            (c, f) -> f.settled().map(e -> e.centreOfGravityMm().getX())),
    G_TO_PORT(
            "centreYMm",
            "mm",
            (c, f) -> f.settled().map(e -> e.centreOfGravityMm().getY())),
    G_UP("centreZMm", "mm", (c, f) -> f.settled().map(e -> e.centreOfGravityMm().getZ())),
    BOW("offBowMm", "mm", (c, f) -> off(c, f).map(PaintedOffset::bowMm)),
    STERN("offSternMm", "mm", (c, f) -> off(c, f).map(PaintedOffset::sternMm)),
    LIST("heelDeg", "°", (c, f) -> f.settled().map(Equilibrium::heelDeg)),
    TRIM("trimDeg", "°", (c, f) -> f.settled().map(Equilibrium::trimDeg)),
    GM("gmTransverseMm", "mm", (c, f) -> f.settled().map(Equilibrium::gmTransverseMm)),
    BG_DIVED("divedBgMm", "mm", (c, f) -> dived(c, f.submerged().bgMm())),
    TRIM_DIVED("divedTrimDeg", "°", (c, f) -> dived(c, f.submerged().trimDeg())),
    RESIDUAL("residualG", "g", (c, f) -> dived(c, f.submerged().residualG()));

    private final String key;
    private final String unit;
    private final BiFunction<Condition, Flotation, Optional<Double>> value;

    Figure(String key, String unit, BiFunction<Condition, Flotation, Optional<Double>> value) {
        this.key = key;
        this.unit = unit;
        this.value = value;
    }

    /** Its name in results for scripts. */
    public String key() {
        return key;
    }

    /** Its unit, as in "mm". */
    public String unit() {
        return unit;
    }

    /** Its value for a boat with empty tanks; empty where she has none, as a sinking boat has no list. */
    Optional<Double> of(Condition empty, Flotation afloat) {
        return value.apply(empty, afloat);
    }

    /** All figures; NaN for those that she has not. */
    static double[] all(Condition condition) {
        Condition empty = condition.withAllTanksAt(0);
        Flotation afloat = Flotation.settling(empty);
        return List.of(values()).stream()
                .mapToDouble(f -> f.of(empty, afloat).orElse(Double.NaN))
                .toArray();
    }

    private static Optional<PaintedOffset> off(Condition condition, Flotation afloat) {
        Optional<PaintedLine> line = condition.boat().paintedLine();
        return line.isEmpty() ? Optional.empty() : afloat.settled().map(e -> PaintedOffset.of(line.get(), e.plane()));
    }

    private static Optional<Double> dived(Condition condition, double value) {
        return condition.tankVolumeMm3() > 0 ? Optional.of(value) : Optional.empty();
    }
}
