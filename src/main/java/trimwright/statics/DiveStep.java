package trimwright.statics;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One state on the way down or up, at rest.
 *
 * @param fill water in all tanks as a share of their volume, 0…1
 * @param fillById fill of each tank, 0…1
 * @param flotation where she floats then; other attitudes are not looked for
 * @param uprightGmMm transverse metacentric height that she has, or would have, with no list and her trim free; negative where she
 *     would lie over; empty when she sinks or no trim is stable
 * @param standing what stands above the water, the highest first; empty when she sinks
 * @param heldWaterG water that stands in the free-flooding hull above the level outside
 */
public record DiveStep(
        double fill,
        Map<String, Double> fillById,
        Flotation flotation,
        Optional<Double> uprightGmMm,
        List<Standing> standing,
        double heldWaterG) {

    public DiveStep {
        fillById = Map.copyOf(fillById);
        standing = List.copyOf(standing);
    }

    /** Where she rests; empty when she sinks. */
    public Optional<Equilibrium> settled() {
        return flotation.settled();
    }

    /** How deep she lies at either end; empty when she sinks or lies far over. */
    public Optional<Draughts> draughts() {
        return settled().flatMap(e -> Draughts.of(flotation.condition().boat(), e.plane()));
    }
}
