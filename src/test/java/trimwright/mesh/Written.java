package trimwright.mesh;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Meshes as the bytes of files, written plainly for tests, apart from the program's own writer. */
final class Written {

    static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    private Written() {}

    static byte[] stlBinary(String header, TriangleMesh mesh) {
        ByteBuffer out = ByteBuffer.allocate(84 + 50 * mesh.triangleCount()).order(ByteOrder.LITTLE_ENDIAN);
        out.put(header.getBytes(StandardCharsets.US_ASCII)).position(80);
        out.putInt(mesh.triangleCount());
        for (int i = 0; i < mesh.corners().length; i++) {
            if (i % 3 == 0) {
                out.position(84 + 50 * (i / 3) + 12);
            }
            for (int k = 0; k < 3; k++) {
                out.putFloat((float) mesh.xyz()[3 * mesh.corners()[i] + k]);
            }
        }
        return out.array();
    }

    static String stlAscii(TriangleMesh mesh) {
        StringBuilder out = new StringBuilder("solid some name\n");
        for (int i = 0; i < mesh.corners().length; i++) {
            if (i % 3 == 0) {
                out.append(" facet normal 0 0 0\n  outer loop\n");
            }
            out.append("   vertex ").append(point(mesh, mesh.corners()[i])).append('\n');
            if (i % 3 == 2) {
                out.append("  endloop\n endfacet\n");
            }
        }
        return out.append("endsolid some name\n").toString();
    }

    static String obj(TriangleMesh mesh) {
        StringBuilder out = new StringBuilder("# some name\no name\n");
        for (int v = 0; v < mesh.vertexCount(); v++) {
            out.append("v ").append(point(mesh, v)).append('\n');
        }
        for (int t = 0; t < mesh.corners().length; t += 3) {
            out.append("f ")
                    .append(mesh.corners()[t] + 1)
                    .append(' ')
                    .append(mesh.corners()[t + 1] + 1)
                    .append(' ')
                    .append(mesh.corners()[t + 2] + 1)
                    .append('\n');
        }
        return out.toString();
    }

    /** The {@code mesh} element of a 3MF model. */
    static String meshElement(TriangleMesh mesh) {
        StringBuilder out = new StringBuilder("<mesh>\n<vertices>\n");
        for (int v = 0; v < mesh.vertexCount(); v++) {
            out.append("<vertex x=\"%s\" y=\"%s\" z=\"%s\"/>%n"
                    .formatted(mesh.xyz()[3 * v], mesh.xyz()[3 * v + 1], mesh.xyz()[3 * v + 2]));
        }
        out.append("</vertices>\n<triangles>\n");
        for (int t = 0; t < mesh.corners().length; t += 3) {
            out.append("<triangle v1=\"%d\" v2=\"%d\" v3=\"%d\"/>%n"
                    .formatted(mesh.corners()[t], mesh.corners()[t + 1], mesh.corners()[t + 2]));
        }
        return out.append("</triangles>\n</mesh>\n").toString();
    }

    /** A 3MF package with one model part. */
    static byte[] threeMf(String attributes, String resources, String build) {
        return zip(Map.of("3D/3dmodel.model", model(attributes, resources, build), "_rels/.rels", rels()));
    }

    static String model(String attributes, String resources, String build) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<model xmlns=\"" + CORE + "\" " + attributes
                + ">\n<resources>\n" + resources + "</resources>\n<build>\n" + build + "</build>\n</model>\n";
    }

    static String rels() {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                + "<Relationship Target=\"/3D/3dmodel.model\" Id=\"rel0\""
                + " Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/></Relationships>";
    }

    static byte[] zip(Map<String, String> entries) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static String point(TriangleMesh mesh, int vertex) {
        return mesh.xyz()[3 * vertex] + " " + mesh.xyz()[3 * vertex + 1] + " " + mesh.xyz()[3 * vertex + 2];
    }
}
