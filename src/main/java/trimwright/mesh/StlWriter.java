package trimwright.mesh;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/** Writes binary STL. Coordinates are rounded to single precision, the only one that the format has. */
public final class StlWriter {

    /** Must not begin with the word that opens an ASCII STL. */
    private static final String HEADER = "binary STL, lengths in mm";

    private static final int RECORDS_AT_ONCE = 20_000;

    private StlWriter() {}

    /** Writes a new file; an existing one is never touched. */
    public static void write(Path to, TriangleMesh mesh) {
        write(to, mesh, false);
    }

    /**
     * Writes a file whole or not at all: to a new file in the same folder, which gets the wanted name once it has reached the
     * disk.
     *
     * @param overwrite whether an existing file may be replaced
     * @throws UnusableInputException when it exists and may not be replaced, or cannot be written
     */
    public static void write(Path to, TriangleMesh mesh, boolean overwrite) {
        Place place = new Place.InFile(to.toString());
        Path target = to.toAbsolutePath();
        Path folder = target.getParent();
        if (Files.isDirectory(target)) {
            throw new UnusableInputException(Finding.of(Code.FILE_IS_DIRECTORY, place));
        }
        if (!Files.isDirectory(folder)) {
            throw new UnusableInputException(Finding.of(Code.FOLDER_MISSING, place, "folder", String.valueOf(folder)));
        }
        Path fresh = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".tmp");
        boolean taken = false;
        try {
            if (!overwrite) {
                // Taking the name first keeps out anyone who would create the file in between.
                Files.createFile(target);
                taken = true;
            }
            writeForced(fresh, mesh);
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (FileAlreadyExistsException e) {
            throw new UnusableInputException(Finding.of(Code.FILE_EXISTS, place));
        } catch (IOException e) {
            cleanUp(fresh, e);
            if (taken) {
                cleanUp(target, e);
            }
            throw new UnusableInputException(
                    Finding.of(Code.FILE_NOT_WRITTEN, place, "reason", String.valueOf(e.getMessage())));
        }
    }

    private static void cleanUp(Path file, IOException reason) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            reason.addSuppressed(e);
        }
    }

    private static void writeForced(Path file, TriangleMesh mesh) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer head = ByteBuffer.allocate(StlBinaryReader.HEADER).order(ByteOrder.LITTLE_ENDIAN);
            head.put(HEADER.getBytes(StandardCharsets.US_ASCII));
            head.putInt(StlBinaryReader.HEADER - 4, mesh.triangleCount());
            drain(channel, head.position(StlBinaryReader.HEADER));
            ByteBuffer records = ByteBuffer.allocateDirect(StlBinaryReader.RECORD * RECORDS_AT_ONCE)
                    .order(ByteOrder.LITTLE_ENDIAN);
            for (int t = 0; t < mesh.triangleCount(); t++) {
                if (!records.hasRemaining()) {
                    drain(channel, records);
                }
                put(records, mesh, t);
            }
            drain(channel, records);
            channel.force(true);
        }
    }

    private static void put(ByteBuffer records, TriangleMesh mesh, int t) {
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
        records.putFloat((float) (scale * nx)).putFloat((float) (scale * ny)).putFloat((float) (scale * nz));
        for (int corner : new int[] {a, b, c}) {
            records.putFloat((float) xyz[corner])
                    .putFloat((float) xyz[corner + 1])
                    .putFloat((float) xyz[corner + 2]);
        }
        records.putShort((short) 0);
    }

    private static void drain(FileChannel channel, ByteBuffer buffer) throws IOException {
        buffer.flip();
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
        buffer.clear();
    }
}
