package trimwright.mesh;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/**
 * Writes a file whole or not at all, and over another only when asked to. Every file that the program writes goes through here: meshes,
 * boat files, pictures.
 */
public final class WholeFile {

    private static final int BUFFER_BYTES = 1 << 16;

    private WholeFile() {}

    /** What goes into the file. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /**
     * Writes to a new file in the same folder, makes sure that it has reached the disk, then gives it the wanted name.
     *
     * @param to the file; a symbolic link is followed
     * @param overwrite whether an existing file may be replaced
     * @throws UnusableInputException when it exists and may not be replaced, or cannot be written
     */
    public static void write(Path to, boolean overwrite, Content content) {
        Place place = new Place.InFile(to.toString());
        try {
            if (Files.isDirectory(to)) {
                throw new UnusableInputException(Finding.of(Code.FILE_IS_DIRECTORY, place));
            }
            Path target = Files.exists(to) ? to.toRealPath() : to.toAbsolutePath();
            if (!Files.isDirectory(target.getParent())) {
                throw new UnusableInputException(Finding.of(
                        Code.FOLDER_MISSING, place, "folder", target.getParent().toString()));
            }
            if (!overwrite) {
                // Taking the name first keeps out anyone who would create the file in between.
                Files.createFile(target);
            }
            fill(target, overwrite, content);
        } catch (FileAlreadyExistsException e) {
            throw new UnusableInputException(Finding.of(Code.FILE_EXISTS, place));
        } catch (AccessDeniedException e) {
            throw new UnusableInputException(Finding.of(Code.FILE_NOT_WRITTEN, place, "reason", "no permission"));
        } catch (IOException e) {
            throw new UnusableInputException(
                    Finding.of(Code.FILE_NOT_WRITTEN, place, "reason", String.valueOf(e.getMessage())));
        }
    }

    private static void fill(Path target, boolean overwrite, Content content) throws IOException {
        Path fresh = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".tmp");
        boolean done = false;
        try {
            writeForced(fresh, content);
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            done = true;
        } finally {
            if (!done) {
                Files.deleteIfExists(fresh);
                if (!overwrite) {
                    Files.deleteIfExists(target);
                }
            }
        }
    }

    private static void writeForced(Path file, Content content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            // The stream is not closed of its own: the channel must still be open when the bytes are forced to the
            // disk.
            OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), BUFFER_BYTES);
            content.writeTo(out);
            out.flush();
            channel.force(true);
        }
    }
}
