package trimwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Units. An inch is 25.4 mm and an avoirdupois ounce 28.349523125 g exactly (international agreement of 1959). */
class MeasureTest {

    @Test
    void inchesAndOunces() {
        assertEquals("1.00 in", Measure.INCH.length(25.4));
        assertEquals("16.00 oz", Measure.INCH.mass(453.59237));
        assertEquals(254, Measure.INCH.typedMm(10), 0);
        assertEquals(28.349523125, Measure.INCH.typedG(1), 0);
    }

    /** Numbers are told as finely in inches and ounces as in mm and g; 25.4³ mm³ are a cubic inch. */
    @Test
    void asFineAsInMillimetres() {
        assertEquals("0.004 in", Measure.INCH.length(0.1));
        assertEquals("0.004", Measure.INCH.lengthNumber(0.1, 1));
        assertEquals("1.000", Measure.INCH.lengthNumber(25.4, 1));
        assertEquals("1.0 in³", Measure.INCH.volume(25.4 * 25.4 * 25.4));
        assertEquals("1.00 oz·in", Measure.INCH.moment(25.4 * 28.349523125));
        assertEquals("3.2 mm", Measure.METRIC.length(3.2));
        assertEquals("100 g·mm", Measure.METRIC.moment(100));
    }

    /** What users named is theirs: a part called "4 mm rod" keeps its name in any units. */
    @Test
    void findingsAreToldInEitherUnits() {
        Map<String, Object> values =
                Map.of("name", "4 mm rod", "gapMm", 25.4, "massG", 56.69904625, "roomCm3", 16.387064);
        Template template = new Template("{name}: {gapMm}, {massG}, {roomCm3}");
        assertEquals("4 mm rod: 25.4 mm, 56.7 g, 16.4 cm³", template.fill(values, Measure.METRIC));
        assertEquals("4 mm rod: 1 in, 2 oz, 1 in³", template.fill(values, Measure.INCH));
    }
}
