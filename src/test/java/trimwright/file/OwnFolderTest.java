package trimwright.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class OwnFolderTest {

    /** XDG base directory specification 0.8; Apple, File System Programming Guide; Windows, known folder RoamingAppData. From memory. */
    @Test
    void itIsWhereTheSystemHasSuchThings() {
        Path home = Path.of("/home/me").toAbsolutePath();
        Path elsewhere = Path.of("/conf").toAbsolutePath();
        Map<String, String> nothing = Map.of();
        assertEquals(home.resolve(".config/trimwright"), OwnFolder.usual("Linux", home, nothing));
        assertEquals(
                elsewhere.resolve("trimwright"),
                OwnFolder.usual("Linux", home, Map.of("XDG_CONFIG_HOME", elsewhere.toString())));
        assertEquals(
                home.resolve(".config/trimwright"),
                OwnFolder.usual("FreeBSD", home, Map.of("XDG_CONFIG_HOME", "conf")));
        assertEquals(
                home.resolve("Library/Application Support/Trimwright"), OwnFolder.usual("Mac OS X", home, nothing));
        assertEquals(
                elsewhere.resolve("Trimwright"),
                OwnFolder.usual("Windows 11", home, Map.of("APPDATA", elsewhere.toString())));
        assertEquals(home.resolve("AppData/Roaming/Trimwright"), OwnFolder.usual("Windows 11", home, nothing));
    }
}
