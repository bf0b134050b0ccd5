package trimwright.plan.pool;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.PaintedOffset;
import trimwright.statics.Submerged;

/** A figure that a builder wants to know of a boat with empty tanks, or dived. */
public enum Figure {
    MASS("massG", "g", false, s -> Optional.of(s.empty().massG())),
    G_AHEAD("centreXMm", "mm", false, s -> Optional.of(s.gMm().getX())),
    G_TO_PORT("centreYMm", "mm", false, s -> Optional.of(s.gMm().getY())),
    G_UP("centreZMm", "mm", false, s -> Optional.of(s.gMm().getZ())),
    BOW("offBowMm", "mm", true, s -> s.off().map(PaintedOffset::bowMm)),
    STERN("offSternMm", "mm", true, s -> s.off().map(PaintedOffset::sternMm)),
    LIST("heelDeg", "°", true, s -> s.rest().map(Equilibrium::heelDeg)),
    TRIM("trimDeg", "°", true, s -> s.rest().map(Equilibrium::trimDeg)),
    GM("gmTransverseMm", "mm", true, s -> s.rest().map(Equilibrium::gmTransverseMm)),
    BG_DIVED("divedBgMm", "mm", false, s -> s.dived().map(Submerged::bgMm)),
    TRIM_DIVED("divedTrimDeg", "°", false, s -> s.dived().map(Submerged::trimDeg)),
    RESIDUAL("residualG", "g", false, s -> s.dived().map(Submerged::residualG));

    /**
     * What figures are read from.
     *
     * @param empty the boat with empty tanks
     * @param rest where she rests then; empty when she sinks, or when nobody asks
     */
    private record Shown(Condition empty, Optional<Equilibrium> rest) {

        /** Without tank water G is where it is in any attitude. */
        Vector3D gMm() {
            return empty.dryMomentGmm().scalarMultiply(1 / empty.dryMassG());
        }

        Optional<PaintedOffset> off() {
            return empty.boat().paintedLine().flatMap(line -> rest.map(e -> PaintedOffset.of(line, e.plane())));
        }

        Optional<Submerged> dived() {
            return empty.tankVolumeMm3() > 0 ? Optional.of(Submerged.of(empty)) : Optional.empty();
        }
    }

    private final String key;
    private final String unit;
    private final boolean afloat;
    private final Function<Shown, Optional<Double>> value;

    Figure(String key, String unit, boolean afloat, Function<Shown, Optional<Double>> value) {
        this.key = key;
        this.unit = unit;
        this.afloat = afloat;
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

    /** Whether it takes an equilibrium to tell it. */
    boolean isAfloat() {
        return afloat;
    }

    /** All figures of a boat; NaN for those that she has not. */
    static double[] all(Condition condition) {
        Condition empty = condition.withAllTanksAt(0);
        return all(empty, Flotation.rest(empty));
    }

    /**
     * The same for one who knows where she rests.
     *
     * @param empty the boat with empty tanks
     * @param rest where she rests; where it is left empty she has no figures afloat
     */
    static double[] all(Condition empty, Optional<Equilibrium> rest) {
        Shown shown = new Shown(empty, rest);
        return List.of(values()).stream()
                .mapToDouble(f -> f.value.apply(shown).orElse(Double.NaN))
                .toArray();
    }
}
