package trimwright.statics;

import java.util.List;
import java.util.Optional;
import trimwright.boat.Water;

/**
 * The same boat in other water.
 *
 * @param water the water
 * @param settled where she floats with empty tanks; empty when she sinks
 * @param fromPaintedLine the water against the painted line then
 * @param gramsForLineG mass to add (positive) or take for her to float on the line that she has at home with empty tanks; empty when
 *     she does not float at home
 * @param residualG buoyancy left with full tanks, as she is
 * @param gramsForResidualG mass to add (positive) or take for the residual that she has at home
 * @param dive what a dive comes to, as she is
 */
public record WaterChange(
        Water water,
        Optional<Equilibrium> settled,
        Optional<PaintedOffset> fromPaintedLine,
        Optional<Double> gramsForLineG,
        double residualG,
        double gramsForResidualG,
        Verdict dive) {

    /** What a dive comes to. */
    public enum Verdict {
        /** She goes under and comes back. */
        DIVES,
        /** More stays out than is wanted: the tank does not take her under. */
        STAYS_UP,
        /** She goes down and does not come back. */
        SINKS
    }

    /** Fresh and sea water, cold and warm. */
    public static final List<Water> USUAL = List.of(
            Water.of(4, 0), Water.of(20, 0), Water.of(28, 0), Water.of(8, 35), Water.of(15, 35), Water.of(25, 35));

    /**
     * Compares the water that the boat states with others.
     *
     * @param condition the boat in her own water
     * @param others the waters to put her into
     */
    public static List<WaterChange> of(Condition condition, List<Water> others) {
        Condition home = condition.withAllTanksAt(0);
        Optional<Equilibrium> atHome = settle(home);
        return others.stream().map(water -> of(home, atHome, water)).toList();
    }

    private static WaterChange of(Condition home, Optional<Equilibrium> atHome, Water water) {
        Condition there = home.in(water);
        Optional<Equilibrium> settled = settle(there);
        double homeResidual = residualG(home);
        double residual = residualG(there);
        double heavier = water.densityGPerMm3() - home.densityGPerMm3();
        return new WaterChange(
                water,
                settled,
                settled.flatMap(e -> home.boat().paintedLine().map(line -> PaintedOffset.of(line, e.plane()))),
                atHome.map(e -> heavier * e.sums().volumeMm3()),
                residual,
                residual - homeResidual,
                verdict(residual, Math.max(homeResidual, ResidualWanted.of(home).greatestG())));
    }

    private static Verdict verdict(double residualG, double greatestG) {
        if (residualG <= 0) {
            return Verdict.SINKS;
        }
        return residualG > greatestG ? Verdict.STAYS_UP : Verdict.DIVES;
    }

    private static double residualG(Condition condition) {
        return condition.withAllTanksAt(1).reserveG();
    }

    private static Optional<Equilibrium> settle(Condition condition) {
        return Flotation.floats(condition)
                ? Optional.of(Balance.settle(condition, Balance.upright(condition)))
                : Optional.empty();
    }
}
