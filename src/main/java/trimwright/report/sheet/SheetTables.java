package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.finding.Finding;
import trimwright.immersion.Displacer;
import trimwright.report.Measure;
import trimwright.report.Numbers;
import trimwright.report.Wording;

/** What a boat is made of, and what the figures rest on. */
final class SheetTables {

    private final Subject subject;
    private final Measure measure;

    SheetTables(Subject subject) {
        this.subject = subject;
        measure = subject.measure();
    }

    /** Mass, centre, moments and displaced volume, piece by piece, and the sums. */
    Block weights() {
        List<List<String>> rows = new ArrayList<>();
        double mass = subject.condition().dryMassG();
        Vector3D moment = Vector3D.ZERO;
        double volume = 0;
        for (Piece piece : subject.condition().pieces()) {
            double displaces = piece.displacer().map(Displacer::volumeMm3).orElse(0.0);
            rows.add(row(piece.id(), piece.massG(), piece.centreMm(), displaces, mass));
            moment = moment.add(piece.massG(), piece.centreMm());
            volume += displaces;
        }
        rows.add(row("all together", mass, moment.scalarMultiply(1 / mass), volume, mass));
        boolean twins = subject.boat().parts().stream().anyMatch(Part::mirror);
        String unit = measure.largeMomentUnit();
        return new Block.Grid(
                "weights",
                "Tanks empty; places and moments from the boat's origin, x ahead, y to port, z up"
                        + (twins ? "; ′ marks a twin" : ""),
                "lrrrrrrrrr",
                List.of(
                        "part",
                        subject.inMass("weight"),
                        subject.inLength("x"),
                        subject.inLength("y"),
                        subject.inLength("z"),
                        "along " + unit,
                        "across " + unit,
                        "up " + unit,
                        subject.inVolume("displaces"),
                        "share %"),
                rows,
                true);
    }

    private List<String> row(String id, double massG, Vector3D centre, double displacesMm3, double wholeG) {
        return List.of(
                id,
                measure.massNumber(massG, 1),
                measure.lengthNumber(centre.getX(), 1),
                measure.lengthNumber(centre.getY(), 1),
                measure.lengthNumber(centre.getZ(), 1),
                measure.largeMomentNumber(massG * centre.getX()),
                measure.largeMomentNumber(massG * centre.getY()),
                measure.largeMomentNumber(massG * centre.getZ()),
                measure.volumeNumber(displacesMm3, 1),
                Numbers.fixed(100 * massG / wholeG, 1));
    }

    /** What was weighed and what computed, how the hull is built, and what was found about meshes and file. */
    Block restsOn(List<Finding> findings) {
        List<String> weighed = new ArrayList<>();
        List<String> computed = new ArrayList<>();
        List<String> placed = new ArrayList<>();
        for (Part part : subject.boat().parts()) {
            if (part.weighedMassG().isPresent()) {
                weighed.add(part.id());
            } else if (part.densityGPerCm3().isPresent()) {
                computed.add(
                        part.id() + " (" + Numbers.plain(part.densityGPerCm3().get()) + " g/cm³)");
            }
            if (part.shape().isEmpty()
                    && part.kind() != Kind.HULL
                    && part.inside().isEmpty()) {
                placed.add(part.id());
            }
        }
        List<String> points = new ArrayList<>();
        meshes().ifPresent(points::add);
        points.add("Weighed, as the boat file says: " + listed(weighed) + ".");
        points.add("Computed from a density that is assumed, so weigh it: " + listed(computed) + ".");
        if (!placed.isEmpty()) {
            points.add("Taken as a ball of its weight and density about its centre: " + listed(placed) + ".");
        }
        List<Finding> worth = findings.stream().distinct().toList();
        worth.forEach(f -> points.add(Wording.of(f, measure)));
        if (worth.isEmpty()) {
            points.add("Nothing else was found to doubt in the boat file and its meshes.");
        }
        points.add("Still water, no way on. Figures are as good as what is stated above.");
        return new Block.Points(points);
    }

    private Optional<String> meshes() {
        List<String> hulls = new ArrayList<>();
        for (Part part : subject.boat().parts()) {
            if (part.shape().orElse(null) instanceof MeshShape mesh
                    && part.build().isPresent()) {
                hulls.add(part.id() + " (" + mesh.file() + ", " + mesh.mesh().triangleCount() + " triangles, "
                        + built(part.build().get()) + ")");
            }
        }
        return hulls.isEmpty() ? Optional.empty() : Optional.of("Hull from the mesh: " + listed(hulls) + ".");
    }

    private String built(HullBuild build) {
        if (build instanceof HullBuild.Skin skin) {
            return "a free-flooding skin " + measure.briefLength(skin.thicknessMm()) + " " + measure.lengthUnit()
                    + " thick";
        }
        return build instanceof HullBuild.Sealed ? "watertight" : "printed plastic that floods inside";
    }

    private static String listed(List<String> names) {
        return names.isEmpty() ? "nothing" : String.join(", ", names);
    }
}
