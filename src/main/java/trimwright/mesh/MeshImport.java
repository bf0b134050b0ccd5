package trimwright.mesh;

import java.util.List;
import java.util.Optional;

/**
 * How a mesh file becomes a mesh in the boat's frame: the shells that count are picked, then unit and scale, then the axes
 * are turned so that {@code forward} becomes +x and {@code up} becomes +z, then it is moved.
 *
 * @param unit unit of the file; empty where nobody said, which means the file's own unit (3MF) or else mm
 * @param scale multiplies after the unit; positive
 * @param forward the mesh's own axis that points to the bow
 * @param up the mesh's own axis that points up; square to {@code forward}
 * @param moveXMm shift after all else, mm in the boat's frame
 * @param shells numbers of the shells that count, as {@code inspect} lists them from 1; empty for all
 */
public record MeshImport(
        Optional<LengthUnit> unit,
        double scale,
        Axis forward,
        Axis up,
        double moveXMm,
        double moveYMm,
        double moveZMm,
        List<Integer> shells) {

    /** mm, forward +x, up +z, all shells. */
    public static final MeshImport AS_IS =
            new MeshImport(Optional.empty(), 1, Axis.PLUS_X, Axis.PLUS_Z, 0, 0, 0, List.of());

    public MeshImport {
        shells = List.copyOf(shells);
        if (!(scale > 0) || Double.isInfinite(scale)) {
            throw new IllegalArgumentException("scale must be positive and finite, found " + scale);
        }
        if (forward.isParallelTo(up)) {
            throw new IllegalArgumentException("forward and up must be square to each other");
        }
    }

    /** A signed axis of a mesh file. */
    public enum Axis {
        PLUS_X("+x", 1, 0, 0),
        MINUS_X("-x", -1, 0, 0),
        PLUS_Y("+y", 0, 1, 0),
        MINUS_Y("-y", 0, -1, 0),
        PLUS_Z("+z", 0, 0, 1),
        MINUS_Z("-z", 0, 0, -1);

        private final String symbol;
        private final int x;
        private final int y;
        private final int z;

        Axis(String symbol, int x, int y, int z) {
            this.symbol = symbol;
            this.x = x;
            this.y = y;
            this.z = z;
        }

        /** The axis as the boat file writes it. */
        public String symbol() {
            return symbol;
        }

        public boolean isParallelTo(Axis other) {
            return x * other.x + y * other.y + z * other.z != 0;
        }

        public static Optional<Axis> ofSymbol(String symbol) {
            for (Axis axis : values()) {
                if (axis.symbol.equals(symbol)) {
                    return Optional.of(axis);
                }
            }
            return Optional.empty();
        }
    }

    /**
     * The mesh in the boat's frame, in mm. Shells must have been picked before: this only scales, turns and moves.
     *
     * @param mesh in the file's own unit and axes
     * @param fileUnit the unit the file itself states, if any
     */
    public TriangleMesh apply(TriangleMesh mesh, Optional<LengthUnit> fileUnit) {
        double factor = unit.or(() -> fileUnit).orElse(LengthUnit.MILLIMETRE).mm() * scale;
        // The port axis completes the right-handed frame: up × forward.
        int px = up.y * forward.z - up.z * forward.y;
        int py = up.z * forward.x - up.x * forward.z;
        int pz = up.x * forward.y - up.y * forward.x;
        double[] from = mesh.xyz();
        double[] to = new double[from.length];
        for (int i = 0; i < from.length; i += 3) {
            double x = factor * from[i];
            double y = factor * from[i + 1];
            double z = factor * from[i + 2];
            to[i] = forward.x * x + forward.y * y + forward.z * z + moveXMm;
            to[i + 1] = px * x + py * y + pz * z + moveYMm;
            to[i + 2] = up.x * x + up.y * y + up.z * z + moveZMm;
        }
        return TriangleMesh.owning(to, mesh.corners().clone());
    }
}
