package trimwright.plan.pool;

import java.util.List;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.immersion.WaterPlane;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/**
 * How figures change with what may be off, by central differences. Those that take no equilibrium are read from boats with each thing off in turn; those
 * afloat from the boat under a mass and its three moments, since whatever is off acts to first order as such a load.
 */
final class Slopes {

    /** Of a standard deviation. */
    private static final double STEP = 0.1;

    private final Boat boat;
    private final List<Unknown> unknowns;
    private final double[][] slopes;

    private Slopes(Boat boat, List<Unknown> unknowns) {
        this.boat = boat;
        this.unknowns = unknowns;
        slopes = new double[Figure.values().length][unknowns.size()];
    }

    /** One row for each figure: its change with one standard deviation of every unknown; zero for a figure she has not. */
    static double[][] ofFigures(Boat boat, List<Unknown> unknowns) {
        Slopes all = new Slopes(boat, unknowns);
        Condition empty = Condition.of(boat).withAllTanksAt(0);
        Optional<Equilibrium> rest = Flotation.rest(empty);
        for (int k = 0; k < unknowns.size(); k++) {
            all.differ(k, all.at(k, STEP), all.at(k, -STEP));
        }
        if (rest.isPresent()) {
            all.addAfloat(empty, Figure.all(empty, rest), rest.get().plane());
        }
        return all.slopes;
    }

    private void differ(int k, double[] more, double[] less) {
        for (Figure figure : Figure.values()) {
            int i = figure.ordinal();
            if (!figure.isAfloat()) {
                set(i, k, (more[i] - less[i]) / (2 * STEP));
            }
        }
    }

    private void set(int figure, int unknown, double slope) {
        slopes[figure][unknown] = Double.isNaN(slope) ? 0 : slope;
    }

    private double[] at(int unknown, double by) {
        double[] errors = new double[unknowns.size()];
        errors[unknown] = by;
        return Figure.all(
                Condition.of(Corrections.applied(boat, unknowns, errors)).withAllTanksAt(0), Optional.empty());
    }

    private void addAfloat(Condition empty, double[] there, WaterPlane water) {
        LoadSlopes byLoad = LoadSlopes.of(empty, there, loaded -> Figure.all(loaded, Flotation.rest(loaded, water)));
        for (int k = 0; k < unknowns.size(); k++) {
            Unknown unknown = unknowns.get(k);
            double[] change = byLoad.under(unknown.load(empty.densityGPerMm3(), Optional.of(water)));
            for (Figure figure : Figure.values()) {
                if (figure.isAfloat()) {
                    set(figure.ordinal(), k, unknown.error() * change[figure.ordinal()]);
                }
            }
        }
    }
}
