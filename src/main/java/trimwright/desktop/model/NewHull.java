package trimwright.desktop.model;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.file.AtomicFile;
import trimwright.file.BoatFile;
import trimwright.file.PartJson;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.Bounds;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshFile;
import trimwright.mesh.MeshImport;
import trimwright.mesh.MeshImport.Axis;
import trimwright.mesh.TriangleMesh;

/**
 * A boat that is being made from the mesh of a hull: what a builder has to say about it, with a guess for each.
 *
 * @param file the mesh file
 * @param mesh what it holds
 * @param unit unit of its numbers
 * @param scale multiplies after the unit
 * @param forward its own axis that points to the bow
 * @param up its own axis that points up
 * @param build how she is built
 * @param thicknessMm thickness of her shell
 * @param densityGPerCm3 of her material
 * @param weighedG her hull as weighed; empty for what shell and material come to
 * @param paintMm height of the painted line above her lowest point
 */
public record NewHull(
        Path file,
        MeshFile mesh,
        LengthUnit unit,
        double scale,
        Axis forward,
        Axis up,
        Build build,
        double thicknessMm,
        double densityGPerCm3,
        Optional<Double> weighedG,
        double paintMm) {

    /** How a hull is built, in a builder's words. */
    public enum Build {
        SKIN("Shell that floods", "The mesh is the outside of the shell, and water gets in behind it."),
        SEALED("Watertight hull", "The mesh is the outside of the hull, and no water gets in."),
        PRINTED("Print that floods", "The mesh encloses the plastic itself, and water gets in behind it.");

        private final String title;
        private final String words;

        Build(String title, String words) {
            this.title = title;
            this.words = words;
        }

        public String title() {
            return title;
        }

        public String words() {
            return words;
        }
    }

    /** Lengths between which a model is likely, mm. */
    private static final double SHORT_MM = 100;

    private static final double LONG_MM = 4000;
    private static final double USUAL_THICKNESS_MM = 1.6;
    private static final double PLA_G_PER_CM3 = 1.24;
    /** Height of the painted line, as a share of the hull's, to begin with. */
    private static final double PAINT_SHARE = 0.5;

    /** Guesses: the unit that makes it as long as a model is, the bow along the longest axis, athwartships where it is most alike on both sides. */
    public static NewHull guess(Path file, MeshFile read) {
        Bounds b = read.mesh().bounds();
        double[] size = {b.sizeX(), b.sizeY(), b.sizeZ()};
        int along = size[0] >= size[1] && size[0] >= size[2] ? 0 : size[1] >= size[2] ? 1 : 2;
        int one = (along + 1) % 3;
        int other = (along + 2) % 3;
        int up = unevenness(read.mesh(), one) > unevenness(read.mesh(), other) ? one : other;
        Axis[] axes = {Axis.PLUS_X, Axis.PLUS_Y, Axis.PLUS_Z};
        LengthUnit unit = read.unit().orElseGet(() -> likelyUnit(b.longestSide()));
        NewHull hull = new NewHull(
                file,
                read,
                unit,
                1,
                axes[along],
                axes[up],
                Build.SKIN,
                USUAL_THICKNESS_MM,
                PLA_G_PER_CM3,
                Optional.empty(),
                0);
        return hull.painted(Math.rint(PAINT_SHARE * hull.placed().bounds().sizeZ()));
    }

    private static LengthUnit likelyUnit(double longest) {
        for (LengthUnit unit :
                List.of(LengthUnit.MILLIMETRE, LengthUnit.CENTIMETRE, LengthUnit.INCH, LengthUnit.METRE)) {
            double mm = longest * unit.mm();
            if (mm >= SHORT_MM && mm <= LONG_MM) {
                return unit;
            }
        }
        return LengthUnit.MILLIMETRE;
    }

    /** How far the middle of the vertices lies from the middle of the box along an axis, as a share of its size. */
    private static double unevenness(TriangleMesh mesh, int axis) {
        Bounds b = mesh.bounds();
        double[] middle = {b.centreX(), b.centreY(), b.centreZ()};
        double[] size = {b.sizeX(), b.sizeY(), b.sizeZ()};
        double sum = 0;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            sum += mesh.xyz()[3 * v + axis] - middle[axis];
        }
        return Math.abs(sum / mesh.vertexCount()) / Math.max(size[axis], 1e-12);
    }

    public NewHull painted(double heightMm) {
        return new NewHull(
                file, mesh, unit, scale, forward, up, build, thicknessMm, densityGPerCm3, weighedG, heightMm);
    }

    /** The same with the painted line level through a point of the hull, mm. */
    public NewHull paintedThrough(Vector3D pointMm) {
        return painted(Painting.tenth(pointMm.getZ()));
    }

    /** The same with other import; the painted line keeps its share of the height. */
    public NewHull imported(LengthUnit newUnit, double newScale, Axis newForward, Axis newUp) {
        double share = paintMm / placed().bounds().sizeZ();
        NewHull other = new NewHull(
                file,
                mesh,
                newUnit,
                newScale,
                newForward,
                newUp,
                build,
                thicknessMm,
                densityGPerCm3,
                weighedG,
                paintMm);
        return other.painted(Math.rint(10 * share * other.placed().bounds().sizeZ()) / 10);
    }

    /** The same built otherwise. */
    public NewHull built(Build newBuild, double newThicknessMm, double newDensity, Optional<Double> newWeighedG) {
        return new NewHull(
                file, mesh, unit, scale, forward, up, newBuild, newThicknessMm, newDensity, newWeighedG, paintMm);
    }

    private MeshImport asImport(Vector3D move) {
        return new MeshImport(Optional.of(unit), scale, forward, up, move.getX(), move.getY(), move.getZ(), List.of());
    }

    /** Sternmost point at x 0, middle at y 0, lowest point at z 0. */
    private MeshImport meshImport() {
        Bounds b = asImport(Vector3D.ZERO).apply(mesh.mesh(), mesh.unit()).bounds();
        return asImport(new Vector3D(rounded(-b.minX()), rounded(-b.centreY()), rounded(-b.minZ())));
    }

    private static double rounded(double mm) {
        return Math.rint(mm * 1000) / 1000;
    }

    /** The mesh in the boat's frame. */
    public TriangleMesh placed() {
        return meshImport().apply(mesh.mesh(), mesh.unit());
    }

    /** The boat so far: a hull and a line. */
    public Boat boat() {
        MeshImport how = meshImport();
        TriangleMesh placed = how.apply(mesh.mesh(), mesh.unit());
        Part hull = new Part(
                "hull",
                Kind.HULL,
                Optional.of(new MeshShape(file.getFileName().toString(), how, placed)),
                Optional.of(hullBuild()),
                weighedG,
                Optional.of(densityGPerCm3),
                Optional.empty(),
                Optional.empty(),
                false,
                0);
        PaintedLine line = new PaintedLine(Painting.level(placed.bounds(), paintMm));
        return new Boat(name(), Water.FRESH, Optional.of(line), List.of(hull), List.of(), Targets.NONE);
    }

    private HullBuild hullBuild() {
        return switch (build) {
            case SKIN -> new HullBuild.Skin(thicknessMm);
            case SEALED -> new HullBuild.Sealed(Optional.of(thicknessMm));
            case PRINTED -> new HullBuild.Printed(Optional.empty());
        };
    }

    private String name() {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    /** Where her boat file goes: beside the mesh. */
    public Path boatFile() {
        return file.toAbsolutePath().resolveSibling(name() + ".boat.json");
    }

    /** Her boat file. */
    public String text() {
        ObjectMapper mapper = new ObjectMapper();
        Boat boat = boat();
        ObjectNode node = mapper.createObjectNode();
        node.put("version", 1);
        node.put("name", boat.name());
        node.putObject("water").put("temperatureC", 20).put("salinityGPerKg", 0);
        ArrayNode line = node.putArray("paintedLine");
        boat.paintedLine()
                .orElseThrow()
                .pointsMm()
                .forEach(p -> line.addArray().add(p.getX()).add(p.getY()).add(p.getZ()));
        node.putArray("parts").add(PartJson.of(boat.parts().get(0)));
        try {
            return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(node) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can be written", e);
        }
    }

    /**
     * Saves her boat file beside the mesh, if a boat can be read from it.
     *
     * @throws UnusableInputException when a file of that name is there already, or when she cannot be used as described; nothing is left
     *     behind then
     */
    public Path write() {
        Path to = boatFile();
        AtomicFile.write(to, text().getBytes(StandardCharsets.UTF_8), false);
        try {
            BoatFile.read(to);
        } catch (UnusableInputException e) {
            to.toFile().delete();
            throw e;
        }
        return to;
    }
}
