package trimwright.boat;

import java.util.Objects;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One part of the boat as the builder describes it. What it weighs and displaces is worked out by {@link Piece}.
 *
 * @param id unique in the boat
 * @param kind what it is
 * @param shape its shape; empty for a compact piece of ballast or fitting
 * @param build how it is built; present for a hull and for nothing else
 * @param weighedMassG its mass where it was weighed, per piece; otherwise the mass is computed from the density
 * @param densityGPerCm3 density of its material
 * @param givenCentreMm its centre of mass where given; otherwise the centroid of the material
 * @param inside id of the cylinder or sealed hull it stands in, where it displaces nothing
 * @param mirror whether a twin stands at -y
 * @param fill how full a tank is, 0…1; 0 for everything else
 * @param softness how it gives way to the water with depth and time
 * @param fixed whether it stays as it is; lead or foam that is not may be moved or taken out by a ballast plan
 * @param margins how far what is said here may be off
 */
public record Part(
        String id,
        Kind kind,
        Optional<Shape> shape,
        Optional<HullBuild> build,
        Optional<Double> weighedMassG,
        Optional<Double> densityGPerCm3,
        Optional<Vector3D> givenCentreMm,
        Optional<String> inside,
        boolean mirror,
        double fill,
        Softness softness,
        boolean fixed,
        Margins margins) {

    public Part {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(kind, "kind");
        if (build.isPresent() != (kind == Kind.HULL)) {
            throw new IllegalArgumentException("a hull has a build, and nothing else has: " + id);
        }
        if (build.isPresent() && !(shape.orElse(null) instanceof MeshShape)) {
            throw new IllegalArgumentException("a hull is given by a mesh: " + id);
        }
        if (shape.isEmpty() && (weighedMassG.isEmpty() || givenCentreMm.isEmpty())) {
            throw new IllegalArgumentException("a compact piece needs its mass and centre: " + id);
        }
    }

    /** A part that stays where it is and neither gives way nor soaks. */
    public Part(
            String id,
            Kind kind,
            Optional<Shape> shape,
            Optional<HullBuild> build,
            Optional<Double> weighedMassG,
            Optional<Double> densityGPerCm3,
            Optional<Vector3D> givenCentreMm,
            Optional<String> inside,
            boolean mirror,
            double fill) {
        this(
                id,
                kind,
                shape,
                build,
                weighedMassG,
                densityGPerCm3,
                givenCentreMm,
                inside,
                mirror,
                fill,
                Softness.NONE,
                true,
                Margins.USUAL);
    }

    public boolean isTank() {
        return kind == Kind.TANK;
    }

    /** Whether it is air trapped in the hull: volume without mass. */
    public boolean isAir() {
        return kind == Kind.AIR;
    }

    public boolean isHull() {
        return kind == Kind.HULL;
    }

    /** The same part with another shape, weighed mass and centre. */
    public Part withBody(Optional<Shape> newShape, Optional<Double> newMassG, Optional<Vector3D> newCentreMm) {
        return new Part(
                id,
                kind,
                newShape,
                build,
                newMassG,
                densityGPerCm3,
                newCentreMm,
                inside,
                mirror,
                fill,
                softness,
                fixed,
                margins);
    }

    /** The same hull built in another way. */
    public Part withBuild(HullBuild other) {
        return new Part(
                id,
                kind,
                shape,
                Optional.of(other),
                weighedMassG,
                densityGPerCm3,
                givenCentreMm,
                inside,
                mirror,
                fill,
                softness,
                fixed,
                margins);
    }

    /** The same part with another fill. */
    public Part withFill(double newFill) {
        return with(newFill, softness, fixed, margins);
    }

    /** The same part giving way to the water. */
    public Part withSoftness(Softness other) {
        return with(fill, other, fixed, margins);
    }

    /** The same part without its twin, under another id. */
    public Part alone(String newId) {
        return new Part(
                newId,
                kind,
                shape,
                build,
                weighedMassG,
                densityGPerCm3,
                givenCentreMm,
                inside,
                false,
                fill,
                softness,
                fixed,
                margins);
    }

    /** The same part, which a ballast plan may move or take out. */
    public Part loose() {
        return with(fill, softness, false, margins);
    }

    /** The same part with other margins. */
    public Part withMargins(Margins other) {
        return with(fill, softness, fixed, other);
    }

    private Part with(double newFill, Softness newSoftness, boolean newFixed, Margins newMargins) {
        return new Part(
                id,
                kind,
                shape,
                build,
                weighedMassG,
                densityGPerCm3,
                givenCentreMm,
                inside,
                mirror,
                newFill,
                newSoftness,
                newFixed,
                newMargins);
    }
}
