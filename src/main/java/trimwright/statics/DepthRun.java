package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Piece;
import trimwright.boat.Softness;
import trimwright.immersion.Displacer;

/**
 * What the pressure of the water does to a dived boat with full tanks: foam that gives way, air trapped in the hull, foam that has
 * soaked.
 *
 * <p>Volume of a part whose centre lies d metres under: V (1 − c d / 100) with its {@code compressionPercentPerM} c, until nothing is left;
 * V H / (H + d) for soft foam and air by Boyle's law, H = p₀ / (ρ g), the head of water that weighs as much as the atmosphere
 * (10.33 m of fresh water). The share {@code uptakePercent} of it is lost to soaking. Depth is that of the boat's highest point, and the
 * attitude the one in which she hangs under water. Afloat all this is left out: a pocket of air is taken at the pressure of the surface, which
 * five centimetres of water change by half a per cent.
 *
 * @param rows the table, from the surface down
 * @param soakedG lift that soaking takes when it has gone as far as the parts allow
 * @param noReturnM depth from which she no longer comes up by herself, as she is new; 0 when she sinks at once, empty when there is
 *     none down to {@link #SEARCHED_M}
 * @param noReturnSoakedM the same when soaked
 */
public record DepthRun(List<Row> rows, double soakedG, Optional<Double> noReturnM, Optional<Double> noReturnSoakedM) {

    /** Depth down to which the depth of no return is looked for, m. */
    public static final double SEARCHED_M = 30;

    /** Pressure of the atmosphere, Pa. */
    static final double ATMOSPHERE_PA = 101325;

    public DepthRun {
        rows = List.copyOf(rows);
    }

    /**
     * One depth.
     *
     * @param depthM depth of her highest point
     * @param residualG buoyancy less weight with full tanks, as she is new
     * @param soakedResidualG the same when soaked
     * @param bgMm distance of B above G, as she is new
     * @param trimDeg trim in which she hangs then, positive bow up
     */
    public record Row(double depthM, double residualG, double soakedResidualG, double bgMm, double trimDeg) {}

    /**
     * @param deepestM end of the table, m; positive
     * @param stepM step of the table, m; positive
     */
    public static DepthRun of(Condition condition, double deepestM, double stepM) {
        Run run = new Run(condition);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i * stepM <= deepestM * (1 + 1e-12); i++) {
            rows.add(run.row(i * stepM));
        }
        return new DepthRun(rows, run.soakedG(), run.noReturnM(false), run.noReturnM(true));
    }

    /**
     * Empty for a boat none of whose parts gives way to pressure or soaks.
     *
     * @param deepestM end of the table, m; positive
     * @param stepM step of the table, m; positive
     */
    public static Optional<DepthRun> ifPartsGiveWay(Condition condition, double deepestM, double stepM) {
        return condition.pieces().stream().anyMatch(DepthRun::givesWay)
                ? Optional.of(of(condition, deepestM, stepM))
                : Optional.empty();
    }

    private static boolean givesWay(Piece piece) {
        return piece.part().isAir() || !piece.part().softness().equals(Softness.NONE);
    }

    private static final class Run {

        private final Condition condition;
        private final Submerged submerged;
        private final double density;
        private final double topMm;
        private final double headM;
        private final List<Piece> yielding = new ArrayList<>();

        Run(Condition condition) {
            this.condition = condition;
            submerged = Submerged.of(condition);
            density = condition.densityGPerMm3();
            topMm = condition.topMm(submerged.up());
            headM = headM(density);
            for (Piece piece : condition.pieces()) {
                if (givesWay(piece) && piece.displacer().isPresent()) {
                    yielding.add(piece);
                }
            }
        }

        Row row(double depthM) {
            double lost = 0;
            Vector3D lostMoment = Vector3D.ZERO;
            for (Piece piece : yielding) {
                Displacer body = piece.displacer().get();
                double volume = body.volumeMm3() * lostShare(piece, depthM, false);
                lost += volume;
                lostMoment = lostMoment.add(volume, body.centroidMm());
            }
            double whole = condition.volumeMm3();
            Vector3D b = new Vector3D(whole, condition.volumeCentroidMm(), -1, lostMoment)
                    .scalarMultiply(1 / (whole - lost));
            Vector3D lever = b.subtract(submerged.centreOfGravityMm());
            return new Row(
                    depthM,
                    residualG(depthM, false),
                    residualG(depthM, true),
                    lever.getNorm(),
                    Equilibrium.trimDeg(lever));
        }

        double residualG(double depthM, boolean soaked) {
            double lost = 0;
            for (Piece piece : yielding) {
                lost += piece.displacer().get().volumeMm3() * lostShare(piece, depthM, soaked);
            }
            return submerged.residualG() - density * lost;
        }

        /** Share of its volume that a part has lost at a depth. */
        private double lostShare(Piece piece, double depthM, boolean soaked) {
            Softness softness = piece.part().softness();
            double centre = depthM
                    + (topMm - submerged.up().dotProduct(piece.displacer().get().centroidMm())) / 1000;
            double left = 1;
            if (piece.part().isAir() || softness.softFoam()) {
                left = headM / (headM + centre);
            } else if (softness.compressionPercentPerM().isPresent()) {
                // A linear law ends where nothing is left.
                left = Math.max(0, 1 - softness.compressionPercentPerM().get() * centre / 100);
            }
            double dry = soaked ? 1 - softness.uptakePercent().orElse(0.0) / 100 : 1;
            return 1 - left * dry;
        }

        double soakedG() {
            return residualG(0, false) - residualG(0, true);
        }

        Optional<Double> noReturnM(boolean soaked) {
            if (residualG(0, soaked) <= 0) {
                return Optional.of(0.0);
            }
            if (residualG(SEARCHED_M, soaked) > 0) {
                return Optional.empty();
            }
            return Optional.of(new BrentSolver(1e-6).solve(200, d -> residualG(d, soaked), 0, SEARCHED_M));
        }
    }

    /** Head of water that weighs as much as the atmosphere, m. */
    static double headM(double densityGPerMm3) {
        return ATMOSPHERE_PA / (densityGPerMm3 * 1e6 * SurfaceFilm.GRAVITY);
    }
}
