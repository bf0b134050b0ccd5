package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Zone;

/** A strip in a run 100 mm long, 10 wide and 4 high; everything by hand. */
class StripTest {

    private static final BoxShape RUN = TestParts.box(100, -3, 2, 200, 7, 6);

    private static Strip strip(Zone.Use use, boolean twin, Optional<String> inside, BoxShape run) {
        return new Strip(new RoomCell("z", use, twin, inside, 0, 0, run, true), run, 0.01, 400, 150);
    }

    @Test
    void lengthMassAndEnds() {
        Strip strip = strip(Zone.Use.BALLAST, false, Optional.empty(), RUN);
        assertEquals(40, strip.sectionMm2(), 1e-12);
        assertEquals(4000, strip.capacityMm3(), 1e-9);
        assertEquals(10, strip.lengthMm(), 1e-12);
        assertEquals(4, strip.massG(), 1e-12);
        assertEquals(105, strip.aftmostCentreMm(), 1e-12);
        assertEquals(195, strip.foremostCentreMm(), 1e-12);
        assertEquals(TestParts.box(145, -3, 2, 155, 7, 6), strip.box());
    }

    /** One that would stick out of its run is drawn in, however long it is. */
    @Test
    void itStaysInItsRun() {
        Strip strip = strip(Zone.Use.BALLAST, false, Optional.empty(), RUN);
        strip.put(800, 103);
        assertEquals(110, strip.centreXMm(), 1e-12);
        strip.put(800, 193);
        assertEquals(190, strip.centreXMm(), 1e-12);
        strip.put(800, 170);
        assertEquals(170, strip.centreXMm(), 1e-12);
        strip.put(4000, 120);
        assertEquals(RUN, strip.box());
    }

    @Test
    void asAPart() {
        Part lead = strip(Zone.Use.BALLAST, false, Optional.of("hull"), RUN).part("keel lead");
        assertEquals("keel lead", lead.id());
        assertEquals(Kind.BALLAST, lead.kind());
        assertEquals(Optional.of("hull"), lead.inside());
        assertEquals(10, lead.densityGPerCm3().orElseThrow(), 1e-12);
        assertEquals(Optional.of(TestParts.box(145, -3, 2, 155, 7, 6)), lead.shape());
        assertEquals(
                Kind.FOAM,
                strip(Zone.Use.FOAM, false, Optional.empty(), RUN).part("foam").kind());
    }

    private static Strip twinOf(double x0, double x1, double y0, double y1, double z0, double z1) {
        return strip(Zone.Use.FOAM, true, Optional.empty(), TestParts.box(x0, y0, z0, x1, y1, z1));
    }

    /** A pair needs the same run on the other side; the pair comes first and costs nothing extra, each side alone three tenths more. */
    @Test
    void handlesOfAPair() {
        Strip port = strip(Zone.Use.FOAM, false, Optional.empty(), RUN);
        Strip image = twinOf(100, 200, -7, 3, 2, 6);
        List<Handle> handles = Handle.of(List.of(port, image));
        assertEquals(
                List.of(
                        new Handle(List.of(port, image), 1),
                        new Handle(List.of(port), 1.3),
                        new Handle(List.of(image), 1.3)),
                handles);
    }

    @Test
    void whatIsNotMirroredIsNoPair() {
        Strip port = strip(Zone.Use.FOAM, false, Optional.empty(), RUN);
        List<Strip> others = List.of(
                twinOf(101, 200, -7, 3, 2, 6),
                twinOf(100, 199, -7, 3, 2, 6),
                twinOf(100, 200, -6, 3, 2, 6),
                twinOf(100, 200, -7, 4, 2, 6),
                twinOf(100, 200, -7, 3, 3, 6),
                twinOf(100, 200, -7, 3, 2, 7),
                strip(Zone.Use.FOAM, true, Optional.of("hull"), TestParts.box(100, -7, 2, 200, 3, 6)),
                strip(Zone.Use.FOAM, false, Optional.empty(), TestParts.box(100, -7, 2, 200, 3, 6)),
                new Strip(
                        new RoomCell("other", Zone.Use.FOAM, true, Optional.empty(), 0, 0, RUN, true),
                        TestParts.box(100, -7, 2, 200, 3, 6),
                        0.01,
                        400,
                        150));
        for (Strip other : others) {
            assertEquals(
                    List.of(new Handle(List.of(port), 1), new Handle(List.of(other), 1)),
                    Handle.of(List.of(port, other)),
                    () -> other.start().toString());
        }
    }
}
