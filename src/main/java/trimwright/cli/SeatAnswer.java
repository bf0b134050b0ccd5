package trimwright.cli;

import java.util.List;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.finding.Finding;
import trimwright.plan.CylinderSeat;
import trimwright.plan.SeatRoom;
import trimwright.report.Numbers;
import trimwright.report.SeatWords;

/** Where cylinders fit, told. */
record SeatAnswer(Boat boat, List<CylinderSeat> seats, List<Finding> findings) implements Answer {

    private static final int STATIONS_TOLD = 12;
    private static final List<String> SEATS = List.of("as it is", "lowest", "highest");

    @Override
    public int exitCode() {
        return seats.stream().allMatch(CylinderSeat::fits) ? ExitCode.DONE : ExitCode.NO;
    }

    @Override
    public void tell(Page page) {
        page.line(boat.name()).gap();
        seats.forEach(seat -> tell(page, seat));
    }

    private static void tell(Page page, CylinderSeat seat) {
        String id = seat.part().id();
        String where = SeatWords.of(seat.touches(), seat);
        if (!Double.isFinite(seat.clearanceMm())) {
            page.paragraph(id + " does not fit where it is: no hull reaches over its length.");
        } else if (seat.fits()) {
            page.paragraph(id + " fits where it is, with " + Numbers.mm(seat.clearanceMm())
                    + " to the inside of the hull. It is nearest to " + where + ".");
        } else {
            String how = seat.clearanceMm() < 0
                    ? "it comes " + Numbers.mm(-seat.clearanceMm()) + " into "
                    : "only " + Numbers.mm(seat.clearanceMm()) + " are left to ";
            page.paragraph(id + " does not fit where it is: " + how + where + ".");
        }
        sizes(page, seat);
        rooms(page, seat);
        if (!seat.profile().isEmpty()) {
            profile(page, seat);
        }
        page.gap();
    }

    private static void sizes(Page page, CylinderSeat seat) {
        BarShape bar = (BarShape) seat.part().shape().orElseThrow();
        TextTable table = TextTable.of("lrl");
        table.row("Axis now", Numbers.fixed(bar.fromMm().getZ(), 1), "mm above z = 0");
        table.row(
                "Lowest axis",
                seat.lowestAxisMm().map(z -> Numbers.fixed(z, 1)).orElse("none"),
                seat.lowestAxisMm().isPresent() ? "mm" : "it fits at no height");
        seat.highestAxisMm().ifPresent(z -> table.row("Highest axis", Numbers.fixed(z, 1), "mm, seen from above"));
        table.row(
                "Thickest at this axis",
                Numbers.fixed(seat.largestDiameterMm(), 1),
                "mm across; it is " + Numbers.mm(bar.diameterMm()) + " now");
        CylinderSeat.Largest largest = seat.largestAnywhereMm();
        table.row(
                "Thickest at any height",
                Numbers.fixed(largest.diameterMm(), 1),
                largest.diameterMm() > 0 ? "mm across, with the axis at " + Numbers.mm(largest.axisZMm()) : "mm");
        seat.longest()
                .ifPresent(s -> table.row("Longest at this axis", Numbers.fixed(s.lengthMm(), 0), "mm, " + fromTo(s)));
        seat.longestAnywhere()
                .ifPresent(l -> table.row(
                        "Longest at any height",
                        Numbers.fixed(l.stretch().lengthMm(), 0),
                        "mm, " + fromTo(l.stretch()) + ", with the axis at " + Numbers.mm(l.axisZMm())));
        page.gap().table(table);
        seat.lowestTouches()
                .ifPresent(t -> page.gap().paragraph("Lowered further it touches " + SeatWords.of(t, seat) + "."));
    }

    private static String fromTo(CylinderSeat.Stretch s) {
        return "from x " + Numbers.fixed(s.fromXMm(), 0) + " to " + Numbers.fixed(s.toXMm(), 0);
    }

    private static void rooms(Page page, CylinderSeat seat) {
        if (!seat.rooms().get(0).known()) {
            page.gap()
                    .paragraph(
                            "The hull is open, so that its inside, and with it the room for lead and foam, cannot be told.");
            return;
        }
        TextTable table = TextTable.of("lrrrrl")
                .head("Seat", "axis, mm", "under it, cm³", "up to the line, cm³", "over the line, cm³", "runs into");
        for (int i = 0; i < seat.rooms().size(); i++) {
            SeatRoom r = seat.rooms().get(i);
            table.row(
                    SEATS.get(i),
                    Numbers.fixed(r.axisZMm(), 1),
                    Numbers.fixed(r.underMm3() / 1000, 0),
                    Numbers.fixed(r.overMm3() / 1000, 0),
                    Numbers.fixed(r.aboveLineMm3() / 1000, 0),
                    String.join(", ", r.inTheWay()));
        }
        page.heading("Room that each seat leaves over its length: for lead under its axis, for foam over it")
                .table(table);
    }

    private static void profile(Page page, CylinderSeat seat) {
        BarShape bar = (BarShape) seat.part().shape().orElseThrow();
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
        page.heading("Room along the hull, at this axis; negative where the hull cuts into it")
                .table(table);
    }

    @Override
    public JsonObject json() {
        JsonObject json = json(seats.get(0));
        return json.list("cylinders", seats.stream().map(SeatAnswer::json).toList());
    }

    private static JsonObject json(CylinderSeat seat) {
        JsonObject json = new JsonObject()
                .text("id", seat.part().id())
                .truth("fits", seat.fits())
                .number("lowestAxisMm", seat.lowestAxisMm())
                .number("highestAxisMm", seat.highestAxisMm())
                .number("clearanceMm", seat.clearanceMm())
                .vector("touchesMm", seat.touches().pointMm())
                .text("touchesPart", seat.touches().hullPart())
                .number("largestDiameterMm", seat.largestDiameterMm());
        seat.lowestTouches()
                .ifPresent(t -> json.vector("lowestTouchesMm", t.pointMm()).text("lowestTouchesPart", t.hullPart()));
        CylinderSeat.Largest largest = seat.largestAnywhereMm();
        json.object(
                "largestAnywhere",
                new JsonObject().number("diameterMm", largest.diameterMm()).number("axisMm", largest.axisZMm()));
        seat.longest().ifPresent(s -> json.object("longest", stretch(s)));
        seat.longestAnywhere()
                .ifPresent(
                        l -> json.object("longestAnywhere", stretch(l.stretch()).number("axisMm", l.axisZMm())));
        return json.list("seats", seat.rooms().stream().map(SeatAnswer::json).toList())
                .list(
                        "profile",
                        seat.profile().stream()
                                .map(s -> new JsonObject()
                                        .number("xMm", s.xMm())
                                        .number("bottomMm", s.bottomZMm())
                                        .number("topMm", s.topZMm())
                                        .number("diameterMm", s.diameterMm()))
                                .toList());
    }

    private static JsonObject stretch(CylinderSeat.Stretch s) {
        return new JsonObject().number("fromXMm", s.fromXMm()).number("toXMm", s.toXMm());
    }

    private static JsonObject json(SeatRoom room) {
        JsonObject json = new JsonObject().number("axisMm", room.axisZMm());
        if (room.known()) {
            json.number("underCm3", room.underMm3() / 1000)
                    .number("upToLineCm3", room.overMm3() / 1000)
                    .number("aboveLineCm3", room.aboveLineMm3() / 1000);
        }
        return json.list("runsInto", room.inTheWay());
    }
}
