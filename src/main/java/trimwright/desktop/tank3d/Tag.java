package trimwright.desktop.tank3d;

import javafx.geometry.Point2D;
import javafx.geometry.Point3D;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;

/** A label over the pool that belongs to a body in the scene, with a leader between the two. */
final class Tag {

    private static final double EDGE = 4;

    private final Node body;
    private final Label label;
    private final Line leader = new Line();
    private final double dx;
    private final double dy;

    /**
     * @param body what it belongs to: the origin of its own coordinates
     * @param dx where the label stands, px from the body; a negative one is the label's right end
     */
    Tag(Node body, String text, double dx, double dy, String style) {
        this.body = body;
        this.dx = dx;
        this.dy = dy;
        label = new Label(text);
        label.getStyleClass().addAll("tank-label", style);
        leader.getStyleClass().add("tank-leader");
    }

    void addTo(Pane overlay) {
        overlay.getChildren().addAll(leader, label);
    }

    void setVisible(boolean visible) {
        label.setVisible(visible);
        leader.setVisible(visible);
    }

    /** Where its body is seen now. */
    private Point2D seen(Pane overlay) {
        Point3D p = body.localToScene(Point3D.ZERO, true);
        return overlay.sceneToLocal(p.getX(), p.getY());
    }

    /** Puts the label into a column at the right edge of the view, tied to its body. */
    void stack(Pane overlay, Region screen, double y) {
        Point2D at = seen(overlay);
        label.applyCss();
        label.autosize();
        label.relocate(Math.max(EDGE, screen.getWidth() - label.getWidth() - 2 * EDGE), y);
        tie(at, label.getLayoutX());
    }

    /** Puts the label where its body is seen now, inside the view. */
    void follow(Pane overlay, Region screen) {
        if (!label.isVisible()) {
            return;
        }
        Point2D at = seen(overlay);
        label.autosize();
        double x = at.getX() + dx - (dx < 0 ? label.getWidth() : 0);
        double y = at.getY() + dy - label.getHeight() / 2;
        double right = screen.getWidth() - label.getWidth() - EDGE;
        double bottom = screen.getHeight() - label.getHeight() - EDGE;
        label.relocate(Math.max(EDGE, Math.min(right, x)), Math.max(EDGE, Math.min(bottom, y)));
        tie(at, label.getLayoutX() + (dx < 0 ? label.getWidth() : 0));
    }

    private void tie(Point2D at, double endX) {
        leader.setStartX(at.getX());
        leader.setStartY(at.getY());
        leader.setEndX(endX);
        leader.setEndY(label.getLayoutY() + label.getHeight() / 2);
    }
}
