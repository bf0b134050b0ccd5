package trimwright.report.sheet;

import java.util.regex.Pattern;

/** Words whose numbers keep to their units where a line ends. */
final class Unbroken {

    private static final String NO_BREAK_SPACE = "\u00A0";

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("(?<=\\d) (?=(?:mm|cm|m|in|ft|g|oz|cm³|in³|g/cm³|g·mm|g·m|oz·in|%|°C)(?![\\p{L}\\d]))");

    private Unbroken() {}

    static String of(String words) {
        return NUMBER_AND_UNIT.matcher(words).replaceAll(NO_BREAK_SPACE);
    }
}
