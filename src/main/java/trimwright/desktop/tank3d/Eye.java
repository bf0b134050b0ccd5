package trimwright.desktop.tank3d;

import javafx.geometry.Point2D;
import javafx.geometry.Point3D;
import javafx.scene.PerspectiveCamera;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Translate;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The eye that looks at the pool: it turns about a point, nears it and moves with it. Lengths in mm of the scene. */
final class Eye {

    static final double FIELD_OF_VIEW_DEG = 24;
    private static final double MARGIN = 1.1;
    private static final double HIGHEST_DEG = 90;

    private final PerspectiveCamera camera = new PerspectiveCamera(true);
    private final Translate target = new Translate();
    private final Rotate turn = new Rotate(0, Rotate.Y_AXIS);
    private final Rotate tilt = new Rotate(0, Rotate.X_AXIS);
    private final Translate back = new Translate();
    private double nearMm = 1;
    private double leastMm = 1;
    private double mostMm = 1e6;

    Eye() {
        camera.setVerticalFieldOfView(false);
        camera.setFieldOfView(FIELD_OF_VIEW_DEG);
        camera.getTransforms().addAll(target, turn, tilt, back);
    }

    PerspectiveCamera camera() {
        return camera;
    }

    /**
     * Cuts away what is nearer than a plane square to the view.
     *
     * @param points corners of the box around what is seen
     * @param share how much of the box's depth is cut away; 0 for nothing
     */
    void cut(Iterable<Point3D> points, double share) {
        if (share <= 0) {
            camera.setNearClip(nearMm);
            return;
        }
        Point3D away = away();
        Point3D middle = new Point3D(target.getX(), target.getY(), target.getZ());
        double near = Double.MAX_VALUE;
        double far = -Double.MAX_VALUE;
        for (Point3D p : points) {
            double depth = p.subtract(middle).dotProduct(away);
            near = Math.min(near, depth);
            far = Math.max(far, depth);
        }
        camera.setNearClip(Math.max(nearMm, distanceMm() + near + share * (far - near)));
    }

    /** Sets clipping and the nearest and farthest distance for something of this size. */
    void suit(double sizeMm) {
        nearMm = sizeMm / 200;
        camera.setNearClip(nearMm);
        camera.setFarClip(sizeMm * 40);
        leastMm = sizeMm / 40;
        mostMm = sizeMm * 12;
    }

    /**
     * Looks from a side.
     *
     * @param turnDeg 0 from starboard, -90 from ahead
     * @param heightDeg 0 level, 90 from above
     */
    void look(double turnDeg, double heightDeg) {
        turn.setAngle(turnDeg);
        tilt.setAngle(-Math.max(-HIGHEST_DEG, Math.min(HIGHEST_DEG, heightDeg)));
    }

    /** Turns about the target. */
    void orbit(double turnDeg, double heightDeg) {
        look(turn.getAngle() + turnDeg, -tilt.getAngle() + heightDeg);
    }

    double distanceMm() {
        return -back.getZ();
    }

    double heightDeg() {
        return -tilt.getAngle();
    }

    double turnDeg() {
        return turn.getAngle();
    }

    /** mm of the scene at the target that one pixel covers. */
    double mmPerPx(double widthPx) {
        return 2 * distanceMm() * Math.tan(Math.toRadians(FIELD_OF_VIEW_DEG / 2)) / Math.max(1, widthPx);
    }

    /** Direction in the scene that points to the right in the picture. */
    Point3D right() {
        return direction(1, 0, 0);
    }

    /** Direction in the scene that points down in the picture. */
    Point3D down() {
        return direction(0, 1, 0);
    }

    /** Direction in the scene away from the viewer. */
    Point3D away() {
        return direction(0, 0, 1);
    }

    /** How many pixels one mm along an axis of the boat takes, at the middle of the view. */
    Point2D seen(Vector3D axisOfBoat, Stance stance, double widthPx) {
        Point3D scenic = stance.toScene().deltaTransform(axisOfBoat.getX(), axisOfBoat.getY(), axisOfBoat.getZ());
        double scale = 1 / mmPerPx(widthPx);
        return new Point2D(scenic.dotProduct(right()) * scale, scenic.dotProduct(down()) * scale);
    }

    /** mm along an axis that is seen so, for a way of the pointer; 0 where it is seen end-on. */
    static double along(Point2D seen, double dxPx, double dyPx) {
        double square = seen.dotProduct(seen);
        return square < 1e-9 ? 0 : seen.dotProduct(dxPx, dyPx) / square;
    }

    /** Where the eye is, in the scene. */
    Point3D place() {
        return new Point3D(target.getX(), target.getY(), target.getZ()).add(away().multiply(-distanceMm()));
    }

    /** Direction in the scene of what is seen at a pixel, counted from the middle of the picture; of unit depth. */
    Point3D toward(double xPx, double yPx, double widthPx) {
        double scale = mmPerPx(widthPx) / distanceMm();
        return away().add(right().multiply(xPx * scale)).add(down().multiply(yPx * scale));
    }

    /** Depth from which on things are seen, mm. */
    double nearestMm() {
        return camera.getNearClip();
    }

    private Point3D direction(double x, double y, double z) {
        return turn.deltaTransform(tilt.deltaTransform(x, y, z));
    }

    /** Moves the picture by pixels. */
    void pan(double dxPx, double dyPx, double widthPx) {
        double scale = mmPerPx(widthPx);
        shift(right().multiply(-dxPx * scale).add(down().multiply(-dyPx * scale)));
    }

    /**
     * Nears what is under the pointer.
     *
     * @param factor below 1 nearer, above 1 farther
     * @param xPx of the pointer, from the middle of the picture
     */
    void zoom(double factor, double xPx, double yPx, double widthPx) {
        double wanted = Math.max(leastMm, Math.min(mostMm, distanceMm() * factor));
        double real = wanted / distanceMm();
        double scale = mmPerPx(widthPx) * (1 - real);
        shift(right().multiply(xPx * scale).add(down().multiply(yPx * scale)));
        back.setZ(-wanted);
    }

    private void shift(Point3D by) {
        target.setX(target.getX() + by.getX());
        target.setY(target.getY() + by.getY());
        target.setZ(target.getZ() + by.getZ());
    }

    /** Comes as near as shows all the points. */
    void fit(Iterable<Point3D> points, double widthPx, double heightPx) {
        Point3D right = right();
        Point3D down = down();
        Point3D away = away();
        double[] least = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
        double[] most = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (Point3D p : points) {
            double[] at = {p.dotProduct(right), p.dotProduct(down), p.dotProduct(away)};
            for (int i = 0; i < 3; i++) {
                least[i] = Math.min(least[i], at[i]);
                most[i] = Math.max(most[i], at[i]);
            }
        }
        Point3D middle = right.multiply((least[0] + most[0]) / 2)
                .add(down.multiply((least[1] + most[1]) / 2))
                .add(away.multiply((least[2] + most[2]) / 2));
        double across = Math.tan(Math.toRadians(FIELD_OF_VIEW_DEG / 2));
        double along = across * Math.max(1, heightPx) / Math.max(1, widthPx);
        double distance = 0;
        for (Point3D p : points) {
            Point3D q = p.subtract(middle);
            double depth = q.dotProduct(away);
            distance = Math.max(distance, Math.abs(q.dotProduct(right)) * MARGIN / across - depth);
            distance = Math.max(distance, Math.abs(q.dotProduct(down)) * MARGIN / along - depth);
        }
        target.setX(middle.getX());
        target.setY(middle.getY());
        target.setZ(middle.getZ());
        back.setZ(-Math.max(leastMm, Math.min(mostMm, distance)));
    }
}
