package trimwright.plan;

import java.util.List;
import java.util.Map;

/**
 * The physical reason why an aim is missed, with the figures that show it. Volumes cm³, masses g, lengths mm, in the boat's frame.
 *
 * @param kind which reason
 * @param figures by name, as {@link Kind} lists them
 * @param parts ids of the parts that matter, the most important first; may be empty
 */
public record Cause(Kind kind, Map<String, Double> figures, List<String> parts) {

    /** The reasons. */
    public enum Kind {
        /** {@code tankCm3} it holds, {@code aboveCm3} stand above the line, {@code neededCm3} it would have to hold at least. */
        TANK_TOO_SMALL,
        /** {@code tankCm3}, {@code aboveCm3}, {@code roomCm3} for foam above the line, {@code neededCm3} it may hold at most. */
        TANK_TOO_LARGE,
        /** {@code weightG}, {@code carriedG} by what lies under the line, {@code roomG} that foam in all the room could carry more. */
        TOO_HEAVY,
        /** {@code weightG}, {@code carriedG} by what lies under the line, {@code roomG} of weight in the water for which there is room. */
        TOO_LIGHT,
        /** {@code weightMm}, {@code carriedMm}: where along the boat her weight stands and where she is carried at her line. */
        WEIGHT_ALONG,
        /** The same across the boat, positive to port. */
        WEIGHT_ACROSS,
        /** {@code tankMm}, {@code aboveMm}: where along the boat the tank's middle lies and that of what stands above the line. */
        TANK_ALONG,
        /** The same across the boat, positive to port. */
        TANK_ACROSS,
        /** {@code wanted} and {@code greatest} value that can be had with every other aim met. */
        GREATEST,
        /** It could be met by itself, but not together with the others. */
        TOGETHER,
        /** {@code allowedG} that may be added, {@code neededG} that would have to be at least. */
        MASS_LIMIT,
        /** Spread finely over the room it could be had, but not with a few pieces that can be cut. */
        PIECES,
        /** It depends on an aim that is missed too. */
        FOLLOWS
    }

    public Cause {
        figures = Map.copyOf(figures);
        parts = List.copyOf(parts);
    }

    /** A figure by its name. */
    public double figure(String name) {
        return figures.get(name);
    }
}
