package trimwright.boat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.boat.Materials.Material;

class MaterialsTest {

    @Test
    void everyMaterialHasANameADensityAndAUse() {
        for (Material material : Materials.ALL) {
            assertFalse(material.name().isBlank());
            assertTrue(0 < material.leastGPerCm3() && material.leastGPerCm3() <= material.greatestGPerCm3());
            assertFalse(material.kinds().isEmpty(), material.name());
        }
        assertEquals(
                Materials.ALL.size(),
                Materials.ALL.stream().map(Material::name).distinct().count());
    }

    /** Densities of ASTM D6817 (EPS), and of handbooks, from memory. */
    @ParameterizedTest
    @CsvSource({"lead, 11.34", "PLA, 1.24", "acrylic, 1.19", "EPS foam, 0.0285", "brass, 8.55", "steel, 7.85"})
    void theUsualDensityIsTheMiddleOfItsRange(String name, double expected) {
        Material material = Materials.ALL.stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow();
        assertEquals(expected, material.usualGPerCm3(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({
        "FOAM, 0.03, true",
        "FOAM, 0.24, true",
        "FOAM, 1.24, false",
        "FOAM, 30, false",
        "BALLAST, 11.34, true",
        "BALLAST, 19.3, true",
        "BALLAST, 1.0, false",
        "BALLAST, 11340, false",
        "HULL, 1.24, true",
        "HULL, 0.16, true",
        "HULL, 1240, false",
        "FITTING, 8.5, true",
        "FITTING, 0.05, true",
        "CYLINDER, 0.7, true",
        "CYLINDER, 700, false"
    })
    void aDensityIsPlausibleForWhatAPartIsMadeOf(Kind kind, double densityGPerCm3, boolean plausible) {
        assertEquals(
                plausible,
                densityGPerCm3 >= Materials.leastPlausibleGPerCm3(kind)
                        && densityGPerCm3 <= Materials.greatestPlausibleGPerCm3(kind));
    }

    @Test
    void theListOfAKindHoldsItsMaterialsOnly() {
        for (Kind kind : new Kind[] {Kind.BALLAST, Kind.FOAM, Kind.HULL, Kind.CYLINDER, Kind.FITTING}) {
            assertFalse(Materials.of(kind).isEmpty());
            assertTrue(Materials.of(kind).stream().allMatch(m -> m.kinds().contains(kind)));
        }
    }
}
