package trimwright.boat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Density of water. */
class WaterTest {

    /** EOS-80 at one atmosphere, check values of UNESCO technical papers in marine science 44 (1983), to their last digit. */
    @ParameterizedTest
    @CsvSource({"0,5,999.96675", "35,5,1027.67547", "0,25,997.04796", "35,25,1023.34306"})
    void checkValuesOfTheEquationOfState(double salinity, double temperature, double kgPerM3) {
        assertEquals(kgPerM3, Water.of(temperature, salinity).densityGPerCm3() * 1000, 5e-6);
    }

    /**
     * ITTC recommended procedure 7.5-02-01-03, after newer equations by absolute salinity, 35.165 g/kg for sea water: within 0.05 kg/m³,
     * the difference between the two scales of salinity and equations.
     */
    @ParameterizedTest
    @CsvSource({
        "0,10,999.7025",
        "0,15,999.1026",
        "0,20,998.2072",
        "0,30,995.6495",
        "35,10,1027.0000",
        "35,15,1026.0210",
        "35,20,1024.8103"
    })
    void ittc(double practicalSalinity, double temperature, double kgPerM3) {
        assertEquals(kgPerM3, Water.of(temperature, practicalSalinity).densityGPerCm3() * 1000, 0.05);
    }

    /** From fresh water of 20 °C to the sea at 15 °C: 2.79 % more lift, by either equation to within 0.01 %. */
    @Test
    void fromFreshToSea() {
        double gain = Water.of(15, 35).densityGPerCm3() / Water.FRESH.densityGPerCm3() - 1;
        assertEquals(0.0279, gain, 0.0001);
        assertEquals(139, 5000 * gain, 0.5);
    }

    @ParameterizedTest
    @CsvSource({"-2.1,0", "40.1,0", "20,-0.1", "20,42.1", "NaN,0", "20,NaN"})
    void refusesWaterOutOfRange(double temperature, double salinity) {
        assertThrows(IllegalArgumentException.class, () -> Water.of(temperature, salinity));
    }
}
