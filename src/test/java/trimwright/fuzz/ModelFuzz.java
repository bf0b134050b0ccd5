package trimwright.fuzz;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import trimwright.mesh.MeshFile;
import trimwright.mesh.MeshFiles;

/** Any XML in the place of the model of a 3MF package that is right otherwise. */
class ModelFuzz {

    private static final Path FILE = Promise.folder().resolve("any.3mf");
    private static final byte[] RELATIONS =
            ("<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Target=\"/m\" Id=\"r\""
                            + " Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/></Relationships>")
                    .getBytes(StandardCharsets.UTF_8);

    @DictionaryEntries({
        "<object id=\"2\">",
        "</object>",
        "<mesh>",
        "</mesh>",
        "<vertices>",
        "<vertex x=\"1\" y=\"2\" z=\"3\"/>",
        "<triangle v1=\"0\" v2=\"1\" v3=\"2\"/>",
        "<components>",
        "<component objectid=\"1\"/>",
        "<item objectid=\"1\"/>",
        "transform=\"1 0 0 0 1 0 0 0 1 5 5 5\"",
        "type=\"support\"",
        "unit=\"inch\"",
        "requiredextensions=\"p\"",
        "p:path=\"/m\"",
        "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/hostname\">]>",
        "&b;",
        "<![CDATA[",
        "]]>",
        "<?x?>"
    })
    @FuzzTest(maxDuration = "2m")
    void anyModel(byte[] xml) throws Throwable {
        Promise.isKept(() -> {
            MeshFile read = MeshFiles.read(Promise.written(FILE, packed(xml)));
            Promise.canBeWorded(read.findings());
            MeshFuzz.holdsTogether(read.mesh());
        });
    }

    private static byte[] packed(byte[] xml) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.setLevel(Deflater.NO_COMPRESSION);
            zip.putNextEntry(new ZipEntry("_rels/.rels"));
            zip.write(RELATIONS);
            zip.putNextEntry(new ZipEntry("m"));
            zip.write(xml);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
