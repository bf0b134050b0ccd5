package trimwright.desktop.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.Bounds;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshFile;
import trimwright.mesh.MeshImport;
import trimwright.mesh.MeshImport.Axis;
import trimwright.mesh.TriangleMesh;
import trimwright.mesh.WholeFile;

/**
 * A part that is being made from a mesh, for a boat that is there: what a builder has to say about it, with a guess for each.
 *
 * @param file the mesh file
 * @param mesh what it holds
 * @param kind what it is
 * @param unit unit of its numbers
 * @param scale multiplies after the unit
 * @param forward its own axis that points to the bow
 * @param up its own axis that points up
 * @param moveMm its place, where it was drawn in its place; empty puts it into the middle of what floats
 */
public record MeshPart(
        Path file,
        MeshFile mesh,
        Kind kind,
        LengthUnit unit,
        double scale,
        Axis forward,
        Axis up,
        Optional<Vector3D> moveMm) {

    /** What a mesh may be in a boat that has her hull. */
    public static final List<Kind> KINDS = List.of(Kind.FITTING, Kind.BALLAST, Kind.FOAM, Kind.CYLINDER, Kind.TANK);

    /** What was drawn in its place lies in the hull's box, made so much longer, broader and higher. */
    private static final double IN_PLACE_SHARE = 0.05;

    /**
     * Guesses: hull and parts are drawn in one unit and along the same axes, and maybe in their places; where that comes out larger than the hull, mm along
     * the boat's axes.
     */
    public static MeshPart guess(Boat boat, Path file, MeshFile read) {
        Optional<MeshShape> hull = boat.parts().stream()
                .filter(Part::isHull)
                .map(p -> p.shape().orElseThrow())
                .filter(MeshShape.class::isInstance)
                .map(MeshShape.class::cast)
                .findFirst();
        MeshPart plain = new MeshPart(
                file,
                read,
                Kind.FITTING,
                read.unit().orElse(LengthUnit.MILLIMETRE),
                1,
                Axis.PLUS_X,
                Axis.PLUS_Z,
                Optional.empty());
        if (hull.isEmpty()) {
            return plain;
        }
        MeshImport like = hull.get().meshImport();
        LengthUnit unit = read.unit().or(like::unit).orElse(LengthUnit.MILLIMETRE);
        Vector3D move = new Vector3D(like.moveXMm(), like.moveYMm(), like.moveZMm());
        MeshPart alike = plain.imported(unit, like.scale(), like.forward(), like.up());
        Bounds box = hull.get().bounds();
        if (alike.sizeMm().longestSide() > box.longestSide()) {
            return plain;
        }
        MeshPart placed = new MeshPart(
                file, read, Kind.FITTING, unit, like.scale(), like.forward(), like.up(), Optional.of(move));
        return isWithin(placed.placed(Vector3D.ZERO).bounds(), box) ? placed : alike;
    }

    private static boolean isWithin(Bounds part, Bounds hull) {
        Bounds all = part.union(hull);
        return all.sizeX() <= (1 + IN_PLACE_SHARE) * hull.sizeX()
                && all.sizeY() <= (1 + IN_PLACE_SHARE) * hull.sizeY()
                && all.sizeZ() <= (1 + IN_PLACE_SHARE) * hull.sizeZ();
    }

    /** The same as another kind of part. */
    public MeshPart as(Kind other) {
        return new MeshPart(file, mesh, other, unit, scale, forward, up, moveMm);
    }

    /** The same imported otherwise; where it was drawn then says nothing of its place. */
    public MeshPart imported(LengthUnit newUnit, double newScale, Axis newForward, Axis newUp) {
        return new MeshPart(file, mesh, kind, newUnit, newScale, newForward, newUp, Optional.empty());
    }

    /** The box around it, mm along the boat's axes. */
    public Bounds sizeMm() {
        return placed(Vector3D.ZERO).bounds();
    }

    private TriangleMesh placed(Vector3D middleMm) {
        return meshImport(middleMm).apply(mesh.mesh(), mesh.unit());
    }

    private MeshImport asImport(Vector3D move) {
        return new MeshImport(Optional.of(unit), scale, forward, up, move.getX(), move.getY(), move.getZ(), List.of());
    }

    private MeshImport meshImport(Vector3D middle) {
        if (moveMm.isPresent()) {
            return asImport(moveMm.get());
        }
        Bounds b = asImport(Vector3D.ZERO).apply(mesh.mesh(), mesh.unit()).bounds();
        return asImport(new Vector3D(
                tenth(middle.getX() - b.centreX()),
                tenth(middle.getY() - b.centreY()),
                tenth(middle.getZ() - b.centreZ())));
    }

    private static double tenth(double mm) {
        return Math.rint(10 * mm) / 10;
    }

    /** Whether its place is that in which it was drawn. */
    public boolean isInPlace() {
        return moveMm.isPresent();
    }

    /**
     * The part.
     *
     * @param name what the boat file calls the mesh, see {@link #bring}
     * @param middleMm where the middle of it is to be, unless it was drawn in its place
     */
    public Part part(Boat boat, String name, Vector3D middleMm) {
        MeshImport how = meshImport(middleMm);
        TriangleMesh placed = how.apply(mesh.mesh(), mesh.unit());
        return FreshPart.ofMesh(boat, kind, stem(), new MeshShape(name, how, placed), placed.signedVolume());
    }

    /** The id that {@link #part} gets in a boat. */
    public String id(Boat boat) {
        return Edits.freeId(boat, stem());
    }

    private String stem() {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    /**
     * A mesh as a boat file names it.
     *
     * @param name relative to the boat file
     * @param copy the copy that was made beside her for it
     */
    public record Brought(String name, Optional<Path> copy) {

        /** Takes the copy away again: nothing names it. */
        public void takeBack() {
            copy.ifPresent(c -> c.toFile().delete());
        }
    }

    /**
     * Sees to it that the mesh lies where the boat file can name it: one from elsewhere is copied to the boat file's folder, beside another of its name if need be.
     *
     * @throws UnusableInputException when it cannot be copied
     */
    public Brought bring(Path boatFile) {
        Path folder = boatFile.toAbsolutePath().normalize().getParent();
        Path from = file.toAbsolutePath().normalize();
        if (from.startsWith(folder)) {
            return new Brought(folder.relativize(from).toString().replace('\\', '/'), Optional.empty());
        }
        String name = from.getFileName().toString();
        String ending = name.substring(stem().length());
        try {
            Path to = folder.resolve(name);
            for (int n = 2; Files.exists(to); n++) {
                if (Files.mismatch(from, to) < 0) {
                    return new Brought(to.getFileName().toString(), Optional.empty());
                }
                to = folder.resolve(stem() + "-" + n + ending);
            }
            WholeFile.write(to, false, out -> Files.copy(from, out));
            return new Brought(to.getFileName().toString(), Optional.of(to));
        } catch (IOException e) {
            throw new UnusableInputException(Finding.of(
                    Code.FILE_NOT_WRITTEN,
                    new Place.InFile(folder.resolve(name).toString()),
                    "reason",
                    String.valueOf(e.getMessage())));
        }
    }
}
