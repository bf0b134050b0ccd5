package trimwright.desktop;

import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Job;
import trimwright.desktop.panes.PartsPane;
import trimwright.desktop.panes.PoolPane;
import trimwright.desktop.tank3d.PoolView;
import trimwright.desktop.tank3d.View;

/** What keys do besides those of the menus. {@link HelpText#KEYS} lists them for the user. */
final class Keys {

    private static final double TURN_DEG = 6;
    private static final double NEARER = 0.87;

    private final Desk desk;
    private final MainWindow window;
    private final PoolPane poolPane;
    private final PoolView pool;
    private final PartsPane parts;

    private Keys(Desk desk, MainWindow window, PoolPane poolPane, PoolView pool, PartsPane parts) {
        this.desk = desk;
        this.window = window;
        this.poolPane = poolPane;
        this.pool = pool;
        this.parts = parts;
    }

    static void install(Scene scene, Desk desk, MainWindow window, PoolPane poolPane, PoolView pool, PartsPane parts) {
        Keys keys = new Keys(desk, window, poolPane, pool, parts);
        scene.addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            boolean typing = scene.getFocusOwner() instanceof TextInputControl;
            if (keys.always(e.getCode()) || !typing && keys.pressed(e)) {
                e.consume();
            }
        });
        // Lists and buttons take arrows for themselves; in the pool they nudge.
        pool.node().addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (keys.arrow(e)) {
                e.consume();
            }
        });
    }

    private boolean always(KeyCode code) {
        int job = code.ordinal() - KeyCode.F1.ordinal();
        if (code.isFunctionKey() && job >= 0 && job < Job.values().length) {
            window.choose(Job.values()[job]);
            return true;
        }
        return false;
    }

    private boolean pressed(KeyEvent e) {
        switch (e.getCode()) {
            case DIGIT1, NUMPAD1 -> pool.look(View.SIDE);
            case DIGIT2, NUMPAD2 -> pool.look(View.PLAN);
            case DIGIT3, NUMPAD3 -> pool.look(View.END);
            case DIGIT4, NUMPAD4 -> pool.look(View.FREE);
            case F -> pool.fit();
            case H -> poolPane.nextHullLook();
            case PLUS, ADD, EQUALS -> pool.nudge(0, 0, NEARER);
            case MINUS, SUBTRACT -> pool.nudge(0, 0, 1 / NEARER);
            case DELETE, BACK_SPACE -> parts.delete();
            case ESCAPE -> {
                desk.lookAt(null);
                desk.selected().set("");
            }
            default -> {
                return arrow(e);
            }
        }
        return true;
    }

    private boolean arrow(KeyEvent e) {
        int x = e.getCode() == KeyCode.RIGHT ? 1 : e.getCode() == KeyCode.LEFT ? -1 : 0;
        int y = e.getCode() == KeyCode.UP ? 1 : e.getCode() == KeyCode.DOWN ? -1 : 0;
        if (x == 0 && y == 0) {
            return false;
        }
        if (e.isShortcutDown()) {
            pool.nudge(-TURN_DEG * x, TURN_DEG * y, 1);
            return true;
        }
        double step = e.isAltDown() ? 0.1 : 1;
        Vector3D by = e.isShiftDown() ? new Vector3D(x * step, y * step, 0) : new Vector3D(x * step, 0, y * step);
        desk.selectedPart().filter(p -> !p.isHull()).ifPresent(p -> desk.moves().nudge(p.id(), by));
        return true;
    }
}
