package trimwright.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Zone;

/**
 * Finds the physical reason of each miss: the aim is asked for alone, or with the line where it depends on that, and only when even this cannot be had
 * are its figures the cause.
 */
final class Causes {

    private static final double MM3_PER_CM3 = 1000;
    private static final int PARTS_NAMED = 2;

    private final CellProgramme programme;
    private final PlanModel model;
    private final PlanBasis basis;
    private final Wanted wanted;

    private Causes(CellProgramme programme, PlanModel model) {
        this.programme = programme;
        this.model = model;
        basis = programme.basis();
        wanted = programme.request().wanted();
    }

    /** The misses, each with its cause. */
    static List<Miss> explained(CellProgramme programme, PlanModel model, List<Miss> misses) {
        Causes causes = new Causes(programme, model);
        return misses.stream().map(m -> m.because(causes.of(m))).toList();
    }

    private Cause of(Miss miss) {
        Set<Aim> before = neededBefore(miss.aim());
        if (!holds(before)) {
            return plain(Cause.Kind.FOLLOWS);
        }
        Set<Aim> with = EnumSet.copyOf(before);
        with.add(miss.aim());
        return holds(with) ? greatestOrTogether(miss.aim()) : specific(miss);
    }

    /** The aims without which another has no meaning: how she dives and stands depends on her being on her line. */
    private static Set<Aim> neededBefore(Aim aim) {
        return switch (aim) {
            case LINE -> EnumSet.noneOf(Aim.class);
            case DIVED_TRIM -> EnumSet.of(Aim.LINE, Aim.TRIM, Aim.RESIDUAL);
            case DIVED_LIST -> EnumSet.of(Aim.LINE, Aim.LIST, Aim.RESIDUAL);
            default -> EnumSet.of(Aim.LINE);
        };
    }

    private boolean holds(Set<Aim> aims) {
        return model.holding(aims).solve().isOptimal();
    }

    private Cause specific(Miss miss) {
        boolean high = miss.amount() > 0;
        return switch (miss.aim()) {
            case LINE -> high ? tooHeavy() : tooLight();
            case TRIM -> weight(Cause.Kind.WEIGHT_ALONG, Vector3D.PLUS_I);
            case LIST -> weight(Cause.Kind.WEIGHT_ACROSS, Vector3D.PLUS_J);
            case RESIDUAL -> high ? tankTooSmall() : tankTooLarge();
            case DIVED_TRIM -> tank(Cause.Kind.TANK_ALONG, Vector3D.PLUS_I);
            case DIVED_LIST -> tank(Cause.Kind.TANK_ACROSS, Vector3D.PLUS_J);
            default -> greatestOrTogether(miss.aim());
        };
    }

    private static Cause plain(Cause.Kind kind) {
        return new Cause(kind, Map.of(), List.of());
    }

    private Cause tooHeavy() {
        return new Cause(
                Cause.Kind.TOO_HEAVY,
                Map.of("weightG", weightG(), "carriedG", carriedG(), "roomG", roomG(Zone.Use.FOAM)),
                List.of());
    }

    private Cause tooLight() {
        return new Cause(
                Cause.Kind.TOO_LIGHT,
                Map.of("weightG", weightG(), "carriedG", carriedG(), "roomG", roomG(Zone.Use.BALLAST)),
                List.of());
    }

    private double weightG() {
        return basis.boat.massG();
    }

    private double carriedG() {
        return basis.density * basis.boat.surfacedMm3();
    }

    /** What all the room for lead or foam does at the line: weight in the water, or lift. */
    private double roomG(Zone.Use use) {
        double sum = 0;
        for (Choice choice : model.choices()) {
            if (!choice.spots().isEmpty() && choice.spots().get(0).use() == use) {
                Influence i = choice.unknown().perUnit();
                sum += choice.unknown().most() * (basis.density * i.surfacedMm3() - i.massG());
            }
        }
        return Math.abs(sum);
    }

    private Cause tankTooSmall() {
        return new Cause(
                Cause.Kind.TANK_TOO_SMALL,
                Map.of(
                        "tankCm3",
                        tankCm3(),
                        "aboveCm3",
                        aboveMm3() / MM3_PER_CM3,
                        "neededCm3",
                        (aboveMm3() - wanted.residualG().greatest() / basis.density) / MM3_PER_CM3),
                standingAbove());
    }

    private Cause tankTooLarge() {
        double room = programme.rooms().stream()
                .filter(r -> r.zone().use() == Zone.Use.FOAM && r.inside().isEmpty())
                .mapToDouble(Room::aboveLineMm3)
                .sum();
        return new Cause(
                Cause.Kind.TANK_TOO_LARGE,
                Map.of(
                        "tankCm3",
                        tankCm3(),
                        "aboveCm3",
                        aboveMm3() / MM3_PER_CM3,
                        "roomCm3",
                        room / MM3_PER_CM3,
                        "neededCm3",
                        (aboveMm3() - wanted.residualG().least() / basis.density) / MM3_PER_CM3),
                standingAbove());
    }

    private double tankCm3() {
        return basis.condition.tankVolumeMm3() / MM3_PER_CM3;
    }

    private double aboveMm3() {
        return basis.boat.wholeMm3() - basis.boat.surfacedMm3();
    }

    private List<String> standingAbove() {
        List<Map.Entry<String, Double>> parts =
                new ArrayList<>(basis.standingAboveMm3(basis.surfaced).entrySet());
        parts.sort(Map.Entry.<String, Double>comparingByValue().reversed());
        return parts.stream()
                .filter(e -> e.getValue() > 0.05 * aboveMm3())
                .limit(PARTS_NAMED)
                .map(Map.Entry::getKey)
                .toList();
    }

    private Cause weight(Cause.Kind kind, Vector3D axis) {
        return new Cause(
                kind,
                Map.of(
                        "weightMm",
                        basis.boat.massMoment().dotProduct(axis) / basis.boat.massG(),
                        "carriedMm",
                        basis.boat.surfacedMoment().dotProduct(axis) / basis.boat.surfacedMm3()),
                List.of());
    }

    private Cause tank(Cause.Kind kind, Vector3D axis) {
        Vector3D above = basis.boat.wholeMoment().subtract(basis.boat.surfacedMoment());
        return new Cause(
                kind,
                Map.of(
                        "tankMm",
                        basis.boat.tankMoment().dotProduct(axis) / basis.boat.tankG(),
                        "aboveMm",
                        above.dotProduct(axis) / aboveMm3()),
                standingAbove());
    }

    /** The greatest BG or GM when only that aim gives way; of other aims nothing more is known. */
    private Cause greatestOrTogether(Aim aim) {
        if (aim != Aim.BG && aim != Aim.GM) {
            return plain(Cause.Kind.TOGETHER);
        }
        Set<Aim> only = EnumSet.of(aim);
        LinearProgramme.Solution solution = model.elastic(only).solve();
        List<Miss> misses = solution.isOptimal() ? model.misses(solution.x(), only) : List.of();
        if (misses.size() != 1) {
            return plain(Cause.Kind.TOGETHER);
        }
        double value = aim == Aim.BG ? wanted.bgMm() : wanted.gmMm();
        return new Cause(
                Cause.Kind.GREATEST,
                Map.of("wanted", value, "greatest", value + misses.get(0).amount()),
                List.of());
    }
}
