package trimwright.desktop.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.file.LoadedBoat;
import trimwright.mesh.Bounds;
import trimwright.report.Measure;
import trimwright.report.Numbers;

/**
 * One number of a part that can be typed.
 *
 * @param name what it is
 * @param unit in what it is typed
 * @param text what it is now; empty where the file does not say
 * @param hint what typing it does, where that is not plain
 * @param slow whether the change may take a while, since a mesh is brought to another place
 * @param change the boat with another value, in the unit shown; empty takes the value away
 */
public record PartField(String name, String unit, String text, String hint, boolean slow, Change change) {

    private PartField(String name, String unit, String text, String hint, Change change) {
        this(name, unit, text, hint, false, change);
    }

    /** Puts another value. */
    @FunctionalInterface
    public interface Change {
        LoadedBoat in(LoadedBoat boat, Optional<Double> value);
    }

    /** The numbers of a part, in the order in which a builder asks for them. */
    public static List<PartField> of(Boat boat, Part part, Measure measure) {
        List<PartField> fields = new ArrayList<>();
        if (part.isTank()) {
            fields.add(new PartField(
                    "Fill",
                    "%",
                    Numbers.plain(100 * part.fill()),
                    "How full it is, 0 to 100",
                    (b, v) -> b.replacing(part.withFill(needed(v) / 100))));
        }
        if (!part.isAir()) {
            fields.add(new PartField(
                    "Weighed",
                    measure.massUnit(),
                    part.weighedMassG().map(measure::massField).orElse(""),
                    "Its weight off the scales, one piece; empty: worked out from the density",
                    (b, v) -> b.replacing(Edits.weighing(part, v.map(measure::typedG), part.densityGPerCm3()))));
        }
        if (!part.isAir() && !part.isTank()) {
            fields.add(new PartField(
                    "Density",
                    "g/cm³",
                    part.densityGPerCm3().map(Numbers::plain).orElse(""),
                    "Of its material; the weighed mass goes before it",
                    (b, v) -> b.replacing(Edits.weighing(part, part.weighedMassG(), v))));
        }
        places(boat, part, measure, fields);
        part.shape().ifPresent(shape -> sizes(part, shape, measure, fields));
        return fields;
    }

    private static double needed(Optional<Double> value) {
        return value.orElseThrow(() -> new IllegalArgumentException("a number is needed"));
    }

    private static void places(Boat boat, Part part, Measure measure, List<PartField> fields) {
        Optional<Vector3D> at = place(part);
        if (at.isEmpty() || part.isHull()) {
            return;
        }
        String[] names = {"Along, from x 0", "Across, to port", "Up, from z 0"};
        Vector3D[] axes = {Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K};
        boolean slow = Edits.movesMesh(boat, part.id());
        for (int i = 0; i < 3; i++) {
            Vector3D axis = axes[i];
            fields.add(new PartField(
                    names[i],
                    measure.lengthUnit(),
                    measure.lengthField(at.get().dotProduct(axis)),
                    "Where its middle is; what stands in it moves along",
                    slow,
                    (b, v) -> Edits.moved(b, part.id(), way(b.boat(), part.id(), axis, measure.typedMm(needed(v))))));
        }
    }

    /** From where it is by then. */
    private static Vector3D way(Boat boat, String id, Vector3D axis, double toMm) {
        Vector3D now = boat.part(id).flatMap(PartField::place).orElseThrow();
        return axis.scalarMultiply(toMm - now.dotProduct(axis));
    }

    private static Optional<Vector3D> place(Part part) {
        return part.shape().map(s -> middle(s.bounds())).or(part::givenCentreMm);
    }

    private static Vector3D middle(Bounds b) {
        return new Vector3D(b.centreX(), b.centreY(), b.centreZ());
    }

    private static void sizes(Part part, Shape shape, Measure measure, List<PartField> fields) {
        if (shape instanceof BoxShape box) {
            Bounds b = box.bounds();
            double[] size = {b.sizeX(), b.sizeY(), b.sizeZ()};
            String[] names = {"Length", "Breadth", "Height"};
            String[] kept = {"Its after end stays", "Its middle stays", "Its underside stays"};
            for (int i = 0; i < 3; i++) {
                int axis = i;
                fields.add(new PartField(
                        names[i],
                        measure.lengthUnit(),
                        measure.lengthField(size[i]),
                        kept[i],
                        (boat, v) -> boat.replacing(shaped(part, resized(b, axis, measure.typedMm(needed(v)))))));
            }
        } else if (shape instanceof BarShape bar) {
            fields.add(new PartField(
                    "Length",
                    measure.lengthUnit(),
                    measure.lengthField(bar.lengthMm()),
                    "Its middle stays",
                    (boat, v) -> boat.replacing(shaped(part, lengthened(bar, measure.typedMm(needed(v)))))));
            fields.add(new PartField(
                    "Diameter",
                    measure.lengthUnit(),
                    measure.lengthField(bar.diameterMm()),
                    "",
                    (boat, v) -> boat.replacing(shaped(
                            part, new BarShape(bar.fromMm(), bar.toMm(), measure.typedMm(needed(v)), bar.ends())))));
        }
    }

    private static Part shaped(Part part, Shape shape) {
        return part.withBody(Optional.of(shape), part.weighedMassG(), part.givenCentreMm());
    }

    private static BoxShape resized(Bounds b, int axis, double sizeMm) {
        double[] least = {b.minX(), b.minY(), b.minZ()};
        double[] most = {b.maxX(), b.maxY(), b.maxZ()};
        if (axis == 1) {
            double middle = b.centreY();
            least[1] = middle - sizeMm / 2;
            most[1] = middle + sizeMm / 2;
        } else {
            most[axis] = least[axis] + sizeMm;
        }
        return new BoxShape(new Vector3D(least[0], least[1], least[2]), new Vector3D(most[0], most[1], most[2]));
    }

    private static BarShape lengthened(BarShape bar, double lengthMm) {
        Vector3D middle = new Vector3D(0.5, bar.fromMm(), 0.5, bar.toMm());
        double share = lengthMm / bar.lengthMm();
        return new BarShape(
                new Vector3D(share, bar.fromMm(), 1 - share, middle),
                new Vector3D(share, bar.toMm(), 1 - share, middle),
                bar.diameterMm(),
                bar.ends());
    }
}
