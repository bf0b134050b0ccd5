package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshFiles;
import trimwright.mesh.MeshImport.Axis;
import trimwright.mesh.Solids;
import trimwright.mesh.StlWriter;
import trimwright.mesh.TriangleMesh;

/** From a mesh to a part of a boat that is there. */
class MeshPartTest {

    private static final Vector3D MIDDLE = new Vector3D(600, 0, 50);

    @TempDir
    Path folder;

    private LoadedBoat heron;

    @BeforeEach
    void openHeron() throws IOException {
        Files.createDirectories(folder.resolve("boat"));
        for (String name : List.of("heron.boat.json", "heron-hull.stl")) {
            Files.copy(Path.of("sample-meshes", name), folder.resolve("boat").resolve(name));
        }
        heron = BoatFile.read(folder.resolve("boat/heron.boat.json"));
    }

    private Path stl(String name, TriangleMesh mesh) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        StlWriter.write(file, mesh);
        return file;
    }

    private MeshPart guess(Path file) {
        return MeshPart.guess(heron.boat(), file, MeshFiles.read(file));
    }

    @Test
    void whatWasDrawnInItsPlaceStaysThere() throws IOException {
        MeshPart part = guess(stl("winch.stl", Solids.box(400, -5, 60, 430, 5, 70)));
        assertTrue(part.isInPlace());
        Part made = part.part(heron.boat(), "winch.stl", MIDDLE);
        assertEquals("winch", made.id());
        assertEquals(400, made.shape().orElseThrow().bounds().minX(), 1e-3);
    }

    @Test
    void whatWasDrawnElsewhereBeginsInTheMiddle() throws IOException {
        MeshPart part = guess(stl("winch.stl", Solids.box(-3000, 0, 0, -2970, 10, 10)));
        assertFalse(part.isInPlace());
        var box = part.part(heron.boat(), "winch.stl", MIDDLE)
                .shape()
                .orElseThrow()
                .bounds();
        assertArrayEquals(new double[] {600, 0, 50}, new double[] {box.centreX(), box.centreY(), box.centreZ()}, 0.1);
    }

    /** A block of 3 × 2 × 1 inches, standing on end, laid along the boat. */
    @Test
    void unitAndAxesCount() throws IOException {
        MeshPart part = guess(stl("block.stl", Solids.box(0, 0, 0, 1, 2, 3)))
                .imported(LengthUnit.INCH, 1, Axis.PLUS_Z, Axis.PLUS_X);
        assertEquals(3 * 25.4, part.sizeMm().sizeX(), 1e-4);
        assertEquals(2 * 25.4, part.sizeMm().sizeY(), 1e-4);
        assertEquals(25.4, part.sizeMm().sizeZ(), 1e-4);
    }

    /** Lead of 4 × 2 × 1 cm at 11.34 g/cm³ (handbook value at room temperature, as in the table of materials). */
    @Test
    void addedItWeighsWhatItsMaterialDoesAndIsReadAgain() throws IOException {
        MeshPart part = guess(stl("ingot.stl", Solids.box(0, 0, 0, 40, 20, 10))).as(Kind.BALLAST);
        MeshPart.Brought brought = part.bring(heron.path());
        LoadedBoat more = heron.plus(List.of(part.part(heron.boat(), brought.name(), MIDDLE)));
        Path to = folder.resolve("boat/more.boat.json");
        BoatFile.write(more, to, false);
        Part read = BoatFile.read(to).boat().part("ingot").orElseThrow();
        assertEquals(
                8 * 11.34,
                read.densityGPerCm3().orElseThrow()
                        * read.shape().orElseThrow().solid().volumeMm3()
                        / 1000,
                0.01);
    }

    @Test
    void everyKindOfPartIsTaken() throws IOException {
        Path file = stl("thing.stl", Solids.box(0, 0, 0, 40, 20, 10));
        String name = guess(file).bring(heron.path()).name();
        for (Kind kind : MeshPart.KINDS) {
            Part made = guess(file).as(kind).part(heron.boat(), name, MIDDLE);
            assertEquals(
                    kind,
                    heron.plus(List.of(made)).boat().part("thing").orElseThrow().kind());
        }
    }

    @Test
    void aMeshFromElsewhereIsCopiedAndNeverOverAnother() throws IOException {
        Path mine = stl("boat/winch.stl", Solids.box(0, 0, 0, 1, 1, 1));
        byte[] before = Files.readAllBytes(mine);
        MeshPart other = guess(stl("elsewhere/winch.stl", Solids.box(0, 0, 0, 2, 2, 2)));
        MeshPart.Brought brought = other.bring(heron.path());
        assertEquals("winch-2.stl", brought.name());
        assertArrayEquals(before, Files.readAllBytes(mine));
        assertEquals("winch-2.stl", other.bring(heron.path()).name(), "the same mesh is not copied twice");
        assertEquals(Optional.empty(), other.bring(heron.path()).copy());
        brought.takeBack();
        assertFalse(Files.exists(folder.resolve("boat/winch-2.stl")));
        assertTrue(Files.exists(folder.resolve("elsewhere/winch.stl")));
    }

    @Test
    void aMeshInAFolderBesideTheBoatIsNamedWhereItIs() throws IOException {
        MeshPart part = guess(stl("boat/parts/winch.stl", Solids.box(0, 0, 0, 1, 1, 1)));
        assertEquals(new MeshPart.Brought("parts/winch.stl", Optional.empty()), part.bring(heron.path()));
    }
}
