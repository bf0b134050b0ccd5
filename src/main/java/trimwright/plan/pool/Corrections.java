package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
     * pieces turned out alike is one part again; otherwise its second piece is a part of its own.
     *
     * @param original the boat of the file
     * @param corrected the boat as the readings have her
     */
    public static Boat rounded(Boat original, Boat corrected) {
        Boat apart = Pairs.apart(original);
        Map<String, Part> rounded = new LinkedHashMap<>();
        for (Part before : apart.parts()) {
            rounded.put(before.id(), rounded(before, corrected.part(before.id()).orElseThrow()));
        }
        List<Part> parts = new ArrayList<>();
        List<Part> twins = new ArrayList<>();
        for (int i = 0; i < apart.parts().size(); i++) {
            Part first = rounded.get(apart.parts().get(i).id());
            Part pair = original.part(first.id()).orElseThrow();
            if (!Pairs.canPart(pair)) {
                parts.add(first);
                continue;
            }
            i++;
            Part second = rounded.get(apart.parts().get(i).id());
            Optional<Part> again = Pairs.together(pair, first, second);
            parts.add(again.orElse(first));
            if (again.isEmpty()) {
                twins.add(second);
            }
        }
        parts.addAll(twins);
        return original.withParts(parts);
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
