package trimwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.HullBuild;
import trimwright.boat.Part;
import trimwright.report.AttitudeWords;
import trimwright.report.FloatVerdict;
import trimwright.report.Numbers;
import trimwright.report.WaterWords;
import trimwright.statics.Draughts;
import trimwright.statics.Equilibrium;
import trimwright.statics.Flotation;
import trimwright.statics.FlotationFindings;
import trimwright.statics.Submerged;

/** A floating boat as text: the verdict first, then the figures. */
final class FloatText {

    /** A weight that a builder has at hand, to show what a moment means. */
    private static final double PIECE_G = 10;

    private FloatText() {}

    static void tell(Flotation flotation, Page page) {
        Boat boat = flotation.condition().boat();
        page.line(boat.name()).line(loading(boat)).gap();
        page.paragraph(FloatVerdict.of(flotation));
        FlotationFindings.lollDeg(flotation)
                .ifPresent(angle -> page.paragraph("Upright she does not stay: she rests at about "
                        + Numbers.degrees(angle) + " on either side."));
        page.gap();
        if (flotation.settled().isPresent()) {
            page.table(figures(flotation, flotation.settled().get()));
            page.heading("What a gram does").table(grams(flotation));
            otherAttitudes(flotation, page);
        } else {
            page.table(sinking(flotation));
        }
        if (flotation.condition().tankVolumeMm3() > 0) {
            page.heading("Dived, everything under water, tanks full").table(dived(flotation.submerged()));
        }
    }

    /** The water, and how full the tanks are. */
    static String loading(Boat boat) {
        String tanks = boat.parts().stream()
                .filter(Part::isTank)
                .map(t -> t.id() + " " + Numbers.fixed(100 * t.fill(), 0) + " % full")
                .collect(Collectors.joining(", "));
        return WaterWords.of(boat.water()) + (tanks.isEmpty() ? "" : "; tanks: " + tanks);
    }

    private static TextTable figures(Flotation flotation, Equilibrium rest) {
        TextTable table = TextTable.of("lrl");
        Draughts.of(flotation.condition().boat(), rest.plane()).ifPresent(d -> {
            table.row("Draught at the bow", Numbers.fixed(d.bowMm(), 1), "mm, at x " + Numbers.mm(d.bowXMm()));
            table.row("Draught at the stern", Numbers.fixed(d.sternMm(), 1), "mm, at x " + Numbers.mm(d.sternXMm()));
        });
        angle(table, "List", rest.heelDeg(), "to starboard", "to port");
        angle(table, "Trim", rest.trimDeg(), "bow up", "bow down");
        double tankWater = flotation.condition().massG() - flotation.condition().dryMassG();
        table.row(
                "Weight",
                Numbers.fixed(rest.massG(), 0),
                tankWater > 0 ? "g, of which tank water " + Numbers.g(tankWater) : "g");
        table.row("Displaced", Numbers.fixed(rest.sums().volumeMm3() / 1000, 0), "cm³");
        table.row(
                "Reserve", Numbers.fixed(flotation.reserveG(), 0), "g that she could still carry before all is under");
        table.row("B above G", Numbers.fixed(rest.bgMm(), 1), "mm");
        table.row("GM across", Numbers.fixed(rest.gmTransverseMm(), 1), "mm, resists list");
        table.row("GM along", Numbers.fixed(rest.gmLongitudinalMm(), 0), "mm, resists trim");
        table.row("Waterplane", Numbers.fixed(rest.sums().waterplaneMm2() / 100, 1), "cm²");
        table.row(
                "Wetted surface",
                Numbers.fixed(flotation.wettedMm2() / 100, 0),
                flotation.condition().boat().parts().stream().anyMatch(FloatText::isPrinted)
                        ? "cm², outside of the hull; of prints, both sides of their walls"
                        : "cm², outside of the hull");
        centre(table, "G, centre of gravity", rest.centreOfGravityMm());
        centre(table, "B, centre of buoyancy", rest.centreOfBuoyancyMm());
        return table;
    }

    /** A mesh that is the plastic itself has its inner surface in it. */
    private static boolean isPrinted(Part part) {
        return part.build().orElse(null) instanceof HullBuild.Printed;
    }

    private static TextTable sinking(Flotation flotation) {
        TextTable table = TextTable.of("lrl");
        table.row("Weight", Numbers.fixed(flotation.condition().massG(), 0), "g, tank water included");
        table.row(
                "Can displace",
                Numbers.fixed(flotation.condition().volumeMm3() / 1000, 0),
                "cm³, the whole boat under water");
        table.row("Too heavy by", Numbers.fixed(-flotation.reserveG(), 0), "g");
        return table;
    }

    private static TextTable grams(Flotation flotation) {
        TextTable table = TextTable.of("lrl");
        table.row("1 mm deeper", Numbers.fixed(flotation.gramsPerMmImmersion(), 1), "g");
        moment(table, "1° of list", flotation.gmmPerDegreeList(), "across");
        moment(table, "1° of trim", flotation.gmmPerDegreeTrim(), "along");
        return table;
    }

    private static void moment(TextTable table, String what, double gmm, String way) {
        table.row(
                what,
                Numbers.fixed(gmm, 0),
                "g·mm, as " + Numbers.g(PIECE_G) + " moved " + Numbers.fixed(gmm / PIECE_G, 0) + " mm " + way);
    }

    static TextTable dived(Submerged dived) {
        TextTable table = TextTable.of("lrl");
        angle(table, "List", dived.heelDeg(), "to starboard", "to port");
        angle(table, "Trim", dived.trimDeg(), "bow up", "bow down");
        table.row("B above G", Numbers.fixed(dived.bgMm(), 1), "mm");
        table.row(
                "Buoyancy left",
                Numbers.fixed(dived.residualG(), 1),
                dived.residualG() < 0 ? "g: she goes down" : "g: so much of her stays above water");
        return table;
    }

    private static void otherAttitudes(Flotation flotation, Page page) {
        List<Equilibrium> others = flotation.attitudes().stream()
                .filter(e -> Vector3D.angle(
                                e.plane().up(),
                                flotation.settled().get().plane().up())
                        > 1e-3)
                .toList();
        if (others.isEmpty()) {
            return;
        }
        page.heading("Other ways she can rest");
        double own = flotation.settled().get().energyMm();
        for (Equilibrium e : others) {
            double rise = e.energyMm() - own;
            String level = Numbers.roundsToZero(rise, 1)
                    ? "as firm as the one above"
                    : "potential height " + Numbers.mm(Math.abs(rise)) + (rise > 0 ? " higher" : " lower");
            page.point(AttitudeWords.of(e.plane().up()) + "; " + level);
        }
    }

    private static void angle(TextTable table, String what, double deg, String positive, String negative) {
        String side = Numbers.roundsToZero(deg, 1) ? "" : " " + (deg > 0 ? positive : negative);
        table.row(what, Numbers.fixed(Math.abs(deg), 1), "degrees" + side);
    }

    private static void centre(TextTable table, String what, Vector3D point) {
        table.row(what, "", Numbers.point(point.getX(), point.getY(), point.getZ()));
    }
}
