package trimwright.boat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.Severity;

/**
 * Whether the parts of a boat fit: into each other, beside each other, into the hull. Volumes are summed over a grid
 * ({@link SampledVolume}) and told with its resolution; those of a mirrored part are of both pieces together. Compact
 * pieces have no shape that could be in the way, only a centre.
 *
 * <p>A skin hull is in the way of nothing, since its shell is thin; it and a sealed hull show what is outside. Of a printed hull
 * only the plastic is known, not what it encloses, so that outside it means outside its box.
 */
public final class FitCheck {

    /** Volumes below 1 mm³, a grain, are rounding of coordinates. */
    private static final double LEAST_MM3 = 1;

    /** A part of which this share lies in a watertight one is meant to stand in it. */
    private static final double WHOLLY = 0.99;

    private static final double MM3_PER_CM3 = 1000;

    private final Boat boat;
    private final List<Body> bodies = new ArrayList<>();
    private final HullInside hull;
    private final List<Finding> findings = new ArrayList<>();

    /** A physical piece that takes up room. */
    private record Body(Part part, Shape shape) {}

    /** Two parts, in the order of the boat. */
    private record Pair(Part part, Part other) {}

    /** The parts asked about: overlaps are looked for between one of them and any part. */
    private final Predicate<Part> asked;

    private FitCheck(Boat boat, Predicate<Part> asked) {
        this.boat = boat;
        this.asked = asked;
        hull = HullInside.of(boat);
        for (Part part : boat.parts()) {
            for (Shape shape : shapes(part)) {
                if (!(part.build().orElse(null) instanceof HullBuild.Skin)) {
                    bodies.add(new Body(part, shape));
                }
            }
        }
    }

    /** The shapes of all pieces of a part. */
    private static List<Shape> shapes(Part part) {
        if (part.shape().isEmpty()) {
            return List.of();
        }
        Shape shape = part.shape().get();
        return part.mirror() ? List.of(shape, shape.mirrored()) : List.of(shape);
    }

    /**
     * The same of her tanks alone: into what they stand in, and beside each other and it. What is outside the hull is not asked: it
     * takes all hulls to say so, and the tanks do not need them.
     */
    public static List<Finding> ofTanks(Boat boat) {
        Set<String> looked = new HashSet<>();
        for (Part part : boat.parts()) {
            if (part.isTank()) {
                looked.add(part.id());
                part.inside().ifPresent(looked::add);
            }
        }
        List<Part> parts =
                boat.parts().stream().filter(p -> looked.contains(p.id())).toList();
        FitCheck check = new FitCheck(boat.withParts(parts), Part::isTank);
        check.overlaps();
        parts.stream().filter(Part::isTank).forEach(check::container);
        return List.copyOf(check.findings);
    }

    /**
     * Everything that does not fit, pair by pair, in the order of the boat; see the codes of {@link Code} from {@link
     * Code#PARTS_OVERLAP} on. None of the findings is an error.
     */
    public static List<Finding> of(Boat boat) {
        FitCheck check = new FitCheck(boat, part -> true);
        check.overlaps();
        for (Part part : boat.parts()) {
            check.container(part);
            check.centre(part);
        }
        check.outside();
        return List.copyOf(check.findings);
    }

    /** Parts in one place. Only those with the same surroundings can be in each other's way. */
    private void overlaps() {
        Map<Pair, SampledVolume> shared = new LinkedHashMap<>();
        for (int i = 0; i < bodies.size(); i++) {
            for (int j = i + 1; j < bodies.size(); j++) {
                Body one = bodies.get(i);
                Body other = bodies.get(j);
                if (asked(one, other) && one.part().inside().equals(other.part().inside())) {
                    shared.merge(
                            new Pair(one.part(), other.part()),
                            SampledVolume.shared(one.shape(), other.shape()),
                            SampledVolume::plus);
                }
            }
        }
        shared.forEach((pair, volume) -> {
            if (volume.volumeMm3() >= LEAST_MM3) {
                overlap(pair, volume);
            }
        });
    }

    private boolean asked(Body one, Body other) {
        return asked.test(one.part()) || asked.test(other.part());
    }

    private void overlap(Pair pair, SampledVolume volume) {
        for (Pair either : List.of(pair, new Pair(pair.other(), pair.part()))) {
            if (!either.part().equals(either.other())
                    && isWatertight(either.other())
                    && volume.volumeMm3() >= WHOLLY * volumeMm3(either.part())) {
                add(Code.INSIDE_NOT_STATED, either, volume);
                return;
            }
        }
        add(Code.PARTS_OVERLAP, pair, volume);
    }

    private void add(Code code, Pair pair, SampledVolume volume) {
        findings.add(Finding.of(
                code,
                new Place.BetweenParts(pair.part().id(), pair.other().id()),
                "kind",
                pair.part().kind().word(),
                "otherKind",
                pair.other().kind().word(),
                "volumeCm3",
                volume.volumeMm3() / MM3_PER_CM3,
                "resolutionCm3",
                volume.columnMm3() / MM3_PER_CM3));
    }

    /** Volume of all pieces of a part together. */
    private static double volumeMm3(Part part) {
        double one = part.shape()
                .map(s -> s instanceof MeshShape m
                        ? m.mesh().signedVolume()
                        : s.solid().volumeMm3())
                .orElse(0.0);
        return part.mirror() ? 2 * one : one;
    }

    private static boolean isWatertight(Part part) {
        return part.kind() == Kind.CYLINDER || part.build().orElse(null) instanceof HullBuild.Sealed;
    }

    /** A part sticks out of the one it stands in. */
    private void container(Part part) {
        Optional<Part> container = part.inside().flatMap(boat::part);
        if (container.isEmpty()) {
            return;
        }
        List<Shape> around = shapes(container.get());
        SampledVolume out = shapes(part).stream()
                .map(s -> SampledVolume.sum(
                        s.bounds(),
                        SampledVolume.FINE,
                        (x, y) -> outside(s, around, x, y).lengthMm()))
                .reduce(SampledVolume.NONE, SampledVolume::plus);
        Pair pair = new Pair(part, container.get());
        if (out.volumeMm3() >= LEAST_MM3) {
            add(Code.STICKS_OUT, pair, out);
        } else if (part.shape().isEmpty() && centres(part).stream().anyMatch(c -> !anyHolds(around, c))) {
            findings.add(Finding.of(
                    Code.CENTRE_OUTSIDE_CONTAINER,
                    new Place.BetweenParts(part.id(), container.get().id()),
                    "centreMm",
                    coordinates(part.givenCentreMm().orElseThrow())));
        }
    }

    private static List<Vector3D> centres(Part part) {
        return part.givenCentreMm()
                .map(c -> part.mirror() ? List.of(c, Shape.mirrored(c)) : List.of(c))
                .orElse(List.of());
    }

    private static List<Double> coordinates(Vector3D p) {
        return List.of(p.getX(), p.getY(), p.getZ());
    }

    private static boolean anyHolds(List<Shape> shapes, Vector3D p) {
        return shapes.stream().anyMatch(s -> s.holds(p));
    }

    private static Chords outside(Shape shape, List<Shape> around, double x, double y) {
        Chords left = shape.chords(x, y);
        for (Shape other : around) {
            left = left.without(other.chords(x, y));
        }
        return left;
    }

    /** A centre of mass that cannot be: outside the part's own box; and a compact piece that stands where no water comes. */
    private void centre(Part part) {
        if (part.givenCentreMm().isEmpty()) {
            return;
        }
        Vector3D centre = part.givenCentreMm().get();
        if (part.shape().isPresent()) {
            if (!part.shape().get().bounds().holds(centre.getX(), centre.getY(), centre.getZ())) {
                findings.add(Finding.of(
                        Code.CENTRE_OUTSIDE_PART, new Place.OnPart(part.id()), "centreMm", coordinates(centre)));
            }
            return;
        }
        for (Part other : boat.parts()) {
            if (part.inside().isEmpty() && isWatertight(other) && anyHolds(shapes(other), centre)) {
                double volume = part.weighedMassG().orElseThrow()
                        / part.densityGPerCm3().orElseThrow();
                add(Code.INSIDE_NOT_STATED, new Pair(part, other), new SampledVolume(volume * MM3_PER_CM3, 0));
            }
        }
    }

    /** Parts outside the hull; for fittings such as rudders that is nothing to worry about. */
    private void outside() {
        if (hull.isEmpty()) {
            return;
        }
        for (Part part : boat.parts()) {
            if (part.isHull() || part.inside().isPresent()) {
                continue;
            }
            SampledVolume out =
                    shapes(part).stream().map(hull::outside).reduce(SampledVolume.NONE, SampledVolume::plus);
            if (out.volumeMm3() >= LEAST_MM3) {
                findings.add(Finding.of(
                        Code.OUTSIDE_HULL,
                        part.kind() == Kind.FITTING ? Severity.NOTE : Code.OUTSIDE_HULL.severity(),
                        new Place.OnPart(part.id()),
                        "kind",
                        part.kind().word(),
                        "volumeCm3",
                        out.volumeMm3() / MM3_PER_CM3,
                        "ofCm3",
                        volumeMm3(part) / MM3_PER_CM3,
                        "resolutionCm3",
                        out.columnMm3() / MM3_PER_CM3));
            }
        }
    }
}
