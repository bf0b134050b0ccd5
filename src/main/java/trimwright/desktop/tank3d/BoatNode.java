package trimwright.desktop.tank3d;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
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

/**
 * The boat herself, in her own frame about her middle: what is in her first, then the hull through which that is seen. What has many
 * triangles is made ready in the background and appears when it is.
 */
final class BoatNode {

    /** More triangles than this would hold up the pointer for longer than a frame. */
    private static final int MOST_AT_ONCE = 20_000;

    private static final double GLASS = 0.28;
    private static final double CYLINDER_GLASS = 0.3;
    private static final double TANK_GLASS = 0.45;
    private static final double SMOOTH_DEG = 40;
    private static final double FLAT_DEG = 20;
    /** Radius of the marker for a part of unknown size, as a share of the boat's length. */
    private static final double MARKER_SHARE = 0.006;

    private static final List<CullFace> THROUGH = List.of(CullFace.FRONT, CullFace.BACK);
    private static final List<CullFace> WHOLE = List.of(CullFace.NONE);

    private final Executor workers;
    private final Executor front;
    private final Vector3D middle;
    private final double lengthMm;
    private final Group inner = new Group();
    private final Group clear = new Group();
    private final Group outer = new Group();
    private final Map<String, Shown> shown = new HashMap<>();
    private HullLook look = HullLook.GLASS;
    private String picked = "";

    private boolean plain;

    /** When a drawing of a surface is seen. */
    private enum When {
        ALWAYS,
        FINE,
        PLAIN
    }

    /** One drawing of a surface: of the part itself or its twin. */
    private record Drawing(MeshView view, boolean twin, When when) {}

    /** A surface made ready for the graphics: as it is at rest, and coarser where that is too much to be moved. */
    private record Ready(
            boolean twin, javafx.scene.shape.TriangleMesh fine, Optional<javafx.scene.shape.TriangleMesh> coarse) {}

    /** A part as drawn; its drawings come later where it is big. */
    private record Shown(Part part, List<Drawing> drawings, List<TriangleMesh> meshes) {

        List<MeshView> views() {
            return drawings.stream().map(Drawing::view).toList();
        }
    }

    /**
     * @param workers where big surfaces are made ready
     * @param front the window's own thread
     */
    BoatNode(Vector3D middleMm, double lengthMm, Executor workers, Executor front) {
        this.middle = middleMm;
        this.lengthMm = lengthMm;
        this.workers = workers;
        this.front = front;
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
        Map<String, Shown> old = new HashMap<>();
        gone.forEach(id -> old.put(id, shown.remove(id)));
        for (Part part : boat.parts()) {
            if (!shown.containsKey(part.id())) {
                add(part, Optional.ofNullable(old.remove(part.id())));
            }
        }
        old.values().forEach(this::remove);
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

    /** Draws a part; what it replaces stays until it is ready. */
    private void add(Part part, Optional<Shown> old) {
        List<Boolean> sides = part.mirror() ? List.of(false, true) : List.of(false);
        List<TriangleMesh> meshes = sides.stream().map(twin -> mesh(part, twin)).toList();
        Shown now = new Shown(part, new ArrayList<>(), meshes);
        shown.put(part.id(), now);
        double crease = part.isHull() ? SMOOTH_DEG : FLAT_DEG;
        if (meshes.stream().mapToInt(TriangleMesh::triangleCount).sum() <= MOST_AT_ONCE) {
            old.ifPresent(this::remove);
            draw(now, ready(meshes, crease));
            return;
        }
        workers.execute(() -> {
            List<Ready> ready = ready(meshes, crease);
            front.execute(() -> {
                old.ifPresent(this::remove);
                // She may have been changed again meanwhile.
                if (shown.get(part.id()) == now) {
                    draw(now, ready);
                    restyle();
                }
            });
        });
    }

    private List<Ready> ready(List<TriangleMesh> meshes, double crease) {
        List<Ready> ready = new ArrayList<>();
        for (TriangleMesh mesh : meshes) {
            boolean big = mesh.triangleCount() > Surfaces.MOST_MOVING;
            ready.add(new Ready(
                    !ready.isEmpty(),
                    Surfaces.of(mesh, middle, crease, Surfaces.MOST_AT_REST),
                    big ? Optional.of(Surfaces.of(mesh, middle, crease, Surfaces.MOST_MOVING)) : Optional.empty()));
        }
        return ready;
    }

    private void draw(Shown now, List<Ready> ready) {
        Part part = now.part();
        for (Ready one : ready) {
            draw(now, one.twin(), one.coarse().isPresent() ? When.FINE : When.ALWAYS, one.fine());
            one.coarse().ifPresent(coarse -> draw(now, one.twin(), When.PLAIN, coarse));
        }
        Group group = part.isHull() ? outer : isClear(part) ? clear : inner;
        List<MeshView> views = now.views();
        // A tank may stand in a cylinder, and is seen through it.
        group.getChildren().addAll(part.isTank() ? 0 : group.getChildren().size(), views);
    }

    private void draw(Shown now, boolean twin, When when, javafx.scene.shape.TriangleMesh surface) {
        // Of what is seen through, the far side first.
        for (CullFace cull : isClear(now.part()) ? THROUGH : WHOLE) {
            MeshView view = view(now.part(), surface, cull);
            view.setVisible(isSeen(when));
            now.drawings().add(new Drawing(view, twin, when));
        }
    }

    private boolean isSeen(When when) {
        return when == When.ALWAYS || (when == When.PLAIN) == plain;
    }

    /** Draws big surfaces coarser, or no longer. */
    void setPlain(boolean nowPlain) {
        plain = nowPlain;
        for (Shown one : shown.values()) {
            one.drawings().forEach(d -> d.view().setVisible(isSeen(d.when())));
        }
    }

    private static boolean isClear(Part part) {
        return part.isHull() || part.isTank() || part.kind() == Kind.CYLINDER || part.kind() == Kind.AIR;
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
                    : part.isTank() ? TANK_GLASS : isClear(part) ? CYLINDER_GLASS : 1;
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
