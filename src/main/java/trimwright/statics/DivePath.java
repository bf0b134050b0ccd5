package trimwright.statics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trimwright.boat.DivePlan;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/**
 * The way that the fills of all tanks go during a dive. The progress along it runs from 0 to 1 in proportion to the volume of water
 * that is let in or out.
 */
final class DivePath {

    private final Condition condition;
    private final Map<String, Double> roomMm3 = new LinkedHashMap<>();
    private final List<Map<String, Double>> stages = new ArrayList<>();
    private final List<Double> progress = new ArrayList<>();

    /**
     * The boat's own plan, or all tanks alike from empty to full where she has none.
     *
     * @throws UnusableInputException when she has no tank, when the plan names a part that is no tank, or when it moves no water
     */
    DivePath(Condition condition) {
        this.condition = condition;
        for (Piece piece : condition.pieces()) {
            piece.tankRoom().ifPresent(room -> roomMm3.merge(piece.part().id(), room.volumeMm3(), Double::sum));
        }
        if (roomMm3.isEmpty()) {
            throw new UnusableInputException(Finding.of(Code.DIVE_NO_TANK, new Place.Whole()));
        }
        DivePlan plan = condition.boat().divePlan().orElseGet(() -> DivePlan.inOrder(List.of(tanks())));
        requireTanks(plan);
        Map<String, Double> fills = new LinkedHashMap<>();
        roomMm3.keySet().forEach(id -> fills.put(id, 0.0));
        double way = 0;
        for (Map<String, Double> stage : plan.stages()) {
            Map<String, Double> before = new LinkedHashMap<>(fills);
            fills.putAll(stage);
            if (!stages.isEmpty()) {
                way += wayMm3(before, fills);
            }
            stages.add(Map.copyOf(fills));
            progress.add(way);
        }
        if (way == 0) {
            throw new UnusableInputException(Finding.of(Code.DIVE_MOVES_NO_WATER, new Place.Whole()));
        }
        double whole = way;
        progress.replaceAll(p -> p / whole);
    }

    private List<String> tanks() {
        return condition.boat().parts().stream()
                .filter(Part::isTank)
                .map(Part::id)
                .toList();
    }

    private void requireTanks(DivePlan plan) {
        Set<String> named = new LinkedHashSet<>();
        plan.stages().forEach(stage -> named.addAll(stage.keySet()));
        named.removeAll(roomMm3.keySet());
        if (!named.isEmpty()) {
            throw new UnusableInputException(named.stream()
                    .map(id -> Finding.of(
                            Code.FILL_OF_NO_TANK,
                            new Place.Whole(),
                            "found",
                            id,
                            "allowed",
                            List.copyOf(roomMm3.keySet())))
                    .toList());
        }
    }

    private double wayMm3(Map<String, Double> from, Map<String, Double> to) {
        double way = 0;
        for (Map.Entry<String, Double> room : roomMm3.entrySet()) {
            way += room.getValue() * Math.abs(to.get(room.getKey()) - from.get(room.getKey()));
        }
        return way;
    }

    /** The progress at which each stage of the plan is reached, from 0 to 1. */
    List<Double> stagesAlong() {
        return List.copyOf(progress);
    }

    /** Fill 0…1 of every tank, by id. */
    Map<String, Double> fillsAt(double along) {
        int stage = 1;
        while (stage < progress.size() - 1 && progress.get(stage) < along) {
            stage++;
        }
        double from = progress.get(stage - 1);
        double to = progress.get(stage);
        double share = to > from ? (along - from) / (to - from) : 1;
        Map<String, Double> before = stages.get(stage - 1);
        Map<String, Double> after = stages.get(stage);
        Map<String, Double> fills = new LinkedHashMap<>();
        for (String id : roomMm3.keySet()) {
            // Written so that the stages themselves come out exactly.
            fills.put(id, share == 1 ? after.get(id) : before.get(id) + share * (after.get(id) - before.get(id)));
        }
        return fills;
    }

    /** Water in all tanks as a share of their volume. */
    double fillAt(double along) {
        Map<String, Double> fills = fillsAt(along);
        double first = fills.values().iterator().next();
        if (fills.values().stream().allMatch(fill -> fill == first)) {
            return first;
        }
        double water = 0;
        double room = 0;
        for (Map.Entry<String, Double> fill : fills.entrySet()) {
            water += fill.getValue() * roomMm3.get(fill.getKey());
            room += roomMm3.get(fill.getKey());
        }
        return water / room;
    }

    Condition at(double along) {
        return condition.filled(fillsAt(along));
    }
}
