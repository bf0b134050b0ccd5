package trimwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.boat.pool.Quantity;
import trimwright.plan.pool.Figure;
import trimwright.plan.pool.Inclining;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.PoolEstimate.Known;
import trimwright.plan.pool.PoolEstimate.PartOff;

/** What readings say of a boat, in words and figures. */
public final class EstimateWords {

    /** Chance below which readings and file fit together only just. */
    private static final double JUST = 0.1;

    private EstimateWords() {}

    /** What she weighs by the readings, and whether they fit together. */
    public static String verdict(PoolEstimate estimate, Measure measure) {
        return weight(estimate, measure) + "The readings and the file " + fit(estimate) + " (chi-square "
                + Numbers.fixed(estimate.chiSquare(), 1) + " for "
                + count(estimate.sightings().size()) + ").";
    }

    private static String weight(PoolEstimate estimate, Measure measure) {
        Known mass = estimate.figures().get(Figure.MASS);
        if (mass == null) {
            return "";
        }
        double more = mass.after() - mass.before();
        String change = Numbers.roundsToZero(more, 1)
                ? "as in her file"
                : measure.mass(Math.abs(more)) + (more > 0 ? " more" : " less") + " than in her file";
        return "She weighs " + plusMinus(Figure.MASS, mass.after(), mass.afterError(), measure) + ", " + change + ". ";
    }

    private static String fit(PoolEstimate estimate) {
        return estimate.isDoubtful()
                ? "do not fit together"
                : estimate.chance() < JUST ? "fit together, but only just" : "fit together well";
    }

    private static String count(int readings) {
        return readings + (readings == 1 ? " reading" : " readings");
    }

    /** How well the outcome of a change is known: the weights to be added are known, what is not known of the boat stays. */
    public static String outcome(PoolEstimate estimate, Measure measure) {
        StringBuilder words = new StringBuilder();
        for (Figure figure :
                List.of(Figure.BOW, Figure.STERN, Figure.LIST, Figure.BG_DIVED, Figure.TRIM_DIVED, Figure.RESIDUAL)) {
            Known known = estimate.figures().get(figure);
            if (known != null) {
                words.append(words.isEmpty() ? "" : ", ")
                        .append(PoolWords.of(figure).replaceAll(", \\+.*", ""))
                        .append(" to ± ")
                        .append(number(figure, known.afterError(), measure))
                        .append(unit(figure, measure));
            }
        }
        return "How well the outcome is known: " + words + ".";
    }

    /** What lists under moved weights give by themselves. */
    public static String of(Inclining inclining, Measure measure) {
        return inclining.readings() + " lists under weights moved across give by themselves GM "
                + plusMinus(Figure.GM, inclining.gmMm(), inclining.gmErrorMm(), measure) + ", and G at "
                + plusMinus(Figure.G_UP, inclining.kgMm(), inclining.kgErrorMm(), measure) + " above z = 0.";
    }

    /** A figure and its standard deviation, as in "2762.1 ± 2.4 g". */
    public static String plusMinus(Figure figure, double value, double error, Measure measure) {
        return number(figure, value, measure) + " ± " + number(figure, error, measure) + unit(figure, measure);
    }

    /** A figure without its unit. */
    public static String number(Figure figure, double value, Measure measure) {
        return switch (figure.unit()) {
            case "g" -> measure.massNumber(value, 1);
            case "mm" -> measure.lengthNumber(value, 1);
            default -> Numbers.fixed(value, 1);
        };
    }

    private static String unit(Figure figure, Measure measure) {
        return switch (figure.unit()) {
            case "g" -> " " + measure.massUnit();
            case "mm" -> " " + measure.lengthUnit();
            default -> figure.unit();
        };
    }

    /** Something read or to be read, without its unit; a dash where there is none. */
    public static String number(Quantity quantity, Optional<Double> value, Measure measure) {
        return value.map(v -> switch (quantity) {
                    case WATER_ABOVE, FREEBOARD -> measure.lengthNumber(v, 1);
                    case HANGING -> measure.massNumber(v, 1);
                    case LIST, TRIM, RESTS_AT, ROLL -> Numbers.fixed(v, 1);
                })
                .orElse("–");
    }

    /** The unit in which something is read, as it is written after a number. */
    public static String unit(Quantity quantity, Measure measure) {
        return switch (quantity) {
            case WATER_ABOVE, FREEBOARD -> " " + measure.lengthUnit();
            case HANGING -> " " + measure.massUnit();
            case LIST, TRIM, RESTS_AT, ROLL -> quantity.unit();
        };
    }

    /** A part and how it is off, as in "hull: 21.2 ± 8.9 g heavier, weight 0.1 mm ahead (1.0)". */
    public static String of(PartOff part, Measure measure) {
        List<String> words = new ArrayList<>();
        boolean heavier = part.massG() > 0;
        words.add(measure.massNumber(Math.abs(part.massG()), 1) + " ± " + measure.massNumber(part.massErrorG(), 1) + " "
                + measure.massUnit() + (heavier ? " heavier" : " lighter"));
        way(words, part.moveMm().getX(), "ahead", "aft", measure);
        way(words, part.moveMm().getY(), "to port", "to starboard", measure);
        way(words, part.moveMm().getZ(), "up", "down", measure);
        if (!Numbers.roundsToZero(part.volumePercent(), 1)) {
            words.add("volume " + Numbers.fixed(Math.abs(part.volumePercent()), 1) + " % "
                    + (part.volumePercent() > 0 ? "more" : "less"));
        }
        return part.part() + ": " + String.join(", ", words) + " (" + Numbers.fixed(part.suspicion(), 1) + ")";
    }

    private static void way(List<String> words, double mm, String more, String less, Measure measure) {
        if (!Numbers.roundsToZero(mm, 1)) {
            words.add(measure.length(Math.abs(mm)) + " " + (mm > 0 ? more : less));
        }
    }
}
