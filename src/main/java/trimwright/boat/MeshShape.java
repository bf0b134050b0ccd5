package trimwright.boat;

import java.util.Arrays;
import trimwright.immersion.Column;
import trimwright.immersion.Displacer;
import trimwright.immersion.MeshSolid;
import trimwright.immersion.MeshTree;
import trimwright.mesh.Bounds;
import trimwright.mesh.MeshImport;
import trimwright.mesh.TriangleMesh;
import trimwright.mesh.Triangles;

/**
 * A mesh, already imported into the boat's frame. Building the tree, the mirror image and the sums of a big mesh costs time, so each is
 * made once, when first asked for; the object is otherwise immutable and safe for several threads.
 */
public final class MeshShape implements Shape {

    private final String file;
    private final MeshImport meshImport;
    private final TriangleMesh mesh;
    private MeshTree tree;
    private MeshShape mirrored;
    private double rollGyrationMm2 = Double.NaN;

    /**
     * @param file the mesh file as the boat file names it
     * @param meshImport how it was imported
     * @param mesh the outcome, mm in the boat's frame
     */
    public MeshShape(String file, MeshImport meshImport, TriangleMesh mesh) {
        this.file = file;
        this.meshImport = meshImport;
        this.mesh = mesh;
    }

    public String file() {
        return file;
    }

    public MeshImport meshImport() {
        return meshImport;
    }

    public TriangleMesh mesh() {
        return mesh;
    }

    /** The tree over the mesh that makes its cuts fast. */
    public synchronized MeshTree tree() {
        if (tree == null) {
            tree = MeshTree.of(mesh);
        }
        return tree;
    }

    /** Begins to build the tree in another thread, so that it is there, or nearly, when it is first asked for. */
    public void buildTreeAhead() {
        Thread builder = new Thread(
                () -> {
                    try {
                        tree();
                    } catch (OutOfMemoryError e) {
                        // Whoever asks for the tree meets the same, and can say so.
                    }
                },
                "tree of " + file);
        builder.setDaemon(true);
        builder.start();
    }

    @Override
    public Displacer solid() {
        return new MeshSolid(tree());
    }

    @Override
    public synchronized MeshShape mirrored() {
        if (mirrored == null) {
            mirrored = new MeshShape(file, meshImport, mesh.mirroredY());
        }
        return mirrored;
    }

    /** Square of the radius of gyration of the surface, as of a thin shell, about the boat's x axis through its centroid, mm². */
    public synchronized double rollGyrationMm2() {
        if (Double.isNaN(rollGyrationMm2)) {
            rollGyrationMm2 = gyrationMm2(mesh);
        }
        return rollGyrationMm2;
    }

    @Override
    public Bounds bounds() {
        return mesh.bounds();
    }

    @Override
    public Chords chords(double xMm, double yMm) {
        Column column = new Column().through(tree(), xMm, yMm);
        double[] ends = new double[2 * column.count()];
        int n = 0;
        int depth = 0;
        for (int i = 0; i < column.count(); i++) {
            int before = depth;
            depth += column.turn(i);
            if (before == 0 && depth == 1 || before == 1 && depth == 0) {
                ends[n++] = column.heightMm(i);
            }
        }
        return Chords.owning(Arrays.copyOf(ends, n - n % 2));
    }

    /** Of a thin shell: ∫ (y² + z²) dA / A about the centroid of the surface; over a triangle by its edge middles, which is exact. */
    private static double gyrationMm2(TriangleMesh mesh) {
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        double area = 0;
        double y1 = 0;
        double z1 = 0;
        double second = 0;
        double y0 = mesh.bounds().centreY();
        double z0 = mesh.bounds().centreZ();
        for (int t = 0; t < corners.length; t += 3) {
            double a = Triangles.area(xyz, 3 * corners[t], 3 * corners[t + 1], 3 * corners[t + 2]);
            area += a;
            for (int k = 0; k < 3; k++) {
                int p = 3 * corners[t + k];
                int q = 3 * corners[t + (k + 1) % 3];
                double y = 0.5 * (xyz[p + 1] + xyz[q + 1]) - y0;
                double z = 0.5 * (xyz[p + 2] + xyz[q + 2]) - z0;
                y1 += a / 3 * y;
                z1 += a / 3 * z;
                second += a / 3 * (y * y + z * z);
            }
        }
        return area == 0 ? 0 : second / area - (y1 * y1 + z1 * z1) / (area * area);
    }
}
