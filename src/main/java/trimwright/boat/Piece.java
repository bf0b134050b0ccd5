package trimwright.boat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.Blend;
import trimwright.immersion.Displacer;
import trimwright.immersion.MeshSkin;
import trimwright.immersion.MeshTree;
import trimwright.immersion.RoundBar;

/**
 * One physical piece: a part, or the twin of a mirrored part, with what it weighs and displaces.
 *
 * @param part the part it belongs to
 * @param twin whether it is the mirror image at -y
 * @param massG mass, without any tank water
 * @param centreMm centre of mass
 * @param body the room it takes up; empty for a piece of unknown volume
 * @param tankRoom the room for water in a tank; empty for everything else
 * @param surface the mesh of a hull, for its wetted area; empty for everything else
 */
public record Piece(
        Part part,
        boolean twin,
        double massG,
        Vector3D centreMm,
        Optional<Displacer> body,
        Optional<Displacer> tankRoom,
        Optional<MeshTree> surface) {

    private static final double MM3_PER_CM3 = 1000;

    /** Both pieces of a mirrored part, otherwise the one. */
    static List<Piece> of(Part part) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(of(part, false));
        if (part.mirror()) {
            pieces.add(of(part, true));
        }
        return pieces;
    }

    /** What it displaces; empty when it stands inside a watertight part. */
    public Optional<Displacer> displacer() {
        return part.inside().isPresent() ? Optional.empty() : body;
    }

    /** The shape of the part, of the twin its mirror image. */
    public Optional<Shape> shape() {
        return part.shape().map(s -> twin ? s.mirrored() : s);
    }

    /** The id of the part, followed by a prime for the twin. */
    public String id() {
        return twin ? part.id() + "′" : part.id();
    }

    private static Piece of(Part part, boolean twin) {
        Optional<Shape> shape = part.shape().map(s -> twin ? s.mirrored() : s);
        Optional<Vector3D> given = part.givenCentreMm().map(c -> twin ? Shape.mirrored(c) : c);
        Optional<MeshTree> surface = part.isHull() ? shape.map(s -> ((MeshShape) s).tree()) : Optional.empty();
        Optional<Displacer> body = body(part, shape, given, surface);
        Optional<Displacer> material = part.isHull()
                ? Optional.of(material(part.build().get(), shape.get().solid(), surface.get()))
                : body;
        double massG = massG(part, material);
        Vector3D centre = given.or(() -> material.map(Displacer::centroidMm)).orElse(Vector3D.ZERO);
        return new Piece(
                part, twin, massG, centre, body, part.isTank() ? shape.map(Shape::solid) : Optional.empty(), surface);
    }

    /** What the part displaces when it stands in the water. */
    private static Optional<Displacer> body(
            Part part, Optional<Shape> shape, Optional<Vector3D> centre, Optional<MeshTree> surface) {
        if (part.isHull()) {
            return Optional.of(hullBody(part.build().get(), shape.get().solid(), surface.get()));
        }
        if (shape.isPresent()) {
            return shape.map(Shape::solid);
        }
        if (part.densityGPerCm3().isEmpty()) {
            return Optional.empty();
        }
        double volumeMm3 = part.weighedMassG().get() / part.densityGPerCm3().get() * MM3_PER_CM3;
        return Optional.of(RoundBar.ball(centre.get(), Math.cbrt(3 * volumeMm3 / (4 * Math.PI))));
    }

    private static Displacer hullBody(HullBuild build, Displacer solid, MeshTree surface) {
        if (build instanceof HullBuild.Skin skin) {
            return new MeshSkin(surface, skin.thicknessMm());
        }
        if (build instanceof HullBuild.Printed printed
                && printed.infill().map(HullBuild.Infill::floods).orElse(false)) {
            return plastic(printed.infill().get(), solid, surface);
        }
        return solid;
    }

    /** The material of a hull, whose volume and centroid give its mass and centre. */
    private static Displacer material(HullBuild build, Displacer solid, MeshTree surface) {
        if (build instanceof HullBuild.Skin skin) {
            return new MeshSkin(surface, skin.thicknessMm());
        }
        if (build instanceof HullBuild.Sealed sealed) {
            // Without a thickness it was weighed: the centroid of the surface then stands for that of the shell.
            return new MeshSkin(surface, sealed.shellMm());
        }
        HullBuild.Printed printed = (HullBuild.Printed) build;
        return printed.infill().isPresent() ? plastic(printed.infill().get(), solid, surface) : solid;
    }

    /** Walls of full density on every surface, the rest thinned to its percentage. */
    private static Displacer plastic(HullBuild.Infill infill, Displacer solid, MeshTree surface) {
        Displacer walls = new MeshSkin(surface, infill.wallMm());
        double share = infill.percent() / 100;
        if (walls.volumeMm3() >= solid.volumeMm3()) {
            return solid;
        }
        return new Blend(walls, 1 - share, solid, share);
    }

    private static double massG(Part part, Optional<Displacer> material) {
        if (part.weighedMassG().isPresent()) {
            return part.weighedMassG().get();
        }
        if (part.isTank() || part.isAir()) {
            return 0;
        }
        return part.densityGPerCm3().orElseThrow() * material.orElseThrow().volumeMm3() / MM3_PER_CM3;
    }
}
