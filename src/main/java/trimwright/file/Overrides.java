package trimwright.file;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.Water;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/** What the command line changes about a boat: her water and the fills of her tanks. */
public final class Overrides {

    private static final Place WATER = new Place.AtOption("--water");
    private static final Place FILL = new Place.AtOption("--fill");
    private static final List<String> WATER_WORDS = List.of("fresh", "sea");
    private static final double SEA_G_PER_KG = 35;
    private static final double USUAL_TEMPERATURE_C = 20;

    private Overrides() {}

    /**
     * The boat in other water or with other fills.
     *
     * @param water {@code fresh} or {@code sea}, which keep the temperature of the file (20 °C if none), or a density in g/cm³
     * @param fills each {@code ID=F}, F from 0 to 1; the twin of a mirrored tank is filled alike
     * @throws UnusableInputException with everything that is wrong about them
     */
    public static Boat apply(Boat boat, Optional<String> water, List<String> fills) {
        List<Finding> findings = new ArrayList<>();
        Optional<Water> other = water.flatMap(w -> water(boat.water(), w, findings));
        Map<String, Double> fillById = new LinkedHashMap<>();
        fills.forEach(fill -> addFill(boat, fill, fillById, findings));
        if (!findings.isEmpty()) {
            throw new UnusableInputException(findings);
        }
        return other.map(boat::in).orElse(boat).filled(fillById);
    }

    private static Optional<Water> water(Water before, String found, List<Finding> findings) {
        double temperatureC = before.temperatureC().orElse(USUAL_TEMPERATURE_C);
        if (found.equals("fresh")) {
            return Optional.of(Water.of(temperatureC, 0));
        }
        if (found.equals("sea")) {
            return Optional.of(Water.of(temperatureC, SEA_G_PER_KG));
        }
        Range range = BoatReader.WATER_DENSITY_G_PER_CM3;
        Optional<Double> density = number(found).filter(range::holds);
        if (density.isEmpty()) {
            findings.add(Finding.of(
                    Code.WATER_NOT_UNDERSTOOD,
                    WATER,
                    "found",
                    found,
                    "allowed",
                    WATER_WORDS,
                    "leastGPerCm3",
                    range.low(),
                    "greatestGPerCm3",
                    range.high()));
        }
        return density.map(Water::ofDensity);
    }

    private static void addFill(Boat boat, String found, Map<String, Double> fillById, List<Finding> findings) {
        // An id may hold an equals sign, a number does not.
        int sign = found.lastIndexOf('=');
        if (sign < 1) {
            findings.add(Finding.of(Code.FILL_NOT_UNDERSTOOD, FILL, "found", found));
            return;
        }
        String id = found.substring(0, sign);
        String text = found.substring(sign + 1);
        List<String> tanks =
                boat.parts().stream().filter(Part::isTank).map(Part::id).toList();
        if (!tanks.contains(id)) {
            findings.add(Finding.of(
                    Code.FILL_OF_NO_TANK, FILL, "found", id, "nearest", Nearest.to(id, tanks), "allowed", tanks));
            return;
        }
        Optional<Double> fill = number(text).filter(Range.from(0, 1)::holds);
        if (fill.isEmpty()) {
            findings.add(
                    Finding.of(Code.FILL_OUT_OF_RANGE, FILL, "tank", id, "found", text, "least", 0, "greatest", 1));
        } else if (fillById.putIfAbsent(id, fill.get()) != null) {
            findings.add(Finding.of(Code.FILL_TWICE, FILL, "tank", id));
        }
    }

    private static Optional<Double> number(String text) {
        try {
            return Optional.of(new BigDecimal(text).doubleValue());
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
