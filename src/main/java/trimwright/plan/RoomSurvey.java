package trimwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BoxShape;
import trimwright.boat.Zone;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;

/**
 * Surveys one zone: upright columns on a grid of about 1 mm, their free stretches, and from them the free volume and the largest free
 * box of each slice and layer.
 */
final class RoomSurvey {

    private static final double STEP_MM = 1;
    private static final int MOST_COLUMNS = 30_000;
    private static final int MOST_SLICES = 16;
    private static final double LEAST_SLICE_MM = 8;
    private static final double LAYER_MM = 12;
    private static final int MOST_LAYERS = 6;
    /** A box less high or wide than this is not worth cutting. */
    private static final double LEAST_SIDE_MM = 2.5;

    /** How many times more boxes on either side must hold than boxes across, to be worth cutting twice as many pieces. */
    private static final double APART_GAINS = 1.2;

    /** What is shorter than this comes of rounding. */
    private static final double ROUNDING_MM = 1e-6;

    private final Zone zone;
    private final boolean twin;
    private final Bounds box;
    private final FreeSpace space;
    private final List<Bounds> before;

    private final int slices;
    private final int columnsX;
    private final int columnsY;
    private final double stepX;
    private final double stepY;
    /** Per column, the free stretches as low, high, low, high, … */
    private final double[][] free;

    /** @param before boxes of zones that have the room where they overlap */
    RoomSurvey(Zone zone, boolean twin, Bounds box, FreeSpace space, List<Bounds> before) {
        this.zone = zone;
        this.twin = twin;
        this.box = box;
        this.space = space;
        this.before = before;
        slices = (int) Math.max(1, Math.min(MOST_SLICES, Math.floor(box.sizeX() / LEAST_SLICE_MM)));
        double step = Math.max(STEP_MM, Math.sqrt(box.sizeX() * box.sizeY() / MOST_COLUMNS));
        int perSlice = (int) Math.max(2, Math.ceil(box.sizeX() / slices / step));
        columnsX = slices * perSlice;
        columnsY = (int) Math.max(2, Math.ceil(box.sizeY() / step));
        stepX = box.sizeX() / columnsX;
        stepY = box.sizeY() / columnsY;
        free = new double[columnsX * columnsY][];
        for (int i = 0; i < columnsX; i++) {
            for (int j = 0; j < columnsY; j++) {
                free[i * columnsY + j] = column(x(i), y(j));
            }
        }
    }

    private double x(int i) {
        return box.minX() + (i + 0.5) * stepX;
    }

    private double y(int j) {
        return box.minY() + (j + 0.5) * stepY;
    }

    boolean isEmpty() {
        return Arrays.stream(free).allMatch(c -> c.length == 0);
    }

    /** The room, divided by a painted line. */
    Room room(WaterPlane line) {
        double volume = 0;
        double[][] sums = new double[slices][4];
        Vector3D moment = Vector3D.ZERO;
        double area = stepX * stepY;
        for (int i = 0; i < columnsX; i++) {
            for (int j = 0; j < columnsY; j++) {
                double x = x(i);
                double y = y(j);
                double[] column = free[i * columnsY + j];
                double surface = Room.heightAt(line, x, y);
                double[] slice = sums[i / (columnsX / slices)];
                int side = y >= 0 ? 0 : 2;
                for (int k = 0; k < column.length; k += 2) {
                    double low = column[k];
                    double high = column[k + 1];
                    double wet = Math.max(0, Math.min(high, surface) - low);
                    slice[side] += area * wet;
                    slice[side + 1] += area * (high - low - wet);
                    volume += area * (high - low);
                    moment = moment.add(area * (high - low), new Vector3D(x, y, 0.5 * (low + high)));
                }
            }
        }
        Vector3D centroid = volume > 0
                ? moment.scalarMultiply(1 / volume)
                : new Vector3D(box.centreX(), box.centreY(), box.centreZ());
        List<Room.Slice> parts = new ArrayList<>();
        double below = 0;
        for (int s = 0; s < slices; s++) {
            double[] v = sums[s];
            below += v[0] + v[2];
            parts.add(new Room.Slice(sliceX(s), sliceX(s + 1), v[0], v[1], v[2], v[3]));
        }
        boolean useless = zone.use() == Zone.Use.FOAM && space.container().isPresent();
        return new Room(
                zone,
                twin,
                space.container(),
                useless ? List.of() : cells(line),
                below,
                Math.max(0, volume - below),
                centroid,
                0.5 * area * variationMm(),
                List.copyOf(parts),
                space.insideKnown(),
                space.bodiesIn(box));
    }

    /**
     * How much neighbouring columns differ, summed over both directions. The midpoint rule is off by no more than half the step times the variation
     * along it; beyond the zone's edge nothing counts, so its first and last columns have no neighbour there.
     */
    private double variationMm() {
        double sum = 0;
        for (int i = 0; i < columnsX; i++) {
            for (int j = 0; j < columnsY; j++) {
                double own = lengthMm(i, j);
                sum += i + 1 < columnsX ? Math.abs(own - lengthMm(i + 1, j)) : 0;
                sum += j + 1 < columnsY ? Math.abs(own - lengthMm(i, j + 1)) : 0;
            }
        }
        return sum;
    }

    private double lengthMm(int i, int j) {
        double sum = 0;
        double[] column = free[i * columnsY + j];
        for (int k = 0; k < column.length; k += 2) {
            sum += column[k + 1] - column[k];
        }
        return sum;
    }

    private double sliceX(int slice) {
        return box.minX() + slice * box.sizeX() / slices;
    }

    private double[] column(double x, double y) {
        Stretches column = space.column(x, y, box.minZ(), box.maxZ());
        for (Bounds b : before) {
            if (x >= b.minX() && x <= b.maxX() && y >= b.minY() && y <= b.maxY()) {
                column.remove(b.minZ(), b.maxZ());
            }
        }
        double[] ends = new double[2 * column.count()];
        int n = 0;
        for (int k = 0; k < column.count(); k++) {
            if (column.high(k) - column.low(k) > ROUNDING_MM) {
                ends[n++] = column.low(k);
                ends[n++] = column.high(k);
            }
        }
        return Arrays.copyOf(ends, n);
    }

    /**
     * The boxes of a zone: across the boat, or port and starboard by themselves where something in the middle leaves more room there than in one
     * box.
     */
    private List<RoomCell> cells(WaterPlane line) {
        List<RoomCell> across = cells(line, new Side(0, columnsY, twin));
        int middle = 0;
        while (middle < columnsY && y(middle) < 0) {
            middle++;
        }
        if (zone.mirror() || middle == 0 || middle == columnsY) {
            return across;
        }
        List<RoomCell> apart = new ArrayList<>(cells(line, new Side(middle, columnsY, false)));
        apart.addAll(cells(line, new Side(0, middle, true)));
        return volumeMm3(apart) > APART_GAINS * volumeMm3(across) ? List.copyOf(apart) : across;
    }

    /** The columns in which boxes are looked for, and whether those belong to starboard. */
    private record Side(int from, int to, boolean starboard) {}

    private static double volumeMm3(List<RoomCell> cells) {
        return cells.stream().mapToDouble(RoomCell::volumeMm3).sum();
    }

    private List<RoomCell> cells(WaterPlane line, Side side) {
        double[] surface = Room.heightsOver(line, box);
        List<RoomCell> cells = new ArrayList<>();
        double dry = Math.min(box.maxZ(), Math.max(box.minZ(), surface[1]));
        double wet = Math.max(box.minZ(), Math.min(box.maxZ(), surface[0]));
        int layer = layers(cells, side, new Layers(0, box.minZ(), wet, true));
        layers(cells, side, new Layers(layer, dry, box.maxZ(), false));
        return List.copyOf(cells);
    }

    /** What is to be cut into layers. */
    private record Layers(int first, double fromMm, double toMm, boolean belowLine) {

        int count() {
            double height = toMm - fromMm;
            return height < LEAST_SIDE_MM ? 0 : (int) Math.max(1, Math.min(MOST_LAYERS, Math.round(height / LAYER_MM)));
        }

        double heightMm(int k) {
            return fromMm + k * (toMm - fromMm) / count();
        }
    }

    private int layers(List<RoomCell> cells, Side side, Layers layers) {
        for (int k = 0; k < layers.count(); k++) {
            for (int s = 0; s < slices; s++) {
                int layer = layers.first() + k;
                int slice = s;
                largestBox(s, layers.heightMm(k), layers.heightMm(k + 1), side)
                        .ifPresent(b -> cells.add(new RoomCell(
                                zone.id(),
                                zone.use(),
                                side.starboard(),
                                space.container(),
                                slice,
                                layer,
                                b,
                                layers.belowLine())));
            }
        }
        return layers.first() + layers.count();
    }

    /**
     * The largest box of a slice's whole length that is free in every column, between two heights. It reaches from the first to the last
     * of its columns, which keeps half a grid step from what is beyond. Where something parts a row of columns, only its longest stretch is looked at.
     */
    private Optional<BoxShape> largestBox(int slice, double low, double high, Side side) {
        int per = columnsX / slices;
        double[] bottoms = new double[columnsY];
        double[] tops = new double[columnsY];
        for (int j = side.from(); j < side.to(); j++) {
            bottoms[j] = low;
            tops[j] = high;
            for (int i = slice * per; i < (slice + 1) * per; i++) {
                narrow(free[i * columnsY + j], j, bottoms, tops);
            }
        }
        double best = 0;
        double[] found = new double[4];
        for (int from = side.from(); from < side.to(); from++) {
            double bottom = low;
            double top = high;
            for (int to = from; to < side.to(); to++) {
                bottom = Math.max(bottom, bottoms[to]);
                top = Math.min(top, tops[to]);
                if (top - bottom < LEAST_SIDE_MM) {
                    break;
                }
                double y0 = from == 0 ? box.minY() : box.minY() + (from + 0.5) * stepY;
                double y1 = to == columnsY - 1 ? box.maxY() : box.minY() + (to + 0.5) * stepY;
                if (y1 - y0 >= LEAST_SIDE_MM && (y1 - y0) * (top - bottom) > best) {
                    best = (y1 - y0) * (top - bottom);
                    found = new double[] {y0, y1, bottom, top};
                }
            }
        }
        if (best == 0) {
            return Optional.empty();
        }
        return Optional.of(new BoxShape(
                new Vector3D(sliceX(slice), found[0], found[2]), new Vector3D(sliceX(slice + 1), found[1], found[3])));
    }

    /** Narrows a row of columns to its longest stretch that is free in one more column. */
    private static void narrow(double[] column, int j, double[] bottoms, double[] tops) {
        double bottom = 0;
        double top = 0;
        for (int k = 0; k < column.length; k += 2) {
            double from = Math.max(bottoms[j], column[k]);
            double to = Math.min(tops[j], column[k + 1]);
            if (to - from > top - bottom) {
                bottom = from;
                top = to;
            }
        }
        bottoms[j] = bottom;
        tops[j] = top;
    }
}
