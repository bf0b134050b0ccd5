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

    /**
     * A corrected boat as it is written into a file: what was changed rounded to 0.01 g and 0.01 mm, the rest as it was, fills too. A pair whose
     * pieces turned out alike is one part again; otherwise its second piece is a part of its own. Parts that a plan took out are gone, those it added
     * stand at the end.
     *
     * @param original the boat of the file
     * @param corrected the boat as the readings have her, a plan carried out or not
     */
    public static Boat rounded(Boat original, Boat corrected) {
        Boat apart = Pairs.apart(original);
        Map<String, Part> rounded = new LinkedHashMap<>();
        for (Part before : apart.parts()) {
            corrected.part(before.id()).ifPresent(after -> rounded.put(before.id(), rounded(before, after)));
        }
        for (Part added : corrected.parts()) {
            rounded.putIfAbsent(added.id(), added);
        }
        for (int i = 0; i + 1 < apart.parts().size(); i++) {
            Part pair = original.part(apart.parts().get(i).id()).orElse(null);
            if (pair != null && Pairs.canPart(pair)) {
                Part first = rounded.get(pair.id());
                Part second = rounded.get(apart.parts().get(i + 1).id());
                if (first != null && second != null) {
                    Pairs.together(pair, first, second).ifPresent(again -> {
                        rounded.put(pair.id(), again);
                        rounded.remove(second.id());
                    });
                }
            }
        }
        return original.withParts(new ArrayList<>(rounded.values()));
    }

    private static Part rounded(Part original, Part corrected) {
        return original.withBody(
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
