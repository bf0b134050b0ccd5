package trimwright.statics;

import java.util.List;
import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.immersion.WaterPlane;

/**
 * Where a boat floats: the answer to the main question.
 *
 * @param condition the boat as loaded
 * @param settled the attitude she settles to from upright; empty when she sinks
 * @param attitudes every stable attitude, lowest energy first, or only the settled one when others were not looked for; empty
 *     when she sinks
 * @param fromPaintedLine how the water lies against the painted line, where there is one and she floats
 * @param submerged under water with tanks full
 */
public record Flotation(
        Condition condition,
        Optional<Equilibrium> settled,
        List<Equilibrium> attitudes,
        Optional<PaintedOffset> fromPaintedLine,
        Submerged submerged) {

    /** Floats a boat that weighs something. */
    public static Flotation of(Boat boat) {
        return of(Condition.of(boat));
    }

    /** Floats a loaded boat that weighs something. */
    public static Flotation of(Condition condition) {
        if (!(condition.massG() > 0)) {
            throw new IllegalArgumentException("a boat that weighs nothing has no waterline");
        }
        if (!floats(condition)) {
            return of(condition, Optional.empty(), List.of());
        }
        Equilibrium settled = Balance.settle(condition, Balance.upright(condition));
        return of(condition, Optional.of(settled), Attitudes.of(condition, List.of(settled)));
    }

    /** A loaded boat that weighs something, in the attitude she settles to from upright; others are not looked for, which is far quicker. */
    public static Flotation settling(Condition condition) {
        return resting(condition, rest(condition));
    }

    /** Where a loaded boat that weighs something settles from upright, and nothing else of her: the quickest way to ask. Empty when she sinks. */
    public static Optional<Equilibrium> rest(Condition condition) {
        return floats(condition)
                ? Optional.of(Balance.settle(condition, Balance.upright(condition)))
                : Optional.empty();
    }

    /**
     * The same from another attitude than upright, for a boat that differs little from one that rests there.
     *
     * @param near attitude and height from which she settles
     */
    public static Optional<Equilibrium> rest(Condition condition, WaterPlane near) {
        return floats(condition) ? Optional.of(Balance.settle(condition, near)) : Optional.empty();
    }

    /** A boat whose attitude is known; others are not looked for. */
    static Flotation resting(Condition condition, Optional<Equilibrium> settled) {
        return of(condition, settled, settled.stream().toList());
    }

    private static Flotation of(Condition condition, Optional<Equilibrium> settled, List<Equilibrium> attitudes) {
        return new Flotation(
                condition,
                settled,
                attitudes,
                settled.flatMap(e -> condition.boat().paintedLine().map(line -> PaintedOffset.of(line, e.plane()))),
                Submerged.of(condition));
    }

    /** Whether all that can be under water displaces more than she weighs. */
    static boolean floats(Condition condition) {
        return condition.reserveG() > 0;
    }

    /** What all immersible volume could still carry, g; negative by the deficit when she sinks. */
    public double reserveG() {
        return condition.reserveG();
    }

    /** Wetted area of the hull parts, mm². */
    public double wettedMm2() {
        return condition.wettedMm2(settled.orElseThrow().plane());
    }

    /** Weight that puts her 1 mm deeper, g/mm. */
    public double gramsPerMmImmersion() {
        return condition.densityGPerMm3() * settled.orElseThrow().sums().waterplaneMm2();
    }

    /** Moment that lists her by one degree, g·mm. */
    public double gmmPerDegreeList() {
        Equilibrium e = settled.orElseThrow();
        return Math.toRadians(e.massG() * e.gmTransverseMm());
    }

    /** Moment that trims her by one degree, g·mm. */
    public double gmmPerDegreeTrim() {
        Equilibrium e = settled.orElseThrow();
        return Math.toRadians(e.massG() * e.gmLongitudinalMm());
    }
}
