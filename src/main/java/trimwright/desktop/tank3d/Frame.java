package trimwright.desktop.tank3d;

import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Point3D;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.mesh.Bounds;

/**
 * How large the boat is, as far as the view is concerned.
 *
 * @param name the same for boats that are shown in the same frame
 * @param box the box around the hull, which stays while she is loaded; without a hull around everything, mm
 */
record Frame(String name, Bounds box) {

    static Frame of(Boat boat) {
        List<Part> hull = boat.parts().stream().filter(Part::isHull).toList();
        Bounds box = bounds(hull.isEmpty() ? boat.parts() : hull);
        // Without a hull her bounds change with every part, and the view would jump.
        return new Frame(hull.isEmpty() ? boat.name() : box.toString(), box);
    }

    /** The box around parts, twins included. */
    static Bounds bounds(List<Part> parts) {
        return parts.stream()
                .flatMap(p -> p.shape().stream().flatMap(s -> p.mirror() ? Stream.of(s, s.mirrored()) : Stream.of(s)))
                .map(Shape::bounds)
                .reduce(Bounds::union)
                .orElse(new Bounds(-50, -50, -50, 50, 50, 50));
    }

    /** Her middle, which is the origin of what is drawn. */
    Vector3D middleMm() {
        return new Vector3D(box.centreX(), box.centreY(), box.centreZ());
    }

    double lengthMm() {
        return box.longestSide();
    }

    /** Corners of a box in the scene. */
    List<Point3D> corners(Bounds of, Stance stance) {
        return Stream.iterate(0, i -> i < 8, i -> i + 1)
                .map(i -> new Vector3D(
                        (i & 1) == 0 ? of.minX() : of.maxX(),
                        (i & 2) == 0 ? of.minY() : of.maxY(),
                        (i & 4) == 0 ? of.minZ() : of.maxZ()))
                .map(p -> stance.scene(p.subtract(middleMm())))
                .toList();
    }
}
