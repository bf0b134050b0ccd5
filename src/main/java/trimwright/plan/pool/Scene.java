package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.WeightMoved;
import trimwright.statics.Condition;

/** A boat in the state of a reading: her fills, the water, the weights laid on her and moved about. */
final class Scene {

    private Scene() {}

    static Condition of(Boat boat, Reading reading) {
        Boat there = boat.filled(reading.fills());
        if (reading.water().isPresent()) {
            there = there.in(reading.water().get());
        }
        List<Part> parts = new ArrayList<>(there.parts());
        Load dry = Load.NONE;
        for (KnownWeight weight : reading.added()) {
            if (weight.massG() > 0 && weight.densityGPerCm3().isPresent()) {
                parts.add(compact("weight " + (parts.size() + 1), weight));
            } else {
                dry = dry.plus(Load.at(weight.massG(), weight.centreMm()));
            }
        }
        for (WeightMoved weight : reading.moved()) {
            dry = dry.plus(new Load(0, weight.byMm().scalarMultiply(weight.massG())));
        }
        return loaded(Condition.of(there.withParts(parts)), dry);
    }

    /** The condition with a load laid on it that displaces nothing. */
    static Condition loaded(Condition condition, Load load) {
        return condition.carrying(load.massG(), Vector3D.ZERO).shifted(load.momentGmm());
    }

    private static Part compact(String id, KnownWeight weight) {
        return new Part(
                id,
                Kind.FITTING,
                Optional.empty(),
                Optional.empty(),
                Optional.of(weight.massG()),
                weight.densityGPerCm3(),
                Optional.of(weight.centreMm()),
                Optional.empty(),
                false,
                0);
    }
}
