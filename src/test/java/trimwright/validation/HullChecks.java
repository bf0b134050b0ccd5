package trimwright.validation;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.HullForms;
import trimwright.TestMeshes;
import trimwright.immersion.Immersion;
import trimwright.immersion.MeshSolid;
import trimwright.immersion.WaterPlane;

/** Volumes, areas and metacentres of hull forms with published particulars or closed forms. */
final class HullChecks {

    private static final int STATIONS = 300;
    private static final int SIDES = 1024;
    /** A circle of N corners lacks (2π/N)²/6 of its area, chords of n divisions less than 1/n² of a length. */
    private static final double SHARE = Math.pow(2 * Math.PI / SIDES, 2) / 6 + 1.0 / (STATIONS * STATIONS);

    private static final String SUBOFF =
            "Groves, Huang, Chang, DTRC/SHD-1298-01, 1989: formula; value worked out from it";

    private HullChecks() {}

    static List<Check> all() {
        List<Check> checks = new ArrayList<>();
        suboff(checks);
        wigley(checks);
        myring(checks);
        sphere(checks);
        return checks;
    }

    private static Immersion below(WaterPlane plane, MeshSolid body) {
        return Immersion.below(plane, body.centroidMm()).add(body);
    }

    private static void suboff(List<Check> checks) {
        MeshSolid hull = MeshSolid.of(HullForms.suboff(STATIONS, SIDES));
        String mesh = "SUBOFF, %d × %d".formatted(STATIONS, SIDES);
        checks.add(new Check(
                "length, mm",
                "Groves, Huang, Chang, DTRC/SHD-1298-01, 1989: tables 1 and 2",
                4356.1,
                hull.tree().bounds().sizeX(),
                0.05,
                mesh));
        checks.add(printed("volume, m³", 0.69921, hull.volumeMm3() * 1e-9, 5e-6, mesh));
        checks.add(printed("wetted surface, m²", 5.9883, hull.tree().areaMm2() * 1e-6, 5e-5, mesh));
        double fromNose = HullForms.SUBOFF_LENGTH_MM - hull.centroidMm().getX();
        checks.add(printed("centre of buoyancy from the nose, mm", 2008.61, fromNose, 0.005, mesh));
        Immersion half = below(WaterPlane.level(0), hull);
        checks.add(printed("volume below the axis, m³", 0.349605, half.volumeMm3() * 1e-9, 5e-7, mesh));
        checks.add(printed("waterplane on the axis, m²", 1.884272, half.waterplaneMm2() * 1e-6, 5e-7, mesh));
        checks.add(printed(
                "height of B, afloat on the axis, mm",
                -103.11,
                half.centroidMm().getZ(),
                0.005,
                mesh));
        double flotation =
                HullForms.SUBOFF_LENGTH_MM - half.centreOfFlotationMm().getX();
        checks.add(printed("centre of flotation from the nose, mm", 2033.49, flotation, 0.005, mesh));
        checks.add(printed("BM, mm", 103.11, half.inertiaPortMm4() / half.volumeMm3(), 0.005, mesh));
        checks.add(printed("BM lengthwise, m", 6.4846, half.inertiaAheadMm4() / half.volumeMm3() * 1e-3, 5e-5, mesh));
    }

    private static Check printed(String what, double published, double ours, double halfDigit, String mesh) {
        return new Check(what, SUBOFF, published, ours, Math.abs(published) * SHARE + halfDigit, mesh);
    }

    private static void wigley(List<Check> checks) {
        double length = 1000;
        double beam = 100;
        double draught = 62.5;
        int n = 200;
        int m = 100;
        double share = 3 * (1.0 / (n * n) + 1.0 / (4 * m * m));
        Immersion cut = Immersion.below(WaterPlane.level(0), Vector3D.ZERO)
                .add(MeshSolid.of(HullForms.wigley(length, beam, draught, 20, n, m)));
        String mesh = "Wigley, %d × %d".formatted(n, m);
        String source = "Wigley 1934: formula; closed form of it";
        checks.add(Check.within(
                share, "volume 4/9 L B T, mm³", source, length * beam * draught * 4 / 9, cut.volumeMm3(), mesh));
        checks.add(Check.within(
                share, "waterplane 2/3 L B, mm²", source, length * beam * 2 / 3, cut.waterplaneMm2(), mesh));
        checks.add(Check.within(
                3 * share,
                "BM 3/35 B²/T, mm",
                source,
                3.0 / 35 * beam * beam / draught,
                cut.inertiaPortMm4() / cut.volumeMm3(),
                mesh));
        checks.add(Check.within(
                3 * share,
                "BM lengthwise 3/40 L²/T, mm",
                source,
                3.0 / 40 * length * length / draught,
                cut.inertiaAheadMm4() / cut.volumeMm3(),
                mesh));
    }

    private static void myring(List<Check> checks) {
        MeshSolid body = MeshSolid.of(HullForms.myring(STATIONS, SIDES));
        String mesh = "Myring body, %d × %d".formatted(STATIONS, SIDES);
        String source = "Myring 1976, constants of Prestero 2001 (from memory): formula; value worked out from it";
        checks.add(new Check("volume, m³", source, 0.031655, body.volumeMm3() * 1e-9, 0.031655 * SHARE + 5e-7, mesh));
        double fromNose = body.tree().bounds().maxX() - body.centroidMm().getX();
        checks.add(new Check(
                "centre of buoyancy from the nose, mm", source, 605.84, fromNose, 605.84 * SHARE + 0.005, mesh));
    }

    /** Sphere of radius 1, depth 0.5, 1 and 1.5: V = π d² (R − d/3), BM = π a⁴ / 4 V with a² = d (2R − d). */
    private static void sphere(List<Check> checks) {
        double radius = 100;
        int divisions = 6;
        MeshSolid ball = MeshSolid.of(TestMeshes.ellipsoid(radius, radius, radius, divisions));
        String mesh = "ball of %d triangles".formatted(ball.tree().triangleCount());
        // Every chord of an edge of length e misses e²/8R²; the edges of an icosahedron are 1.05 R long before they are
        // halved.
        double share = 3 * Math.pow(1.11 / (1 << divisions), 2) / 8;
        double[][] published = {{0.5, 0.654498, 0.675}, {1, 2.094395, 0.375}, {1.5, 3.534292, 0.125}};
        for (double[] row : published) {
            Immersion cut = below(WaterPlane.level((row[0] - 1) * radius), ball);
            String depth = "of a ball of R = 1 immersed by %s".formatted(row[0]);
            checks.add(new Check(
                    "volume " + depth, "closed form", row[1], cut.volumeMm3() * 1e-6, row[1] * share * 2 + 5e-7, mesh));
            checks.add(new Check(
                    "BM " + depth,
                    "closed form",
                    row[2],
                    cut.inertiaPortMm4() / cut.volumeMm3() / radius,
                    row[2] * share * 4,
                    mesh));
        }
    }

    /** Volumes of finer and finer meshes of one hull, beside the finest two's limit by Richardson: the error falls by four at each step. */
    static List<double[]> convergence() {
        double[] volumes = new double[6];
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < volumes.length; i++) {
            MeshSolid hull = MeshSolid.of(HullForms.suboff(12 << i, 32 << i));
            volumes[i] = hull.volumeMm3() * 1e-9;
            rows.add(new double[] {hull.tree().triangleCount(), volumes[i], 0});
        }
        int last = volumes.length - 1;
        double limit = volumes[last] + (volumes[last] - volumes[last - 1]) / 3;
        rows.forEach(row -> row[2] = limit - row[1]);
        return rows;
    }
}
