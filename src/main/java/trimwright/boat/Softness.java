package trimwright.boat;

import java.util.Optional;

/**
 * How a part gives way to the water with depth and time.
 *
 * @param compressionPercentPerM share of its volume that it loses for each metre of water above its centre
 * @param softFoam whether it follows Boyle's law like the gas in its open cells; excludes a compression of its own
 * @param uptakePercent share of its volume into which water soaks in the course of time
 */
public record Softness(Optional<Double> compressionPercentPerM, boolean softFoam, Optional<Double> uptakePercent) {

    /** What neither gives way nor soaks. */
    public static final Softness NONE = new Softness(Optional.empty(), false, Optional.empty());

    /** @throws IllegalArgumentException for two laws of compression at once, and for shares out of 0…100 */
    public Softness {
        if (softFoam && compressionPercentPerM.isPresent()) {
            throw new IllegalArgumentException("soft foam follows Boyle's law and has no compression of its own");
        }
        requireShare("compressionPercentPerM", compressionPercentPerM);
        requireShare("uptakePercent", uptakePercent);
    }

    private static void requireShare(String name, Optional<Double> percent) {
        if (percent.isPresent() && !(percent.get() >= 0 && percent.get() <= 100)) {
            throw new IllegalArgumentException(name + " must be 0…100, found " + percent.get());
        }
    }
}
