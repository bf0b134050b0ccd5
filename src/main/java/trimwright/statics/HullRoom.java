package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.boat.Chords;
import trimwright.boat.HullBuild;
import trimwright.boat.MeshShape;
import trimwright.boat.Piece;
import trimwright.boat.Shape;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.immersion.Displacer;
import trimwright.immersion.MeshSolid;
import trimwright.immersion.MeshTree;
import trimwright.immersion.Remainder;
import trimwright.mesh.Bounds;
import trimwright.mesh.Solids;
import trimwright.mesh.Soundness;
import trimwright.mesh.TriangleMesh;

/**
 * The room in the free-flooding hulls of a boat that the water takes: what they enclose, less their own material and every part that stands
 * in it. A skin hull encloses the volume of its surface, exactly. Of a print only the plastic is given; what it encloses is taken
 * as everything between the lowest and the highest plastic on upright lines through the middles of cells of at most {@link #CELL_MM}.
 */
final class HullRoom {

    /** Greatest side of the cells, seen from above, in which the inside of a print is measured, mm; larger on large hulls. */
    private static final double CELL_MM = 2;

    private static final int MOST_CELLS_A_SIDE = 240;
    private static final double INSIDE = 0.5;

    private HullRoom() {}

    /**
     * The room of all hulls together.
     *
     * @return empty when no hull floods freely
     * @throws UnusableInputException for skin hulls with openings, also when put together: their surface does not say where the inside ends
     */
    static Optional<Displacer> of(Condition condition) {
        List<TriangleMesh> skins = new ArrayList<>();
        List<TriangleMesh> enclosing = new ArrayList<>();
        List<Displacer> taken = new ArrayList<>();
        String skin = "";
        for (Piece hull : condition.pieces()) {
            if (hull.surface().isEmpty() || hull.part().build().orElseThrow() instanceof HullBuild.Sealed) {
                continue;
            }
            Shape own = hull.part().shape().orElseThrow();
            MeshShape shape = (MeshShape) (hull.twin() ? own.mirrored() : own);
            if (hull.part().build().orElseThrow() instanceof HullBuild.Skin) {
                skins.add(shape.mesh());
                skin = hull.part().id();
            } else {
                enclosing.add(envelope(shape));
            }
            taken.add(hull.displacer().orElseThrow());
        }
        if (taken.isEmpty()) {
            return Optional.empty();
        }
        if (!skins.isEmpty()) {
            TriangleMesh joined = TriangleMesh.joined(skins);
            if (!Soundness.quick(joined).closed()) {
                throw new UnusableInputException(Finding.of(Code.DRAINING_HULL_OPEN, new Place.OnPart(skin)));
            }
            enclosing.add(joined);
        }
        MeshTree tree = MeshTree.of(TriangleMesh.joined(enclosing));
        for (Piece piece : condition.pieces()) {
            if (piece.displacer().isPresent() && !piece.part().isHull()) {
                Displacer body = piece.displacer().get();
                if (tree.windingNumber(body.centroidMm()) > INSIDE) {
                    taken.add(body);
                }
            }
        }
        return Optional.of(new Remainder(new MeshSolid(tree), taken));
    }

    /**
     * A box for every cell seen from above, from the lowest to the highest plastic there. The walls that two boxes share cancel in every sum.
     */
    private static TriangleMesh envelope(MeshShape print) {
        Bounds box = print.bounds();
        int nx = cells(box.sizeX());
        int ny = cells(box.sizeY());
        double dx = box.sizeX() / nx;
        double dy = box.sizeY() / ny;
        List<TriangleMesh> boxes = new ArrayList<>();
        for (int i = 0; i < nx; i++) {
            for (int j = 0; j < ny; j++) {
                Chords plastic = print.chords(box.minX() + (i + 0.5) * dx, box.minY() + (j + 0.5) * dy);
                if (plastic.count() > 0) {
                    double x = box.minX() + i * dx;
                    double y = box.minY() + j * dy;
                    double high = plastic.highMm(plastic.count() - 1);
                    boxes.add(Solids.box(x, y, plastic.lowMm(0), x + dx, y + dy, high));
                }
            }
        }
        return TriangleMesh.joined(boxes);
    }

    private static int cells(double sizeMm) {
        return (int) Math.min(MOST_CELLS_A_SIDE, Math.max(1, Math.ceil(sizeMm / CELL_MM)));
    }
}
