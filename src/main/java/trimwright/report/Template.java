package trimwright.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
    private static final Map<String, Unit> UNITS = units();

    private final String sentence;

    Template(String sentence) {
        this.sentence = sentence;
    }

    /** The sentence as it stands, before values are filled in. */
    String text() {
        return sentence;
    }

    /** The names of all values that the sentence takes up. */
    Set<String> names() {
        return VALUE.matcher(sentence).results().map(r -> r.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The names of the values that it cannot do without. */
    Set<String> needed() {
        return new Template(OPTION.matcher(sentence).replaceAll("")).names();
    }

    String fill(Map<String, Object> values, Measure measure) {
        String chosen = OPTION.matcher(sentence).replaceAll(m -> {
            boolean complete = new Template(m.group(1)).names().stream().noneMatch(name -> isMissing(values.get(name)));
            return complete ? Matcher.quoteReplacement(m.group(1)) : "";
        });
        return VALUE.matcher(chosen)
                .replaceAll(m -> Matcher.quoteReplacement(filled(m.group(1), m.group(2), m.group(3), values, measure)));
    }

    private static boolean isMissing(Object value) {
        return value == null || value.equals("") || value instanceof List<?> list && list.isEmpty();
    }

    private static String filled(String name, String one, String several, Map<String, Object> values, Measure measure) {
        Object value = values.get(name);
        // A message with a gap is still better than none; a test holds the wording and the codes together.
        String text = value == null ? "?" : text(name, value, measure);
        return one == null ? text : text + " " + (text.equals("1") ? one : several);
    }

    private static String text(String name, Object value, Measure measure) {
        if (value instanceof Double || value instanceof Float) {
            double number = ((Number) value).doubleValue();
            if (name.equals("heelDeg") || name.endsWith("HeelDeg")) {
                return AttitudeWords.list(number);
            }
            if (name.equals("trimDeg") || name.endsWith("TrimDeg")) {
                return AttitudeWords.trim(number);
            }
            if (name.endsWith("OffMm")) {
                return FloatVerdict.offPaint(number, measure);
            }
            if (!Double.isFinite(number)) {
                return String.valueOf(number);
            }
            return unit(name).map(u -> u.text(number, measure)).orElseGet(() -> Numbers.plain(number));
        }
        if (value instanceof Number number) {
            return unit(name)
                    .map(u ->
                            measure == Measure.METRIC ? value + u.metricSign() : u.text(number.doubleValue(), measure))
                    .orElseGet(value::toString);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(element -> text(name, element, measure)).collect(Collectors.joining(", "));
        }
        if (value instanceof Enum<?> constant) {
            return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        return printable(value.toString());
    }

    /** What a user wrote may hold anything; in a message it must not move the cursor. */
    static String printable(String text) {
        return text.replaceAll("\\p{Cc}+", " ");
    }

    private static Optional<Unit> unit(String name) {
        return UNITS.entrySet().stream()
                .filter(u -> name.endsWith(u.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /**
     * How a value is said.
     *
     * @param perMetric how many of the value make one of what is shown: nobody reads cubic millimetres
     * @param perInch the same in inches and ounces
     */
    private record Unit(String metricSign, double perMetric, String inchSign, double perInch) {

        static Unit same(String sign) {
            return new Unit(sign, 1, sign, 1);
        }

        String text(double value, Measure measure) {
            return measure == Measure.METRIC
                    ? Numbers.brief(value / perMetric) + metricSign
                    : Numbers.brief(value / perInch) + inchSign;
        }
    }

    private static Map<String, Unit> units() {
        double mm = Measure.INCH.typedMm(1);
        double g = Measure.INCH.typedG(1);
        Map<String, Unit> units = new LinkedHashMap<>();
        units.put("GPerCm3", Unit.same(" g/cm³"));
        units.put("GPerKg", Unit.same(" g/kg"));
        units.put("GPerMm", new Unit(" g/mm", 1, " oz/in", g / mm));
        units.put("Gmm", new Unit(" g·mm", 1, " oz·in", g * mm));
        units.put("Mm2", new Unit(" cm²", 100, " in²", mm * mm));
        units.put("Mm3", new Unit(" cm³", 1000, " in³", mm * mm * mm));
        units.put("Cm2", new Unit(" cm²", 1, " in²", mm * mm / 100));
        units.put("Cm3", new Unit(" cm³", 1, " in³", mm * mm * mm / 1000));
        units.put("Mm", new Unit(" mm", 1, " in", mm));
        units.put("Deg", Unit.same("°"));
        units.put("Percent", Unit.same(" %"));
        units.put("TemperatureC", Unit.same(" °C"));
        units.put("G", new Unit(" g", 1, " oz", g));
        return units;
    }
}
