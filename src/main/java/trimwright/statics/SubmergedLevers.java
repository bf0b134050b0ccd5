package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The righting curve of a boat wholly under water with full tanks. With d = B − G fixed in the boat and q(φ) = d_y sin φ + d_z cos φ, the
 * trim of least energy is θ = atan2(d_x, q), stable where q &gt; 0; there e* = −√(d_x² + q²) and GZ = −cos θ · dq/dφ. With d upright that
 * is BG sin φ. Beyond 90° from her rest no trim is stable: she would rather go over the end.
 */
final class SubmergedLevers {

    private SubmergedLevers() {}

    static RightingCurve of(Condition condition, double stepDeg) {
        if (!(stepDeg > 0)) {
            throw new IllegalArgumentException("the step of the list must be positive, found " + stepDeg + "°");
        }
        Submerged submerged = Submerged.of(condition);
        Vector3D d = submerged.centreOfBuoyancyMm().subtract(submerged.centreOfGravityMm());
        double weight = condition.withAllTanksAt(1).massG();
        int last = (int) Math.floor(180 / stepDeg + 1e-9);
        List<RightingCurve.Row> rows = new ArrayList<>();
        for (int k = -last; k <= last; k++) {
            double heel = Math.toRadians(k * stepDeg);
            double q = d.getY() * Math.sin(heel) + d.getZ() * Math.cos(heel);
            if (q > 1e-12 * d.getNorm()) {
                double trim = Math.atan2(d.getX(), q);
                double gz = Math.cos(trim) * (d.getZ() * Math.sin(heel) - d.getY() * Math.cos(heel));
                rows.add(new RightingCurve.Row(k * stepDeg, Math.toDegrees(trim), gz, gz * weight));
            }
        }
        return new RightingCurve(
                new RightingCurve.Attitude(submerged.heelDeg(), submerged.trimDeg()),
                rows,
                summary(submerged.heelDeg(), Math.abs(d.getX()), Math.hypot(d.getY(), d.getZ())),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    /**
     * With a list ψ from her rest q = a cos ψ, so that GZ = a² cos ψ sin ψ / √(d_x² + a² cos² ψ), greatest where
     * a² cos⁴ ψ + 2 d_x² cos² ψ = d_x².
     *
     * @param along |d_x|
     * @param across a, the part of d across the boat's x axis
     */
    private static RightingCurve.Summary summary(double heelDeg, double along, double across) {
        double bg = Math.hypot(along, across);
        double c2 = across > 0 ? along * (bg - along) / (across * across) : 0;
        double greatest = c2 > 0
                ? across * across * Math.sqrt(c2 * (1 - c2)) / Math.sqrt(along * along + across * across * c2)
                : across;
        double at = heelDeg + Math.toDegrees(Math.acos(Math.sqrt(c2)));
        return new RightingCurve.Summary(90, greatest, at, bg - along, true);
    }
}
