package trimwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.statics.Equilibrium;

class WordsTest {

    private final Locale before = Locale.getDefault();

    @AfterEach
    void putTheLocaleBack() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @CsvSource({"-0.04,1,0.0", "-0.06,1,-0.1", "0.25,0,0", "0.5,0,1", "-0.5,0,-1", "1234.5,1,1234.5", "-3,2,-3.00"})
    void fixedNumbersHaveNoMinusBeforeZero(double value, int decimals, String text) {
        assertEquals(text, Numbers.fixed(value, decimals));
    }

    @ParameterizedTest
    @CsvSource({
        "1.4,1.4",
        "1,1",
        "-0.0,0",
        "0.998206,0.998206",
        "123456789,123456789",
        "1e12,1E+12",
        "0.1000000001,0.1",
        "1.5e-10,1.5E-10"
    })
    void plainNumbersHaveNoTrailingZeros(double value, String text) {
        assertEquals(text, Numbers.plain(value));
    }

    @ParameterizedTest
    @CsvSource({
        "0,0",
        "12.345,12.3",
        "1.8349,1.83",
        "0.0123456,0.0123",
        "-0.5,-0.5",
        "9.96,9.96",
        "20,20",
        "1234.56,1234.6",
        "0.0000000432,0.000000043",
        "8.7e-15,0",
        "-1.02e-38,0"
    })
    void briefNumbersKeepThreeDigits(double value, String text) {
        assertEquals(text, Numbers.brief(value));
    }

    @Test
    void aLocaleWithCommasChangesNothing() {
        Locale.setDefault(Locale.GERMANY);
        assertEquals("1.8 mm", Numbers.mm(1.8));
        assertEquals("0.9982", Numbers.plain(0.9982));
        Locale.setDefault(new Locale("ar", "EG"));
        assertEquals("list 1.3° to port, bow up 0.4°", AttitudeWords.of(-1.3, 0.4));
    }

    /** Signs as the contract fixes them: positive heel is a list to starboard, positive trim is bow up. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1.3|0|list 1.3° to starboard, no trim",
                "-1.3|0.4|list 1.3° to port, bow up 0.4°",
                "0|-0.4|no list, bow down 0.4°",
                "0.04|-0.04|upright and level",
                "180|2|bottom up, list 180.0° to starboard, bow up 2.0°",
                "30|-88|on end, bow down 88.0°"
            })
    void attitudesNameSidesAndEnds(double heelDeg, double trimDeg, String words) {
        assertEquals(words, AttitudeWords.of(heelDeg, trimDeg));
        assertEquals(words, AttitudeWords.of(Equilibrium.up(heelDeg, trimDeg)));
    }
}
