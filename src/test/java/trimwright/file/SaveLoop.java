package trimwright.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * Saves without end until it is killed: one file over and over, in two versions by turns, and new files one after the other. Started as a
 * process of its own.
 */
final class SaveLoop {

    private SaveLoop() {}

    /** Version 0 or 1 of what is saved: of different lengths, both longer than any buffer. */
    static byte[] version(int which) {
        return ("version " + which + "\n").repeat(which == 0 ? 20_000 : 45_000).getBytes(StandardCharsets.UTF_8);
    }

    /** @param args the folder, and the name of the first new file as a number */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        byte[][] versions = {version(0), version(1)};
        for (int i = Integer.parseInt(args[1]); ; i++) {
            AtomicFile.write(folder.resolve("old"), versions[i % 2], true);
            AtomicFile.write(folder.resolve("new-" + i), versions[i % 2], false);
            System.out.write('.');
            System.out.flush();
        }
    }
}
