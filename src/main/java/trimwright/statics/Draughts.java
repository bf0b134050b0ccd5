package trimwright.statics;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;

/**
 * How deep she lies at either end: on the centreline, the height of the water above the lowest point of the hull, along the boat's z axis.
 * The ends are the outermost painted points, or without a painted line the ends of the hull.
 *
 * @param bowXMm where the draught at the bow is taken
 * @param bowMm draught there; negative where the water stands below the lowest point of the hull
 * @param sternXMm where the draught at the stern is taken
 * @param sternMm draught there
 * @param keelZMm the lowest point of the hull
 */
public record Draughts(double bowXMm, double bowMm, double sternXMm, double sternMm, double keelZMm) {

    /** Share of up along the boat's z axis below which she lies on her side and has no draughts. */
    private static final double ON_HER_SIDE = 0.5;

    /** Empty for a boat that lies more than 60° over, or one without any shape. */
    public static Optional<Draughts> of(Boat boat, WaterPlane water) {
        Optional<Bounds> hull = bounds(boat);
        if (hull.isEmpty() || water.up().getZ() < ON_HER_SIDE) {
            return Optional.empty();
        }
        double keel = hull.get().minZ();
        Optional<PaintedLine> line = boat.paintedLine();
        double bow = line.map(l -> l.foremostMm().getX()).orElse(hull.get().maxX());
        double stern = line.map(l -> l.aftmostMm().getX()).orElse(hull.get().minX());
        return Optional.of(new Draughts(bow, at(water, bow, keel), stern, at(water, stern, keel), keel));
    }

    private static double at(WaterPlane water, double xMm, double keelZMm) {
        return PaintedOffset.aboveMm(water, new Vector3D(xMm, 0, keelZMm));
    }

    /** The box around the hull, or where there is none around everything that has a shape. */
    private static Optional<Bounds> bounds(Boat boat) {
        List<Part> hull = boat.parts().stream().filter(Part::isHull).toList();
        return (hull.isEmpty() ? boat.parts() : hull)
                .stream().flatMap(p -> p.shape().stream()).map(Shape::bounds).reduce(Bounds::union);
    }
}
