package trimwright.statics;

import static trimwright.TestParts.box;
import static trimwright.TestParts.hull;
import static trimwright.TestParts.solid;
import static trimwright.TestParts.tank;
import static trimwright.TestParts.twice;
import static trimwright.TestParts.weighed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.mesh.TriangleMesh;

/** Boats made of simple bodies, for the dive and the levers. */
public final class DiveBoats {

    private DiveBoats() {}

    static Part skin(String id, TriangleMesh mesh, double thicknessMm, double densityGPerCm3) {
        return hull(id, mesh, new HullBuild.Skin(thicknessMm), densityGPerCm3);
    }

    static BarShape bar(double x0, double x1, double z, double diameterMm) {
        return new BarShape(new Vector3D(x0, 0, z), new Vector3D(x1, 0, z), diameterMm, BarShape.Ends.FLAT);
    }

    static Boat boat(Part... parts) {
        return new Boat("boat", Water.ofDensity(1), Optional.empty(), List.of(parts), List.of(), Targets.NONE);
    }

    /** The same boat with a level painted line. */
    static Boat painted(Boat boat, double heightMm) {
        PaintedLine line = new PaintedLine(List.of(new Vector3D(50, 0, heightMm), new Vector3D(950, 0, heightMm)));
        return new Boat(boat.name(), boat.water(), Optional.of(line), boat.parts(), boat.zones(), boat.targets());
    }

    /**
     * A closed hull of round sections about an axis at height {@code axisMm}, blunt at both ends.
     *
     * @param stations sections; {@code around} corners in each
     */
    public static TriangleMesh spindle(
            double length, double axisMm, DoubleUnaryOperator radius, int stations, int around) {
        double[] xyz = new double[3 * (stations * around + 2)];
        int at = 0;
        for (int i = 0; i < stations; i++) {
            double share = (i + 0.5) / stations;
            double x = 0.5 * length * (1 - Math.cos(Math.PI * share));
            double r = radius.applyAsDouble(x / length);
            for (int j = 0; j < around; j++) {
                double angle = 2 * Math.PI * j / around;
                xyz[at++] = x;
                xyz[at++] = r * Math.cos(angle);
                xyz[at++] = axisMm + r * Math.sin(angle);
            }
        }
        int stern = stations * around;
        xyz[at] = 0;
        xyz[at + 2] = axisMm;
        xyz[at + 3] = length;
        xyz[at + 5] = axisMm;
        List<int[]> faces = new ArrayList<>();
        for (int j = 0; j < around; j++) {
            int next = (j + 1) % around;
            faces.add(new int[] {stern, next, j});
            for (int i = 0; i + 1 < stations; i++) {
                int a = i * around + j;
                int b = i * around + next;
                faces.add(new int[] {a, b, a + around});
                faces.add(new int[] {b, b + around, a + around});
            }
            int last = (stations - 1) * around;
            faces.add(new int[] {stern + 1, last + j, last + next});
        }
        return TriangleMesh.owning(
                xyz, faces.stream().flatMapToInt(java.util.Arrays::stream).toArray());
    }

    /** Radius over the length, 0…1, of a boat-like spindle of half breadth 1. */
    static double fullness(double share) {
        double ends = 2 * share - 1;
        return Math.sqrt(Math.max(0, 1 - ends * ends * ends * ends));
    }

    /**
     * A free-flooding boat with all that belongs to one: hull and tower as skins, cylinder with tank, lead, saddle foam. She floats level on
     * an even keel by symmetry about her middle at x = 500, and dives to the tower.
     */
    public static Boat submarine(int stations, int around) {
        TriangleMesh hull = spindle(1000, 60, s -> 55 * fullness(s), stations, around);
        Part wtc = weighed("wtc", Kind.CYLINDER, bar(250, 750, 58, 80), 1480, new Vector3D(500, 0, 50));
        return painted(
                boat(
                        skin("hull", hull, 1.6, 1.24),
                        skin("tower", trimwright.mesh.Solids.box(460, -14, 112, 560, 14, 160), 1.6, 1.24),
                        wtc,
                        tank("mbt", bar(448, 552, 58, 70), Optional.of("wtc")),
                        solid("keel lead", Kind.BALLAST, box(300, -8, 8, 700, 8, 17), 11.34),
                        twice(solid("saddle foam", Kind.FOAM, box(300, 42, 60, 700, 50, 78), 0.03))),
                86);
    }
}
