package trimwright.samples;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.TriangleMesh;

/** The hull of Coot, a harbour tug that never was, closed by her deck: round stern, raked stem, sheer, and a keel with a deadwood aft. */
final class CootHull {

    static final double LENGTH_MM = 450;

    private static final double CAMBER = 0.03;
    private static final int KEEL = 2;
    private static final int KEEL_SIDE = 5;
    private static final int SIDE = 28;
    private static final int DECK = 12;
    private static final int FINE = 400;

    private static final Curve SHEER =
            Curve.through(0, 93, 60, 88, 130, 85.5, 190, 85, 270, 88, 350, 95.5, 410, 104, 450, 111);
    private static final Curve DECK_HALF_WIDTH = Curve.through(
            0, 1.2, 0.8, 8, 3, 16.5, 10, 30, 22, 42.5, 40, 52, 70, 60.5, 110, 65.5, 160, 67.5, 240, 67.5, 300, 64.5,
            350, 56.5, 390, 45, 420, 31, 435, 21.5, 443, 14.5, 447, 9.2, 449, 5, 450, 1);
    private static final Curve BOTTOM = Curve.through(
            0, 62, 15, 56, 40, 45, 75, 31, 115, 19.5, 165, 12, 240, 9, 320, 9.5, 380, 12, 420, 17, 450, 26);
    private static final Curve KEEL_RISE = Curve.through(
            0, 60.8, 40, 43, 48, 34, 55, 4, 60, 0.4, 66, 0, 90, 0, 240, 2.5, 340, 5, 395, 8, 425, 13, 450, 23);
    private static final Curve KEEL_HALF_WIDTH = Curve.through(0, 1, 60, 2.6, 300, 3, 420, 2.4, 450, 0.9);
    /** Small where the section is a vee, large where it is boxy. */
    private static final Curve FULLNESS =
            Curve.through(0, 1.5, 60, 1.8, 120, 2.6, 180, 3.6, 260, 3.6, 330, 2.3, 390, 1.4, 450, 1.05);

    private static final Curve FLARE =
            Curve.through(0, 0.75, 70, 0.6, 150, 0.42, 260, 0.4, 330, 0.5, 400, 0.75, 450, 0.9);
    private static final Curve SPACING =
            Curve.through(0, 0.5, 30, 1.8, 48, 1.3, 66, 1.3, 100, 3, 380, 3, 430, 1.8, 450, 0.5);

    private CootHull() {}

    static TriangleMesh mesh() {
        double[] stations = Stations.spaced(LENGTH_MM, SPACING, 1);
        Vector3D[][] sections = new Vector3D[stations.length][];
        for (int i = 0; i < stations.length; i++) {
            sections[i] = half(stations[i]);
        }
        Patchwork patchwork = new Patchwork();
        new Loft(sections).addOutward(patchwork, Loft.NONE);
        return patchwork.build();
    }

    private static Vector3D[] half(double x) {
        double low = KEEL_RISE.at(x);
        double bottom = BOTTOM.at(x);
        double keel = KEEL_HALF_WIDTH.at(x);
        double sheer = SHEER.at(x);
        double wide = DECK_HALF_WIDTH.at(x);
        Vector3D[] side = new Vector3D[FINE + 1];
        for (int k = 0; k <= FINE; k++) {
            // Steps crowd toward the bottom, where the side turns under.
            double up = (double) k * k / (FINE * FINE);
            double out = StrictMath.pow(1 - StrictMath.pow(1 - up, FULLNESS.at(x)), FLARE.at(x));
            side[k] = new Vector3D(x, keel + (wide - keel) * out, bottom + (sheer - bottom) * up);
        }
        Vector3D[] deck = new Vector3D[DECK + 1];
        for (int k = 0; k <= DECK; k++) {
            double y = wide * (DECK - k) / DECK;
            double camber = closes(x) ? 0 : CAMBER * (wide - y * y / wide);
            deck[k] = new Vector3D(x, y, sheer + camber);
        }
        Vector3D corner = new Vector3D(x, keel, low);
        Vector3D[] half = Polyline.chained(
                Polyline.even(new Vector3D[] {new Vector3D(x, 0, low), corner}, KEEL),
                Polyline.even(new Vector3D[] {corner, side[0]}, KEEL_SIDE),
                Polyline.even(side, SIDE),
                deck);
        for (int j = 0; j < half.length; j++) {
            half[j] = raked(half[j]);
        }
        return half;
    }

    private static boolean closes(double x) {
        return x == 0 || x == LENGTH_MM;
    }

    /** The stem falls away below, the counter rises aft. */
    private static Vector3D raked(Vector3D p) {
        double x = p.getX();
        double y = closes(x) ? 0 : p.getY();
        double stem = -30 * StrictMath.pow(Math.max(0, 111 - p.getZ()) / 88, 1.4) * Curve.step(x, 360, LENGTH_MM);
        double counter = 18 * Curve.step(p.getZ(), 93, 60) * Curve.step(x, 110, 0);
        return new Vector3D(x + stem + counter, y, p.getZ());
    }
}
