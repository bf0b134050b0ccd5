package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.boat.pool.WeightMoved;
import trimwright.statics.Condition;

/**
 * A reading that could be taken next.
 *
 * @param kind what to do
 * @param massG the weight that it takes; 0 for none
 * @param wayMm the way by which it is moved; 0 for none
 * @param effort how much trouble it is, 1 for a look at the boat
 * @param gain share of what is still unknown that it would settle, 0…1
 */
public record NextReading(Kind kind, double massG, double wayMm, double effort, double gain) {

    /** What to do. */
    public enum Kind {
        LINE_SURFACED,
        LIST_SURFACED,
        WEIGHT_MOVED_ACROSS,
        LINE_DIVED,
        WEIGHED_DIVED,
        ROLL_TIMED
    }

    /**
     * How well each figure should be known where the boat's targets say nothing: mm, °, g (common practice, no source). In the order of
     * the figures: sums over it must be the same bits in every run.
     */
    static final Map<Figure, Double> WANTED = new EnumMap<>(Map.of(
            Figure.BOW,
            0.5,
            Figure.STERN,
            0.5,
            Figure.LIST,
            0.3,
            Figure.BG_DIVED,
            0.5,
            Figure.TRIM_DIVED,
            1.0,
            Figure.RESIDUAL,
            5.0));

    private record Candidate(Kind kind, double massG, double wayMm, double effort, Reading reading) {}

    /**
     * What would tell most for its trouble, the best first.
     *
     * @param known slopes of the readings there are, over their errors
     * @param figures slopes of all figures
     */
    static List<NextReading> of(Boat boat, List<Unknown> unknowns, double[][] known, double[][] figures) {
        double before = open(figures, Posterior.of(known, unknowns.size()));
        List<NextReading> next = new ArrayList<>();
        for (Candidate candidate : candidates(boat)) {
            rows(boat, candidate.reading(), unknowns).ifPresent(rows -> {
                double[][] more = Arrays.copyOf(known, known.length + rows.length);
                System.arraycopy(rows, 0, more, known.length, rows.length);
                double gain = before > 0 ? 1 - open(figures, Posterior.of(more, unknowns.size())) / before : 0;
                next.add(new NextReading(
                        candidate.kind(), candidate.massG(), candidate.wayMm(), candidate.effort(), gain));
            });
        }
        next.sort(Comparator.comparingDouble((NextReading n) -> n.gain() / n.effort())
                .reversed());
        return next;
    }

    /** What is still open, each figure measured by how well it should be known. */
    private static double open(double[][] slopes, Posterior posterior) {
        double sum = 0;
        for (Map.Entry<Figure, Double> wanted : WANTED.entrySet()) {
            sum += posterior.variance(slopes[wanted.getKey().ordinal()]) / (wanted.getValue() * wanted.getValue());
        }
        return sum;
    }

    /** The rows that a reading would add; empty where nothing of the kind can be read of this boat. */
    private static Optional<double[][]> rows(Boat boat, Reading reading, List<Unknown> unknowns) {
        Optional<Sensitivity> there = Sensitivity.of(boat, reading);
        if (there.isEmpty()) {
            return Optional.empty();
        }
        double[][] rows = there.get().slopes(unknowns);
        for (int i = 0; i < rows.length; i++) {
            double error = Expectation.error(reading.seen().get(i));
            for (int k = 0; k < rows[i].length; k++) {
                rows[i][k] /= error;
                if (Double.isNaN(rows[i][k])) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(rows);
    }

    private static List<Candidate> candidates(Boat boat) {
        Condition condition = Condition.of(boat);
        Map<String, Double> empty = new HashMap<>();
        Map<String, Double> full = new HashMap<>();
        boat.parts().stream().filter(Part::isTank).map(Part::id).forEach(id -> {
            empty.put(id, 0.0);
            full.put(id, 1.0);
        });
        List<Candidate> all = new ArrayList<>();
        List<Sighting> line = line(boat);
        if (!line.isEmpty()) {
            all.add(new Candidate(Kind.LINE_SURFACED, 0, 0, 1, reading(empty, List.of(), List.of(), line)));
        }
        List<Sighting> list = List.of(sighting(Quantity.LIST, 0, Optional.empty()));
        all.add(new Candidate(Kind.LIST_SURFACED, 0, 0, 1, reading(empty, List.of(), List.of(), list)));
        double mass = Math.max(5, 5 * Math.rint(0.02 * condition.dryMassG() / 5));
        double way = Math.rint(0.3 * condition.beamMm());
        WeightMoved across = new WeightMoved(mass, new Vector3D(0, -way, 0));
        all.add(new Candidate(
                Kind.WEIGHT_MOVED_ACROSS, mass, way, 2, reading(empty, List.of(), List.of(across), list)));
        all.add(new Candidate(
                Kind.ROLL_TIMED,
                0,
                0,
                1,
                reading(empty, List.of(), List.of(), List.of(sighting(Quantity.ROLL, 1, Optional.empty())))));
        if (!full.isEmpty()) {
            if (!line.isEmpty()) {
                all.add(new Candidate(Kind.LINE_DIVED, 0, 0, 2, reading(full, List.of(), List.of(), line)));
            }
            Condition dived = condition.withAllTanksAt(1);
            double sinker = 10 * Math.ceil(Math.max(0, dived.reserveG()) / 10) + 20;
            KnownWeight weight = new KnownWeight(sinker, condition.volumeCentroidMm(), Optional.empty());
            all.add(new Candidate(
                    Kind.WEIGHED_DIVED,
                    sinker,
                    0,
                    3,
                    reading(
                            full,
                            List.of(weight),
                            List.of(),
                            List.of(sighting(Quantity.HANGING, 20, Optional.empty())))));
        }
        return all;
    }

    private static List<Sighting> line(Boat boat) {
        return boat.paintedLine()
                .map(line -> List.of(
                        sighting(Quantity.WATER_ABOVE, 0, Optional.of(line.foremostMm())),
                        sighting(Quantity.WATER_ABOVE, 0, Optional.of(line.aftmostMm()))))
                .orElse(List.of());
    }

    private static Sighting sighting(Quantity quantity, double value, Optional<Vector3D> at) {
        return new Sighting(quantity, value, quantity.usualError(), at);
    }

    private static Reading reading(
            Map<String, Double> fills, List<KnownWeight> added, List<WeightMoved> moved, List<Sighting> seen) {
        return new Reading("next", fills, Optional.empty(), added, moved, seen);
    }
}
