package trimwright.boat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.TestParts;
import trimwright.boat.BarShape.Ends;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.Severity;
import trimwright.mesh.MeshImport;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

class FitCheckTest {

    private final List<Part> parts = new ArrayList<>();

    private static Shape box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new BoxShape(new Vector3D(x0, y0, z0), new Vector3D(x1, y1, z1));
    }

    private static Shape bar(double x0, double x1, double z, double diameter) {
        return new BarShape(new Vector3D(x0, 0, z), new Vector3D(x1, 0, z), diameter, Ends.FLAT);
    }

    private static Shape mesh(TriangleMesh mesh) {
        return new MeshShape("hull.stl", MeshImport.AS_IS, mesh);
    }

    private void add(String id, Kind kind, Shape shape, String inside, boolean mirror) {
        parts.add(new Part(
                id,
                kind,
                Optional.ofNullable(shape),
                Optional.empty(),
                Optional.of(10.0),
                Optional.of(1.0),
                shape == null ? Optional.of(new Vector3D(50, 0, 10)) : Optional.empty(),
                Optional.ofNullable(inside),
                mirror,
                0));
    }

    private void add(String id, Kind kind, Shape shape) {
        add(id, kind, shape, null, false);
    }

    private void addHull(HullBuild build, TriangleMesh mesh) {
        parts.add(new Part(
                "hull",
                Kind.HULL,
                Optional.of(mesh(mesh)),
                Optional.of(build),
                Optional.of(100.0),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                0));
    }

    private List<Finding> check() {
        return FitCheck.of(new Boat("Coot", Water.FRESH, Optional.empty(), parts, List.of(), Targets.NONE));
    }

    private Finding only(Code code, Place place) {
        List<Finding> findings = check();
        assertEquals(List.of(code), findings.stream().map(Finding::code).toList(), findings.toString());
        assertEquals(place, findings.get(0).place());
        return findings.get(0);
    }

    private static double number(Finding finding, String name) {
        return (double) finding.values().get(name);
    }

    @Test
    void boxesInOnePlaceShareAnExactVolume() {
        add("lead", Kind.BALLAST, box(0, 0, 0, 20, 10, 10));
        add("foam", Kind.FOAM, box(30, 12, 20, 15, 4, 5));
        Finding finding = only(Code.PARTS_OVERLAP, new Place.BetweenParts("lead", "foam"));
        assertEquals(5 * 6 * 5 / 1000.0, number(finding, "volumeCm3"), 1e-12);
        assertEquals(5 * 6 * 5 / 1000.0 / 4096, number(finding, "resolutionCm3"), 1e-12);
        assertEquals(Severity.WARNING, finding.severity());
    }

    @Test
    void touchingPartsDoNotOverlap() {
        add("lead", Kind.BALLAST, box(0, -5, 0, 20, 5, 10));
        add("foam", Kind.FOAM, box(0, -5, 10, 20, 5, 20));
        add("tank", Kind.TANK, bar(20, 60, 5, 10));
        add("more", Kind.TANK, bar(20, 60, 15, 10));
        assertEquals(List.of(), check());
    }

    @Test
    void barsShareWhatTheFormulaSays() {
        // Two bars of one axis, 30 and 20 mm thick, meet over 25 mm.
        add("one", Kind.TANK, bar(0, 100, 20, 30));
        add("two", Kind.TANK, bar(75, 200, 20, 20));
        Finding finding = only(Code.PARTS_OVERLAP, new Place.BetweenParts("one", "two"));
        double exact = Math.PI * 10 * 10 * 25 / 1000;
        // The rule of midpoints over a half circle of n columns is off by about 0.4 / n^1.5 of it.
        assertEquals(exact, number(finding, "volumeCm3"), 0.001 * exact);
        assertEquals(25.0 * 20 * 20 / 64 / 64 / 1000, number(finding, "resolutionCm3"), 1e-12);
    }

    @Test
    void aTwinThatRunsIntoItsPartIsFound() {
        add("foam", Kind.FOAM, box(0, -2, 0, 10, 8, 10), null, true);
        Finding finding = only(Code.PARTS_OVERLAP, new Place.BetweenParts("foam", "foam"));
        assertEquals(10 * 4 * 10 / 1000.0, number(finding, "volumeCm3"), 1e-12);
    }

    @Test
    void volumesOfMirroredPartsAreOfBothPieces() {
        add("tray", Kind.FITTING, box(0, -30, 0, 100, 30, 5));
        add("lead", Kind.BALLAST, box(10, 10, 4, 20, 20, 9), null, true);
        Finding finding = only(Code.PARTS_OVERLAP, new Place.BetweenParts("tray", "lead"));
        assertEquals(2 * 100 * 1 / 1000.0, number(finding, "volumeCm3"), 1e-12);
    }

    @Test
    void partsInsideAreComparedWithEachOtherAndWithTheirContainerOnly() {
        add("wtc", Kind.CYLINDER, bar(0, 200, 0, 60));
        add("tank", Kind.TANK, bar(50, 100, 0, 58), "wtc", false);
        add("strap", Kind.FITTING, box(60, -40, -40, 70, 40, -30));
        assertEquals(List.of(), check());
        add("tank 2", Kind.TANK, bar(90, 140, 0, 50), "wtc", false);
        Finding finding = only(Code.PARTS_OVERLAP, new Place.BetweenParts("tank", "tank 2"));
        assertEquals("tank", finding.values().get("otherKind"));
        double exact = Math.PI * 25 * 25 * 10 / 1000;
        assertEquals(exact, number(finding, "volumeCm3"), 0.001 * exact);
    }

    @Test
    void aTankThatIsTooLargeForItsCylinderSticksOut() {
        add("wtc", Kind.CYLINDER, bar(0, 200, 0, 60));
        add("tank", Kind.TANK, bar(50, 100, 0, 64), "wtc", false);
        Finding finding = only(Code.STICKS_OUT, new Place.BetweenParts("tank", "wtc"));
        double exact = Math.PI * (32 * 32 - 30 * 30) * 50 / 1000;
        // Each circle is off by 0.001 of itself, and they are 8 times what is left between them.
        assertEquals(exact, number(finding, "volumeCm3"), 0.016 * exact);
    }

    @Test
    void ofTheTanksAloneNoOtherPartIsReported() {
        // A tank in the sealed bow, a cylinder in the skin behind it: without the skin the cylinder would seem to lie
        // outside the hull.
        addHull(new HullBuild.Sealed(Optional.empty()), Solids.box(200, -40, 0, 300, 40, 80));
        parts.add(new Part(
                "stern",
                Kind.HULL,
                Optional.of(mesh(Solids.box(0, -40, 0, 199, 40, 80))),
                Optional.of(new HullBuild.Skin(1)),
                Optional.of(100.0),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                0));
        add("cylinder", Kind.CYLINDER, bar(10, 190, 40, 60));
        add("motor", Kind.FITTING, bar(0, 20, 40, 30), "cylinder", false);
        add("bow tank", Kind.TANK, bar(210, 260, 40, 40), "hull", false);
        add("stern tank", Kind.TANK, bar(150, 200, 40, 40), "cylinder", false);

        List<Finding> findings =
                FitCheck.ofTanks(new Boat("Coot", Water.FRESH, Optional.empty(), parts, List.of(), Targets.NONE));

        assertEquals(
                List.of(Code.STICKS_OUT), findings.stream().map(Finding::code).toList(), findings.toString());
        assertEquals(
                new Place.BetweenParts("stern tank", "cylinder"),
                findings.get(0).place());
    }

    @Test
    void aContainerWithATwinHoldsPartsOnBothSides() {
        Shape side = new BarShape(new Vector3D(0, 50, 0), new Vector3D(200, 50, 0), 60, Ends.ROUND);
        add("wtc", Kind.CYLINDER, side, null, true);
        add("tank", Kind.TANK, box(90, 40, -10, 110, 60, 10), "wtc", true);
        assertEquals(List.of(), check());
    }

    @Test
    void aPartInACylinderThatDoesNotSaySoDisplacesTwice() {
        add("battery", Kind.FITTING, box(50, -10, -10, 90, 10, 10));
        add("wtc", Kind.CYLINDER, bar(0, 200, 0, 60));
        Finding finding = only(Code.INSIDE_NOT_STATED, new Place.BetweenParts("battery", "wtc"));
        assertEquals(16, number(finding, "volumeCm3"), 1e-9);
    }

    @Test
    void aCompactPieceIsJudgedByItsCentre() {
        add("receiver", Kind.FITTING, null);
        add("wtc", Kind.CYLINDER, bar(0, 200, 0, 60));
        only(Code.INSIDE_NOT_STATED, new Place.BetweenParts("receiver", "wtc"));
        parts.clear();
        add("wtc", Kind.CYLINDER, bar(60, 200, 0, 60));
        add("receiver", Kind.FITTING, null, "wtc", false);
        only(Code.CENTRE_OUTSIDE_CONTAINER, new Place.BetweenParts("receiver", "wtc"));
    }

    @Test
    void aCentreOfMassOutsideItsPartIsDoubted() {
        parts.add(TestParts.weighed("wtc", Kind.CYLINDER, bar(0, 200, 30, 60), 500.0, new Vector3D(100, 0, -1)));
        only(Code.CENTRE_OUTSIDE_PART, new Place.OnPart("wtc"));
    }

    @Test
    void whatStandsOutsideAClosedHullIsMeasured() {
        addHull(new HullBuild.Skin(1), Solids.box(0, -40, 0, 300, 40, 60));
        add("foam", Kind.FOAM, box(280, -10, 20, 320, 10, 40));
        Finding finding = only(Code.OUTSIDE_HULL, new Place.OnPart("foam"));
        // Half of it; the end of the hull runs between two layers of columns.
        assertEquals(8, number(finding, "volumeCm3"), 1e-9);
        assertEquals(16, number(finding, "ofCm3"), 1e-9);
        assertEquals(Severity.WARNING, finding.severity());
        parts.remove(1);
        add("rudder", Kind.FITTING, box(-30, -1, 10, -5, 1, 50));
        assertEquals(
                Severity.NOTE,
                only(Code.OUTSIDE_HULL, new Place.OnPart("rudder")).severity());
    }

    @Test
    void anOpenDeckIsTheEndOfTheHull() {
        TriangleMesh closed = Solids.box(0, -40, 0, 300, 40, 60);
        boolean[] keep = new boolean[closed.triangleCount()];
        Arrays.fill(keep, true);
        for (int t = 0; t < keep.length; t++) {
            double z = 0;
            for (int k = 0; k < 3; k++) {
                z += closed.xyz()[3 * closed.corners()[3 * t + k] + 2];
            }
            keep[t] = z < 180;
        }
        addHull(new HullBuild.Skin(1), closed.only(keep)); // open
        add("foam", Kind.FOAM, box(100, -10, 50, 140, 10, 70));
        Finding finding = only(Code.OUTSIDE_HULL, new Place.OnPart("foam"));
        // Across a flat opening the winding number is a half exactly in its plane.
        assertEquals(8, number(finding, "volumeCm3"), 1e-9);
    }

    @Test
    void aPartInASealedHullThatDoesNotSaySoDisplacesTwice() {
        addHull(new HullBuild.Sealed(Optional.empty()), Solids.box(0, -40, 0, 300, 40, 60));
        add("battery", Kind.FITTING, box(50, -10, 10, 90, 10, 30));
        only(Code.INSIDE_NOT_STATED, new Place.BetweenParts("battery", "hull"));
    }

    @Test
    void ofAPrintedHullThePlasticIsInTheWayAndItsBoxIsTheEnd() {
        addHull(new HullBuild.Printed(Optional.empty()), Solids.box(0, -40, 0, 300, 40, 10));
        add("lead", Kind.BALLAST, box(50, -10, 5, 90, 10, 15));
        List<Finding> findings = check();
        assertEquals(
                List.of(Code.PARTS_OVERLAP, Code.OUTSIDE_HULL),
                findings.stream().map(Finding::code).toList());
        assertEquals(4, number(findings.get(0), "volumeCm3"), 1e-9);
        assertEquals(4, number(findings.get(1), "volumeCm3"), 1e-9);
    }

    @Test
    void meshBodiesAreCountedLikeOthers() {
        add("lead", Kind.BALLAST, mesh(Solids.box(0, 0, 0, 20, 10, 10)));
        add("foam", Kind.FOAM, box(10, 5, 5, 30, 12, 20));
        Finding finding = only(Code.PARTS_OVERLAP, new Place.BetweenParts("lead", "foam"));
        // The shared box is the sampled region itself, so that every column counts whole.
        assertEquals(10 * 5 * 5 / 1000.0, number(finding, "volumeCm3"), 1e-9);
        assertEquals(10 * 5 * 5 / 1000.0 / 4096, number(finding, "resolutionCm3"), 1e-12);
    }
}
