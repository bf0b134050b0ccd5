package trimwright.desktop.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.PaintedLine;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;

/** The painted line as it is changed by typing and pointing. */
class PaintingTest {

    private static Boat boat(Optional<PaintedLine> line) {
        Part box = new Part(
                "box",
                Kind.CYLINDER,
                Optional.of(new BoxShape(new Vector3D(0, -50, 0), new Vector3D(500, 50, 80))),
                Optional.empty(),
                Optional.of(100.0),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                0);
        return new Boat("Dabchick", Water.FRESH, line, List.of(box), List.of(), Targets.NONE);
    }

    private static final Boat PAINTED =
            boat(Optional.of(new PaintedLine(List.of(new Vector3D(20, 0, 40), new Vector3D(480, 0, 40)))));

    @Test
    void aBoatWithoutALineGetsALevelOne() {
        assertEquals(
                List.of(new Vector3D(20, 0, 33.5), new Vector3D(480, 0, 33.5)),
                Painting.through(boat(Optional.empty()), new Vector3D(100, 50, 33.52)));
        assertEquals(
                List.of(new Vector3D(20, 0, 30), new Vector3D(480, 0, 30)),
                Painting.with(boat(Optional.empty()), true, 30));
    }

    @Test
    void oneEndIsTyped() {
        assertEquals(List.of(new Vector3D(20, 0, 40), new Vector3D(480, 0, 45)), Painting.with(PAINTED, true, 45));
        assertEquals(List.of(new Vector3D(20, 0, 45), new Vector3D(480, 0, 40)), Painting.with(PAINTED, false, 45));
    }

    /** From the stern at (20, 40) through (250, 45) to x 480 the line rises by 5 mm twice. */
    @Test
    void theLineGoesThroughThePointAndKeepsItsOtherEnd() {
        assertEquals(
                List.of(new Vector3D(20, 0, 40), new Vector3D(480, 0, 50)),
                Painting.through(PAINTED, new Vector3D(250.001, 50, 45)));
    }
}
