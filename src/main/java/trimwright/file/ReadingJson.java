package trimwright.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Water;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.boat.pool.WeightMoved;

/** Writes a reading as the readings file has it; what is usual is left out. */
final class ReadingJson {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private ReadingJson() {}

    static ObjectNode of(Reading reading, Boat boat) {
        ObjectNode node = NODES.objectNode();
        node.put("id", reading.id());
        if (!reading.fills().isEmpty()) {
            ObjectNode fills = node.putObject("fills");
            new TreeMap<>(reading.fills()).forEach(fills::put);
        }
        reading.water().ifPresent(water -> node.set("water", water(water)));
        if (!reading.added().isEmpty()) {
            ArrayNode added = node.putArray("added");
            reading.added().forEach(w -> added.add(of(w)));
        }
        if (!reading.moved().isEmpty()) {
            ArrayNode moved = node.putArray("moved");
            reading.moved().forEach(w -> moved.add(of(w)));
        }
        ArrayNode seen = node.putArray("seen");
        reading.seen().forEach(s -> seen.add(of(s, boat)));
        return node;
    }

    /** Texts by key; empty ones are left out. */
    static ObjectNode texts(Map<String, String> values) {
        ObjectNode node = NODES.objectNode();
        values.forEach((key, value) -> {
            if (!value.isBlank()) {
                node.put(key, value);
            }
        });
        return node;
    }

    private static ObjectNode water(Water water) {
        ObjectNode node = NODES.objectNode();
        if (water.temperatureC().isPresent() && water.salinityGPerKg().isPresent()) {
            node.put("temperatureC", water.temperatureC().get());
            node.put("salinityGPerKg", water.salinityGPerKg().get());
        } else {
            node.put("densityGPerCm3", water.densityGPerCm3());
        }
        return node;
    }

    private static ObjectNode of(KnownWeight weight) {
        ObjectNode node = NODES.objectNode();
        node.put("massG", weight.massG());
        node.set("centreMm", point(weight.centreMm()));
        weight.densityGPerCm3().ifPresent(d -> node.put("densityGPerCm3", d));
        return node;
    }

    private static ObjectNode of(WeightMoved weight) {
        ObjectNode node = NODES.objectNode();
        node.put("massG", weight.massG());
        node.set("byMm", point(weight.byMm()));
        return node;
    }

    private static ObjectNode of(Sighting sighting, Boat boat) {
        ObjectNode node = NODES.objectNode();
        sighting.atMm().ifPresent(at -> {
            if (boat.paintedLine().filter(l -> l.foremostMm().equals(at)).isPresent()) {
                node.put("at", "bow");
            } else if (boat.paintedLine().filter(l -> l.aftmostMm().equals(at)).isPresent()) {
                node.put("at", "stern");
            } else {
                node.set("atMm", point(at));
            }
        });
        node.put(sighting.quantity().key(), sighting.value());
        if (sighting.error() != sighting.quantity().usualError()) {
            node.put(sighting.quantity().errorKey(), sighting.error());
        }
        return node;
    }

    private static ArrayNode point(Vector3D p) {
        return NODES.arrayNode().add(p.getX()).add(p.getY()).add(p.getZ());
    }
}
