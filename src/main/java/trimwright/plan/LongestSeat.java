package trimwright.plan;

import java.util.Optional;
import trimwright.mesh.Bounds;

/** The longest flat-ended cylinder of a thickness that finds room along the hull. */
final class LongestSeat {

    private static final int STATIONS = 120;
    private static final int HEIGHTS = 24;
    private static final int HALVINGS = 20;
    private static final int THIRDS = 14;

    private final HullClearance hull;
    private final Bounds bounds;
    private final double axisY;
    private final double radius;
    private final double step;

    /** @param radius half the thickness, with the gap to be kept */
    LongestSeat(HullClearance hull, double axisY, double radius) {
        this.hull = hull;
        this.axisY = axisY;
        this.radius = radius;
        bounds = hull.bounds();
        step = bounds.sizeX() / STATIONS;
    }

    /** The stretch about a place over which it fits with its axis at a height; empty where it does not fit there at all. */
    Optional<CylinderSeat.Stretch> about(double x, double z) {
        if (!fits(x, x, z)) {
            return Optional.empty();
        }
        return Optional.of(new CylinderSeat.Stretch(reach(x, -step, z), reach(x, step, z)));
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
        return best;
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
        double fits = x;
        double fails = x + way;
        for (int i = 0; i < HALVINGS; i++) {
            double half = 0.5 * (fits + fails);
            if (fits(x, half, z)) {
                fits = half;
            } else {
                fails = half;
            }
        }
        return fits;
    }

    private boolean fits(double x0, double x1, double z) {
        double a = Math.min(x0, x1);
        double b = Math.max(x0, x1);
        return hull.inside(a, axisY, z) && hull.inside(b, axisY, z) && hull.keepsClear(a, b, axisY, z, radius);
    }
}
