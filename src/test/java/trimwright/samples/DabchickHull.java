package trimwright.samples;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.TriangleMesh;

/**
 * The printed hull of Dabchick, a small submarine that never was: three sections that butt together, each a closed solid of
 * about {@link #WALL_MM} of plastic with flood slots in the bottom and air slots under the deck.
 */
final class DabchickHull {

    static final double LENGTH_MM = 420;
    static final double WALL_MM = 1.8;

    /** Half of the room left for glue in a joint. */
    private static final double JOINT_MM = 0.1;

    private static final double AFT_JOINT_MM = 138;
    private static final double FORE_JOINT_MM = 290;
    private static final double INNER_STERN_MM = 14;
    private static final double INNER_STEM_MM = 10;
    private static final int SIDE = 40;
    private static final int DECK = 8;
    private static final int ACROSS = 6;

    private static final Curve DECK_HEIGHT =
            Curve.through(0, 61, 40, 64.5, 100, 67.5, 150, 68, 300, 68, 350, 68.6, 420, 72);
    private static final Curve HALF_WIDTH = Curve.through(
            0, 1.2, 8, 4.5, 25, 10, 60, 18.5, 100, 25.5, 140, 29.8, 180, 31, 290, 31, 330, 28.5, 365, 22, 395, 12.5,
            412, 5, 420, 1.2);
    private static final Curve HALF_HEIGHT =
            Curve.through(0, 7.5, 25, 12, 60, 19, 100, 25.5, 140, 29.8, 180, 31, 290, 31, 340, 30, 390, 26, 420, 22);
    private static final Curve CENTRE =
            Curve.through(0, 53.5, 25, 50, 60, 43, 100, 36.2, 140, 32, 180, 31, 290, 31, 340, 32.5, 390, 38.5, 420, 46);
    private static final Curve DECK_HALF_WIDTH =
            Curve.through(0, 0.9, 15, 5, 50, 10.5, 100, 15, 150, 17, 280, 17, 340, 14.5, 385, 9.5, 410, 3.8, 420, 0.9);
    private static final Curve SPACING = Curve.through(0, 0.9, 25, 1.8, 100, 3, 300, 3, 380, 2.4, 420, 0.9);

    private DabchickHull() {}

    static TriangleMesh stern() {
        return section(0, AFT_JOINT_MM - JOINT_MM, 62, 118);
    }

    static TriangleMesh middle() {
        return section(AFT_JOINT_MM + JOINT_MM, FORE_JOINT_MM - JOINT_MM, 152, 276);
    }

    static TriangleMesh bow() {
        return section(FORE_JOINT_MM + JOINT_MM, LENGTH_MM, 306, 366);
    }

    /** One section between two x, with slots of 18 mm at two places. */
    private static TriangleMesh section(double from, double to, double aftSlot, double foreSlot) {
        double[] all = Stations.spaced(LENGTH_MM, SPACING, 1);
        double[] stations = Stations.between(all, from, to);
        Slot[] slots = {
            slot(stations, aftSlot, 4, 6), slot(stations, foreSlot, 4, 6),
            slot(stations, aftSlot, 35, 37), slot(stations, foreSlot, 35, 37)
        };
        Loft outer = loft(stations, 0);
        Loft inner = loft(stations, WALL_MM);
        Patchwork solid = new Patchwork();
        Patchwork hollow = new Patchwork();
        addSurface(solid, outer, stations, slots, tower(0));
        addSurface(hollow, inner, stations, slots, tower(WALL_MM));
        solid.addTurned(hollow);
        int last = stations.length - 1;
        for (int j = 0; j + 1 < outer.points(); j++) {
            if (from > 0) {
                edge(solid, outer, inner, 0, j + 1, 0, j);
            }
            if (to < LENGTH_MM) {
                edge(solid, outer, inner, last, j, last, j + 1);
            }
        }
        for (Slot slot : slots) {
            for (int i = slot.aft(); i < slot.fore(); i++) {
                edge(solid, outer, inner, i + 1, slot.low(), i, slot.low());
                edge(solid, outer, inner, i, slot.high(), i + 1, slot.high());
            }
            for (int j = slot.low(); j < slot.high(); j++) {
                edge(solid, outer, inner, slot.aft(), j, slot.aft(), j + 1);
                edge(solid, outer, inner, slot.fore(), j + 1, slot.fore(), j);
            }
        }
        return solid.build();
    }

    private static void addSurface(Patchwork patchwork, Loft loft, double[] stations, Slot[] slots, Tower tower) {
        boolean carriesTower = stations[0] > 0 && stations[stations.length - 1] < LENGTH_MM;
        int edge = loft.points() - 1 - ACROSS;
        int aft = carriesTower ? Stations.first(stations, 172) : 0;
        int fore = carriesTower ? Stations.first(stations, 264) : 0;
        loft.addOutward(patchwork, (i, j) -> j >= edge && i >= aft && i < fore || Slot.anyAt(slots, i, j));
        if (carriesTower) {
            tower.addTo(patchwork, loft.deckLoop(aft, fore, edge), ACROSS, 2, 12);
        }
    }

    /** The wall's thickness between two neighbouring points, on both sides of the boat. */
    private static void edge(Patchwork solid, Loft outer, Loft inner, int i, int j, int nextI, int nextJ) {
        solid.bothSides(
                outer.sections()[i][j],
                outer.sections()[nextI][nextJ],
                inner.sections()[nextI][nextJ],
                inner.sections()[i][j]);
    }

    private static Tower tower(double inset) {
        return new Tower(218, 37 - inset, 9 - inset, 0.16, x -> 31, 1.5, 2.4 - 0.5 * inset);
    }

    private static Slot slot(double[] stations, double x, int low, int high) {
        return new Slot(Stations.first(stations, x - 9), Stations.first(stations, x + 9), low, high);
    }

    private static Loft loft(double[] stations, double inset) {
        Vector3D[][] sections = new Vector3D[stations.length][];
        for (int i = 0; i < stations.length; i++) {
            double x = stations[i];
            double within = inset == 0
                    ? x
                    : x + INNER_STERN_MM * Curve.step(x, 60, 0) - INNER_STEM_MM * Curve.step(x, 370, LENGTH_MM);
            sections[i] = half(within, inset, x == 0 || x == LENGTH_MM);
        }
        return new Loft(sections);
    }

    private static Vector3D[] half(double x, double inset, boolean closes) {
        double halfWidth = HALF_WIDTH.at(x) - inset;
        double halfHeight = HALF_HEIGHT.at(x) - inset;
        double top = DECK_HEIGHT.at(x) - inset;
        Vector3D[] side = new RoundSection(
                        x,
                        CENTRE.at(x),
                        halfWidth,
                        halfHeight,
                        0.5 * halfWidth,
                        0.5 * halfHeight,
                        DECK_HALF_WIDTH.at(x) - inset,
                        top,
                        Math.min(6, 0.35 * halfWidth))
                .side(0);
        Vector3D[] deck = {side[side.length - 1], new Vector3D(x, 0, top)};
        Vector3D[] half = Polyline.chained(Polyline.even(side, SIDE), Polyline.even(deck, DECK));
        for (int j = 0; j < half.length; j++) {
            half[j] = raked(half[j], closes);
        }
        return half;
    }

    /** The stem falls away below, the stern rises aft; an end closes to a line. */
    private static Vector3D raked(Vector3D p, boolean closes) {
        double x = p.getX();
        double stem = -12 * StrictMath.pow((72 - p.getZ()) / 48, 1.6) * Curve.step(x, 350, LENGTH_MM);
        double stern = 8 * Curve.step(p.getZ(), 61, 44) * Curve.step(x, 60, 0);
        return new Vector3D(x + stem + stern, closes ? 0 : p.getY(), p.getZ());
    }
}
