package trimwright.desktop.model;

import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.mesh.Bounds;

/** New parts, of a size to begin with, in the middle of what is there. */
public final class FreshPart {

    private static final double LEAD_G_PER_CM3 = 11.34;
    private static final double FOAM_G_PER_CM3 = 0.03;
    private static final double FITTING_G_PER_CM3 = 1.2;
    private static final double FITTING_G = 20;
    /** Length of a cylinder as a share of the boat's, and its thickness as a share of her height and breadth. */
    private static final double CYLINDER_LONG = 0.4;

    private static final double CYLINDER_THICK = 0.6;
    private static final double TANK_LONG = 0.25;
    private static final double TANK_THICK = 0.9;
    /** What an empty cylinder weighs to begin with, g for each cm³ it holds: a tube of acrylic with its end caps. */
    private static final double CYLINDER_G_PER_CM3 = 0.35;

    private FreshPart() {}

    /** What the window calls a kind that can be added. */
    public static String name(Kind kind) {
        return switch (kind) {
            case BALLAST -> "Lead";
            case FOAM -> "Foam";
            case CYLINDER -> "Cylinder";
            case TANK -> "Tank";
            case HULL -> "Hull";
            case AIR -> "Air";
            case FITTING -> "Fitting";
        };
    }

    /**
     * A part that is not in the boat yet.
     *
     * @param kind lead, foam, a fitting, a cylinder or a tank; a tank goes into the first cylinder
     * @param middleMm where the middle of it is to be
     */
    public static Part of(Boat boat, Kind kind, Vector3D middleMm) {
        return switch (kind) {
            case CYLINDER -> cylinder(boat, middleMm);
            case TANK -> tank(boat, middleMm);
            case BALLAST -> box(boat, kind, middleMm, new Vector3D(25, 6, 3), Optional.empty(), LEAD_G_PER_CM3);
            case FOAM -> box(boat, kind, middleMm, new Vector3D(30, 10, 8), Optional.empty(), FOAM_G_PER_CM3);
            default -> box(boat, kind, middleMm, new Vector3D(15, 10, 10), Optional.of(FITTING_G), FITTING_G_PER_CM3);
        };
    }

    /**
     * A part of a given shape that is not in the boat yet, of the material that is usual for its kind.
     *
     * @param kind as in {@link #of}
     * @param wished its id, unless that is taken
     */
    static Part ofMesh(Boat boat, Kind kind, String wished, MeshShape shape, double volumeMm3) {
        Optional<Double> massG = kind == Kind.CYLINDER
                ? Optional.of(Math.max(1, Math.rint(CYLINDER_G_PER_CM3 * volumeMm3 / 1000)))
                : Optional.empty();
        Optional<Double> density = switch (kind) {
            case BALLAST -> Optional.of(LEAD_G_PER_CM3);
            case FOAM -> Optional.of(FOAM_G_PER_CM3);
            case FITTING -> Optional.of(FITTING_G_PER_CM3);
            default -> Optional.empty();
        };
        return part(boat, kind, wished, shape, massG, density, Optional.empty());
    }

    private static Part box(
            Boat boat, Kind kind, Vector3D middle, Vector3D half, Optional<Double> massG, double densityGPerCm3) {
        Shape shape = new BoxShape(rounded(middle.subtract(half)), rounded(middle.add(half)));
        return part(boat, kind, shape, massG, Optional.of(densityGPerCm3), Optional.empty());
    }

    private static Part cylinder(Boat boat, Vector3D middle) {
        Bounds all = boat.parts().stream()
                .flatMap(p -> p.shape().stream())
                .map(Shape::bounds)
                .reduce(Bounds::union)
                .orElse(new Bounds(0, -50, 0, 500, 50, 100));
        double half = Math.rint(CYLINDER_LONG * all.sizeX() / 2);
        double diameter = Math.max(1, Math.rint(CYLINDER_THICK * Math.min(all.sizeY(), all.sizeZ())));
        BarShape bar = bar(middle, half, diameter);
        double grams = Math.rint(CYLINDER_G_PER_CM3 * bar.solid().volumeMm3() / 1000);
        return part(boat, Kind.CYLINDER, bar, Optional.of(grams), Optional.empty(), Optional.empty());
    }

    private static Part tank(Boat boat, Vector3D middle) {
        Optional<Part> cylinder = boat.parts().stream()
                .filter(p -> p.kind() == Kind.CYLINDER && p.shape().orElseThrow() instanceof BarShape)
                .findFirst();
        if (cylinder.isEmpty()) {
            BarShape bar = bar(middle, 40, 30);
            return part(boat, Kind.TANK, bar, Optional.empty(), Optional.empty(), Optional.empty());
        }
        BarShape around = (BarShape) cylinder.get().shape().orElseThrow();
        Vector3D axis = around.toMm().subtract(around.fromMm()).normalize();
        Vector3D at = new Vector3D(0.5, around.fromMm(), 0.5, around.toMm());
        double half = TANK_LONG * around.lengthMm() / 2;
        BarShape bar = new BarShape(
                new Vector3D(1, at, -half, axis),
                new Vector3D(1, at, half, axis),
                TANK_THICK * around.diameterMm(),
                BarShape.Ends.FLAT);
        return part(
                boat,
                Kind.TANK,
                bar,
                Optional.empty(),
                Optional.empty(),
                Optional.of(cylinder.get().id()));
    }

    private static BarShape bar(Vector3D middle, double half, double diameter) {
        Vector3D at = rounded(middle);
        Vector3D ahead = new Vector3D(Math.max(1, half), 0, 0);
        return new BarShape(at.subtract(ahead), at.add(ahead), diameter, BarShape.Ends.FLAT);
    }

    private static Part part(
            Boat boat,
            Kind kind,
            Shape shape,
            Optional<Double> massG,
            Optional<Double> densityGPerCm3,
            Optional<String> inside) {
        return part(boat, kind, name(kind).toLowerCase(Locale.ROOT), shape, massG, densityGPerCm3, inside);
    }

    private static Part part(
            Boat boat,
            Kind kind,
            String wished,
            Shape shape,
            Optional<Double> massG,
            Optional<Double> densityGPerCm3,
            Optional<String> inside) {
        return new Part(
                Edits.freeId(boat, wished),
                kind,
                Optional.of(shape),
                Optional.empty(),
                massG,
                densityGPerCm3,
                Optional.empty(),
                inside,
                false,
                0);
    }

    private static Vector3D rounded(Vector3D p) {
        return new Vector3D(Math.rint(p.getX()), Math.rint(p.getY()), Math.rint(p.getZ()));
    }
}
