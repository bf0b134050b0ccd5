package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import trimwright.boat.Boat;
import trimwright.boat.FitCheck;
import trimwright.boat.Part;
import trimwright.boat.Zone;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/** What keeps a boat from being planned, and what is worth knowing about a plan's ground. */
public final class PlanCheck {

    /** A zone with less of its volume free than this is worth a word. */
    private static final double HARDLY_FREE = 0.25;

    private PlanCheck() {}

    /** What must be there before a plan can be asked for: a painted line, a zone for lead and one for foam, aims that agree. */
    public static List<Finding> before(Boat boat, Wanted wanted) {
        List<Finding> findings = new ArrayList<>();
        if (boat.paintedLine().isEmpty()) {
            findings.add(Finding.of(Code.PLAN_WITHOUT_LINE, new Place.Whole()));
        }
        findings.addAll(zones(boat));
        wanted.contradictions().forEach(findings::add);
        return findings;
    }

    /** Whether there is, or can be found, a place for lead and foam. */
    public static List<Finding> zones(Boat boat) {
        if (!boat.zones().isEmpty() || ZoneFinder.canFind(boat)) {
            return List.of();
        }
        Code code = ZoneFinder.hasOpenHull(boat) ? Code.PLAN_ZONES_OPEN_HULL : Code.PLAN_WITHOUT_ZONES;
        return List.of(Finding.of(code, new Place.Whole()));
    }

    /**
     * What the room that was found says about the zones.
     *
     * @param boat the boat as her file states her
     */
    public static List<Finding> rooms(Boat boat, List<Room> rooms) {
        List<Finding> findings = new ArrayList<>();
        if (boat.zones().isEmpty()) {
            List<String> found =
                    rooms.stream().map(r -> r.zone().id()).distinct().toList();
            findings.add(Finding.of(Code.ZONES_FOUND, new Place.Whole(), "zones", found));
        }
        for (Room room : rooms) {
            if (room.twin()) {
                continue;
            }
            findings.addAll(about(room, boat));
        }
        boolean lead = rooms.stream().anyMatch(r -> r.zone().use() == Zone.Use.BALLAST);
        boolean foam = rooms.stream().anyMatch(r -> r.zone().use() == Zone.Use.FOAM);
        if (!boat.zones().isEmpty() && (!lead || !foam)) {
            findings.add(Finding.of(Code.PLAN_ONE_MATERIAL, new Place.Whole(), "missing", lead ? "foam" : "ballast"));
        }
        return findings;
    }

    /** What is not fixed and yet cannot be changed bit by bit. */
    public static List<Finding> loose(Boat boat) {
        return boat.parts().stream()
                .filter(p -> !p.fixed() && !PlanRequest.canTakeOut(p))
                .map(p -> Finding.of(Code.LOOSE_ONLY_WHOLE, new Place.OnPart(p.id())))
                .toList();
    }

    private static List<Finding> about(Room room, Boat boat) {
        List<Finding> findings = new ArrayList<>();
        Place place = new Place.InZone(room.zone().id());
        double whole = room.zone().box().solid().volumeMm3();
        boolean given = !boat.zones().isEmpty();
        if (room.inside().isPresent() && room.zone().use() == Zone.Use.FOAM) {
            findings.add(Finding.of(
                    Code.ZONE_FOAM_KEPT_DRY, place, "part", room.inside().get()));
        } else if (room.cells().isEmpty() && given) {
            findings.add(
                    Finding.of(Code.ZONE_WITHOUT_ROOM, place, "wholeCm3", whole / 1000, "takenBy", room.takenBy()));
        } else if (room.freeMm3() < HARDLY_FREE * whole && given) {
            findings.add(Finding.of(
                    Code.ZONE_HARDLY_FREE,
                    place,
                    "freeCm3",
                    room.freeMm3() / 1000,
                    "wholeCm3",
                    whole / 1000,
                    "takenBy",
                    room.takenBy()));
        }
        if (!room.insideKnown() && boat.parts().stream().anyMatch(Part::isHull)) {
            findings.add(Finding.of(Code.ZONE_TAKEN_AS_GIVEN, place));
        }
        return findings;
    }

    /**
     * What no longer fits, or fits worse, after a part was moved along: pieces that are in each other's way, or stick out.
     *
     * @param before the boat as she was
     * @param after the same with parts elsewhere
     */
    public static List<Finding> moved(Boat before, Boat after) {
        List<Finding> known = FitCheck.of(before);
        return FitCheck.of(after).stream()
                .filter(f -> known.stream().noneMatch(k -> isNoBetter(k, f)))
                .toList();
    }

    /** Whether a misfit that was there is of the same kind and place, and no smaller but for how finely volumes are found. */
    private static boolean isNoBetter(Finding known, Finding now) {
        return known.code() == now.code()
                && known.place().equals(now.place())
                && value(known, "volumeCm3") + value(now, "resolutionCm3") >= value(now, "volumeCm3");
    }

    private static double value(Finding finding, String key) {
        return finding.values().get(key) instanceof Number number ? number.doubleValue() : 0;
    }
}
