package trimwright.mesh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trimwright.finding.Place;

/** One model part of a 3MF package as it stands in its XML. */
final class ThreeMfModel {

    private Unit unit = Unit.MILLIMETER;
    private final Map<Integer, Item> objects = new LinkedHashMap<>();
    private final List<Use> build = new ArrayList<>();
    private final List<String> neededParts = new ArrayList<>();

    /** The units of the format. Those that we do not have are turned into one that we have, exactly. */
    enum Unit {
        MICRON(LengthUnit.MILLIMETRE, 0.001),
        MILLIMETER(LengthUnit.MILLIMETRE, 1),
        CENTIMETER(LengthUnit.CENTIMETRE, 1),
        INCH(LengthUnit.INCH, 1),
        FOOT(LengthUnit.INCH, 12),
        METER(LengthUnit.METRE, 1);

        private final LengthUnit length;
        private final double factor;

        Unit(LengthUnit length, double factor) {
            this.length = length;
            this.factor = factor;
        }

        LengthUnit length() {
            return length;
        }

        double factor() {
            return factor;
        }

        boolean isConverted() {
            return factor != 1;
        }

        String written() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** An object: a mesh, or components, or neither (then it is empty). */
    static final class Item {
        private final boolean support;
        private final MeshBuilder mesh = new MeshBuilder();
        private final List<Use> components = new ArrayList<>();

        Item(boolean support) {
            this.support = support;
        }

        /** Whether it only supports the print. */
        boolean isSupport() {
            return support;
        }

        MeshBuilder mesh() {
            return mesh;
        }

        List<Use> components() {
            return components;
        }
    }

    /**
     * An object put somewhere.
     *
     * @param part the model part that has the object; empty for the part at hand
     * @param transform twelve numbers, row by row, of the matrix by which a row vector (x, y, z, 1) is multiplied
     * @param place where the XML says so
     */
    record Use(Optional<String> part, int object, double[] transform, Place place) {}

    Unit unit() {
        return unit;
    }

    void setUnit(Unit unit) {
        this.unit = unit;
    }

    Map<Integer, Item> objects() {
        return objects;
    }

    List<Use> build() {
        return build;
    }

    /** Further model parts that uses name, each once or more. */
    List<String> neededParts() {
        return neededParts;
    }
}
