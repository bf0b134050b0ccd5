package trimwright.plan;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.BoxShape;
import trimwright.boat.MeshShape;
import trimwright.boat.Piece;
import trimwright.boat.Shape;
import trimwright.immersion.Column;
import trimwright.mesh.Bounds;

/** A part that takes room away along an upright line. Confined to one thread. */
interface Obstacle {

    /** Takes from the free stretches of the line through (x, y) what the part fills. */
    void block(double xMm, double yMm, Stretches free);

    /** The obstacle that a piece is; nothing of a piece that has no shape and no known size. */
    static Obstacle of(Piece piece) {
        if (piece.part().shape().isEmpty()) {
            return compact(piece);
        }
        Shape shape = piece.twin()
                ? piece.part().shape().get().mirrored()
                : piece.part().shape().get();
        if (shape instanceof BoxShape box) {
            return box(box.bounds());
        }
        if (shape instanceof BarShape bar) {
            return bar(bar);
        }
        return mesh((MeshShape) shape);
    }

    private static Obstacle compact(Piece piece) {
        if (piece.displacer().isEmpty()) {
            return (x, y, free) -> {};
        }
        double radius = piece.displacer().get().topMm(Vector3D.PLUS_K)
                - piece.centreMm().getZ();
        return (x, y, free) -> ball(piece.centreMm(), radius, x, y, free);
    }

    private static Obstacle box(Bounds b) {
        return (x, y, free) -> {
            if (x > b.minX() && x < b.maxX() && y > b.minY() && y < b.maxY()) {
                free.remove(b.minZ(), b.maxZ());
            }
        };
    }

    private static Obstacle mesh(MeshShape shape) {
        Column column = new Column();
        return (x, y, free) -> {
            column.through(shape.tree(), x, y);
            int depth = 0;
            for (int i = 0; i < column.count(); i++) {
                if (depth > 0) {
                    free.remove(column.heightMm(i - 1), column.heightMm(i));
                }
                depth += column.turn(i);
            }
        };
    }

    private static Obstacle bar(BarShape bar) {
        double radius = bar.diameterMm() / 2;
        Vector3D axis = bar.toMm().subtract(bar.fromMm()).normalize();
        boolean round = bar.ends() == BarShape.Ends.ROUND;
        Vector3D from = round ? new Vector3D(1, bar.fromMm(), radius, axis) : bar.fromMm();
        Vector3D to = round ? new Vector3D(1, bar.toMm(), -radius, axis) : bar.toMm();
        return (x, y, free) -> {
            prism(from, axis, from.distance(to), radius, x, y, free);
            if (round) {
                ball(from, radius, x, y, free);
                ball(to, radius, x, y, free);
            }
        };
    }

    private static void ball(Vector3D centre, double radius, double x, double y, Stretches free) {
        double dx = x - centre.getX();
        double dy = y - centre.getY();
        double left = radius * radius - dx * dx - dy * dy;
        if (left > 0) {
            double half = Math.sqrt(left);
            free.remove(centre.getZ() - half, centre.getZ() + half);
        }
    }

    /** The round prism about an axis: a quadratic for the mantle, two planes for the ends. */
    private static void prism(
            Vector3D from, Vector3D axis, double length, double radius, double x, double y, Stretches free) {
        // Line: (dx, dy, z) about the axis' start. Distance from the axis squared is a z² + 2 b z + c.
        double dx = x - from.getX();
        double dy = y - from.getY();
        double flat = dx * axis.getX() + dy * axis.getY();
        double rise = axis.getZ();
        double a = 1 - rise * rise;
        double b = -flat * rise;
        double c = dx * dx + dy * dy - flat * flat - radius * radius;
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        if (a > 1e-12) {
            double root = b * b - a * c;
            if (root <= 0) {
                return;
            }
            low = (-b - Math.sqrt(root)) / a;
            high = (-b + Math.sqrt(root)) / a;
        } else if (c >= 0) {
            return;
        }
        if (rise != 0) {
            double start = -flat / rise;
            double end = (length - flat) / rise;
            low = Math.max(low, Math.min(start, end));
            high = Math.min(high, Math.max(start, end));
        } else if (flat < 0 || flat > length) {
            return;
        }
        free.remove(from.getZ() + low, from.getZ() + high);
    }
}
