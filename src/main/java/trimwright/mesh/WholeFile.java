package trimwright.mesh;

import static java.nio.file.attribute.PosixFilePermission.GROUP_WRITE;
import static java.nio.file.attribute.PosixFilePermission.OTHERS_WRITE;
import static java.nio.file.attribute.PosixFilePermission.OWNER_WRITE;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumSet;
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

    /** How the names of files begin that are not yet whole. */
    private static final String LEFTOVER = ".trimwright-";

    private static final Duration LEFT_BEHIND_AFTER = Duration.ofMinutes(10);

    private WholeFile() {}

    /** What goes into the file. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /**
     * Writes to a new file in the same folder, makes sure that it has reached the disk, then gives it the wanted name. A process that is
     * killed meanwhile leaves the old file as it was, and may leave a hidden new one, which a later call takes away.
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
            if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                if (!overwrite) {
                    throw new FileAlreadyExistsException(target.toString());
                }
                if (isLocked(target)) {
                    // Putting another file in its place would work, and is not what a locked file is for.
                    throw new AccessDeniedException(target.toString());
                }
            }
            takeLeftoversAway(target.getParent());
            fill(target, overwrite, content);
        } catch (FileAlreadyExistsException e) {
            throw new UnusableInputException(Finding.of(Code.FILE_EXISTS, place));
        } catch (AccessDeniedException e) {
            throw new UnusableInputException(Finding.of(Code.FILE_NOT_WRITTEN, place, "reason", "no permission"));
        } catch (IOException e) {
            throw new UnusableInputException(Finding.of(Code.FILE_NOT_WRITTEN, place, "reason", reason(e)));
        }
    }

    /** Whether nobody, or not this user, may write to the file. */
    private static boolean isLocked(Path file) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        // The system lets its administrator write to any file.
        boolean byNobody = view != null
                && Collections.disjoint(
                        view.readAttributes().permissions(), EnumSet.of(OWNER_WRITE, GROUP_WRITE, OTHERS_WRITE));
        return byNobody || !Files.isWritable(file);
    }

    private static void fill(Path target, boolean overwrite, Content content) throws IOException {
        // Short, so that every name that the file may have leaves room for it.
        Path fresh = target.resolveSibling(LEFTOVER + UUID.randomUUID());
        try {
            writeForced(fresh, content);
            if (overwrite) {
                keepPermissions(target, fresh);
                Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } else {
                giveName(fresh, target);
            }
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /** Gives the file a name that nobody else may have taken meanwhile: a second name is refused where there is one, a move is not. */
    private static void giveName(Path fresh, Path target) throws IOException {
        try {
            Files.createLink(target, fresh);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (UnsupportedOperationException | IOException e) {
            // A disk that knows no second names, such as a memory stick.
            Files.move(fresh, target);
        }
    }

    /** Who may read and write a file stays as it was. */
    private static void keepPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        if (view != null && Files.exists(from)) {
            Files.setPosixFilePermissions(to, view.readAttributes().permissions());
        }
    }

    /** Takes away what killed processes left; a file that is still being written was touched a moment ago, on whatever machine. */
    private static void takeLeftoversAway(Path folder) throws IOException {
        FileTime longAgo = FileTime.from(Instant.now().minus(LEFT_BEHIND_AFTER));
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, LEFTOVER + "*")) {
            for (Path file : left) {
                if (Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS).compareTo(longAgo) < 0) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (DirectoryIteratorException | AccessDeniedException | NoSuchFileException e) {
            // A folder that may be written to but not listed, or someone else was faster: they are only a nuisance.
        }
    }

    /** The reason in the words of the system, without the name of the file, which is told apart. */
    private static String reason(IOException e) {
        return e instanceof FileSystemException of && of.getReason() != null
                ? of.getReason()
                : String.valueOf(e.getMessage());
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
