package trimwright.statics;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.MeshShape;
import trimwright.boat.Piece;
import trimwright.boat.Shape;
import trimwright.mesh.Bounds;

/**
 * An estimate of how long a roll takes, over and back: T = 2π k / √(g GM), with the radius of gyration k of the masses themselves about
 * a level axis through G lying fore and aft. The water that rolls with her, inside a free-flooding hull and around it, is left out and makes the
 * real period longer.
 *
 * @param radiusOfGyrationMm k
 * @param gmMm transverse metacentric height; positive
 * @param periodS T
 */
public record RollPeriod(double radiusOfGyrationMm, double gmMm, double periodS) {

    private static final double GRAVITY_MM_PER_S2 = 9806.65;

    /** Afloat with the fills at hand; empty where she sinks or has no righting moment. */
    public static Optional<RollPeriod> afloat(Condition condition) {
        return Flotation.floats(condition)
                ? of(condition, Balance.settle(condition, Balance.upright(condition)))
                : Optional.empty();
    }

    /**
     * 1/T² in s⁻², negative where she has no righting moment; smooth where T itself is not.
     *
     * @param rest where she rests
     */
    public static double perSecondSquared(Condition condition, Equilibrium rest) {
        double k2 = inertiaGmm2(condition, rest) / rest.massG();
        return GRAVITY_MM_PER_S2 * rest.gmTransverseMm() / (4 * Math.PI * Math.PI * k2);
    }

    static Optional<RollPeriod> of(Condition condition, Equilibrium rest) {
        double gm = rest.gmTransverseMm();
        if (!(gm > 0)) {
            return Optional.empty();
        }
        double k = Math.sqrt(inertiaGmm2(condition, rest) / rest.massG());
        return Optional.of(new RollPeriod(k, gm, 2 * Math.PI * k / Math.sqrt(GRAVITY_MM_PER_S2 * gm)));
    }

    /** Moment of inertia of parts and tank water about the axis ahead through G; the tank water counts as a point. */
    private static double inertiaGmm2(Condition condition, Equilibrium rest) {
        Vector3D axis = rest.plane().ahead();
        double sum = 0;
        for (Piece piece : condition.pieces()) {
            sum += piece.massG() * (arm2(piece.centreMm(), rest.centreOfGravityMm(), axis) + own(piece));
        }
        for (TankWater tank : condition.tanks()) {
            double water = condition.densityGPerMm3() * tank.waterMm3();
            if (water > 0) {
                Vector3D centre = tank.level(rest.plane(), Double.NaN).centroidMm();
                sum += water * arm2(centre, rest.centreOfGravityMm(), axis);
            }
        }
        return sum;
    }

    private static double arm2(Vector3D point, Vector3D g, Vector3D axis) {
        return point.subtract(g).crossProduct(axis).getNormSq();
    }

    /** Square of a part's own radius of gyration about the boat's x axis through its centre, mm². */
    private static double own(Piece piece) {
        if (piece.surface().isPresent()) {
            return ((MeshShape) piece.part().shape().orElseThrow()).rollGyrationMm2();
        }
        Optional<Shape> shape = piece.part().shape();
        if (shape.isEmpty()) {
            return 0;
        }
        if (shape.get() instanceof BarShape bar) {
            Vector3D axis = bar.toMm().subtract(bar.fromMm()).normalize();
            double along = axis.getX() * axis.getX();
            double r2 = bar.diameterMm() * bar.diameterMm() / 4;
            double length2 = bar.lengthMm() * bar.lengthMm();
            return along * r2 / 2 + (1 - along) * (3 * r2 + length2) / 12;
        }
        Bounds box = shape.get().bounds();
        return (box.sizeY() * box.sizeY() + box.sizeZ() * box.sizeZ()) / 12;
    }
}
