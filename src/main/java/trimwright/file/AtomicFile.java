package trimwright.file;

import java.io.IOException;
import java.nio.ByteBuffer;
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

/** Saves a file whole or not at all, and over another only when asked to. */
public final class AtomicFile {

    private AtomicFile() {}

    /**
     * Writes to a new file in the same folder, makes sure that it has reached the disk, then gives it the wanted name.
     *
     * @param to the file; a symbolic link is followed
     * @param overwrite whether an existing file may be replaced
     * @throws UnusableInputException when it exists and may not be replaced, or cannot be written
     */
    public static void write(Path to, byte[] bytes, boolean overwrite) {
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
            Path fresh = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".tmp");
            try {
                writeForced(fresh, bytes);
                Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (IOException e) {
                Files.deleteIfExists(fresh);
                if (!overwrite) {
                    Files.deleteIfExists(target);
                }
                throw e;
            }
        } catch (FileAlreadyExistsException e) {
            throw new UnusableInputException(Finding.of(Code.FILE_EXISTS, place));
        } catch (AccessDeniedException e) {
            throw new UnusableInputException(Finding.of(Code.FILE_NOT_WRITTEN, place, "reason", "no permission"));
        } catch (IOException e) {
            throw new UnusableInputException(
                    Finding.of(Code.FILE_NOT_WRITTEN, place, "reason", String.valueOf(e.getMessage())));
        }
    }

    private static void writeForced(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }
}
