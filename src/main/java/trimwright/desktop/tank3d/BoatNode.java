package trimwright.desktop.tank3d;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.DrawMode;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Translate;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.mesh.TriangleMesh;
import trimwright.report.raster.Bodies;

/** The boat herself, in her own frame about her middle: what is in her first, then the hull through which that is seen. */
final class BoatNode {

    private static final double GLASS = 0.28;
    private static final double CYLINDER_GLASS = 0.3;
    private static final double SMOOTH_DEG = 40;
    private static final double FLAT_DEG = 20;
    /** Radius of the marker for a part of unknown size, as a share of the boat's length. */
    private static final double MARKER_SHARE = 0.006;

    private static final List<CullFace> THROUGH = List.of(CullFace.FRONT, CullFace.BACK);
    private static final List<CullFace> WHOLE = List.of(CullFace.NONE);

    private final Vector3D middle;
    private final double lengthMm;
    private final Group inner = new Group();
    private final Group clear = new Group();
    private final Group outer = new Group();
    private final Map<String, Shown> shown = new HashMap<>();
    private HullLook look = HullLook.GLASS;
    private String picked = "";

    private boolean moving;

    /** When a drawing of a surface is seen. */
    private enum When {
        ALWAYS,
        AT_REST,
        MOVING
    }

    /** One drawing of a surface: of the part itself or its twin. */
    private record Drawing(MeshView view, boolean twin, When when) {}

    /** A part as drawn. */
    private record Shown(Part part, List<Drawing> drawings, List<TriangleMesh> meshes) {

        List<MeshView> views() {
            return drawings.stream().map(Drawing::view).toList();
        }
    }

    BoatNode(Vector3D middleMm, double lengthMm) {
        this.middle = middleMm;
        this.lengthMm = lengthMm;
    }

    /** What is opaque, to be drawn first. */
    Group inner() {
        return inner;
    }

    /** What lets through what is in it: watertight cylinders. */
    Group clear() {
        return clear;
    }

    /** The hull, to be drawn after all that is in her. */
    Group outer() {
        return outer;
    }

    Vector3D middleMm() {
        return middle;
    }

    /** Draws the parts of a boat; those that are the same as before stay as they are. */
    void show(Boat boat) {
        Map<String, Part> wanted = new HashMap<>();
        boat.parts().forEach(p -> wanted.put(p.id(), p));
        List<String> gone = shown.entrySet().stream()
                .filter(e -> !isSame(e.getValue().part(), wanted.get(e.getKey())))
                .map(Map.Entry::getKey)
                .toList();
        gone.forEach(id -> remove(shown.remove(id)));
        for (Part part : boat.parts()) {
            if (!shown.containsKey(part.id())) {
                add(part);
            }
        }
        restyle();
    }

    private static boolean isSame(Part old, Part now) {
        return now != null
                && old.kind() == now.kind()
                && old.shape().equals(now.shape())
                && old.mirror() == now.mirror()
                && old.inside().equals(now.inside())
                && (old.shape().isPresent()
                        || old.givenCentreMm().equals(now.givenCentreMm())
                                && old.weighedMassG().equals(now.weighedMassG())
                                && old.densityGPerCm3().equals(now.densityGPerCm3()));
    }

    private void remove(Shown old) {
        for (Group group : List.of(inner, clear, outer)) {
            group.getChildren().removeAll(old.views());
        }
    }

    private void add(Part part) {
        List<TriangleMesh> meshes = new ArrayList<>();
        List<Drawing> drawings = new ArrayList<>();
        for (boolean twin : part.mirror() ? new boolean[] {false, true} : new boolean[] {false}) {
            TriangleMesh mesh = mesh(part, twin);
            meshes.add(mesh);
            double crease = part.isHull() ? SMOOTH_DEG : FLAT_DEG;
            boolean big = mesh.triangleCount() > Surfaces.MOST_MOVING;
            draw(
                    part,
                    twin,
                    big ? When.AT_REST : When.ALWAYS,
                    Surfaces.of(mesh, middle, crease, Surfaces.MOST_AT_REST),
                    drawings);
            if (big) {
                draw(part, twin, When.MOVING, Surfaces.of(mesh, middle, crease, Surfaces.MOST_MOVING), drawings);
            }
        }
        Group group = part.isHull() ? outer : isClear(part) ? clear : inner;
        group.getChildren().addAll(drawings.stream().map(Drawing::view).toList());
        shown.put(part.id(), new Shown(part, drawings, meshes));
    }

    private void draw(
            Part part, boolean twin, When when, javafx.scene.shape.TriangleMesh surface, List<Drawing> drawings) {
        // Of what is seen through, the far side first.
        for (CullFace cull : isClear(part) ? THROUGH : WHOLE) {
            MeshView view = view(part, surface, cull);
            view.setVisible(isSeen(when));
            drawings.add(new Drawing(view, twin, when));
        }
    }

    private boolean isSeen(When when) {
        return when == When.ALWAYS || (when == When.MOVING) == moving;
    }

    /** Draws big surfaces coarser while the view or the boat moves, so that the motion keeps up with the hand. */
    void setMoving(boolean nowMoving) {
        moving = nowMoving;
        for (Shown one : shown.values()) {
            one.drawings().forEach(d -> d.view().setVisible(isSeen(d.when())));
        }
    }

    private static boolean isClear(Part part) {
        return part.isHull() || part.kind() == Kind.CYLINDER || part.kind() == Kind.AIR;
    }

    private TriangleMesh mesh(Part part, boolean twin) {
        if (part.shape().isPresent()) {
            Shape shape = part.shape().get();
            return Bodies.mesh(twin ? shape.mirrored() : shape);
        }
        Vector3D centre = part.givenCentreMm().orElseThrow();
        Vector3D at = twin ? Shape.mirrored(centre) : centre;
        if (part.densityGPerCm3().isEmpty()) {
            return Bodies.marker(at, MARKER_SHARE * lengthMm);
        }
        double volumeMm3 =
                1000 * part.weighedMassG().orElseThrow() / part.densityGPerCm3().get();
        return Bodies.ball(at, Math.cbrt(3 * volumeMm3 / (4 * Math.PI)));
    }

    private MeshView view(Part part, javafx.scene.shape.TriangleMesh surface, CullFace cull) {
        MeshView view = new MeshView(surface);
        view.setCullFace(cull);
        view.setUserData(part.id());
        // Picking looks at every face: a big hull would make the pointer stick, and is not dragged anyway.
        view.setMouseTransparent(part.isHull());
        return view;
    }

    /** Which part is picked; empty for none. */
    void pick(String id) {
        picked = id;
        restyle();
    }

    void look(HullLook other) {
        look = other;
        restyle();
    }

    private void restyle() {
        shown.forEach((id, one) -> {
            Part part = one.part();
            Color colour = id.equals(picked) ? Paints.PICKED : Paints.of(part.kind());
            boolean wire = part.isHull() && look == HullLook.WIRE;
            double opacity = part.isHull()
                    ? (look == HullLook.GLASS ? GLASS : 1)
                    : part.kind() == Kind.CYLINDER || part.kind() == Kind.AIR ? CYLINDER_GLASS : 1;
            for (MeshView view : one.views()) {
                view.setDrawMode(wire ? DrawMode.LINE : DrawMode.FILL);
                view.setMaterial(Paints.lit(colour, opacity));
            }
        });
    }

    /** Moves the drawing of parts, twins to the other side, without changing them. */
    void shift(List<String> ids, Vector3D byMm) {
        for (String id : ids) {
            Shown one = shown.get(id);
            if (one == null) {
                continue;
            }
            for (Drawing drawing : one.drawings()) {
                double side = drawing.twin() ? -1 : 1;
                drawing.view().getTransforms().setAll(new Translate(byMm.getX(), side * byMm.getY(), byMm.getZ()));
            }
        }
    }

    /** The surfaces that carry the waterline: the hull, or where there is none everything. */
    List<TriangleMesh> lined() {
        boolean hull = shown.values().stream().anyMatch(s -> s.part().isHull());
        return shown.values().stream()
                .filter(s -> hull ? s.part().isHull() : s.part().inside().isEmpty())
                .flatMap(s -> s.meshes().stream())
                .toList();
    }
}
