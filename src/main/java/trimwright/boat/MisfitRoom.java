package trimwright.boat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.mesh.Bounds;

/**
 * Where in the boat something does not fit: what two parts share, or what of a part lies outside. It is made to be shown, not to be
 * measured: {@link FitCheck} says how much it is.
 *
 * @param slices boxes that fill the room, mm, slice by slice from its after end; empty for a point
 * @param middleMm middle of the room, or the point
 */
public record MisfitRoom(List<List<Bounds>> slices, Vector3D middleMm) {

    /** Columns along each side of the room that is looked through. */
    private static final int FINE = 48;
    /** The same where an open hull must be asked, which takes a thousand times as long. */
    private static final int COARSE = 12;
    /** Neighbouring columns whose ends differ by less than this share of the room's height are drawn as one. */
    private static final double ALIKE = 0.01;

    public MisfitRoom {
        slices = slices.stream().map(List::copyOf).toList();
    }

    /** What counts of the upright line through a point. */
    @FunctionalInterface
    private interface Line {
        Chords at(double xMm, double yMm);
    }

    /**
     * Where each of the findings of {@link FitCheck#of} lies.
     *
     * @param boat the boat that was checked
     * @return in the order of the findings; empty where it is too small to be shown
     */
    public static List<Optional<MisfitRoom>> of(Boat boat, List<Finding> misfits) {
        boolean outside = misfits.stream().anyMatch(f -> f.code() == Code.OUTSIDE_HULL);
        HullInside hull = outside ? HullInside.of(boat) : new HullInside();
        return misfits.stream().map(f -> of(boat, hull, f)).toList();
    }

    private static Optional<MisfitRoom> of(Boat boat, HullInside hull, Finding misfit) {
        if (misfit.values().get("centreMm") instanceof List<?> at) {
            return Optional.of(new MisfitRoom(List.of(), new Vector3D(number(at, 0), number(at, 1), number(at, 2))));
        }
        List<List<Bounds>> slices = new ArrayList<>();
        if (misfit.place() instanceof Place.BetweenParts between) {
            Part part = boat.part(between.part()).orElseThrow();
            List<Shape> around = shapes(boat.part(between.other()).orElseThrow());
            if (part.shape().isEmpty()) {
                return part.givenCentreMm().map(c -> new MisfitRoom(List.of(), c));
            }
            for (Shape shape : shapes(part)) {
                if (misfit.code() == Code.STICKS_OUT) {
                    fill(slices, shape.bounds(), FINE, (x, y) -> without(shape.chords(x, y), around, x, y));
                } else {
                    around.forEach(other -> shared(slices, shape, other));
                }
            }
        } else if (misfit.place() instanceof Place.OnPart on) {
            int columns = hull.isOpen() ? COARSE : FINE;
            for (Shape shape : shapes(boat.part(on.part()).orElseThrow())) {
                fill(slices, shape.bounds(), columns, (x, y) -> hull.outside(shape.chords(x, y), x, y));
            }
        }
        return slices.stream().flatMap(List::stream).reduce(Bounds::union).map(b -> around(slices, b));
    }

    private static double number(List<?> values, int i) {
        return ((Number) values.get(i)).doubleValue();
    }

    private static List<Shape> shapes(Part part) {
        return part.shape()
                .map(s -> part.mirror() ? List.of(s, s.mirrored()) : List.of(s))
                .orElse(List.of());
    }

    /** Of a pair the first is pointed to: between the two there may be nothing. */
    private static MisfitRoom around(List<List<Bounds>> slices, Bounds all) {
        boolean bothSides = all.minY() < 0
                && all.maxY() > 0
                && slices.stream().flatMap(List::stream).noneMatch(b -> b.minY() <= 0 && b.maxY() >= 0);
        Bounds one = bothSides
                ? slices.stream()
                        .flatMap(List::stream)
                        .filter(b -> b.minY() > 0)
                        .reduce(Bounds::union)
                        .orElse(all)
                : all;
        return new MisfitRoom(slices, new Vector3D(one.centreX(), one.centreY(), one.centreZ()));
    }

    private static Chords without(Chords chords, List<Shape> around, double x, double y) {
        Chords left = chords;
        for (Shape other : around) {
            left = left.without(other.chords(x, y));
        }
        return left;
    }

    private static void shared(List<List<Bounds>> slices, Shape one, Shape other) {
        Bounds box = one.bounds().intersection(other.bounds());
        if (box.sizeX() > 0 && box.sizeY() > 0 && box.sizeZ() > 0) {
            fill(slices, box, FINE, (x, y) -> one.chords(x, y).and(other.chords(x, y)));
        }
    }

    private static void fill(List<List<Bounds>> slices, Bounds box, int columns, Line line) {
        double dx = box.sizeX() / columns;
        double dy = box.sizeY() / columns;
        for (int i = 0; i < columns; i++) {
            List<Bounds> slice = new ArrayList<>();
            for (int j = 0; j < columns; j++) {
                double y = box.minY() + j * dy;
                Chords chords = line.at(box.minX() + (i + 0.5) * dx, y + 0.5 * dy);
                for (int k = 0; k < chords.count(); k++) {
                    Bounds column = new Bounds(
                            box.minX() + i * dx,
                            y,
                            chords.lowMm(k),
                            box.minX() + (i + 1) * dx,
                            y + dy,
                            chords.highMm(k));
                    join(slice, column, ALIKE * box.sizeZ());
                }
            }
            if (!slice.isEmpty()) {
                slices.add(slice);
            }
        }
    }

    private static void join(List<Bounds> slice, Bounds column, double alikeMm) {
        Bounds last = slice.isEmpty() ? null : slice.get(slice.size() - 1);
        boolean joins = last != null
                && Math.abs(last.maxY() - column.minY()) < 1e-9 * (1 + Math.abs(column.minY()))
                && Math.abs(last.minZ() - column.minZ()) <= alikeMm
                && Math.abs(last.maxZ() - column.maxZ()) <= alikeMm;
        if (joins) {
            slice.set(slice.size() - 1, last.union(column));
        } else {
            slice.add(column);
        }
    }
}
