package trimwright.desktop.tank3d;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.geometry.Point2D;
import javafx.geometry.Point3D;
import javafx.scene.Cursor;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.desktop.model.Edits;
import trimwright.desktop.model.Misfit;
import trimwright.desktop.model.Pose;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;
import trimwright.mesh.TriangleMesh;

/** The pool with the boat in it. Shows poses, going from one to the next smoothly; tells what is picked and dragged. */
public final class Tank extends Region implements PoolView {

    private static final double MARK_SHARE = 0.0075;

    private final Executor workers;
    private final Executor front;
    private final Eye eye = new Eye();
    private final Pool pool = new Pool();
    private final Marks marks = new Marks();
    private final MisfitMarks misfits = new MisfitMarks();
    private final TankWaters waters = new TankWaters();
    private final Lines lines = new Lines();
    private final TrialHandles trial = new TrialHandles(new Grips());
    private final Group ship = new Group();
    private final Group over = new Group(misfits.bodies());
    private final Affine place = new Affine();
    private final Group extra = new Group();
    private final Screen screen;
    private final Glide glide = new Glide(new Stance(Vector3D.PLUS_K, 0), this::step, this::arrived);
    private final Motion motion = new Motion(this::drawPlainly);

    private BoatNode boatNode;
    private Pose pose;
    private Frame frame;
    private Bounds whole;
    private HullLook look = HullLook.GLASS;
    private double cut;
    private String picked = "";
    private Handed handed;
    private Optional<Consumer<Vector3D>> onPointed = Optional.empty();

    /**
     * Makes an empty pool; the toolkit must be running, with 3D.
     *
     * @param workers where big surfaces are made ready for drawing
     * @param front the window's own thread
     */
    public Tank(Executor workers, Executor front) {
        this.workers = workers;
        this.front = front;
        ship.getTransforms().setAll(place);
        over.getTransforms().setAll(place);
        Group world = new Group(pool.lights(), ship, pool.water(), over);
        screen = new Screen(world, eye.camera());
        getStyleClass().add("tank");
        setFocusTraversable(true);
        getChildren().addAll(screen, marks.overlay(), misfits.overlay(), trial.pane());
        setMinSize(200, 150);
        new Hand(screen, eye, new Grip());
        screen.setFocusTraversable(true);
        screen.setAccessibleText("The boat in the pool");
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
        public boolean pointed(double xPx, double yPx) {
            Optional<Vector3D> hit = onPointed.isEmpty() ? Optional.empty() : hullAt(xPx, yPx);
            hit.ifPresent(p -> onPointed.get().accept(p));
            return hit.isPresent();
        }

        @Override
        public void picked(String id) {
            handed.picked(id);
        }

        @Override
        public boolean mayDrag(String id) {
            return id.equals(picked) && handed.mayDrag(id);
        }

        @Override
        public Stance stance() {
            return glide.stance();
        }

        @Override
        public void dragging(String id, Vector3D byMm, double stepMm) {
            Tank.this.moving();
            shift(id, byMm);
            handed.dragging(id, byMm, stepMm);
        }

        @Override
        public void dragged(String id, Vector3D byMm) {
            handed.dragged(id, byMm);
        }
    }

    /** What the grips of a trial waterline do. */
    private final class Grips implements TrialHandles.Pool {
        @Override
        public Bounds hull() {
            return frame.box();
        }

        @Override
        public Point2D upSeen() {
            return eye.seen(Vector3D.PLUS_K, glide.stance(), getWidth());
        }

        @Override
        public Point2D seen(Vector3D pointMm) {
            Vector3D p = pointMm.subtract(frame.middleMm());
            Point3D at = ship.localToScene(new Point3D(p.getX(), p.getY(), p.getZ()), true);
            return sceneToLocal(at.getX(), at.getY());
        }

        @Override
        public void held(WaterPlane plane, boolean released) {
            lines.trial(Optional.of(plane), boatNode.lined(), frame);
            trial.follow();
            handed.tried(plane, released);
        }
    }

    private Optional<Vector3D> hullAt(double xPx, double yPx) {
        if (boatNode == null) {
            return Optional.empty();
        }
        Affine toBoat = glide.stance().toBoat();
        double width = screen.getWidth();
        Point3D from = toBoat.transform(eye.place());
        Point3D toward = toBoat.deltaTransform(eye.toward(xPx - width / 2, yPx - screen.getHeight() / 2, width));
        Vector3D eyeAt = new Vector3D(from.getX(), from.getY(), from.getZ()).add(frame.middleMm());
        return new Ray(eyeAt, new Vector3D(toward.getX(), toward.getY(), toward.getZ()), eye.nearestMm())
                .firstOn(boatNode.lined());
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
    public void tell(Handed listener) {
        handed = listener;
    }

    @Override
    public void onPointed(Optional<Consumer<Vector3D>> listener) {
        onPointed = listener;
        screen.setCursor(listener.isPresent() ? Cursor.CROSSHAIR : Cursor.DEFAULT);
    }

    @Override
    public void showBoat(Boat boat) {
        Frame now = Frame.of(boat);
        // The view is kept while she is worked on.
        if (frame == null || !frame.name().equals(now.name())) {
            frame = now;
            begin();
        }
        whole = Frame.bounds(boat.parts());
        boatNode.show(boat);
        boatNode.pick(picked);
        lines.paint(boat.paintedLine(), boatNode.lined(), frame);
        misfits(List.of());
    }

    private void begin() {
        boatNode = new BoatNode(frame.middleMm(), frame.lengthMm(), workers, front);
        boatNode.look(look);
        ship.getChildren()
                .setAll(
                        boatNode.inner(),
                        extra,
                        lines.group(),
                        marks.bodies(),
                        waters.bodies(),
                        boatNode.clear(),
                        boatNode.outer());
        extra.getChildren().clear();
        eye.suit(frame.lengthMm());
        pool.suit(frame.lengthMm(), frame.box().sizeZ());
        pose = null;
    }

    @Override
    public void show(Pose next) {
        if (boatNode == null) {
            showBoat(next.boat());
        }
        boolean first = pose == null;
        pose = next;
        marks.put(next, frame.middleMm(), MARK_SHARE * frame.lengthMm());
        waters.show(next.boat(), next.water(), frame.middleMm());
        Stance wanted = Stance.of(next.water(), frame.middleMm());
        if (first) {
            glide.put(wanted);
            look(View.FREE);
        } else {
            glide.go(wanted, frame.lengthMm());
        }
    }

    private void step() {
        lines.hideWater();
        moving();
        stand();
    }

    private void arrived() {
        lines.water(pose.water(), boatNode.lined(), frame);
        if (!trial.isHolding()) {
            lines.trial(Optional.empty(), List.of(), frame);
        }
        trial.put(pose.water());
        stand();
    }

    private void stand() {
        place.setToTransform(glide.stance().toScene());
        redrawn();
    }

    private void moving() {
        if (boatNode != null) {
            motion.moved();
        }
    }

    private void drawPlainly(boolean plainly) {
        boatNode.setPlain(plainly);
        screen.setSmooth(!plainly);
    }

    private void redrawn() {
        if (boatNode != null) {
            eye.cut(corners(), cut);
            trial.follow();
        }
        marks.follow(screen);
        misfits.follow(screen);
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
        return frame.corners(whole, glide.goal());
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
    public void misfits(List<Misfit> found) {
        misfits.show(found, frame.middleMm(), frame.lengthMm());
        redrawn();
    }

    @Override
    public void trial(boolean shown) {
        trial.setShown(shown);
        if (pose != null) {
            redrawn();
        }
    }

    @Override
    public void setDark(boolean dark) {
        pool.setDark(dark);
    }

    @Override
    public void extra(List<TriangleMesh> meshes, boolean planned) {
        extra.getChildren().clear();
        if (boatNode == null) {
            return;
        }
        for (TriangleMesh mesh : meshes) {
            MeshView body = new MeshView(Surfaces.of(mesh, frame.middleMm(), 20, Surfaces.MOST_AT_REST));
            body.setMaterial(Paints.lit(planned ? Paints.PLANNED : Paints.PICKED, planned ? 1 : 0.45));
            body.setMouseTransparent(true);
            extra.getChildren().add(body);
        }
    }

    @Override
    protected void layoutChildren() {
        boolean first = screen.getWidth() != getWidth() || screen.getHeight() != getHeight();
        for (Region pane : List.of(screen, marks.overlay(), misfits.overlay(), trial.pane())) {
            pane.resizeRelocate(0, 0, getWidth(), getHeight());
        }
        if (first) {
            fit();
        }
    }
}
