package trimwright.samples;

import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A tower that stands on a level deck: an outline fuller forward, walls with a round foot and a round upper edge, and a top.
 *
 * @param centreXMm middle of its length
 * @param halfLengthMm half of its length
 * @param halfWidthMm about half of its width
 * @param fullness how much fuller it is forward, 0…0.3
 * @param heightMm height of the top above the deck over x
 * @param footMm radius of the foot
 * @param edgeMm radius of the upper edge
 */
record Tower(
        double centreXMm,
        double halfLengthMm,
        double halfWidthMm,
        double fullness,
        DoubleUnaryOperator heightMm,
        double footMm,
        double edgeMm) {

    private static final int FINE = 4000;
    private static final int ROUNDING_STEPS = 4;

    /**
     * Adds deck, walls and top within a loop of deck points.
     *
     * @param loop as {@link Loft#deckLoop} gives it
     * @param across cells from the middle line to the loop's side
     * @param deckRings rings of deck cells between the loop and the foot
     * @param wallRings rings of cells up the straight wall
     */
    void addTo(Patchwork patchwork, Vector3D[] loop, int across, int deckRings, int wallRings) {
        double deckZ = loop[0].getZ();
        Outline outline = outline(loop.length);
        Vector3D[] foot = ring(outline, footMm, m -> deckZ);
        Vector3D[] below = loop;
        for (int k = 1; k <= deckRings; k++) {
            below = addRing(patchwork, below, k == deckRings ? foot : blended(loop, foot, (double) k / deckRings));
        }
        for (int k = 1; k <= ROUNDING_STEPS; k++) {
            double angle = StrictMath.PI / 2 * k / ROUNDING_STEPS;
            double out = footMm * (1 - StrictMath.sin(angle));
            double up = footMm * (1 - StrictMath.cos(angle));
            below = addRing(patchwork, below, ring(outline, out, m -> deckZ + up));
        }
        for (int k = 1; k <= wallRings; k++) {
            double share = (double) k / wallRings;
            IntToDoubleFunction height = m -> deckZ + footMm + share * (heightOver(outline, m) - footMm - edgeMm);
            below = addRing(patchwork, below, ring(outline, 0, height));
        }
        for (int k = 1; k <= ROUNDING_STEPS; k++) {
            double angle = StrictMath.PI / 2 * k / ROUNDING_STEPS;
            double in = edgeMm * (1 - StrictMath.cos(angle));
            double down = edgeMm * (1 - StrictMath.sin(angle));
            below = addRing(patchwork, below, ring(outline, -in, m -> deckZ + heightOver(outline, m) - down));
        }
        addTop(patchwork, below, across, deckZ);
    }

    private static Vector3D[] addRing(Patchwork patchwork, Vector3D[] lower, Vector3D[] upper) {
        patchwork.band(lower, upper);
        return upper;
    }

    private static Vector3D[] blended(Vector3D[] from, Vector3D[] to, double share) {
        Vector3D[] result = new Vector3D[from.length];
        for (int m = 0; m < result.length; m++) {
            result[m] = Polyline.between(from[m], to[m], share);
        }
        return result;
    }

    private double heightOver(Outline outline, int m) {
        return heightMm.applyAsDouble(outline.points[m].getX());
    }

    private static Vector3D[] ring(Outline outline, double out, IntToDoubleFunction height) {
        Vector3D[] ring = new Vector3D[outline.points.length];
        for (int m = 0; m < ring.length; m++) {
            Vector3D p = outline.points[m].add(out, outline.normals[m]);
            ring[m] = new Vector3D(p.getX(), p.getY(), height.applyAsDouble(m));
        }
        return ring;
    }

    private record Outline(Vector3D[] points, Vector3D[] normals) {}

    /** Evenly spaced points with outward normals, counter-clockwise from the foremost. */
    private Outline outline(int count) {
        Vector3D[] fine = new Vector3D[FINE / 2 + 1];
        for (int k = 0; k < fine.length; k++) {
            double angle = 2 * StrictMath.PI * k / FINE;
            double c = StrictMath.cos(angle);
            double s = k == fine.length - 1 ? 0 : StrictMath.sin(angle);
            double ahead = Math.signum(c) * StrictMath.pow(Math.abs(c), 0.8);
            double aside = StrictMath.pow(s, 0.8) * (1 + fullness * c);
            fine[k] = new Vector3D(centreXMm + halfLengthMm * ahead, halfWidthMm * aside, 0);
        }
        Vector3D[] port = Polyline.even(fine, count / 2);
        Vector3D[] points = new Vector3D[count];
        Vector3D[] normals = new Vector3D[count];
        for (int m = 0; m < count; m++) {
            points[m] = m <= count / 2 ? port[m] : Patchwork.mirrored(port[count - m]);
        }
        for (int m = 0; m < count; m++) {
            Vector3D along = points[(m + 1) % count].subtract(points[(m + count - 1) % count]);
            normals[m] = new Vector3D(along.getY(), -along.getX(), 0).normalize();
        }
        return new Outline(points, normals);
    }

    /** Fills the upper loop with a grid blended from its four sides (a bilinear Coons patch). */
    private void addTop(Patchwork patchwork, Vector3D[] loop, int across, double deckZ) {
        int wide = 2 * across;
        int along = (loop.length - 2 * wide) / 2;
        Vector3D[][] grid = new Vector3D[along + 1][wide + 1];
        for (int j = 0; j <= wide; j++) {
            // From starboard to port; the loop starts in the middle of the fore end.
            grid[along][j] = loop[(loop.length + j - across) % loop.length];
            grid[0][j] = loop[across + along + wide - j];
        }
        for (int i = 0; i <= along; i++) {
            grid[i][wide] = loop[across + along - i];
            grid[i][0] = loop[across + along + wide + i];
        }
        for (int i = 1; i < along; i++) {
            double u = (double) i / along;
            for (int j = 1; j < wide; j++) {
                double v = (double) j / wide;
                Vector3D ends = Polyline.between(grid[0][j], grid[along][j], u);
                Vector3D sides = Polyline.between(grid[i][0], grid[i][wide], v);
                Vector3D cornersOnly = Polyline.between(
                        Polyline.between(grid[0][0], grid[along][0], u),
                        Polyline.between(grid[0][wide], grid[along][wide], u),
                        v);
                Vector3D p = ends.add(sides).subtract(cornersOnly);
                grid[i][j] = new Vector3D(p.getX(), p.getY(), deckZ + heightMm.applyAsDouble(p.getX()));
            }
        }
        for (int i = 0; i < along; i++) {
            for (int j = 0; j < wide; j++) {
                patchwork.quad(grid[i][j], grid[i + 1][j], grid[i + 1][j + 1], grid[i][j + 1]);
            }
        }
    }
}
