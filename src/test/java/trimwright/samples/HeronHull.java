package trimwright.samples;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.TriangleMesh;

/**
 * The outer surface of Heron, a coastal submarine that never was, at 1:60: a round pressure hull in a casing with a level
 * walking deck, saddle tanks port and starboard, a box keel that runs out into a skeg, and a tower. Closed, one shell.
 */
final class HeronHull {

    static final double LENGTH_MM = 1160;
    static final double DECK_MM = 104;

    private static final Curve DECK = Curve.through(
            0, 90, 50, 94, 120, 99, 200, 102.5, 270, DECK_MM, 800, DECK_MM, 930, 105, 1060, 108.5, 1160, 114);
    private static final Curve BODY_HALF_WIDTH = Curve.through(
            0, 0.9, 8, 3.2, 30, 9.5, 70, 18.5, 130, 28.5, 200, 36.5, 290, 42, 360, 43, 820, 43, 910, 40.5, 1000, 32.5,
            1070, 21, 1120, 10.5, 1148, 3.8, 1160, 0.9);
    private static final Curve BODY_HALF_HEIGHT = Curve.through(
            0, 9, 30, 13, 70, 19.5, 130, 28.5, 200, 36.5, 290, 42, 360, 43, 820, 43, 910, 42.5, 1000, 42, 1070, 42,
            1160, 42);
    private static final Curve BODY_CENTRE = Curve.through(
            0, 80, 30, 77.5, 70, 73, 130, 66, 200, 58.5, 290, 52.2, 360, 51, 820, 51, 910, 51.5, 1000, 54, 1070, 59,
            1120, 65, 1160, 72);
    private static final Curve CASING_HALF_WIDTH = Curve.through(
            0, 0.6, 10, 4, 40, 9.5, 100, 17, 190, 24, 300, 28, 420, 29.5, 760, 29.5, 880, 27.5, 990, 22, 1070, 14.5,
            1120, 8, 1150, 2.6, 1160, 0.6);
    private static final Curve SADDLE_HALF_WIDTH = Curve.through(
            0, 0.3, 70, 10, 150, 22, 220, 35, 280, 45, 350, 53, 430, 57.5, 500, 58.5, 740, 58.5, 810, 57, 880, 51.5,
            950, 41.5, 1010, 28, 1080, 12, 1160, 0.3);
    private static final Curve SADDLE_HALF_HEIGHT = Curve.through(
            0, 3, 150, 11, 220, 17, 290, 22.5, 400, 27, 480, 28.5, 740, 28.5, 820, 26.5, 910, 21, 1000, 13, 1160, 6);
    private static final Curve KEEL_HALF_WIDTH = Curve.through(
            0, 0.4, 20, 1.6, 66, 2.4, 140, 2.6, 200, 4, 280, 9.5, 330, 11, 850, 11, 960, 8, 1060, 4.5, 1140, 1.6, 1160,
            0.35);
    /** Depth of the keel below the body; the skeg is where the keel stays down while the body rises. */
    private static final Curve KEEL_RISE = Curve.through(
            0, 69.4, 30, 63, 62, 53.5, 66, 47, 74, 8, 79, 0.8, 90, 0, 900, 0, 980, 2.2, 1050, 8, 1110, 17.5, 1160, 29);

    /** Stations stand closer together at the ends and where the skeg stops. */
    private static final Curve SPACING = Curve.through(
            0, 0.8, 25, 1.6, 62, 1.4, 80, 1.4, 130, 3.6, 300, 4.2, 900, 4.2, 1060, 3.4, 1130, 1.8, 1160, 0.8);

    private HeronHull() {}

    /**
     * @param fineness 1 for the sample; twice as fine has about four times the triangles
     */
    static TriangleMesh mesh(double fineness) {
        int keel = cells(3, fineness);
        int keelSide = cells(6, fineness);
        int side = cells(50, fineness);
        int deck = cells(10, fineness);
        double[] stations = Stations.spaced(LENGTH_MM, SPACING, fineness);
        Vector3D[][] sections = new Vector3D[stations.length][];
        for (int i = 0; i < stations.length; i++) {
            sections[i] = section(stations[i], keel, keelSide, side, deck);
        }
        Loft loft = new Loft(sections);
        int middle = loft.points() - 1;
        int across = cells(8, fineness);
        int edge = middle - across;
        int aft = Stations.first(stations, 484);
        int fore = Stations.first(stations, 688);
        Patchwork patchwork = new Patchwork();
        loft.addOutward(patchwork, (i, j) -> j >= edge && i >= aft && i < fore);
        tower().addTo(patchwork, loft.deckLoop(aft, fore, edge), across, cells(2, fineness), cells(16, fineness));
        return patchwork.build();
    }

    private static Tower tower() {
        return new Tower(586, 92, 14.5, 0.12, x -> 25 + 33 * Curve.step(x, 537, 565), 2.2, 2.4);
    }

    private static int cells(int count, double fineness) {
        return (int) Math.max(1, Math.rint(count * fineness));
    }

    /** From the middle of the keel out, up the keel's side, round the body to the deck's edge and in to its middle. */
    private static Vector3D[] section(double x, int keel, int keelSide, int side, int deck) {
        double bottom = KEEL_RISE.at(x);
        double keelWidth = KEEL_HALF_WIDTH.at(x);
        double top = DECK.at(x);
        Vector3D[] round = outline(x).side(keelWidth);
        Vector3D junction = round[0];
        Vector3D edge = round[round.length - 1];
        Vector3D corner = new Vector3D(x, keelWidth, bottom);
        Vector3D[] section = Polyline.chained(
                Polyline.even(new Vector3D[] {new Vector3D(x, 0, bottom), corner}, keel),
                Polyline.even(new Vector3D[] {corner, junction}, keelSide),
                Polyline.even(round, side),
                Polyline.even(new Vector3D[] {edge, new Vector3D(x, 0, top)}, deck));
        for (int k = 0; k < section.length; k++) {
            section[k] = raked(section[k]);
        }
        return section;
    }

    /** Stem and stern slope: points move along x by an amount that depends on their height and fades out inboard. */
    private static Vector3D raked(Vector3D p) {
        double x = p.getX();
        double y = x == 0 || x == LENGTH_MM ? 0 : p.getY();
        double fallingStem = -26 * StrictMath.pow((114 - p.getZ()) / 85, 1.7) * Curve.step(x, 1020, LENGTH_MM);
        double risingStern = 16 * Curve.step(p.getZ(), 90, 66) * Curve.step(x, 110, 0);
        return new Vector3D(x + fallingStem + risingStern, y, p.getZ());
    }

    private static RoundSection outline(double x) {
        double halfWidth = BODY_HALF_WIDTH.at(x);
        return new RoundSection(
                x,
                BODY_CENTRE.at(x),
                halfWidth,
                BODY_HALF_HEIGHT.at(x),
                SADDLE_HALF_WIDTH.at(x),
                SADDLE_HALF_HEIGHT.at(x),
                CASING_HALF_WIDTH.at(x),
                DECK.at(x),
                Math.min(9, 0.35 * halfWidth));
    }
}
