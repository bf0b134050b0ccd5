package trimwright.desktop.tank3d;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.animation.Animation;
import javafx.animation.AnimationTimer;
import javafx.animation.PauseTransition;
import javafx.geometry.Point3D;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.layout.Region;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import javafx.util.Duration;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.desktop.model.Edits;
import trimwright.desktop.model.Pose;
import trimwright.mesh.Bounds;

/** The pool with the boat in it. Shows poses, going from one to the next smoothly; tells what is picked and dragged. */
public final class Tank extends Region implements PoolView {

    private static final double GLIDE_S = 0.45;
    private static final double MARK_SHARE = 0.0075;
    private static final double TUBE_SHARE = 0.0011;
    private static final double DASH_SHARE = 0.012;

    private final Eye eye = new Eye();
    private final Pool pool = new Pool();
    private final Marks marks = new Marks();
    private final Group ship = new Group();
    private final Affine place = new Affine();
    private final MeshView waterline = new MeshView();
    private final MeshView paintedLine = new MeshView();
    private final Group extra = new Group();
    private final SubScene scene;
    private final AnimationTimer glide = new AnimationTimer() {
        @Override
        public void handle(long now) {
            glide(now);
        }
    };

    private BoatNode boatNode;
    private Pose pose;
    private Stance stance = new Stance(Vector3D.PLUS_K, 0);
    private Stance from = stance;
    private Stance to = stance;
    private long beganNs;
    private boolean gliding;
    private String frameOf = "";
    private Optional<PaintedLine> painted = Optional.empty();
    private List<trimwright.mesh.TriangleMesh> paintedOn = List.of();
    private Bounds box;
    private Bounds whole;
    private HullLook look = HullLook.GLASS;
    private final PauseTransition stir = new PauseTransition(Duration.millis(350));
    private double cut;
    private String picked = "";
    private Consumer<String> onPicked = id -> {};
    private Dragging onDragging = (id, by, step) -> {};
    private BiConsumer<String, Vector3D> onDragged = (id, by) -> {};

    /** Makes an empty pool; the toolkit must be running, with 3D. */
    public Tank() {
        ship.getTransforms().setAll(place);
        waterline.setMaterial(Paints.glowing(Paints.WATERLINE));
        paintedLine.setMaterial(Paints.glowing(Paints.PAINTED_LINE));
        for (MeshView line : List.of(waterline, paintedLine)) {
            line.setMouseTransparent(true);
            line.setCullFace(CullFace.NONE);
        }
        Group world = new Group(pool.lights(), ship, pool.water());
        scene = new SubScene(world, 400, 300, true, SceneAntialiasing.BALANCED);
        scene.setCamera(eye.camera());
        getStyleClass().add("tank");
        setFocusTraversable(true);
        getChildren().addAll(scene, marks.overlay());
        stir.setOnFinished(e -> boatNode.setMoving(false));
        setMinSize(200, 150);
        new Hand(scene, eye, new Grip());
        scene.setFocusTraversable(true);
        scene.setAccessibleText("The boat in the pool");
    }

    /** What the hand does to the boat. */
    private final class Grip implements Hand.Pool {
        @Override
        public void moved() {
            Tank.this.moving();
            redrawn();
        }

        @Override
        public void fit() {
            Tank.this.fit();
        }

        @Override
        public void picked(String id) {
            onPicked.accept(id);
        }

        @Override
        public boolean mayDrag(String id) {
            return id.equals(picked)
                    && pose.boat().part(id).filter(p -> !p.isHull()).isPresent();
        }

        @Override
        public Stance stance() {
            return stance;
        }

        @Override
        public void dragging(String id, Vector3D byMm, double stepMm) {
            Tank.this.moving();
            shift(id, byMm);
            onDragging.dragging(id, byMm, stepMm);
        }

        @Override
        public void dragged(String id, Vector3D byMm) {
            onDragged.accept(id, byMm);
        }
    }

    private void shift(String id, Vector3D byMm) {
        List<String> moving = new ArrayList<>(List.of(id));
        pose.boat().part(id).ifPresent(p -> Edits.contents(pose.boat(), p).forEach(c -> moving.add(c.id())));
        boatNode.shift(moving, byMm);
    }

    @Override
    public Node node() {
        return this;
    }

    @Override
    public boolean isTurnable() {
        return true;
    }

    @Override
    public void onPicked(Consumer<String> listener) {
        onPicked = listener;
    }

    @Override
    public void onDragging(Dragging listener) {
        onDragging = listener;
    }

    @Override
    public void onDragged(BiConsumer<String, Vector3D> listener) {
        onDragged = listener;
    }

    @Override
    public void showBoat(Boat boat) {
        Bounds bounds = bounds(boat);
        // The view is kept while she is worked on; without a hull her bounds change with every part.
        String frame = boat.parts().stream().anyMatch(Part::isHull) ? bounds.toString() : boat.name();
        if (!frameOf.equals(frame)) {
            box = bounds;
            frameOf = frame;
            boatNode = new BoatNode(middle(), lengthMm());
            boatNode.look(look);
            ship.getChildren()
                    .setAll(
                            boatNode.inner(),
                            extra,
                            waterline,
                            paintedLine,
                            marks.bodies(),
                            boatNode.clear(),
                            boatNode.outer());
            extra.getChildren().clear();
            eye.suit(lengthMm());
            pool.suit(lengthMm(), bounds.sizeZ());
            pose = null;
        }
        whole = bounds(boat.parts());
        boatNode.show(boat);
        boatNode.pick(picked);
        paint(boat);
    }

    private void paint(Boat boat) {
        List<trimwright.mesh.TriangleMesh> lined = boatNode.lined();
        if (boat.paintedLine().equals(painted) && lined.equals(paintedOn)) {
            return;
        }
        painted = boat.paintedLine();
        paintedOn = lined;
        paintedLine.setMesh(boat.paintedLine()
                .map(line -> CutLine.tubes(
                        lined, line.plane(), middle(), 1.2 * TUBE_SHARE * lengthMm(), DASH_SHARE * lengthMm()))
                .orElse(null));
    }

    /** The box around the hull, which stays while she is loaded; without a hull around everything. */
    private static Bounds bounds(Boat boat) {
        List<Part> hull = boat.parts().stream().filter(Part::isHull).toList();
        return bounds(hull.isEmpty() ? boat.parts() : hull);
    }

    private static Bounds bounds(List<Part> parts) {
        return parts.stream()
                .flatMap(p -> p.shape().stream().flatMap(s -> p.mirror() ? Stream.of(s, s.mirrored()) : Stream.of(s)))
                .map(Shape::bounds)
                .reduce(Bounds::union)
                .orElse(new Bounds(-50, -50, -50, 50, 50, 50));
    }

    private Vector3D middle() {
        return new Vector3D(box.centreX(), box.centreY(), box.centreZ());
    }

    private double lengthMm() {
        return box.longestSide();
    }

    @Override
    public void show(Pose next) {
        if (boatNode == null) {
            showBoat(next.boat());
        }
        boolean first = pose == null;
        pose = next;
        marks.put(next, middle(), MARK_SHARE * lengthMm());
        Stance wanted = Stance.of(next.water(), middle());
        if (first) {
            stance = wanted;
            to = wanted;
            arrive();
            look(View.FREE);
            return;
        }
        if (wanted.isNear(to, lengthMm()) && gliding) {
            return;
        }
        from = stance;
        to = wanted;
        if (wanted.isNear(stance, lengthMm())) {
            arrive();
            return;
        }
        beganNs = 0;
        if (!gliding) {
            gliding = true;
            waterline.setVisible(false);
            glide.start();
        }
    }

    private void glide(long nowNs) {
        if (beganNs == 0) {
            beganNs = nowNs;
        }
        double share = (nowNs - beganNs) / 1e9 / GLIDE_S;
        if (share >= 1) {
            stance = to;
            arrive();
            return;
        }
        stance = from.toward(to, share * share * (3 - 2 * share));
        moving();
        stand();
    }

    private void arrive() {
        glide.stop();
        gliding = false;
        waterline.setMesh(CutLine.tubes(boatNode.lined(), pose.water(), middle(), TUBE_SHARE * lengthMm(), 0));
        waterline.setVisible(true);
        stand();
    }

    private void stand() {
        place.setToTransform(stance.toScene());
        redrawn();
    }

    /** Something moves; when nothing has for a while, everything is drawn finely again. */
    private void moving() {
        if (boatNode != null) {
            if (!stir.getStatus().equals(Animation.Status.RUNNING)) {
                boatNode.setMoving(true);
            }
            stir.playFromStart();
        }
    }

    private void redrawn() {
        if (boatNode != null) {
            eye.cut(corners(), cut);
        }
        marks.follow(scene);
    }

    @Override
    public void pick(String id) {
        picked = id;
        if (boatNode != null) {
            boatNode.pick(id);
        }
    }

    @Override
    public void look(HullLook other) {
        look = other;
        if (boatNode != null) {
            boatNode.look(other);
        }
    }

    @Override
    public void look(View other) {
        eye.look(other.turnDeg(), other.heightDeg());
        fit();
    }

    @Override
    public void fit() {
        if (boatNode != null && getWidth() > 0) {
            eye.fit(corners(), getWidth(), getHeight());
            redrawn();
        }
    }

    private List<Point3D> corners() {
        List<Point3D> corners = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            corners.add(to.scene(new Vector3D(
                            (i & 1) == 0 ? whole.minX() : whole.maxX(),
                            (i & 2) == 0 ? whole.minY() : whole.maxY(),
                            (i & 4) == 0 ? whole.minZ() : whole.maxZ())
                    .subtract(middle())));
        }
        return corners;
    }

    @Override
    public void nudge(double turnDeg, double heightDeg, double zoom) {
        eye.orbit(turnDeg, heightDeg);
        eye.zoom(zoom, 0, 0, getWidth());
        moving();
        redrawn();
    }

    @Override
    public void cut(double share) {
        cut = share;
        pool.setCut(share > 0);
        redrawn();
    }

    @Override
    public void showMarks(boolean shown) {
        marks.setShown(shown);
        redrawn();
    }

    @Override
    public void setDark(boolean dark) {
        pool.setDark(dark);
    }

    @Override
    public void extra(List<trimwright.mesh.TriangleMesh> meshes, boolean planned) {
        extra.getChildren().clear();
        if (boatNode == null) {
            return;
        }
        for (trimwright.mesh.TriangleMesh mesh : meshes) {
            MeshView body = new MeshView(Surfaces.of(mesh, middle(), 20, Surfaces.MOST_AT_REST));
            body.setMaterial(Paints.lit(planned ? Paints.PLANNED : Paints.PICKED, planned ? 1 : 0.45));
            body.setMouseTransparent(true);
            extra.getChildren().add(body);
        }
    }

    @Override
    protected void layoutChildren() {
        boolean first = scene.getWidth() != getWidth() || scene.getHeight() != getHeight();
        scene.setWidth(getWidth());
        scene.setHeight(getHeight());
        marks.overlay().resizeRelocate(0, 0, getWidth(), getHeight());
        if (first) {
            fit();
        }
    }
}
