package trimwright.plan;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Zone;

/**
 * One piece to be cut or cast: a bar of fixed cross-section in a run of free room. Its length follows from its amount; it may be placed anywhere in
 * the run.
 */
final class Strip {

    final String zone;
    final Zone.Use use;
    final boolean twin;
    /** Id of the watertight part in which it lies, where it displaces nothing. */
    final Optional<String> inside;
    /** The run of free room; its cross-section is that of the strip. */
    final BoxShape run;

    private final double densityGPerMm3;
    /** Amount and place: changed while a plan is worked out. */
    private double volumeMm3;

    private double centreXMm;

    Strip(RoomCell like, BoxShape run, double densityGPerMm3, double volumeMm3, double centreXMm) {
        zone = like.zone();
        use = like.use();
        twin = like.twin();
        inside = like.inside();
        this.run = run;
        this.densityGPerMm3 = densityGPerMm3;
        put(volumeMm3, centreXMm);
    }

    /** How a strip begins: strips that begin alike end alike. */
    record Start(String zone, boolean twin, BoxShape run, double volumeMm3, double centreXMm) {}

    Start start() {
        return new Start(zone, twin, run, volumeMm3, centreXMm);
    }

    double sectionMm2() {
        Vector3D size = run.toMm().subtract(run.fromMm());
        return size.getY() * size.getZ();
    }

    double capacityMm3() {
        return sectionMm2() * (run.toMm().getX() - run.fromMm().getX());
    }

    double densityGPerMm3() {
        return densityGPerMm3;
    }

    double volumeMm3() {
        return volumeMm3;
    }

    double lengthMm() {
        return volumeMm3 / sectionMm2();
    }

    double massG() {
        return volumeMm3 * densityGPerMm3;
    }

    double centreXMm() {
        return centreXMm;
    }

    /** How far the centre may lie aft, for the present length. */
    double aftmostCentreMm() {
        return run.fromMm().getX() + lengthMm() / 2;
    }

    double foremostCentreMm() {
        return run.toMm().getX() - lengthMm() / 2;
    }

    /** Sets amount and place; a place beyond the run's end is drawn in, since a longer strip must move with its end. */
    void put(double newVolumeMm3, double newCentreXMm) {
        volumeMm3 = newVolumeMm3;
        centreXMm = Math.min(foremostCentreMm(), Math.max(aftmostCentreMm(), newCentreXMm));
    }

    /** The strip as a solid box at its place. */
    BoxShape box() {
        double half = lengthMm() / 2;
        return new BoxShape(
                new Vector3D(centreXMm - half, run.fromMm().getY(), run.fromMm().getZ()),
                new Vector3D(centreXMm + half, run.toMm().getY(), run.toMm().getZ()));
    }

    /** The strip as a part of the boat. */
    Part part(String id) {
        return new Part(
                id,
                use == Zone.Use.BALLAST ? Kind.BALLAST : Kind.FOAM,
                Optional.of(box()),
                Optional.empty(),
                Optional.empty(),
                Optional.of(densityGPerMm3 * 1000),
                Optional.empty(),
                inside,
                false,
                0);
    }
}
