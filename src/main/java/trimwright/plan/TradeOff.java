package trimwright.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * What stability costs: the least added mass for each BG, with the GM that comes with it (for a boat without tanks: for each GM).
 *
 * @param points from the least mass that meets all other aims to the firmest that the room allows
 * @param knee number of the point after which each further mm costs clearly more; -1 where the curve is straight
 */
public record TradeOff(List<Point> points, int knee) {

    /** One point: mass added, and what it brings. */
    public record Point(double addedG, double bgMm, double gmMm) {}

    private static final int HALVINGS = 12;
    /** How far, as a share of the whole chord, a curve must bulge to have a knee. */
    private static final double STRAIGHT = 0.02;

    /**
     * Solves the plan again and again; the room is measured once.
     *
     * @param count how many points; at least 3
     */
    public static TradeOff of(PlanRequest request, int count) {
        PlanRequest free = request.withGoal(Goal.LEAST_MASS).withStability(0);
        CellProgramme first = CellProgramme.of(free);
        CellProgramme.Outline least = first.outline();
        if (!least.meetsAll()) {
            return new TradeOff(List.of(), -1);
        }
        boolean dives = first.basis().dives;
        double low = value(least, dives);
        double high = greatest(free, first, low, dives);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double wanted = i == 0 ? low - 1e-9 : low + (high - low) * i / (count - 1);
            CellProgramme.Outline outline = solve(free, first, wanted, dives);
            if (outline.meetsAll()) {
                PlanModel.Stability s =
                        outline.model().stability(outline.solution().x());
                points.add(new Point(outline.addedG(), s.bgMm(), s.gmMm()));
            }
        }
        return new TradeOff(List.copyOf(points), knee(points, dives));
    }

    private static double value(CellProgramme.Outline outline, boolean dives) {
        PlanModel.Stability s = outline.model().stability(outline.solution().x());
        return dives ? s.bgMm() : s.gmMm();
    }

    private static CellProgramme.Outline solve(PlanRequest free, CellProgramme first, double wanted, boolean dives) {
        PlanRequest request = dives ? free.withStability(wanted) : free.withGm(wanted);
        return first.like(request).outline();
    }

    /** The greatest value that can be had, by doubling and halving. */
    private static double greatest(PlanRequest free, CellProgramme first, double low, boolean dives) {
        double reached = low;
        double step = Math.max(1, Math.abs(low));
        while (solve(free, first, reached + step, dives).meetsAll()) {
            reached += step;
            step *= 2;
        }
        for (int i = 0; i < HALVINGS; i++) {
            step /= 2;
            if (solve(free, first, reached + step, dives).meetsAll()) {
                reached += step;
            }
        }
        return reached;
    }

    /** The point farthest from the chord, both axes taken as shares of their range. */
    private static int knee(List<Point> points, boolean dives) {
        if (points.size() < 3) {
            return -1;
        }
        Point a = points.get(0);
        Point b = points.get(points.size() - 1);
        double mass = b.addedG() - a.addedG();
        double gain = dives ? b.bgMm() - a.bgMm() : b.gmMm() - a.gmMm();
        int knee = -1;
        double farthest = STRAIGHT;
        for (int i = 1; i + 1 < points.size(); i++) {
            Point p = points.get(i);
            double bulge =
                    (dives ? p.bgMm() - a.bgMm() : p.gmMm() - a.gmMm()) / gain - (p.addedG() - a.addedG()) / mass;
            if (bulge > farthest) {
                farthest = bulge;
                knee = i;
            }
        }
        return knee;
    }
}
