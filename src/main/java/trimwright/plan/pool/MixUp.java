package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.PaintedLine;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Sighting;
import trimwright.statics.Condition;

/** What a builder may have meant by a number that does not fit. */
enum MixUp {
    WITH_THE_OTHER_SIGN,
    AT_THE_OTHER_END,
    AS_MM_ACROSS_HER_BREADTH,
    AS_MM_ALONG_HER_LENGTH,
    IN_CM,
    IN_INCHES,
    IN_OUNCES;

    private static final double MM_PER_CM = 10;
    private static final double MM_PER_INCH = 25.4;
    /** Avoirdupois ounce, exact (international yard and pound agreement, 1959). */
    private static final double G_PER_OUNCE = 28.349523125;

    /** What was seen, if it was meant so. */
    record Meant(MixUp how, Sighting sighting) {}

    /** Everything that may have been meant by something that was seen. */
    static List<Meant> of(Sighting seen, Condition condition) {
        double value = seen.value();
        List<Meant> all = new ArrayList<>();
        switch (seen.quantity()) {
            case LIST -> {
                add(all, seen, WITH_THE_OTHER_SIGN, -value);
                add(all, seen, AS_MM_ACROSS_HER_BREADTH, angleDeg(value, condition.beamMm()));
            }
            case TRIM -> {
                add(all, seen, WITH_THE_OTHER_SIGN, -value);
                add(all, seen, AS_MM_ALONG_HER_LENGTH, angleDeg(value, lengthMm(condition)));
            }
            case WATER_ABOVE, FREEBOARD -> {
                add(all, seen, WITH_THE_OTHER_SIGN, -value);
                condition.boat().paintedLine().flatMap(l -> otherEnd(l, seen)).ifPresent(all::add);
                add(all, seen, IN_CM, value * MM_PER_CM);
                add(all, seen, IN_INCHES, value * MM_PER_INCH);
            }
            case HANGING -> add(all, seen, IN_OUNCES, value * G_PER_OUNCE);
            case RESTS_AT -> add(all, seen, AS_MM_ACROSS_HER_BREADTH, angleDeg(value, condition.beamMm()));
            case ROLL -> {}
        }
        return all;
    }

    private static void add(List<Meant> all, Sighting seen, MixUp how, double value) {
        if (Double.isFinite(value) && (seen.quantity() != Quantity.RESTS_AT || value > 0)) {
            all.add(new Meant(how, new Sighting(seen.quantity(), value, seen.error(), seen.atMm())));
        }
    }

    /** Length over all. */
    private static double lengthMm(Condition condition) {
        return condition.topMm(Vector3D.PLUS_I) - condition.bottomMm(Vector3D.PLUS_I);
    }

    private static double angleDeg(double mm, double overMm) {
        return Math.toDegrees(Math.asin(mm / overMm));
    }

    private static Optional<Meant> otherEnd(PaintedLine line, Sighting seen) {
        Vector3D at = seen.atMm().orElseThrow();
        boolean bow = at.equals(line.foremostMm());
        if (!bow && !at.equals(line.aftmostMm())) {
            return Optional.empty();
        }
        Vector3D other = bow ? line.aftmostMm() : line.foremostMm();
        return Optional.of(new Meant(
                AT_THE_OTHER_END, new Sighting(seen.quantity(), seen.value(), seen.error(), Optional.of(other))));
    }
}
