package trimwright.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.boat.Boat;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.file.LoadedBoat;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.plan.CylinderSeat;
import trimwright.plan.SeatFinder;

/** Where the cylinder fits. */
final class SeatCommand extends BoatCommand {

    private static final double WIDEST_GAP_MM = 1000;

    private final OptionSpec gap =
            number(10, "--gap", "MM", "Distance to be kept from the inside of the hull, in mm. Without it, 0.");

    private final PlotOptions plot =
            new PlotOptions(this, "Draw the room under and over each cylinder along the hull.");

    SeatCommand() {
        super(
                "seat",
                "Says whether the watertight cylinder fits where the boat file puts it, how low it can sit, and how thick or"
                        + " long it could be.",
                "Examples:",
                "  trimwright seat heron.boat.json",
                "  trimwright seat heron.boat.json --gap 2 --plot seat.svg",
                "",
                Cautions.HELP);
    }

    @Override
    Answer answer() {
        Double told = within(gap, 0, WIDEST_GAP_MM, "mm");
        double gapMm = told == null ? 0 : told;
        LoadedBoat loaded = load();
        Boat boat = asToldTo(loaded);
        List<Finding> errors = new ArrayList<>();
        List<Finding> findings = new ArrayList<>(loaded.allFindings());
        List<Part> cylinders = new ArrayList<>();
        for (Part part : boat.parts()) {
            if (SeatFinder.canSeat(part)) {
                cylinders.add(part);
            } else if (part.kind() == Kind.CYLINDER) {
                findings.add(Finding.of(Code.CYLINDER_NOT_ALONG, new Place.OnPart(part.id())));
            }
        }
        if (cylinders.isEmpty()) {
            errors.add(Finding.of(Code.NO_CYLINDER_TO_SEAT, new Place.Whole()));
        }
        if (boat.parts().stream().noneMatch(Part::isHull)) {
            errors.add(Finding.of(Code.NO_HULL_TO_SEAT_IN, new Place.Whole()));
        }
        if (!errors.isEmpty()) {
            throw new UnusableInputException(errors);
        }
        List<CylinderSeat> seats =
                cylinders.stream().map(c -> SeatFinder.seat(boat, c, gapMm)).toList();
        plot.write(SeatPlot.of(boat.name(), seats)).ifPresent(findings::add);
        return new SeatAnswer(boat, seats, findings);
    }
}
