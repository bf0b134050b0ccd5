package trimwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The plan as a linear programme (docs/statics.md, the ballast plan): at the two wanted attitudes everything that is chosen acts in proportion
 * to its amount, so that floating on the line, diving level and standing up are rows.
 */
final class PlanModel {

    /** GM or BG, mm, by which degrees are turned into moments where none is wanted: a boat with less has no attitude of her own. */
    private static final double SOFTEST_MM = 1;
    /** Share of a tolerance that counts as rounding. */
    private static final double NOTHING = 1e-9;
    /** Grams of cost for missing an aim by its whole tolerance: far above what any plan adds. */
    private static final double MISS_COST = 1e4;
    /** How many times dearer it is to be off the painted line: what cannot be had together is looked for in the dive first. */
    private static final double LINE_FIRST = 30;

    /** Weight of what decides only between answers that are otherwise alike. */
    private static final double TRACE = 1e-6;

    private final PlanBasis basis;
    private final List<Choice> choices;
    private final List<Unknown> unknowns;
    private final List<Cap> caps;
    private final Effects effects;
    private final double stiffnessTrim;
    private final double stiffnessList;
    private final Map<Aim, Double> shift = new EnumMap<>(Aim.class);

    /** How strictly the aims are held: a share of each tolerance, the rest being kept for cutting and placing. */
    enum Hold {
        /** On the line exactly: not zero, so that rounding in a row that nothing acts on does no harm. */
        EXACT(1e-3, 0.5),
        /** Within half of what is allowed. */
        BAND(0.5, 0.5),
        /** Within all but a little of what is allowed, each end of the line for itself. */
        WIDE(0.95, 0.95);

        private final double surfacedShare;
        private final double divedShare;

        Hold(double surfacedShare, double divedShare) {
            this.surfacedShare = surfacedShare;
            this.divedShare = divedShare;
        }
    }

    /**
     * A limit on a weighted sum of the unknowns.
     *
     * @param name what it stands for
     * @param weights one per unknown
     */
    @SuppressWarnings("ArrayRecordComponent") // one weight per unknown of a programme; never compared
    record Cap(String name, double[] weights, double most) {}

    PlanModel(PlanBasis basis, List<Choice> choices, List<Cap> caps) {
        this.basis = basis;
        this.choices = List.copyOf(choices);
        this.unknowns = choices.stream().map(Choice::unknown).toList();
        this.caps = List.copyOf(caps);
        effects = new Effects(basis);
        double weight = basis.boat.massG();
        stiffnessTrim = Math.toRadians(basis.density * basis.inertiaAheadMm4);
        stiffnessList = Math.toRadians(weight * Math.max(SOFTEST_MM, basis.wanted.gmMm()));
    }

    List<Choice> choices() {
        return choices;
    }

    boolean dives() {
        return basis.dives;
    }

    /** Mass of lead and foam that an answer adds, g. */
    double addedG(double[] x) {
        double sum = 0;
        for (int i = 0; i < choices.size(); i++) {
            sum += choices.get(i).grams() * x[i];
        }
        return sum;
    }

    List<Cap> caps() {
        return caps;
    }

    /**
     * Corrects an aim by what floating an earlier outcome showed: the model is a first-order one, the boat is not.
     *
     * @param aim which
     * @param amount how much more is asked for, in the unit of the aim
     */
    void correct(Aim aim, double amount) {
        shift.merge(aim, amount, Double::sum);
    }

    private double correction(Aim aim) {
        return shift.getOrDefault(aim, 0.0);
    }

    /** The programme for a goal. */
    LinearProgramme programme(Hold hold, Goal goal) {
        double[] cost = new double[unknowns.size()];
        for (int i = 0; i < cost.length; i++) {
            Unknown u = unknowns.get(i);
            // A trace of the mass keeps the firmest plan from adding what brings nothing; a trace of firmness puts the
            // same mass where it does
            // most good.
            cost[i] = goal.firmest()
                    ? TRACE * u.costPerUnit() - uprighting(u.perUnit())
                    : u.costPerUnit() - TRACE * uprighting(u.perUnit());
        }
        LinearProgramme programme = new LinearProgramme(cost, most());
        addRows(programme, hold, unknowns.size(), List.of(), EnumSet.allOf(Aim.class));
        return programme;
    }

    /** A programme that asks for some aims and nothing else: whether they can be met at all. */
    LinearProgramme holding(Set<Aim> aims) {
        LinearProgramme programme = new LinearProgramme(new double[unknowns.size()], most());
        addRows(programme, Hold.WIDE, unknowns.size(), List.of(), aims);
        return programme;
    }

    private double uprighting(Influence i) {
        return basis.dives ? effects.uprightingDived(i) : effects.uprightingSurfaced(i);
    }

    /** BG dived and GM surfaced with these amounts, mm. */
    record Stability(double bgMm, double gmMm) {}

    Stability stability(double[] x) {
        Influence sum = basis.boat;
        for (int i = 0; i < unknowns.size(); i++) {
            sum = sum.plus(unknowns.get(i).perUnit().times(x[i]));
        }
        return new Stability(
                effects.uprightingDived(sum) / (sum.massG() + sum.tankG()),
                (effects.uprightingSurfaced(sum) + basis.density * basis.inertiaPortMm4) / sum.massG());
    }

    /** The elastic programme: every aim named may give way at a price. With all of them it always has an answer. */
    LinearProgramme elastic(Set<Aim> yielding) {
        List<Slack> slacks = slacks(yielding);
        int n = unknowns.size();
        double[] cost = new double[n + slacks.size()];
        double[] most = new double[cost.length];
        for (int i = 0; i < n; i++) {
            cost[i] = unknowns.get(i).costPerUnit();
            most[i] = unknowns.get(i).most();
        }
        for (int k = 0; k < slacks.size(); k++) {
            Aim aim = slacks.get(k).aim();
            boolean surfaced = aim == Aim.LINE || aim == Aim.TRIM || aim == Aim.LIST;
            cost[n + k] = (surfaced ? LINE_FIRST : 1) * MISS_COST / tolerance(aim);
            most[n + k] = Double.POSITIVE_INFINITY;
        }
        LinearProgramme programme = new LinearProgramme(cost, most);
        addRows(programme, Hold.WIDE, n, slacks, EnumSet.allOf(Aim.class));
        return programme;
    }

    /** Which aims an answer of the elastic programme misses, and by how much. */
    List<Miss> misses(double[] x, Set<Aim> yielding) {
        List<Slack> slacks = slacks(yielding);
        List<Miss> misses = new ArrayList<>();
        for (int k = 0; k < slacks.size(); k++) {
            Slack slack = slacks.get(k);
            double amount = x[unknowns.size() + k];
            if (amount > 1e-3 * tolerance(slack.aim())) {
                misses.add(new Miss(slack.aim(), missed(slack, amount, x)));
            }
        }
        return misses;
    }

    private double missed(Slack slack, double amount, double[] x) {
        return switch (slack.aim()) {
            // Too little force at the line means that she lies too deep, which counts as positive.
            case LINE -> -slack.sign() * amount;
            // Rows of BG and GM are in moments, and their slack is told for her weight as she is: lead and foam change
            // that.
            case BG -> stability(x).bgMm() - basis.wanted.bgMm() - correction(Aim.BG);
            case GM -> stability(x).gmMm() - basis.wanted.gmMm() - correction(Aim.GM);
            default -> slack.sign() * amount;
        };
    }

    /** One direction in which an aim may give way. */
    private record Slack(Aim aim, int sign) {}

    private List<Slack> slacks(Set<Aim> yielding) {
        List<Slack> slacks = new ArrayList<>();
        for (Aim aim : Aim.values()) {
            if (!yielding.contains(aim) || (!basis.dives && aim.isDived())) {
                continue;
            }
            slacks.add(new Slack(aim, -1));
            if (aim != Aim.BG && aim != Aim.GM) {
                slacks.add(new Slack(aim, 1));
            }
        }
        return slacks;
    }

    /** How much of an aim a builder would let pass, in its unit. */
    double tolerance(Aim aim) {
        Wanted w = basis.wanted;
        return switch (aim) {
            case LINE -> w.offLineMm();
            case TRIM -> trimToleranceDeg();
            case LIST -> w.listDeg();
            case RESIDUAL ->
                Math.max(1, 0.5 * (w.residualG().greatest() - w.residualG().least()));
            case DIVED_TRIM, DIVED_LIST -> w.divedTrimDeg();
            case BG -> Math.max(1, w.bgMm() * 0.25);
            default -> Math.max(1, w.gmMm() * 0.25);
        };
    }

    /** The trim that puts the ends of the painted line off it by the tolerance. */
    private double trimToleranceDeg() {
        return Math.toDegrees(2 * basis.wanted.offLineMm() / basis.foreMm.distance(basis.aftMm));
    }

    private double[] most() {
        return unknowns.stream().mapToDouble(Unknown::most).toArray();
    }

    private void addRows(LinearProgramme programme, Hold hold, int n, List<Slack> slacks, Set<Aim> aims) {
        RowWriter rows = new RowWriter(programme, n, slacks, aims);
        for (Cap cap : caps) {
            programme.row(
                    cap.name(),
                    Arrays.copyOf(cap.weights(), n + slacks.size()),
                    LinearProgramme.Sense.AT_MOST,
                    cap.most());
        }
        double share = hold.surfacedShare;
        Wanted w = basis.wanted;
        double perMm = basis.density * basis.waterplaneMm2;
        rows.band(Aim.LINE, effects::force, perMm, correction(Aim.LINE), share * w.offLineMm());
        rows.band(Aim.TRIM, effects::trim, stiffnessTrim, correction(Aim.TRIM), share * trimToleranceDeg());
        if (hold == Hold.WIDE && aims.contains(Aim.LINE) && aims.contains(Aim.TRIM)) {
            rows.end(basis.foreMm, share * w.offLineMm());
            rows.end(basis.aftMm, share * w.offLineMm());
        }
        rows.band(Aim.LIST, effects::list, stiffnessList, correction(Aim.LIST), share * w.listDeg());
        double gm = w.gmMm() + correction(Aim.GM);
        rows.least(
                Aim.GM,
                i -> effects.uprightingSurfaced(i) - gm * i.massG(),
                basis.boat.massG(),
                -basis.density * basis.inertiaPortMm4);
        if (!basis.dives) {
            return;
        }
        double margin = (hold == Hold.WIDE ? 0.02 : 0.1)
                * (w.residualG().greatest() - w.residualG().least());
        rows.least(Aim.RESIDUAL, effects::residual, 1, w.residualG().least() + margin + correction(Aim.RESIDUAL));
        rows.most(Aim.RESIDUAL, effects::residual, 1, w.residualG().greatest() - margin + correction(Aim.RESIDUAL));
        double bg = w.bgMm() + correction(Aim.BG);
        double wet = basis.boat.massG() + basis.boat.tankG();
        rows.least(Aim.BG, i -> effects.uprightingDived(i) - bg * (i.massG() + i.tankG()), wet, 0);
        double softest = Math.toRadians(wet * Math.max(SOFTEST_MM, w.bgMm()));
        rows.band(
                Aim.DIVED_TRIM,
                effects::divedTrim,
                softest,
                correction(Aim.DIVED_TRIM),
                hold.divedShare * w.divedTrimDeg());
        rows.band(
                Aim.DIVED_LIST,
                effects::divedList,
                softest,
                correction(Aim.DIVED_LIST),
                hold.divedShare * divedListDeg(hold));
    }

    /** As upright dived as surfaced, unless only all that is allowed will do. */
    private double divedListDeg(Hold hold) {
        Wanted w = basis.wanted;
        return hold == Hold.WIDE ? w.divedTrimDeg() : Math.min(w.listDeg(), w.divedTrimDeg());
    }

    /** Writes rows: what the unknowns add, plus what the boat has, compared with a bound; slack in the unit of the aim. */
    private final class RowWriter {

        private final LinearProgramme programme;
        private final int n;
        private final List<Slack> slacks;
        private final Set<Aim> aims;

        RowWriter(LinearProgramme programme, int n, List<Slack> slacks, Set<Aim> aims) {
            this.programme = programme;
            this.n = n;
            this.slacks = slacks;
            this.aims = aims;
        }

        /** Held to the middle, within ± the width, both in the unit of the aim; {@code perUnit} of the row is one unit. */
        void band(Aim aim, Effect effect, double perUnit, double middle, double width) {
            row(aim, effect, perUnit, LinearProgramme.Sense.AT_LEAST, (middle - width) * perUnit);
            row(aim, effect, perUnit, LinearProgramme.Sense.AT_MOST, (middle + width) * perUnit);
        }

        /**
         * The water at one end of the line held within ± the width, mm: force puts her up, trim lifts that end by its distance from the
         * centre of flotation.
         */
        void end(Vector3D end, double width) {
            double perMm = basis.density * basis.waterplaneMm2;
            double aheadMm = end.getX() - basis.surfacedCentre.getX();
            double lift = Math.toRadians(aheadMm) * perMm / stiffnessTrim;
            Effect effect = i -> effects.force(i) + lift * effects.trim(i);
            double middle = correction(Aim.LINE) * perMm + lift * correction(Aim.TRIM) * stiffnessTrim;
            Map<Aim, Double> perUnit = Map.of(Aim.LINE, perMm, Aim.TRIM, lift * stiffnessTrim);
            row(Aim.LINE, effect, perUnit, LinearProgramme.Sense.AT_LEAST, middle - width * perMm);
            row(Aim.LINE, effect, perUnit, LinearProgramme.Sense.AT_MOST, middle + width * perMm);
        }

        void least(Aim aim, Effect effect, double perUnit, double bound) {
            row(aim, effect, perUnit, LinearProgramme.Sense.AT_LEAST, bound);
        }

        void most(Aim aim, Effect effect, double perUnit, double bound) {
            row(aim, effect, perUnit, LinearProgramme.Sense.AT_MOST, bound);
        }

        private void row(Aim aim, Effect effect, double perUnit, LinearProgramme.Sense sense, double bound) {
            row(aim, effect, Map.of(aim, perUnit), sense, bound);
        }

        /** @param perUnit what one unit of each aim is worth in the row */
        private void row(Aim aim, Effect effect, Map<Aim, Double> perUnit, LinearProgramme.Sense sense, double bound) {
            if (!aims.contains(aim)) {
                return;
            }
            double[] coefficients = new double[n + slacks.size()];
            double rounding = NOTHING * tolerance(aim) * Math.abs(perUnit.get(aim));
            for (int i = 0; i < n; i++) {
                double one = effect.of(unknowns.get(i).perUnit());
                // What even the whole amount moves by less than rounding would only spoil the scale of the row.
                coefficients[i] = Math.abs(one) * unknowns.get(i).most() < rounding ? 0 : one;
            }
            for (int k = 0; k < slacks.size(); k++) {
                // Missed on the low side, the slack fills up what is wanting; on the high side it takes off.
                coefficients[n + k] = -slacks.get(k).sign()
                        * perUnit.getOrDefault(slacks.get(k).aim(), 0.0);
            }
            programme.row(aim.key(), coefficients, sense, bound - effect.of(basis.boat));
        }
    }

    /** What something adds to a row, in the row's own unit. */
    private interface Effect {
        double of(Influence influence);
    }
}
