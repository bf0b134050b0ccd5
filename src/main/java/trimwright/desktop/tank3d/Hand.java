package trimwright.desktop.tank3d;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The pointer in the pool: turns, pans and nears the view, picks parts, and drags a picked one along one axis. */
final class Hand {

    /** What the pool does for the hand. */
    interface Pool {
        void moved();

        void fit();

        /** Whether a click is meant for a point of the hull; then it is taken. */
        boolean pointed(double xPx, double yPx);

        void picked(String id);

        boolean mayDrag(String id);

        /** How the boat stands in the scene now. */
        Stance stance();

        void dragging(String id, Vector3D byMm, double stepMm);

        void dragged(String id, Vector3D byMm);
    }

    private static final double DEGREES_PER_PX = 0.35;
    private static final double ZOOM_PER_PX = 0.0022;
    /** The pointer must go this far before a click becomes a drag. */
    private static final double DRAG_BEGINS_PX = 4;

    private static final List<Vector3D> AXES = List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K);

    private final Region screen;
    private final Eye eye;
    private final Pool pool;
    private double lastX;
    private double lastY;
    private double pressX;
    private double pressY;
    private String held = "";
    private Vector3D axis;
    private Vector3D by = Vector3D.ZERO;

    Hand(Region screen, Eye eye, Pool pool) {
        this.screen = screen;
        this.eye = eye;
        this.pool = pool;
        screen.addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        screen.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        screen.addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
        screen.addEventHandler(ScrollEvent.SCROLL, this::scroll);
    }

    private void press(MouseEvent e) {
        screen.requestFocus();
        lastX = pressX = e.getX();
        lastY = pressY = e.getY();
        axis = null;
        by = Vector3D.ZERO;
        String id = partAt(e).orElse("");
        held = e.getButton() == MouseButton.PRIMARY && !e.isShiftDown() && !id.isEmpty() && pool.mayDrag(id) ? id : "";
        e.consume();
    }

    private static Optional<String> partAt(MouseEvent e) {
        Node node = e.getPickResult().getIntersectedNode();
        return node != null && node.getUserData() instanceof String id ? Optional.of(id) : Optional.empty();
    }

    private void drag(MouseEvent e) {
        double dx = e.getX() - lastX;
        double dy = e.getY() - lastY;
        lastX = e.getX();
        lastY = e.getY();
        if (!held.isEmpty()) {
            dragPart(e);
        } else if (e.getButton() == MouseButton.PRIMARY && !e.isShiftDown()) {
            eye.orbit(DEGREES_PER_PX * dx, DEGREES_PER_PX * dy);
            pool.moved();
        } else {
            eye.pan(dx, dy, screen.getWidth());
            pool.moved();
        }
        e.consume();
    }

    private void dragPart(MouseEvent e) {
        double dx = e.getX() - pressX;
        double dy = e.getY() - pressY;
        if (axis == null) {
            if (Math.hypot(dx, dy) < DRAG_BEGINS_PX) {
                return;
            }
            axis = alongPointer(dx, dy);
        }
        double step = e.isAltDown() ? 0.1 : 1;
        double stepped = Math.rint(Eye.along(seen(axis), dx, dy) / step) * step;
        by = axis.scalarMultiply(stepped);
        pool.dragging(held, by, step);
    }

    /** The axis of the boat that runs most nearly as the pointer moved. */
    private Vector3D alongPointer(double dx, double dy) {
        Vector3D best = AXES.get(0);
        double most = -1;
        for (Vector3D a : AXES) {
            Point2D seen = seen(a);
            double length = Math.hypot(seen.getX(), seen.getY()) + 1e-12;
            // An axis seen nearly end-on would turn a pixel into a leap.
            double fit = Math.abs(dx * seen.getX() + dy * seen.getY())
                    / length
                    * Math.sqrt(length * eye.mmPerPx(screen.getWidth()));
            if (fit > most) {
                most = fit;
                best = a;
            }
        }
        return best;
    }

    private Point2D seen(Vector3D axisOfBoat) {
        return eye.seen(axisOfBoat, pool.stance(), screen.getWidth());
    }

    private void release(MouseEvent e) {
        boolean still = Math.hypot(e.getX() - pressX, e.getY() - pressY) < DRAG_BEGINS_PX;
        if (!held.isEmpty() && axis != null) {
            pool.dragged(held, by);
        } else if (still && e.getButton() == MouseButton.PRIMARY) {
            if (pool.pointed(e.getX(), e.getY())) {
                held = "";
            } else if (e.getClickCount() == 2) {
                pool.fit();
            } else {
                pool.picked(partAt(e).orElse(""));
            }
        }
        held = "";
        e.consume();
    }

    private void scroll(ScrollEvent e) {
        double fromMiddleX = e.getX() - screen.getWidth() / 2;
        double fromMiddleY = e.getY() - screen.getHeight() / 2;
        eye.zoom(Math.exp(-ZOOM_PER_PX * e.getDeltaY()), fromMiddleX, fromMiddleY, screen.getWidth());
        pool.moved();
        e.consume();
    }
}
