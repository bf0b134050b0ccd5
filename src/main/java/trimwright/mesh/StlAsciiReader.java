package trimwright.mesh;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import trimwright.finding.Code;
import trimwright.finding.Place;

/**
 * ASCII STL: {@code solid} … {@code facet normal} x y z {@code outer loop}, three times {@code vertex} x y z, {@code endloop
 * endfacet} … {@code endsolid}, in small or capital letters; several solids may follow each other. Names and normals are
 * not read. After a mistake it goes on at the next facet, so as to list as many as there are.
 */
final class StlAsciiReader {

    private static final int SHOWN = 40;

    private final ByteScanner text;
    private final Problems problems;
    private final VertexMerger merger = new VertexMerger(1024);
    private final IntList corners = new IntList(4096);
    private final double[] point = new double[3];

    StlAsciiReader(ByteScanner text, Problems problems) {
        this.text = text;
        this.problems = problems;
    }

    MeshFile read() throws IOException {
        boolean more = text.next();
        while (more) {
            if (text.is("solid")) {
                text.nextLine();
                more = readSolid();
            } else {
                complain("solid");
                more = skip("solid", "solid");
            }
        }
        if (corners.size() == 0 && !problems.any()) {
            problems.add(Code.MESH_NO_TRIANGLES, new Place.InFile(problems.file()));
        }
        problems.throwIfAny();
        return new MeshFile(
                TriangleMesh.owning(merger.toArray(), corners.toArray()),
                MeshFile.Format.STL_ASCII,
                Optional.empty(),
                List.of());
    }

    /** Reads up to and over {@code endsolid} and its name; true when another word follows. */
    private boolean readSolid() throws IOException {
        boolean more = text.next();
        while (more) {
            if (text.is("endsolid")) {
                text.nextLine();
                return text.next();
            }
            if (!text.is("facet")) {
                complain("facet");
                more = skip("facet", "endsolid");
            } else if (readFacet()) {
                more = text.next();
            } else {
                more = skip("facet", "endsolid");
            }
        }
        problems.add(Code.MESH_TEXT_ENDS_EARLY, here(), "expected", "endsolid");
        return false;
    }

    /** Reads a facet after its first word; false where it went wrong, with the scanner at the word that does not fit. */
    private boolean readFacet() throws IOException {
        int before = corners.size();
        boolean good =
                expect("normal") && text.next() && text.next() && text.next() && expect("outer") && expect("loop");
        for (int k = 0; good && k < 3; k++) {
            good = expect("vertex") && readVertex(before / 3);
        }
        good = good && expect("endloop") && expect("endfacet");
        if (!good) {
            corners.truncate(before);
        } else if (corners.size() > 3 * MeshFiles.MOST_TRIANGLES) {
            problems.add(
                    Code.MESH_TOO_MANY_TRIANGLES,
                    here(),
                    "found",
                    (long) corners.size() / 3,
                    "allowed",
                    MeshFiles.MOST_TRIANGLES);
            problems.throwIfAny();
        }
        return good;
    }

    private boolean readVertex(long triangle) throws IOException {
        for (int k = 0; k < 3; k++) {
            if (!text.next() || !TextNumbers.readCoordinate(text, problems, "triangle", triangle)) {
                return false;
            }
            point[k] = text.value();
        }
        corners.add(problems.any() ? 0 : merger.add(point[0], point[1], point[2]));
        return true;
    }

    private boolean expect(String word) throws IOException {
        if (!text.next()) {
            return false;
        }
        if (text.is(word)) {
            return true;
        }
        complain(word);
        return false;
    }

    private void complain(String expected) {
        String found = FileHead.printable(text.word(), SHOWN);
        problems.add(Code.MESH_TEXT_UNEXPECTED, here(), "found", found, "expected", expected);
    }

    /** Goes to the next of two words with which reading can go on, this word included; false at the end of the file. */
    private boolean skip(String one, String other) throws IOException {
        boolean more = true;
        while (more && !text.is(one) && !text.is(other)) {
            more = text.next();
        }
        return more;
    }

    private Place here() {
        return new Place.AtLine(problems.file(), text.line());
    }
}
