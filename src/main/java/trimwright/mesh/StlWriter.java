package trimwright.mesh;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Writes binary STL. Coordinates are rounded to single precision, the only one that the format has. */
public final class StlWriter {

    /** Must not begin with the word that opens an ASCII STL. */
    private static final String HEADER = "binary STL, lengths in mm";

    private StlWriter() {}

    /** Writes a new file; an existing one is never touched. */
    public static void write(Path to, TriangleMesh mesh) {
        write(to, mesh, false);
    }

    /**
     * Writes a file whole or not at all.
     *
     * @param overwrite whether an existing file may be replaced
     * @throws trimwright.finding.UnusableInputException when it exists and may not be replaced, or cannot be written
     */
    public static void write(Path to, TriangleMesh mesh, boolean overwrite) {
        WholeFile.write(to, overwrite, out -> writeTo(out, mesh));
    }

    private static void writeTo(OutputStream out, TriangleMesh mesh) throws IOException {
        ByteBuffer head = ByteBuffer.allocate(StlBinaryReader.HEADER).order(ByteOrder.LITTLE_ENDIAN);
        head.put(HEADER.getBytes(StandardCharsets.US_ASCII));
        head.putInt(StlBinaryReader.HEADER - 4, mesh.triangleCount());
        out.write(head.array());
        ByteBuffer record = ByteBuffer.allocate(StlBinaryReader.RECORD).order(ByteOrder.LITTLE_ENDIAN);
        for (int t = 0; t < mesh.triangleCount(); t++) {
            put(record.clear(), mesh, t);
            out.write(record.array());
        }
    }

    private static void put(ByteBuffer record, TriangleMesh mesh, int t) {
        double[] xyz = mesh.xyz();
        int a = 3 * mesh.corners()[3 * t];
        int b = 3 * mesh.corners()[3 * t + 1];
        int c = 3 * mesh.corners()[3 * t + 2];
        double ux = xyz[b] - xyz[a];
        double uy = xyz[b + 1] - xyz[a + 1];
        double uz = xyz[b + 2] - xyz[a + 2];
        double vx = xyz[c] - xyz[a];
        double vy = xyz[c + 1] - xyz[a + 1];
        double vz = xyz[c + 2] - xyz[a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        // The format wants zeros where there is no normal.
        double scale = length > 0 ? 1 / length : 0;
        record.putFloat((float) (scale * nx)).putFloat((float) (scale * ny)).putFloat((float) (scale * nz));
        for (int corner : new int[] {a, b, c}) {
            record.putFloat((float) xyz[corner])
                    .putFloat((float) xyz[corner + 1])
                    .putFloat((float) xyz[corner + 2]);
        }
        record.putShort((short) 0);
    }
}
