package trimwright.desktop.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trimwright.boat.Boat;
import trimwright.boat.FitCheck;
import trimwright.boat.MisfitRoom;
import trimwright.file.LoadedBoat;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.Severity;

/**
 * Something that does not fit, and where.
 *
 * @param finding what is wrong
 * @param parts ids of the parts it is about
 * @param brief the same in a few words, for a label
 * @param room where it is; empty where that is too small to be shown
 */
public record Misfit(Finding finding, Set<String> parts, String brief, Optional<MisfitRoom> room) {

    public Misfit {
        parts = Set.copyOf(parts);
    }

    /** All that does not fit, and what of her meshes does not fit what they are declared to be. Takes a while. */
    static List<Misfit> of(LoadedBoat loaded) {
        List<Misfit> misfits = new ArrayList<>(of(loaded.boat()));
        loaded.meshDoubts().stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .forEach(f -> misfits.add(of(f, Optional.empty())));
        return List.copyOf(misfits);
    }

    /** All that does not fit; what is only worth a note, such as a rudder outside the hull, is left out. */
    public static List<Misfit> of(Boat boat) {
        List<Finding> findings = FitCheck.of(boat).stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .toList();
        List<Optional<MisfitRoom>> rooms = MisfitRoom.of(boat, findings);
        List<Misfit> misfits = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            misfits.add(of(findings.get(i), rooms.get(i)));
        }
        return List.copyOf(misfits);
    }

    private static Misfit of(Finding finding, Optional<MisfitRoom> room) {
        if (finding.place() instanceof Place.BetweenParts between) {
            String words = between.part() + words(finding.code()) + between.other();
            return new Misfit(finding, Set.of(between.part(), between.other()), words, room);
        }
        String part = ((Place.OnPart) finding.place()).part();
        return new Misfit(finding, Set.of(part), part + words(finding.code()), room);
    }

    private static String words(Code code) {
        return switch (code) {
            case PARTS_OVERLAP -> " runs into ";
            case INSIDE_NOT_STATED -> " lies in ";
            case STICKS_OUT -> " sticks out of ";
            case CENTRE_OUTSIDE_CONTAINER -> " is not in ";
            case CENTRE_OUTSIDE_PART -> ": centre outside it";
            case OUTSIDE_HULL -> ": outside the hull";
            case MESH_SHELLS_OVERLAP, MESH_COUNTED_TWICE, MESH_CROSSES_ITSELF -> ": counts twice in places";
            case MESH_NESTING_SAMPLED -> ": may count twice in places";
            case MESH_LOOKS_LIKE_WALL, MESH_LOOKS_LIKE_OUTER_SURFACE -> ": not built as declared";
            default -> " does not fit ";
        };
    }
}
