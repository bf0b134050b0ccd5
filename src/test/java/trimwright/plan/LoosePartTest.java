package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.TestParts;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.boat.Zone;
import trimwright.mesh.MeshImport;
import trimwright.mesh.Solids;
import trimwright.statics.Condition;

/** One loose part, by hand. */
class LoosePartTest {

    private static final Vector3D MIDDLE = TestParts.at(200, 0, 25);

    private static Part mirrored(Part p, boolean mirror) {
        return mirror ? TestParts.twice(p) : p;
    }

    /** 100 × 10 × 5 mm of 11 g ∕ cm³ under the raft to port, 55 g. */
    private static Part lead(boolean mirror) {
        return mirrored(TestParts.solid("pig", Kind.BALLAST, TestParts.box(100, 5, -5, 200, 15, 0), 11), mirror)
                .loose();
    }

    private static Loose loose(Part part, Part... others) {
        Part[] all = new Part[others.length + 1];
        all[0] = part;
        System.arraycopy(others, 0, all, 1, others.length);
        Boat boat = PlanBoats.raft(1500, MIDDLE, List.of(), all);
        PlanRequest request = PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
        PlanBasis basis = PlanBasis.of(Condition.of(boat), request);
        List<Loose> found = Loose.of(basis.condition.pieces(), Set.of(part.id()), basis);
        assertEquals(1, found.size());
        return found.get(0);
    }

    /** The same with room to slide: 30 mm ahead and 20 astern. */
    private static Loose sliding(boolean mirror) {
        Loose l = loose(lead(mirror));
        return new Loose(l.part(), l.whole(), l.massG(), 30, 20);
    }

    @Test
    void bothTwinsCount() {
        Loose one = loose(lead(false));
        assertEquals(55, one.massG(), 1e-9);
        assertEquals(55 * 10, one.whole().massMoment().getY(), 1e-9);
        assertEquals(5000, one.whole().surfacedMm3(), 1e-6);
        Loose two = loose(lead(true));
        assertEquals(110, two.massG(), 1e-9);
        assertEquals(0, two.whole().massMoment().getY(), 1e-9);
        assertEquals(10_000, two.whole().surfacedMm3(), 1e-6);
        // In open water nothing says where it would stop.
        assertEquals(0, two.aheadMm());
        assertEquals(0, two.asternMm());
    }

    @Test
    void whatCanBeLessened() {
        Part ball = TestParts.compact("ball", Kind.BALLAST, 10.0, Optional.empty(), MIDDLE);
        Shape mesh = new MeshShape("a.stl", MeshImport.AS_IS, Solids.box(0, 0, 0, 1, 1, 1));
        Shape flat = new BarShape(TestParts.at(0, 0, 0), TestParts.at(9, 0, 0), 4, BarShape.Ends.FLAT);
        Shape round = new BarShape(TestParts.at(0, 0, 0), TestParts.at(9, 0, 0), 4, BarShape.Ends.ROUND);
        assertTrue(PlanRequest.canTakeOut(ball));
        assertTrue(PlanRequest.canTakeOut(lead(false)));
        assertTrue(PlanRequest.canTakeOut(TestParts.solid("a", Kind.FOAM, flat, 1)));
        assertFalse(PlanRequest.canTakeOut(TestParts.solid("a", Kind.FOAM, round, 1)));
        assertFalse(PlanRequest.canTakeOut(TestParts.solid("a", Kind.FOAM, mesh, 1)));
        assertFalse(PlanRequest.canTakeOut(TestParts.solid("a", Kind.FITTING, flat, 1)));
        Boat boat = PlanBoats.raft(1500, MIDDLE, List.of(), TestParts.solid("a", Kind.FOAM, round, 1), lead(true));
        PlanRequest request = PlanBoats.request(boat, PlanBoats.WANTED, Goal.LEAST_MASS);
        PlanBasis basis = PlanBasis.of(Condition.of(boat), request);
        assertEquals(List.of(), Loose.of(basis.condition.pieces(), Set.of("a"), basis));
        assertEquals(List.of(), Loose.of(basis.condition.pieces(), Set.of(), basis));
        assertEquals(
                1, Loose.of(basis.condition.pieces(), Set.of("a", "pig"), basis).size());
    }

    /** Taking all of it is one unknown, moving it ahead and astern by a mm two more; what is taken out cannot be moved. */
    @Test
    void unknownsAndLimits() {
        Loose two = sliding(true);
        List<Choice> choices = two.choices();
        assertEquals(-110, choices.get(0).unknown().perUnit().massG(), 1e-9);
        assertEquals(1, choices.get(0).unknown().most());
        assertEquals(0.02 * 110 + 1e-3, choices.get(0).unknown().costPerUnit(), 1e-12);
        assertEquals(110, choices.get(1).unknown().perUnit().massMoment().getX(), 1e-9);
        assertEquals(0, choices.get(1).unknown().perUnit().massG());
        assertEquals(30, choices.get(1).unknown().most());
        // 100 g of it weigh in the water.
        assertEquals(1e-3 * 100 + 1e-3, choices.get(1).unknown().costPerUnit(), 1e-12);
        assertEquals(-110, choices.get(2).unknown().perUnit().massMoment().getX(), 1e-9);
        assertEquals(20, choices.get(2).unknown().most());
        List<PlanModel.Cap> caps = two.caps(2, 6);
        assertEquals(2, caps.size());
        assertEquals(
                "[0.0, 0.0, 30.0, 1.0, 0.0, 0.0]",
                java.util.Arrays.toString(caps.get(0).weights()));
        assertEquals(30, caps.get(0).most());
        assertEquals(
                "[0.0, 0.0, 20.0, 0.0, 1.0, 0.0]",
                java.util.Arrays.toString(caps.get(1).weights()));
        assertEquals(20, caps.get(1).most());
    }

    /** A quarter taken out and all that is left moved so that the whole would move 6 mm: that is 8 mm. */
    @Test
    void whatAnAnswerMakesOfIt() {
        Loose two = sliding(true);
        Loose.Changed changed = two.changed(new double[] {9, 0.25, 10, 4}, 1);
        assertEquals(0.25, changed.share());
        assertEquals(8, changed.movedMm(), 1e-12);
        assertFalse(changed.isNothing());
        // Mass gone, and the moment of 82.5 g moved 8 mm ahead.
        assertEquals(-27.5, changed.influence().massG(), 1e-9);
        assertEquals(-27.5 * 150 + 82.5 * 8, changed.influence().massMoment().getX(), 1e-9);
        assertEquals(-2500, changed.influence().wholeMm3(), 1e-6);
        Part left = changed.part().orElseThrow();
        // Three quarters as long about its middle, which stands at 158.
        assertEquals(TestParts.box(120.5, 5, -5, 195.5, 15, 0), left.shape().orElseThrow());
        assertEquals(Optional.empty(), two.changed(new double[] {1, 0, 0}, 0).part());
        assertEquals(0, two.changed(new double[] {1, 5, 0}, 0).movedMm());
        assertEquals(1, two.changed(new double[] {1.0000001, 0, 0}, 0).share());
        assertEquals(0, two.changed(new double[] {-1e-12, 0, 0}, 0).share());
        assertTrue(two.changed(new double[] {0, 3, 3}, 0).isNothing());
        assertFalse(two.changed(new double[] {0, 3, 2}, 0).isNothing());
        assertFalse(two.changed(new double[] {0.5, 3, 3}, 0).isNothing());
    }

    /** Once its size is settled it can be moved on within its way: 5 mm ahead already. */
    @Test
    void placesWithTheSizeHeld() {
        Loose.Changed changed = new Loose.Changed(sliding(true), 0.25, 5);
        List<Choice> shifts = changed.shifts();
        assertEquals(82.5, shifts.get(0).unknown().perUnit().massMoment().getX(), 1e-9);
        assertEquals(-82.5, shifts.get(1).unknown().perUnit().massMoment().getX(), 1e-9);
        assertEquals(25, shifts.get(0).unknown().most(), 1e-9);
        assertEquals(25, shifts.get(1).unknown().most(), 1e-9);
        assertEquals(0.75 * 0.101, shifts.get(0).unknown().costPerUnit(), 1e-12);
        assertEquals(
                0,
                new Loose.Changed(sliding(true), 0, 31)
                        .shifts()
                        .get(0)
                        .unknown()
                        .most());
        assertEquals(
                0,
                new Loose.Changed(sliding(true), 0, -21)
                        .shifts()
                        .get(1)
                        .unknown()
                        .most());
        assertEquals(7.4, changed.movedBy(2.4).movedMm(), 1e-12);
        assertEquals(7, changed.movedBy(2.4).placed().movedMm());
        assertEquals(0.25, changed.movedBy(2.4).placed().share());
    }

    /** Lead is weighed to a gram, of a pair to 2 g; foam is cut to a mm; what is left and less than 3 % goes too. */
    @ParameterizedTest
    @CsvSource({"BALLAST, false, 0.254, 14", "BALLAST, true, 0.254, 28", "FOAM, false, 0.2549, 13.75"})
    void sizes(Kind kind, boolean mirror, double share, double outG) {
        Part part = mirrored(TestParts.solid("p", kind, TestParts.box(100, 5, -5, 200, 15, 0), 11), mirror);
        Loose l = loose(part);
        Loose.Changed sized = new Loose.Changed(l, share, 3).sized();
        assertEquals(outG, sized.share() * l.massG(), 1e-9);
        assertEquals(3, sized.movedMm());
        assertEquals(1, new Loose.Changed(l, 0.98, 3).sized().share());
        assertEquals(0, new Loose.Changed(l, 0.98, 3).sized().movedMm());
        assertTrue(new Loose.Changed(l, 0.96, 3).sized().share() < 1);
        assertEquals(1, new Loose.Changed(l, 1, 0).sized().share());
    }

    /** A bar is shortened about its middle, wherever it points; a compact piece keeps its place and loses mass. */
    @Test
    void barsAndCompactPieces() {
        BarShape bar = new BarShape(TestParts.at(100, 0, -30), TestParts.at(180, 0, -10), 10, BarShape.Ends.FLAT);
        Loose l = loose(TestParts.solid("bar", Kind.FOAM, bar, 0.03));
        BarShape half = (BarShape)
                new Loose.Changed(l, 0.5, 4).part().orElseThrow().shape().orElseThrow();
        assertEquals(0, half.fromMm().distance(TestParts.at(124, 0, -25)), 1e-9);
        assertEquals(0, half.toMm().distance(TestParts.at(164, 0, -15)), 1e-9);
        assertEquals(10, half.diameterMm());
        // Cut to a mm of its own length.
        double length = Math.hypot(80, 20);
        assertEquals(
                Math.rint(0.3 * length) / length,
                new Loose.Changed(l, 0.3, 0).sized().share(),
                1e-12);
        Part ball = TestParts.compact("ball", Kind.FOAM, 40.0, Optional.of(2.0), MIDDLE);
        Part less = new Loose.Changed(loose(ball), 0.25, 4).part().orElseThrow();
        assertEquals(30, less.weighedMassG().orElseThrow(), 1e-12);
        assertEquals(0, less.givenCentreMm().orElseThrow().distance(TestParts.at(204, 0, 25)), 1e-12);
        // Without a length it is weighed, whatever it is.
        assertEquals(
                10 / 40.0, new Loose.Changed(loose(ball), 0.2517, 0).sized().share(), 1e-12);
    }

    private static Strip strip(BoxShape run, Optional<String> inside) {
        return new Strip(new RoomCell("z", Zone.Use.BALLAST, false, inside, 0, 0, run, true), run, 0.01, 1, 0);
    }

    /** A run in its way ahead stops it there, one astern there; what lies beside, over, under or in another room does not. */
    @Test
    void itKeepsClearOfRuns() {
        Loose one = sliding(false);
        BoxShape ahead = TestParts.box(210, 0, -3, 300, 9, 5);
        assertEquals(10, one.within(List.of(strip(ahead, Optional.empty()))).aheadMm());
        assertEquals(20, one.within(List.of(strip(ahead, Optional.empty()))).asternMm());
        BoxShape astern = TestParts.box(20, 0, -3, 95, 9, 5);
        assertEquals(5, one.within(List.of(strip(astern, Optional.empty()))).asternMm());
        assertEquals(30, one.within(List.of(strip(astern, Optional.empty()))).aheadMm());
        // It stands in the run already.
        assertEquals(
                0,
                one.within(List.of(strip(TestParts.box(150, 0, -3, 250, 9, 5), Optional.empty())))
                        .aheadMm());
        assertEquals(
                0,
                one.within(List.of(strip(TestParts.box(50, 0, -3, 150, 9, 5), Optional.empty())))
                        .asternMm());
        for (BoxShape free : List.of(
                TestParts.box(210, -9, -3, 300, 5, 5),
                TestParts.box(210, 15, -3, 300, 20, 5),
                TestParts.box(210, 0, 0, 300, 9, 5),
                TestParts.box(210, 0, -9, 300, 9, -5))) {
            assertEquals(30, one.within(List.of(strip(free, Optional.empty()))).aheadMm(), free.toString());
        }
        assertEquals(30, one.within(List.of(strip(ahead, Optional.of("hull")))).aheadMm());
        // Of a pair the starboard piece counts too.
        BoxShape starboard = TestParts.box(210, -9, -3, 300, 0, 5);
        assertEquals(30, one.within(List.of(strip(starboard, Optional.empty()))).aheadMm());
        assertEquals(
                10,
                sliding(true)
                        .within(List.of(strip(starboard, Optional.empty())))
                        .aheadMm());
    }

    private static SlideRoom slides(Part part, Part... others) {
        Boat boat = PlanBoats.raft(1, MIDDLE, List.of());
        List<Part> all = new java.util.ArrayList<>(List.of(others));
        all.add(part);
        all.add(TestParts.hull("hull", Solids.box(0, -30, -20, 300, 30, 40), new HullBuild.Skin(2), 1.2));
        return SlideRoom.of(boat.withParts(all).pieces(), part);
    }

    /** In whole mm to the end walls of 2 mm; another part stops it on the side where it stands, one that reaches in by a hair or stands aside does not. */
    @Test
    void howFarItSlides() {
        Part pig = lead(false);
        assertEquals(new SlideRoom(98, 98), slides(pig));
        Part post = TestParts.solid("post", Kind.FITTING, TestParts.box(240, 8, -10, 250, 12, 10), 1);
        assertEquals(new SlideRoom(40, 98), slides(pig, post));
        Part aft = TestParts.solid("post", Kind.FITTING, TestParts.box(40, 8, -10, 60, 12, 10), 1);
        assertEquals(new SlideRoom(98, 40), slides(pig, aft));
        Part aside = TestParts.solid("post", Kind.FITTING, TestParts.box(240, -12, -10, 250, 4, 10), 1);
        assertEquals(new SlideRoom(98, 98), slides(pig, aside));
        assertEquals(new SlideRoom(40, 98), slides(lead(true), aside));
        Part hair = TestParts.solid("post", Kind.FITTING, TestParts.box(240, 8, -0.1, 250, 12, 10), 1);
        assertEquals(new SlideRoom(98, 98), slides(pig, hair));
        Part finger = TestParts.solid("post", Kind.FITTING, TestParts.box(240, 8, -0.3, 250, 12, 10), 1);
        assertEquals(new SlideRoom(40, 98), slides(pig, finger));
        Boat open = PlanBoats.raft(1, MIDDLE, List.of(), pig);
        assertEquals(SlideRoom.NONE, SlideRoom.of(open.pieces(), pig));
    }
}
