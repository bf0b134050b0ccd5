package trimwright.file;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.finding.Code;
import trimwright.mesh.Bounds;

/** Checks what parts say they stand {@code inside}. */
final class Containers {

    private static final List<String> WATERTIGHT = List.of("cylinder", "hull with build sealed");

    private final Map<String, PartReader.Draft> byId = new HashMap<>();
    private final boolean allIdsKnown;

    private Containers(List<PartReader.Draft> drafts) {
        drafts.forEach(d -> d.id().ifPresent(id -> byId.putIfAbsent(id, d)));
        allIdsKnown = drafts.stream().allMatch(d -> d.id().isPresent());
    }

    static void check(List<PartReader.Draft> drafts) {
        Containers containers = new Containers(drafts);
        for (PartReader.Draft draft : drafts) {
            draft.inside().ifPresent(container -> containers.check(draft, container));
        }
    }

    /** Whether a part keeps the water out, so that others may stand inside it. */
    static boolean isWatertight(Part part) {
        return part.kind() == Kind.CYLINDER || part.build().orElse(null) instanceof HullBuild.Sealed;
    }

    private void check(PartReader.Draft draft, String container) {
        Fields fields = draft.fields();
        if (draft.id().equals(Optional.of(container))) {
            fields.reportAt("inside", Code.INSIDE_ITSELF, "found", container);
            return;
        }
        PartReader.Draft around = byId.get(container);
        if (around == null) {
            // A part without a readable id may be the one that is meant.
            if (allIdsKnown) {
                List<String> ids = watertightIds();
                fields.reportAt(
                        "inside",
                        Code.INSIDE_UNKNOWN,
                        "found",
                        container,
                        "nearest",
                        Nearest.to(container, ids),
                        "allowed",
                        ids);
            }
            return;
        }
        if (around.part().isEmpty()) {
            return;
        }
        if (!isWatertight(around.part().get())) {
            fields.reportAt(
                    "inside",
                    Code.INSIDE_NOT_WATERTIGHT,
                    "found",
                    container,
                    "kind",
                    around.part().get().kind().word(),
                    "kinds",
                    WATERTIGHT,
                    "allowed",
                    watertightIds());
            return;
        }
        Set<String> chain = chain(draft);
        if (chain.contains(draft.id().orElse(""))) {
            fields.reportAt("inside", Code.INSIDE_IN_A_RING, "found", container, "ring", List.copyOf(chain));
            return;
        }
        checkTwin(draft, around.part().get());
    }

    private List<String> watertightIds() {
        return byId.values().stream()
                .flatMap(d -> d.part().stream())
                .filter(Containers::isWatertight)
                .map(Part::id)
                .sorted()
                .toList();
    }

    /** The containers around a part, from the nearest on, until the outermost or until they repeat. */
    private Set<String> chain(PartReader.Draft draft) {
        Set<String> chain = new LinkedHashSet<>();
        Optional<String> next = draft.inside();
        while (next.isPresent() && byId.containsKey(next.get()) && chain.add(next.get())) {
            next = byId.get(next.get()).inside();
        }
        return chain;
    }

    /** The twin of a mirrored part cannot stand in a container that has no twin and lies wholly to one side. */
    private static void checkTwin(PartReader.Draft draft, Part container) {
        boolean twin = draft.part().map(Part::mirror).orElse(false);
        if (!twin || container.mirror()) {
            return;
        }
        Bounds bounds = container.shape().orElseThrow().bounds();
        if (bounds.minY() >= 0 || bounds.maxY() <= 0) {
            draft.fields()
                    .reportAt(
                            "mirror",
                            Code.INSIDE_WITHOUT_TWIN,
                            "found",
                            container.id(),
                            "fromYMm",
                            bounds.minY(),
                            "toYMm",
                            bounds.maxY());
        }
    }
}
