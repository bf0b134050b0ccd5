package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Margins;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.immersion.Displacer;
import trimwright.immersion.Immersion;
import trimwright.immersion.WaterPlane;

/**
 * Something about a part that may be off. The two pieces of a pair are parts of their own ({@link Pairs}); of a pair that could not be taken apart
 * both are off alike, and not to one side.
 *
 * @param part id of the part
 * @param what what may be off
 * @param error standard deviation before any reading: g, mm, or a share of the volume; positive
 * @param pieces the pieces of the part
 */
record Unknown(String part, What what, double error, List<Piece> pieces) {

    /** What may be off. */
    enum What {
        MASS,
        AHEAD,
        TO_PORT,
        UP,
        VOLUME
    }

    Unknown {
        pieces = List.copyOf(pieces);
    }

    /** Everything that may be off, in the order of the boat. */
    static List<Unknown> of(Boat boat) {
        List<Unknown> unknowns = new ArrayList<>();
        for (Part part : boat.parts()) {
            List<Piece> pieces = boat.withParts(List.of(part)).pieces();
            Piece piece = pieces.get(0);
            if (part.isAir() || (part.isTank() && part.weighedMassG().isEmpty())) {
                continue;
            }
            // A third at most, so that a mass three times as far off as expected is still one.
            add(unknowns, part, What.MASS, Math.min(Margins.massG(piece), piece.massG() / 3), pieces);
            double place = piece.massG() > 0 ? Margins.placeMm(piece) : 0;
            add(unknowns, part, What.AHEAD, place, pieces);
            add(unknowns, part, What.TO_PORT, part.mirror() ? 0 : place, pieces);
            add(unknowns, part, What.UP, place, pieces);
            boolean scalable = part.inside().isEmpty()
                    && part.shape()
                            .filter(s -> s instanceof BoxShape || s instanceof BarShape)
                            .isPresent();
            add(unknowns, part, What.VOLUME, scalable ? Margins.volumeShare(piece) : 0, pieces);
        }
        return unknowns;
    }

    private static void add(List<Unknown> unknowns, Part part, What what, double error, List<Piece> pieces) {
        if (error > 0) {
            unknowns.add(new Unknown(part.id(), what, error, pieces));
        }
    }

    /**
     * What one unit of it adds as a load, to first order.
     *
     * @param water the water's plane in the boat; empty where everything is under
     */
    Load load(double densityGPerMm3, Optional<WaterPlane> water) {
        Load sum = Load.NONE;
        for (Piece piece : pieces) {
            sum = sum.plus(load(piece, densityGPerMm3, water));
        }
        return sum;
    }

    private Load load(Piece piece, double density, Optional<WaterPlane> water) {
        // A compact piece displaces in proportion to its mass, and where its centre is.
        boolean compact = piece.part().shape().isEmpty() && piece.displacer().isPresent();
        double heavy = piece.massG() + (compact ? lift(piece, density, water).massG() : 0);
        return switch (what) {
            case MASS -> Load.at(compact ? heavy / piece.massG() : 1, piece.centreMm());
            case AHEAD -> new Load(0, new Vector3D(heavy, 0, 0));
            case TO_PORT -> new Load(0, new Vector3D(0, heavy, 0));
            case UP -> new Load(0, new Vector3D(0, 0, heavy));
            case VOLUME -> lift(piece, density, water);
        };
    }

    /** The lift of a piece, as a negative mass. */
    private static Load lift(Piece piece, double density, Optional<WaterPlane> water) {
        Displacer body = piece.displacer().orElseThrow();
        if (water.isEmpty()) {
            return Load.at(-density * body.volumeMm3(), body.centroidMm());
        }
        Immersion below = Immersion.below(water.get(), body.centroidMm()).add(body);
        return Load.at(-density * below.volumeMm3(), below.centroidMm());
    }

    /** The part with this much more of it, in its unit. */
    Part applied(Part to, double by) {
        Piece piece = pieces.get(0);
        double mass = to.weighedMassG().orElse(piece.massG());
        Vector3D centre = to.givenCentreMm().orElse(piece.centreMm());
        return switch (what) {
            case MASS -> to.withBody(to.shape(), Optional.of(mass + by), to.givenCentreMm());
            case AHEAD -> moved(to, mass, centre.add(new Vector3D(by, 0, 0)));
            case TO_PORT -> moved(to, mass, centre.add(new Vector3D(0, by, 0)));
            case UP -> moved(to, mass, centre.add(new Vector3D(0, 0, by)));
            // The mass stays what it is, and so does its centre: only what is displaced changes.
            case VOLUME ->
                to.withBody(to.shape().map(s -> Scaling.of(s, 1 + by)), Optional.of(mass), to.givenCentreMm());
        };
    }

    private static Part moved(Part part, double massG, Vector3D centreMm) {
        return part.withBody(part.shape(), Optional.of(massG), Optional.of(centreMm));
    }
}
