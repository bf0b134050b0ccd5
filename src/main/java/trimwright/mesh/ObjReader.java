package trimwright.mesh;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/**
 * OBJ: {@code v} lines with coordinates, {@code f} lines with vertex numbers from 1, or negative ones that count back from
 * the last vertex, each perhaps with {@code /texture/normal}. Polygons are cut into triangles. Names, groups, materials,
 * texture coordinates and normals say nothing about the shape and are passed over; points, lines and curved surfaces are
 * left out with a finding.
 */
final class ObjReader {

    /** A corner out of its polygon's plane by this share of the polygon's size changes the shape and is worth a note. */
    private static final double PLANAR = 1e-3;

    /** The time to cut a polygon up grows with the square of its corners; 10 000 take about a second at the worst. */
    static final int MOST_CORNERS = 10_000;

    private static final int SHOWN = 40;
    private static final Set<String> WITHOUT_SHAPE = Set.of(
            "vt",
            "vn",
            "vp",
            "o",
            "g",
            "s",
            "mg",
            "mtllib",
            "usemtl",
            "usemap",
            "maplib",
            "bevel",
            "c_interp",
            "d_interp",
            "lod");
    private static final Set<String> LEFT_OUT = Set.of(
            "p",
            "l",
            "curv",
            "curv2",
            "surf",
            "cstype",
            "deg",
            "bmat",
            "step",
            "parm",
            "trim",
            "hole",
            "scrv",
            "sp",
            "end",
            "con",
            "ctech",
            "stech",
            "shadow_obj",
            "trace_obj",
            "call",
            "csh");

    private final ByteScanner text;
    private final Problems problems;
    private final MeshBuilder mesh = new MeshBuilder();
    private int[] ring = new int[64];

    /** The highest vertex that a face names before it is listed, and the line of that face. */
    private long highestAhead = -1;

    private Place highestAheadPlace = new Place.Whole();

    private long polygons;
    private long bentPolygons;
    private double largestGap;
    private Place largestGapPlace = new Place.Whole();
    private long crossedPolygons;
    private Place firstCrossedPlace = new Place.Whole();
    private long leftOut;
    private String firstLeftOut = "";
    private Place firstLeftOutPlace = new Place.Whole();
    private final List<PendingPolygon> pending = new ArrayList<>();

    private record PendingPolygon(int[] ring, Place place) {}

    ObjReader(ByteScanner text, Problems problems) {
        this.text = text;
        this.problems = problems;
    }

    MeshFile read() throws IOException {
        do {
            if (text.nextOnLine()) {
                readLine();
            }
        } while (text.nextLine());
        if (highestAhead >= mesh.vertexCount()) {
            missingVertex(highestAhead + 1, highestAheadPlace);
        }
        problems.throwIfAny();
        for (PendingPolygon polygon : pending) {
            cut(polygon.ring, polygon.ring.length, polygon.place);
        }
        if (mesh.triangleCount() == 0) {
            problems.add(Code.MESH_NO_TRIANGLES, new Place.InFile(problems.file()));
            problems.throwIfAny();
        }
        return new MeshFile(mesh.build(), MeshFile.Format.OBJ, Optional.empty(), notes());
    }

    private void readLine() throws IOException {
        byte first = text.wordByte(0);
        if (text.is("v")) {
            readVertex();
        } else if (text.is("f") || text.is("fo")) {
            readFace();
        } else if (first != '#') {
            String word = text.word();
            if (LEFT_OUT.contains(word)) {
                if (leftOut++ == 0) {
                    firstLeftOut = word;
                    firstLeftOutPlace = here();
                }
            } else if (!WITHOUT_SHAPE.contains(word)) {
                problems.add(
                        Code.MESH_TEXT_UNEXPECTED,
                        here(),
                        "found",
                        FileHead.printable(word, SHOWN),
                        "expected",
                        "v, f, #");
            }
        }
    }

    private void readVertex() throws IOException {
        double[] point = new double[3];
        for (int k = 0; k < 3; k++) {
            if (!text.nextOnLine()) {
                problems.add(Code.MESH_TEXT_ENDS_EARLY, here(), "expected", "number");
                break;
            }
            if (!TextNumbers.readCoordinate(text, problems, "vertex", mesh.vertexCount())) {
                break;
            }
            point[k] = text.value();
        }
        // Added even where it is unusable, so that the numbers of the others stay right; nothing is built then.
        mesh.addVertex(point[0], point[1], point[2]);
    }

    private void readFace() throws IOException {
        int size = 0;
        boolean ahead = false;
        while (text.nextOnLine()) {
            if (text.wordByte(0) == '#') {
                break;
            }
            long number = leadingNumber();
            if (number == 0 || number < -mesh.vertexCount() || number > Integer.MAX_VALUE) {
                if (number == 0) {
                    String found = FileHead.printable(text.word(), SHOWN);
                    problems.add(Code.MESH_TEXT_UNEXPECTED, here(), "found", found, "expected", "vertex number");
                } else {
                    missingVertex(number, here());
                }
                return;
            }
            long vertex = number < 0 ? mesh.vertexCount() + number : number - 1;
            if (vertex >= mesh.vertexCount()) {
                ahead = true;
                if (vertex > highestAhead) {
                    highestAhead = vertex;
                    highestAheadPlace = here();
                }
            }
            if (size == ring.length) {
                ring = Arrays.copyOf(ring, 2 * size);
            }
            ring[size++] = (int) vertex;
        }
        if (size > MOST_CORNERS) {
            problems.add(Code.MESH_POLYGON_TOO_MANY_CORNERS, here(), "found", size, "allowed", MOST_CORNERS);
        } else if (size < 3) {
            problems.add(Code.MESH_TEXT_ENDS_EARLY, here(), "expected", "vertex number");
        } else if (ahead) {
            pending.add(new PendingPolygon(Arrays.copyOf(ring, size), here()));
        } else if (!problems.any()) {
            cut(ring, size, here());
        }
    }

    private void cut(int[] corners, int size, Place place) {
        if (size > 3) {
            polygons++;
            double gap = Polygons.gap(mesh.xyz(), corners, size);
            if (gap > PLANAR * Polygons.longestSide(mesh.xyz(), corners, size)) {
                bentPolygons++;
                if (gap > largestGap) {
                    largestGap = gap;
                    largestGapPlace = place;
                }
            }
        }
        if (!Polygons.triangulate(mesh.xyz(), corners, size, mesh.corners()) && crossedPolygons++ == 0) {
            firstCrossedPlace = place;
        }
        mesh.checkSize(problems, place);
    }

    /** The number before the first slash of the word; 0, which no vertex has, where there is none. */
    private long leadingNumber() {
        int length = text.wordLength();
        int i = text.wordByte(0) == '-' ? 1 : 0;
        long number = 0;
        int digits = 0;
        for (; i < length && text.wordByte(i) != '/'; i++) {
            int digit = text.wordByte(i) - '0';
            if (digit < 0 || digit > 9 || digits == 18) {
                return 0;
            }
            number = 10 * number + digit;
            digits++;
        }
        return text.wordByte(0) == '-' ? -number : number;
    }

    private void missingVertex(long found, Place place) {
        problems.add(Code.MESH_VERTEX_MISSING, place, "found", found, "vertices", mesh.vertexCount());
    }

    private List<Finding> notes() {
        List<Finding> notes = new ArrayList<>();
        if (bentPolygons > 0) {
            notes.add(Finding.of(
                    Code.MESH_POLYGONS_NOT_PLANAR,
                    largestGapPlace,
                    "count",
                    bentPolygons,
                    "polygons",
                    polygons,
                    "largestGap",
                    largestGap,
                    "tolerance",
                    PLANAR));
        }
        if (crossedPolygons > 0) {
            notes.add(Finding.of(
                    Code.MESH_POLYGONS_CROSSED, firstCrossedPlace, "count", crossedPolygons, "polygons", polygons));
        }
        if (leftOut > 0) {
            notes.add(Finding.of(
                    Code.MESH_ELEMENTS_LEFT_OUT, firstLeftOutPlace, "keyword", firstLeftOut, "count", leftOut));
        }
        return notes;
    }

    private Place here() {
        return new Place.AtLine(problems.file(), text.line());
    }
}
