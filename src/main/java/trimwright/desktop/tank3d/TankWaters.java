package trimwright.desktop.tank3d;

import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Piece;
import trimwright.boat.Shape;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.TriangleMesh;
import trimwright.report.raster.Bodies;
import trimwright.report.raster.TankLevel;

/** The water in the tanks, at its fill and level as the boat lies. */
final class TankWaters {

    /** So much inside the wall that the two are not drawn in one place, as a share of the tank's size. */
    private static final double WITHIN = 0.985;

    private static final int MOST_TRIANGLES = 20_000;

    private final Group bodies = new Group();

    TankWaters() {
        bodies.setMouseTransparent(true);
    }

    Group bodies() {
        return bodies;
    }

    /** Shows the water of a boat that lies so. */
    void show(Boat boat, WaterPlane water, Vector3D middleMm) {
        bodies.getChildren().clear();
        for (Piece piece : boat.pieces()) {
            TankLevel.heightMm(piece, water).ifPresent(height -> add(piece, water.at(height), middleMm));
        }
    }

    private void add(Piece piece, WaterPlane surface, Vector3D middle) {
        Optional<Shape> shape = piece.part().shape().map(s -> piece.twin() ? s.mirrored() : s);
        if (shape.isEmpty()) {
            return;
        }
        TriangleMesh water = WaterBody.below(within(Bodies.mesh(shape.get())), surface);
        MeshView view = new MeshView(Surfaces.of(water, middle, 1, MOST_TRIANGLES));
        view.setCullFace(CullFace.NONE);
        view.setMaterial(Paints.lit(Paints.TANK_WATER, 1));
        bodies.getChildren().add(view);
    }

    private static TriangleMesh within(TriangleMesh wall) {
        var b = wall.bounds();
        double[] centre = {b.centreX(), b.centreY(), b.centreZ()};
        double[] xyz = wall.xyz().clone();
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] = centre[i % 3] + WITHIN * (xyz[i] - centre[i % 3]);
        }
        return TriangleMesh.owning(xyz, wall.corners());
    }
}
