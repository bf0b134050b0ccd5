package trimwright.statics;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.MeshImport;
import trimwright.mesh.TriangleMesh;

/** Boats for tests, in water of 1 g/cm³ where nothing else is said. */
final class TestBoats {

    static final Water PLAIN = Water.ofDensity(1);

    private TestBoats() {}

    static Boat boat(Water water, Part... parts) {
        return new Boat("test", water, Optional.empty(), List.of(parts), List.of(), Targets.NONE);
    }

    static Boat boat(Part... parts) {
        return boat(PLAIN, parts);
    }

    /** A solid body that was weighed. */
    static Part body(String id, Shape shape, double massG, Vector3D centre) {
        return part(id, Kind.CYLINDER, Optional.of(shape), Optional.empty(), massG, centre, Optional.empty(), 0);
    }

    /** A weight without a volume. */
    static Part weight(String id, double massG, Vector3D centre) {
        return part(id, Kind.FITTING, Optional.empty(), Optional.empty(), massG, centre, Optional.of("hull"), 0);
    }

    /** A tank inside the hull. */
    static Part tank(String id, Shape shape, double fill) {
        return part(
                id,
                Kind.TANK,
                Optional.of(shape),
                Optional.empty(),
                0,
                shape.solid().centroidMm(),
                Optional.of("hull"),
                fill);
    }

    /** A watertight hull that was weighed. */
    static Part hull(TriangleMesh mesh, double massG, Vector3D centre) {
        return hull("hull", mesh, new HullBuild.Sealed(Optional.empty()), massG, centre);
    }

    static Part hull(String id, TriangleMesh mesh, HullBuild build, double massG, Vector3D centre) {
        return part(id, Kind.HULL, Optional.of(shape(mesh)), Optional.of(build), massG, centre, Optional.empty(), 0);
    }

    static MeshShape shape(TriangleMesh mesh) {
        return new MeshShape("test.stl", MeshImport.AS_IS, mesh);
    }

    static BoxShape box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new BoxShape(new Vector3D(x0, y0, z0), new Vector3D(x1, y1, z1));
    }

    static BarShape bar(Vector3D from, Vector3D to, double diameter) {
        return new BarShape(from, to, diameter, BarShape.Ends.FLAT);
    }

    /** A box of these sizes, its bottom on z = 0, amidships at x = 0. */
    static Boat block(double length, double beam, double depth, double massG, Vector3D centre) {
        return boat(body("block", box(-length / 2, -beam / 2, 0, length / 2, beam / 2, depth), massG, centre));
    }

    /** The boat at rest at the height where she carries her weight, whether or not the direction is one she rests in. */
    static Trial held(Condition condition, Vector3D up) {
        return Trial.afloat(condition, condition::below, WaterPlane.of(up, 0), Double.NaN, 1e-13, null);
    }

    /** Metacentric height about the x axis in that direction, also where she would not stay. */
    static double gmTransverseMm(Condition condition, Vector3D up) {
        return held(condition, up).reducedPort() / condition.massG();
    }

    /** Righting lever of a list φ with the trim held level: (G − B) · dn/dφ. */
    static double leverMm(Condition condition, double phi) {
        Trial trial = held(condition, new Vector3D(0, Math.sin(phi), Math.cos(phi)));
        return trial.centreOfGravityMm()
                .subtract(trial.sums().centroidMm())
                .dotProduct(new Vector3D(0, Math.cos(phi), -Math.sin(phi)));
    }

    private static Part part(
            String id,
            Kind kind,
            Optional<Shape> shape,
            Optional<HullBuild> build,
            double massG,
            Vector3D centre,
            Optional<String> inside,
            double fill) {
        return new Part(
                id, kind, shape, build, Optional.of(massG), Optional.empty(), Optional.of(centre), inside, false, fill);
    }
}
