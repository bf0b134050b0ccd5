package trimwright.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trimwright.boat.DivePlan;
import trimwright.boat.Part;
import trimwright.finding.Code;

/** Reads the plan of the dive: tanks group after group, or state after state. */
final class DiveReader {

    private static final Range FILL = Range.from(0, 1);

    private final Fields dive;
    private final List<String> tanks;

    private DiveReader(Fields dive, List<String> tanks) {
        this.dive = dive;
        this.tanks = tanks;
    }

    /** Empty when there is no plan or anything in it is wrong. */
    static Optional<DivePlan> read(Fields boat, List<PartReader.Draft> drafts) {
        if (drafts.stream().anyMatch(d -> d.part().isEmpty())) {
            // A part that could not be read may be the tank that is meant.
            boat.object("dive", Keys.DIVE);
            return Optional.empty();
        }
        List<String> tanks = drafts.stream()
                .map(d -> d.part().orElseThrow())
                .filter(Part::isTank)
                .map(Part::id)
                .toList();
        return boat.object("dive", Keys.DIVE).flatMap(dive -> new DiveReader(dive, tanks).plan());
    }

    private Optional<DivePlan> plan() {
        List<String> present = dive.present(Keys.DIVE);
        if (present.size() > 1) {
            dive.report(Code.KEYS_EXCLUDE, "found", present);
            return Optional.empty();
        }
        if (Keys.DIVE.stream().noneMatch(dive::hasOrMeans)) {
            dive.report(Code.KEY_MISSING, "key", "order", "needsOneOf", Keys.DIVE);
        }
        return dive.has("order") ? order() : schedule();
    }

    private Optional<DivePlan> order() {
        int before = dive.errorsInDocument();
        Optional<List<List<String>>> groups = dive.groupsOfTexts("order");
        Set<String> seen = new HashSet<>();
        for (List<String> group : groups.orElse(List.of())) {
            for (String id : group) {
                if (!tanks.contains(id)) {
                    reportUnknown(id);
                } else if (!seen.add(id)) {
                    dive.reportAt("order", Code.FILL_TWICE, "tank", id);
                }
            }
        }
        return dive.errorsInDocument() > before ? Optional.empty() : groups.map(DivePlan::inOrder);
    }

    private void reportUnknown(String id) {
        if (tanks.isEmpty()) {
            dive.reportAt("order", Code.FILL_OF_NO_TANK, "found", id, "allowed", tanks);
        } else {
            dive.reportAt(
                    "order", Code.FILL_OF_NO_TANK, "found", id, "nearest", Nearest.to(id, tanks), "allowed", tanks);
        }
    }

    private Optional<DivePlan> schedule() {
        int before = dive.errorsInDocument();
        List<Map<String, Double>> stages = new ArrayList<>();
        for (Fields state : dive.objects("schedule", 2, Keys.DIVE_STATE)) {
            state.require("fills");
            Map<String, Double> fills = new LinkedHashMap<>();
            state.object("fills", tanks).ifPresent(f -> {
                for (String id : f.present(tanks)) {
                    f.number(id, FILL).ifPresent(fill -> fills.put(id, fill));
                }
            });
            stages.add(fills);
        }
        return dive.errorsInDocument() > before || stages.isEmpty()
                ? Optional.empty()
                : Optional.of(new DivePlan(stages));
    }
}
