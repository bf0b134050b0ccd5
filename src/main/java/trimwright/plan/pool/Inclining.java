package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import trimwright.boat.Boat;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.boat.pool.WeightMoved;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/**
 * The classic inclining test: a known weight w moved across by d lists her by φ, and w d = W GM tan φ. A straight line through the moments over tan φ gives
 * W GM as its slope, whatever list she had at first.
 *
 * @param readings how many lists were read
 * @param gmMm transverse metacentric height
 * @param gmErrorMm its standard deviation, from the scatter about the line
 * @param kgMm height of G above z = 0 of the boat, by the height of M that the boat's shape gives at her weight
 */
public record Inclining(int readings, double gmMm, double gmErrorMm, double kgMm) {

    /** Standard deviation of KG: that of GM, since the height of M follows from the shape, which is taken as it is. */
    public double kgErrorMm() {
        return gmErrorMm;
    }

    /** A line through fewer points has no scatter to tell its error from. */
    private static final int FEWEST = 3;

    /**
     * The largest set of readings that differ in nothing but weights moved across.
     *
     * @param boat the boat, whose weight and shape count
     * @return empty where there are fewer than three different ones
     */
    static Optional<Inclining> of(Boat boat, List<Reading> readings) {
        List<Reading> best = List.of();
        for (Reading first : readings) {
            List<Reading> same =
                    readings.stream().filter(r -> isOneSet(first, r)).toList();
            best = same.size() > best.size() ? same : best;
        }
        long different =
                best.stream().mapToDouble(Inclining::momentGmm).distinct().count();
        return different < FEWEST ? Optional.empty() : of(boat, best, best.get(0));
    }

    private static Optional<Inclining> of(Boat boat, List<Reading> readings, Reading one) {
        SimpleRegression line = new SimpleRegression();
        for (Reading reading : readings) {
            line.addData(Math.tan(Math.toRadians(list(reading).orElseThrow())), momentGmm(reading));
        }
        Reading atRest = new Reading(one.id(), one.fills(), one.water(), one.added(), List.of(), one.seen());
        Condition condition = Scene.of(boat, atRest);
        Optional<Equilibrium> rest = Flotation.settling(condition).settled();
        if (rest.isEmpty()) {
            return Optional.empty();
        }
        double weight = condition.massG();
        double gm = line.getSlope() / weight;
        Equilibrium e = rest.get();
        double kmMm = e.centreOfGravityMm().getZ() + e.gmTransverseMm();
        return Optional.of(new Inclining(readings.size(), gm, line.getSlopeStdErr() / weight, kmMm - gm));
    }

    private static boolean isOneSet(Reading a, Reading b) {
        return list(b).isPresent()
                && a.fills().equals(b.fills())
                && a.water().equals(b.water())
                && a.added().equals(b.added())
                && b.moved().stream().allMatch(Inclining::isAcross);
    }

    private static boolean isAcross(WeightMoved weight) {
        Vector3D by = weight.byMm();
        return by.getX() == 0 && by.getZ() == 0;
    }

    /** Moment that lists her to starboard, g·mm. */
    private static double momentGmm(Reading reading) {
        return reading.moved().stream()
                .mapToDouble(w -> -w.massG() * w.byMm().getY())
                .sum();
    }

    private static Optional<Double> list(Reading reading) {
        List<Double> lists = new ArrayList<>();
        for (Sighting sighting : reading.seen()) {
            if (sighting.quantity() == Quantity.LIST) {
                lists.add(sighting.value());
            }
        }
        return lists.stream().findFirst();
    }
}
