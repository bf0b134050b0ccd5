package trimwright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Zone;
import trimwright.immersion.Displacer;

/** Looks for ways out of a plan that cannot be: each is tried by solving again with that one change allowed. */
final class WaysOut {

    private static final double LINE_MOST_MM = 16;
    /** How many times over a tolerance may be missed by a way out that eases it: more is giving the aim up. */
    private static final double MOST_EASED = 8;
    /** How many times over the room may be filled when asking how much more is needed. */
    private static final double MORE_ROOM = 20;
    /** Cost of a unit of a change, in grams: so dear that as little as possible of it is used. */
    private static final double DEAR = 1e4;

    /** What a builder thinks little: share of the tank's volume, and a shift, mm. */
    private static final double EASY_TANK_SHARE = 0.1;

    private static final double EASY_SHIFT_MM = 20;
    private static final double EASY_LINE_MM = 3;
    /** Lines that are tried where only pieces are not to be had. */
    private static final double[] LINES_TRIED_MM = {1, -1, 3, -3};

    private final PlanRequest request;
    private final CellProgramme programme;
    private final List<WayOut> found = new ArrayList<>();

    private WaysOut(CellProgramme programme) {
        request = programme.request().withGoal(Goal.LEAST_MASS);
        this.programme = programme.like(request);
    }

    /**
     * The ways out, the least effort first; empty when no single change helps.
     *
     * @param programme the programme of the plan that is not to be
     */
    static List<WayOut> of(CellProgramme programme, BallastPlan plan) {
        WaysOut search = new WaysOut(programme);
        if (search.programme.outline().meetsAll()) {
            search.aroundPieces(plan.misses());
        } else {
            search.aroundAmounts();
        }
        WayTrial trial = new WayTrial(search.programme);
        return search.found.stream()
                .map(trial::proved)
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(WayOut::effort))
                .toList();
    }

    /** Not even amounts spread over all cells are enough: each change is asked for as little as possible of it. */
    private void aroundAmounts() {
        if (programme.basis().dives) {
            tank();
        }
        line();
        takeOut();
        moreRoom(Zone.Use.BALLAST);
        moreRoom(Zone.Use.FOAM);
        for (Aim aim : Aim.values()) {
            ease(aim);
        }
    }

    /** Only pieces are not to be had: changes as large as what they miss are tried. */
    private void aroundPieces(List<Miss> misses) {
        for (Miss miss : misses) {
            if (misses.size() == 1) {
                offer(WayOut.Kind.AIM_EASED, miss.aim().key(), miss.amount(), 0.5 * tolerance(miss.aim()));
            }
            if (miss.aim() == Aim.RESIDUAL) {
                double easy = programme.basis().condition.tankVolumeMm3() / 1000 * EASY_TANK_SHARE;
                offer(WayOut.Kind.TANK_VOLUME, "", miss.amount() / (1000 * programme.basis().density), easy);
            }
        }
        for (double raised : LINES_TRIED_MM) {
            offer(WayOut.Kind.LINE_RAISED, "", raised, EASY_LINE_MM);
        }
        for (Part part : request.boat().parts()) {
            if (!request.removable().contains(part.id()) && PlanRequest.canTakeOut(part)) {
                offer(WayOut.Kind.TAKEN_OUT, part.id(), 1, 1);
            }
        }
    }

    private void offer(WayOut.Kind kind, String subject, double amount, double easy) {
        found.add(new WayOut(kind, subject, amount, 0, 0, Math.abs(amount) / easy));
    }

    private double tolerance(Aim aim) {
        return programme.outline().model().tolerance(aim);
    }

    /** Another tank: of another volume, or in another place, or, where neither is enough, both. */
    private void tank() {
        PlanBasis basis = programme.basis();
        Influence cm3 = tanks().times(1000 / basis.condition.tankVolumeMm3());
        Influence mm = tanks().whenMoved(Vector3D.PLUS_I);
        double wholeCm3 = basis.condition.tankVolumeMm3() / 1000;
        List<Choice> volume = bothWays(WayOut.Kind.TANK_VOLUME, cm3, wholeCm3);
        List<Choice> place = bothWays(WayOut.Kind.TANK_SHIFT, mm, basis.condition.lengthMm() / 4);
        int before = found.size();
        offer(WayOut.Kind.TANK_VOLUME, volume, wholeCm3 * EASY_TANK_SHARE);
        offer(WayOut.Kind.TANK_SHIFT, place, EASY_SHIFT_MM);
        if (found.size() == before) {
            List<Choice> both = new ArrayList<>(volume);
            both.addAll(place);
            CellProgramme.Outline outline = programme.outline(both, EnumSet.noneOf(Aim.class));
            if (outline.meetsAll()) {
                double[] x = outline.from(outline.model().choices().size() - 4);
                double more = x[0] - x[1];
                // Moving the tank was offered for its present volume; the moment is what counts.
                double shift = (x[2] - x[3]) * wholeCm3 / (wholeCm3 + more);
                double effort = Math.abs(more) / (wholeCm3 * EASY_TANK_SHARE) + Math.abs(shift) / EASY_SHIFT_MM;
                found.add(new WayOut(WayOut.Kind.TANK_REPLACED, "", more, shift, outline.addedG(), effort));
            }
        }
    }

    private static List<Choice> bothWays(WayOut.Kind kind, Influence one, double most) {
        return List.of(
                Choice.plain(new Unknown(kind.name(), one, most, DEAR)),
                Choice.plain(new Unknown(kind.name(), one.times(-1), most, DEAR)));
    }

    /** All tanks: the water that fills them, and what those displace that stand in the open. */
    private Influence tanks() {
        PlanBasis basis = programme.basis();
        Influence sum = Influence.NOTHING;
        for (Piece piece : basis.condition.pieces()) {
            if (piece.tankRoom().isPresent()) {
                Displacer room = piece.tankRoom().get();
                double water = basis.density * room.volumeMm3();
                double fill = piece.part().fill();
                sum = sum.plus(Influence.ofMass(fill * water, room.centroidMm()))
                        .plus(Influence.ofTankWater(
                                (1 - fill) * water, room.centroidMm().scalarMultiply((1 - fill) * water)));
                if (piece.displacer().isPresent()) {
                    sum = sum.plus(Influence.ofBody(piece.displacer().get(), basis.surfaced, basis.dived));
                }
            }
        }
        return sum;
    }

    /** Keeps the answer when the change is enough. */
    private void offer(WayOut.Kind kind, List<Choice> bothWays, double easy) {
        CellProgramme.Outline outline = programme.outline(bothWays, EnumSet.noneOf(Aim.class));
        if (outline.meetsAll()) {
            double[] x = outline.from(outline.model().choices().size() - 2);
            add(kind, "", x[0] - x[1], outline, easy);
        }
    }

    private void add(WayOut.Kind kind, String subject, double amount, CellProgramme.Outline outline, double easy) {
        found.add(new WayOut(kind, subject, amount, 0, outline.addedG(), Math.abs(amount) / easy));
    }

    /** Lines farther and farther up and down, and the one that would take up what she is off hers: what can be reached may lie between the others. */
    private void line() {
        CellProgramme.Outline off = programme.elastic(EnumSet.of(Aim.LINE));
        double offMm = off.misses().stream().mapToDouble(Miss::amount).sum();
        double takenUpMm = offMm + Math.copySign(tolerance(Aim.LINE), offMm);
        for (int way : new int[] {1, -1}) {
            List<Double> tried = new ArrayList<>();
            for (double mm = 1; mm <= LINE_MOST_MM; mm *= 2) {
                tried.add(mm);
            }
            if (offMm * way > 0 && takenUpMm * way < LINE_MOST_MM) {
                tried.add(takenUpMm * way);
            }
            tried.sort(null);
            double missed = 0;
            for (double mm : tried) {
                WayOut reached = reaches(way * mm);
                if (reached != null) {
                    found.add(nearest(reached, way * missed));
                    break;
                }
                missed = mm;
            }
        }
    }

    /** The least raise that is enough, to a twentieth of it. */
    private WayOut nearest(WayOut reached, double missed) {
        WayOut good = reached;
        double bad = missed;
        while (Math.abs(good.amount() - bad) > Math.max(0.1, 0.05 * Math.abs(good.amount()))) {
            double middle = 0.5 * (good.amount() + bad);
            WayOut way = reaches(middle);
            if (way != null) {
                good = way;
            } else {
                bad = middle;
            }
        }
        return good;
    }

    private WayOut reaches(double raisedMm) {
        CellProgramme.Outline outline =
                programme.like(request.withLineRaised(raisedMm)).outline();
        return outline.meetsAll()
                ? new WayOut(
                        WayOut.Kind.LINE_RAISED, "", raisedMm, 0, outline.addedG(), Math.abs(raisedMm) / EASY_LINE_MM)
                : null;
    }

    /** Lead and foam on board, one part at a time. */
    private void takeOut() {
        Set<String> already = request.removable();
        for (Part part : request.boat().parts()) {
            if (already.contains(part.id()) || !PlanRequest.canTakeOut(part)) {
                continue;
            }
            CellProgramme with = programme.like(request.withRemovable(part.id()));
            CellProgramme.Outline outline = with.outline();
            if (outline.meetsAll()) {
                found.add(WayOut.takingOut(part.id(), with.takenOutG(outline, part)));
            }
        }
    }

    private void moreRoom(Zone.Use use) {
        CellProgramme.Beyond beyond = programme.beyond(use, MORE_ROOM);
        if (beyond.missingMm3() > 0) {
            String subject = use == Zone.Use.BALLAST ? "lead" : "foam";
            add(WayOut.Kind.MORE_ROOM, subject, beyond.missingMm3() / 1000, beyond.outline(), 10);
        }
    }

    private void ease(Aim aim) {
        CellProgramme.Outline outline = programme.elastic(EnumSet.of(aim));
        if (outline.solution().isOptimal() && outline.misses().size() == 1) {
            double amount = outline.misses().get(0).amount();
            double tolerance = outline.model().tolerance(aim);
            if (Math.abs(amount) <= MOST_EASED * tolerance) {
                add(WayOut.Kind.AIM_EASED, aim.key(), amount, outline, 0.5 * tolerance);
            }
        }
    }
}
