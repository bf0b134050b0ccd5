package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trimwright.boat.Boat;
import trimwright.boat.Part;

/** Puts what is off into a boat. */
public final class Corrections {

    private Corrections() {}

    /**
     * The boat with everything off by so much.
     *
     * @param errors one number for each unknown, in standard deviations
     */
    static Boat applied(Boat boat, List<Unknown> unknowns, double[] errors) {
        Map<String, Part> parts = new LinkedHashMap<>();
        boat.parts().forEach(p -> parts.put(p.id(), p));
        for (int i = 0; i < errors.length; i++) {
            Unknown unknown = unknowns.get(i);
            if (errors[i] != 0) {
                parts.put(unknown.part(), unknown.applied(parts.get(unknown.part()), errors[i] * unknown.error()));
            }
        }
        return boat.withParts(new ArrayList<>(parts.values()));
    }

    /** A corrected part with what was changed rounded to 0.01 g and 0.01 mm, as it is written into a file; the rest as it was. */
    public static Part rounded(Part original, Part corrected) {
        return corrected.withBody(
                corrected.shape().equals(original.shape())
                        ? original.shape()
                        : corrected.shape().map(Scaling::rounded),
                corrected.weighedMassG().equals(original.weighedMassG())
                        ? original.weighedMassG()
                        : corrected.weighedMassG().map(Scaling::rounded),
                corrected.givenCentreMm().equals(original.givenCentreMm())
                        ? original.givenCentreMm()
                        : corrected.givenCentreMm().map(Scaling::rounded));
    }
}
