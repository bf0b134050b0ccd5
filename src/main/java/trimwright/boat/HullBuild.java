package trimwright.boat;

import java.util.Optional;

/** How a hull is built, which decides what its mesh displaces and weighs. */
public sealed interface HullBuild {

    /**
     * A watertight outer surface that displaces all it encloses.
     *
     * @param thicknessMm thickness of the shell, which with its density gives the mass; may be missing when it was weighed
     */
    record Sealed(Optional<Double> thicknessMm) implements HullBuild {}

    /**
     * A free-flooding shell given by its outer surface, open or closed; it displaces only its own material.
     *
     * @param thicknessMm thickness of the layer that lies inward of the surface
     */
    record Skin(double thicknessMm) implements HullBuild {}

    /**
     * A mesh that encloses the plastic itself; it floods inside.
     *
     * @param infill how the plastic fills what the mesh encloses; missing means solid
     */
    record Printed(Optional<Infill> infill) implements HullBuild {}

    /**
     * How a print is filled.
     *
     * @param wallMm thickness of the solid wall on every surface
     * @param percent share of the rest that is plastic, 0…100
     * @param floods whether water gets into the rest, so that only the plastic displaces
     */
    record Infill(double wallMm, double percent, boolean floods) {}
}
