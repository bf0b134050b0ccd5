package trimwright.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.statics.Flotation;

/**
 * How much lead and foam, and where.
 *
 * @param feasible whether every aim is met by the outcome as floated
 * @param pieces the pieces to add, each a part of the boat
 * @param removals what to take out of parts that may give some up: share 0…1 by the id of the part
 * @param moves how far to move what is left of such parts, mm ahead by the id of the part
 * @param addedLeadG mass of lead added
 * @param addedFoamMm3 volume of foam added
 * @param addedFoamG mass of foam added
 * @param planned the boat with the plan carried out; the boat as she is when there is no plan
 * @param surfaced how the planned boat floats
 * @param dived how she floats with her tanks full; empty for a boat without tanks or when she sinks
 * @param misses aims that cannot be met together, and by how much
 * @param worth what each aim costs: grams of lead and foam that one more of its unit asks for
 * @param rounding what rounding to real pieces cost
 * @param rooms the room that was found
 */
public record BallastPlan(
        boolean feasible,
        List<Part> pieces,
        Map<String, Double> removals,
        Map<String, Double> moves,
        double addedLeadG,
        double addedFoamMm3,
        double addedFoamG,
        Boat planned,
        Flotation surfaced,
        Optional<Flotation> dived,
        List<Miss> misses,
        Map<Aim, Double> worth,
        Rounding rounding,
        List<Room> rooms) {

    /**
     * What rounding to real pieces cost.
     *
     * @param idealMassG mass added if pieces could have any size and place
     * @param roundedMassG mass added by the pieces as they are to be made
     */
    public record Rounding(double idealMassG, double roundedMassG) {}

    /** The same with a cause for every miss. */
    BallastPlan because(Cause cause) {
        return new BallastPlan(
                feasible,
                pieces,
                removals,
                moves,
                addedLeadG,
                addedFoamMm3,
                addedFoamG,
                planned,
                surfaced,
                dived,
                misses.stream().map(m -> m.because(cause)).toList(),
                worth,
                rounding,
                rooms);
    }

    BallastPlan finished(Flotation newSurfaced, Optional<Flotation> newDived, Map<Aim, Double> newWorth) {
        return new BallastPlan(
                feasible,
                pieces,
                removals,
                moves,
                addedLeadG,
                addedFoamMm3,
                addedFoamG,
                planned,
                newSurfaced,
                newDived,
                misses,
                newWorth,
                rounding,
                rooms);
    }

    /** The same plan for a boat that has more parts, all of which are taken out. */
    BallastPlan alsoRemoving(Map<String, Double> more) {
        Map<String, Double> all = new LinkedHashMap<>(more);
        all.putAll(removals);
        return new BallastPlan(
                feasible,
                pieces,
                all,
                moves,
                addedLeadG,
                addedFoamMm3,
                addedFoamG,
                planned,
                surfaced,
                dived,
                misses,
                worth,
                rounding,
                rooms);
    }

    /** BG dived, or for a boat without tanks GM surfaced, mm: what a firmest plan is judged by. */
    double firmnessMm() {
        return dived.isPresent()
                ? surfaced.submerged().bgMm()
                : surfaced.settled().orElseThrow().gmTransverseMm();
    }
}
