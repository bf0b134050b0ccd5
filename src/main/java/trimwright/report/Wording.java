package trimwright.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/**
 * Puts findings into sentences: what, where, the value found, what is allowed, what to do. The sentences of all codes stand in
 * {@code wording.properties}; how a sentence takes up the values of a finding is said at {@link Template}.
 */
public final class Wording {

    private static final String ADVICE = ".advice";
    private static final Properties SENTENCES = load();

    private Wording() {}

    /** As in "error: heron.boat.json, /parts/3/fill: …", on one line. */
    public static String line(Finding finding) {
        return finding.severity().name().toLowerCase(Locale.ROOT) + ": " + of(finding);
    }

    /** The place, where there is one, and the sentence. */
    public static String of(Finding finding) {
        return of(finding, Measure.METRIC);
    }

    /** The place, where there is one, and the sentence, in other units. */
    public static String of(Finding finding, Measure measure) {
        String where = place(finding, measure);
        return where.isEmpty() ? sentence(finding, measure) : where + ": " + sentence(finding, measure);
    }

    /** The place, where there is one, and what was found, without what there is to say about all findings of its kind. */
    public static String placedFact(Finding finding) {
        String where = place(finding, Measure.METRIC);
        return where.isEmpty() ? fact(finding) : where + ": " + fact(finding);
    }

    /** What was found and what to do, without the place. */
    public static String sentence(Finding finding) {
        return sentence(finding, Measure.METRIC);
    }

    /** What was found and what to do, without the place, in other units. */
    public static String sentence(Finding finding, Measure measure) {
        String advice = advice(finding.code());
        String fact = template(finding.code()).fill(finding.values(), measure);
        return advice.isEmpty() ? fact : fact + " " + advice;
    }

    /** What was found, without the place and without what there is to say about all findings of its kind. */
    public static String fact(Finding finding) {
        return template(finding.code()).fill(finding.values(), Measure.METRIC);
    }

    /** What there is to say about all findings of a kind, besides what each says; mostly empty. */
    public static String advice(Code code) {
        return SENTENCES.getProperty(code.name() + ADVICE, "");
    }

    /** The sentence of a code before its values are filled in. */
    static Template template(Code code) {
        String sentence = SENTENCES.getProperty(code.name());
        if (sentence == null) {
            throw new IllegalStateException("no wording for " + code);
        }
        return new Template(sentence);
    }

    /** The names of all codes that have a sentence or advice. */
    static Set<String> codes() {
        return SENTENCES.stringPropertyNames().stream()
                .map(name -> name.replace(ADVICE, ""))
                .collect(Collectors.toSet());
    }

    /** Where a finding sits, for a person; empty for the whole. */
    private static String place(Finding finding, Measure measure) {
        Place place = finding.place();
        if (place instanceof Place.InDocument in && finding.values().get("line") instanceof Number line) {
            String pointer = in.pointer().isEmpty() ? "" : ", " + in.pointer();
            return Template.printable(in.file() + " line " + line + pointer);
        }
        return place(place, measure);
    }

    /** A place in words; empty for the whole. */
    public static String place(Place place) {
        return place(place, Measure.METRIC);
    }

    private static String place(Place place, Measure measure) {
        // Names of files, parts and keys are what someone wrote.
        return Template.printable(inWords(place, measure));
    }

    private static String inWords(Place place, Measure measure) {
        if (place instanceof Place.InFile in) {
            return in.file();
        }
        if (place instanceof Place.InDocument in) {
            return in.pointer().isEmpty() ? in.file() : in.file() + ", " + in.pointer();
        }
        if (place instanceof Place.AtLine at) {
            return at.file() + ", line " + at.line();
        }
        if (place instanceof Place.AtByte at) {
            return at.file() + ", byte " + at.offset();
        }
        if (place instanceof Place.AtTriangle at) {
            return "triangle " + at.triangle() + " at " + point(measure, at.xMm(), at.yMm(), at.zMm());
        }
        if (place instanceof Place.AtEdge at) {
            return "edge from " + point(measure, at.x0Mm(), at.y0Mm(), at.z0Mm()) + " to "
                    + point(measure, at.x1Mm(), at.y1Mm(), at.z1Mm());
        }
        if (place instanceof Place.AtPoint at) {
            return "at " + point(measure, at.xMm(), at.yMm(), at.zMm());
        }
        if (place instanceof Place.AtOption at) {
            return at.option();
        }
        if (place instanceof Place.OnShell on) {
            return "shell " + on.shell();
        }
        if (place instanceof Place.OnPart on) {
            return "part \"" + on.part() + "\"";
        }
        if (place instanceof Place.BetweenParts between) {
            return "parts \"" + between.part() + "\" and \"" + between.other() + "\"";
        }
        if (place instanceof Place.InZone in) {
            return "zone \"" + in.zone() + "\"";
        }
        return "";
    }

    private static String point(Measure measure, double xMm, double yMm, double zMm) {
        return "x " + measure.lengthNumber(xMm, 1) + ", y " + measure.lengthNumber(yMm, 1) + ", z "
                + measure.lengthNumber(zMm, 1) + " " + measure.lengthUnit();
    }

    private static Properties load() {
        Properties sentences = new Properties();
        try (InputStream in = Wording.class.getResourceAsStream("wording.properties")) {
            sentences.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("the wording of findings is missing from the program", e);
        }
        return sentences;
    }
}
