package trimwright.plan.pool;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.function.DoublePredicate;
import trimwright.boat.Boat;
import trimwright.boat.Targets;

/** The targets of a boat as conditions on figures. */
final class Aims {

    private final Map<Figure, DoublePredicate> met = new EnumMap<>(Figure.class);

    private Aims() {}

    static Aims of(Boat boat) {
        Aims aims = new Aims();
        Targets targets = boat.targets();
        if (boat.paintedLine().isPresent()) {
            targets.offLineMm().ifPresent(mm -> {
                aims.met.put(Figure.BOW, v -> Math.abs(v) <= mm);
                aims.met.put(Figure.STERN, v -> Math.abs(v) <= mm);
            });
        }
        targets.listDeg().ifPresent(deg -> aims.met.put(Figure.LIST, v -> Math.abs(v) <= deg));
        targets.gmMm().ifPresent(mm -> aims.met.put(Figure.GM, v -> v >= mm));
        targets.bgMm().ifPresent(mm -> aims.met.put(Figure.BG_DIVED, v -> v >= mm));
        targets.divedTrimDeg().ifPresent(deg -> aims.met.put(Figure.TRIM_DIVED, v -> Math.abs(v) <= deg));
        targets.residualG()
                .ifPresent(band -> aims.met.put(Figure.RESIDUAL, v -> v >= band.least() && v <= band.greatest()));
        return aims;
    }

    Set<Figure> figures() {
        return met.keySet();
    }

    /** Whether one target is met; a figure that she has not meets none. */
    boolean isMet(Figure figure, double[] figures) {
        return met.get(figure).test(figures[figure.ordinal()]);
    }

    boolean areMet(double[] figures) {
        return met.keySet().stream().allMatch(f -> isMet(f, figures));
    }
}
