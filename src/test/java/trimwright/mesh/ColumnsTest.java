package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What lies above and below a point, on an octahedron |x| + |y| + |z| = r, whose planes are ±x ± y ± z = r, and on a ball. */
class ColumnsTest {

    private static final double R = 8;
    private static final TriangleMesh OCTAHEDRON = TriangleMesh.owning(
            new double[] {R, 0, 0, -R, 0, 0, 0, R, 0, 0, -R, 0, 0, 0, R, 0, 0, -R},
            new int[] {0, 2, 4, 2, 1, 4, 1, 3, 4, 3, 0, 4, 2, 0, 5, 1, 2, 5, 3, 1, 5, 0, 3, 5});

    /** Everything that is told of a point. */
    private record Seen(List<Integer> triangles, List<Integer> senses, List<Double> distances, List<Integer> touched) {

        static Seen from(Columns columns, double x, double y, double z) {
            Seen seen = new Seen(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
            columns.visit(x, y, z, new Columns.Visitor() {
                @Override
                public void crosses(int triangle, int sense, double distance) {
                    seen.triangles.add(triangle);
                    seen.senses.add(sense);
                    seen.distances.add(distance);
                }

                @Override
                public void touches(int triangle) {
                    seen.touched.add(triangle);
                }
            });
            return seen;
        }

        /** How often what lies ahead along the axis winds around the point. */
        int winding() {
            int winding = 0;
            for (int i = 0; i < senses.size(); i++) {
                winding += senses.get(i) * distances.get(i) < 0 ? senses.get(i) : 0;
            }
            return winding;
        }
    }

    /** The sign of a coordinate on a triangle: that of the corner which lies on its axis. */
    private static int sign(int triangle, int axis) {
        for (int k = 0; k < 3; k++) {
            int corner = OCTAHEDRON.corners()[3 * triangle + k];
            if (corner / 2 == axis) {
                return corner % 2 == 0 ? 1 : -1;
            }
        }
        throw new AssertionError();
    }

    /** On a lattice, so that many points stand exactly over edges and corners. */
    @Test
    void pointsOfALatticeAroundAnOctahedron() {
        for (int axis = 0; axis < 3; axis++) {
            Columns columns = new Columns(OCTAHEDRON, axis, 1e-9);
            for (int i = 0; i < 19 * 19 * 19; i++) {
                double[] p = {i % 19 - 9, i / 19 % 19 - 9, i / 361 - 9};
                double sum = Math.abs(p[0]) + Math.abs(p[1]) + Math.abs(p[2]);
                Seen seen = Seen.from(columns, p[0], p[1], p[2]);
                if (sum != R) {
                    assertEquals(sum < R ? 1 : 0, seen.winding());
                    assertEquals(
                            0, seen.senses.stream().mapToInt(Integer::intValue).sum());
                }
                // Well within the outline a line along the axis comes in once and goes out once.
                if (sum != R && sum - Math.abs(p[axis]) < R) {
                    assertEquals(2, seen.senses.size());
                }
                for (int k = 0; k < seen.triangles.size(); k++) {
                    int t = seen.triangles.get(k);
                    assertEquals(sign(t, axis), seen.senses.get(k));
                    double distance = (sign(t, 0) * p[0] + sign(t, 1) * p[1] + sign(t, 2) * p[2] - R) / Math.sqrt(3);
                    assertEquals(distance, seen.distances.get(k), 1e-12);
                    boolean before = sign(t, (axis + 1) % 3) * p[(axis + 1) % 3] >= 0
                            && sign(t, (axis + 2) % 3) * p[(axis + 2) % 3] >= 0;
                    assertTrue(before, "not in the column of its triangle");
                }
                for (int t : seen.touched) {
                    assertEquals(R, sum);
                    for (int k = 0; k < 3; k++) {
                        assertTrue(sign(t, k) * p[k] >= 0);
                    }
                }
                // Of a triangle inside a point is told; at a border at least one.
                assertEquals(sum == R, !seen.touched.isEmpty());
                if (sum == R && p[0] * p[1] * p[2] == 0) {
                    assertTrue(seen.touched.size() > 1, "of two neighbours both");
                }
            }
        }
    }

    /** A point 0.9 and 1.1 of the tolerance off a face, and off its edge in the plane of the face. */
    @Test
    void theToleranceIsADistance() {
        TriangleMesh box = Solids.box(0, 0, 0, 40, 20, 10);
        double tolerance = 0.5;
        for (int axis = 0; axis < 3; axis++) {
            Columns columns = new Columns(box, axis, tolerance);
            for (double share : new double[] {0.9, 1.1}) {
                double d = share * tolerance;
                boolean on = share < 1;
                double[][] points = {
                    {17, 11, 10 + d}, {17, 11, 10 - d}, {17, -d, 3}, {-d, 7, 3}, {40 + d, 7, 3}, {17, 20 + d, 3}
                };
                for (double[] p : points) {
                    assertEquals(
                            on, !Seen.from(columns, p[0], p[1], p[2]).touched.isEmpty());
                }
                // In the plane of the top, beyond each of its borders: no triangle of the top is touched.
                double[][] beside = {{17, 20 + d, 10}, {17, -d, 10}, {-d, 11, 10}, {40 + d, 11, 10}};
                for (double[] p : beside) {
                    Seen seen = Seen.from(columns, p[0], p[1], p[2]);
                    assertEquals(on, seen.touched.contains(2) || seen.touched.contains(3));
                    assertEquals(0, seen.winding());
                }
            }
        }
    }

    /** Inside the sphere through the nearest points of its triangles, or outside that through its corners. */
    @Test
    void pointsAboutABallOfManyColumns() {
        TriangleMesh ball = Shapes.ball(3, -2, 1, 50, 20, 30);
        Random random = new Random(9);
        for (int axis = 0; axis < 3; axis++) {
            Columns columns = new Columns(ball, axis, 1e-9);
            for (int i = 0; i < 3000; i++) {
                double x = random.nextDouble() * 120 - 60;
                double y = random.nextDouble() * 120 - 60;
                double z = random.nextDouble() * 120 - 60;
                double r = Math.sqrt(x * x + y * y + z * z);
                if (r < 49 || r > 50) {
                    assertEquals(
                            r < 49 ? 1 : 0,
                            Seen.from(columns, 3 + x, -2 + y, 1 + z).winding());
                }
            }
        }
    }

    /** A triangle without area is a line; whatever lies in its box counts as on it. */
    @Test
    void aLineIsTouched() {
        TriangleMesh line = TriangleMesh.owning(new double[] {0, 0, 0, 2, 0, 0, 4, 0, 0}, new int[] {0, 1, 2});
        Columns columns = new Columns(line, 2, 0.1);
        assertEquals(List.of(0), Seen.from(columns, 3, 0.05, 0).touched);
        assertEquals(List.of(), Seen.from(columns, 3, 0.15, 0).touched);
    }

    @Test
    void columnsRunAlongTheShortestSide() {
        assertEquals(2, Columns.shortestAxis(new Bounds(0, 0, 0, 3, 2, 1)));
        assertEquals(1, Columns.shortestAxis(new Bounds(0, 0, 0, 3, 1, 2)));
        assertEquals(0, Columns.shortestAxis(new Bounds(0, 0, 0, 1, 2, 3)));
    }
}
