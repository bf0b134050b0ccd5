package trimwright.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * One thing worth telling the user, as a value. It carries no sentence: the edge of the program (command line,
 * sheet, window) puts it into words from its code and values.
 *
 * @param code what was found
 * @param severity how much it matters here
 * @param place where it was found
 * @param values what was found, what is allowed, and so on, by name; a name carries its unit, as in {@code foundMm}
 */
public record Finding(Code code, Severity severity, Place place, Map<String, Object> values) {

    public Finding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(place, "place");
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /**
     * A finding with the usual severity of its code.
     *
     * @param namesAndValues name, value, name, value, …
     */
    public static Finding of(Code code, Place place, Object... namesAndValues) {
        return of(code, code.severity(), place, namesAndValues);
    }

    /** A finding with a severity of its own, where the circumstances make it worse or lighter than usual. */
    public static Finding of(Code code, Severity severity, Place place, Object... namesAndValues) {
        if (namesAndValues.length % 2 != 0) {
            throw new IllegalArgumentException("values of a finding come as name, value pairs");
        }
        Map<String, Object> values = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            values.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return new Finding(code, severity, place, values);
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }
}
