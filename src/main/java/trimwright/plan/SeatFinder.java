package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
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

    private final HullClearance hull;
    private final Boat boat;
    private final BarShape bar;
    private final Part part;
    private final double gap;
    private final double from;
    private final double to;
    private final double axisY;
    private final double axisZ;
    private final double radius;
    private final boolean round;

    private SeatFinder(Boat boat, Part part, double gapMm) {
        this.boat = boat;
        this.part = part;
        this.gap = gapMm;
        hull = new HullClearance(boat);
        bar = (BarShape) part.shape().orElseThrow();
        from = Math.min(bar.fromMm().getX(), bar.toMm().getX());
        to = Math.max(bar.fromMm().getX(), bar.toMm().getX());
        axisY = bar.fromMm().getY();
        axisZ = bar.fromMm().getZ();
        radius = bar.diameterMm() / 2;
        round = bar.ends() == BarShape.Ends.ROUND;
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
        Bounds bounds = hull.bounds();
        HullClearance.Nearest present = nearest(axisZ, radius);
        boolean inside = inside(axisZ);
        double clearance = (inside ? present.distanceMm() : -present.distanceMm()) - radius;
        Optional<Double> lowest = firstSeat(bounds.minZ(), bounds.maxZ(), 1);
        Optional<Double> highest = lowest.flatMap(z -> firstSeat(bounds.maxZ(), z, -1));
        LongestSeat longest = new LongestSeat(hull, axisY, radius, gap, round);
        List<SeatRoom> rooms = new ArrayList<>();
        rooms.add(SeatRoom.of(boat, part, axisZ));
        lowest.ifPresent(z -> rooms.add(SeatRoom.of(boat, part, z)));
        highest.ifPresent(z -> rooms.add(SeatRoom.of(boat, part, z)));
        return new CylinderSeat(
                part,
                inside && clearance >= gap,
                clearance,
                touch(present, axisZ),
                lowest,
                highest,
                lowest.map(z -> touch(nearest(z, radius), z)),
                inside ? largestAt(axisZ) : 0,
                largestAnywhere(bounds),
                longest.about(0.5 * (from + to), axisZ),
                longest.anywhere(),
                profile(bounds),
                List.copyOf(rooms));
    }

    private static CylinderSeat.Touch touch(HullClearance.Nearest nearest, double z) {
        return new CylinderSeat.Touch(nearest.part(), nearest.pointMm(), z);
    }

    private HullClearance.Nearest nearest(double z, double forRadius) {
        return hull.nearest(from, to, axisY, z, round, forRadius);
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
            if (!hull.inside(x, axisY, z)) {
                return false;
            }
        }
        return true;
    }

    /** Greatest diameter about the axis at a height: for round ends the core shrinks as the radius grows, so it is found by halving. */
    private double largestAt(double z) {
        if (!round) {
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

    private List<CylinderSeat.Station> profile(Bounds bounds) {
        List<CylinderSeat.Station> stations = new ArrayList<>();
        double step = bounds.sizeX() / STATIONS;
        for (int i = 0; i < STATIONS; i++) {
            double x = bounds.minX() + (i + 0.5) * step;
            if (hull.inside(x, axisY, axisZ)) {
                HullClearance.Between z = hull.between(x, axisY, axisZ);
                double distance = hull.distanceMm(x - step / 2, x + step / 2, axisY, axisZ);
                stations.add(new CylinderSeat.Station(x, z.bottomZMm(), z.topZMm(), Math.max(0, 2 * (distance - gap))));
            }
        }
        return List.copyOf(stations);
    }
}
