package trimwright;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import trimwright.mesh.TriangleMesh;

/** Hulls from their published formulae, for tests: closed, outward oriented, in mm, x toward the bow, z up. */
public final class HullForms {

    private static final double MM_PER_FOOT = 304.8;

    /** Length of {@link #suboff} over all, mm. */
    public static final double SUBOFF_LENGTH_MM = 14.291667 * MM_PER_FOOT;

    private HullForms() {}

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
        return revolved(feet, HullForms::suboffRadiusFeet, 14.291667, MM_PER_FOOT, sides);
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
        return TestMeshes.revolved(x, r, sides);
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
                TestMeshes.put(xyz, row * columns + i, share * length / 2, y, z);
                TestMeshes.put(xyz, (rows + row) * columns + i, share * length / 2, -y, z);
            }
        }
        TestMeshes.Corners corners = new TestMeshes.Corners();
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
}
