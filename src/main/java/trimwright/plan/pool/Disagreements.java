package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import trimwright.boat.Boat;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.plan.pool.PoolEstimate.Compared;
import trimwright.statics.Condition;

/**
 * Which readings do not fit, and what may be wrong with them. A reading that is far off drags others along; so each suspect is left out in turn, and where all else
 * then fits together it is named alone, with what the others say in its stead.
 */
final class Disagreements {

    /** Studentised residual from which a reading is suspect. */
    private static final double OUTLIER = 3;
    /** Chance below which readings contradict each other or the file. */
    static final double CONTRADICTION = 0.01;
    /** Suspects that are left out in turn; each takes a fit of its own. */
    private static final int SUSPECTS = 3;
    /** Standard deviations within which a reading fits if it was meant otherwise. */
    private static final double FITS = 2.5;
    /** A list and a trim that boats in a test seldom show (common practice, no source). */
    private static final double LARGE_LIST_DEG = 20;

    private static final double LARGE_TRIM_DEG = 10;

    private final Boat boat;
    private final List<Unknown> unknowns;
    private final List<Reading> readings;
    private final List<Compared> sightings;
    private final List<Finding> findings = new ArrayList<>();

    private Disagreements(Boat boat, List<Unknown> unknowns, List<Reading> readings, List<Compared> sightings) {
        this.boat = boat;
        this.unknowns = unknowns;
        this.readings = readings;
        this.sightings = sightings;
    }

    static List<Finding> of(
            Boat boat, List<Unknown> unknowns, List<Reading> readings, Fit fit, List<Compared> sightings) {
        Disagreements d = new Disagreements(boat, unknowns, readings, sightings);
        if (!fit.settled()) {
            d.findings.add(Finding.of(Code.POOL_NOT_SETTLED, new Place.Whole()));
        }
        d.addTogether(fit);
        d.addOutliers();
        d.addLargeAngles();
        return d.findings;
    }

    /** How often chance alone brings as much as this. */
    static double chance(double chiSquare, int count) {
        return 1 - new ChiSquaredDistribution(count).cumulativeProbability(chiSquare);
    }

    private void addTogether(Fit fit) {
        int count = sightings.size();
        double chance = chance(fit.chiSquare(), count);
        if (chance < CONTRADICTION) {
            // Readings that fit each other with a boat far from the file's tell of the file, not of a misread number.
            boolean amongThemselves = chance(fit.ofReadings(), count) < CONTRADICTION;
            findings.add(Finding.of(
                    amongThemselves ? Code.POOL_CONTRADICTION : Code.POOL_FILE_OFF,
                    new Place.Whole(),
                    "chiSquare",
                    rounded(fit.chiSquare(), 10),
                    "count",
                    count,
                    "chancePercent",
                    100 * chance,
                    "limit",
                    rounded(new ChiSquaredDistribution(count).inverseCumulativeProbability(1 - CONTRADICTION), 10)));
        }
    }

    private void addOutliers() {
        List<Compared> suspects = sightings.stream()
                .filter(c -> Math.abs(c.timesItsError()) > OUTLIER)
                .sorted(Comparator.comparingDouble((Compared c) -> -Math.abs(c.timesItsError())))
                .toList();
        for (Compared suspect : suspects.subList(0, Math.min(SUSPECTS, suspects.size()))) {
            Optional<Others> others = without(suspect);
            if (others.isPresent() && agrees(others.get().fit())) {
                addAlone(suspect, others.get());
                return;
            }
        }
        suspects.forEach(s -> findings.add(outlier(s, Optional.empty())));
        List<Compared> together = suspects.stream()
                .filter(s -> s.reading().equals(suspects.get(0).reading()))
                .toList();
        if (together.size() > 1) {
            addMixedUpAlike(together);
        }
    }

    /** Several numbers of one reading that would all fit if they were meant in one other way, as bow and stern interchanged. */
    private void addMixedUpAlike(List<Compared> suspects) {
        Reading reading = readings.stream()
                .filter(r -> r.id().equals(suspects.get(0).reading()))
                .findFirst()
                .orElseThrow();
        Condition condition = Scene.of(boat, reading);
        for (MixUp how : MixUp.values()) {
            List<Sighting> seen = new ArrayList<>(reading.seen());
            int meant = 0;
            for (Compared suspect : suspects) {
                for (MixUp.Meant other : MixUp.of(suspect.sighting(), condition)) {
                    if (other.how() == how) {
                        seen.replaceAll(s -> s == suspect.sighting() ? other.sighting() : s);
                        meant++;
                    }
                }
            }
            List<Reading> otherwise = readings.stream()
                    .map(r -> r == reading ? r.withSeen(seen) : r)
                    .toList();
            if (meant == suspects.size()
                    && fit(otherwise).filter(Disagreements::agrees).isPresent()) {
                suspects.forEach(s -> findings.add(mixedUp(s, how)));
            }
        }
    }

    private static boolean agrees(Fit fit) {
        int count = fit.residuals().length;
        return fit.settled() && (count == 0 || chance(fit.chiSquare(), count) >= CONTRADICTION);
    }

    private Optional<Fit> fit(List<Reading> other) {
        try {
            return Optional.of(Fit.of(boat, unknowns, other));
        } catch (UnusableInputException e) {
            return Optional.empty();
        }
    }

    /** What all other readings say of one that is left out: its value and standard deviation. */
    private record Others(Fit fit, Boat corrected, Reading alone) {}

    private Optional<Others> without(Compared suspect) {
        List<Reading> left = new ArrayList<>();
        Reading alone = null;
        for (Reading reading : readings) {
            if (!reading.id().equals(suspect.reading())) {
                left.add(reading);
                continue;
            }
            List<Sighting> seen = new ArrayList<>(reading.seen());
            // By identity: the same thing may have been read twice.
            seen.removeIf(s -> s == suspect.sighting());
            alone = reading.withSeen(List.of(suspect.sighting()));
            if (!seen.isEmpty()) {
                left.add(reading.withSeen(seen));
            }
        }
        Reading there = alone;
        return fit(left).map(fit -> new Others(fit, Corrections.applied(boat, unknowns, fit.errors()), there));
    }

    private void addAlone(Compared suspect, Others others) {
        Optional<Sensitivity> there = Sensitivity.of(others.corrected(), others.alone());
        findings.add(outlier(suspect, there.flatMap(t -> Expectation.inItsUnit(suspect.sighting(), t.expected()[0]))));
        if (there.isEmpty()) {
            return;
        }
        Posterior posterior = Posterior.of(others.fit().slopes(), unknowns.size());
        Condition condition = Scene.of(others.corrected(), others.alone());
        for (MixUp.Meant meant : MixUp.of(suspect.sighting(), condition)) {
            Reading otherwise = others.alone().withSeen(List.of(meant.sighting()));
            Optional<Sensitivity> so = Sensitivity.of(others.corrected(), otherwise);
            if (so.isPresent() && fits(so.get(), meant.sighting(), posterior)) {
                findings.add(mixedUp(suspect, meant.how()));
            }
        }
    }

    private static Finding mixedUp(Compared suspect, MixUp how) {
        return Finding.of(
                Code.POOL_MIXED_UP,
                new Place.Whole(),
                "reading",
                suspect.reading(),
                "quantity",
                suspect.sighting().quantity().key(),
                "found",
                suspect.sighting().value(),
                "meant",
                how);
    }

    private boolean fits(Sensitivity there, Sighting meant, Posterior posterior) {
        double error = Expectation.error(meant);
        double own = posterior.variance(there.slopes(unknowns)[0]);
        return Math.abs(Expectation.seen(meant) - there.expected()[0]) < FITS * Math.sqrt(error * error + own);
    }

    private static Finding outlier(Compared suspect, Optional<Double> others) {
        String unit = suspect.sighting().quantity().errorKey().replace("plusMinus", "");
        return Finding.of(
                others.isPresent() ? Code.POOL_OUTLIER : Code.POOL_SUSPECT,
                new Place.Whole(),
                "reading",
                suspect.reading(),
                "quantity",
                suspect.sighting().quantity().key(),
                "times",
                rounded(Math.abs(suspect.timesItsError()), 10),
                "found",
                suspect.sighting().value(),
                "found" + unit,
                suspect.sighting().value(),
                "others" + unit,
                others.<Object>map(v -> rounded(v, 100)).orElse(""));
    }

    private void addLargeAngles() {
        for (Compared c : sightings) {
            double value = Math.abs(c.sighting().value());
            boolean list = c.sighting().quantity() == Quantity.LIST && value >= LARGE_LIST_DEG;
            boolean trim = c.sighting().quantity() == Quantity.TRIM && value >= LARGE_TRIM_DEG;
            if (list || trim) {
                findings.add(Finding.of(
                        Code.POOL_LARGE_ANGLE,
                        new Place.Whole(),
                        "reading",
                        c.reading(),
                        "quantity",
                        c.sighting().quantity().key(),
                        "foundDeg",
                        c.sighting().value()));
            }
        }
    }

    private static double rounded(double value, double parts) {
        return Math.rint(parts * value) / parts;
    }
}
