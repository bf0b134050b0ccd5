package trimwright.file;

import static trimwright.file.TestBoat.with;

import java.util.List;
import trimwright.finding.Code;

/** Boat files with one mistake each, and what is to be said about it. */
final class WrongFiles {

    /**
     * A file with one mistake.
     *
     * @param code what is found, and nothing else
     * @param pointer where
     * @param inSchema whether the mistake is one that a JSON Schema can see
     * @param text the file
     */
    record Wrong(Code code, String pointer, boolean inSchema, String text) {
        @Override
        public String toString() {
            return code + " " + pointer;
        }
    }

    private static final String HULL = "\"build\": \"skin\", \"thicknessMm\": 1.60, \"densityGPerCm3\": 1.24";
    private static final String LEAD_BOX = "\"box\": {\"fromMm\": [80, -8, 0], \"toMm\": [180, 8, 4]}";
    private static final String TANK_BAR = "\"fromMm\": [120, 0, 30], \"toMm\": [160, 0, 30],\n     \"diameterMm\": 46";

    static final List<Wrong> ALL = List.of(
            // The document
            wrong(Code.VERSION_MISSING, "", with("\"version\": 1,", "")),
            wrong(Code.VERSION_NEWER, "/version", with("\"version\": 1,", "\"version\": 1.5,")),
            wrong(Code.VERSION_UNKNOWN, "/version", with("\"version\": 1,", "\"version\": 0,")),
            wrong(Code.VERSION_UNKNOWN, "/version", with("\"version\": 1,", "\"version\": \"1\",")),
            wrong(Code.UNKNOWN_KEY, "/Version", with("\"version\": 1,", "\"Version\": 1,")),
            wrong(Code.UNKNOWN_KEY, "/colour", with("\"version\": 1,", "\"version\": 1, \"colour\": 3,")),
            wrong(Code.UNKNOWN_KEY, "/a~1b~0c", with("\"version\": 1,", "\"version\": 1, \"a/b~c\": 3,")),
            unseen(Code.JSON_DUPLICATE_KEY, "/name", with("\"version\": 1,", "\"version\": 1, \"name\": \"x\",")),
            wrong(Code.WRONG_TYPE, "/name", with("\"Coot, test hulk\"", "null")),
            wrong(Code.TEXT_EMPTY, "/name", with("\"Coot, test hulk\"", "\" \"")),
            wrong(Code.WRONG_TYPE, "", "[1]"),
            wrong(Code.KEY_MISSING, "", "{\"version\": 1}"),
            wrong(Code.NO_PARTS, "/parts", "{\"version\": 1, \"parts\": []}"),
            wrong(Code.WRONG_TYPE, "/parts", "{\"version\": 1, \"parts\": {}}"),
            wrong(Code.WRONG_TYPE, "/parts/0", "{\"version\": 1, \"parts\": [7]}"),
            unseen(
                    Code.NO_MASS,
                    "/parts",
                    "{\"version\": 1, \"parts\": [{\"id\": \"t\", \"kind\": \"tank\", " + LEAD_BOX + "}]}"),
            // Water
            wrong(Code.NUMBER_OUT_OF_RANGE, "/water/temperatureC", with("C\": 18", "C\": 41")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/water/salinityGPerKg", with("Kg\": 0.5", "Kg\": -1")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/water/densityGPerCm3", water("\"densityGPerCm3\": 1025")),
            wrong(Code.KEYS_EXCLUDE, "/water", water("\"densityGPerCm3\": 1, \"temperatureC\": 20")),
            wrong(Code.KEY_MISSING, "/water", water("")),
            wrong(Code.UNKNOWN_KEY, "/water/temperature", water("\"temperature\": 20")),
            wrong(Code.WRONG_TYPE, "/water/temperatureC", with("C\": 18", "C\": \"18\"")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/water/temperatureC", with("C\": 18", "C\": 1e999")),
            // Painted line
            wrong(Code.WRONG_LENGTH, "/paintedLine", with("[[10, 0, 40], [290, 0, 40]]", "[[10, 0, 40]]")),
            wrong(Code.WRONG_LENGTH, "/paintedLine/0", with("[[10, 0, 40], [290", "[[10, 0], [290")),
            wrong(Code.WRONG_TYPE, "/paintedLine/0/1", with("[[10, 0, 40], [290", "[[10, \"0\", 40], [290")),
            unseen(Code.PAINTED_LINE_NO_PLANE, "/paintedLine", with("[[10, 0, 40], [290, 0", "[[10, 0, 40], [10, 0")),
            // Parts in general
            wrong(Code.KEY_MISSING, "/parts/5", with("\"id\": \"battery\", ", "")),
            wrong(Code.KEY_MISSING, "/parts/5", with("\"kind\": \"fitting\", \"inside\"", "\"inside\"")),
            wrong(Code.WORD_NOT_ALLOWED, "/parts/4/kind", with("\"kind\": \"foam\"", "\"kind\": \"Foam\"")),
            unseen(Code.ID_DUPLICATE, "/parts/6/id", with("\"id\": \"propeller\"", "\"id\": \"battery\"")),
            wrong(Code.UNKNOWN_KEY, "/parts/1/mass", with("\"massG\": 350", "\"mass\": 350")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/parts/1/massG", with("\"massG\": 350", "\"massG\": -350")),
            unseen(Code.NUMBER_OUT_OF_RANGE, "/parts/1/massG", with("\"massG\": 350", "\"massG\": NaN")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/parts/3/densityGPerCm3", with("11.34", "0")),
            wrong(Code.WRONG_LENGTH, "/parts/1/centreMm", with("[140, 0, 25]", "[140, 0, 25, 1]")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/parts/1/centreMm/0", with("[140, 0, 25]", "[1e7, 0, 25]")),
            wrong(
                    Code.WRONG_TYPE,
                    "/parts/4/mirror",
                    with("\"mirror\": true},\n    {\"id\": \"b", "\"mirror\": 1},\n    {\"id\": \"b")),
            wrong(Code.MASS_MISSING, "/parts/3", with(",\n     \"densityGPerCm3\": 11.34", "")),
            wrong(Code.MASS_MISSING, "/parts/1", with("\"massG\": 350, ", "")),
            wrong(Code.KEY_NOT_FOR_KIND, "/parts/5/fill", with("\"massG\": 120", "\"massG\": 120, \"fill\": 1")),
            wrong(Code.KEY_NOT_FOR_KIND, "/parts/4/thicknessMm", with("0.030,", "0.030, \"thicknessMm\": 2,")),
            wrong(Code.KEY_NOT_FOR_KIND, "/parts/2/densityGPerCm3", with("\"fill\": 0.25", "\"densityGPerCm3\": 1")),
            wrong(Code.KEY_NOT_FOR_KIND, "/parts/0/box", with(HULL, HULL + ", " + LEAD_BOX)),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/parts/2/fill", with("\"fill\": 0.25", "\"fill\": 1.01")),
            wrong(Code.KEY_NEEDS_KEY, "/parts/2/centreMm", with("\"fill\": 0.25", "\"centreMm\": [1, 2, 3]")),
            // Shapes
            wrong(Code.SHAPE_MISSING, "/parts/2", with(TANK_BAR + ", ", "")),
            wrong(Code.SHAPE_MISSING, "/parts/3", with(LEAD_BOX + ",\n ", "")),
            wrong(Code.SHAPE_AMBIGUOUS, "/parts/3", with(LEAD_BOX, LEAD_BOX + ", \"diameterMm\": 3")),
            wrong(Code.SHAPE_AMBIGUOUS, "/parts/3", with(LEAD_BOX, LEAD_BOX + ", \"mesh\": \"hull.stl\"")),
            wrong(Code.KEY_NEEDS_KEY, "/parts/3/import", with(LEAD_BOX, LEAD_BOX + ", \"import\": {}")),
            wrong(Code.KEY_MISSING, "/parts/3/box", with("{\"fromMm\": [80, -8, 0], ", "{")),
            unseen(Code.BOX_FLAT, "/parts/3/box", with("\"toMm\": [180, 8, 4]", "\"toMm\": [180, 8, 0]")),
            wrong(Code.KEY_MISSING, "/parts/2", with("\"toMm\": [160, 0, 30],", "")),
            unseen(Code.BAR_WITHOUT_LENGTH, "/parts/2/toMm", with("[160, 0, 30]", "[120, 0, 30]")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/parts/2/diameterMm", with("46", "0")),
            unseen(
                    Code.BAR_ROUNDER_THAN_LONG,
                    "/parts/2/diameterMm",
                    with("\"diameterMm\": 46", "\"diameterMm\": 46, \"ends\": \"round\"")),
            wrong(Code.WORD_NOT_ALLOWED, "/parts/1/ends", with("\"round\"", "\"rounded\"")),
            wrong(Code.KEY_MISSING, "/parts/6", with("\"massG\": 12, ", "")),
            wrong(Code.KEY_MISSING, "/parts/6", with(", \"densityGPerCm3\": 8.5", "")),
            wrong(Code.KEY_MISSING, "/parts/5", with("\"centreMm\": [100, 0, 20], ", "")),
            // Hulls
            wrong(Code.KEY_MISSING, "/parts/0", with("\"build\": \"skin\",", "")),
            wrong(Code.WORD_NOT_ALLOWED, "/parts/0/build", with("\"skin\"", "\"skinned\"")),
            wrong(Code.KEY_MISSING, "/parts/0", with("\"thicknessMm\": 1.60,", "")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/parts/0/thicknessMm", with("1.60", "0")),
            wrong(Code.MASS_MISSING, "/parts/0", with(HULL, "\"build\": \"sealed\", \"thicknessMm\": 2")),
            wrong(Code.MASS_MISSING, "/parts/0", with(HULL, "\"build\": \"sealed\", \"densityGPerCm3\": 2")),
            wrong(Code.MASS_MISSING, "/parts/0", walls("\"build\": \"printed\"")),
            wrong(
                    Code.KEY_NOT_FOR_BUILD,
                    "/parts/0/thicknessMm",
                    walls("\"build\": \"printed\", \"thicknessMm\": 2, \"massG\": 5")),
            wrong(
                    Code.KEY_NOT_FOR_BUILD,
                    "/parts/0/infill",
                    with(HULL, HULL + ", \"infill\": {\"wallMm\": 1, \"percent\": 5}")),
            wrong(Code.KEY_MISSING, "/parts/0/infill", printed("\"wallMm\": 1")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/parts/0/infill/percent", printed("\"wallMm\": 1, \"percent\": 101")),
            wrong(Code.UNKNOWN_KEY, "/parts/0/infill/flood", printed("\"wallMm\": 1, \"percent\": 5, \"flood\": true")),
            // Meshes
            wrong(Code.KEY_MISSING, "/parts/0", with("\"mesh\": \"hull.stl\",\n", "\n")),
            unseen(Code.MESH_FILE_MISSING, "/parts/0/mesh", with("hull.stl", "hall.stl")),
            // What is left of her hull is a tower far too small for a boat; nothing is to be said about that.
            unseen(
                    Code.MESH_FILE_MISSING,
                    "/parts/1/mesh",
                    with(
                            "{\"id\": \"hull\", \"kind\": \"hull\", \"mesh\": \"hull.stl\"",
                            "{\"id\": \"tower\", \"kind\": \"hull\", \"mesh\": \"hull.stl\", \"import\": {\"scale\": 0.1,"
                                    + " \"moveMm\": [0, 0, 60]}, "
                                    + HULL + "},\n {\"id\": \"hull\", \"kind\": \"hull\", \"mesh\": \"hall.stl\"")),
            wrong(Code.MESH_PATH_NOT_ALLOWED, "/parts/0/mesh", with("hull.stl", "../hull.stl")),
            wrong(Code.MESH_PATH_NOT_ALLOWED, "/parts/0/mesh", with("hull.stl", "/hull.stl")),
            wrong(Code.MESH_PATH_NOT_ALLOWED, "/parts/0/mesh", with("hull.stl", "c:hull.stl")),
            wrong(Code.MESH_PATH_NOT_ALLOWED, "/parts/0/mesh", with("hull.stl", "meshes\\\\hull.stl")),
            wrong(Code.WORD_NOT_ALLOWED, "/parts/0/import/unit", with("\"unit\": \"mm\"", "\"unit\": \"ft\"")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/parts/0/import/scale", with("\"scale\": 1", "\"scale\": 0")),
            wrong(Code.WORD_NOT_ALLOWED, "/parts/0/import/forward", with("\"+x\"", "\"x\"")),
            wrong(Code.IMPORT_AXES_PARALLEL, "/parts/0/import", with("\"+z\"", "\"-x\"")),
            wrong(Code.WRONG_TYPE, "/parts/0/import/shells/0", with("\"scale\": 1", "\"shells\": [1.5]")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/parts/0/import/shells/0", with("\"scale\": 1", "\"shells\": [0]")),
            wrong(Code.WRONG_LENGTH, "/parts/0/import/shells", with("\"scale\": 1", "\"shells\": []")),
            // Inside
            unseen(
                    Code.INSIDE_UNKNOWN,
                    "/parts/2/inside",
                    with("\"tank\", \"inside\": \"wtc\"", "\"tank\", \"inside\": \"wtb\"")),
            unseen(
                    Code.INSIDE_NOT_WATERTIGHT,
                    "/parts/2/inside",
                    with("\"tank\", \"inside\": \"wtc\"", "\"tank\", \"inside\": \"hull\"")),
            unseen(
                    Code.INSIDE_ITSELF,
                    "/parts/1/inside",
                    with("\"kind\": \"cylinder\"", "\"kind\": \"cylinder\", \"inside\": \"wtc\"")),
            unseen(
                    Code.INSIDE_WITHOUT_TWIN,
                    "/parts/2/mirror",
                    with("\"fill\": 0.25", "\"mirror\": true")
                            .replace("[60, 0, 30], \"toMm\": [220, 0, 30]", "[60, 30, 30], \"toMm\": [220, 30, 30]")),
            // Zones and targets
            wrong(Code.KEY_MISSING, "/zones/0", with("\"for\": \"ballast\", ", "")),
            wrong(Code.WORD_NOT_ALLOWED, "/zones/0/for", with("\"for\": \"ballast\"", "\"for\": \"lead\"")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/zones/0/maxG", with("600", "-1")),
            unseen(Code.ID_DUPLICATE, "/zones/1/id", with("\"saddles\"", "\"keel\"")),
            unseen(Code.BOX_FLAT, "/zones/0/box", with("[280, 10, 5]", "[280, -10, 5]")),
            wrong(
                    Code.WRONG_TYPE,
                    "/zones",
                    "{\"version\": 1, \"zones\": {}, \"parts\": [{\"id\": \"a\", \"kind\": \"foam\", \"massG\": 1, "
                            + LEAD_BOX + "}]}"),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/targets/bgMm", with("\"bgMm\": 6", "\"bgMm\": -6")),
            wrong(Code.NUMBER_OUT_OF_RANGE, "/targets/listDeg", with("\"listDeg\": 0.3", "\"listDeg\": 91")),
            wrong(Code.WRONG_LENGTH, "/targets/residualG", with("[20, 40]", "[20]")),
            unseen(Code.BAND_REVERSED, "/targets/residualG", with("[20, 40]", "[40, 20]")),
            // What gives way, trapped air, the dive
            wrong(Code.NUMBER_OUT_OF_RANGE, "/parts/4/uptakePercent", foam("\"uptakePercent\": 101")),
            wrong(Code.WRONG_TYPE, "/parts/4/softFoam", foam("\"softFoam\": 1")),
            wrong(Code.WRONG_TYPE, "/parts/4/fixed", foam("\"fixed\": \"no\"")),
            wrong(Code.KEY_NOT_FOR_KIND, "/parts/2/fixed", with("\"fill\": 0.25", "\"fixed\": false")),
            wrong(Code.KEYS_EXCLUDE, "/parts/4", foam("\"softFoam\": true, \"compressionPercentPerM\": 1")),
            wrong(Code.KEYS_EXCLUDE, "/parts/5", with("\"massG\": 120", "\"massG\": 120, \"uptakePercent\": 1")),
            wrong(Code.KEY_NOT_FOR_KIND, "/parts/3/softFoam", with(LEAD_BOX, LEAD_BOX + ", \"softFoam\": true")),
            wrong(Code.KEY_NOT_FOR_KIND, "/parts/2/uptakePercent", with("\"fill\": 0.25", "\"uptakePercent\": 1")),
            wrong(Code.KEY_NOT_FOR_KIND, "/parts/4/densityGPerCm3", with("\"kind\": \"foam\"", "\"kind\": \"air\"")),
            wrong(
                    Code.SHAPE_MISSING,
                    "/parts/6",
                    with(
                            "{\"id\": \"propeller\", \"kind\": \"fitting\", \"centreMm\": [-5, 0, 20], \"massG\": 12, \"densityGPerCm3\": 8.5}",
                            "{\"id\": \"air\", \"kind\": \"air\"}")),
            wrong(Code.KEY_MISSING, "/dive", dive("")),
            wrong(Code.KEYS_EXCLUDE, "/dive", dive("\"order\": [[\"mbt\"]], \"schedule\": []")),
            wrong(Code.UNKNOWN_KEY, "/dive/orders", dive("\"orders\": [[\"mbt\"]]")),
            wrong(Code.WRONG_TYPE, "/dive/order/0", dive("\"order\": [\"mbt\"]")),
            wrong(Code.WRONG_TYPE, "/dive/order/0/0", dive("\"order\": [[1]]")),
            wrong(Code.WRONG_LENGTH, "/dive/order", dive("\"order\": []")),
            unseen(Code.FILL_OF_NO_TANK, "/dive/order", dive("\"order\": [[\"wtc\"]]")),
            unseen(Code.FILL_TWICE, "/dive/order", dive("\"order\": [[\"mbt\"], [\"mbt\"]]")),
            wrong(Code.WRONG_LENGTH, "/dive/schedule", dive("\"schedule\": [{\"fills\": {\"mbt\": 1}}]")),
            wrong(Code.KEY_MISSING, "/dive/schedule/1", dive("\"schedule\": [{\"fills\": {\"mbt\": 1}}, {}]")),
            wrong(
                    Code.NUMBER_OUT_OF_RANGE,
                    "/dive/schedule/0/fills/mbt",
                    dive("\"schedule\": [{\"fills\": {\"mbt\": 2}}, {\"fills\": {}}]")),
            unseen(
                    Code.UNKNOWN_KEY,
                    "/dive/schedule/0/fills/mbd",
                    dive("\"schedule\": [{\"fills\": {\"mbd\": 1}}, {\"fills\": {}}]")));

    private WrongFiles() {}

    private static Wrong wrong(Code code, String pointer, String text) {
        return new Wrong(code, pointer, true, text);
    }

    private static Wrong unseen(Code code, String pointer, String text) {
        return new Wrong(code, pointer, false, text);
    }

    private static String foam(String keys) {
        return with("\"densityGPerCm3\": 0.030", "\"densityGPerCm3\": 0.030, " + keys);
    }

    private static String dive(String keys) {
        return with("\"version\": 1,", "\"version\": 1, \"dive\": {" + keys + "},");
    }

    private static String water(String keys) {
        return with("\"temperatureC\": 18, \"salinityGPerKg\": 0.5", keys);
    }

    private static String printed(String infill) {
        return walls("\"build\": \"printed\", \"densityGPerCm3\": 1.2, \"infill\": {" + infill + "}");
    }

    private static String walls(String build) {
        return with(HULL, build).replace("hull.stl", "walls.stl");
    }
}
