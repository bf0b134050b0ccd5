package trimwright;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BoxShape;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.mesh.MeshImport;
import trimwright.mesh.TriangleMesh;

/** Parts of boats for tests, in one line each. Lengths mm, masses g, densities g/cm³. */
public final class TestParts {

    private TestParts() {}

    public static Vector3D at(double x, double y, double z) {
        return new Vector3D(x, y, z);
    }

    public static BoxShape box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new BoxShape(at(x0, y0, z0), at(x1, y1, z1));
    }

    /** A body that was weighed. */
    public static Part weighed(String id, Kind kind, Shape shape, double mass, Vector3D centre) {
        return part(id, kind, shape, Optional.of(mass), Optional.empty(), Optional.of(centre));
    }

    /** A body whose mass comes from its density. */
    public static Part solid(String id, Kind kind, Shape shape, double density) {
        return part(id, kind, shape, Optional.empty(), Optional.of(density), Optional.empty());
    }

    private static Part part(
            String id,
            Kind kind,
            Shape shape,
            Optional<Double> mass,
            Optional<Double> density,
            Optional<Vector3D> centre) {
        return new Part(
                id, kind, Optional.of(shape), Optional.empty(), mass, density, centre, Optional.empty(), false, 0);
    }

    /** A fitting in one place, of unknown volume. */
    public static Part compact(String id, double mass, Vector3D centre) {
        return compact(id, Kind.FITTING, mass, Optional.empty(), centre);
    }

    /** A mass in one place; without a density its volume is not known. */
    public static Part compact(String id, Kind kind, double mass, Optional<Double> density, Vector3D centre) {
        return new Part(
                id,
                kind,
                Optional.empty(),
                Optional.empty(),
                Optional.of(mass),
                density,
                Optional.of(centre),
                Optional.empty(),
                false,
                0);
    }

    public static Part tank(String id, Shape shape, Optional<String> inside) {
        return new Part(
                id,
                Kind.TANK,
                Optional.of(shape),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                inside,
                false,
                0);
    }

    public static Part hull(String id, TriangleMesh mesh, HullBuild build, double density) {
        return new Part(
                id,
                Kind.HULL,
                Optional.of(new MeshShape(id + ".stl", MeshImport.AS_IS, mesh)),
                Optional.of(build),
                Optional.empty(),
                Optional.of(density),
                Optional.empty(),
                Optional.empty(),
                false,
                0);
    }

    /** The same part standing in another. */
    public static Part inside(String other, Part part) {
        return with(part, Optional.of(other), part.mirror());
    }

    /** The same part with a twin at -y. */
    public static Part twice(Part part) {
        return with(part, part.inside(), true);
    }

    private static Part with(Part p, Optional<String> inside, boolean mirror) {
        return new Part(
                p.id(),
                p.kind(),
                p.shape(),
                p.build(),
                p.weighedMassG(),
                p.densityGPerCm3(),
                p.givenCentreMm(),
                inside,
                mirror,
                p.fill(),
                p.softness(),
                p.fixed(),
                p.margins());
    }
}
