package trimwright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Zone;

/** Looks for ways out of a plan that cannot be: each is tried by solving again with that one change allowed. */
public final class WaysOut {

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

    private final PlanRequest request;
    private final CellProgramme programme;
    private final List<WayOut> found = new ArrayList<>();

    private WaysOut(PlanRequest request, List<Room> rooms) {
        this.request = request.withGoal(Goal.LEAST_MASS);
        programme = CellProgramme.of(this.request, rooms);
    }

    /** The ways out, the least effort first; empty when no single change helps. */
    public static List<WayOut> of(PlanRequest request, List<Room> rooms) {
        WaysOut search = new WaysOut(request, rooms);
        if (search.programme.basis().dives) {
            search.tank();
        }
        search.line();
        search.takeOut();
        search.moreRoom(Zone.Use.BALLAST);
        search.moreRoom(Zone.Use.FOAM);
        for (Aim aim : Aim.values()) {
            search.ease(aim);
        }
        search.found.sort(Comparator.comparingDouble(WayOut::effort));
        return List.copyOf(search.found);
    }

    /** Another tank: of another volume, or in another place, or, where neither is enough, both. */
    private void tank() {
        PlanBasis basis = programme.basis();
        double perCm3 = 1000 * basis.density;
        Influence cm3 = Influence.ofTankWater(perCm3, tankCentre().scalarMultiply(perCm3));
        double mass = basis.density * basis.condition.tankVolumeMm3();
        Influence mm = Influence.ofTankWater(0, new Vector3D(mass, 0, 0));
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

    private Vector3D tankCentre() {
        Vector3D moment = Vector3D.ZERO;
        double volume = 0;
        for (Piece piece : programme.basis().condition.pieces()) {
            if (piece.tankRoom().isPresent()) {
                double own = piece.tankRoom().get().volumeMm3();
                moment = moment.add(own, piece.tankRoom().get().centroidMm());
                volume += own;
            }
        }
        return moment.scalarMultiply(1 / volume);
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

    private void line() {
        for (int way : new int[] {1, -1}) {
            double missed = 0;
            for (double mm = 1; mm <= LINE_MOST_MM; mm *= 2) {
                if (reaches(way * mm) != null) {
                    double good = mm;
                    while (good - missed > 0.1) {
                        double middle = 0.5 * (good + missed);
                        if (reaches(way * middle) != null) {
                            good = middle;
                        } else {
                            missed = middle;
                        }
                    }
                    found.add(reaches(way * good));
                    break;
                }
                missed = mm;
            }
        }
    }

    private WayOut reaches(double raisedMm) {
        CellProgramme.Outline outline =
                programme.like(request.withLineRaised(raisedMm)).outline();
        return outline.meetsAll()
                ? new WayOut(WayOut.Kind.LINE_RAISED, "", raisedMm, 0, outline.addedG(), Math.abs(raisedMm) / 3)
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
                double taken = with.takenOutG(outline, part);
                add(WayOut.Kind.TAKEN_OUT, part.id(), taken, outline, Math.max(1, 0.2 * taken));
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
        CellProgramme.Outline outline = programme.outline(List.of(), EnumSet.of(aim));
        if (outline.solution().isOptimal() && outline.misses().size() == 1) {
            double amount = outline.misses().get(0).amount();
            double tolerance = outline.model().tolerance(aim);
            if (Math.abs(amount) <= MOST_EASED * tolerance) {
                add(WayOut.Kind.AIM_EASED, aim.key(), amount, outline, 0.5 * tolerance);
            }
        }
    }
}
