package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every box that a point lies in stands in the list of the point's cell; and a few sums that can be done by hand. */
class BoxGridTest {

    private static double[][] boxes(int count, double size, long seed) {
        Random random = new Random(seed);
        double[][] boxes = new double[count][6];
        for (double[] box : boxes) {
            for (int k = 0; k < 3; k++) {
                // Twice as long as wide, half as high.
                double side = new double[] {200, 100, 50}[k];
                box[k] = random.nextDouble() * (side - size) - 30;
                box[3 + k] = box[k] + random.nextDouble() * size;
            }
        }
        return boxes;
    }

    private static final Bounds AROUND = new Bounds(-30, -30, -30, 170, 70, 20);

    private static BoxGrid grid(double[][] boxes, double cell, int flatAxis) {
        return new BoxGrid(boxes.length, (i, box) -> System.arraycopy(boxes[i], 0, box, 0, 6), AROUND, cell, flatAxis);
    }

    @Test
    void aPointFindsTheBoxesAroundIt() {
        double[][] boxes = boxes(400, 12, 1);
        Random random = new Random(2);
        for (int axis = -1; axis < 3; axis++) {
            BoxGrid grid = grid(boxes, 9, axis);
            int found = 0;
            for (int i = 0; i < 6000; i++) {
                double x = random.nextDouble() * 200 - 30;
                double y = random.nextDouble() * 100 - 30;
                double z = random.nextDouble() * 50 - 30;
                TreeSet<Integer> listed = new TreeSet<>();
                int cell = grid.cell(x, y, z);
                for (int k = grid.start(cell); k < grid.start(cell + 1); k++) {
                    assertTrue(listed.isEmpty() || grid.entry(k) > listed.last(), "not ascending");
                    listed.add(grid.entry(k));
                }
                for (int b = 0; b < boxes.length; b++) {
                    double[] box = boxes[b];
                    boolean around = x >= box[0] && y >= box[1] && z >= box[2];
                    if (around && x <= box[3] && y <= box[4] && z <= box[5]) {
                        assertTrue(listed.contains(b), "box " + b);
                        found++;
                    }
                }
            }
            assertTrue(found > 500, "only " + found);
        }
    }

    /** Cells of 10 in a box of 200 by 100 by 50: 21 by 11 by 6, since the far border starts one of its own. A flat axis has one. */
    @Test
    void asManyCellsAsTheSidesHold() {
        double[][] boxes = boxes(400, 1, 1);
        assertEquals(21 * 11 * 6, grid(boxes, 10, -1).cellCount());
        assertEquals(11 * 6, grid(boxes, 10, 0).cellCount());
        assertEquals(21 * 6, grid(boxes, 10, 1).cellCount());
        assertEquals(21 * 11, grid(boxes, 10, 2).cellCount());
        assertEquals(1, grid(boxes, 300, -1).cellCount());
    }

    /** Boxes of no size each stand in one list, and one that reaches over all in every list. */
    @Test
    void aBoxStandsInTheCellsItTouchesAndNoOthers() {
        double[][] points = boxes(400, 0, 3);
        BoxGrid grid = grid(points, 10, -1);
        assertEquals(400, grid.start(grid.cellCount()));
        for (int i = 0; i < points.length; i++) {
            int cell = grid.cell(points[i][0], points[i][1], points[i][2]);
            boolean listed = false;
            for (int k = grid.start(cell); k < grid.start(cell + 1); k++) {
                listed |= grid.entry(k) == i;
            }
            assertTrue(listed);
        }
        points[7] = new double[] {-30, -30, -30, 170, 70, 20};
        grid = grid(points, 10, -1);
        assertEquals(399 + grid.cellCount(), grid.start(grid.cellCount()));
        // Two cells long, three wide, one high.
        points[7] = new double[] {-25, -25, -25, -15, -5, -21};
        grid = grid(points, 10, -1);
        assertEquals(399 + 6, grid.start(grid.cellCount()));
    }

    /** Boxes that reach over all, or cells that are far too small: lists and cells stay within a dozen and four for each box. */
    @Test
    void cellsGrowUntilTheListsAreShort() {
        for (double size : new double[] {0, 1, 10, 50}) {
            for (int count : new int[] {1, 40, 1000}) {
                BoxGrid grid = grid(boxes(count, size, 4), 0.01, -1);
                assertTrue(grid.cellCount() <= 4 * count + 64, grid.cellCount() + " cells");
                assertTrue(grid.start(grid.cellCount()) <= 12 * count + 64, "lists too long");
                // Not more than twice (1.5³ = 3.4 times) larger than need be, or it would be no help.
                assertTrue(size > 1 || grid.cellCount() > count, grid.cellCount() + " cells for " + count);
            }
        }
    }

    @Test
    void pointsOutsideGoToTheNearestCell() {
        BoxGrid grid = grid(boxes(400, 1, 1), 10, -1);
        assertEquals(grid.cell(-30, -30, -30), grid.cell(-500, -500, -500));
        assertEquals(grid.cell(170, 70, 20), grid.cell(500, 500, 500));
        assertEquals(0, grid.cell(-30, -30, -30));
        assertEquals(grid.cellCount() - 1, grid.cell(170, 70, 20));
    }

    /** A single point has no size, and still one cell. */
    @Test
    void nothingButAPoint() {
        BoxGrid grid = new BoxGrid(2, (i, box) -> Arrays.fill(box, 5), new Bounds(5, 5, 5, 5, 5, 5), 0, -1);
        assertEquals(1, grid.cellCount());
        assertEquals(2, grid.start(1));
    }

    /** Half as long again and 16, up to the longest array that there is. */
    @Test
    void arraysGrowByHalf() {
        assertEquals(16, Growth.next(0));
        assertEquals(1516, Growth.next(1000));
        assertEquals(Integer.MAX_VALUE - 8, Growth.next(Integer.MAX_VALUE - 9));
        assertEquals(Integer.MAX_VALUE - 8, Growth.next(2_000_000_000));
        assertThrows(OutOfMemoryError.class, () -> Growth.next(Integer.MAX_VALUE - 8));
    }
}
