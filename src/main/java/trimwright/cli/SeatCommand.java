package trimwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.boat.BarShape;
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
import trimwright.report.Numbers;

/** Where the cylinder fits. */
final class SeatCommand extends BoatCommand {

    private static final double WIDEST_GAP_MM = 1000;

    private final OptionSpec gap =
            number(10, "--gap", "MM", "Distance to be kept from the inside of the hull, in mm. Without it, 0.");

    SeatCommand() {
        super(
                "seat",
                "Says whether the watertight cylinder fits where the boat file puts it, how low it can sit, and how thick or"
                        + " long it could be.",
                "Examples:",
                "  trimwright seat heron.boat.json",
                "  trimwright seat heron.boat.json --gap 2",
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
        List<Finding> findings = new ArrayList<>(loaded.findings());
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
        return new Seats(boat, seats, findings);
    }

    private record Seats(Boat boat, List<CylinderSeat> seats, List<Finding> findings) implements Answer {

        private static final int STATIONS_TOLD = 12;

        @Override
        public int exitCode() {
            return seats.stream().allMatch(CylinderSeat::fits) ? ExitCode.DONE : ExitCode.NO;
        }

        @Override
        public void tell(Page page) {
            page.line(boat.name()).gap();
            for (CylinderSeat seat : seats) {
                tell(page, seat);
            }
        }

        private static void tell(Page page, CylinderSeat seat) {
            BarShape bar = (BarShape) seat.part().shape().orElseThrow();
            String id = seat.part().id();
            page.paragraph(
                    seat.fits()
                            ? id + " fits where it is, with " + Numbers.mm(seat.clearanceMm())
                                    + " to the inside of the hull at " + point(seat.touchesMm()) + "."
                            : id + " does not fit where it is: it comes "
                                    + Numbers.mm(Math.abs(seat.clearanceMm()))
                                    + (seat.clearanceMm() < 0 ? " into" : " near") + " the hull at "
                                    + point(seat.touchesMm()) + ".");
            TextTable table = TextTable.of("lrl");
            table.row("Axis now", Numbers.fixed(bar.fromMm().getZ(), 1), "mm above z = 0");
            table.row(
                    "Lowest axis",
                    seat.lowestAxisMm().map(z -> Numbers.fixed(z, 1)).orElse("none"),
                    seat.lowestTouchesMm()
                            .map(p -> "mm; it then touches at " + point(p))
                            .orElse("it fits at no height"));
            seat.highestAxisMm().ifPresent(z -> table.row("Highest axis", Numbers.fixed(z, 1), "mm, seen from above"));
            table.row(
                    "Thickest at this axis",
                    Numbers.fixed(seat.largestDiameterMm(), 1),
                    "mm across; it is " + Numbers.mm(bar.diameterMm()) + " now");
            table.row(
                    "Thickest at any height",
                    Numbers.fixed(seat.largestAnywhereMm().diameterMm(), 1),
                    "mm across, with the axis at "
                            + Numbers.mm(seat.largestAnywhereMm().axisZMm()));
            seat.longest()
                    .ifPresent(s -> table.row(
                            "Longest at this axis",
                            Numbers.fixed(s.lengthMm(), 0),
                            "mm, from x " + Numbers.fixed(s.fromXMm(), 0) + " to " + Numbers.fixed(s.toXMm(), 0)));
            page.gap().table(table);
            profile(page, seat, bar);
        }

        private static void profile(Page page, CylinderSeat seat, BarShape bar) {
            TextTable table = TextTable.of("rrrr").head("x, mm", "under it, mm", "over it, mm", "thickest here, mm");
            double radius = bar.diameterMm() / 2;
            double axis = bar.fromMm().getZ();
            int step = Math.max(1, seat.profile().size() / STATIONS_TOLD);
            for (int i = step / 2; i < seat.profile().size(); i += step) {
                CylinderSeat.Station s = seat.profile().get(i);
                table.row(
                        Numbers.fixed(s.xMm(), 0),
                        Numbers.fixed(axis - radius - s.bottomZMm(), 1),
                        Numbers.fixed(s.topZMm() - axis - radius, 1),
                        Numbers.fixed(s.diameterMm(), 1));
            }
            page.heading("Room along the hull, at this axis").table(table);
        }

        private static String point(Vector3D p) {
            return "x " + Numbers.fixed(p.getX(), 0) + ", y " + Numbers.fixed(p.getY(), 0) + ", z "
                    + Numbers.fixed(p.getZ(), 0);
        }

        @Override
        public JsonObject json() {
            JsonObject json = json(seats.get(0));
            return json.list("cylinders", seats.stream().map(Seats::json).toList());
        }

        private static JsonObject json(CylinderSeat seat) {
            JsonObject json = new JsonObject()
                    .text("id", seat.part().id())
                    .truth("fits", seat.fits())
                    .number("lowestAxisMm", seat.lowestAxisMm())
                    .number("highestAxisMm", seat.highestAxisMm())
                    .number("clearanceMm", seat.clearanceMm())
                    .vector("touchesMm", seat.touchesMm())
                    .number("largestDiameterMm", seat.largestDiameterMm())
                    .object(
                            "largestAnywhere",
                            new JsonObject()
                                    .number(
                                            "diameterMm",
                                            seat.largestAnywhereMm().diameterMm())
                                    .number("axisMm", seat.largestAnywhereMm().axisZMm()));
            seat.longest()
                    .ifPresent(s -> json.object(
                            "longest",
                            new JsonObject().number("fromXMm", s.fromXMm()).number("toXMm", s.toXMm())));
            return json.list(
                    "profile",
                    seat.profile().stream()
                            .map(s -> new JsonObject()
                                    .number("xMm", s.xMm())
                                    .number("bottomMm", s.bottomZMm())
                                    .number("topMm", s.topZMm())
                                    .number("diameterMm", s.diameterMm()))
                            .toList());
        }
    }
}
