package trimwright.statics;

import java.util.List;
import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * The potential energy of a boat and the water at a trial water plane, with its slopes and curvatures (docs/statics.md, section 2).
 *
 * <p>With the plane n · p = h the energy is Φ = ρ ∫ (h − n · p) dV over the immersed volume, plus W (n · G − h). It is least in h where
 * she carries her weight, and there equals W e(n), e = n · (G − B). Energies g·mm, taken about the reference of the sums; slopes per mm of
 * height and per radian of turning up toward {@code ahead} and toward {@code port}.
 */
final class Trial {

    private final WaterPlane plane;
    private final Immersion sums;
    private final double massG;
    private final double[] tankLevelsMm;
    private final Vector3D centreOfGravity;

    /** Force left over, g: buoyancy less weight. */
    final double force;
    /** Slopes of the energy. */
    final double slopeAhead;

    final double slopePort;
    /** Curvatures of the energy with the height held. */
    final double curveHeight;

    final double curveHeightAhead;
    final double curveHeightPort;
    final double curveAhead;
    final double curvePort;
    final double curveMixed;

    private Trial(Condition condition, Immersion sums, double[] guesses) {
        this.plane = sums.plane();
        this.sums = sums;
        double density = condition.densityGPerMm3();
        List<TankWater> tanks = condition.tanks();
        Vector3D moment = condition.dryMomentGmm();
        double mass = condition.dryMassG();
        double freeAhead = 0;
        double freePort = 0;
        double freeMixed = 0;
        tankLevelsMm = new double[tanks.size()];
        for (int i = 0; i < tankLevelsMm.length; i++) {
            TankWater tank = tanks.get(i);
            double water = density * tank.waterMm3();
            if (water == 0) {
                tankLevelsMm[i] = Double.NaN;
                continue;
            }
            TankWater.Level level = tank.level(plane, guesses == null ? Double.NaN : guesses[i]);
            tankLevelsMm[i] = level.heightMm();
            moment = moment.add(water, level.centroidMm());
            mass += water;
            freeAhead += level.inertiaAheadMm4();
            freePort += level.inertiaPortMm4();
            freeMixed += level.inertiaMixedMm4();
        }
        massG = mass;
        centreOfGravity = moment.scalarMultiply(1 / mass);
        Vector3D arm = centreOfGravity.subtract(sums.referenceMm());
        Vector3D m = sums.momentMm4();
        force = density * sums.volumeMm3() - mass;
        slopeAhead = mass * arm.dotProduct(plane.ahead()) - density * m.dotProduct(plane.ahead());
        slopePort = mass * arm.dotProduct(plane.port()) - density * m.dotProduct(plane.port());
        double level = density * m.dotProduct(plane.up()) - mass * arm.dotProduct(plane.up());
        curveHeight = density * sums.waterplaneMm2();
        curveHeightAhead = -density * sums.waterplaneAheadMm3();
        curveHeightPort = -density * sums.waterplanePortMm3();
        curveAhead = density * (sums.secondMomentAheadMm4() - freeAhead) + level;
        curvePort = density * (sums.secondMomentPortMm4() - freePort) + level;
        curveMixed = density * (sums.secondMomentMixedMm4() - freeMixed);
    }

    /** The boat with these sums; {@code before} lends its tank levels as a first guess and may be null. */
    static Trial of(Condition condition, Immersion sums, Trial before) {
        return new Trial(condition, sums, before == null ? null : before.tankLevelsMm);
    }

    /**
     * The boat at the height where she carries her weight, for the direction of the plane.
     *
     * @param below the sums below a plane, so that the caller can count
     * @param tolerance share of the weight that may be missing
     */
    static Trial afloat(
            Condition condition,
            Function<WaterPlane, Immersion> below,
            WaterPlane direction,
            double guessMm,
            double tolerance,
            Trial before) {
        double volume = condition.massG() / condition.densityGPerMm3();
        Immersion sums = condition.levelAbove(volume, direction, below, guessMm, tolerance);
        return of(condition, sums, before);
    }

    /** The boat at a plane so near that her sums follow to first order, without another cut. */
    Trial followed(Condition condition, WaterPlane near) {
        return of(condition, sums.followed(near), this);
    }

    WaterPlane plane() {
        return plane;
    }

    Immersion sums() {
        return sums;
    }

    double massG() {
        return massG;
    }

    Vector3D centreOfGravityMm() {
        return centreOfGravity;
    }

    /** Energy about a fixed point of the boat, g·mm: what two trials are compared by. */
    double energyAbout(Vector3D fixed, double densityGPerMm3) {
        Vector3D up = plane.up();
        double height = plane.heightMm() - up.dotProduct(fixed);
        double centre = up.dotProduct(centreOfGravity.subtract(fixed));
        double buoyant = densityGPerMm3 * up.dotProduct(sums.momentMm4());
        return -buoyant + massG * (centre - height);
    }

    /** The energy that is left, to second order, when she rises or sinks until she carries her weight, g·mm: about her middle. */
    double energyAfloat(Condition condition) {
        double energy = energyAbout(condition.middleMm(), condition.densityGPerMm3());
        return curveHeight > 0 ? energy - 0.5 * force * force / curveHeight : energy;
    }

    /** e = n · (G − B), mm. */
    double potentialHeightMm() {
        return plane.up().dotProduct(centreOfGravity.subtract(sums.centroidMm()));
    }

    /** Curvature of the reduced energy, g·mm per rad²: the height follows the turning. Weight times GM when she is at rest. */
    double reducedAhead() {
        return curveHeight == 0 ? curveAhead : curveAhead - curveHeightAhead * curveHeightAhead / curveHeight;
    }

    double reducedPort() {
        return curveHeight == 0 ? curvePort : curvePort - curveHeightPort * curveHeightPort / curveHeight;
    }

    double reducedMixed() {
        return curveHeight == 0 ? curveMixed : curveMixed - curveHeightAhead * curveHeightPort / curveHeight;
    }

    /** Slope of the reduced energy, g·mm per rad. */
    double reducedSlopeAhead() {
        return curveHeight == 0 ? slopeAhead : slopeAhead - curveHeightAhead * force / curveHeight;
    }

    double reducedSlopePort() {
        return curveHeight == 0 ? slopePort : slopePort - curveHeightPort * force / curveHeight;
    }

    /** Slope and curvature of the reduced energy over the turns toward ahead and toward port, in principal directions. */
    Principal principal() {
        return Principal.of(reducedSlopeAhead(), reducedSlopePort(), reducedAhead(), reducedMixed(), reducedPort());
    }

    /**
     * The plane after turning up by the given angles, with the height that the local model foretells.
     *
     * @param ahead angle toward ahead (bow up), rad
     * @param port angle toward port, rad
     */
    WaterPlane turned(double ahead, double port) {
        double angle = Math.hypot(ahead, port);
        Vector3D up = plane.up();
        Vector3D turnedUp = angle == 0
                ? up
                : new Vector3D(
                        Math.cos(angle),
                        up,
                        Math.sin(angle) * ahead / angle,
                        plane.ahead(),
                        Math.sin(angle) * port / angle,
                        plane.port());
        double rise = curveHeight == 0 ? 0 : -(force + curveHeightAhead * ahead + curveHeightPort * port) / curveHeight;
        WaterPlane turned = WaterPlane.of(turnedUp, 0);
        return turned.at(turned.up().dotProduct(sums.referenceMm()) + rise);
    }
}
