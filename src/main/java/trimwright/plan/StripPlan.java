package trimwright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.Zone;
import trimwright.statics.PaintedOffset;

/**
 * The second programme of a plan: amounts and places of a few strips. Sizes are rounded to what can be cut and cast, then the places are solved again;
 * places are rounded one after the other, the strip that turns her most first, so that the lighter ones take up what is left.
 */
final class StripPlan {

    /** Lead is weighed to this, g; foam cut to this length and everything placed to this, mm. */
    private static final double LEAD_STEP_G = 1;

    private static final double LENGTH_STEP_MM = 1;
    /** Cost of moving a strip, per gram and mm: keeps places where the first programme had them unless it matters. */
    private static final double MOVE_COST = 1e-4;

    private static final int SIZE_PASSES = 3;

    private final PlanBasis basis;
    private final List<Strip> strips;
    private final List<Loose> loose;
    private final PlanRequest request;
    private final Map<Aim, Double> learned = new EnumMap<>(Aim.class);
    private List<Loose.Changed> changed = List.of();
    private List<Miss> misses = List.of();

    StripPlan(PlanBasis basis, List<Strip> strips, List<Loose> loose, PlanRequest request) {
        this.basis = basis;
        this.strips = strips;
        this.loose = loose.stream().map(l -> l.within(strips)).toList();
        this.request = request;
    }

    List<Miss> misses() {
        return misses;
    }

    /** What becomes of the loose parts. */
    List<Loose.Changed> changed() {
        return changed;
    }

    double massG(Zone.Use use) {
        return strips.stream()
                .filter(s -> s.use == use)
                .mapToDouble(Strip::massG)
                .sum();
    }

    double volumeMm3(Zone.Use use) {
        return strips.stream()
                .filter(s -> s.use == use)
                .mapToDouble(Strip::volumeMm3)
                .sum();
    }

    /** Sizes, places, rounding; false when the strips cannot meet the aims together. */
    boolean solve() {
        for (int pass = 0; pass < SIZE_PASSES; pass++) {
            if (!solveSizes()) {
                return false;
            }
        }
        roundSizes();
        return solvePlaces();
    }

    /**
     * Amounts and shifts of all strips together, about their present places. Amounts are counted from what is there now, more and less being
     * unknowns of their own, so that strips keep what the first programme gave them unless it matters.
     */
    private boolean solveSizes() {
        List<Handle> handles = Handle.of(strips);
        List<Choice> choices = new ArrayList<>();
        for (Handle h : handles) {
            choices.add(amount(h));
        }
        for (Handle h : handles) {
            addShifts(choices, h);
        }
        loose.forEach(l -> choices.addAll(l.choices()));
        List<PlanModel.Cap> caps = PlanLimits.of(request, choices);
        caps.addAll(runCaps(handles, choices.size()));
        caps.addAll(looseCaps(3 * handles.size(), choices.size()));
        LinearProgramme.Solution solution = solved(new PlanModel(basis, choices, caps), request.goal(), true);
        if (solution == null) {
            return false;
        }
        double[] x = solution.x();
        for (Strip s : strips) {
            double volume = 0;
            double moment = 0;
            for (int k = 0; k < handles.size(); k++) {
                if (handles.get(k).strips().contains(s)) {
                    volume += x[k];
                    moment += x[handles.size() + 2 * k] - x[handles.size() + 2 * k + 1];
                }
            }
            s.put(volume, volume > 0 ? s.centreXMm() + moment / volume : s.centreXMm());
        }
        List<Loose.Changed> now = new ArrayList<>();
        int next = 3 * handles.size();
        for (Loose part : loose) {
            now.add(part.changed(x, next));
            next += part.choices().size();
        }
        changed = now;
        return true;
    }

    private List<PlanModel.Cap> looseCaps(int first, int count) {
        List<PlanModel.Cap> caps = new ArrayList<>();
        int next = first;
        for (Loose part : loose) {
            caps.addAll(part.caps(next, count));
            next += part.choices().size();
        }
        return caps;
    }

    /** One mm³ in each strip of the handle. */
    private Choice amount(Handle h) {
        Influence one = Influence.NOTHING;
        List<Choice.Spot> spots = new ArrayList<>();
        double most = Double.POSITIVE_INFINITY;
        for (Strip s : h.strips()) {
            one = one.plus(perMm3(s));
            spots.add(new Choice.Spot(s.zone, s.use, s.twin));
            most = Math.min(most, s.capacityMm3());
        }
        double density = h.strips().get(0).densityGPerMm3();
        Unknown unknown = new Unknown(h.strips().get(0).zone, one, most, h.costFactor() * density * spots.size());
        return new Choice(unknown, spots, density);
    }

    /** Each strip holds no more than its run, and moves no farther than its ends, however it is handled. */
    private List<PlanModel.Cap> runCaps(List<Handle> handles, int unknowns) {
        List<PlanModel.Cap> caps = new ArrayList<>();
        for (Strip s : strips) {
            double[] volume = new double[unknowns];
            double[] ahead = new double[unknowns];
            double[] astern = new double[unknowns];
            int uses = 0;
            for (int k = 0; k < handles.size(); k++) {
                if (handles.get(k).strips().contains(s)) {
                    volume[k] = 1;
                    ahead[handles.size() + 2 * k] = 1;
                    astern[handles.size() + 2 * k + 1] = 1;
                    uses++;
                }
            }
            if (uses > 1) {
                caps.add(new PlanModel.Cap("run", volume, s.capacityMm3()));
                caps.add(new PlanModel.Cap("run", ahead, roomAhead(s) * s.volumeMm3()));
                caps.add(new PlanModel.Cap("run", astern, roomAstern(s) * s.volumeMm3()));
            }
        }
        return caps;
    }

    private static double roomAhead(Strip s) {
        return Math.max(0, s.foremostCentreMm() - s.centreXMm());
    }

    private static double roomAstern(Strip s) {
        return Math.max(0, s.centreXMm() - s.aftmostCentreMm());
    }

    /** One mm³·mm of shift of each strip of the handle, ahead and astern. */
    private void addShifts(List<Choice> choices, Handle h) {
        Influence ahead = Influence.NOTHING;
        double mostAhead = Double.POSITIVE_INFINITY;
        double mostAstern = Double.POSITIVE_INFINITY;
        double cost = 0;
        for (Strip s : h.strips()) {
            ahead = ahead.plus(perMm3(s).whenMoved(Vector3D.PLUS_I));
            mostAhead = Math.min(mostAhead, roomAhead(s) * s.volumeMm3());
            mostAstern = Math.min(mostAstern, roomAstern(s) * s.volumeMm3());
            cost += h.costFactor() * MOVE_COST * Math.abs(s.densityGPerMm3() - 1e-3);
        }
        String name = h.strips().get(0).zone;
        choices.add(Choice.plain(new Unknown(name, ahead, mostAhead, cost)));
        choices.add(Choice.plain(new Unknown(name, ahead.times(-1), mostAstern, cost)));
    }

    private LinearProgramme.Solution solved(PlanModel model, Goal goal, boolean sizes) {
        learned.forEach(model::correct);
        for (PlanModel.Hold hold : PlanModel.Hold.values()) {
            LinearProgramme.Solution solution = model.programme(hold, goal).solve();
            if (solution.isOptimal()) {
                return solution;
            }
        }
        Set<Aim> all = EnumSet.allOf(Aim.class);
        LinearProgramme.Solution elastic = model.elastic(all).solve();
        if (!elastic.isOptimal()) {
            return null;
        }
        misses = model.misses(elastic.x(), all);
        return sizes ? null : elastic;
    }

    private void roundSizes() {
        strips.removeIf(
                s -> s.use == Zone.Use.BALLAST ? s.massG() < LEAD_STEP_G / 2 : s.lengthMm() < LENGTH_STEP_MM / 2);
        for (Strip s : strips) {
            double volume = s.use == Zone.Use.BALLAST
                    ? Math.rint(s.massG() / LEAD_STEP_G) * LEAD_STEP_G / s.densityGPerMm3()
                    : Math.rint(s.lengthMm() / LENGTH_STEP_MM) * LENGTH_STEP_MM * s.sectionMm2();
            double most = s.use == Zone.Use.BALLAST
                    ? s.capacityMm3()
                    : Math.floor(s.capacityMm3() / s.sectionMm2() / LENGTH_STEP_MM + 1e-9)
                            * LENGTH_STEP_MM
                            * s.sectionMm2();
            s.put(Math.min(volume, most), s.centreXMm());
        }
        changed = new ArrayList<>(changed.stream().map(Loose.Changed::sized).toList());
    }

    /** Places with the sizes held; rounded one by one, the rest solved again after each. */
    private boolean solvePlaces() {
        List<Handle> handles = Handle.of(strips);
        List<Handle> open = new ArrayList<>(handles);
        open.removeIf(h -> h.strips().size() == 1
                && handles.stream()
                        .anyMatch(o -> o.strips().size() == 2 && o.strips().containsAll(h.strips())));
        open.sort(Comparator.comparing(h -> h.strips().get(0), StripMaker.HEAVIEST_FIRST));
        if (!placeLoose(open)) {
            return false;
        }
        while (!open.isEmpty()) {
            if (!solvePlaces(open, List.of())) {
                return false;
            }
            for (Strip s : open.remove(0).strips()) {
                double end = Math.rint((s.centreXMm() - s.lengthMm() / 2) / LENGTH_STEP_MM) * LENGTH_STEP_MM;
                s.put(s.volumeMm3(), end + s.lengthMm() / 2);
            }
        }
        return true;
    }

    /** The loose parts that are moved, all others being open still: they are what is there already, and mostly the heaviest. */
    private boolean placeLoose(List<Handle> open) {
        List<Integer> moved = new ArrayList<>();
        for (int k = 0; k < changed.size(); k++) {
            if (changed.get(k).movedMm() != 0) {
                moved.add(k);
            }
        }
        while (!moved.isEmpty()) {
            if (!solvePlaces(open, moved)) {
                return false;
            }
            int k = moved.remove(0);
            changed.set(k, changed.get(k).placed());
        }
        return true;
    }

    private boolean solvePlaces(List<Handle> handles, List<Integer> moved) {
        List<Choice> choices = new ArrayList<>();
        for (Handle h : handles) {
            addShifts(choices, h);
        }
        for (int k : moved) {
            choices.addAll(changed.get(k).shifts());
        }
        PlanModel model = new PlanModel(basis.with(built()), choices, List.of());
        LinearProgramme.Solution solution = solved(model, Goal.LEAST_MASS, false);
        if (solution == null) {
            return false;
        }
        double[] x = solution.x();
        for (int i = 0; i < handles.size(); i++) {
            double moment = x[2 * i] - x[2 * i + 1];
            for (Strip s : handles.get(i).strips()) {
                s.put(s.volumeMm3(), s.centreXMm() + moment / s.volumeMm3());
            }
        }
        for (int i = 0; i < moved.size(); i++) {
            int at = 2 * (handles.size() + i);
            changed.set(moved.get(i), changed.get(moved.get(i)).movedBy(x[at] - x[at + 1]));
        }
        return true;
    }

    /** The boat with strips and loose parts as they stand. */
    private Influence built() {
        Influence sum = basis.boat;
        for (Strip s : strips) {
            sum = sum.plus(perMm3(s).times(s.volumeMm3()));
        }
        for (Loose.Changed c : changed) {
            sum = sum.plus(c.influence());
        }
        return sum;
    }

    /** One mm³ of a strip, at its middle; the run is free of both planes, so that shares do not change along it. */
    private Influence perMm3(Strip s) {
        Influence whole = basis.perMm3(s.run.solid(), s.inside, s.densityGPerMm3());
        double middle = 0.5 * (s.run.fromMm().getX() + s.run.toMm().getX());
        return whole.plus(whole.whenMoved(new Vector3D(s.centreXMm() - middle, 0, 0)));
    }

    /** Takes over what floating the outcome showed: the next round asks for as much more or less. */
    void learn(BallastPlan plan) {
        Wanted w = request.wanted();
        plan.surfaced().settled().ifPresent(e -> {
            PaintedOffset off = request.offset(e.plane());
            double apart = request.foreMm().distance(request.aftMm());
            learn(Aim.LINE, 0.5 * (off.bowMm() + off.sternMm()));
            learn(Aim.TRIM, Math.toDegrees((off.bowMm() - off.sternMm()) / apart));
            learn(Aim.LIST, -off.listDeg());
            learn(Aim.GM, Math.max(0, w.gmMm() - e.gmTransverseMm()));
        });
        double residual = plan.surfaced().submerged().residualG();
        if (plan.dived().isPresent()) {
            learn(Aim.BG, Math.max(0, w.bgMm() - request.divedBgMm(plan.surfaced())));
            learn(Aim.RESIDUAL, Math.max(0, w.residualG().least() - residual));
            learn(Aim.RESIDUAL, Math.min(0, w.residualG().greatest() - residual));
            learn(Aim.DIVED_TRIM, -request.divedTrimOffDeg(plan.dived().get()) / 2);
            learn(Aim.DIVED_LIST, -request.divedListOffDeg(plan.dived().get()) / 2);
        }
    }

    private void learn(Aim aim, double amount) {
        learned.merge(aim, amount, Double::sum);
    }

    /** The strips as parts, under ids that the boat does not use yet. */
    List<Part> parts(Boat boat) {
        Set<String> taken = boat.parts().stream().map(Part::id).collect(Collectors.toCollection(LinkedHashSet::new));
        List<Part> parts = new ArrayList<>();
        List<Strip> ordered = new ArrayList<>(strips);
        ordered.sort(Comparator.<Strip, Zone.Use>comparing(s -> s.use)
                .thenComparing(s -> s.centreXMm())
                .thenComparing(s -> s.twin));
        for (Strip s : ordered) {
            String what = s.use == Zone.Use.BALLAST ? "lead" : "foam";
            String base = s.zone + " " + what + (s.twin ? " starboard" : "");
            String id = base;
            for (int n = 2; !taken.add(id); n++) {
                id = base + " " + n;
            }
            parts.add(s.part(id));
        }
        return parts;
    }
}
