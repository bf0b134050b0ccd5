package trimwright.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A sentence with places for values.
 *
 * <ul>
 *   <li><code>{gmMm}</code> is the value of that name; a number whose name ends in a unit is rounded and followed by the unit. The
 *       angles {@code heelDeg} and {@code trimDeg}, {@code fromHeelDeg} and the like, are said in words: list 1.3° to port; so is
 *       {@code bowOffMm}: 1.8 mm too deep.
 *   <li><code>{count|triangle|triangles}</code> is a whole number followed by the word for one or for several.
 *   <li><code>[ up to {allowedMm}]</code> is left out when a value in it is missing or empty.
 * </ul>
 */
final class Template {

    private static final Pattern VALUE = Pattern.compile("\\{(\\w+)(?:\\|([^|}]*)\\|([^|}]*))?}");
    private static final Pattern OPTION = Pattern.compile("\\[([^\\[\\]]*)]");

    /** By the end of a name, the longest first. */
    private static final Map<String, String> UNITS = units();

    private final String sentence;

    Template(String sentence) {
        this.sentence = sentence;
    }

    /** The names of all values that the sentence takes up. */
    Set<String> names() {
        return VALUE.matcher(sentence).results().map(r -> r.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The names of the values that it cannot do without. */
    Set<String> needed() {
        return new Template(OPTION.matcher(sentence).replaceAll("")).names();
    }

    String fill(Map<String, Object> values) {
        String chosen = OPTION.matcher(sentence).replaceAll(m -> {
            boolean complete = new Template(m.group(1)).names().stream().noneMatch(name -> isMissing(values.get(name)));
            return complete ? Matcher.quoteReplacement(m.group(1)) : "";
        });
        return VALUE.matcher(chosen)
                .replaceAll(m -> Matcher.quoteReplacement(filled(m.group(1), m.group(2), m.group(3), values)));
    }

    private static boolean isMissing(Object value) {
        return value == null || value.equals("") || value instanceof List<?> list && list.isEmpty();
    }

    private static String filled(String name, String one, String several, Map<String, Object> values) {
        Object value = values.get(name);
        // A message with a gap is still better than none; a test holds the wording and the codes together.
        String text = value == null ? "?" : text(name, value);
        return one == null ? text : text + " " + (text.equals("1") ? one : several);
    }

    private static String text(String name, Object value) {
        if (value instanceof Double || value instanceof Float) {
            double number = ((Number) value).doubleValue();
            if (name.equals("heelDeg") || name.endsWith("HeelDeg")) {
                return AttitudeWords.list(number);
            }
            if (name.equals("trimDeg") || name.endsWith("TrimDeg")) {
                return AttitudeWords.trim(number);
            }
            if (name.endsWith("OffMm")) {
                return FloatVerdict.offPaint(number);
            }
            String unit = unit(name);
            if (!Double.isFinite(number)) {
                return String.valueOf(number);
            }
            if (unit.isEmpty()) {
                return Numbers.plain(number);
            }
            // Nobody reads cubic millimetres.
            double shown = name.endsWith("Mm3") ? number / 1000 : name.endsWith("Mm2") ? number / 100 : number;
            return Numbers.brief(shown) + unit;
        }
        if (value instanceof Number) {
            return value + unit(name);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(element -> text(name, element)).collect(Collectors.joining(", "));
        }
        if (value instanceof Enum<?> constant) {
            return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        return printable(value.toString());
    }

    /** What a user wrote may hold anything; in a message it must not move the cursor. */
    private static String printable(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ");
    }

    private static String unit(String name) {
        for (Map.Entry<String, String> unit : UNITS.entrySet()) {
            if (name.endsWith(unit.getKey())) {
                return unit.getValue();
            }
        }
        return "";
    }

    private static Map<String, String> units() {
        Map<String, String> units = new LinkedHashMap<>();
        units.put("GPerCm3", " g/cm³");
        units.put("GPerKg", " g/kg");
        units.put("GPerMm", " g/mm");
        units.put("Gmm", " g·mm");
        units.put("Mm2", " cm²");
        units.put("Mm3", " cm³");
        units.put("Cm2", " cm²");
        units.put("Cm3", " cm³");
        units.put("Mm", " mm");
        units.put("Deg", "°");
        units.put("Percent", " %");
        units.put("TemperatureC", " °C");
        units.put("G", " g");
        return units;
    }
}
