package trimwright.desktop.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.mesh.Bounds;

/** Where the painted line runs, as it is changed end by end. */
public final class Painting {

    /** How far from the ends of the hull the points of a new line lie, as a share of its length. */
    private static final double INSET = 0.04;

    private Painting() {}

    /** The points of a level line along a hull, near its ends, mm. */
    static List<Vector3D> level(Bounds hull, double heightMm) {
        double inset = INSET * hull.sizeX();
        return List.of(
                new Vector3D(rounded(hull.minX() + inset), 0, heightMm),
                new Vector3D(rounded(hull.maxX() - inset), 0, heightMm));
    }

    private static double rounded(double mm) {
        return Math.rint(mm * 1000) / 1000;
    }

    /**
     * The points of her line with one end at another height. A boat without a line gets a level one.
     *
     * @param atBow whether the foremost point is meant, otherwise the aftmost
     */
    public static List<Vector3D> with(Boat boat, boolean atBow, double heightMm) {
        Optional<PaintedLine> line = boat.paintedLine();
        if (line.isEmpty()) {
            return level(bounds(boat), heightMm);
        }
        Vector3D moved = atBow ? line.get().foremostMm() : line.get().aftmostMm();
        List<Vector3D> points = new ArrayList<>();
        for (Vector3D p : line.get().pointsMm()) {
            points.add(p.equals(moved) ? new Vector3D(p.getX(), p.getY(), heightMm) : p);
        }
        return points;
    }

    /** The points of her line so that it goes through a point of the hull: the nearer end is moved. */
    public static List<Vector3D> through(Boat boat, Vector3D pointMm) {
        Optional<PaintedLine> line = boat.paintedLine();
        if (line.isEmpty()) {
            return level(bounds(boat), tenth(pointMm.getZ()));
        }
        Vector3D bow = line.get().foremostMm();
        Vector3D stern = line.get().aftmostMm();
        boolean atBow = Math.abs(pointMm.getX() - bow.getX()) < Math.abs(pointMm.getX() - stern.getX());
        Vector3D moved = atBow ? bow : stern;
        Vector3D kept = atBow ? stern : bow;
        double share = (moved.getX() - kept.getX()) / (pointMm.getX() - kept.getX());
        return with(boat, atBow, tenth(kept.getZ() + share * (pointMm.getZ() - kept.getZ())));
    }

    /** A hand does not point more finely. */
    static double tenth(double mm) {
        return Math.rint(10 * mm) / 10;
    }

    private static Bounds bounds(Boat boat) {
        boolean hull = boat.parts().stream().anyMatch(Part::isHull);
        return boat.parts().stream()
                .filter(p -> !hull || p.isHull())
                .flatMap(p -> p.shape().stream())
                .map(Shape::bounds)
                .reduce(Bounds::union)
                .orElse(new Bounds(0, 0, 0, 1, 1, 1));
    }
}
