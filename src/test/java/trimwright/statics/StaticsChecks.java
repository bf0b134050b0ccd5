package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Water;
import trimwright.mesh.Solids;
import trimwright.validation.Check;

/** Floating bodies with a closed form, a handbook's worked examples, and the water. */
public final class StaticsChecks {

    private static final String BARRASS = "Barrass and Derrett, Ship Stability for Masters and Mates: worked example";

    private StaticsChecks() {}

    public static List<Check> floatingBodies() {
        List<Check> checks = new ArrayList<>();
        squareBar(checks);
        loll(checks);
        wedge(checks);
        box(checks);
        return checks;
    }

    private static void squareBar(List<Check> checks) {
        double[][] published = {{0.15, 0}, {0.25, 26.5651}, {0.26, 29.6305}, {0.4, 45}, {0.74, 29.6305}, {0.75, 26.5651}
        };
        for (double[] row : published) {
            Flotation f = Flotation.of(TestBoats.block(2000, 100, 100, row[0] * 20000, new Vector3D(0, 0, 50)));
            checks.add(new Check(
                    "list of a long square bar of gravity %s, °".formatted(row[0]),
                    "Reid, Am. J. Phys. 31, 565, 1963",
                    row[1],
                    Math.abs(f.settled().orElseThrow().heelDeg()),
                    1e-4,
                    "box"));
        }
    }

    private static void loll(List<Check> checks) {
        Flotation f = Flotation.of(TestBoats.block(800, 100, 120, 4800, new Vector3D(0, 0, 48)));
        checks.add(new Check(
                "angle of loll of a box, B 1, T 0.6, KG 0.48, °",
                "closed form: tan φ = √(−2 GM/BM)",
                37.575,
                Math.abs(f.settled().orElseThrow().heelDeg()),
                5e-4,
                "box"));
    }

    private static void wedge(List<Check> checks) {
        double height = 100;
        double tan = Math.tan(Math.toRadians(30));
        for (double[] row : new double[][] {{0.5, -0.038127}, {0.6, 0.021864}}) {
            Condition condition = Condition.of(TestBoats.boat(TestBoats.hull(
                    trimwright.TestMeshes.prism(-500, 500, 0, 0, height * tan, height, -height * tan, height),
                    row[0] * height * height * tan,
                    new Vector3D(0, 0, 2.0 / 3 * height))));
            checks.add(new Check(
                    "GM of a wedge of 60°, apex down, gravity %s, by its height".formatted(row[0]),
                    "closed form: ⅔ (s^½ sec² α − 1)",
                    row[1],
                    TestBoats.gmTransverseMm(condition, Vector3D.PLUS_K) / height,
                    1e-6,
                    "prism of 8 triangles"));
        }
    }

    private static void box(List<Check> checks) {
        Condition condition = Condition.of(TestBoats.block(400, 100, 60, 1200, new Vector3D(0, 0, 20)));
        double bm = 100.0 * 100 / 12 / 30;
        for (double deg : new double[] {5, 15, 28}) {
            double phi = Math.toRadians(deg);
            checks.add(new Check(
                    "lever of a box at %s°, mm".formatted((int) deg),
                    "closed form: sin φ (GM + ½ BM tan² φ)",
                    Math.sin(phi) * (15 + bm - 20 + 0.5 * bm * Math.pow(Math.tan(phi), 2)),
                    TestBoats.leverMm(condition, phi),
                    1e-9,
                    "box"));
        }
    }

    /** A length of the handbook's, m, stands as 10 mm, a tonne as a gram. */
    public static List<Check> handbook() {
        List<Check> checks = new ArrayList<>();
        Water salt = Water.ofDensity(1.025);
        Condition condition = Condition.of(TestBoats.boat(
                salt, TestBoats.hull(Solids.box(0, -60, 0, 650, 60, 80), 3198, new Vector3D(325, 0, 40))));
        String body = "box 65 × 12 × 8 m, KG 4 m, 3198 t";
        Equilibrium e = Flotation.of(condition).settled().orElseThrow();
        checks.add(new Check("draught, m", BARRASS, 4, e.plane().heightMm() / 10, 1e-9, body));
        checks.add(new Check("GM, m", BARRASS, 1, e.gmTransverseMm() / 10, 1e-9, body));
        double five = Math.toRadians(5);
        checks.add(new Check("GM sin 5°, m", BARRASS, 0.0872, e.gmTransverseMm() / 10 * Math.sin(five), 5e-5, body));
        checks.add(new Check(
                "moment at 5°, t·m", BARRASS, 278.9, 3198 * e.gmTransverseMm() / 10 * Math.sin(five), 0.25, body));
        double beam = Math.sqrt(12 * 6 * 3);
        Boat wallSided = TestBoats.boat(
                salt,
                TestBoats.hull(
                        Solids.box(0, -5 * beam, 0, 10 * 6000 / 1.025 / (6 * beam), 5 * beam, 120),
                        6000,
                        new Vector3D(5 * 6000 / 1.025 / (6 * beam), 0, 55)));
        checks.add(new Check(
                "lever at 25°, m",
                BARRASS,
                0.35,
                TestBoats.leverMm(Condition.of(wallSided), Math.toRadians(25)) / 10,
                0.005,
                "box with KB 3, KM 6, KG 5.5 m, 6000 t"));
        return checks;
    }

    public static List<Check> water() {
        List<Check> checks = new ArrayList<>();
        String eos = "EOS-80: UNESCO technical paper in marine science 44, 1983";
        double[][] density = {{0, 5, 999.96675}, {35, 5, 1027.67547}, {0, 25, 997.04796}, {35, 25, 1023.34306}};
        for (double[] row : density) {
            checks.add(new Check(
                    "density, %s g/kg at %s °C, kg/m³".formatted((int) row[0], (int) row[1]),
                    eos,
                    row[2],
                    Water.of(row[1], row[0]).densityGPerMm3() * 1e6,
                    5e-6,
                    "formula"));
        }
        String ittc = "ITTC 7.5-02-01-03: the practical against the absolute salinity makes 0.05";
        double[][] table = {{0, 10, 999.7025}, {0, 20, 998.2072}, {0, 30, 995.6495}, {35.165, 15, 1026.0210}};
        for (double[] row : table) {
            checks.add(new Check(
                    "density, %s at %s °C, kg/m³".formatted(row[0] == 0 ? "fresh" : "35.165 g/kg", (int) row[1]),
                    ittc,
                    row[2],
                    Water.of(row[1], row[0] == 0 ? 0 : 35).densityGPerMm3() * 1e6,
                    0.05,
                    "formula"));
        }
        String iapws = "IAPWS R1-76(2014)";
        checks.add(new Check(
                "surface tension at 300 K, mN/m", iapws, 71.686, SurfaceTension.mNPerM(26.85), 5e-4, "formula"));
        checks.add(
                new Check("surface tension at 20 °C, mN/m", iapws, 72.74, SurfaceTension.mNPerM(20), 5e-3, "formula"));
        return checks;
    }
}
