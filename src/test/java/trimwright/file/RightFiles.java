package trimwright.file;

import java.util.List;

/** Boat files without a mistake, which use every way to say something. */
final class RightFiles {

    private static final String BOX = "\"box\": {\"fromMm\": [0, 0, 0], \"toMm\": [9, 9, 9]}";
    private static final String BAR = "\"fromMm\": [0, 0, 0], \"toMm\": [9, 9, 9], \"diameterMm\": 3";

    static final List<String> ALL = List.of(
            part("\"kind\": \"hull\", \"mesh\": \"hull.stl\", \"build\": \"sealed\", \"massG\": 400"),
            part("\"kind\": \"hull\", \"mesh\": \"./hull.stl\", \"build\": \"sealed\", \"thicknessMm\": 2,"
                    + " \"densityGPerCm3\": 1.2, \"mirror\": true"),
            part("\"kind\": \"hull\", \"mesh\": \"open.stl\", \"build\": \"skin\", \"thicknessMm\": 2, \"massG\": 300,"
                    + " \"centreMm\": [1, 2, 3]"),
            part("\"kind\": \"hull\", \"mesh\": \"hull.stl\", \"build\": \"printed\", \"densityGPerCm3\": 1.2"),
            part("\"kind\": \"hull\", \"mesh\": \"hull.stl\", \"build\": \"printed\", \"massG\": 500,"
                    + " \"infill\": {\"wallMm\": 0, \"percent\": 100, \"floods\": false}"),
            part("\"kind\": \"hull\", \"mesh\": \"hull.stl\", \"build\": \"sealed\", \"massG\": 400,"
                    + " \"import\": {\"unit\": \"m\", \"forward\": \"-z\", \"up\": \"-y\", \"shells\": [1]}"),
            part("\"kind\": \"hull\", \"mesh\": \"hull.stl\", \"build\": \"sealed\", \"massG\": 400,"
                    + " \"import\": {\"forward\": \"+y\"}"),
            part("\"kind\": \"hull\", \"mesh\": \"hull.stl\", \"build\": \"sealed\", \"massG\": 400,"
                    + " \"import\": {\"up\": \"-y\"}"),
            part("\"kind\": \"cylinder\", \"densityGPerCm3\": 0.6, \"ends\": \"flat\", " + BAR),
            part("\"kind\": \"cylinder\", \"massG\": 0, " + BOX),
            part("\"kind\": \"tank\", \"fill\": 1, \"massG\": 20, \"centreMm\": [1, 2, 3], " + BOX),
            part("\"kind\": \"tank\", \"mesh\": \"hull.stl\", \"import\": {}"),
            part("\"kind\": \"ballast\", \"massG\": 10, \"densityGPerCm3\": 11.34, " + BAR),
            part("\"kind\": \"ballast\", \"massG\": 10, \"densityGPerCm3\": 11.34, \"centreMm\": [1, 2, 3]"),
            part("\"kind\": \"foam\", \"massG\": 10, \"mesh\": \"hull.stl\""),
            part("\"kind\": \"foam\", \"massG\": 10, \"softFoam\": true, \"uptakePercent\": 2, " + BOX),
            part("\"kind\": \"foam\", \"massG\": 10, \"softFoam\": false, \"compressionPercentPerM\": 0.03, " + BOX),
            part("\"kind\": \"foam\", \"massG\": 10, \"fixed\": false, " + BOX),
            part("\"kind\": \"ballast\", \"massG\": 10, \"fixed\": true, " + BOX),
            part("\"kind\": \"ballast\", \"massG\": 10, \"plusMinus\": {\"massG\": 2, \"placeMm\": 0}, " + BOX),
            part("\"kind\": \"foam\", \"massG\": 10, \"plusMinus\": {\"volumePercent\": 5}, " + BOX),
            part("\"kind\": \"air\", \"mirror\": true, " + BOX),
            part("\"kind\": \"tank\", " + BOX, "\"dive\": {\"order\": [[\"it\"]]}"),
            part(
                    "\"kind\": \"tank\", " + BOX,
                    "\"dive\": {\"schedule\": [{\"fills\": {\"it\": 0.5}}, {\"fills\": {}}, {\"fills\": {\"it\": 1}}]}"),
            part("\"kind\": \"fitting\", \"massG\": 10, \"mesh\": \"hull.stl\", \"centreMm\": [1, 2, 3]"),
            part("\"kind\": \"fitting\", \"massG\": 10, \"centreMm\": [1, 2, 3], \"inside\": \"lead\""),
            "{\"water\": {\"densityGPerCm3\": 1.025}, \"version\": 1.0, \"parts\": ["
                    + "{\"id\": \"lead\", \"kind\": \"ballast\", \"massG\": 10, " + BOX + "}],"
                    + "\"paintedLine\": [[0, 0, 1], [5, 2, 1], [9, -3, 2]], \"zones\": [],"
                    + "\"targets\": {\"residualG\": [-5, 5]}}",
            "{\"version\": 1, \"water\": {\"salinityGPerKg\": 35}, \"targets\": {}, \"parts\": ["
                    + "{\"id\": \"lead\", \"kind\": \"ballast\", \"massG\": 10, " + BOX + "}]}");

    private RightFiles() {}

    /** A boat of a container and one part more. */
    private static String part(String keys) {
        return part(keys, "\"name\": \"right\"");
    }

    private static String part(String keys, String boatKey) {
        return "{\"version\": 1, " + boatKey + ", \"parts\": [{\"id\": \"lead\", \"kind\": \"cylinder\", \"massG\": 5, "
                + BOX + "}, {\"id\": \"it\", " + keys + "}]}";
    }
}
