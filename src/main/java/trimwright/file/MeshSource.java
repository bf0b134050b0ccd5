package trimwright.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.MeshShape;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Severity;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshFile;
import trimwright.mesh.MeshFiles;
import trimwright.mesh.MeshImport;
import trimwright.mesh.MeshImport.Axis;
import trimwright.mesh.MeshUse;
import trimwright.mesh.Shells;
import trimwright.mesh.Soundness;
import trimwright.mesh.TriangleMesh;

/** Reads the meshes that a boat file names, each file once and each import of it once. */
final class MeshSource {

    private static final List<String> UNITS =
            Arrays.stream(LengthUnit.values()).map(LengthUnit::symbol).toList();
    private static final List<String> AXES =
            Arrays.stream(Axis.values()).map(Axis::symbol).toList();
    private static final Range SCALE = Range.above(0, 1e6);
    private static final Range SHELL = Range.from(1, Integer.MAX_VALUE);

    private final Path folder;
    private final JsonDocument document;
    private final Map<String, Optional<MeshFile>> files = new HashMap<>();
    private final Map<List<Object>, Optional<ImportedMesh>> meshes = new HashMap<>();
    private final List<Finding> unsound = new ArrayList<>();
    private final List<UsedMesh> used = new ArrayList<>();

    /**
     * @param folder where the boat file lies
     * @param document where findings go
     * @param known meshes that were read before and have not changed
     */
    MeshSource(Path folder, JsonDocument document, List<ImportedMesh> known) {
        this.folder = folder;
        this.document = document;
        known.forEach(m -> meshes.put(key(m.shape().file(), m.shape().meshImport()), Optional.of(m)));
    }

    /** Errors of meshes that can be read and shown, but not computed with. */
    List<Finding> unsound() {
        return List.copyOf(unsound);
    }

    /** The meshes that this source gave, each where it is used. */
    List<UsedMesh> used() {
        return List.copyOf(used);
    }

    /** What is known about a mesh that this source gave. */
    ImportedMesh imported(MeshShape shape) {
        return meshes.get(key(shape.file(), shape.meshImport())).orElseThrow();
    }

    /** A mesh file and how it was imported, to be compared: as a list, since a record's own comparison is only linked as it runs, at 20 ms. */
    private static List<Object> key(String file, MeshImport i) {
        return List.of(
                file, i.unit(), i.scale(), i.forward(), i.up(), i.moveXMm(), i.moveYMm(), i.moveZMm(), i.shells());
    }

    /**
     * The mesh of a part in the boat's frame.
     *
     * @param part has a key {@code mesh}
     * @param use what the mesh is declared to be; one that encloses no volume where it should is put down as unsound
     */
    Optional<MeshShape> shape(Fields part, MeshUse use) {
        int before = document.errors();
        Optional<Fields> keys = part.object("import", Keys.IMPORT);
        MeshImport meshImport = keys.map(MeshSource::meshImport).orElse(MeshImport.AS_IS);
        Optional<String> file = part.text("mesh").filter(f -> isAllowed(part, f));
        if (file.isEmpty() || document.errors() > before) {
            return Optional.empty();
        }
        List<Object> key = key(file.get(), meshImport);
        Optional<ImportedMesh> mesh = meshes.get(key);
        if (mesh == null) {
            mesh = meshFile(part, file.get()).flatMap(m -> imported(part, file.get(), meshImport, m));
            meshes.put(key, mesh);
        }
        mesh.ifPresent(m -> judge(part, m, use));
        return mesh.map(ImportedMesh::shape);
    }

    /** What speaks against the use of a mesh: errors are put down as unsound, doubts go to the document. */
    private void judge(Fields part, ImportedMesh mesh, MeshUse use) {
        Soundness soundness = mesh.quickSoundness();
        List<Finding> against =
                new ArrayList<>(soundness.againstBuild(mesh.shape().mesh(), use));
        for (Finding finding : soundness.findings()) {
            if (finding.code() == Code.MESH_INSIDE_OUT) {
                against.add(new Finding(finding.code(), Severity.ERROR, finding.place(), finding.values()));
            }
        }
        for (Finding finding : against) {
            Finding here =
                    new Finding(finding.code(), finding.severity(), document.place(part.at("mesh")), finding.values());
            if (here.isError()) {
                unsound.add(here);
            } else {
                document.reportAll(List.of(here));
            }
        }
        UsedMesh there = new UsedMesh(document.place(part.at("mesh")), mesh, use);
        there.lookAhead();
        used.add(there);
        if (use == MeshUse.SKIN && !soundness.oriented()) {
            part.reportAt(
                    "mesh", Code.SURFACE_NOT_ORIENTED, "found", mesh.shape().file());
        }
    }

    private static MeshImport meshImport(Fields keys) {
        Optional<LengthUnit> unit = keys.word("unit", LengthUnit::ofSymbol, UNITS);
        double scale = keys.number("scale", SCALE).orElse(1.0);
        Axis forward = keys.word("forward", Axis::ofSymbol, AXES).orElse(Axis.PLUS_X);
        Axis up = keys.word("up", Axis::ofSymbol, AXES).orElse(Axis.PLUS_Z);
        Vector3D move = keys.point("moveMm").orElse(Vector3D.ZERO);
        List<Integer> shells = keys.wholeNumbers("shells", SHELL);
        if (forward.isParallelTo(up)) {
            keys.report(Code.IMPORT_AXES_PARALLEL, "forward", forward.symbol(), "up", up.symbol());
            return MeshImport.AS_IS;
        }
        return new MeshImport(unit, scale, forward, up, move.getX(), move.getY(), move.getZ(), shells);
    }

    /** A mesh lies next to the boat file or in a folder there, so that boat and meshes can be moved and sent together. */
    private static boolean isAllowed(Fields part, String file) {
        String broken = brokenRule(file);
        if (!broken.isEmpty()) {
            part.reportAt("mesh", Code.MESH_PATH_NOT_ALLOWED, "found", file, "rule", broken);
        }
        return broken.isEmpty();
    }

    private static String brokenRule(String file) {
        if (file.indexOf('\\') >= 0) {
            return "forward slashes only";
        }
        if (file.startsWith("/") || file.matches("[A-Za-z]:.*")) {
            return "relative to the boat file";
        }
        if (Arrays.asList(file.split("/", -1)).contains("..")) {
            return "no parent folder";
        }
        try {
            return Path.of(file).getNameCount() == 0 || file.endsWith("/") ? "a file" : "";
        } catch (InvalidPathException e) {
            return "a possible file name";
        }
    }

    private Optional<MeshFile> meshFile(Fields part, String file) {
        Optional<MeshFile> known = files.get(file);
        if (known != null) {
            return known;
        }
        Optional<MeshFile> read = Optional.empty();
        Path path = folder.resolve(file);
        if (!Files.exists(path)) {
            reportMissing(part, file, path);
        } else {
            try {
                read = Optional.of(MeshFiles.read(path));
                document.reportAll(read.get().findings());
            } catch (UnusableInputException e) {
                document.reportAll(e.findings());
            }
        }
        files.put(file, read);
        return read;
    }

    private static void reportMissing(Fields part, String file, Path path) {
        List<String> neighbours = neighbours(path);
        String name = String.valueOf(path.getFileName());
        String nearest = Nearest.to(name, neighbours);
        part.reportAt("mesh", Code.MESH_FILE_MISSING, "found", file, "lookedFor", path.toString(), "nearest", nearest);
    }

    private static List<String> neighbours(Path path) {
        Path parent = path.getParent();
        try (Stream<Path> files = Files.list(parent == null ? Path.of("") : parent)) {
            return files.filter(Files::isRegularFile)
                    .map(f -> String.valueOf(f.getFileName()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            // No such folder, or one that may not be listed: then there is nothing to suggest.
            return List.of();
        }
    }

    private Optional<ImportedMesh> imported(Fields part, String name, MeshImport meshImport, MeshFile file) {
        if (meshImport.unit().isPresent()
                && file.unit().isPresent()
                && !meshImport.unit().equals(file.unit())) {
            part.reportAt(
                    "import",
                    Code.UNIT_OVERRIDES_FILE,
                    "unit",
                    meshImport.unit().get().symbol(),
                    "fileUnit",
                    file.unit().get().symbol());
        }
        TriangleMesh mesh;
        try {
            mesh = Shells.pick(file.mesh(), meshImport.shells());
        } catch (UnusableInputException e) {
            e.findings().forEach(f -> part.reportAt("import", f.code(), pairs(f)));
            return Optional.empty();
        }
        MeshShape shape = new MeshShape(name, meshImport, meshImport.apply(mesh, file.unit()));
        shape.buildTreeAhead();
        return Optional.of(new ImportedMesh(shape, file.format(), file.unit()));
    }

    private static Object[] pairs(Finding finding) {
        return finding.values().entrySet().stream()
                .flatMap(e -> Stream.of(e.getKey(), e.getValue()))
                .toArray();
    }
}
