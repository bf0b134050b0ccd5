package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Piece;
import trimwright.immersion.Displacer;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * A boat as loaded, ready to be floated: what she weighs, what she displaces, how full her tanks are. Immutable.
 *
 * <p>Masses g, lengths mm, volumes mm³, boat's frame.
 */
public final class Condition {

    private final Boat boat;
    private final List<Piece> pieces;
    private final List<Displacer> displacers;
    private final List<TankWater> tanks;
    private final double densityGPerMm3;
    private final double dryMassG;
    private final Vector3D dryMomentGmm;
    private final double volumeMm3;
    private final Vector3D volumeCentroidMm;
    private final Vector3D middleMm;
    private final double lengthMm;

    private Condition(Boat boat, List<Piece> pieces, List<TankWater> tanks) {
        this.boat = boat;
        this.pieces = List.copyOf(pieces);
        this.tanks = List.copyOf(tanks);
        this.displacers = pieces.stream().flatMap(p -> p.displacer().stream()).toList();
        this.densityGPerMm3 = boat.water().densityGPerMm3();
        double mass = 0;
        Vector3D moment = Vector3D.ZERO;
        for (Piece piece : pieces) {
            mass += piece.massG();
            moment = moment.add(piece.massG(), piece.centreMm());
        }
        dryMassG = mass;
        dryMomentGmm = moment;
        double volume = 0;
        Vector3D volumeMoment = Vector3D.ZERO;
        for (Displacer displacer : displacers) {
            volume += displacer.volumeMm3();
            volumeMoment = volumeMoment.add(displacer.volumeMm3(), displacer.centroidMm());
        }
        volumeMm3 = volume;
        volumeCentroidMm = volume > 0 ? volumeMoment.scalarMultiply(1 / volume) : Vector3D.ZERO;
        Vector3D highest = new Vector3D(topMm(Vector3D.PLUS_I), topMm(Vector3D.PLUS_J), topMm(Vector3D.PLUS_K));
        Vector3D lowest = new Vector3D(bottomMm(Vector3D.PLUS_I), bottomMm(Vector3D.PLUS_J), bottomMm(Vector3D.PLUS_K));
        middleMm = displacers.isEmpty() ? Vector3D.ZERO : new Vector3D(0.5, highest, 0.5, lowest);
        lengthMm = displacers.isEmpty() ? 1 : highest.distance(lowest);
    }

    /** The boat with the fills and in the water that she states. */
    public static Condition of(Boat boat) {
        List<Piece> pieces = boat.pieces();
        List<TankWater> tanks = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.tankRoom().isPresent()) {
                tanks.add(new TankWater(
                        piece.id(), piece.tankRoom().get(), piece.part().fill()));
            }
        }
        return new Condition(boat, pieces, tanks);
    }

    /**
     * The same boat with other fills.
     *
     * @param fillById 0…1 by the id of the part; a tank that is not named keeps its fill
     */
    public Condition filled(Map<String, Double> fillById) {
        Boat changed = boat.filled(fillById);
        List<TankWater> refilled = new ArrayList<>();
        int next = 0;
        for (Piece piece : pieces) {
            if (piece.tankRoom().isPresent()) {
                TankWater old = tanks.get(next++);
                double fill = fillById.getOrDefault(piece.part().id(), old.fill());
                refilled.add(old.at(fill));
            }
        }
        return new Condition(changed, pieces, refilled);
    }

    /** The same boat with every tank filled alike, 0…1. */
    public Condition withAllTanksAt(double fill) {
        return new Condition(
                boat.withAllTanksAt(fill),
                pieces,
                tanks.stream().map(t -> t.at(fill)).toList());
    }

    public Boat boat() {
        return boat;
    }

    public List<Piece> pieces() {
        return pieces;
    }

    List<TankWater> tanks() {
        return tanks;
    }

    /** Density of the water outside and in the tanks, g/mm³. */
    public double densityGPerMm3() {
        return densityGPerMm3;
    }

    /** Mass without tank water. */
    public double dryMassG() {
        return dryMassG;
    }

    /** First moment of the mass without tank water about the origin, g·mm. */
    Vector3D dryMomentGmm() {
        return dryMomentGmm;
    }

    /** Mass with tank water. */
    public double massG() {
        double mass = dryMassG;
        for (TankWater tank : tanks) {
            mass += densityGPerMm3 * tank.waterMm3();
        }
        return mass;
    }

    /** Centre of gravity with the tank water lying level in the plane's direction. */
    public Vector3D centreOfGravityMm(WaterPlane plane) {
        TankLoad water = tankLoad(plane);
        double mass = dryMassG + water.massG();
        return mass == 0 ? Vector3D.ZERO : dryMomentGmm.add(water.momentGmm()).scalarMultiply(1 / mass);
    }

    /** The tank water as it lies when the surface outside has this direction. */
    public TankLoad tankLoad(WaterPlane direction) {
        TankLoad load = new TankLoad(0, Vector3D.ZERO, 0, 0);
        for (TankWater tank : tanks) {
            double water = densityGPerMm3 * tank.waterMm3();
            if (water > 0) {
                TankWater.Level level = tank.level(direction, Double.NaN);
                load = new TankLoad(
                        load.massG() + water,
                        load.momentGmm().add(water, level.centroidMm()),
                        load.inertiaAheadMm4() + level.inertiaAheadMm4(),
                        load.inertiaPortMm4() + level.inertiaPortMm4());
            }
        }
        return load;
    }

    /** The plane in this direction below which a volume lies, between nothing and everything, mm³. */
    public WaterPlane planeAbove(double immersedMm3, WaterPlane direction) {
        return LevelSearch.plane(
                        direction,
                        this::below,
                        immersedMm3,
                        bottomMm(direction.up()),
                        topMm(direction.up()),
                        Double.NaN)
                .plane();
    }

    /** Volume of everything that can be under water, mm³. */
    public double volumeMm3() {
        return volumeMm3;
    }

    /** Centroid of everything that can be under water. */
    public Vector3D volumeCentroidMm() {
        return volumeCentroidMm;
    }

    /** Volume of all tanks, mm³. */
    public double tankVolumeMm3() {
        return tanks.stream().mapToDouble(TankWater::roomMm3).sum();
    }

    /** What all immersible volume could still carry, g; negative when she is too heavy to float. */
    public double reserveG() {
        return densityGPerMm3 * volumeMm3 - massG();
    }

    /** Everything below the plane, with moments about a point near the boat's middle. */
    public Immersion below(WaterPlane plane) {
        Immersion sum = Immersion.below(plane, middleMm);
        for (Displacer displacer : displacers) {
            sum.add(displacer);
        }
        return sum;
    }

    /** Wetted area of the hull parts below the plane, mm². */
    public double wettedMm2(WaterPlane plane) {
        double sum = 0;
        for (Piece piece : pieces) {
            if (piece.surface().isPresent()) {
                sum += piece.surface().get().areaBelowMm2(plane);
            }
        }
        return sum;
    }

    /** Middle of the box around everything that displaces. */
    Vector3D middleMm() {
        return middleMm;
    }

    /** Diagonal of that box: the length by which moments are judged small. */
    public double lengthMm() {
        return lengthMm;
    }

    /** Height of the highest displacing point along the unit vector {@code up}. */
    public double topMm(Vector3D up) {
        double top = Double.NEGATIVE_INFINITY;
        for (Displacer displacer : displacers) {
            top = Math.max(top, displacer.topMm(up));
        }
        return top;
    }

    /** Height of the lowest displacing point along {@code up}. */
    public double bottomMm(Vector3D up) {
        double bottom = Double.POSITIVE_INFINITY;
        for (Displacer displacer : displacers) {
            bottom = Math.min(bottom, displacer.bottomMm(up));
        }
        return bottom;
    }
}
