package trimwright.immersion;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The running sums over everything below one water plane: volume and its first moment, waterplane area and its moments.
 * Confined to one thread.
 *
 * <p>All moments are taken about the reference point, which lies on the plane: the volume's in the boat's axes, the
 * waterplane's in the plane's own axes ({@code u} ahead, {@code v} to port). A reference near the bodies keeps the terms small.
 */
public final class Immersion {

    private final WaterPlane plane;
    private final Vector3D reference;
    private final double grainMm;

    // The plane and the reference as scalars, for the kernels.
    final double nx;
    final double ny;
    final double nz;
    final double ux;
    final double uy;
    final double uz;
    final double vx;
    final double vy;
    final double vz;
    final double rx;
    final double ry;
    final double rz;

    // The sums. Volume mm³; its moment mm⁴; waterplane area mm², its first moments mm³, its second moments mm⁴.
    double volume;
    double mx;
    double my;
    double mz;
    double area;
    double areaU;
    double areaV;
    double areaUu;
    double areaUv;
    double areaVv;

    private Immersion(WaterPlane plane, Vector3D reference, double grainMm) {
        this.plane = plane;
        this.reference = reference;
        this.grainMm = grainMm;
        nx = plane.up().getX();
        ny = plane.up().getY();
        nz = plane.up().getZ();
        ux = plane.ahead().getX();
        uy = plane.ahead().getY();
        uz = plane.ahead().getZ();
        vx = plane.port().getX();
        vy = plane.port().getY();
        vz = plane.port().getZ();
        rx = reference.getX();
        ry = reference.getY();
        rz = reference.getZ();
    }

    /**
     * Empty sums below {@code plane}.
     *
     * @param near a point near the bodies to be added; it is dropped onto the plane to become the reference
     */
    public static Immersion below(WaterPlane plane, Vector3D near) {
        return roughly(plane, near, 0);
    }

    /**
     * The same where a rough answer will do: parts of a mesh that are no higher than a grain are not cut but taken as a whole, spread evenly
     * over their height. What that costs does not grow with the number of triangles.
     *
     * @param grainMm mm; 0 for an exact answer
     */
    public static Immersion roughly(WaterPlane plane, Vector3D near, double grainMm) {
        return new Immersion(plane, plane.dropped(near), grainMm);
    }

    /** Adds what of {@code body} lies below the plane, and returns this. */
    public Immersion add(Displacer body) {
        body.addBelow(this);
        return this;
    }

    /**
     * Adds a segment of the outline of the waterplane, in the plane's axes about the reference: Green's theorem.
     *
     * @param sense 1 where the waterplane lies to its left seen from above, -1 where to its right
     */
    void waterline(double sense, double u1, double v1, double u2, double v2) {
        double sumU = u1 + u2;
        double sumV = v1 + v2;
        double sixth = sense * (u1 * v2 - u2 * v1) * (1.0 / 6);
        double twelfth = 0.5 * sixth;
        area += 3 * sixth;
        areaU += sixth * sumU;
        areaV += sixth * sumV;
        areaUu += twelfth * (sumU * sumU - u1 * u2);
        areaVv += twelfth * (sumV * sumV - v1 * v2);
        areaUv += 0.5 * twelfth * (sumU * sumV + u1 * v1 + u2 * v2);
    }

    /**
     * Adds a strip of waterplane so narrow that only its length counts, in the plane's axes about the reference: evenly spread from one end to the
     * other.
     */
    void waterplaneStrip(double areaMm2, double u1, double v1, double u2, double v2) {
        double sumU = u1 + u2;
        double sumV = v1 + v2;
        double sixth = areaMm2 * (1.0 / 6);
        area += areaMm2;
        areaU += 3 * sixth * sumU;
        areaV += 3 * sixth * sumV;
        areaUu += 2 * sixth * (sumU * sumU - u1 * u2);
        areaVv += 2 * sixth * (sumV * sumV - v1 * v2);
        areaUv += sixth * (sumU * sumV + u1 * v1 + u2 * v2);
    }

    /** Adds a small patch of waterplane at a place in the plane's axes. */
    void waterplanePatch(double areaMm2, double u, double v) {
        area += areaMm2;
        areaU += areaMm2 * u;
        areaV += areaMm2 * v;
        areaUu += areaMm2 * u * u;
        areaUv += areaMm2 * u * v;
        areaVv += areaMm2 * v * v;
    }

    /** Height up to which a part of a mesh need not be cut, mm; 0 for an exact answer. */
    double grainMm() {
        return grainMm;
    }

    /** Empty sums below the same plane about the same reference. */
    public Immersion emptied() {
        return new Immersion(plane, reference, grainMm);
    }

    /** Adds {@code weight} times the other sums, which must have this plane and reference, and returns this. */
    public Immersion addScaled(Immersion other, double weight) {
        volume += weight * other.volume;
        mx += weight * other.mx;
        my += weight * other.my;
        mz += weight * other.mz;
        area += weight * other.area;
        areaU += weight * other.areaU;
        areaV += weight * other.areaV;
        areaUu += weight * other.areaUu;
        areaUv += weight * other.areaUv;
        areaVv += weight * other.areaVv;
        return this;
    }

    /**
     * The sums below a plane so near to this one that what lies between the two is as thick as the waterplane of this one makes it: volume and
     * moment follow to first order in the way between them, the waterplane stays as it is. About the same reference, dropped onto the
     * new plane.
     */
    public Immersion followed(WaterPlane near) {
        Immersion moved = new Immersion(near, near.dropped(reference), grainMm);
        double rise = near.heightMm() - near.up().dotProduct(reference);
        double ahead = near.up().dotProduct(plane.ahead());
        double port = near.up().dotProduct(plane.port());
        moved.volume = volume + rise * area - ahead * areaU - port * areaV;
        Vector3D moment = new Vector3D(
                1,
                momentMm4(),
                rise * areaU - ahead * areaUu - port * areaUv,
                plane.ahead(),
                rise * areaV - ahead * areaUv - port * areaVv,
                plane.port(),
                -rise * moved.volume,
                near.up());
        moved.mx = moment.getX();
        moved.my = moment.getY();
        moved.mz = moment.getZ();
        moved.area = area;
        moved.areaU = areaU;
        moved.areaV = areaV;
        moved.areaUu = areaUu;
        moved.areaUv = areaUv;
        moved.areaVv = areaVv;
        return moved;
    }

    public WaterPlane plane() {
        return plane;
    }

    /** The point about which all moments are taken. */
    public Vector3D referenceMm() {
        return reference;
    }

    public double volumeMm3() {
        return volume;
    }

    /** First moment of the volume about the reference: ∫ (p − r) dV, mm⁴. */
    public Vector3D momentMm4() {
        return new Vector3D(mx, my, mz);
    }

    /** Centroid of the immersed volume; the reference itself when nothing is immersed. */
    public Vector3D centroidMm() {
        return volume == 0 ? reference : new Vector3D(1, reference, 1 / volume, momentMm4());
    }

    /**
     * Waterplane area, mm². Where a face of a body lies exactly in the plane the area jumps; this is then the value just below
     * that face.
     */
    public double waterplaneMm2() {
        return area;
    }

    /** Centroid of the waterplane (centre of flotation); the reference itself when there is no waterplane. */
    public Vector3D centreOfFlotationMm() {
        return area == 0
                ? reference
                : new Vector3D(1, reference, areaU / area, plane.ahead(), areaV / area, plane.port());
    }

    /** First moment of the waterplane ahead of the reference, mm³. */
    public double waterplaneAheadMm3() {
        return areaU;
    }

    /** First moment of the waterplane to port of the reference, mm³. */
    public double waterplanePortMm3() {
        return areaV;
    }

    /** ∫ u² dA about the reference, u ahead; mm⁴. */
    public double secondMomentAheadMm4() {
        return areaUu;
    }

    /** ∫ v² dA about the reference, v to port; mm⁴. */
    public double secondMomentPortMm4() {
        return areaVv;
    }

    /** ∫ u v dA about the reference, mm⁴. */
    public double secondMomentMixedMm4() {
        return areaUv;
    }

    /** ∫ u² dA about the centre of flotation, u ahead: resists trim; mm⁴. */
    public double inertiaAheadMm4() {
        return area == 0 ? 0 : areaUu - areaU * areaU / area;
    }

    /** ∫ v² dA about the centre of flotation, v to port: resists heel; mm⁴. */
    public double inertiaPortMm4() {
        return area == 0 ? 0 : areaVv - areaV * areaV / area;
    }

    /** ∫ u v dA about the centre of flotation, mm⁴. */
    public double inertiaMixedMm4() {
        return area == 0 ? 0 : areaUv - areaU * areaV / area;
    }
}
