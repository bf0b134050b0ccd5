package trimwright;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.mesh.TriangleMesh;

/**
 * Meshes for tests: hull forms from their published formulae, simple solids, random bodies, and ways to change a mesh without
 * changing what it stands for. All are closed and outward oriented, in mm, x toward the bow, z up.
 */
public final class TestMeshes {

    private static final double MM_PER_FOOT = 304.8;

    /** Length of {@link #suboff} over all, mm. */
    public static final double SUBOFF_LENGTH_MM = 14.291667 * MM_PER_FOOT;

    private TestMeshes() {}

    /**
     * DARPA SUBOFF bare hull, model size, its axis on the x axis and its nose at x = {@link #SUBOFF_LENGTH_MM}. Stations lie
     * closer where the ends turn round.
     *
     * <p>Groves, Huang, Chang, Geometric Characteristics of DARPA SUBOFF Models, DTRC/SHD-1298-01, 1989.
     *
     * @param stations divisions of bow and afterbody; the cap gets a quarter, the parallel middle body is left whole
     * @param sides corners of each cross-section
     */
    public static TriangleMesh suboff(int stations, int sides) {
        List<Double> feet = new ArrayList<>();
        double[] sections = {0, 3.333333, 10.645833, 13.979167, 14.291667};
        int[] divisions = {stations, 1, stations, (stations + 3) / 4};
        for (int part = 0; part < 4; part++) {
            for (int i = part == 0 ? 0 : 1; i <= divisions[part]; i++) {
                double share = (double) i / divisions[part];
                double eased = part == 0 ? share * share * share : part == 3 ? 1 - (1 - share) * (1 - share) : share;
                feet.add(sections[part] + eased * (sections[part + 1] - sections[part]));
            }
        }
        return revolved(feet, TestMeshes::suboffRadiusFeet, 14.291667, MM_PER_FOOT, sides);
    }

    /** Radius of the SUBOFF hull at a distance from the nose, both in feet. */
    static double suboffRadiusFeet(double x) {
        double most = 5.0 / 6;
        if (x <= 3.333333) {
            double k = 0.3 * x - 1;
            double body = 1.126395101 * x * Math.pow(k, 4)
                    + 0.442874707 * x * x * Math.pow(k, 3)
                    + 1
                    - Math.pow(k, 4) * (1.2 * x + 1);
            return most * Math.pow(body, 1 / 2.1);
        }
        if (x <= 10.645833) {
            return most;
        }
        double r = 0.1175;
        if (x <= 13.979167) {
            double k0 = 10;
            double k1 = 44.6244;
            double e = (13.979167 - x) / 3.333333;
            double body = r * r
                    + r * k0 * e * e
                    + (20 - 20 * r * r - 4 * r * k0 - k1 / 3) * Math.pow(e, 3)
                    + (-45 + 45 * r * r + 6 * r * k0 + k1) * Math.pow(e, 4)
                    + (36 - 36 * r * r - 4 * r * k0 - k1) * Math.pow(e, 5)
                    + (-10 + 10 * r * r + r * k0 + k1 / 3) * Math.pow(e, 6);
            return most * Math.sqrt(body);
        }
        double tip = 3.2 * x - 44.733333;
        // At the very tip the printed digits leave a hair less than nothing.
        return r * most * Math.sqrt(Math.max(0, 1 - tip * tip));
    }

    /**
     * A Myring body with its nose at x = length, in mm. Myring, A theoretical study of body drag in subcritical axisymmetric
     * flow, Aeronautical Quarterly 27, 1976; constants after Prestero, MIT/WHOI 2001.
     *
     * @param stations divisions of each of nose, middle body and tail
     */
    public static TriangleMesh myring(int stations, int sides) {
        double a = 0.191;
        double aOff = 0.0165;
        double b = 0.654;
        double c = 0.541;
        double cOff = 0.0368;
        double d = 0.191;
        double theta = 0.436;
        double middle = a - aOff;
        double tail = middle + b;
        double end = tail + c - cOff;
        DoubleUnaryOperator radius = x -> {
            if (x <= middle) {
                double k = (x + aOff - a) / a;
                return 0.5 * d * Math.sqrt(1 - k * k);
            }
            if (x <= tail) {
                return 0.5 * d;
            }
            double k = x - tail;
            return 0.5 * d
                    - (3 * d / (2 * c * c) - Math.tan(theta) / c) * k * k
                    + (d / (c * c * c) - Math.tan(theta) / (c * c)) * k * k * k;
        };
        List<Double> x = new ArrayList<>();
        double[] sections = {0, middle, tail, end};
        for (int part = 0; part < 3; part++) {
            for (int i = part == 0 ? 0 : 1; i <= stations; i++) {
                x.add(sections[part] + (sections[part + 1] - sections[part]) * i / stations);
            }
        }
        return revolved(x, radius, end, 1000, sides);
    }

    private static TriangleMesh revolved(
            List<Double> fromNose, DoubleUnaryOperator radius, double length, double scale, int sides) {
        int n = fromNose.size();
        double[] x = new double[n];
        double[] r = new double[n];
        for (int i = 0; i < n; i++) {
            double at = fromNose.get(n - 1 - i);
            x[i] = scale * (length - at);
            r[i] = scale * radius.applyAsDouble(at);
        }
        return revolved(x, r, sides);
    }

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
     * A Wigley hull (Wigley 1934): half beam B/2 (1 − (2x/L)²)(1 − (z/T)²) below z = 0, carried straight up to the freeboard.
     *
     * @param alongside divisions along the length
     * @param deep divisions of the draught
     */
    public static TriangleMesh wigley(
            double length, double beam, double draught, double freeboard, int alongside, int deep) {
        int rows = deep + 2;
        int columns = alongside + 1;
        double[] xyz = new double[6 * rows * columns];
        for (int row = 0; row < rows; row++) {
            double z = row <= deep ? -draught * (deep - row) / deep : freeboard;
            double below = Math.min(z, 0) / draught;
            for (int i = 0; i < columns; i++) {
                double share = 2.0 * i / alongside - 1;
                double y = beam / 2 * (1 - share * share) * (1 - below * below);
                put(xyz, row * columns + i, share * length / 2, y, z);
                put(xyz, (rows + row) * columns + i, share * length / 2, -y, z);
            }
        }
        Corners corners = new Corners();
        int starboard = rows * columns;
        for (int i = 0; i + 1 < columns; i++) {
            for (int row = 0; row + 1 < rows; row++) {
                int a = row * columns + i;
                corners.quad(a, a + columns, a + columns + 1, a + 1);
                corners.quad(starboard + a, starboard + a + 1, starboard + a + columns + 1, starboard + a + columns);
            }
            int deck = (rows - 1) * columns + i;
            corners.quad(deck, starboard + deck, starboard + deck + 1, deck + 1);
        }
        return TriangleMesh.owning(xyz, corners.toArray());
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

    private static void put(double[] xyz, int vertex, double x, double y, double z) {
        xyz[3 * vertex] = x;
        xyz[3 * vertex + 1] = y;
        xyz[3 * vertex + 2] = z;
    }

    /** A growing list of corners. */
    private static final class Corners {

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
