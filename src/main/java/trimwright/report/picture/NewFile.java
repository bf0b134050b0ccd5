package trimwright.report.picture;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/** Writes files so that they appear whole or not at all, and never in place of one that was there unless told. */
final class NewFile {

    /** What follows a dot further from the end of a name is part of the name. */
    private static final int LONGEST_ENDING = 6;

    private NewFile() {}

    /** What goes into the file. */
    @FunctionalInterface
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /**
     * Which of the allowed endings the name has, whatever its case.
     *
     * @param allowed such as ".png", in lower case
     * @throws UnusableInputException when it has none of them
     */
    static String ending(Path file, List<String> allowed) {
        String name = file.toString();
        int dot = name.lastIndexOf('.');
        String found = dot < 0 || dot < name.length() - LONGEST_ENDING ? "" : name.substring(dot);
        if (!allowed.contains(found.toLowerCase(Locale.ROOT))) {
            throw new UnusableInputException(Finding.of(
                    Code.PICTURE_FORMAT_UNKNOWN,
                    new Place.InFile(name),
                    "found",
                    found.isEmpty() ? file.getFileName().toString() : found,
                    "allowed",
                    allowed));
        }
        return found.toLowerCase(Locale.ROOT);
    }

    /**
     * @param overwrite whether a file of that name may be replaced
     * @throws UnusableInputException when the file is there and may not be replaced, or cannot be written
     */
    static void write(Path file, boolean overwrite, Content content) {
        Place place = new Place.InFile(file.toString());
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file)) {
            throw new UnusableInputException(Finding.of(Code.FILE_IS_DIRECTORY, place));
        }
        if (!Files.isDirectory(folder)) {
            throw new UnusableInputException(Finding.of(Code.FOLDER_MISSING, place, "folder", folder.toString()));
        }
        try {
            if (!overwrite) {
                // Taking the name in one step keeps out anyone who would create the file meanwhile.
                Files.createFile(file);
            }
            try {
                fill(folder, file, content);
            } catch (IOException | RuntimeException e) {
                if (!overwrite) {
                    Files.deleteIfExists(file);
                }
                throw e;
            }
        } catch (FileAlreadyExistsException e) {
            throw new UnusableInputException(Finding.of(Code.FILE_EXISTS, place));
        } catch (IOException e) {
            throw new UnusableInputException(Finding.of(Code.FILE_NOT_WRITTEN, place, "reason", e.toString()));
        }
    }

    private static void fill(Path folder, Path file, Content content) throws IOException {
        Path draft = folder.resolve("." + file.getFileName() + "." + UUID.randomUUID() + ".tmp");
        try {
            try (OutputStream out = Files.newOutputStream(draft, StandardOpenOption.CREATE_NEW)) {
                content.writeTo(out);
            }
            Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(draft);
        }
    }
}
