package trimwright;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.TriangleMesh;

/**
 * Meshes for tests: simple solids, random bodies, and ways to change a mesh without
 * changing what it stands for. All are closed and outward oriented, in mm, x toward the bow, z up.
 */
public final class TestMeshes {

    private TestMeshes() {}

    /**
     * A body of revolution about the x axis, between flat ends where the end radii are not zero.
     *
     * @param x stations, rising
     * @param radius radius at each
     */
    public static TriangleMesh revolved(double[] x, double[] radius, int sides) {
        int n = x.length;
        double[] xyz = new double[3 * (n * sides + 2)];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < sides; j++) {
                double angle = 2 * Math.PI * j / sides;
                put(xyz, i * sides + j, x[i], radius[i] * Math.cos(angle), radius[i] * Math.sin(angle));
            }
        }
        int aft = n * sides;
        int fore = aft + 1;
        put(xyz, aft, x[0], 0, 0);
        put(xyz, fore, x[n - 1], 0, 0);
        Corners corners = new Corners();
        for (int j = 0; j < sides; j++) {
            int k = (j + 1) % sides;
            if (radius[0] > 0) {
                corners.add(aft, k, j);
            }
            if (radius[n - 1] > 0) {
                corners.add(fore, (n - 1) * sides + j, (n - 1) * sides + k);
            }
            for (int i = 0; i + 1 < n; i++) {
                // Where a ring has shrunk to a point, its ring of triangles has no area and is left out.
                if (radius[i] > 0) {
                    corners.add(i * sides + j, i * sides + k, (i + 1) * sides + k);
                }
                if (radius[i + 1] > 0) {
                    corners.add(i * sides + j, (i + 1) * sides + k, (i + 1) * sides + j);
                }
            }
        }
        return TriangleMesh.owning(xyz, corners.toArray());
    }

    /** The same body with its x axis stood upright: x becomes z, y becomes x, z becomes y. */
    public static TriangleMesh stoodUp(TriangleMesh mesh) {
        return mapped(mesh, p -> new Vector3D(p.getY(), p.getZ(), p.getX()));
    }

    /** An ellipsoid about the origin with the half axes a, b, c along x, y, z, as a stretched {@link #ball}. */
    public static TriangleMesh ellipsoid(double a, double b, double c, int divisions) {
        return mapped(ball(divisions), p -> new Vector3D(a * p.getX(), b * p.getY(), c * p.getZ()));
    }

    /** An ellipsoid of 4 · rings · sides / 2 or so triangles, from latitudes and longitudes; the long axis is x. */
    public static TriangleMesh bigEllipsoid(double a, double b, double c, int rings, int sides) {
        double[] x = new double[rings + 1];
        double[] r = new double[rings + 1];
        for (int i = 0; i <= rings; i++) {
            x[i] = -a * Math.cos(Math.PI * i / rings);
            r[i] = i == 0 || i == rings ? 0 : Math.sin(Math.PI * i / rings);
        }
        return mapped(revolved(x, r, sides), p -> new Vector3D(p.getX(), b * p.getY(), c * p.getZ()));
    }

    /** A ball of radius 1: an icosahedron, divided that many times, its corners on the ball. */
    public static TriangleMesh ball(int divisions) {
        double phi = (1 + Math.sqrt(5)) / 2;
        List<Vector3D> points = new ArrayList<>();
        for (int[] sign : new int[][] {{1, 1}, {1, -1}, {-1, 1}, {-1, -1}}) {
            points.add(new Vector3D(0, sign[0], sign[1] * phi).normalize());
            points.add(new Vector3D(sign[0], sign[1] * phi, 0).normalize());
            points.add(new Vector3D(sign[1] * phi, 0, sign[0]).normalize());
        }
        List<int[]> faces = icosahedronFaces(points);
        for (int i = 0; i < divisions; i++) {
            Map<Long, Integer> middles = new HashMap<>();
            List<int[]> finer = new ArrayList<>();
            for (int[] f : faces) {
                int ab = middle(points, middles, f[0], f[1]);
                int bc = middle(points, middles, f[1], f[2]);
                int ca = middle(points, middles, f[2], f[0]);
                finer.add(new int[] {f[0], ab, ca});
                finer.add(new int[] {f[1], bc, ab});
                finer.add(new int[] {f[2], ca, bc});
                finer.add(new int[] {ab, bc, ca});
            }
            faces = finer;
        }
        double[] xyz = new double[3 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            put(
                    xyz,
                    i,
                    points.get(i).getX(),
                    points.get(i).getY(),
                    points.get(i).getZ());
        }
        Corners corners = new Corners();
        faces.forEach(f -> corners.add(f[0], f[1], f[2]));
        return TriangleMesh.owning(xyz, corners.toArray());
    }

    private static List<int[]> icosahedronFaces(List<Vector3D> points) {
        double edge = 1.1 * 4 / Math.sqrt(10 + 2 * Math.sqrt(5));
        List<int[]> faces = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            for (int j = i + 1; j < 12; j++) {
                for (int k = j + 1; k < 12; k++) {
                    Vector3D a = points.get(i);
                    Vector3D b = points.get(j);
                    Vector3D c = points.get(k);
                    if (a.distance(b) < edge && b.distance(c) < edge && c.distance(a) < edge) {
                        boolean outward = a.dotProduct(b.crossProduct(c)) > 0;
                        faces.add(outward ? new int[] {i, j, k} : new int[] {i, k, j});
                    }
                }
            }
        }
        return faces;
    }

    private static int middle(List<Vector3D> points, Map<Long, Integer> middles, int a, int b) {
        long key = (long) Math.min(a, b) << 32 | Math.max(a, b);
        return middles.computeIfAbsent(key, unused -> {
            points.add(points.get(a).add(points.get(b)).normalize());
            return points.size() - 1;
        });
    }

    /**
     * A prism along x over a convex polygon of the cross-section.
     *
     * @param yz corners y, z, y, z, …, counter-clockwise seen from ahead (y to the right, z up)
     */
    public static TriangleMesh prism(double x0, double x1, double... yz) {
        int n = yz.length / 2;
        double[] xyz = new double[6 * n];
        Corners corners = new Corners();
        for (int i = 0; i < n; i++) {
            put(xyz, i, x0, yz[2 * i], yz[2 * i + 1]);
            put(xyz, n + i, x1, yz[2 * i], yz[2 * i + 1]);
            int k = (i + 1) % n;
            corners.quad(i, k, n + k, n + i);
            if (i >= 2) {
                corners.add(0, i, i - 1);
                corners.add(n, n + i - 1, n + i);
            }
        }
        return TriangleMesh.owning(xyz, corners.toArray());
    }

    /**
     * A random body seen from its middle in every direction once: a ball whose corners stand at random distances. Concave
     * unless {@code roughness} is 0, when it is a randomly stretched and turned ball, which is convex.
     *
     * @param roughness least distance is 1 − roughness of the greatest; 0 up to below 1
     */
    public static TriangleMesh random(Random random, int divisions, double roughness) {
        double sx = 20 + 60 * random.nextDouble();
        double sy = 20 + 60 * random.nextDouble();
        double sz = 20 + 60 * random.nextDouble();
        TriangleMesh stretched = mapped(ball(divisions), p -> {
            double far = 1 - roughness * random.nextDouble();
            return new Vector3D(sx * far * p.getX(), sy * far * p.getY(), sz * far * p.getZ());
        });
        return turned(stretched, rotation(random));
    }

    /** A direction, any as likely as any other. */
    public static Vector3D direction(Random random) {
        return new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).normalize();
    }

    /** A rotation, any as likely as any other. */
    public static Rotation rotation(Random random) {
        return new Rotation(
                random.nextGaussian(), random.nextGaussian(), random.nextGaussian(), random.nextGaussian(), true);
    }

    public static TriangleMesh moved(TriangleMesh mesh, Vector3D by) {
        return mapped(mesh, p -> p.add(by));
    }

    public static TriangleMesh turned(TriangleMesh mesh, Rotation rotation) {
        return mapped(mesh, rotation::applyTo);
    }

    /** Every vertex moved; the mapping must keep the orientation. */
    public static TriangleMesh mapped(TriangleMesh mesh, UnaryOperator<Vector3D> map) {
        double[] xyz = new double[mesh.xyz().length];
        for (int v = 0; v < mesh.vertexCount(); v++) {
            Vector3D p = map.apply(vertex(mesh, v));
            put(xyz, v, p.getX(), p.getY(), p.getZ());
        }
        return TriangleMesh.owning(xyz, mesh.corners().clone());
    }

    public static Vector3D vertex(TriangleMesh mesh, int v) {
        return new Vector3D(mesh.xyz()[3 * v], mesh.xyz()[3 * v + 1], mesh.xyz()[3 * v + 2]);
    }

    /** The same triangles in another order, each begun at a random one of its corners. */
    public static TriangleMesh shuffled(TriangleMesh mesh, Random random) {
        int n = mesh.triangleCount();
        int[] order = new int[n];
        for (int i = 0; i < n; i++) {
            int j = random.nextInt(i + 1);
            order[i] = order[j];
            order[j] = i;
        }
        int[] corners = new int[3 * n];
        for (int i = 0; i < n; i++) {
            int first = random.nextInt(3);
            for (int k = 0; k < 3; k++) {
                corners[3 * i + k] = mesh.corners()[3 * order[i] + (first + k) % 3];
            }
        }
        return TriangleMesh.owning(mesh.xyz().clone(), corners);
    }

    /** Every triangle divided into four at the middles of its sides. */
    public static TriangleMesh subdivided(TriangleMesh mesh) {
        int n = mesh.triangleCount();
        int vertices = mesh.vertexCount();
        double[] xyz = Arrays.copyOf(mesh.xyz(), 3 * (vertices + 3 * n));
        Corners corners = new Corners();
        for (int t = 0; t < n; t++) {
            int first = vertices + 3 * t;
            for (int k = 0; k < 3; k++) {
                Vector3D middle = new Vector3D(
                        0.5,
                        vertex(mesh, mesh.corners()[3 * t + k]),
                        0.5,
                        vertex(mesh, mesh.corners()[3 * t + (k + 1) % 3]));
                put(xyz, first + k, middle.getX(), middle.getY(), middle.getZ());
            }
            corners.add(mesh.corners()[3 * t], first, first + 2);
            corners.add(mesh.corners()[3 * t + 1], first + 1, first);
            corners.add(mesh.corners()[3 * t + 2], first + 2, first + 1);
            corners.add(first, first + 1, first + 2);
        }
        return TriangleMesh.owning(xyz, corners.toArray());
    }

    /** Both meshes as one. */
    public static TriangleMesh together(TriangleMesh a, TriangleMesh b) {
        double[] xyz = Arrays.copyOf(a.xyz(), a.xyz().length + b.xyz().length);
        System.arraycopy(b.xyz(), 0, xyz, a.xyz().length, b.xyz().length);
        Corners corners = new Corners();
        for (int corner : a.corners()) {
            corners.add(corner);
        }
        for (int corner : b.corners()) {
            corners.add(a.vertexCount() + corner);
        }
        return TriangleMesh.owning(xyz, corners.toArray());
    }

    static void put(double[] xyz, int vertex, double x, double y, double z) {
        xyz[3 * vertex] = x;
        xyz[3 * vertex + 1] = y;
        xyz[3 * vertex + 2] = z;
    }

    /** A growing list of corners. */
    static final class Corners {

        private int[] values = new int[1024];
        private int size;

        void add(int... corners) {
            if (size + corners.length > values.length) {
                values = Arrays.copyOf(values, 2 * values.length);
            }
            for (int corner : corners) {
                values[size++] = corner;
            }
        }

        void quad(int a, int b, int c, int d) {
            add(a, b, c);
            add(a, c, d);
        }

        int[] toArray() {
            return Arrays.copyOf(values, size);
        }
    }
}
