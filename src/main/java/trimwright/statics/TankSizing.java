package trimwright.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Piece;
import trimwright.immersion.Displacer;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * How large the tank has to be and where its middle belongs. What stands above the waterline has to go under, but for the reserve that is
 * wanted; the tank has to take in as much water as that displaces. She dives level when the tank lies, seen from above, under the
 * centroid of what it takes under.
 *
 * @param line the waterline: the painted one, or the one she floats on with empty tanks where none is painted
 * @param painted whether it is the painted one
 * @param above what stands above it, by part, the largest first
 * @param aboveMm3 volume of all that
 * @param wanted the reserve wanted
 * @param neededMm3 tank volume needed for the middle of that band
 * @param thereMm3 volume of the tanks there
 * @param wantedCentreMm where the middle of the tank has to be, of which only x and y matter; empty when no tank is needed
 * @param centreMm centroid of the tanks there; empty when there are none
 */
public record TankSizing(
        WaterPlane line,
        boolean painted,
        List<Above> above,
        double aboveMm3,
        ResidualWanted wanted,
        double neededMm3,
        double thereMm3,
        Optional<Vector3D> wantedCentreMm,
        Optional<Vector3D> centreMm) {

    public TankSizing {
        above = List.copyOf(above);
    }

    /**
     * What of a part stands above the line: so much tank it costs.
     *
     * @param piece the part, or the twin of a mirrored one
     * @param volumeMm3 its volume above the line
     * @param centroidMm centroid of that
     */
    public record Above(Piece piece, double volumeMm3, Vector3D centroidMm) {}

    /**
     * For a boat that has a painted line, or floats with empty tanks.
     *
     * @return empty for a boat that has neither
     */
    public static Optional<TankSizing> of(Condition condition) {
        Condition empty = condition.withAllTanksAt(0);
        Optional<WaterPlane> painted = condition.boat().paintedLine().map(p -> p.plane());
        if (painted.isPresent()) {
            return Optional.of(at(empty, painted.get(), true));
        }
        return Flotation.floats(empty)
                ? Optional.of(
                        at(empty, Balance.settle(empty, Balance.upright(empty)).plane(), false))
                : Optional.empty();
    }

    private static TankSizing at(Condition condition, WaterPlane line, boolean painted) {
        List<Above> above = new ArrayList<>();
        for (Piece piece : condition.pieces()) {
            piece.displacer().flatMap(body -> above(piece, body, line)).ifPresent(above::add);
        }
        above.sort(Comparator.comparingDouble(Above::volumeMm3).reversed());
        Immersion below = condition.below(line);
        double aboveMm3 = condition.volumeMm3() - below.volumeMm3();
        ResidualWanted wanted = ResidualWanted.of(condition);
        double needed = aboveMm3 - wanted.middleG() / condition.densityGPerMm3();
        double there = condition.tankVolumeMm3();
        return new TankSizing(
                line,
                painted,
                above,
                aboveMm3,
                wanted,
                needed,
                there,
                needed > 0 ? Optional.of(middleOfNext(condition, below, needed)) : Optional.empty(),
                there > 0 ? Optional.of(middleOfTanks(condition)) : Optional.empty());
    }

    private static Optional<Above> above(Piece piece, Displacer body, WaterPlane line) {
        Immersion below = Immersion.below(line, body.centroidMm()).add(body);
        double volume = body.volumeMm3() - below.volumeMm3();
        // Less than rounding leaves of a body that is wholly under.
        if (!(volume > 1e-9 * body.volumeMm3())) {
            return Optional.empty();
        }
        Vector3D moment = new Vector3D(body.volumeMm3(), body.centroidMm(), -below.volumeMm3(), below.centroidMm());
        return Optional.of(new Above(piece, volume, moment.scalarMultiply(1 / volume)));
    }

    /** Centroid of the next so many mm³ above what is below, up to a plane parallel to it. */
    private static Vector3D middleOfNext(Condition condition, Immersion below, double volumeMm3) {
        Immersion dived = condition.below(condition.planeAbove(below.volumeMm3() + volumeMm3, below.plane()));
        Vector3D moment = new Vector3D(dived.volumeMm3(), dived.centroidMm(), -below.volumeMm3(), below.centroidMm());
        return moment.scalarMultiply(1 / (dived.volumeMm3() - below.volumeMm3()));
    }

    private static Vector3D middleOfTanks(Condition condition) {
        Vector3D moment = Vector3D.ZERO;
        double volume = 0;
        for (TankWater tank : condition.tanks()) {
            moment = moment.add(tank.roomMm3(), tank.middleMm());
            volume += tank.roomMm3();
        }
        return moment.scalarMultiply(1 / volume);
    }
}
