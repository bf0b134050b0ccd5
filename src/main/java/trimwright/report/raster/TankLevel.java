package trimwright.report.raster;

import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import trimwright.boat.Piece;
import trimwright.immersion.Displacer;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/** How high the water stands in a tank, for drawing: to a thousandth of a millimetre. */
public final class TankLevel {

    private static final double NEAR_MM = 1e-3;
    private static final int MOST_STEPS = 200;

    private TankLevel() {}

    /**
     * Height of the water in a tank along the up direction of a plane, mm; empty where there is no water.
     *
     * @param water gives the direction: tank water lies level as the water outside does
     */
    public static Optional<Double> heightMm(Piece piece, WaterPlane water) {
        double fill = piece.part().fill();
        if (piece.tankRoom().isEmpty() || fill == 0) {
            return Optional.empty();
        }
        Displacer room = piece.tankRoom().get();
        double bottom = room.bottomMm(water.up());
        double top = room.topMm(water.up());
        if (fill == 1) {
            return Optional.of(top);
        }
        return Optional.of(new BrentSolver(NEAR_MM)
                .solve(
                        MOST_STEPS,
                        h -> Immersion.below(water.at(h), room.centroidMm())
                                        .add(room)
                                        .volumeMm3()
                                - fill * room.volumeMm3(),
                        bottom,
                        top));
    }
}
