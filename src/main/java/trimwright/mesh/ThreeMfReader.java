package trimwright.mesh;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLStreamException;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/**
 * 3MF: a zip package whose root relationship names a model part, with objects (meshes, or components made of other objects)
 * and build items that place them (3MF Core Specification 1.x; the production extension's {@code path}, which puts objects
 * into further model parts, is followed too). Supports are left out. Document types and outside entities are refused,
 * and so is a package that unpacks to far more than it looks.
 */
final class ThreeMfReader {

    /** 40 million triangles as XML take about 3 GB. */
    private static final long MOST_BYTES = 4L << 30;

    /** Beyond this many bytes, a part that unpacks to more than {@link #MOST_RATIO} times its size is refused. */
    private static final long RATIO_FROM = 64L << 20;

    /** Meshes as XML pack about ten to one, the most regular ones fifty to one. */
    private static final long MOST_RATIO = 200;

    private final Path path;
    private final Problems problems;
    private final Map<String, ThreeMfModel> models = new HashMap<>();
    private long bytesRead;

    ThreeMfReader(Path path, Problems problems) {
        this.path = path;
        this.problems = problems;
    }

    MeshFile read() throws IOException {
        try (ZipFile zip = new ZipFile(path.toFile())) {
            String root = rootPart(zip);
            ThreeMfModel model = model(zip, root);
            for (int next = 0; next < model.neededParts().size(); next++) {
                String part = model.neededParts().get(next);
                if (!models.containsKey(part)) {
                    models.put(part, model(zip, part));
                }
            }
            models.put(root, model);
            return assembled(root, model);
        } catch (ZipException e) {
            throw refused(Code.MESH_3MF_ZIP_BROKEN, problems.file(), "reason", String.valueOf(e.getMessage()));
        }
    }

    private MeshFile assembled(String root, ThreeMfModel model) {
        ThreeMfAssembly assembly = new ThreeMfAssembly(models, problems);
        TriangleMesh mesh = assembly.build(root);
        List<Finding> notes = new ArrayList<>();
        if (model.unit().isConverted()) {
            notes.add(Finding.of(
                    Code.MESH_3MF_UNIT_CONVERTED,
                    new Place.InFile(problems.file()),
                    "found",
                    model.unit().written(),
                    "unit",
                    model.unit().length().symbol()));
        }
        if (assembly.supportsLeftOut() > 0) {
            notes.add(Finding.of(
                    Code.MESH_3MF_SUPPORTS_LEFT_OUT,
                    new Place.InFile(problems.file()),
                    "count",
                    assembly.supportsLeftOut()));
        }
        return new MeshFile(
                mesh, MeshFile.Format.THREE_MF, Optional.of(model.unit().length()), notes);
    }

    /** The model part that the package names as its root. */
    private String rootPart(ZipFile zip) throws IOException {
        ZipEntry relations = zip.getEntry("_rels/.rels");
        if (relations != null) {
            String place = problems.file() + "!/" + relations.getName();
            try (InputStream in = limited(zip, relations)) {
                Optional<String> target = ThreeMfXml.rootTarget(in, place);
                if (target.isPresent()) {
                    return target.get();
                }
            } catch (XMLStreamException e) {
                throw ThreeMfXml.broken(e, place);
            }
        }
        throw refused(Code.MESH_3MF_NO_MODEL, problems.file());
    }

    private ThreeMfModel model(ZipFile zip, String part) throws IOException {
        ZipEntry entry = zip.getEntry(part);
        String place = problems.file() + "!/" + part;
        if (entry == null) {
            throw refused(Code.MESH_3MF_NO_MODEL, place);
        }
        try (InputStream in = limited(zip, entry)) {
            return new ThreeMfXml(place, problems).readModel(in);
        } catch (XMLStreamException e) {
            throw ThreeMfXml.broken(e, place);
        }
    }

    /** The unpacked part, which gives up once it is longer than any honest one. */
    private InputStream limited(ZipFile zip, ZipEntry entry) throws IOException {
        long allowed = Math.max(RATIO_FROM, MOST_RATIO * Math.max(entry.getCompressedSize(), 0));
        return new FilterInputStream(zip.getInputStream(entry)) {
            private long ofThisPart;

            @Override
            public int read() throws IOException {
                int b = super.read();
                count(b < 0 ? 0 : 1);
                return b;
            }

            @Override
            public int read(byte[] into, int offset, int length) throws IOException {
                int got = super.read(into, offset, length);
                count(Math.max(got, 0));
                return got;
            }

            private void count(int got) {
                ofThisPart += got;
                bytesRead += got;
                if (ofThisPart > allowed || bytesRead > MOST_BYTES) {
                    throw refused(
                            Code.MESH_3MF_UNPACKS_TOO_LARGE,
                            problems.file() + "!/" + entry.getName(),
                            "bytesPacked",
                            entry.getCompressedSize(),
                            "bytesAllowed",
                            Math.min(allowed, MOST_BYTES));
                }
            }
        };
    }

    private static UnusableInputException refused(Code code, String file, Object... namesAndValues) {
        return new UnusableInputException(Finding.of(code, new Place.InFile(file), namesAndValues));
    }
}
