package trimwright.mesh;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/**
 * Reads mesh files: STL (binary and ASCII), OBJ and 3MF. The content decides which it is, not the file's name. Vertices
 * with identical coordinates are merged; nothing else is changed.
 */
public final class MeshFiles {

    /**
     * The most triangles of a mesh, 40 million: a 2 GB binary STL, about 1 GB of memory for the mesh and as much again for
     * its check.
     */
    public static final int MOST_TRIANGLES = 40_000_000;

    /** The largest coordinate of either sign, in the unit of the file: 10⁹, a thousand kilometres where that is mm. */
    public static final double LARGEST_COORDINATE = 1e9;

    /**
     * A single-precision step above this share of the longest side (0.01 mm on a model of 1 m) blurs the shape: a model
     * then lies more than about a hundred of its lengths away from the origin.
     */
    private static final double BLURRING_STEP = 1e-5;

    private MeshFiles() {}

    /**
     * Reads a mesh of any known format.
     *
     * @param path the file; it is named in findings as given here
     * @return the mesh in the file's own unit and axes
     * @throws UnusableInputException with all that can be told about a file that cannot be used; {@link Code} says what
     *     each finding carries
     */
    public static MeshFile read(Path path) {
        String file = path.toString();
        if (!Files.exists(path)) {
            throw refused(Code.FILE_MISSING, file);
        }
        if (Files.isDirectory(path)) {
            throw refused(Code.FILE_IS_DIRECTORY, file);
        }
        if (!Files.isRegularFile(path) || !Files.isReadable(path)) {
            String reason = Files.isRegularFile(path) ? "no permission to read" : "not a regular file";
            throw refused(Code.FILE_UNREADABLE, file, "reason", reason);
        }
        long size = 0;
        try (FileChannel channel = FileChannel.open(path)) {
            size = channel.size();
            MeshFile result = read(channel, path, size, new Problems(file));
            return withDistanceChecked(result, file);
        } catch (IOException e) {
            throw refused(Code.FILE_UNREADABLE, file, "reason", String.valueOf(e.getMessage()));
        } catch (OutOfMemoryError e) {
            // The arrays of a mesh are large and few: the failed one was never made, so that nothing is half done.
            throw refused(
                    Code.MESH_OUT_OF_MEMORY,
                    file,
                    "fileBytes",
                    size,
                    "memoryBytes",
                    Runtime.getRuntime().maxMemory());
        }
    }

    /**
     * The format of a mesh that a file looks like, for telling someone who took the wrong file.
     *
     * @param bytes its first bytes; 4 KiB are enough
     * @param size length of the file in bytes
     */
    public static Optional<String> looksLike(byte[] bytes, long size) {
        ByteBuffer head = ByteBuffer.wrap(bytes, 0, Math.min(bytes.length, FileHead.LENGTH));
        FileHead start = new FileHead(head.slice().order(ByteOrder.LITTLE_ENDIAN), size);
        if (start.hasStlLength()) {
            return Optional.of("STL");
        }
        return switch (start.guess()) {
            case ZIP -> Optional.of("3MF");
            case STL_TEXT, STL_DAMAGED -> Optional.of("STL");
            case OBJ_TEXT -> Optional.of("OBJ");
            case UNKNOWN -> Optional.empty();
        };
    }

    private static MeshFile read(FileChannel channel, Path path, long size, Problems problems) throws IOException {
        String file = problems.file();
        if (size == 0) {
            throw refused(Code.FILE_EMPTY, file);
        }
        ByteBuffer head = ByteBuffer.allocate((int) Math.min(size, FileHead.LENGTH));
        readFully(channel, head);
        FileHead start = new FileHead(head.flip().order(ByteOrder.LITTLE_ENDIAN), size);
        channel.position(0);
        // Length first: a binary STL may well begin with the word that opens an ASCII one.
        if (start.hasStlLength()) {
            return StlBinaryReader.read(channel, start.stlTriangles(), problems);
        }
        return switch (start.guess()) {
            case ZIP -> new ThreeMfReader(path, problems).read();
            case STL_TEXT -> new StlAsciiReader(new ByteScanner(channel), problems).read();
            case OBJ_TEXT -> new ObjReader(new ByteScanner(channel), problems).read();
            case STL_DAMAGED -> throw StlBinaryReader.wrongLength(start.stlTriangles(), size, file);
            case UNKNOWN -> throw new UnusableInputException(start.unknownFormat(file));
        };
    }

    /** Fills the buffer as far as the file goes; one call of {@code read} need not. */
    static void readFully(FileChannel channel, ByteBuffer buffer) throws IOException {
        while (buffer.hasRemaining() && channel.read(buffer) >= 0) {
            // Until full or at the end.
        }
    }

    private static MeshFile withDistanceChecked(MeshFile read, String file) {
        Bounds bounds = read.mesh().bounds();
        double distance = bounds.farthestCoordinate();
        double longestSide = bounds.longestSide();
        double step = Math.ulp((float) distance);
        if (step <= BLURRING_STEP * longestSide) {
            return read;
        }
        List<Finding> findings = new ArrayList<>(read.findings());
        findings.add(Finding.of(
                Code.MESH_FAR_FROM_ORIGIN,
                new Place.InFile(file),
                "distance",
                distance,
                "longestSide",
                longestSide,
                "step",
                step));
        return new MeshFile(read.mesh(), read.format(), read.unit(), findings);
    }

    private static UnusableInputException refused(Code code, String file, Object... namesAndValues) {
        return new UnusableInputException(Finding.of(code, new Place.InFile(file), namesAndValues));
    }
}
