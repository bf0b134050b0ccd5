package trimwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.BoxShape;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.boat.Piece;
import trimwright.boat.Shape;
import trimwright.mesh.Bounds;

/**
 * Lead or foam on board of which a plan may take out a share, and which it may move along the boat where it is not fixed. It is shortened toward its
 * middle, so that its centre stays.
 *
 * @param part the part, twins included
 * @param whole what all of it weighs and displaces
 * @param massG mass of all of it
 * @param aheadMm how far it can be moved ahead before it meets something
 * @param asternMm how far astern
 */
record Loose(Part part, Influence whole, double massG, double aheadMm, double asternMm) {

    /** Cost of taking out one gram, in grams added: little, but nothing is taken out for no gain. */
    private static final double TAKING_COST = 0.02;
    /** Cost of moving one gram of weight or lift by one mm. */
    private static final double MOVING_COST = 1e-3;

    private static final double LEAST_COST = 1e-3;
    /** What is left of a part and less than this share of it is not worth leaving. */
    private static final double STUB = 0.03;

    private static final double LEAD_STEP_G = 1;
    private static final double LENGTH_STEP_MM = 1;

    /**
     * The parts of a boat that may change.
     *
     * @param ids of lead and foam of which some may be taken out
     */
    static List<Loose> of(List<Piece> pieces, Set<String> ids, PlanBasis basis) {
        List<Loose> result = new ArrayList<>();
        for (Piece piece : pieces) {
            Part part = piece.part();
            if (piece.twin() || !ids.contains(part.id()) || !canBeLessened(part)) {
                continue;
            }
            Influence all = Influence.NOTHING;
            for (Piece own : pieces) {
                if (own.part().id().equals(part.id())) {
                    all = all.plus(Influence.ofPiece(own, basis.surfaced, basis.dived));
                }
            }
            SlideRoom room = part.fixed() ? SlideRoom.NONE : SlideRoom.of(pieces, part);
            result.add(new Loose(part, all, all.massG(), room.aheadMm(), room.asternMm()));
        }
        return result;
    }

    /** The same, kept from the runs in which strips are to lie. */
    Loose within(List<Strip> strips) {
        double ahead = aheadMm;
        double astern = asternMm;
        for (Shape shape : shapes()) {
            Bounds own = shape.bounds();
            for (Strip strip : strips) {
                Bounds run = strip.run.bounds();
                boolean apart = !strip.inside.equals(part.inside())
                        || run.maxY() <= own.minY()
                        || run.minY() >= own.maxY()
                        || run.maxZ() <= own.minZ()
                        || run.minZ() >= own.maxZ();
                if (!apart && run.minX() + run.maxX() > own.minX() + own.maxX()) {
                    ahead = Math.max(0, Math.min(ahead, run.minX() - own.maxX()));
                } else if (!apart) {
                    astern = Math.max(0, Math.min(astern, own.minX() - run.maxX()));
                }
            }
        }
        return new Loose(part, whole, massG, ahead, astern);
    }

    private List<Shape> shapes() {
        return part.shape()
                .map(s -> part.mirror() ? List.of(s, s.mirrored()) : List.of(s))
                .orElse(List.of());
    }

    /** Its unknowns: the share taken out, and by how many mm all of it together is moved ahead and astern. */
    List<Choice> choices() {
        double netG = Math.abs(massG - 1e-3 * whole.wholeMm3());
        Influence mm = whole.whenMoved(Vector3D.PLUS_I);
        double cost = MOVING_COST * netG + LEAST_COST;
        return List.of(
                Choice.plain(new Unknown(part.id(), whole.times(-1), 1, TAKING_COST * massG + LEAST_COST)),
                Choice.plain(new Unknown(part.id(), mm, aheadMm, cost)),
                Choice.plain(new Unknown(part.id(), mm.times(-1), asternMm, cost)));
    }

    /** What is taken out cannot be moved: limits on its unknowns, which begin at {@code first} of {@code count}. */
    List<PlanModel.Cap> caps(int first, int count) {
        return List.of(cap(first, first + 1, aheadMm, count), cap(first, first + 2, asternMm, count));
    }

    private PlanModel.Cap cap(int share, int shift, double mostMm, int count) {
        double[] weights = new double[count];
        weights[share] = mostMm;
        weights[shift] = 1;
        return new PlanModel.Cap(part.id(), weights, mostMm);
    }

    /** What an answer makes of it; its unknowns begin at {@code first}. */
    Changed changed(double[] x, int first) {
        double share = Math.min(1, Math.max(0, x[first]));
        double left = 1 - share;
        return new Changed(this, share, left > 0 ? (x[first + 1] - x[first + 2]) / left : 0);
    }

    /**
     * The part with a share taken out and the rest moved.
     *
     * @param share 0…1
     * @param movedMm ahead, negative astern
     */
    record Changed(Loose loose, double share, double movedMm) {

        boolean isNothing() {
            return share == 0 && movedMm == 0;
        }

        /** What the change adds to the boat. */
        Influence influence() {
            Influence moved = loose.whole.whenMoved(new Vector3D(movedMm, 0, 0)).times(1 - share);
            return loose.whole.times(-share).plus(moved);
        }

        /** With the share rounded to what can be weighed or cut, and what would be a stub taken out too. */
        Changed sized() {
            double unit =
                    loose.part.kind() == Kind.BALLAST || loose.part.shape().isEmpty()
                            ? LEAD_STEP_G * (loose.part.mirror() ? 2 : 1) / loose.massG
                            : LENGTH_STEP_MM / lengthMm(loose.part.shape().get());
            double rounded = Math.min(1, Math.rint(share / unit) * unit);
            return new Changed(loose, rounded > 1 - STUB ? 1 : rounded, rounded > 1 - STUB ? 0 : movedMm);
        }

        /** Its unknowns once its size is settled: by how many mm more it is moved ahead and astern. */
        List<Choice> shifts() {
            List<Choice> all = loose.choices();
            Influence mm = loose.whole.times(1 - share).whenMoved(Vector3D.PLUS_I);
            double cost = (1 - share) * all.get(1).unknown().costPerUnit();
            return List.of(
                    Choice.plain(new Unknown(loose.part.id(), mm, Math.max(0, loose.aheadMm - movedMm), cost)),
                    Choice.plain(
                            new Unknown(loose.part.id(), mm.times(-1), Math.max(0, loose.asternMm + movedMm), cost)));
        }

        Changed movedBy(double mm) {
            return new Changed(loose, share, movedMm + mm);
        }

        Changed placed() {
            return new Changed(loose, share, Math.rint(movedMm / LENGTH_STEP_MM) * LENGTH_STEP_MM);
        }

        /** The part as it is to be; nothing when all of it is taken out. */
        Optional<Part> part() {
            if (share >= 1) {
                return Optional.empty();
            }
            Part part = loose.part;
            Vector3D way = new Vector3D(movedMm, 0, 0);
            return Optional.of(part.withBody(
                    part.shape().map(s -> shortened(s, 1 - share, way)),
                    part.weighedMassG().map(m -> m * (1 - share)),
                    part.givenCentreMm().map(c -> c.add(way))));
        }
    }

    /** Whether a part can be lessened: a box, a bar with flat ends, a compact piece. */
    static boolean canBeLessened(Part part) {
        Optional<Shape> shape = part.shape();
        return shape.isEmpty()
                || shape.get() instanceof BoxShape
                || (shape.get() instanceof BarShape bar && bar.ends() == BarShape.Ends.FLAT);
    }

    private static double lengthMm(Shape shape) {
        return shape instanceof BarShape bar ? bar.lengthMm() : shape.bounds().sizeX();
    }

    private static Shape shortened(Shape shape, double share, Vector3D way) {
        if (shape instanceof BoxShape box) {
            double middle = 0.5 * (box.fromMm().getX() + box.toMm().getX());
            return new BoxShape(
                    towards(box.fromMm(), middle, share).add(way),
                    towards(box.toMm(), middle, share).add(way));
        }
        BarShape bar = (BarShape) shape;
        Vector3D middle = new Vector3D(0.5, bar.fromMm(), 0.5, bar.toMm());
        return new BarShape(
                new Vector3D(share, bar.fromMm(), 1 - share, middle).add(way),
                new Vector3D(share, bar.toMm(), 1 - share, middle).add(way),
                bar.diameterMm(),
                bar.ends());
    }

    private static Vector3D towards(Vector3D corner, double middleX, double share) {
        return new Vector3D(middleX + share * (corner.getX() - middleX), corner.getY(), corner.getZ());
    }
}
