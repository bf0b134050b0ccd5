package trimwright.boat;

import java.util.Optional;

/** How a hull is built, which decides what its mesh displaces and weighs. */
public sealed interface HullBuild {

    /** How far the inner surface lies inside the mesh, mm; 0 where that is not known, and for a mesh that has an inner surface of its own. */
    default double shellMm() {
        return 0;
    }

    /** Whether the mesh encloses the material itself, so that it has an inner surface of its own. */
    default boolean enclosesMaterial() {
        return false;
    }

    /**
     * A watertight outer surface that displaces all it encloses.
     *
     * @param thicknessMm thickness of the shell, which with its density gives the mass; may be missing when it was weighed
     */
    record Sealed(Optional<Double> thicknessMm) implements HullBuild {

        @Override
        public double shellMm() {
            return thicknessMm.orElse(0.0);
        }
    }

    /**
     * A free-flooding shell given by its outer surface, open or closed; it displaces only its own material.
     *
     * @param thicknessMm thickness of the layer that lies inward of the surface
     */
    record Skin(double thicknessMm) implements HullBuild {

        @Override
        public double shellMm() {
            return thicknessMm;
        }
    }

    /**
     * A mesh that encloses the plastic itself; it floods inside.
     *
     * @param infill how the plastic fills what the mesh encloses; missing means solid
     */
    record Printed(Optional<Infill> infill) implements HullBuild {

        @Override
        public boolean enclosesMaterial() {
            return true;
        }
    }

    /**
     * How a print is filled.
     *
     * @param wallMm thickness of the solid wall on every surface
     * @param percent share of the rest that is plastic, 0…100
     * @param floods whether water gets into the rest, so that only the plastic displaces
     */
    record Infill(double wallMm, double percent, boolean floods) {}
}
