package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import trimwright.boat.Boat;
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
        if (boat.zones().isEmpty()) {
            findings.add(Finding.of(Code.PLAN_WITHOUT_ZONES, new Place.Whole()));
        }
        wanted.contradictions().forEach(findings::add);
        return findings;
    }

    /** What the room that was found says about the zones. */
    public static List<Finding> rooms(List<Room> rooms) {
        List<Finding> findings = new ArrayList<>();
        for (Room room : rooms) {
            if (room.twin()) {
                continue;
            }
            Place place = new Place.InZone(room.zone().id());
            double whole = room.zone().box().solid().volumeMm3();
            if (room.cells().isEmpty()) {
                findings.add(Finding.of(Code.ZONE_WITHOUT_ROOM, place, "wholeCm3", whole / 1000));
            } else if (room.freeMm3() < HARDLY_FREE * whole) {
                findings.add(Finding.of(
                        Code.ZONE_HARDLY_FREE, place, "freeCm3", room.freeMm3() / 1000, "wholeCm3", whole / 1000));
            }
            if (!room.insideKnown()) {
                findings.add(Finding.of(Code.ZONE_TAKEN_AS_GIVEN, place));
            }
        }
        boolean lead = rooms.stream().anyMatch(r -> r.zone().use() == Zone.Use.BALLAST);
        boolean foam = rooms.stream().anyMatch(r -> r.zone().use() == Zone.Use.FOAM);
        if (!lead || !foam) {
            findings.add(Finding.of(Code.PLAN_ONE_MATERIAL, new Place.Whole(), "missing", lead ? "foam" : "ballast"));
        }
        return findings;
    }
}
