package trimwright.mesh;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * Deliberately broken mesh files, each with one fault that people meet, made from boxes so that the fault's place is plain. The
 * files lie in {@code src/test/resources/broken-meshes}; {@link BrokenMeshesTest} compares them with what is made here. Run
 * {@link #main} to write them anew.
 */
final class BrokenMeshes {

    static final Path FOLDER = Path.of("src/test/resources/broken-meshes");

    /** 400 × 200 × 100 mm; triangles 0 and 1 are its bottom, 2 and 3 its top. */
    static final TriangleMesh BOX = Solids.box(0, 0, 0, 400, 200, 100);

    private BrokenMeshes() {}

    /** Writes all files; run in the directory of the project. */
    public static void main(String[] args) throws IOException {
        Files.createDirectories(FOLDER);
        for (Map.Entry<String, byte[]> file : all().entrySet()) {
            Files.write(FOLDER.resolve(file.getKey()), file.getValue());
        }
    }

    /** The files by name. */
    static Map<String, byte[]> all() {
        Map<String, byte[]> files = new TreeMap<>();
        for (Map.Entry<String, TriangleMesh> mesh : meshes().entrySet()) {
            files.put(mesh.getKey() + ".stl", Written.stlBinary("made for tests", mesh.getValue()));
        }
        byte[] whole = Written.stlBinary("made for tests", BOX);
        files.put("truncated.stl", Arrays.copyOf(whole, 84 + 50 * 7 + 20));
        files.put("wrong-count.stl", withCount(whole, 10));
        files.put("empty.stl", new byte[0]);
        files.put("no-triangles.stl", withCount(Arrays.copyOf(whole, 84), 0));
        files.put("not-a-number.stl", withFloat(whole, 84 + 50 * 3 + 28, Float.NaN));
        files.put("infinite.stl", withFloat(whole, 84 + 50 * 5 + 12, Float.POSITIVE_INFINITY));
        files.put("solid-but-binary.stl", Written.stlBinary("solid hull", BOX));
        String ascii = Written.stlAscii(Shapes.moved(BOX, 0.5, 0, 0));
        files.put("ascii-rubbish.stl", text(ascii.replaceFirst("vertex 400.5", "vertex four hundred")));
        files.put("decimal-commas.stl", text(ascii.replace('.', ',')));
        files.put("ascii-cut-short.stl", text(ascii.substring(0, ascii.length() / 2)));
        return files;
    }

    /** The files that hold a readable mesh, by name without ending. */
    static Map<String, TriangleMesh> meshes() {
        Map<String, TriangleMesh> meshes = new TreeMap<>();
        meshes.put("open-edge", Shapes.without(BOX, 3));
        meshes.put("flipped-triangle", Shapes.turned(BOX, 5));
        meshes.put("duplicate-triangle", Shapes.with(BOX, 0, 2, 1));
        meshes.put("degenerate-triangles", degenerate());
        meshes.put("inside-out", BOX.flipped());
        meshes.put("overlapping-shells", Shapes.together(BOX, Solids.box(350, 50, 30, 500, 150, 70)));
        meshes.put("overlapping-flush-shells", Shapes.together(BOX, Solids.box(200, 0, 0, 500, 200, 100)));
        meshes.put("nested-same-way", Shapes.together(BOX, Solids.box(10, 10, 10, 390, 190, 90)));
        meshes.put(
                "cavity",
                Shapes.together(BOX, Solids.box(10, 10, 10, 390, 190, 90).flipped()));
        meshes.put("crosses-itself", crossing());
        meshes.put("edge-of-many", Shapes.together(BOX, Solids.box(400, 200, 0, 500, 300, 100)));
        meshes.put("one-sided", ribbon());
        meshes.put(
                "two-triangles",
                TriangleMesh.owning(
                        new double[] {0, 0, 0, 400, 0, 0, 400, 200, 0, 0, 200, 0}, new int[] {0, 1, 2, 0, 2, 3}));
        meshes.put("many-shells", boxes(6, 5, 4));
        meshes.put("far-away", Shapes.moved(BOX, 1e7, 0, 0));
        meshes.put("metre-sized", Shapes.scaled(BOX, 0.001));
        meshes.put("inch-sized", Shapes.scaled(BOX, 1 / 25.4));
        meshes.put("open-wall", openWall());
        return meshes;
    }

    /** A box with the middle of one edge as a vertex that only one side knows: two triangles without area close the gap. */
    private static TriangleMesh degenerate() {
        double[] xyz = Arrays.copyOf(BOX.xyz(), 27);
        // The middle of the edge from vertex 0 to vertex 1.
        xyz[24] = 200;
        // Triangle 4 is 0 1 4 on that edge: cut in two at the middle; then one along the edge and one with a vertex
        // twice.
        int[] corners = Arrays.copyOf(BOX.corners(), 45);
        int[] more = {0, 8, 4, 8, 1, 4, 0, 1, 8, 3, 3, 7};
        System.arraycopy(corners, 15, corners, 12, 21);
        System.arraycopy(more, 0, corners, 33, 12);
        return TriangleMesh.owning(xyz, corners);
    }

    /** A box with one corner of the top pushed out through its bottom. */
    private static TriangleMesh crossing() {
        double[] xyz = BOX.xyz().clone();
        xyz[12] = 250;
        xyz[13] = 90;
        xyz[14] = -60;
        return TriangleMesh.owning(xyz, BOX.corners().clone());
    }

    /** A ribbon that is joined to itself with half a turn. */
    private static TriangleMesh ribbon() {
        int pieces = 12;
        double[] xyz = new double[6 * pieces];
        int[] corners = new int[6 * pieces];
        for (int i = 0; i < pieces; i++) {
            double along = 2 * Math.PI * i / pieces;
            for (int side = 0; side < 2; side++) {
                double across = (2 * side - 1) * 40;
                double radius = 200 + across * Math.cos(along / 2);
                xyz[6 * i + 3 * side] = radius * Math.cos(along);
                xyz[6 * i + 3 * side + 1] = radius * Math.sin(along);
                xyz[6 * i + 3 * side + 2] = across * Math.sin(along / 2);
            }
            boolean last = i == pieces - 1;
            int low = last ? 1 : 2 * i + 2;
            int high = last ? 0 : 2 * i + 3;
            int[] quad = {2 * i, low, high, 2 * i, high, 2 * i + 1};
            System.arraycopy(quad, 0, corners, 6 * i, 6);
        }
        return TriangleMesh.owning(xyz, corners);
    }

    private static TriangleMesh boxes(int along, int across, int up) {
        TriangleMesh[] boxes = new TriangleMesh[along * across * up];
        for (int i = 0; i < boxes.length; i++) {
            int x = i % along;
            int y = i / along % across;
            int z = i / along / across;
            boxes[i] = Solids.box(30 * x, 30 * y, 30 * z, 30 * x + 20, 30 * y + 20, 30 * z + 20);
        }
        return Shapes.together(boxes);
    }

    /** Two boxes without their tops, one 2 mm inside the other and turned against it: a print whose rim is missing. */
    private static TriangleMesh openWall() {
        TriangleMesh inner = Solids.box(2, 2, 2, 398, 198, 100).flipped();
        return Shapes.together(Shapes.without(BOX, 2, 3), Shapes.without(inner, 2, 3));
    }

    private static byte[] withCount(byte[] stl, int count) {
        byte[] result = stl.clone();
        ByteBuffer.wrap(result).order(ByteOrder.LITTLE_ENDIAN).putInt(80, count);
        return result;
    }

    private static byte[] withFloat(byte[] stl, int offset, float value) {
        byte[] result = stl.clone();
        ByteBuffer.wrap(result).order(ByteOrder.LITTLE_ENDIAN).putFloat(offset, value);
        return result;
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
