package trimwright.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.TestParts;
import trimwright.boat.BarShape;
import trimwright.boat.Boat;
import trimwright.boat.BoxShape;
import trimwright.boat.HullBuild;
import trimwright.boat.Kind;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Targets;
import trimwright.boat.Water;
import trimwright.boat.Zone;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.Solids;
import trimwright.mesh.StlWriter;

class BoatFileTest {

    @TempDir
    Path folder;

    private LoadedBoat read(String text) {
        return BoatFile.read(TestBoat.written(folder, text));
    }

    private List<Finding> refused(String text) {
        Path path = TestBoat.written(folder, text);
        return assertThrows(UnusableInputException.class, () -> BoatFile.read(path))
                .findings();
    }

    @Test
    void everythingInTheFileArrivesInTheBoat() {
        LoadedBoat loaded = read(TestBoat.RIGHT);
        assertEquals(List.of(), loaded.findings());
        Boat boat = loaded.boat();
        assertEquals("Coot, test hulk", boat.name());
        assertEquals(Water.of(18, 0.5), boat.water());
        assertEquals(
                List.of(new Vector3D(10, 0, 40), new Vector3D(290, 0, 40)),
                boat.paintedLine().orElseThrow().pointsMm());
        assertEquals(
                List.of("hull", "wtc", "mbt", "keel lead", "foam", "battery", "propeller"),
                boat.parts().stream().map(Part::id).toList());
        assertEquals(
                List.of(Kind.HULL, Kind.CYLINDER, Kind.TANK, Kind.BALLAST, Kind.FOAM, Kind.FITTING, Kind.FITTING),
                boat.parts().stream().map(Part::kind).toList());

        Part hull = boat.parts().get(0);
        assertEquals(Optional.of(new HullBuild.Skin(1.6)), hull.build());
        assertEquals(12, ((MeshShape) hull.shape().orElseThrow()).mesh().triangleCount());
        assertEquals(
                TestParts.weighed(
                        "wtc",
                        Kind.CYLINDER,
                        new BarShape(new Vector3D(60, 0, 30), new Vector3D(220, 0, 30), 50, BarShape.Ends.ROUND),
                        350.0,
                        new Vector3D(140, 0, 25)),
                boat.parts().get(1));
        assertEquals(0.25, boat.parts().get(2).fill());
        assertEquals(Optional.of("wtc"), boat.parts().get(2).inside());
        assertEquals(
                Optional.of(new BoxShape(new Vector3D(80, -8, 0), new Vector3D(180, 8, 4))),
                boat.parts().get(3).shape());
        assertTrue(boat.parts().get(4).mirror());
        assertEquals(Optional.empty(), boat.parts().get(6).shape());
        assertEquals(
                new Zone(
                        "keel",
                        Zone.Use.BALLAST,
                        new BoxShape(new Vector3D(20, -10, 0), new Vector3D(280, 10, 5)),
                        Optional.of(600.0),
                        false),
                boat.zones().get(0));
        assertEquals(
                new Targets(
                        Optional.of(6.0),
                        Optional.of(4.0),
                        Optional.of(new Targets.Band(20, 40)),
                        Optional.of(0.5),
                        Optional.of(0.3),
                        Optional.of(1.5)),
                boat.targets());
    }

    @Test
    void whatIsLeftOutHasTheDocumentedDefault() {
        Boat boat = read("""
                        {"version": 1, "parts": [
                          {"id": "raft", "kind": "foam", "box": {"fromMm": [0, 0, 0], "toMm": [100, 50, 20]},
                           "densityGPerCm3": 0.03},
                          {"id": "pole", "kind": "fitting", "fromMm": [0, 0, 0], "toMm": [0, 0, 9], "diameterMm": 2,
                           "massG": 1},
                          {"id": "tank", "kind": "tank", "mesh": "hull.stl"}]}
                        """).boat();
        assertEquals("coot", boat.name());
        assertEquals(Water.FRESH, boat.water());
        assertEquals(Optional.empty(), boat.paintedLine());
        assertEquals(List.of(), boat.zones());
        assertEquals(Targets.NONE, boat.targets());
        assertEquals(BarShape.Ends.FLAT, ((BarShape) boat.parts().get(1).shape().orElseThrow()).ends());
        assertEquals(0, boat.parts().get(2).fill());
    }

    @Test
    void hullsOfEveryBuildAreRead() {
        String printed =
                "\"build\": \"printed\", \"infill\": {\"wallMm\": 1.2, \"percent\": 20, \"floods\": true}, \"massG\": 400";
        assertEquals(
                Optional.of(new HullBuild.Printed(Optional.of(new HullBuild.Infill(1.2, 20, true)))),
                hullBuild(printed));
        assertEquals(
                Optional.of(new HullBuild.Printed(Optional.empty())),
                hullBuild("\"build\": \"printed\", \"densityGPerCm3\": 1.2"));
        assertEquals(
                Optional.of(new HullBuild.Sealed(Optional.of(2.0))),
                hullBuild("\"build\": \"sealed\", \"thicknessMm\": 2, \"densityGPerCm3\": 1.2"));
        assertEquals(
                Optional.of(new HullBuild.Sealed(Optional.empty())),
                hullBuild("\"build\": \"sealed\", \"massG\": 400"));
    }

    private Optional<HullBuild> hullBuild(String keys) {
        String old = "\"build\": \"skin\", \"thicknessMm\": 1.60, \"densityGPerCm3\": 1.24";
        return read(TestBoat.with(old, keys)).boat().parts().get(0).build();
    }

    @Test
    void theMeshIsImportedIntoTheBoatsFrame() {
        // 300 × 80 × 60 mm read as cm at half scale is 1500 × 400 × 300 mm; its own y becomes forward, its z stays up.
        String old = "\"unit\": \"mm\", \"scale\": 1, \"forward\": \"+x\", \"up\": \"+z\", \"moveMm\": [0, 0, 0]";
        String turned = "\"unit\": \"cm\", \"scale\": 0.5, \"forward\": \"-y\", \"up\": \"+z\", \"moveMm\": [7, 8, 9]";
        var bounds = read(TestBoat.with(old, turned))
                .boat()
                .parts()
                .get(0)
                .shape()
                .orElseThrow()
                .bounds();
        assertEquals(-193, bounds.minX());
        assertEquals(207, bounds.maxX());
        assertEquals(8, bounds.minY());
        assertEquals(1508, bounds.maxY());
        assertEquals(9, bounds.minZ());
        assertEquals(309, bounds.maxZ());
    }

    @Test
    void aMeshThatTwoPartsUseIsReadOnce() {
        LoadedBoat loaded = read("""
                {"version": 1, "parts": [
                  {"id": "a", "kind": "hull", "mesh": "hull.stl", "build": "sealed", "massG": 1},
                  {"id": "b", "kind": "hull", "mesh": "hull.stl", "build": "sealed", "massG": 2}]}
                """);
        assertSame(
                loaded.boat().parts().get(0).shape().orElseThrow(),
                loaded.boat().parts().get(1).shape().orElseThrow());
        assertEquals(List.of("a", "b"), List.copyOf(loaded.meshByPart().keySet()));
    }

    @Test
    void everyMistakeIsReportedAtOnceWithItsLine() {
        String text = TestBoat.with("\"fill\": 0.25", "\"fill\": 25").replace("\"massG\": 350", "\"massG\": \"350\"");
        List<Finding> findings = refused(text.replace("\"kind\": \"foam\"", "\"kind\": \"foamy\""));
        assertEquals(
                List.of(Code.WRONG_TYPE, Code.NUMBER_OUT_OF_RANGE, Code.WORD_NOT_ALLOWED),
                findings.stream().map(Finding::code).toList());
        assertEquals(11L, findings.get(0).values().get("line"));
        assertEquals("\"350\"", findings.get(0).values().get("found"));
        assertEquals("25", findings.get(1).values().get("found"));
        assertEquals(1.0, findings.get(1).values().get("greatest"));
        assertEquals("foam", findings.get(2).values().get("nearest"));
    }

    @Test
    void aNewerVersionIsRefusedBeforeAnythingElseIsLookedAt() {
        List<Finding> findings = refused("{\"version\": 2, \"parts\": 7, \"keel\": 1, \"keel\": 2}");
        assertEquals(1, findings.size());
        assertEquals(Code.VERSION_NEWER, findings.get(0).code());
        assertEquals("2", findings.get(0).values().get("found"));
    }

    @Test
    void aByteOrderMarkIsNoMistakeAndPlacesStayRight() {
        LoadedBoat loaded = read("\uFEFF" + TestBoat.RIGHT);
        assertEquals(List.of(), loaded.findings());
        List<Finding> findings = refused("\uFEFF" + TestBoat.with("\"fill\": 0.25", "\"fill\": 25"));
        assertEquals("25", findings.get(0).values().get("found"));
    }

    @Test
    void anUnreadableFileIsToldFromAWrongOne() {
        assertEquals(Code.FILE_MISSING, refusal(folder.resolve("none.boat.json")));
        assertEquals(Code.FILE_IS_DIRECTORY, refusal(folder));
        assertEquals(Code.FILE_EMPTY, refused("  \n").get(0).code());
        assertEquals(Code.FILE_EMPTY, refused("\uFEFF").get(0).code());
        assertEquals(Code.JSON_SYNTAX, refused("{\"version\": 1,}").get(0).code());
        assertEquals(
                Code.JSON_TRAILING_TEXT, refused("{\"version\": 1} x").get(0).code());
        assertEquals(Code.JSON_SYNTAX, refused("{\"version\": 1").get(0).code());
        assertEquals(
                Code.JSON_TOO_DEEP,
                refused("[".repeat(40) + "]".repeat(40)).get(0).code());
        assertEquals(
                Code.JSON_SYNTAX,
                refused("[".repeat(20) + "1" + "0".repeat(300)).get(0).code());
        assertEquals(
                Code.FILE_IS_MESH,
                refused("solid a\nfacet normal 0 0 0\n").get(0).code());
        assertEquals(Code.FILE_IS_MESH, refused("# hull\nv 0 0 0\n").get(0).code());
        Path hull = TestBoat.written(folder, TestBoat.RIGHT).resolveSibling("binary.stl");
        StlWriter.write(hull, Solids.box(0, 0, 0, 1, 1, 1));
        assertEquals(Code.FILE_IS_MESH, refusal(hull));
        // A megabyte that would take a terabyte: every value is kept with its pointer, which begins with the key.
        assertEquals(
                Code.JSON_TOO_INTRICATE,
                refused("{\"" + "k".repeat(40_000) + "\": [" + "1,".repeat(500_000) + "1]}")
                        .get(0)
                        .code());
        assertEquals(
                Code.WRONG_LENGTH,
                refused("{\"version\": 1, \"parts\": [" + "{},".repeat(1000) + "{}]}")
                        .get(0)
                        .code());
        assertEquals(
                Code.JSON_TOO_LARGE,
                assertThrows(
                                UnusableInputException.class,
                                () -> JsonDocument.parse("f", new byte[JsonDocument.GREATEST_BYTES + 1]))
                        .findings()
                        .get(0)
                        .code());
    }

    private static Code refusal(Path path) {
        return assertThrows(UnusableInputException.class, () -> BoatFile.read(path))
                .findings()
                .get(0)
                .code();
    }

    @Test
    void syntaxIsReportedAtItsLineWithoutTheParsersInternals() {
        Finding finding = refused("{\n\"version\": 1,\n\"parts\": [}\n").get(0);
        assertEquals(new Place.AtLine(folder.resolve("coot.boat.json").toString(), 3), finding.place());
        String reason = (String) finding.values().get("reason");
        assertTrue(!reason.contains("Source") && !reason.contains("enable"), reason);
    }

    @Test
    void otherEncodingsAreRefusedAtTheByte() {
        byte[] latin = "{\"version\": 1, \"name\": \"K\u00f6nig\"}".getBytes(StandardCharsets.ISO_8859_1);
        Finding finding = assertThrows(UnusableInputException.class, () -> JsonDocument.parse("f", latin))
                .findings()
                .get(0);
        assertEquals(Code.JSON_NOT_UTF8, finding.code());
        assertEquals(new Place.AtByte("f", 25), finding.place());
    }

    private static final String SKIN = "\"build\": \"skin\", \"thicknessMm\": 1.60, \"densityGPerCm3\": 1.24";
    private static final String SEALED = "\"build\": \"sealed\", \"massG\": 400";

    @Test
    void anOpenSkinIsAllRight() {
        assertEquals(List.of(), read(TestBoat.with("hull.stl", "open.stl")).findings());
    }

    @Test
    void aMeshThatMustEncloseAVolumeIsReadForInspectionOnly() {
        String open = TestBoat.with("hull.stl", "open.stl").replace(SKIN, SEALED);
        Finding refused = refused(open).get(0);
        assertEquals(Code.MESH_BUILD_NEEDS_CLOSED, refused.code());
        assertEquals(new Place.InDocument(path(), "/parts/0/mesh"), refused.place());
        LoadedBoat loaded = BoatFile.readLeniently(TestBoat.written(folder, open));
        assertEquals(List.of(refused), loaded.findings());
        assertTrue(loaded.hasErrors());
        assertEquals(11, loaded.mesh("hull").orElseThrow().soundness().triangles());

        String body =
                TestBoat.with("\"box\": {\"fromMm\": [80, -8, 0], \"toMm\": [180, 8, 4]}", "\"mesh\": \"open.stl\"");
        assertEquals(Code.MESH_BUILD_NEEDS_CLOSED, refused(body).get(0).code());
    }

    private String path() {
        return folder.resolve("coot.boat.json").toString();
    }

    @Test
    void unsoundMeshesAreReportedTogetherWithEverythingElse() {
        String text =
                TestBoat.with("hull.stl", "open.stl").replace(SKIN, SEALED).replace("\"fill\": 0.25", "\"fill\": 25");
        Path path = TestBoat.written(folder, text);
        UnusableInputException thrown = assertThrows(UnusableInputException.class, () -> BoatFile.readLeniently(path));
        assertEquals(
                List.of(Code.NUMBER_OUT_OF_RANGE, Code.MESH_BUILD_NEEDS_CLOSED),
                thrown.findings().stream().map(Finding::code).toList());
    }

    @Test
    void aMeshTurnedInsideOutIsNotTakenForAVolume() {
        for (String build : List.of(SKIN, SEALED)) {
            List<Finding> findings =
                    refused(TestBoat.with("hull.stl", "turned.stl").replace(SKIN, build));
            assertEquals(
                    List.of(Code.MESH_INSIDE_OUT),
                    findings.stream().map(Finding::code).toList());
            // 300 × 80 × 60 mm
            assertEquals(-1440000.0, (double) findings.get(0).values().get("volumeMm3"), 1e-6);
        }
    }

    @Test
    void aShellThatIsNotThereIsRefusedAtItsPart() {
        String text = TestBoat.with("\"scale\": 1", "\"shells\": [2]");
        Finding finding = refused(text).get(0);
        assertEquals(Code.MESH_SHELL_MISSING, finding.code());
        assertEquals(new Place.InDocument(path(), "/parts/0/import"), finding.place());
    }

    private Code doubt(String text) {
        List<Finding> findings = read(text).findings();
        assertEquals(1, findings.size(), findings.toString());
        return findings.get(0).code();
    }

    @Test
    void whatIsProbablyNotMeantIsDoubted() {
        assertEquals(Code.DENSITY_DOUBTFUL, doubt(TestBoat.with("0.030", "30")));
        assertEquals(Code.DENSITY_DOUBTFUL, doubt(TestBoat.with("11.34", "0.5")));
        assertEquals(Code.MASS_DOUBTFUL, doubt(TestBoat.with("0.030", "0.030, \"massG\": 5")));
        assertEquals(Code.HULL_AXES_DOUBTFUL, doubt(TestBoat.with("\"+x\"", "\"+y\"")));
        assertEquals(
                Code.HULL_SIZE_DOUBTFUL,
                doubt(TestBoat.with("\"scale\": 1", "\"scale\": 100").replace("290, 0, 40", "290, 0, 41")));
        assertEquals(
                Code.PAINTED_LINE_MISSES_HULL,
                doubt(TestBoat.with("[10, 0, 40], [290, 0, 40]", "[10, 0, 60], [290, 0, 60]")));
        assertEquals(Code.MESH_LOOKS_LIKE_WALL, doubt(TestBoat.with("hull.stl", "walls.stl")));
        assertEquals(
                Code.MESH_LOOKS_LIKE_OUTER_SURFACE,
                doubt(TestBoat.with(SKIN, "\"build\": \"printed\", \"densityGPerCm3\": 1.2")));
        assertEquals(Code.RESIDUAL_MAY_SINK, doubt(TestBoat.with("[20, 40]", "[-20, 40]")));
    }

    @Test
    void aDensityInKgPerM3IsRecognised() {
        Finding finding = read(TestBoat.with("0.030", "30")).findings().get(0);
        assertEquals(0.03, (double) finding.values().get("ifKgPerM3ThenGPerCm3"), 1e-12);
        assertEquals(new Place.InDocument(path(), "/parts/4/densityGPerCm3"), finding.place());
    }
}
