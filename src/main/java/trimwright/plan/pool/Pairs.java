package trimwright.plan.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import trimwright.boat.Boat;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Shape;

/**
 * Mirrored parts as two parts. Each piece of a pair was weighed, cut and glued in on its own, and is off on its own: taken as off alike, a pair could never
 * list her, and a boat of little stability would seem far better known than she is. Pairs of meshes stay one part, since a boat
 * file has no mirrored mesh, and so do tanks, which are filled by the id of the pair.
 */
final class Pairs {

    private Pairs() {}

    /** The boat with her pairs as two parts each, where that can be. */
    static Boat apart(Boat boat) {
        List<Part> parts = new ArrayList<>();
        Set<String> taken = boat.parts().stream().map(Part::id).collect(Collectors.toSet());
        for (Part part : boat.parts()) {
            if (!canPart(part)) {
                parts.add(part);
                continue;
            }
            parts.add(part.alone(part.id()));
            String id = part.id() + " twin";
            for (int n = 2; !taken.add(id); n++) {
                id = part.id() + " twin " + n;
            }
            parts.add(mirrorImage(part.alone(id)));
        }
        return boat.withParts(parts);
    }

    /** The first piece as a pair again, where the second is its mirror image. */
    static Optional<Part> together(Part pair, Part first, Part second) {
        Part again = pair.withBody(first.shape(), first.weighedMassG(), first.givenCentreMm());
        Part image = mirrorImage(again);
        boolean alike = image.shape().equals(second.shape())
                && image.weighedMassG().equals(second.weighedMassG())
                && image.givenCentreMm().equals(second.givenCentreMm());
        return alike ? Optional.of(again) : Optional.empty();
    }

    static Part mirrorImage(Part part) {
        return part.withBody(
                part.shape().map(Shape::mirrored),
                part.weighedMassG(),
                part.givenCentreMm().map(Shape::mirrored));
    }

    static boolean canPart(Part part) {
        boolean mesh = part.shape().filter(s -> s instanceof MeshShape).isPresent();
        return part.mirror() && !part.isTank() && !mesh;
    }
}
