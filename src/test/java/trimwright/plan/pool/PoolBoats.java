package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.boat.pool.KnownWeight;
import trimwright.boat.pool.Quantity;
import trimwright.boat.pool.Reading;
import trimwright.boat.pool.Sighting;
import trimwright.boat.pool.WeightMoved;
import trimwright.statics.Condition;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;

/** A box boat with a tank, lead, foam and a battery, and what would be read of her. */
final class PoolBoats {

    private PoolBoats() {}

    /** Draws 40 mm upright; dived a tower stands out. */
    static Boat boat() {
        return new Boat(
                "boat",
                Water.ofDensity(1),
                Optional.of(new PaintedLine(List.of(new Vector3D(20, 0, 40), new Vector3D(480, 0, 40)))),
                List.of(
                        part("box", Kind.CYLINDER, box(0, -50, 0, 500, 50, 60), 1000, new Vector3D(250, 0, 28), ""),
                        part("tower", Kind.FITTING, box(220, -10, 60, 280, 10, 100), 40, new Vector3D(250, 0, 80), ""),
                        part("tank", Kind.TANK, box(150, -35, 5, 350, 35, 52), Double.NaN, null, "box"),
                        part("lead", Kind.BALLAST, box(150, -20, -8, 350, 20, 0), 726, null, ""),
                        part("foam", Kind.FOAM, box(50, 50, 20, 450, 56, 38), 8, null, ""),
                        part("foam too", Kind.FOAM, box(50, -56, 20, 450, -50, 38), 8, null, ""),
                        part("battery", Kind.FITTING, null, 180, new Vector3D(330, 0, 15), "box")),
                List.of(),
                Targets.NONE);
    }

    private static Part part(String id, Kind kind, Shape shape, double massG, Vector3D centre, String inside) {
        return new Part(
                id,
                kind,
                Optional.ofNullable(shape),
                Optional.empty(),
                Double.isNaN(massG) ? Optional.empty() : Optional.of(massG),
                Optional.empty(),
                Optional.ofNullable(centre),
                inside.isEmpty() ? Optional.empty() : Optional.of(inside),
                false,
                0);
    }

    static BoxShape box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new BoxShape(new Vector3D(x0, y0, z0), new Vector3D(x1, y1, z1));
    }

    static Sighting at(Quantity quantity, double value, Vector3D point) {
        return new Sighting(quantity, value, quantity.usualError(), Optional.of(point));
    }

    static Sighting of(Quantity quantity, double value) {
        return new Sighting(quantity, value, quantity.usualError(), Optional.empty());
    }

    static Reading reading(String id, double fill, List<KnownWeight> added, List<WeightMoved> moved, Sighting... seen) {
        return new Reading(id, Map.of("tank", fill), Optional.empty(), added, moved, List.of(seen));
    }

    /** What is read: the line, the list, a weight across, the boat hanging from a scale; values to be filled in. */
    static List<Reading> plan() {
        Vector3D bow = new Vector3D(480, 0, 40);
        Vector3D stern = new Vector3D(20, 0, 40);
        return List.of(
                reading(
                        "surfaced",
                        0,
                        List.of(),
                        List.of(),
                        at(Quantity.WATER_ABOVE, 0, bow),
                        at(Quantity.FREEBOARD, 0, stern),
                        of(Quantity.LIST, 0),
                        of(Quantity.TRIM, 0)),
                reading(
                        "weight across",
                        0,
                        List.of(),
                        List.of(new WeightMoved(50, new Vector3D(0, -40, 0))),
                        of(Quantity.LIST, 0)),
                reading(
                        "dived",
                        1,
                        List.of(new KnownWeight(800, new Vector3D(250, 0, 30), Optional.empty())),
                        List.of(),
                        of(Quantity.HANGING, 0)));
    }

    /** The same readings as they are seen of a boat, with errors drawn at random. */
    static List<Reading> seenOf(Boat truth, List<Reading> plan, Random random) {
        List<Reading> seen = new ArrayList<>();
        for (Reading reading : plan) {
            Condition condition = Scene.of(truth, reading);
            Optional<Equilibrium> rest = Flotation.rest(condition);
            List<Sighting> sightings = new ArrayList<>();
            for (Sighting s : reading.seen()) {
                double value = Expectation.of(condition, rest, s).orElseThrow() + s.error() * random.nextGaussian();
                sightings.add(new Sighting(s.quantity(), value, s.error(), s.atMm()));
            }
            seen.add(new Reading(
                    reading.id(), reading.fills(), reading.water(), reading.added(), reading.moved(), sightings));
        }
        return seen;
    }
}
