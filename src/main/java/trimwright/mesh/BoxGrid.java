package trimwright.mesh;

/**
 * Boxes listed in each cell of a uniform grid that they touch, each list ascending. Where the cells would be too many, or the lists too
 * long for the boxes, the cells are made larger until they are not.
 */
final class BoxGrid {

    private static final int MOST_CELLS = 4;
    private static final int MOST_ENTRIES = 12;
    private static final int MOST_PER_SIDE = 1000;
    private static final double GROWTH = 1.5;

    private final double minX;
    private final double minY;
    private final double minZ;
    private double perX;
    private double perY;
    private double perZ;
    private int cellsX;
    private int cellsY;
    private int cellsZ;
    private int[] starts;
    private int[] entries;

    /** Where the boxes come from. */
    interface Boxes {

        /** Writes the box of one: least x, y, z, greatest x, y, z. */
        void write(int index, double[] box);
    }

    /**
     * @param around a box around all of them
     * @param cell side of a cell to begin with
     * @param flatAxis 0, 1 or 2 for an axis along which there is one cell only; −1 for none
     */
    BoxGrid(int count, Boxes boxes, Bounds around, double cell, int flatAxis) {
        minX = around.minX();
        minY = around.minY();
        minZ = around.minZ();
        double side = Math.max(cell, around.longestSide() / MOST_PER_SIDE);
        do {
            // Nothing but a single point has no size at all.
            double per = side > 0 ? 1 / side : 0;
            perX = flatAxis == 0 ? 0 : per;
            perY = flatAxis == 1 ? 0 : per;
            perZ = flatAxis == 2 ? 0 : per;
            cellsX = 1 + (int) (around.sizeX() * perX);
            cellsY = 1 + (int) (around.sizeY() * perY);
            cellsZ = 1 + (int) (around.sizeZ() * perZ);
            side *= GROWTH;
        } while (!fill(count, boxes));
    }

    int cellCount() {
        return starts.length - 1;
    }

    /** Index of the first entry of a cell; that of the next cell is its end. */
    int start(int cell) {
        return starts[cell];
    }

    /** Which box an entry means. */
    int entry(int index) {
        return entries[index];
    }

    /** The cell that holds a point; points outside go to the nearest. */
    int cell(double x, double y, double z) {
        return (cellZ(z) * cellsY + cellY(y)) * cellsX + cellX(x);
    }

    private int cellX(double x) {
        return Math.max(0, Math.min(cellsX - 1, (int) ((x - minX) * perX)));
    }

    private int cellY(double y) {
        return Math.max(0, Math.min(cellsY - 1, (int) ((y - minY) * perY)));
    }

    private int cellZ(double z) {
        return Math.max(0, Math.min(cellsZ - 1, (int) ((z - minZ) * perZ)));
    }

    private boolean fill(int count, Boxes boxes) {
        long cells = (long) cellsX * cellsY * cellsZ;
        if (cells > (long) MOST_CELLS * count + 64) {
            return false;
        }
        int[] ends = new int[(int) cells + 1];
        double[] box = new double[6];
        long total = 0;
        for (int i = 0; i < count; i++) {
            boxes.write(i, box);
            int x0 = cellX(box[0]);
            int x1 = cellX(box[3]);
            int y0 = cellY(box[1]);
            int y1 = cellY(box[4]);
            int z1 = cellZ(box[5]);
            int z0 = cellZ(box[2]);
            total += (long) (x1 - x0 + 1) * (y1 - y0 + 1) * (z1 - z0 + 1);
            if (total > (long) MOST_ENTRIES * count + 64 && cells > 1) {
                return false;
            }
            for (int z = z0; z <= z1; z++) {
                for (int y = y0; y <= y1; y++) {
                    for (int x = x0; x <= x1; x++) {
                        ends[(z * cellsY + y) * cellsX + x]++;
                    }
                }
            }
        }
        int sum = 0;
        for (int cell = 0; cell < ends.length; cell++) {
            sum += ends[cell];
            ends[cell] = sum;
        }
        entries = new int[sum];
        // Backwards, so that the lists ascend and each end becomes a start.
        for (int i = count - 1; i >= 0; i--) {
            boxes.write(i, box);
            int x1 = cellX(box[3]);
            int y1 = cellY(box[4]);
            int z1 = cellZ(box[5]);
            for (int z = cellZ(box[2]); z <= z1; z++) {
                for (int y = cellY(box[1]); y <= y1; y++) {
                    for (int x = cellX(box[0]); x <= x1; x++) {
                        entries[--ends[(z * cellsY + y) * cellsX + x]] = i;
                    }
                }
            }
        }
        starts = ends;
        return true;
    }
}
