package trimwright.boat;

import java.util.Optional;

/**
 * How far what the builder says of a part may be off, as standard deviations.
 *
 * @param massG of its mass, per piece
 * @param placeMm of its place, in each direction
 * @param volumePercent of its volume, percent
 */
public record Margins(Optional<Double> massG, Optional<Double> placeMm, Optional<Double> volumePercent) {

    /** Nothing said: the usual margins hold. */
    public static final Margins USUAL = new Margins(Optional.empty(), Optional.empty(), Optional.empty());

    /** Of what was weighed, g (common practice, no source). */
    public static final double WEIGHED_G = 1;

    /** Of a mass computed from a density, as a share of it (common practice, no source). */
    public static final double COMPUTED_SHARE = 0.03;

    /** Of a place, mm (common practice, no source). */
    public static final double PLACE_MM = 1;

    /** Of the volume of foam cut by hand, percent (common practice, no source). */
    public static final double FOAM_PERCENT = 2;

    /** @throws IllegalArgumentException when one is negative or not finite */
    public Margins {
        require("massG", massG);
        require("placeMm", placeMm);
        require("volumePercent", volumePercent);
    }

    private static void require(String name, Optional<Double> value) {
        if (value.isPresent() && !(value.get() >= 0 && Double.isFinite(value.get()))) {
            throw new IllegalArgumentException(name + " must be 0 or more, found " + value.get());
        }
    }

    /** Of the mass of a piece, g. */
    public static double massG(Piece piece) {
        Part part = piece.part();
        return part.margins()
                .massG()
                .orElse(part.weighedMassG().isPresent() ? WEIGHED_G : COMPUTED_SHARE * piece.massG());
    }

    /** Of its place in each direction, mm. */
    public static double placeMm(Piece piece) {
        return piece.part().margins().placeMm().orElse(PLACE_MM);
    }

    /** Of the volume that it displaces, as a share of it; foam has one, everything else only where it is said. */
    public static double volumeShare(Piece piece) {
        Part part = piece.part();
        return part.margins().volumePercent().orElse(part.kind() == Kind.FOAM ? FOAM_PERCENT : 0) / 100;
    }
}
