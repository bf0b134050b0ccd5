package trimwright.mesh;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/**
 * What is wrong with one file, in the order found. Of each kind only the first few are kept, and the rest counted, so that
 * a file that is wrong on every line still gets a report that can be read.
 */
final class Problems {

    /** So many findings of one kind are listed. */
    static final int LISTED = 10;

    private final String file;
    private final List<Finding> listed = new ArrayList<>();
    private final Map<Code, Integer> counts = new EnumMap<>(Code.class);
    private final Map<Code, Tally> tallies = new EnumMap<>(Code.class);

    Problems(String file) {
        this.file = file;
    }

    String file() {
        return file;
    }

    void add(Code code, Place place, Object... namesAndValues) {
        if (counts.merge(code, 1, Integer::sum) <= LISTED) {
            listed.add(Finding.of(code, place, namesAndValues));
        }
    }

    /** Counts a problem of which only the first is shown. */
    void tally(Code code, Place place, Object... namesAndValues) {
        Tally tally = tallies.get(code);
        if (tally == null) {
            tallies.put(code, new Tally(place, namesAndValues));
        } else {
            tally.count++;
        }
    }

    /** A coordinate that cannot be used: not finite, or beyond {@link MeshFiles#LARGEST_COORDINATE}. */
    void badCoordinate(double found, Place place, String ofWhat, long number) {
        if (Double.isNaN(found) || Double.isInfinite(found)) {
            tally(Code.MESH_COORDINATE_NOT_FINITE, place, "found", String.valueOf(found), ofWhat, number);
        } else {
            tally(
                    Code.MESH_COORDINATE_TOO_LARGE,
                    place,
                    "found",
                    found,
                    "allowed",
                    MeshFiles.LARGEST_COORDINATE,
                    ofWhat,
                    number);
        }
    }

    boolean any() {
        return !listed.isEmpty() || !tallies.isEmpty();
    }

    /** Gives up where anything was found. */
    void throwIfAny() {
        if (!any()) {
            return;
        }
        List<Finding> all = new ArrayList<>(listed);
        tallies.forEach((code, tally) -> {
            List<Object> values = new ArrayList<>(List.of(tally.namesAndValues));
            values.add("count");
            values.add(tally.count);
            all.add(Finding.of(code, tally.place, values.toArray()));
        });
        counts.forEach((code, count) -> {
            if (count > LISTED) {
                all.add(Finding.of(
                        Code.MESH_MORE_OF_THE_SAME,
                        new Place.InFile(file),
                        "code",
                        code.name(),
                        "count",
                        count - LISTED));
            }
        });
        throw new UnusableInputException(all);
    }

    private static final class Tally {
        private final Place place;
        private final Object[] namesAndValues;
        private long count = 1;

        Tally(Place place, Object[] namesAndValues) {
            this.place = place;
            this.namesAndValues = namesAndValues;
        }
    }
}
