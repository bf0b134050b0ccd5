package trimwright.boat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The materials offered to the builder, with the densities that makers and handbooks give; always editable. They also tell
 * what density is plausible for a kind of part.
 */
public final class Materials {

    /**
     * A material.
     *
     * @param name its name in the trade
     * @param leastGPerCm3 density of the lightest sort
     * @param greatestGPerCm3 density of the heaviest sort
     * @param kinds the kinds of part that are made of it
     */
    public record Material(String name, double leastGPerCm3, double greatestGPerCm3, Set<Kind> kinds) {

        public Material {
            kinds = Set.copyOf(kinds);
        }

        /** The density to begin with: the middle between the lightest and the heaviest sort. */
        public double usualGPerCm3() {
            return (leastGPerCm3 + greatestGPerCm3) / 2;
        }
    }

    private static final Set<Kind> WEIGHT = EnumSet.of(Kind.BALLAST, Kind.FITTING);
    private static final Set<Kind> SHELL = EnumSet.of(Kind.HULL, Kind.CYLINDER, Kind.FITTING);
    private static final Set<Kind> LIFT = EnumSet.of(Kind.FOAM);
    private static final Set<Kind> WOOD = EnumSet.of(Kind.FOAM, Kind.HULL, Kind.FITTING);

    /** Every material, weights first, then what hulls are made of, then foams. Densities from handbooks and makers' sheets. */
    public static final List<Material> ALL = List.of(
            of("lead", 11.34, 11.34, WEIGHT),
            of("lead shot, heaped", 6.3, 7.2, WEIGHT),
            of("steel", 7.85, 7.85, WEIGHT),
            of("stainless steel", 7.5, 8.0, WEIGHT),
            of("brass", 8.4, 8.7, WEIGHT),
            of("tungsten", 19.3, 19.3, WEIGHT),
            of("tungsten putty", 8, 11, WEIGHT),
            of("acrylic", 1.19, 1.19, SHELL),
            of("polystyrene", 1.05, 1.05, SHELL),
            of("PVC", 1.3, 1.58, SHELL),
            of("polycarbonate", 1.20, 1.20, SHELL),
            of("glass laminate, hand-laid", 1.4, 1.7, SHELL),
            of("epoxy", 1.1, 1.2, SHELL),
            of("cured resin print", 1.18, 1.18, SHELL),
            of("PLA", 1.24, 1.24, SHELL),
            of("PETG", 1.27, 1.27, SHELL),
            of("ABS", 1.04, 1.04, SHELL),
            of("ASA", 1.07, 1.07, SHELL),
            of("PA12", 1.01, 1.01, SHELL),
            of("EPS foam", 0.011, 0.046, LIFT),
            of("XPS foam", 0.025, 0.048, LIFT),
            of("PVC foam", 0.06, 0.2, LIFT),
            of("PE foam", 0.033, 0.033, LIFT),
            of("EVA foam", 0.06, 0.2, LIFT),
            of("cork", 0.12, 0.24, LIFT),
            of("balsa", 0.075, 0.2, WOOD));

    /** How far beyond the materials on the list a density may lie before it is doubted: a factor, common practice. */
    private static final double MARGIN = 2;

    private Materials() {}

    private static Material of(String name, double least, double greatest, Set<Kind> kinds) {
        return new Material(name, least, greatest, kinds);
    }

    /** The materials that a kind of part is made of. */
    public static List<Material> of(Kind kind) {
        return ALL.stream().filter(m -> m.kinds().contains(kind)).toList();
    }

    /** The lowest density, g/cm³, that is not surprising for a kind of part; a hollow part's is its average. */
    public static double leastPlausibleGPerCm3(Kind kind) {
        boolean hollow = kind == Kind.CYLINDER || kind == Kind.FITTING;
        return (hollow ? ALL : of(kind))
                        .stream().mapToDouble(Material::leastGPerCm3).min().orElse(0)
                / MARGIN;
    }

    /** The highest density, g/cm³, that is not surprising for a kind of part. */
    public static double greatestPlausibleGPerCm3(Kind kind) {
        boolean foam = kind == Kind.FOAM;
        double densest = (foam ? of(kind) : ALL)
                .stream().mapToDouble(Material::greatestGPerCm3).max().orElse(0);
        return foam ? MARGIN * densest : densest;
    }
}
