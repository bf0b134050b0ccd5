package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.Bounds;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshFiles;
import trimwright.mesh.MeshImport;
import trimwright.mesh.MeshImport.Axis;
import trimwright.mesh.StlWriter;
import trimwright.mesh.TriangleMesh;

/** From a mesh to a boat. */
class NewHullTest {

    @TempDir
    Path folder;

    private NewHull guess(Path mesh) {
        return NewHull.guess(mesh, MeshFiles.read(mesh));
    }

    private Path heron() throws IOException {
        return Files.copy(Path.of("sample-meshes", "heron-hull.stl"), folder.resolve("my hull.stl"));
    }

    @Test
    void aHullDrawnAsTheProgramWantsItIsGuessedRight() throws IOException {
        NewHull hull = guess(heron());
        assertEquals(LengthUnit.MILLIMETRE, hull.unit());
        assertEquals(Axis.PLUS_X, hull.forward());
        assertEquals(Axis.PLUS_Z, hull.up());
    }

    /** A hull in metres, its bow along z and its deck along y, as many drawing programs export. */
    @Test
    void anotherUnitAndOtherAxesAreGuessedAndComeOutTheSame() throws IOException {
        TriangleMesh mesh = MeshFiles.read(heron()).mesh();
        double[] xyz = new double[mesh.xyz().length];
        for (int i = 0; i < xyz.length; i += 3) {
            xyz[i] = mesh.xyz()[i + 1] / 1000;
            xyz[i + 1] = mesh.xyz()[i + 2] / 1000;
            xyz[i + 2] = mesh.xyz()[i] / 1000;
        }
        Path turned = folder.resolve("turned.stl");
        StlWriter.write(turned, TriangleMesh.owning(xyz, mesh.corners().clone()));
        NewHull hull = guess(turned);
        assertEquals(LengthUnit.METRE, hull.unit());
        assertEquals(Axis.PLUS_Z, hull.forward());
        assertEquals(Axis.PLUS_Y, hull.up());
        Bounds placed = hull.placed().bounds();
        Bounds drawn = mesh.bounds();
        // A step of the floats of the file, in mm.
        double step = Math.ulp((float) (drawn.maxX() / 1000)) * 1000;
        assertEquals(drawn.sizeX(), placed.sizeX(), 2 * step);
        assertEquals(drawn.sizeY(), placed.sizeY(), 2 * step);
        assertEquals(drawn.sizeZ(), placed.sizeZ(), 2 * step);
        assertEquals(0, placed.minX(), 1e-3);
        assertEquals(0, placed.minZ(), 1e-3);
        assertEquals(0, placed.centreY(), 1e-3);
    }

    @Test
    void theBoatFileLiesBesideTheMeshAndHoldsWhatWasSaid() throws IOException {
        NewHull hull = guess(heron())
                .built(NewHull.Build.SKIN, 2, 1.18, Optional.of(640.0))
                .painted(77);
        Path file = hull.write();
        assertEquals(folder.resolve("my hull.boat.json").toAbsolutePath(), file);
        LoadedBoat boat = BoatFile.read(file);
        assertEquals("my hull", boat.boat().name());
        assertEquals(Optional.of(640.0), boat.boat().parts().get(0).weighedMassG());
        assertEquals(77, boat.boat().paintedLine().orElseThrow().foremostMm().getZ(), 0);
    }

    @Test
    void aBoatFileThatIsThereIsLeftAlone() throws IOException {
        NewHull hull = guess(heron());
        Files.writeString(hull.boatFile(), "mine");
        assertThrows(UnusableInputException.class, hull::write);
        assertEquals("mine", Files.readString(hull.boatFile()));
    }

    @Test
    void aHullThatCannotBeBuiltSoLeavesNoFileBehind() throws IOException {
        TriangleMesh mesh = MeshFiles.read(heron()).mesh();
        boolean[] keep = new boolean[mesh.triangleCount()];
        for (int i = 0; i < keep.length - 40; i++) {
            keep[i] = true;
        }
        Path open = folder.resolve("open.stl");
        StlWriter.write(open, mesh.only(keep));
        NewHull hull = guess(open).built(NewHull.Build.SEALED, 2, 1.2, Optional.empty());
        UnusableInputException refused = assertThrows(UnusableInputException.class, hull::write);
        assertFalse(Files.exists(hull.boatFile()));
        assertTrue(Problem.of("", refused).lines().get(0).contains("closed"), refused.getMessage());
    }

    @Test
    void axesThatAreNotSquareAreRefused() throws IOException {
        NewHull hull = guess(heron());
        assertThrows(
                IllegalArgumentException.class,
                () -> hull.imported(LengthUnit.MILLIMETRE, 1, Axis.PLUS_X, Axis.MINUS_X));
        assertEquals(MeshImport.Axis.PLUS_X, hull.forward());
    }
}
