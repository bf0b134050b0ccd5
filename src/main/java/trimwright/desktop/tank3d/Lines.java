package trimwright.desktop.tank3d;

import java.util.List;
import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import trimwright.boat.PaintedLine;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.TriangleMesh;

/** The lines on the hull: where the water stands, where it is to stand, and where it is tried. */
final class Lines {

    private static final double TUBE_SHARE = 0.0011;
    private static final double PAINT_TUBE_SHARE = 0.00132;
    private static final double DASH_SHARE = 0.012;
    /** How far a line may lie off its place, as a share of its radius. */
    private static final double OFF_SHARE = 0.3;

    private final MeshView water = line(Paints.WATERLINE);
    private final MeshView painted = line(Paints.PAINTED_LINE);
    private final MeshView tried = line(Paints.TRIED_LINE);
    private final Group group = new Group(water, painted, tried);
    private Optional<PaintedLine> paintedAt = Optional.empty();
    private List<TriangleMesh> paintedOn = List.of();

    private static MeshView line(Color colour) {
        MeshView line = new MeshView();
        line.setMaterial(Paints.glowing(colour));
        line.setMouseTransparent(true);
        line.setCullFace(CullFace.NONE);
        return line;
    }

    Group group() {
        return group;
    }

    /** Draws the painted line, unless it is drawn so already. */
    void paint(Optional<PaintedLine> line, List<TriangleMesh> on, Frame frame) {
        if (line.equals(paintedAt) && on.equals(paintedOn)) {
            return;
        }
        paintedAt = line;
        paintedOn = on;
        double length = frame.lengthMm();
        painted.setMesh(line.map(l -> drawn(l.plane(), on, frame, PAINT_TUBE_SHARE, DASH_SHARE * length))
                .orElse(null));
    }

    /** Draws where the water stands. */
    void water(WaterPlane plane, List<TriangleMesh> on, Frame frame) {
        water.setMesh(drawn(plane, on, frame, TUBE_SHARE, 0));
        water.setVisible(true);
    }

    /** She is on the way: the line on her hull is where the water was. */
    void hideWater() {
        water.setVisible(false);
    }

    /** Draws where a waterline is tried, or nothing. */
    void trial(Optional<WaterPlane> plane, List<TriangleMesh> on, Frame frame) {
        tried.setMesh(plane.map(p -> drawn(p, on, frame, PAINT_TUBE_SHARE, 0)).orElse(null));
    }

    private static javafx.scene.shape.TriangleMesh drawn(
            WaterPlane plane, List<TriangleMesh> on, Frame frame, double radiusShare, double dashMm) {
        double radius = radiusShare * frame.lengthMm();
        return Tubes.of(CutLine.of(on, plane, OFF_SHARE * radius, dashMm), frame.middleMm(), radius);
    }
}
