package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LocksTest {

    @Test
    void locksAreThoseOfTheBoatAndOutliveTheWindow(@TempDir Path folder) {
        Path one = folder.resolve("one.boat.json");
        Path other = folder.resolve("other.boat.json");
        Locks locks = new Locks();
        locks.keepIn(Settings.in(folder));
        locks.turnTo(one);
        locks.ids().add("battery");
        locks.ids().add("keel lead");
        locks.turnTo(other);
        assertEquals(Set.of(), locks.ids());
        locks.turnTo(one);
        locks.renamed("battery", "pack");
        locks.renamed("motor", "engine");
        locks.savedTo(folder.resolve("copy.boat.json"));
        locks.ids().remove("keel lead");
        Locks later = new Locks();
        later.keepIn(Settings.in(folder));
        later.turnTo(one);
        assertEquals(Set.of("pack", "keel lead"), later.ids());
        later.turnTo(folder.resolve("copy.boat.json"));
        assertEquals(Set.of("pack"), later.ids());
    }
}
