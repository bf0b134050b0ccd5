package trimwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import trimwright.boat.Zone;

/** The limits on what may be added: the builder's own per zone and side, and those of the goal. */
final class PlanLimits {

    private PlanLimits() {}

    static List<PlanModel.Cap> of(PlanRequest request, List<Choice> choices) {
        List<PlanModel.Cap> caps = new ArrayList<>();
        for (Zone zone : request.boat().zones()) {
            if (zone.maxG().isPresent()) {
                for (boolean twin : zone.mirror() ? new boolean[] {false, true} : new boolean[] {false}) {
                    add(
                            caps,
                            zone.id(),
                            choices,
                            s -> s.zone().equals(zone.id()) && (!zone.mirror() || s.twin() == twin),
                            zone.maxG().get(),
                            false);
                }
            }
        }
        Goal goal = request.goal();
        add(caps, "added mass", choices, s -> true, goal.mostG(), false);
        add(caps, "added lead", choices, s -> s.use() == Zone.Use.BALLAST, goal.mostLeadG(), goal.exactly());
        add(
                caps,
                "added foam",
                choices,
                s -> s.use() == Zone.Use.FOAM,
                goal.mostFoamMm3() * request.foamGPerCm3() / 1000,
                goal.exactly());
        return caps;
    }

    private static void add(
            List<PlanModel.Cap> caps,
            String name,
            List<Choice> choices,
            Predicate<Choice.Spot> counts,
            double mostG,
            boolean exactly) {
        if (mostG == Double.POSITIVE_INFINITY) {
            return;
        }
        double[] grams = new double[choices.size()];
        for (int i = 0; i < grams.length; i++) {
            Choice choice = choices.get(i);
            grams[i] =
                    choice.gramsEach() * choice.spots().stream().filter(counts).count();
        }
        caps.add(new PlanModel.Cap(name, grams, mostG));
        if (exactly) {
            caps.add(new PlanModel.Cap(name, Arrays.stream(grams).map(g -> -g).toArray(), -mostG));
        }
    }
}
