package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A body that displaces water where it is under. Immutable and safe for use by several threads at once.
 *
 * <p>Lengths mm, volumes mm³, boat's frame.
 */
public interface Displacer {

    /** Adds what lies below the accumulator's plane to it. */
    void addBelow(Immersion sum);

    /** Volume when wholly under, mm³. */
    double volumeMm3();

    /** Centroid of the whole volume; zero where there is no volume. */
    Vector3D centroidMm();

    /**
     * Height of the highest point along the unit vector {@code up}: max of up · p, mm. A thin shell may give a bound that lies at
     * most its thickness higher.
     */
    double topMm(Vector3D up);

    /** The highest point of the outer surface along the unit vector {@code up}; one of them where several are. */
    Vector3D highestMm(Vector3D up);

    /**
     * Length of the line along which the plane cuts the outer surface, mm: the wetted outline on which the surface film can hang. Open
     * surfaces give the cut of what is there; zero for a body that the plane does not cut.
     */
    double outlineMm(WaterPlane plane);

    /** Height of the lowest point along {@code up}, mm. */
    default double bottomMm(Vector3D up) {
        return -topMm(up.negate());
    }
}
