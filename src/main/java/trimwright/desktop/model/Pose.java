package trimwright.desktop.model;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.RightingCurve;

/**
 * A boat in the water as the tank shows her.
 *
 * @param boat the boat with her fills
 * @param water where the surface lies
 * @param centreOfGravityMm G, where she is weighed
 * @param centreOfBuoyancyMm B, where anything is immersed
 * @param metacentreMm the transverse metacentre M, where she rests
 * @param flotation how she floats there with all her readings; empty where she is only held
 * @param caption what is shown, when it is not simply the boat as loaded; otherwise empty
 */
public record Pose(
        Boat boat,
        WaterPlane water,
        Optional<Vector3D> centreOfGravityMm,
        Optional<Vector3D> centreOfBuoyancyMm,
        Optional<Vector3D> metacentreMm,
        Optional<Flotation> flotation,
        String caption) {

    /** A boat of which only her shape is known, upright. */
    public static Pose unweighed(Boat boat, double waterMm) {
        return new Pose(
                boat,
                WaterPlane.level(waterMm),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    /** As she floats; one that sinks is shown wholly under, as she hangs with B over G. */
    public static Pose of(Flotation flotation, String caption) {
        return flotation
                .settled()
                .map(rest -> resting(flotation, rest, caption))
                .orElseGet(() -> under(flotation, caption));
    }

    private static Pose resting(Flotation flotation, Equilibrium rest, String caption) {
        // B and M lie on one plumb line, M by GM above G.
        Vector3D metacentre = new Vector3D(
                1,
                rest.centreOfBuoyancyMm(),
                rest.gmTransverseMm() - rest.bgMm(),
                rest.plane().up());
        return new Pose(
                flotation.condition().boat(),
                rest.plane(),
                Optional.of(rest.centreOfGravityMm()),
                Optional.of(rest.centreOfBuoyancyMm()),
                Optional.of(metacentre),
                Optional.of(flotation),
                caption);
    }

    private static Pose under(Flotation flotation, String caption) {
        Condition condition = flotation.condition();
        Vector3D b = condition.volumeCentroidMm();
        Vector3D lever = b.subtract(condition.centreOfGravityMm(WaterPlane.level(0)));
        Vector3D up = lever.getNorm() > 0 ? lever.normalize() : Vector3D.PLUS_K;
        // So much water above her that nobody takes her for afloat.
        double height = condition.topMm(up) + 0.05 * condition.lengthMm();
        WaterPlane water = WaterPlane.of(up, height);
        return new Pose(
                condition.boat(),
                water,
                Optional.of(condition.centreOfGravityMm(water)),
                Optional.of(b),
                Optional.empty(),
                Optional.of(flotation),
                caption);
    }

    /** Held at a point of her righting curve: as deep as her weight asks for, afloat. */
    public static Pose at(Condition condition, RightingCurve.Row row, String caption) {
        WaterPlane direction = WaterPlane.of(Equilibrium.up(row.heelDeg(), row.trimDeg()), 0);
        WaterPlane water = condition.planeAbove(condition.massG() / condition.densityGPerMm3(), direction);
        return new Pose(
                condition.boat(),
                water,
                Optional.of(condition.centreOfGravityMm(water)),
                Optional.of(condition.below(water).centroidMm()),
                Optional.empty(),
                Optional.empty(),
                caption);
    }
}
