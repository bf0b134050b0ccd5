package trimwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.finding.Finding;
import trimwright.report.AttitudeWords;
import trimwright.report.Numbers;
import trimwright.statics.Waterline;

/** A table of trial waterlines. */
record WaterlinesAnswer(Boat boat, List<Finding> findings, double listDeg, double trimDeg, List<Waterline> table)
        implements Answer {

    private static final double MM2_PER_CM2 = 100;
    private static final double MM3_PER_CM3 = 1000;

    @Override
    public int exitCode() {
        return ExitCode.DONE;
    }

    @Override
    public void tell(Page page) {
        page.line(boat.name()).line(FloatText.loading(boat));
        page.line("The whole boat at trial waterlines, " + AttitudeWords.of(listDeg, trimDeg))
                .gap();
        TextTable text = TextTable.of("rrrrrrrrrrrrl");
        text.head(
                "Height",
                "Volume",
                "Carries",
                "Bx",
                "By",
                "Bz",
                "Waterpl.",
                "Fx",
                "Fy",
                "BM acr.",
                "BM along",
                "Wetted",
                "");
        text.head("mm", "cm³", "g", "mm", "mm", "mm", "cm²", "mm", "mm", "mm", "mm", "cm²", "");
        table.forEach(w -> row(text, w));
        page.table(text).gap();
        page.paragraph(
                "Carries: mass of the water displaced. B: centre of the immersed volume. F: centre of the waterplane."
                        + " BM: metacentre above B, across for list, along for trim. Wetted: outside of the hull, of prints"
                        + " both sides of their walls. 1 mm deeper takes the waterplane in cm² times "
                        + Numbers.plain(boat.water().densityGPerCm3() / 10) + " g.");
        if (table.stream().anyMatch(w -> w.waterplaneJumpMm2() != 0)) {
            page.paragraph(
                    "*: flat faces lie in this plane, so that the waterplane jumps; the figures are those just below.");
        }
    }

    private static void row(TextTable text, Waterline w) {
        Optional<Vector3D> b = w.centreOfBuoyancyMm();
        Optional<Vector3D> f = w.centreOfFlotationMm();
        text.row(
                Numbers.plain(w.plane().heightMm()),
                Numbers.fixed(w.sums().volumeMm3() / MM3_PER_CM3, 1),
                Numbers.fixed(w.displacementG(), 1),
                cell(b, Vector3D::getX),
                cell(b, Vector3D::getY),
                cell(b, Vector3D::getZ),
                Numbers.fixed(w.sums().waterplaneMm2() / MM2_PER_CM2, 1),
                cell(f, Vector3D::getX),
                cell(f, Vector3D::getY),
                cell(w.bmTransverseMm(), v -> v),
                cell(w.bmLongitudinalMm(), v -> v),
                Numbers.fixed(w.wettedMm2() / MM2_PER_CM2, 1),
                w.waterplaneJumpMm2() != 0 ? "*" : "");
    }

    private static <T> String cell(Optional<T> value, Function<T, Double> number) {
        return value.map(v -> Numbers.fixed(number.apply(v), 1)).orElse("-");
    }

    @Override
    public JsonObject json() {
        return new JsonObject()
                .number("waterDensityGPerCm3", boat.water().densityGPerCm3())
                .number("heelDeg", listDeg)
                .number("trimDeg", trimDeg)
                .list("waterlines", table.stream().map(WaterlinesAnswer::json).toList());
    }

    private static JsonObject json(Waterline w) {
        JsonObject json = new JsonObject()
                .number("heightMm", w.plane().heightMm())
                .number("displacedCm3", w.sums().volumeMm3() / MM3_PER_CM3)
                .number("displacementG", w.displacementG());
        w.centreOfBuoyancyMm().ifPresent(b -> json.vector("centreOfBuoyancyMm", b));
        json.number("waterplaneCm2", w.sums().waterplaneMm2() / MM2_PER_CM2);
        w.centreOfFlotationMm().ifPresent(f -> json.vector("centreOfFlotationMm", f));
        json.number("bmTransverseMm", w.bmTransverseMm())
                .number("bmLongitudinalMm", w.bmLongitudinalMm())
                .number("wettedCm2", w.wettedMm2() / MM2_PER_CM2)
                .number("gramsPerMmImmersion", w.gramsPerMmImmersion());
        if (w.waterplaneJumpMm2() != 0) {
            json.number("waterplaneJumpCm2", w.waterplaneJumpMm2() / MM2_PER_CM2);
        }
        return json;
    }
}
