package trimwright.plan;

import java.util.Optional;
import java.util.function.DoublePredicate;
import trimwright.mesh.Bounds;

/**
 * The longest cylinder of a thickness that finds room along the hull. One with half balls at its ends reaches farther than a flat-ended one, by less than half its thickness at
 * each end: its tips are let out from where the flat ends stand.
 */
final class LongestSeat {

    private static final int STATIONS = 120;
    private static final int HEIGHTS = 24;
    private static final int HALVINGS = 20;
    private static final int THIRDS = 14;

    private final HullClearance hull;
    private final Bounds bounds;
    private final double axisY;
    private final double radius;
    private final double gap;
    private final boolean round;
    private final double step;

    /**
     * @param radius half the thickness
     * @param gap distance to be kept from the inner surface
     * @param round whether its ends are half balls
     */
    LongestSeat(HullClearance hull, double axisY, double radius, double gap, boolean round) {
        this.hull = hull;
        this.axisY = axisY;
        this.radius = radius;
        this.gap = gap;
        this.round = round;
        bounds = hull.bounds();
        step = bounds.sizeX() / STATIONS;
    }

    /** The stretch about a place over which it fits with its axis at a height; empty where it does not fit there at all. */
    Optional<CylinderSeat.Stretch> about(double x, double z) {
        if (!fits(x, x, z)) {
            return Optional.empty();
        }
        return withEnds(reach(x, -step, z), reach(x, step, z), z);
    }

    /** The longest stretch at any height, and that height; empty where it fits nowhere. */
    Optional<CylinderSeat.Longest> anywhere() {
        Optional<CylinderSeat.Longest> best = Optional.empty();
        double gapZ = bounds.sizeZ() / HEIGHTS;
        for (int i = 1; i < HEIGHTS; i++) {
            best = longer(best, at(bounds.minZ() + i * gapZ));
        }
        if (best.isEmpty()) {
            return best;
        }
        // The length rises to a ridge and falls again: thirds close in on it.
        double low = best.get().axisZMm() - gapZ;
        double high = best.get().axisZMm() + gapZ;
        for (int i = 0; i < THIRDS; i++) {
            Optional<CylinderSeat.Longest> a = at(low + (high - low) / 3);
            Optional<CylinderSeat.Longest> b = at(high - (high - low) / 3);
            if (length(a) < length(b)) {
                low += (high - low) / 3;
            } else {
                high -= (high - low) / 3;
            }
            best = longer(longer(best, a), b);
        }
        // Where flat ends find most room along the hull, round ones are let out; that they might find a little more at
        // another height is not
        // looked for.
        return best.flatMap(l -> withEnds(l.stretch().fromXMm(), l.stretch().toXMm(), l.axisZMm())
                .map(stretch -> new CylinderSeat.Longest(stretch, l.axisZMm())));
    }

    private static double length(Optional<CylinderSeat.Longest> found) {
        return found.map(l -> l.stretch().lengthMm()).orElse(0.0);
    }

    private static Optional<CylinderSeat.Longest> longer(
            Optional<CylinderSeat.Longest> one, Optional<CylinderSeat.Longest> other) {
        return length(other) > length(one) ? other : one;
    }

    private Optional<CylinderSeat.Longest> at(double z) {
        int longest = 0;
        int end = 0;
        int run = 0;
        for (int i = 0; i < STATIONS; i++) {
            run = fits(station(i), station(i + 1), z) ? run + 1 : 0;
            if (run > longest) {
                longest = run;
                end = i + 1;
            }
        }
        if (longest == 0) {
            return Optional.empty();
        }
        double aft = narrowed(station(end - longest), -step, z);
        double fore = narrowed(station(end), step, z);
        return Optional.of(new CylinderSeat.Longest(new CylinderSeat.Stretch(aft, fore), z));
    }

    /** The stretch from end to end, from that over which flat ends fit; empty where not even a ball fits in its middle. */
    private Optional<CylinderSeat.Stretch> withEnds(double aft, double fore, double z) {
        if (!round) {
            return Optional.of(new CylinderSeat.Stretch(aft, fore));
        }
        double middle = 0.5 * (aft + fore);
        double aftTip = Math.min(aft, middle - radius);
        double foreTip = Math.max(fore, middle + radius);
        if (!fitsRound(aftTip, foreTip, z)) {
            return Optional.empty();
        }
        // The longer, the less clear: each tip by itself comes to an end less than a radius farther.
        double foreEnd = foreTip;
        double aftEnd = farthest(aftTip, -radius, x -> fitsRound(x, foreEnd, z));
        return Optional.of(new CylinderSeat.Stretch(aftEnd, farthest(foreTip, radius, x -> fitsRound(aftEnd, x, z))));
    }

    private double station(int i) {
        return bounds.minX() + i * step;
    }

    private double reach(double start, double way, double z) {
        double x = start;
        while (x + way > bounds.minX() && x + way < bounds.maxX() && fits(x, x + way, z)) {
            x += way;
        }
        return narrowed(x, way, z);
    }

    /** How far beyond a place it still fits, less than a station: by halving. */
    private double narrowed(double x, double way, double z) {
        return farthest(x, way, end -> fits(x, end, z));
    }

    private static double farthest(double x, double way, DoublePredicate isFree) {
        double fits = x;
        double fails = x + way;
        for (int i = 0; i < HALVINGS; i++) {
            double half = 0.5 * (fits + fails);
            if (isFree.test(half)) {
                fits = half;
            } else {
                fails = half;
            }
        }
        return fits;
    }

    private boolean fitsRound(double aft, double fore, double z) {
        return hull.inside(aft, axisY, z)
                && hull.inside(fore, axisY, z)
                && hull.keepsClearRound(aft, fore, axisY, z, radius, gap);
    }

    private boolean fits(double x0, double x1, double z) {
        double a = Math.min(x0, x1);
        double b = Math.max(x0, x1);
        return hull.inside(a, axisY, z) && hull.inside(b, axisY, z) && hull.keepsClear(a, b, axisY, z, radius + gap);
    }
}
