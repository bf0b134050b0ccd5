package trimwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.plan.Goal;
import trimwright.plan.Pairing;
import trimwright.plan.PlanCheck;
import trimwright.plan.PlanRequest;
import trimwright.plan.Shifted;
import trimwright.plan.Wanted;
import trimwright.statics.Condition;

/** What a plan is asked for: the aims, what to strive for, and what may be changed. */
final class PlanOptions {

    private static final Pattern RANGE =
            Pattern.compile("\\s*([-+]?\\d+(?:\\.\\d+)?)\\s*\\.\\.\\s*([-+]?\\d+(?:\\.\\d+)?)\\s*");
    private static final double MOST = 1e6;
    private static final double DENSEST_G_PER_CM3 = 25;

    private final AbstractCommand command;
    private final OptionSpec bg;
    private final OptionSpec gm;
    private final OptionSpec residual;
    private final OptionSpec offLine;
    private final OptionSpec list;
    private final OptionSpec divedTrim;
    private final OptionSpec goal;
    private final OptionSpec mass;
    private final OptionSpec addLead;
    private final OptionSpec addFoam;
    private final OptionSpec leadDensity;
    private final OptionSpec foamDensity;
    private final OptionSpec takeFrom;
    private final OptionSpec move;

    /** Declares the options on a command. */
    PlanOptions(AbstractCommand command) {
        this.command = command;
        bg = command.number(10, "--bg", "MM", "Least height of B above G, dived, in mm.");
        gm = command.number(11, "--gm", "MM", "Least GM across, surfaced, in mm.");
        residual = command.option(
                12,
                "--residual",
                "LEAST..MOST",
                String.class,
                "Buoyancy left with the tanks full, in g, as in 20..40.");
        offLine = command.number(13, "--off-line", "MM", "How far bow and stern may lie off the painted line, in mm.");
        list = command.number(14, "--list", "DEG", "How far she may list surfaced, in degrees.");
        divedTrim = command.number(15, "--dived-trim", "DEG", "How far she may trim, and list, dived, in degrees.");
        goal = command.option(
                20,
                "--for",
                "mass|stability",
                String.class,
                "Add as little as meets the aims (mass, without this option), or stand as firm as --mass allows.");
        mass = command.number(
                21, "--mass", "G", "With --for stability: how much may be added, lead and foam together, in g.");
        addLead = command.number(
                22,
                "--add-lead",
                "G",
                "Instead of a whole plan: so much more lead, in g, with just the foam that keeps line and dive.");
        addFoam = command.number(
                23,
                "--add-foam",
                "CM3",
                "Instead of a whole plan: so much more foam, in cm³, with just the lead that keeps line and dive.");
        leadDensity = command.number(
                24, "--lead-density", "G/CM3", "Density of the lead to be added, in g/cm³. Without it, 11.34: cast.");
        foamDensity = command.number(
                25, "--foam-density", "G/CM3", "Density of the foam to be added, in g/cm³. Without it, 0.03.");
        takeFrom = command.add(OptionSpec.builder("--take-from")
                .order(26)
                .paramLabel("ID")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("Lead or foam on board of which the plan may take some out. May be repeated."));
        move = command.option(
                27,
                "--move",
                "ID=AFT..FORE",
                String.class,
                "A cylinder or tank that may be moved along, with all that stands in it, and how far in mm, as in"
                        + " wtc=-20..30.");
    }

    /** A part that may be moved, and how far. */
    record Move(String id, double fromMm, double toMm) {}

    /** Whether only a pair is asked for, not a whole plan. */
    boolean isPair() {
        return addLead.getValue() != null || addFoam.getValue() != null;
    }

    /**
     * The request for a boat.
     *
     * @throws UnusableInputException with everything that is wrong about the boat's ground for a plan
     */
    PlanRequest request(Boat boat) {
        double lead = density(leadDensity, PlanRequest.LEAD_G_PER_CM3);
        double foam = density(foamDensity, PlanRequest.FOAM_G_PER_CM3);
        if (isPair()) {
            return pair(boat, lead, foam);
        }
        Targets given = boat.targets();
        Targets targets = new Targets(
                aim(bg, 0).or(given::bgMm),
                aim(gm, 0).or(given::gmMm),
                band().or(given::residualG),
                aim(offLine, Double.MIN_VALUE).or(given::offLineMm),
                aim(list, Double.MIN_VALUE).or(given::listDeg),
                aim(divedTrim, Double.MIN_VALUE).or(given::divedTrimDeg));
        Wanted wanted = Wanted.of(targets, Condition.of(boat).massG());
        Goal strive = goal();
        List<Finding> findings = new ArrayList<>(PlanCheck.before(boat, wanted));
        Set<String> removable = removable(boat, findings);
        if (!findings.isEmpty()) {
            throw new UnusableInputException(findings);
        }
        return new PlanRequest(boat, boat.paintedLine().orElseThrow().plane(), wanted, strive, lead, foam, removable);
    }

    private PlanRequest pair(Boat boat, double lead, double foam) {
        for (OptionSpec other : List.of(bg, gm, residual, offLine, list, divedTrim, goal, mass, takeFrom)) {
            if (other.getValue() != null) {
                throw command.misuse(other.longestName()
                        + " is for a whole plan, and --add-lead or --add-foam asks for less. Leave one of them out.");
            }
        }
        Double leadG = command.within(addLead, 1, MOST, "g");
        Double foamCm3 = command.within(addFoam, 1, MOST, "cm³");
        if (leadG != null && foamCm3 != null) {
            throw command.misuse("Give one of --add-lead and --add-foam: the other follows from it.");
        }
        List<Finding> findings = PlanCheck.zones(boat);
        if (!findings.isEmpty()) {
            throw new UnusableInputException(findings);
        }
        Goal strive = leadG != null ? Goal.firmestWithLead(leadG) : Goal.firmestWithFoam(foamCm3 * 1000);
        return Pairing.keepingLine(boat, strive, lead, foam)
                .orElseThrow(() -> new UnusableInputException(Finding.of(Code.NOTHING_TO_KEEP, new Place.Whole())));
    }

    /**
     * What may be moved.
     *
     * @throws UnusableInputException when there is no such part
     */
    Optional<Move> move(Boat boat) {
        String told = move.getValue();
        if (told == null) {
            return Optional.empty();
        }
        int equals = told.lastIndexOf('=');
        double[] range = range(equals < 0 ? "" : told.substring(equals + 1));
        if (range == null || range[0] > range[1]) {
            throw command.misuse(
                    "--move takes ID=AFT..FORE in mm, the smaller first, as in wtc=-20..30; found " + told + ".");
        }
        String id = told.substring(0, equals);
        if (boat.part(id).filter(Shifted::canMove).isEmpty()) {
            List<String> allowed =
                    boat.parts().stream().filter(Shifted::canMove).map(Part::id).toList();
            throw new UnusableInputException(
                    Finding.of(Code.NOT_MOVABLE, new Place.Whole(), "found", id, "allowed", allowed));
        }
        return Optional.of(new Move(id, range[0], range[1]));
    }

    private Optional<Double> aim(OptionSpec option, double least) {
        return Optional.ofNullable(
                command.within(option, least, MOST, option.paramLabel().equals("DEG") ? "degrees" : "mm"));
    }

    private double density(OptionSpec option, double otherwise) {
        Double told = command.within(option, 1e-3, DENSEST_G_PER_CM3, "g/cm³");
        return told == null ? otherwise : told;
    }

    private Optional<Targets.Band> band() {
        String told = residual.getValue();
        if (told == null) {
            return Optional.empty();
        }
        double[] range = range(told);
        if (range == null || range[0] > range[1]) {
            throw command.misuse(
                    "--residual takes LEAST..MOST in g, the smaller first, as in 20..40; found " + told + ".");
        }
        return Optional.of(new Targets.Band(range[0], range[1]));
    }

    private static double[] range(String text) {
        Matcher range = RANGE.matcher(text);
        return range.matches()
                ? new double[] {Double.parseDouble(range.group(1)), Double.parseDouble(range.group(2))}
                : null;
    }

    private Goal goal() {
        String told = goal.getValue();
        Double budget = command.within(mass, 1, MOST, "g");
        if (told == null || told.equals("mass")) {
            if (budget != null) {
                throw command.misuse("--mass goes with --for stability: without that as little as possible is added.");
            }
            return Goal.LEAST_MASS;
        }
        if (!told.equals("stability")) {
            throw command.misuse("--for takes mass or stability; found " + told + ".");
        }
        if (budget == null) {
            throw command.misuse("--for stability needs --mass: how many grams may be added.");
        }
        return Goal.firmestFor(budget);
    }

    private Set<String> removable(Boat boat, List<Finding> findings) {
        List<String> told = takeFrom.getValue();
        Set<String> ids = new LinkedHashSet<>(told == null ? List.of() : told);
        for (String id : Set.copyOf(ids)) {
            if (boat.part(id).filter(PlanRequest::canTakeOut).isEmpty()) {
                List<String> allowed = boat.parts().stream()
                        .filter(PlanRequest::canTakeOut)
                        .map(Part::id)
                        .toList();
                findings.add(Finding.of(Code.NOT_REMOVABLE, new Place.Whole(), "found", id, "allowed", allowed));
            }
        }
        ids.addAll(PlanRequest.looseParts(boat));
        return ids;
    }
}
