package trimwright.desktop.tank3d;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;

/** Grips on the waterline: by the middle one it is lifted, by those at the ends and sides it is tilted. */
final class TrialHandles {

    /** What the pool is for the grips. */
    interface Pool {
        Bounds hull();

        /** How far one mm up in the boat is seen, px. */
        Point2D upSeen();

        /** Where a point of the boat is seen, in the pane of the grips. */
        Point2D seen(Vector3D pointMm);

        /** The line is held elsewhere; at the end of it {@code released}. */
        void held(WaterPlane plane, boolean released);
    }

    private enum Grip {
        WATER("↕ water", "Lifts the waterline to try", 0, 0),
        BOW("↕ bow", "Tilts it by the bow", 1, 0),
        STERN("↕ stern", "Tilts it by the stern", -1, 0),
        PORT("↕ port", "Tilts it to a side", 0, 1),
        STARBOARD("↕ starboard", "Tilts it to a side", 0, -1);

        private final String text;
        private final String tip;
        private final int ahead;
        private final int port;

        Grip(String text, String tip, int ahead, int port) {
            this.text = text;
            this.tip = tip;
            this.ahead = ahead;
            this.port = port;
        }
    }

    /** How far beyond the hull the grips stand, as a share of half its length and breadth. */
    private static final double BEYOND = 1.12;

    private static final double BEYOND_SIDE = 1.9;
    /** Grips nearer to the middle one than this cannot be told from it, px: the view is along that axis. */
    private static final double APART_PX = 60;
    /** One mm up must be at least this many px, as it is not from above. */
    private static final double LEAST_SEEN_PX = 0.05;

    private final Pool pool;
    private final Pane pane = new Pane();
    private final Map<Grip, Label> grips = new EnumMap<>(Grip.class);
    private Optional<LevelOnHull> line = Optional.empty();
    private LevelOnHull began;
    private double pressX;
    private double pressY;
    private boolean holding;

    TrialHandles(Pool pool) {
        this.pool = pool;
        pane.setPickOnBounds(false);
        pane.setVisible(false);
        for (Grip grip : Grip.values()) {
            Label label = new Label(grip.text);
            label.getStyleClass().addAll("tank-label", "trial-grip");
            label.setId("trial-grip-" + grip.name().toLowerCase(Locale.ROOT));
            label.setTooltip(new Tooltip(grip.tip));
            label.addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
            label.addEventHandler(MouseEvent.MOUSE_DRAGGED, e -> drag(grip, e));
            label.addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
            grips.put(grip, label);
            pane.getChildren().add(label);
        }
    }

    Pane pane() {
        return pane;
    }

    void setShown(boolean shown) {
        pane.setVisible(shown);
    }

    boolean isShown() {
        return pane.isVisible();
    }

    boolean isHolding() {
        return holding;
    }

    /** Puts the grips on a waterline. */
    void put(WaterPlane plane) {
        if (!holding) {
            line = LevelOnHull.of(plane, pool.hull());
        }
    }

    private void press(MouseEvent e) {
        pressX = e.getSceneX();
        pressY = e.getSceneY();
        began = line.orElse(null);
        holding = began != null;
        e.consume();
    }

    private void drag(Grip grip, MouseEvent e) {
        if (!holding) {
            return;
        }
        double upMm = Eye.along(pool.upSeen(), e.getSceneX() - pressX, e.getSceneY() - pressY);
        LevelOnHull now = switch (grip) {
            case WATER -> began.lifted(upMm);
            case BOW, STERN -> began.tiltedAtEnd(grip.ahead, upMm);
            case PORT, STARBOARD -> began.tiltedAtSide(grip.port, upMm);
        };
        line = Optional.of(now);
        pool.held(now.plane(), false);
        e.consume();
    }

    private void release(MouseEvent e) {
        if (holding) {
            holding = false;
            if (!line.orElseThrow().equals(began)) {
                pool.held(line.get().plane(), true);
            }
        }
        e.consume();
    }

    /** Puts the grips where the line is seen now. */
    void follow() {
        if (!isShown()) {
            return;
        }
        boolean up = pool.upSeen().magnitude() > LEAST_SEEN_PX;
        Point2D middle = line.map(l -> pool.seen(at(l, Grip.WATER))).orElse(null);
        grips.forEach((grip, label) -> {
            boolean seen = up && middle != null;
            if (seen) {
                Point2D at = pool.seen(at(line.get(), grip));
                seen = grip == Grip.WATER || at.distance(middle) > APART_PX;
                label.autosize();
                double x =
                        Math.max(2, Math.min(pane.getWidth() - label.getWidth() - 2, at.getX() - label.getWidth() / 2));
                label.relocate(x, at.getY() - label.getHeight() / 2);
            }
            label.setVisible(seen);
        });
    }

    private Vector3D at(LevelOnHull l, Grip grip) {
        Bounds hull = pool.hull();
        double x = hull.centreX() + grip.ahead * BEYOND * hull.sizeX() / 2;
        double y = hull.centreY() + grip.port * BEYOND_SIDE * hull.sizeY() / 2;
        return new Vector3D(x, y, l.heightAt(x, y));
    }
}
