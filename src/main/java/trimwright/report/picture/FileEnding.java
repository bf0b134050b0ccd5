package trimwright.report.picture;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/** The ending of a file's name, which says what to write into it. */
public final class FileEnding {

    /** What follows a dot further from the end of a name is part of the name. */
    private static final int LONGEST_ENDING = 6;

    private FileEnding() {}

    /**
     * Which of the allowed endings the name has, whatever its case.
     *
     * @param allowed such as ".png", in lower case
     * @throws UnusableInputException when it has none of them
     */
    public static String of(Path file, List<String> allowed) {
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
}
