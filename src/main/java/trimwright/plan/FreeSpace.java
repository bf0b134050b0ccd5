package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Chords;
import trimwright.boat.HullBuild;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Shape;
import trimwright.immersion.Column;
import trimwright.immersion.MeshTree;
import trimwright.immersion.SkinColumn;
import trimwright.mesh.Bounds;
import trimwright.mesh.Soundness;

/**
 * What is free along upright lines in one room of a boat: the flooded room of her hulls, or the dry room of a watertight part. Free is what lies inside
 * the room's walls and outside every part that stands in it. Confined to one thread.
 */
final class FreeSpace {

    private final Optional<String> container;
    private final List<Hull> hulls = new ArrayList<>();
    private final List<Solid> walls = new ArrayList<>();
    private final List<Solid> solids = new ArrayList<>();
    private final Column column = new Column();
    private final Stretches found = new Stretches();
    private boolean insideKnown;

    /** One hull around the room. */
    private record Hull(MeshTree tree, double shellMm, boolean enclosesMaterial) {}

    /** A solid body and its box, which is asked first. */
    private record Solid(String part, Shape shape, Bounds bounds) {

        Solid(Part part, Shape shape) {
            this(part.id(), shape, shape.bounds());
        }

        Chords chords(double x, double y) {
            boolean near = x >= bounds.minX() && x <= bounds.maxX() && y >= bounds.minY() && y <= bounds.maxY();
            return near ? shape.chords(x, y) : Chords.NONE;
        }
    }

    private FreeSpace(Optional<String> container) {
        this.container = container;
    }

    /**
     * A room of the boat.
     *
     * @param container id of the watertight part whose inside it is; empty for what the water floods
     * @param leftOut ids of parts that are taken as not there
     */
    static FreeSpace of(List<Piece> pieces, Optional<String> container, Set<String> leftOut) {
        FreeSpace space = new FreeSpace(container);
        boolean closed = true;
        for (Piece piece : pieces) {
            Part part = piece.part();
            if (leftOut.contains(part.id())) {
                continue;
            }
            boolean around = container.isPresent()
                    ? part.id().equals(container.get())
                    : part.inside().isEmpty() && floods(part);
            if (around && part.isHull()) {
                HullBuild build = part.build().orElseThrow();
                MeshShape mesh = (MeshShape) piece.shape().orElseThrow();
                space.hulls.add(new Hull(mesh.tree(), build.shellMm(), build.enclosesMaterial()));
                closed &=
                        build.enclosesMaterial() || Soundness.quick(mesh.mesh()).closed();
            } else if (around) {
                piece.shape().ifPresent(s -> space.walls.add(new Solid(part, s)));
            } else if (part.inside().equals(container)) {
                body(piece).ifPresent(s -> space.solids.add(new Solid(part, s)));
            }
        }
        space.insideKnown = !space.walls.isEmpty() || (closed && !space.hulls.isEmpty());
        return space;
    }

    /** Whether water floods what a hull encloses. */
    static boolean floods(Part part) {
        return part.isHull() && !(part.build().orElseThrow() instanceof HullBuild.Sealed);
    }

    /** The body of a piece; a compact piece is a ball, and nothing where its volume is not known. */
    static Optional<Shape> body(Piece piece) {
        return piece.shape()
                .or(() -> piece.body().map(ball -> {
                    Vector3D radius = new Vector3D(
                            0, 0, ball.topMm(Vector3D.PLUS_K) - piece.centreMm().getZ());
                    return new BarShape(
                            piece.centreMm().subtract(radius),
                            piece.centreMm().add(radius),
                            2 * radius.getZ(),
                            BarShape.Ends.ROUND);
                }));
    }

    /** The watertight part whose inside it is; empty for what the water floods. */
    Optional<String> container() {
        return container;
    }

    /** Whether there is anything around it at all. */
    boolean hasWalls() {
        return !hulls.isEmpty() || !walls.isEmpty();
    }

    /** Whether its walls enclose a room; an open skin does not, and then everything counts as inside that is not a part. */
    boolean insideKnown() {
        return insideKnown;
    }

    /** Ids of the parts in the room that reach into a box, judged by the boxes around them. */
    List<String> bodiesIn(Bounds box) {
        return solids.stream()
                .filter(s -> {
                    Bounds shared = s.bounds().intersection(box);
                    return shared.sizeX() > 0 && shared.sizeY() > 0 && shared.sizeZ() > 0;
                })
                .map(Solid::part)
                .distinct()
                .toList();
    }

    /** What is free of the upright line through (x, y) between two heights. */
    Stretches column(double xMm, double yMm, double lowMm, double highMm) {
        Stretches free = new Stretches();
        free.add(lowMm, highMm);
        if (insideKnown) {
            keepInside(xMm, yMm, free);
        }
        for (Hull hull : hulls) {
            removeMaterial(hull, xMm, yMm, lowMm, highMm, free);
        }
        for (Solid solid : solids) {
            Chords chords = solid.chords(xMm, yMm);
            for (int i = 0; i < chords.count(); i++) {
                free.remove(chords.lowMm(i), chords.highMm(i));
            }
        }
        return free;
    }

    private void keepInside(double x, double y, Stretches free) {
        found.clear();
        for (Hull hull : hulls) {
            addInside(hull, x, y);
        }
        for (Solid wall : walls) {
            Chords chords = wall.chords(x, y);
            for (int i = 0; i < chords.count(); i++) {
                found.add(chords.lowMm(i), chords.highMm(i));
            }
        }
        double from = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < found.count(); i++) {
            free.remove(from, found.low(i));
            from = found.high(i);
        }
        free.remove(from, Double.POSITIVE_INFINITY);
    }

    /** Between the outer surfaces: for a mesh that also has inner ones, from its first to its last. */
    private void addInside(Hull hull, double x, double y) {
        column.through(hull.tree(), x, y);
        int count = column.count();
        if (count == 0) {
            return;
        }
        if (hull.enclosesMaterial()) {
            found.add(column.heightMm(0), column.heightMm(count - 1));
            return;
        }
        int depth = 0;
        for (int i = 0; i < count; i++) {
            if (depth > 0) {
                found.add(column.heightMm(i - 1), column.heightMm(i));
            }
            depth += column.turn(i);
        }
    }

    private void removeMaterial(Hull hull, double x, double y, double low, double high, Stretches free) {
        if (!hull.enclosesMaterial()) {
            if (hull.shellMm() > 0) {
                SkinColumn.through(hull.tree(), hull.shellMm(), x, y, low, high, free::remove);
            }
            return;
        }
        column.through(hull.tree(), x, y);
        int depth = 0;
        for (int i = 0; i < column.count(); i++) {
            if (depth > 0) {
                free.remove(column.heightMm(i - 1), column.heightMm(i));
            }
            depth += column.turn(i);
        }
    }
}
