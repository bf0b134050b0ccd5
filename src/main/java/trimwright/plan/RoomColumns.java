package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Zone;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Bounds;

/** The free columns of every zone of a boat, measured once when first asked for; the painted line only divides them. Confined to one thread. */
final class RoomColumns {

    private final List<Zone> zones;
    private final List<Piece> pieces;
    private List<List<RoomSurvey>> surveys;

    /** @param pieces the pieces of the boat */
    RoomColumns(List<Zone> zones, List<Piece> pieces) {
        this.zones = zones;
        this.pieces = pieces;
    }

    /** The rooms, twins after their zone. */
    List<Room> rooms(WaterPlane line) {
        if (surveys == null) {
            surveys = measured();
        }
        List<Room> rooms = new ArrayList<>();
        for (List<RoomSurvey> ofZone : surveys) {
            List<Room> all = ofZone.stream().map(s -> s.room(line)).toList();
            List<Room> free = all.stream().filter(r -> r.freeMm3() > 0).toList();
            // Nothing free anywhere is told of the first room that the zone could have been in.
            rooms.addAll(free.isEmpty() ? all.subList(0, 1) : free);
        }
        return rooms;
    }

    private List<List<RoomSurvey>> measured() {
        List<FreeSpace> spaces = spaces();
        List<List<RoomSurvey>> all = new ArrayList<>();
        List<Bounds> before = new ArrayList<>();
        for (Zone zone : zones) {
            for (boolean twin : zone.mirror() ? new boolean[] {false, true} : new boolean[] {false}) {
                Bounds box = (twin ? zone.box().mirrored() : zone.box()).bounds();
                List<RoomSurvey> own = new ArrayList<>();
                for (FreeSpace space : spaces) {
                    RoomSurvey survey = new RoomSurvey(zone, twin, box, space, List.copyOf(before));
                    // What lies outside of hulls that are all watertight counts only for a zone that lies in none of
                    // them.
                    if (space.hasWalls() || own.stream().allMatch(RoomSurvey::isEmpty)) {
                        own.add(survey);
                    }
                }
                all.add(own);
                before.add(box);
            }
        }
        return all;
    }

    /** The rooms of the boat: what the water floods and the inside of every watertight hull, those without walls last. */
    private List<FreeSpace> spaces() {
        List<FreeSpace> spaces = new ArrayList<>();
        for (Piece piece : pieces) {
            Part part = piece.part();
            if (!piece.twin() && part.isHull() && !FreeSpace.floods(part)) {
                spaces.add(FreeSpace.of(pieces, Optional.of(part.id()), Set.of()));
            }
        }
        FreeSpace flooded = FreeSpace.of(pieces, Optional.empty(), Set.of());
        spaces.add(flooded.hasWalls() ? 0 : spaces.size(), flooded);
        return spaces;
    }
}
