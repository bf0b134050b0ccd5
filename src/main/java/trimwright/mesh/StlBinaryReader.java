package trimwright.mesh;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.util.List;
import java.util.Optional;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/**
 * Binary STL: 80 bytes of header, a count, then 50 bytes a triangle: normal, three vertices, two spare bytes. Header,
 * normals and spare bytes are not read.
 *
 * <p>The file is read in pieces and not mapped: a mapped file stays locked on some systems long after it was closed, and
 * one that shrinks while it is mapped ends the process.
 */
final class StlBinaryReader {

    static final int HEADER = 84;
    static final int RECORD = 50;

    private static final int VERTICES_AT = 12;
    private static final int RECORDS_AT_ONCE = 20_000;

    private StlBinaryReader() {}

    static MeshFile read(FileChannel channel, long count, Problems problems) throws IOException {
        String file = problems.file();
        if (count > MeshFiles.MOST_TRIANGLES) {
            throw new UnusableInputException(Finding.of(
                    Code.MESH_TOO_MANY_TRIANGLES,
                    new Place.AtByte(file, HEADER - 4),
                    "found",
                    count,
                    "allowed",
                    MeshFiles.MOST_TRIANGLES));
        }
        if (count == 0) {
            throw new UnusableInputException(Finding.of(Code.MESH_NO_TRIANGLES, new Place.AtByte(file, HEADER - 4)));
        }
        int triangles = (int) count;
        int[] corners = new int[3 * triangles];
        // A closed surface has about half as many vertices as triangles.
        VertexMerger merger = new VertexMerger(triangles / 2 + 64);
        ByteBuffer records = ByteBuffer.allocateDirect(RECORD * Math.min(triangles, RECORDS_AT_ONCE))
                .order(ByteOrder.LITTLE_ENDIAN);
        channel.position(HEADER);
        int done = 0;
        while (done < triangles) {
            records.clear().limit(RECORD * Math.min(triangles - done, RECORDS_AT_ONCE));
            MeshFiles.readFully(channel, records);
            if (records.hasRemaining()) {
                throw wrongLength(count, channel.position(), file);
            }
            take(records.flip(), done, corners, merger, problems);
            done += records.limit() / RECORD;
        }
        problems.throwIfAny();
        return new MeshFile(
                TriangleMesh.owning(merger.toArray(), corners),
                MeshFile.Format.STL_BINARY,
                Optional.empty(),
                List.of());
    }

    private static void take(ByteBuffer records, int first, int[] corners, VertexMerger merger, Problems problems) {
        int corner = 3 * first;
        for (int record = 0; record < records.limit(); record += RECORD) {
            for (int at = record + VERTICES_AT; at < record + VERTICES_AT + 36; at += 12) {
                float x = records.getFloat(at);
                float y = records.getFloat(at + 4);
                float z = records.getFloat(at + 8);
                // Written so that not-a-number fails as well.
                if (Math.abs(x) <= MeshFiles.LARGEST_COORDINATE
                        && Math.abs(y) <= MeshFiles.LARGEST_COORDINATE
                        && Math.abs(z) <= MeshFiles.LARGEST_COORDINATE) {
                    corners[corner] = merger.add(x, y, z);
                } else {
                    complain(records, at, corner / 3, problems);
                }
                corner++;
            }
        }
    }

    private static void complain(ByteBuffer records, int at, long triangle, Problems problems) {
        for (int k = 0; k < 3; k++) {
            float found = records.getFloat(at + 4 * k);
            if (!(Math.abs(found) <= MeshFiles.LARGEST_COORDINATE)) {
                long offset = HEADER + RECORD * triangle + at % RECORD + 4 * k;
                problems.badCoordinate(found, new Place.AtByte(problems.file(), offset), "triangle", triangle);
            }
        }
    }

    /** What is wrong when the length of a binary STL does not match its count. */
    static UnusableInputException wrongLength(long count, long bytesFound, String file) {
        long bytesExpected = HEADER + RECORD * count;
        long body = bytesFound - HEADER;
        if (bytesFound < bytesExpected) {
            return new UnusableInputException(Finding.of(
                    Code.MESH_STL_TRUNCATED,
                    new Place.AtByte(file, bytesFound),
                    "trianglesStated",
                    count,
                    "trianglesWhole",
                    body / RECORD,
                    "bytesExpected",
                    bytesExpected,
                    "bytesFound",
                    bytesFound));
        }
        Place place = new Place.AtByte(file, HEADER - 4);
        if (body % RECORD == 0) {
            return new UnusableInputException(Finding.of(
                    Code.MESH_STL_WRONG_COUNT,
                    place,
                    "trianglesStated",
                    count,
                    "trianglesFitting",
                    body / RECORD,
                    "bytesExpected",
                    bytesExpected,
                    "bytesFound",
                    bytesFound));
        }
        return new UnusableInputException(Finding.of(
                Code.MESH_STL_WRONG_COUNT,
                place,
                "trianglesStated",
                count,
                "bytesExpected",
                bytesExpected,
                "bytesFound",
                bytesFound));
    }
}
