package trimwright.boat;

import java.util.Optional;

/**
 * What the builder wants of the finished boat; what is missing is left to the defaults of whoever plans.
 *
 * @param bgMm least height of the centre of buoyancy above the centre of gravity, dived
 * @param gmMm least transverse metacentric height, surfaced
 * @param residualG band of buoyancy left when dived with the tanks full
 * @param offLineMm how far bow and stern may lie off the painted line
 * @param listDeg how far she may list
 * @param divedTrimDeg how far she may trim when dived
 */
public record Targets(
        Optional<Double> bgMm,
        Optional<Double> gmMm,
        Optional<Band> residualG,
        Optional<Double> offLineMm,
        Optional<Double> listDeg,
        Optional<Double> divedTrimDeg) {

    public static final Targets NONE = new Targets(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Least and greatest value wanted, both included. */
    public record Band(double least, double greatest) {}
}
