package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.Displacer;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * Everything of a boat that can be under water. Immutable.
 *
 * @param bodies what displaces
 * @param volumeMm3 volume of all
 * @param centroidMm centroid of all; zero where there is none
 * @param middleMm middle of the box around all
 * @param halfMm half the size of that box
 * @param grainMm 0 for exact sums; otherwise how small a part of a mesh must be to be taken as a whole, mm
 */
record Displacement(
        List<Displacer> bodies,
        double volumeMm3,
        Vector3D centroidMm,
        Vector3D middleMm,
        Vector3D halfMm,
        double grainMm) {

    /** Grain of rough sums, as a share of the shortest side of the box around all: beam or depth, which stability hangs on. */
    private static final double GRAIN = 0.15;

    static Displacement of(List<Displacer> bodies) {
        double volume = 0;
        Vector3D moment = Vector3D.ZERO;
        for (Displacer body : bodies) {
            volume += body.volumeMm3();
            moment = moment.add(body.volumeMm3(), body.centroidMm());
        }
        Vector3D centroid = volume > 0 ? moment.scalarMultiply(1 / volume) : Vector3D.ZERO;
        if (bodies.isEmpty()) {
            return new Displacement(List.of(), 0, Vector3D.ZERO, Vector3D.ZERO, Vector3D.ZERO, 0);
        }
        Vector3D highest =
                new Vector3D(top(bodies, Vector3D.PLUS_I), top(bodies, Vector3D.PLUS_J), top(bodies, Vector3D.PLUS_K));
        Vector3D lowest = new Vector3D(
                -top(bodies, Vector3D.MINUS_I), -top(bodies, Vector3D.MINUS_J), -top(bodies, Vector3D.MINUS_K));
        Vector3D middle = new Vector3D(0.5, highest, 0.5, lowest);
        return new Displacement(List.copyOf(bodies), volume, centroid, middle, highest.subtract(middle), 0);
    }

    /** The same with another body. */
    Displacement with(Displacer body) {
        List<Displacer> more = new ArrayList<>(bodies);
        more.add(body);
        return of(more);
    }

    /** The same, summed roughly and fast. */
    Displacement roughly() {
        double shortest = 2 * Math.min(halfMm.getX(), Math.min(halfMm.getY(), halfMm.getZ()));
        return new Displacement(bodies, volumeMm3, centroidMm, middleMm, halfMm, GRAIN * shortest);
    }

    /** Everything below the plane, with moments about a point near the middle. */
    Immersion below(WaterPlane plane) {
        Immersion sum = Immersion.roughly(plane, middleMm, grainMm);
        for (Displacer body : bodies) {
            sum.add(body);
        }
        return sum;
    }

    /** Diagonal of the box around all: the length by which moments are judged small. */
    double lengthMm() {
        return bodies.isEmpty() ? 1 : 2 * halfMm.getNorm();
    }

    /** How far the box around all reaches from its middle along the unit vector {@code up}, either way. */
    double reachMm(Vector3D up) {
        return Math.abs(up.getX()) * halfMm.getX()
                + Math.abs(up.getY()) * halfMm.getY()
                + Math.abs(up.getZ()) * halfMm.getZ();
    }

    /** Height of the highest point along the unit vector {@code up}. */
    double topMm(Vector3D up) {
        return top(bodies, up);
    }

    private static double top(List<Displacer> bodies, Vector3D up) {
        double top = Double.NEGATIVE_INFINITY;
        for (Displacer body : bodies) {
            top = Math.max(top, body.topMm(up));
        }
        return top;
    }
}
