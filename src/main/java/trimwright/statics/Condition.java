package trimwright.statics;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Water;
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
    private final Displacement displacement;
    private final List<TankWater> tanks;
    private final double dryMassG;
    private final Vector3D dryMomentGmm;

    private Condition(
            Boat boat,
            List<Piece> pieces,
            Displacement displacement,
            List<TankWater> tanks,
            double dryMassG,
            Vector3D dryMomentGmm) {
        this.boat = boat;
        this.pieces = pieces;
        this.displacement = displacement;
        this.tanks = List.copyOf(tanks);
        this.dryMassG = dryMassG;
        this.dryMomentGmm = dryMomentGmm;
    }

    /** The boat with the fills and in the water that she states. */
    public static Condition of(Boat boat) {
        List<Piece> pieces = List.copyOf(boat.pieces());
        List<TankWater> tanks = new ArrayList<>();
        double mass = 0;
        Vector3D moment = Vector3D.ZERO;
        for (Piece piece : pieces) {
            mass += piece.massG();
            moment = moment.add(piece.massG(), piece.centreMm());
            if (piece.tankRoom().isPresent()) {
                tanks.add(new TankWater(
                        piece.id(), piece.tankRoom().get(), piece.part().fill()));
            }
        }
        List<Displacer> bodies =
                pieces.stream().flatMap(p -> p.displacer().stream()).toList();
        return new Condition(boat, pieces, Displacement.of(bodies), tanks, mass, moment);
    }

    /**
     * The same boat with other fills.
     *
     * @param fillById 0…1 by the id of the part; a tank that is not named keeps its fill
     */
    public Condition filled(Map<String, Double> fillById) {
        List<TankWater> refilled = new ArrayList<>(tanks);
        int next = 0;
        for (Piece piece : pieces) {
            if (piece.tankRoom().isPresent()) {
                TankWater old = tanks.get(next);
                refilled.set(next, old.at(fillById.getOrDefault(piece.part().id(), old.fill())));
                next++;
            }
        }
        return with(boat.filled(fillById), refilled);
    }

    /** The same boat with every tank filled alike, 0…1. */
    public Condition withAllTanksAt(double fill) {
        Map<String, Double> fills = new HashMap<>();
        boat.parts().stream().filter(Part::isTank).forEach(tank -> fills.put(tank.id(), fill));
        return filled(fills);
    }

    /** The same boat in other water. */
    public Condition in(Water water) {
        return with(boat.in(water), tanks);
    }

    /** The same boat carrying another mass that displaces nothing, such as a weight laid on her. */
    public Condition carrying(double massG, Vector3D centreMm) {
        return new Condition(boat, pieces, displacement, tanks, dryMassG + massG, dryMomentGmm.add(massG, centreMm));
    }

    /** The same boat with masses moved so that their first moment changes, g·mm: mass times way. */
    public Condition shifted(Vector3D momentGmm) {
        return new Condition(boat, pieces, displacement, tanks, dryMassG, dryMomentGmm.add(momentGmm));
    }

    /**
     * The same boat with water that moves freely in a watertight room of hers.
     *
     * @param id what to call the room
     * @param waterMm3 how much water; between nothing and the room's volume
     */
    Condition leaking(String id, Displacer room, double waterMm3) {
        return with(boat, with(new TankWater(id, room, waterMm3 / room.volumeMm3())));
    }

    /**
     * The same boat with a free-flooding room of hers closed: a given volume of water in it cannot leave, and keeps a level of its own.
     *
     * @param waterMm3 how much water; between nothing and the room's volume
     */
    Condition holding(String id, Displacer room, double waterMm3) {
        List<TankWater> more = with(TankWater.heldInHull(id, room, waterMm3 / room.volumeMm3()));
        return new Condition(boat, pieces, displacement.with(room), more, dryMassG, dryMomentGmm);
    }

    /** The same boat, her volumes below a plane summed roughly and fast: for looking round before the exact answer. */
    Condition roughly() {
        return new Condition(boat, pieces, displacement.roughly(), tanks, dryMassG, dryMomentGmm);
    }

    /** Whether volumes are summed roughly. */
    boolean isRough() {
        return displacement.grainMm() > 0;
    }

    private Condition with(Boat otherBoat, List<TankWater> otherTanks) {
        return new Condition(otherBoat, pieces, displacement, otherTanks, dryMassG, dryMomentGmm);
    }

    private List<TankWater> with(TankWater another) {
        List<TankWater> more = new ArrayList<>(tanks);
        more.add(another);
        return more;
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
        return boat.water().densityGPerMm3();
    }

    /** Mass without tank water. */
    public double dryMassG() {
        return dryMassG;
    }

    /** First moment of the mass without tank water about the origin, g·mm. */
    public Vector3D dryMomentGmm() {
        return dryMomentGmm;
    }

    /** Mass with tank water. */
    public double massG() {
        double mass = dryMassG;
        for (TankWater tank : tanks) {
            mass += densityGPerMm3() * tank.waterMm3();
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
            double water = densityGPerMm3() * tank.waterMm3();
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
        return levelAbove(immersedMm3, direction, this::below, Double.NaN, LevelSearch.TOLERANCE)
                .plane();
    }

    /**
     * The sums below the plane in this direction below which a volume lies, between nothing and everything, mm³.
     *
     * @param below the sums below a plane, so that the caller can count
     * @param guessMm a height to start from; NaN for none
     * @param tolerance share of the volume that may be missing
     */
    Immersion levelAbove(
            double immersedMm3,
            WaterPlane direction,
            Function<WaterPlane, Immersion> below,
            double guessMm,
            double tolerance) {
        // The box around her is a bracket that costs nothing; her highest point would take a search of its own.
        double middle = direction.up().dotProduct(middleMm());
        double reach = displacement.reachMm(direction.up());
        return LevelSearch.plane(direction, below, immersedMm3, middle - reach, middle + reach, guessMm, tolerance);
    }

    /** Water that stands in free-flooding rooms above the level outside, g. */
    double heldAboveG(WaterPlane outside) {
        double volume = 0;
        for (TankWater tank : tanks) {
            volume += tank.heldAboveMm3(outside);
        }
        return densityGPerMm3() * volume;
    }

    /**
     * What the water outside has to carry, g: her mass without the water in free-flooding rooms that stands no higher than the level
     * outside. Metacentric heights are told for this weight, so that they do not change when an open room is counted as closed.
     */
    double carriedG(WaterPlane outside) {
        double freeMm3 = 0;
        for (TankWater tank : tanks) {
            freeMm3 += tank.isFreeFlooding() ? tank.waterMm3() : 0;
        }
        return freeMm3 == 0 ? massG() : massG() - densityGPerMm3() * freeMm3 + heldAboveG(outside);
    }

    /** Volume of everything that can be under water, mm³. */
    public double volumeMm3() {
        return displacement.volumeMm3();
    }

    /** Centroid of everything that can be under water. */
    public Vector3D volumeCentroidMm() {
        return displacement.centroidMm();
    }

    /** Volume of all tanks, mm³. */
    public double tankVolumeMm3() {
        return tanks.stream().mapToDouble(TankWater::roomMm3).sum();
    }

    /** What all immersible volume could still carry, g; negative when she is too heavy to float. */
    public double reserveG() {
        return densityGPerMm3() * volumeMm3() - massG();
    }

    /** Everything below the plane, with moments about a point near the boat's middle. */
    public Immersion below(WaterPlane plane) {
        return displacement.below(plane);
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
        return displacement.middleMm();
    }

    /** Diagonal of that box: the length by which moments are judged small. */
    public double lengthMm() {
        return displacement.lengthMm();
    }

    /** Breadth over all, along the boat's y axis. */
    public double beamMm() {
        return topMm(Vector3D.PLUS_J) - bottomMm(Vector3D.PLUS_J);
    }

    /** Height of the highest displacing point along the unit vector {@code up}. */
    public double topMm(Vector3D up) {
        return displacement.topMm(up);
    }

    /** Height of the lowest displacing point along {@code up}. */
    public double bottomMm(Vector3D up) {
        return -displacement.topMm(up.negate());
    }
}
