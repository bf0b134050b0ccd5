package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.immersion.AxisClearance;
import trimwright.immersion.Column;
import trimwright.immersion.MeshTree;
import trimwright.mesh.Bounds;

/**
 * Finds seats for a cylinder lying along x. The distance from an axis to a surface changes by no more than the axis is moved, so a search upward may
 * always step by what is still missing and passes over no seat.
 */
public final class SeatFinder {

    /** Heights are found to this. */
    private static final double TOLERANCE_MM = 1e-6;
    /** Greatest diameters are found to this. */
    private static final double RIDGE_MM = 1e-4;
    /** Least step of the search, where the distance stands still just short of fitting. */
    private static final double LEAST_STEP_MM = 1e-3;

    private static final int STATIONS = 120;
    private static final int HEIGHTS = 32;

    private final List<Hull> hulls = new ArrayList<>();
    private final BarShape bar;
    private final Part part;
    private final double gap;
    private final double from;
    private final double to;
    private final double axisY;
    private final double axisZ;
    private final double radius;
    private final Column column = new Column();
    /** Per hull, the point found last: the next one is seldom far from it. */
    private final Vector3D[] last;

    private record Hull(MeshTree tree, double thicknessMm, boolean enclosesMaterial) {}

    private SeatFinder(Boat boat, Part part, double gapMm) {
        this.part = part;
        this.gap = gapMm;
        bar = (BarShape) part.shape().orElseThrow();
        from = Math.min(bar.fromMm().getX(), bar.toMm().getX());
        to = Math.max(bar.fromMm().getX(), bar.toMm().getX());
        axisY = bar.fromMm().getY();
        axisZ = bar.fromMm().getZ();
        radius = bar.diameterMm() / 2;
        for (Piece piece : boat.pieces()) {
            if (piece.part().build().isPresent()) {
                HullBuild build = piece.part().build().get();
                MeshTree tree = ((MeshShape) piece.shape().orElseThrow()).tree();
                hulls.add(new Hull(tree, build.shellMm(), build.enclosesMaterial()));
            }
        }
        last = new Vector3D[hulls.size()];
    }

    /** Whether a part is a cylinder whose seat can be found: a round bar lying along x. */
    public static boolean canSeat(Part part) {
        if (part.kind() != Kind.CYLINDER || !(part.shape().orElse(null) instanceof BarShape bar)) {
            return false;
        }
        Vector3D along = bar.toMm().subtract(bar.fromMm());
        return along.getY() == 0 && along.getZ() == 0;
    }

    /**
     * The seat of one cylinder.
     *
     * @param part a part for which {@link #canSeat} holds
     * @param gapMm distance to be kept from the inner hull surface
     */
    public static CylinderSeat seat(Boat boat, Part part, double gapMm) {
        return new SeatFinder(boat, part, gapMm).find();
    }

    private CylinderSeat find() {
        Bounds bounds =
                hulls.stream().map(h -> h.tree().bounds()).reduce(Bounds::union).orElseThrow();
        AxisClearance.Nearest present = nearest(axisZ, radius);
        boolean inside = inside(axisZ);
        double clearance = (inside ? present.distanceMm() : -present.distanceMm()) - radius;
        Optional<Double> lowest = firstSeat(bounds.minZ(), bounds.maxZ(), 1);
        Optional<Double> highest = lowest.flatMap(z -> firstSeat(bounds.maxZ(), z, -1));
        return new CylinderSeat(
                part,
                inside && clearance >= gap,
                clearance,
                present.pointMm(),
                lowest,
                highest,
                lowest.map(z -> nearest(z, radius).pointMm()),
                inside ? largestAt(axisZ) : 0,
                largestAnywhere(bounds),
                longest(bounds),
                profile(bounds));
    }

    private AxisClearance.Nearest nearest(double z, double forRadius) {
        AxisClearance.Nearest best = null;
        for (int i = 0; i < hulls.size(); i++) {
            Hull hull = hulls.get(i);
            AxisClearance clearance = bar.ends() == BarShape.Ends.ROUND
                    ? AxisClearance.round(hull.tree(), hull.thicknessMm(), from, to, forRadius)
                    : AxisClearance.flat(hull.tree(), hull.thicknessMm(), from, to);
            AxisClearance.Nearest own = clearance.nearest(axisY, z, last[i]);
            last[i] = Double.isFinite(own.distanceMm()) ? own.pointMm() : null;
            if (best == null || own.distanceMm() < best.distanceMm()) {
                best = own;
            }
        }
        return best;
    }

    private double missing(double z) {
        double distance = nearest(z, radius).distanceMm();
        return radius + gap - distance;
    }

    /** The first height from {@code start} toward {@code end} at which it fits. */
    private Optional<Double> firstSeat(double start, double end, int direction) {
        double z = start;
        while (direction * (end - z) >= 0) {
            double missing = missing(z);
            if (missing <= TOLERANCE_MM && inside(z)) {
                return Optional.of(z);
            }
            z += direction * Math.max(LEAST_STEP_MM * (missing < 10 * LEAST_STEP_MM ? 0.1 : 1), missing);
        }
        return Optional.empty();
    }

    /** Whether the axis at this height runs in the hull's inside over its whole length, judged at a few places. */
    private boolean inside(double z) {
        for (int i = 0; i <= 8; i++) {
            double x = from + (to - from) * (0.001 + 0.998 * i / 8);
            if (!insideAt(x, z)) {
                return false;
            }
        }
        return true;
    }

    private boolean insideAt(double x, double z) {
        for (Hull hull : hulls) {
            column.through(hull.tree(), x, axisY + 1e-7);
            int below = 0;
            int depth = 0;
            for (int i = 0; i < column.count() && column.heightMm(i) < z; i++) {
                below++;
                depth += column.turn(i);
            }
            boolean between = below > 0 && below < column.count();
            if (hull.enclosesMaterial() ? between && depth == 0 : depth > 0) {
                return true;
            }
        }
        return false;
    }

    /** Greatest diameter about the axis at a height: for round ends the core shrinks as the radius grows, so it is found by halving. */
    private double largestAt(double z) {
        if (bar.ends() == BarShape.Ends.FLAT) {
            return Math.max(0, 2 * (nearest(z, radius).distanceMm() - gap));
        }
        double low = 0;
        double high = (to - from) / 2;
        while (high - low > RIDGE_MM / 10) {
            double middle = 0.5 * (low + high);
            if (nearest(z, middle).distanceMm() >= middle + gap) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 2 * low;
    }

    private CylinderSeat.Largest largestAnywhere(Bounds bounds) {
        double bestZ = axisZ;
        double best = inside(axisZ) ? largestAt(axisZ) : 0;
        double span = bounds.sizeZ();
        for (int i = 1; i < HEIGHTS; i++) {
            double z = bounds.minZ() + span * i / HEIGHTS;
            double d = inside(z) ? largestAt(z) : 0;
            if (d > best) {
                best = d;
                bestZ = z;
            }
        }
        // Near its greatest the diameter rises to a ridge and falls again: thirds close in on it.
        double low = bestZ - span / HEIGHTS;
        double high = bestZ + span / HEIGHTS;
        while (high - low > RIDGE_MM) {
            double a = low + (high - low) / 3;
            double b = high - (high - low) / 3;
            if (largestAt(a) < largestAt(b)) {
                low = a;
            } else {
                high = b;
            }
        }
        double z = 0.5 * (low + high);
        return inside(z) && largestAt(z) > best
                ? new CylinderSeat.Largest(largestAt(z), z)
                : new CylinderSeat.Largest(best, bestZ);
    }

    /** The stretch over which the cylinder could be lengthened, to the width of a station. */
    private Optional<CylinderSeat.Stretch> longest(Bounds bounds) {
        double step = bounds.sizeX() / STATIONS;
        double middle = 0.5 * (from + to);
        if (!stationFits(middle, middle)) {
            return Optional.empty();
        }
        double aft = reach(middle, bounds.minX(), -step);
        double fore = reach(middle, bounds.maxX(), step);
        return Optional.of(new CylinderSeat.Stretch(aft, fore));
    }

    private double reach(double start, double end, double step) {
        double x = start;
        while (step * (end - x) > 0 && stationFits(x, x + step)) {
            x += step;
        }
        // The last station is narrowed down by halving.
        double fits = x;
        double fails = x + step;
        for (int i = 0; i < 30; i++) {
            double half = 0.5 * (fits + fails);
            if (stationFits(x, half)) {
                fits = half;
            } else {
                fails = half;
            }
        }
        return fits;
    }

    private boolean stationFits(double x0, double x1) {
        double a = Math.min(x0, x1);
        double b = Math.max(x0, x1);
        if (!insideAt(a, axisZ) || !insideAt(b, axisZ)) {
            return false;
        }
        for (Hull hull : hulls) {
            if (AxisClearance.flat(hull.tree(), hull.thicknessMm(), a, b)
                            .nearest(axisY, axisZ)
                            .distanceMm()
                    < radius + gap) {
                return false;
            }
        }
        return true;
    }

    private List<CylinderSeat.Station> profile(Bounds bounds) {
        List<CylinderSeat.Station> stations = new ArrayList<>();
        double step = bounds.sizeX() / STATIONS;
        for (int i = 0; i < STATIONS; i++) {
            double x = bounds.minX() + (i + 0.5) * step;
            if (!insideAt(x, axisZ)) {
                continue;
            }
            double bottom = Double.NEGATIVE_INFINITY;
            double top = Double.POSITIVE_INFINITY;
            double distance = Double.POSITIVE_INFINITY;
            for (Hull hull : hulls) {
                column.through(hull.tree(), x, axisY + 1e-7);
                for (int k = 0; k < column.count(); k++) {
                    double z = column.heightMm(k);
                    if (z < axisZ) {
                        bottom = Math.max(bottom, z + hull.thicknessMm());
                    } else {
                        top = Math.min(top, z - hull.thicknessMm());
                    }
                }
                distance = Math.min(
                        distance,
                        AxisClearance.flat(hull.tree(), hull.thicknessMm(), x - step / 2, x + step / 2)
                                .nearest(axisY, axisZ)
                                .distanceMm());
            }
            stations.add(new CylinderSeat.Station(x, bottom, top, Math.max(0, 2 * (distance - gap))));
        }
        return List.copyOf(stations);
    }
}
