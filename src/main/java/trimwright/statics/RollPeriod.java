package trimwright.statics;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.MeshShape;
import trimwright.boat.Piece;
import trimwright.boat.Shape;
import trimwright.mesh.Bounds;
import trimwright.mesh.TriangleMesh;
import trimwright.mesh.Triangles;

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
            return ofSurface(((MeshShape) piece.part().shape().orElseThrow()).mesh());
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

    /** Of a thin shell: ∫ (y² + z²) dA / A about the centroid of the surface; over a triangle by its edge middles, which is exact. */
    private static double ofSurface(TriangleMesh mesh) {
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        double area = 0;
        double y1 = 0;
        double z1 = 0;
        double second = 0;
        double y0 = mesh.bounds().centreY();
        double z0 = mesh.bounds().centreZ();
        for (int t = 0; t < corners.length; t += 3) {
            double a = Triangles.area(xyz, 3 * corners[t], 3 * corners[t + 1], 3 * corners[t + 2]);
            area += a;
            for (int k = 0; k < 3; k++) {
                int p = 3 * corners[t + k];
                int q = 3 * corners[t + (k + 1) % 3];
                double y = 0.5 * (xyz[p + 1] + xyz[q + 1]) - y0;
                double z = 0.5 * (xyz[p + 2] + xyz[q + 2]) - z0;
                y1 += a / 3 * y;
                z1 += a / 3 * z;
                second += a / 3 * (y * y + z * z);
            }
        }
        return area == 0 ? 0 : second / area - (y1 * y1 + z1 * z1) / (area * area);
    }
}
