package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;

/** The cautions that fit a boat. */
final class SheetCautions {

    /** What a builder may call a part with a battery in it. */
    private static final Pattern BATTERY =
            Pattern.compile("batter|li-?po|li-?ion|li-?fe|lithium|accu|\\bcells?\\b|power pack");

    private static final Pattern GAS =
            Pattern.compile("\\bgas\\b|co2|co₂|propellant|compress|pressur|air bottle|\\bvalve\\b");
    /** Steel and brass are lighter, lead shot with air between is lighter too but named so. */
    private static final double LEAD_FROM_G_PER_CM3 = 9;

    private static final Pattern LEAD = Pattern.compile("\\blead\\b");

    private SheetCautions() {}

    static List<String> of(Boat boat) {
        List<String> cautions = new ArrayList<>();
        boolean dives = any(boat, p -> p.isTank() || p.isAir());
        boolean cylinder = any(boat, p -> p.kind() == Kind.CYLINDER);
        if (dives) {
            cautions.add(
                    "Prove every computed figure in shallow water, with a line on the boat, somebody watching, and a way to bring her"
                            + " up that needs no signal. A boat that stays down is fetched from the bank or a manned boat, never swum or dived after.");
        } else {
            cautions.add(
                    "Prove every computed figure in shallow water, within reach and with somebody watching. A boat adrift is fetched"
                            + " from the bank or a manned boat, never swum after.");
        }
        if (namesABattery(boat)) {
            cautions.add(
                    "Lithium batteries burn when wet, crushed or badly charged: charge them outside the boat, watched, on what does not"
                            + " burn, and follow the maker"
                            + (cylinder ? "; water in the cylinder can end in fire." : "."));
        } else if (cylinder) {
            cautions.add(
                    "If a lithium battery goes into the cylinder: it burns when wet, crushed or badly charged. Charge it outside the boat,"
                            + " watched, and follow the maker.");
        }
        if (any(boat, SheetCautions::isLead)) {
            cautions.add(
                    "Lead is poisonous, above all molten or as dust: wash your hands, keep it from children, leave casting to those who know"
                            + " how.");
        }
        if (dives || cylinder || any(boat, p -> GAS.matcher(name(p)).find())) {
            cautions.add(
                    "What holds gas or pressure can burst, and a cylinder warmed by the sun or squeezed by depth counts as that: use only what"
                            + " is rated for it, and let pressure off before you open it.");
        }
        cautions.add(
                "Children near water are somebody's whole task: not the person's who steers. Small parts, weights and batteries are not for"
                        + " them.");
        cautions.add(
                "Open water: mind others, wildlife and local rules; where those or licensed practice say otherwise, they hold. For models"
                        + " only, not for craft that carry people.");
        return cautions;
    }

    private static boolean namesABattery(Boat boat) {
        return any(boat, p -> BATTERY.matcher(name(p)).find());
    }

    /** Whether she has a battery, or what batteries usually are in. */
    static boolean mayHaveABattery(Boat boat) {
        return namesABattery(boat) || any(boat, p -> p.kind() == Kind.CYLINDER);
    }

    private static boolean any(Boat boat, Predicate<Part> which) {
        return boat.parts().stream().anyMatch(which);
    }

    private static String name(Part part) {
        return part.id().toLowerCase(Locale.ROOT);
    }

    private static boolean isLead(Part part) {
        return LEAD.matcher(name(part)).find()
                || part.kind() == Kind.BALLAST
                        && part.densityGPerCm3()
                                .map(d -> d >= LEAD_FROM_G_PER_CM3)
                                .orElse(true);
    }
}
