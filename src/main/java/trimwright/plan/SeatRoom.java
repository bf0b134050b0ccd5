package trimwright.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.Chords;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Shape;
import trimwright.mesh.Bounds;

/**
 * The room that a seat of the cylinder leaves over its length.
 *
 * @param axisZMm height of the axis
 * @param underMm3 free below the axis: room for lead
 * @param overMm3 free from the axis up to the painted line, or to the top where there is no line: room for foam that carries her
 * @param aboveLineMm3 free above the painted line
 * @param inTheWay ids of parts that the cylinder would run into
 * @param known false where a hull is open, so that its inside and with it the room cannot be told; the volumes are then 0
 */
public record SeatRoom(
        double axisZMm, double underMm3, double overMm3, double aboveLineMm3, List<String> inTheWay, boolean known) {

    private static final int MOST_COLUMNS = 12_000;
    private static final double STEP_MM = 1;
    /** A length of an upright line that counts as running into a part: less is rounding. */
    private static final double RUNS_INTO_MM = 0.01;

    /** The room about a cylinder, a bar along x, with its axis at another height. */
    static SeatRoom of(Boat boat, Part cylinder, double axisZMm) {
        BarShape bar = (BarShape) cylinder.shape().orElseThrow();
        Vector3D lift = new Vector3D(0, 0, axisZMm - bar.fromMm().getZ());
        BarShape seated = new BarShape(bar.fromMm().add(lift), bar.toMm().add(lift), bar.diameterMm(), bar.ends());
        Part moved = cylinder.withBody(Optional.of(seated), cylinder.weighedMassG(), cylinder.givenCentreMm());
        List<Part> parts = new ArrayList<>(boat.parts());
        parts.set(parts.indexOf(cylinder), moved);
        List<Piece> pieces = boat.withParts(parts).pieces();
        List<String> inTheWay = inTheWay(pieces, moved, seated);
        FreeSpace space = FreeSpace.of(pieces, cylinder.inside(), Set.of());
        if (!space.insideKnown()) {
            return new SeatRoom(axisZMm, 0, 0, 0, inTheWay, false);
        }
        Bounds box = hullBox(pieces).intersection(slab(seated.bounds()));
        double step = Math.max(STEP_MM, Math.sqrt(box.sizeX() * box.sizeY() / MOST_COLUMNS));
        int nx = (int) Math.max(2, Math.ceil(box.sizeX() / step));
        int ny = (int) Math.max(2, Math.ceil(box.sizeY() / step));
        double area = box.sizeX() * box.sizeY() / nx / ny;
        double[] sums = new double[3];
        for (int i = 0; i < nx; i++) {
            for (int j = 0; j < ny; j++) {
                double x = box.minX() + (i + 0.5) * box.sizeX() / nx;
                double y = box.minY() + (j + 0.5) * box.sizeY() / ny;
                double line = boat.paintedLine()
                        .map(l -> Room.heightAt(l.plane(), x, y))
                        .orElse(box.maxZ());
                Stretches column = space.column(x, y, box.minZ(), box.maxZ());
                for (int k = 0; k < column.count(); k++) {
                    add(sums, area, column.low(k), column.high(k), axisZMm, Math.max(axisZMm, line));
                }
            }
        }
        return new SeatRoom(axisZMm, sums[0], sums[1], sums[2], inTheWay, true);
    }

    private static void add(double[] sums, double area, double low, double high, double axis, double line) {
        sums[0] += area * Math.max(0, Math.min(high, axis) - low);
        sums[1] += area * Math.max(0, Math.min(high, line) - Math.max(low, axis));
        sums[2] += area * Math.max(0, high - Math.max(low, line));
    }

    private static Bounds hullBox(List<Piece> pieces) {
        return pieces.stream()
                .filter(p -> p.part().isHull())
                .map(p -> p.shape().orElseThrow().bounds())
                .reduce(Bounds::union)
                .orElseThrow();
    }

    /** Over the length of the cylinder, and as far as the hull reaches across and up. */
    private static Bounds slab(Bounds bar) {
        double far = Double.POSITIVE_INFINITY;
        return new Bounds(bar.minX(), -far, -far, bar.maxX(), far, far);
    }

    private static List<String> inTheWay(List<Piece> pieces, Part cylinder, BarShape bar) {
        Set<String> ids = new LinkedHashSet<>();
        for (Piece piece : pieces) {
            boolean other = !piece.part().id().equals(cylinder.id())
                    && !piece.part().isHull()
                    && piece.part().inside().equals(cylinder.inside());
            if (other && FreeSpace.body(piece).filter(s -> runsInto(bar, s)).isPresent()) {
                ids.add(piece.part().id());
            }
        }
        return List.copyOf(ids);
    }

    private static boolean runsInto(BarShape bar, Shape other) {
        Bounds shared = bar.bounds().intersection(other.bounds());
        if (!(shared.sizeX() > 0 && shared.sizeY() > 0 && shared.sizeZ() > 0)) {
            return false;
        }
        int count = 24;
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                double x = shared.minX() + (i + 0.5) * shared.sizeX() / count;
                double y = shared.minY() + (j + 0.5) * shared.sizeY() / count;
                Chords both = bar.chords(x, y).and(other.chords(x, y));
                if (both.lengthMm() > RUNS_INTO_MM) {
                    return true;
                }
            }
        }
        return false;
    }
}
