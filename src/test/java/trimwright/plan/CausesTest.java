package trimwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static trimwright.plan.CellProgrammeTest.MIDDLE;
import static trimwright.plan.CellProgrammeTest.programme;
import static trimwright.plan.CellProgrammeTest.raft;
import static trimwright.plan.CellProgrammeTest.request;
import static trimwright.plan.CellProgrammeTest.zone;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Zone;

/** Why a raft has no plan, by hand. */
class CausesTest {

    private static List<Miss> explained(CellProgramme programme) {
        CellProgramme.Outline outline = programme.outline(List.of(), EnumSet.allOf(Aim.class));
        return Causes.explained(programme, outline.model(), outline.misses());
    }

    private static Cause cause(CellProgramme programme) {
        List<Miss> misses = explained(programme);
        assertEquals(1, misses.size(), misses.toString());
        return misses.get(0).cause().orElseThrow();
    }

    private static void figures(Cause cause, Cause.Kind kind, Object... namesAndValues) {
        assertEquals(kind, cause.kind());
        assertEquals(namesAndValues.length / 2, cause.figures().size(), cause.toString());
        for (int i = 0; i < namesAndValues.length; i += 2) {
            double expected = ((Number) namesAndValues[i + 1]).doubleValue();
            assertEquals(expected, cause.figure((String) namesAndValues[i]), 1e-6, cause.toString());
        }
    }

    /** 20 cm³ of foam below the line lift 19.4 g, 10 cm³ of lead weigh 103.4 g in the water. */
    @Test
    void tooHeavyAndTooLight() {
        Zone foam = zone("deep", Zone.Use.FOAM, TestParts.box(150, -10, -10, 250, 10, 0));
        Zone lead = zone("keel", Zone.Use.BALLAST, TestParts.box(150, -10, -15, 250, 10, -10));
        figures(
                cause(raft(1700, MIDDLE, foam, lead)),
                Cause.Kind.TOO_HEAVY,
                "weightG",
                1700,
                "carriedG",
                1600,
                "roomG",
                19.4);
        figures(
                cause(raft(1300, MIDDLE, foam, lead)),
                Cause.Kind.TOO_LIGHT,
                "weightG",
                1300,
                "carriedG",
                1600,
                "roomG",
                103.4);
    }

    @Test
    void weightInTheWrongPlace() {
        figures(
                cause(raft(1600, TestParts.at(210, 0, 25))),
                Cause.Kind.WEIGHT_ALONG,
                "weightMm",
                210,
                "carriedMm",
                200);
        figures(cause(raft(1600, TestParts.at(200, 3, 25))), Cause.Kind.WEIGHT_ACROSS, "weightMm", 3, "carriedMm", 0);
    }

    /** Too heavy and askew: only of the weight is anything known. */
    @Test
    void whatFollows() {
        List<Miss> misses = explained(raft(1700, TestParts.at(200, 3, 25)));
        assertEquals(
                List.of("LINE TOO_HEAVY", "LIST FOLLOWS"),
                misses.stream()
                        .map(m -> m.aim() + " " + m.cause().orElseThrow().kind())
                        .toList());
        assertEquals(Map.of(), misses.get(1).cause().orElseThrow().figures());
    }

    @Test
    void theGreatestThatCanBeHad() {
        double gm = 20 + 10_000 / 480.0 - 25;
        Boat raft = PlanBoats.raft(1600, MIDDLE, List.of());
        Wanted firm = PlanBoats.WANTED.withStability(8, 20);
        figures(
                cause(CellProgramme.of(request(raft).withWanted(firm))),
                Cause.Kind.GREATEST,
                "wanted",
                20,
                "greatest",
                gm);
        Boat diver = PlanBoats.divingRaft(1600, MIDDLE, 385, List.of());
        figures(
                cause(CellProgramme.of(request(diver).withWanted(PlanBoats.WANTED.withStability(8, 4)))),
                Cause.Kind.GREATEST,
                "wanted",
                8,
                "greatest",
                (1600 * 5 + 770 * 10) / 2370.0);
    }

    /**
     * Lead 50 mm behind the middle to port and 150 mm before it to starboard: half in each keeps her from listing, three quarters behind from trimming, and nothing
     * from both.
     */
    @Test
    void whatCannotBeHadTogether() {
        Cause cause = cause(raft(
                1300,
                MIDDLE,
                zone("port", Zone.Use.BALLAST, TestParts.box(130, 10, -40, 170, 30, 0)),
                zone("starboard", Zone.Use.BALLAST, TestParts.box(330, -30, -40, 370, -10, 0))));
        assertEquals(Cause.Kind.TOGETHER, cause.kind());
        assertEquals(Map.of(), cause.figures());
    }

    private static Part stands(String id, double x, double volumeCm3) {
        return TestParts.weighed(
                id,
                Kind.FITTING,
                TestParts.box(x, -5, 60, x + 10, 5, 60 + 10 * volumeCm3),
                1e-9,
                TestParts.at(x + 5, 0, 60));
    }

    /** 800 cm³ of the raft stand above the line and what is built on her; named are the two largest that matter. */
    @Test
    void aTankThatIsTooSmallOrTooLarge() {
        Cause small = cause(programme(PlanBoats.divingRaft(1600, MIDDLE, 300, List.of())));
        figures(small, Cause.Kind.TANK_TOO_SMALL, "tankCm3", 600, "aboveCm3", 800, "neededCm3", 760);
        assertEquals(List.of("raft"), small.parts());
        Zone above = zone("above", Zone.Use.FOAM, TestParts.box(0, -20, 60, 10, 20, 61));
        Cause large = cause(programme(PlanBoats.divingRaft(1600, MIDDLE, 395, List.of(above))));
        figures(large, Cause.Kind.TANK_TOO_LARGE, "tankCm3", 790, "aboveCm3", 800, "roomCm3", 0.4, "neededCm3", 780);
        Boat towers = PlanBoats.divingRaft(
                1600,
                MIDDLE,
                385,
                List.of(),
                stands("low", 100, 45),
                stands("mast", 195, 60),
                stands("tower", 290, 46));
        List<Miss> misses = explained(programme(towers));
        Cause of = misses.stream()
                .filter(m -> m.aim() == Aim.RESIDUAL)
                .findFirst()
                .orElseThrow()
                .cause()
                .orElseThrow();
        figures(of, Cause.Kind.TANK_TOO_SMALL, "tankCm3", 770, "aboveCm3", 951, "neededCm3", 911);
        assertEquals(List.of("raft", "mast"), of.parts());
        Boat one =
                PlanBoats.divingRaft(1600, MIDDLE, 300, List.of(), stands("small", 195, 42), stands("mast", 195, 43));
        assertEquals(
                List.of("raft"),
                explained(programme(one)).stream()
                        .filter(m -> m.aim() == Aim.RESIDUAL)
                        .findFirst()
                        .orElseThrow()
                        .cause()
                        .orElseThrow()
                        .parts());
    }

    @Test
    void aTankInTheWrongPlace() {
        Boat diver = PlanBoats.divingRaft(1600, MIDDLE, 385, List.of());
        Cause along = cause(programme(Shifted.along(diver, "tank", 7)));
        figures(along, Cause.Kind.TANK_ALONG, "tankMm", 207, "aboveMm", 200);
        assertEquals(List.of("raft"), along.parts());
        Part aside = PlanBoats.tank("tank", "raft", TestParts.box(7.5, -38, 7.5, 392.5, 42, 32.5));
        figures(
                cause(programme(PlanBoats.raft(1600, MIDDLE, List.of(), aside))),
                Cause.Kind.TANK_ACROSS,
                "tankMm",
                2,
                "aboveMm",
                0);
    }
}
