package trimwright.boat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * In which order the tanks are filled: the fills reached one after the other. Between two of them every tank fills in step with the rest.
 *
 * @param stages fill 0…1 by the id of the tank; a tank that a stage does not name keeps its fill, and is empty before it was named
 */
public record DivePlan(List<Map<String, Double>> stages) {

    /**
     * @throws IllegalArgumentException for fewer than two stages, a fill out of 0…1
     */
    public DivePlan {
        List<Map<String, Double>> copies = new ArrayList<>();
        for (Map<String, Double> stage : stages) {
            copies.add(Collections.unmodifiableMap(new LinkedHashMap<>(stage)));
            stage.forEach((id, fill) -> {
                if (!(fill >= 0 && fill <= 1)) {
                    throw new IllegalArgumentException("fill of " + id + " must be 0…1, found " + fill);
                }
            });
        }
        if (copies.size() < 2) {
            throw new IllegalArgumentException("a dive goes from one state of the tanks to another");
        }
        stages = List.copyOf(copies);
    }

    /**
     * Tanks filled from empty to full, group after group.
     *
     * @param groups ids of the tanks that are filled together; at least one group
     */
    public static DivePlan inOrder(List<List<String>> groups) {
        List<Map<String, Double>> stages = new ArrayList<>();
        Map<String, Double> empty = new LinkedHashMap<>();
        groups.forEach(group -> group.forEach(id -> empty.put(id, 0.0)));
        stages.add(empty);
        for (List<String> group : groups) {
            Map<String, Double> full = new LinkedHashMap<>();
            group.forEach(id -> full.put(id, 1.0));
            stages.add(full);
        }
        return new DivePlan(stages);
    }
}
