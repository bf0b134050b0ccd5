package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * What is immersed at a trial waterline, whatever the boat weighs.
 *
 * @param plane the water surface
 * @param sums what lies below it
 * @param displacementG mass of the water displaced
 * @param gramsPerMmImmersion mass of the water that one more mm displaces, g/mm
 * @param wettedMm2 wetted area of the hull parts
 * @param waterplaneJumpMm2 how much the waterplane grows (or shrinks, negative) when the water rises through this height because flat faces
 *     lie in it; 0 where none does
 */
public record Waterline(
        WaterPlane plane,
        Immersion sums,
        double displacementG,
        double gramsPerMmImmersion,
        double wettedMm2,
        double waterplaneJumpMm2) {

    /** Share of the boat's length by which the planes just below and just above differ. */
    private static final double BESIDE = 1e-9;
    /** Change of the waterplane across that distance, as a share of the square of the boat's length, that makes a jump. */
    private static final double JUMP = 1e-4;

    /**
     * The waterlines at each of the heights, all parallel.
     *
     * @param direction which way is up; its own height is ignored
     */
    public static List<Waterline> table(Condition condition, WaterPlane direction, List<Double> heightsMm) {
        List<Waterline> table = new ArrayList<>();
        for (double height : heightsMm) {
            table.add(of(condition, direction.at(height)));
        }
        return List.copyOf(table);
    }

    /** The waterline at one plane. */
    public static Waterline of(Condition condition, WaterPlane plane) {
        Immersion sums = condition.below(plane);
        double beside = BESIDE * condition.lengthMm();
        double jump = condition.below(plane.at(plane.heightMm() + beside)).waterplaneMm2()
                - condition.below(plane.at(plane.heightMm() - beside)).waterplaneMm2();
        double least = JUMP * condition.lengthMm() * condition.lengthMm();
        return new Waterline(
                plane,
                sums,
                condition.densityGPerMm3() * sums.volumeMm3(),
                condition.densityGPerMm3() * sums.waterplaneMm2(),
                condition.wettedMm2(plane),
                jump > least || jump < -least ? jump : 0);
    }

    /** Centroid of the immersed volume; empty when nothing is immersed. */
    public Optional<Vector3D> centreOfBuoyancyMm() {
        return sums.volumeMm3() > 0 ? Optional.of(sums.centroidMm()) : Optional.empty();
    }

    /** Centroid of the waterplane; empty when there is none. */
    public Optional<Vector3D> centreOfFlotationMm() {
        return sums.waterplaneMm2() > 0 ? Optional.of(sums.centreOfFlotationMm()) : Optional.empty();
    }

    /** Transverse metacentric radius, about the boat's x axis laid level; empty when nothing is immersed. */
    public Optional<Double> bmTransverseMm() {
        return sums.volumeMm3() > 0 ? Optional.of(sums.inertiaPortMm4() / sums.volumeMm3()) : Optional.empty();
    }

    /** Longitudinal metacentric radius, about the level axis across; empty when nothing is immersed. */
    public Optional<Double> bmLongitudinalMm() {
        return sums.volumeMm3() > 0 ? Optional.of(sums.inertiaAheadMm4() / sums.volumeMm3()) : Optional.empty();
    }
}
