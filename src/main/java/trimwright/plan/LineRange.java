package trimwright.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the waterline can be painted: how much higher or lower than now, with the room and the tank at hand, and what each place demands.
 *
 * @param places the lines that were tried, from the lowest; only those that can be reached
 */
public record LineRange(List<Place> places) {

    /** A line raised by some mm (negative: lowered), and the mass that must be added to float on it. */
    public record Place(double raisedMm, double addedG) {}

    private static final int HALVINGS = 6;

    /**
     * Tries lines up and down from the one painted now, and closes in on the ends of what can be reached.
     *
     * @param request the plan for the line as painted now
     * @param mostMm how far up and down to look
     * @param stepMm distance between lines
     */
    public static LineRange of(PlanRequest request, double mostMm, double stepMm) {
        CellProgramme least = CellProgramme.of(request.withGoal(Goal.LEAST_MASS));
        List<Place> places = new ArrayList<>();
        int steps = (int) Math.floor(2 * mostMm / stepMm + 1e-9);
        Place last = null;
        for (int i = 0; i <= steps; i++) {
            double raised = i * stepMm - mostMm;
            Place place = at(least, raised);
            if (place != null && last == null && i > 0) {
                places.add(edge(least, raised, raised - stepMm, place));
            }
            if (place != null) {
                places.add(place);
            } else if (last != null) {
                places.add(edge(least, last.raisedMm(), raised, last));
            }
            last = place;
        }
        return new LineRange(places.stream().distinct().toList());
    }

    private static Place edge(CellProgramme now, double reached, double missed, Place at) {
        double good = reached;
        double bad = missed;
        Place best = at;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (good + bad);
            Place place = at(now, middle);
            if (place != null) {
                good = middle;
                best = place;
            } else {
                bad = middle;
            }
        }
        return best;
    }

    private static Place at(CellProgramme now, double raisedMm) {
        CellProgramme.Outline outline =
                now.like(now.request().withLineRaised(raisedMm)).outline();
        return outline.meetsAll() ? new Place(raisedMm, outline.addedG()) : null;
    }
}
