package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;

class StampsTest {

    @Test
    void aMeshThatWasWrittenAnewIsNoticed(@TempDir Path folder) throws Exception {
        Path boatFile = folder.resolve("heron.boat.json");
        Path mesh = folder.resolve("heron-hull.stl");
        Files.copy(Path.of("sample-meshes", "heron.boat.json"), boatFile);
        Files.copy(Path.of("sample-meshes", "heron-hull.stl"), mesh);
        LoadedBoat boat = BoatFile.read(boatFile);
        Stamps stamps = new Stamps();
        stamps.read(boat);
        assertEquals(List.of(), stamps.changed(boat));
        Files.setLastModifiedTime(mesh, FileTime.fromMillis(1000));
        stamps.add(boat);
        assertEquals(List.of(mesh.toAbsolutePath()), stamps.changed(boat));
        stamps.read(boat);
        assertEquals(List.of(), stamps.changed(boat));
        Files.delete(mesh);
        assertEquals(List.of(), stamps.changed(boat), "one that is gone cannot be read again");
    }
}
