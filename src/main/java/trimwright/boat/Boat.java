package trimwright.boat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A boat and the water she is in.
 *
 * @param name what the builder calls her
 * @param water the water
 * @param paintedLine the waterline she is meant to float on, if there is one
 * @param parts hull, cylinder, tanks, lead, foam, fittings, in the order of the file
 * @param zones places offered for lead and foam
 * @param targets what is wanted of the finished boat
 * @param divePlan in which order the tanks are filled; empty for all alike
 */
public record Boat(
        String name,
        Water water,
        Optional<PaintedLine> paintedLine,
        List<Part> parts,
        List<Zone> zones,
        Targets targets,
        Optional<DivePlan> divePlan) {

    public Boat {
        parts = List.copyOf(parts);
        zones = List.copyOf(zones);
    }

    /** A boat whose tanks are all filled alike. */
    public Boat(
            String name,
            Water water,
            Optional<PaintedLine> paintedLine,
            List<Part> parts,
            List<Zone> zones,
            Targets targets) {
        this(name, water, paintedLine, parts, zones, targets, Optional.empty());
    }

    /** Every physical piece, twins after their part. */
    public List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (Part part : parts) {
            pieces.addAll(Piece.of(part));
        }
        return pieces;
    }

    /** The part with that id. */
    public Optional<Part> part(String id) {
        return parts.stream().filter(part -> part.id().equals(id)).findFirst();
    }

    /** The same boat in other water. */
    public Boat in(Water other) {
        return new Boat(name, other, paintedLine, parts, zones, targets, divePlan);
    }

    /** The same boat with other parts. */
    public Boat withParts(List<Part> other) {
        return new Boat(name, water, paintedLine, other, zones, targets, divePlan);
    }

    /** The same boat with other places offered for lead and foam. */
    public Boat withZones(List<Zone> other) {
        return new Boat(name, water, paintedLine, parts, other, targets, divePlan);
    }

    /** The same boat with her tanks filled in another order. */
    public Boat diving(DivePlan plan) {
        return new Boat(name, water, paintedLine, parts, zones, targets, Optional.of(plan));
    }

    /**
     * The same boat with other fills; a tank that is not named keeps its own.
     *
     * @param fillById 0…1 by the tank's id; ids of no tank are ignored, so check them before
     */
    public Boat filled(Map<String, Double> fillById) {
        List<Part> changed = parts.stream()
                .map(p -> p.isTank() && fillById.containsKey(p.id()) ? p.withFill(fillById.get(p.id())) : p)
                .toList();
        return withParts(changed);
    }

    /** The same boat with every tank filled alike. */
    public Boat withAllTanksAt(double fill) {
        List<Part> changed =
                parts.stream().map(p -> p.isTank() ? p.withFill(fill) : p).toList();
        return withParts(changed);
    }
}
