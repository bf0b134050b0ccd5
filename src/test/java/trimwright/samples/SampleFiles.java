package trimwright.samples;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import trimwright.mesh.TriangleMesh;

/** Writes the meshes of the sample boats anew: run from the project's folder after changing one. */
final class SampleFiles {

    private SampleFiles() {}

    public static void main(String[] args) throws IOException {
        for (var mesh : SampleHulls.files().entrySet()) {
            Files.write(Path.of("sample-meshes", mesh.getKey()), binaryStl(mesh.getValue()));
        }
    }

    static byte[] binaryStl(TriangleMesh mesh) {
        ByteBuffer out = ByteBuffer.allocate(84 + 50 * mesh.triangleCount()).order(ByteOrder.LITTLE_ENDIAN);
        out.put("Trimwright sample mesh, mm".getBytes(StandardCharsets.US_ASCII));
        out.position(80);
        out.putInt(mesh.triangleCount());
        for (int t = 0; t < mesh.triangleCount(); t++) {
            out.position(out.position() + 12);
            for (int k = 0; k < 3; k++) {
                int v = 3 * mesh.corners()[3 * t + k];
                out.putFloat((float) mesh.xyz()[v]);
                out.putFloat((float) mesh.xyz()[v + 1]);
                out.putFloat((float) mesh.xyz()[v + 2]);
            }
            out.putShort((short) 0);
        }
        return out.array();
    }
}
