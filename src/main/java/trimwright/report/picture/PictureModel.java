package trimwright.report.picture;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Kind;
import trimwright.boat.Piece;
import trimwright.boat.Shape;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.TriangleMesh;
import trimwright.report.raster.Bodies;
import trimwright.report.raster.TankLevel;

/**
 * The scene made ready for drawing: every piece as a mesh, and how far the boat reaches in the axes of the water.
 *
 * @param scene what is drawn
 * @param bodies every piece
 * @param ahead reach along the water plane's ahead axis, mm
 * @param port reach to port, mm
 * @param up reach upward, counted from the water surface, mm
 */
record PictureModel(BoatPicture.Scene scene, List<Body> bodies, Reach ahead, Reach port, Reach up) {

    /** Share of the boat's length that a marker for a part of unknown size takes. */
    private static final double MARKER_SHARE = 0.007;

    /**
     * One piece.
     *
     * @param kind what it is
     * @param outside whether it stands in the water itself
     * @param mesh its surface, mm in the boat's frame
     * @param levelMm height of a tank's water above the outside surface; empty where there is none
     */
    record Body(Kind kind, boolean outside, TriangleMesh mesh, Optional<Double> levelMm) {}

    /** From least to greatest. */
    record Reach(double least, double greatest) {
        private static final Reach NONE = new Reach(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

        static Reach of(Vector3D axis, TriangleMesh mesh) {
            double least = Double.POSITIVE_INFINITY;
            double greatest = Double.NEGATIVE_INFINITY;
            double[] xyz = mesh.xyz();
            double ax = axis.getX();
            double ay = axis.getY();
            double az = axis.getZ();
            for (int i = 0; i < xyz.length; i += 3) {
                double along = ax * xyz[i] + ay * xyz[i + 1] + az * xyz[i + 2];
                least = Math.min(least, along);
                greatest = Math.max(greatest, along);
            }
            return new Reach(least, greatest);
        }

        Reach with(Reach other) {
            return new Reach(Math.min(least, other.least), Math.max(greatest, other.greatest));
        }

        Reach with(double value) {
            return with(new Reach(value, value));
        }

        Reach less(double offset) {
            return new Reach(least - offset, greatest - offset);
        }

        double size() {
            return greatest - least;
        }

        double middle() {
            return 0.5 * (least + greatest);
        }
    }

    static PictureModel of(BoatPicture.Scene scene) {
        List<Body> bodies = new ArrayList<>();
        List<Vector3D> places = new ArrayList<>();
        WaterPlane water = scene.water();
        for (Piece piece : scene.boat().pieces()) {
            Optional<TriangleMesh> mesh = mesh(piece);
            if (mesh.isPresent()) {
                bodies.add(
                        new Body(piece.part().kind(), piece.displacer().isPresent(), mesh.get(), level(piece, water)));
            } else {
                places.add(piece.centreMm());
            }
        }
        Reach ahead = Reach.NONE;
        Reach port = Reach.NONE;
        Reach up = Reach.NONE;
        for (Body body : bodies) {
            ahead = ahead.with(Reach.of(water.ahead(), body.mesh()));
            port = port.with(Reach.of(water.port(), body.mesh()));
            up = up.with(Reach.of(water.up(), body.mesh()));
        }
        if (!(ahead.size() > 0 && port.size() > 0 && up.size() > 0)) {
            throw new IllegalArgumentException("nothing of the boat has a shape that could be drawn");
        }
        double markerMm = MARKER_SHARE * Math.max(ahead.size(), port.size());
        for (Vector3D place : places) {
            Body marker = new Body(Kind.FITTING, false, Bodies.marker(place, markerMm), Optional.empty());
            bodies.add(marker);
            ahead = ahead.with(Reach.of(water.ahead(), marker.mesh()));
            port = port.with(Reach.of(water.port(), marker.mesh()));
            up = up.with(Reach.of(water.up(), marker.mesh()));
        }
        return new PictureModel(scene, List.copyOf(bodies), ahead, port, up.less(water.heightMm()));
    }

    /** The kinds that are in the boat, in the order of {@link Kind}. */
    Set<Kind> kinds() {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        bodies.forEach(body -> kinds.add(body.kind()));
        return kinds;
    }

    boolean hasTankWater() {
        return bodies.stream().anyMatch(body -> body.levelMm().isPresent());
    }

    /** The surfaces that carry the painted line: the hull, or where there is none all that stands in the water. */
    List<Body> painted() {
        boolean hull = kinds().contains(Kind.HULL);
        return bodies.stream()
                .filter(body -> hull ? body.kind() == Kind.HULL : body.outside())
                .toList();
    }

    private static Optional<TriangleMesh> mesh(Piece piece) {
        Optional<Shape> shape = piece.part().shape().map(s -> piece.twin() ? s.mirrored() : s);
        if (shape.isPresent()) {
            return shape.map(Bodies::mesh);
        }
        return piece.displacer()
                .map(ball -> Bodies.ball(piece.centreMm(), Math.cbrt(3 * ball.volumeMm3() / (4 * Math.PI))));
    }

    /** Height of the water in a tank above the water outside. */
    private static Optional<Double> level(Piece piece, WaterPlane water) {
        return TankLevel.heightMm(piece, water).map(height -> height - water.heightMm());
    }
}
