package trimwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshFile;
import trimwright.mesh.MeshFiles;
import trimwright.mesh.MeshImport;
import trimwright.mesh.MeshUse;
import trimwright.mesh.Repair;
import trimwright.mesh.RepairResult;
import trimwright.mesh.Soundness;
import trimwright.mesh.StlWriter;
import trimwright.mesh.TriangleMesh;

/** Whether a mesh, or everything in a boat, is fit to be computed with. */
final class InspectCommand extends AnsweringCommand {

    private final PositionalParamSpec file = file("MESH|BOAT", "A mesh (STL, OBJ, 3MF), or a boat file (*.json).");
    private final OptionSpec build = choice(
            1,
            "--build",
            MeshUse.class,
            List.of(MeshUse.SEALED, MeshUse.SKIN, MeshUse.PRINTED),
            MeshUse::symbol,
            "For a mesh: how the hull is to be built, to judge it for that.");
    private final OptionSpec unit = choice(
            2,
            "--unit",
            LengthUnit.class,
            List.of(LengthUnit.values()),
            LengthUnit::symbol,
            "For a mesh: the unit of its numbers.");

    private final OptionSpec repair = option(
            3,
            "--repair",
            "OUT.stl",
            Path.class,
            "For a mesh: mend what can be mended without guessing, into a new file; the original stays as it is.");
    private final OptionSpec overwrite = flag(4, "--overwrite", "Replace that file if it is there.");
    private final WaterAndFills waterAndFills = new WaterAndFills(this);

    InspectCommand() {
        super(
                "inspect",
                "Says whether a mesh is closed, has one outside and is free of faults, where it is not, and what to do about"
                        + " it; of a boat also what each part weighs and displaces, what overlaps, and what sticks out.",
                "Exits 1 when the mesh is not sound or, with --build and for a boat, when it has faults that matter for how she"
                        + " is built. A skin may be open.",
                "",
                "Examples:",
                "  trimwright inspect heron-hull.stl",
                "  trimwright inspect heron-hull.stl --build skin --unit mm",
                "  trimwright inspect heron-hull.stl --repair heron-mended.stl",
                "  trimwright inspect heron.boat.json");
    }

    @Override
    Answer answer() {
        Path path = file.getValue();
        boolean isBoat = path.toString().toLowerCase(Locale.ROOT).endsWith(".json");
        for (OptionSpec option : List.of(build, unit, repair)) {
            if (isBoat && option.getValue() != null) {
                throw misuse(option.longestName() + " is for a mesh; a boat file says it itself. Leave it out.");
            }
        }
        if (!isBoat && waterAndFills.areGiven()) {
            throw misuse(
                    "--water and --fill are for a boat, and " + path + " is no boat file (*.json). Leave them out.");
        }
        return isBoat ? ofBoat(path) : ofMesh(path);
    }

    private Answer ofBoat(Path path) {
        LoadedBoat loaded = BoatFile.readLeniently(path);
        return BoatInspection.of(loaded, waterAndFills.applyTo(loaded.boat()));
    }

    private Answer ofMesh(Path path) {
        Optional<MeshUse> use = Optional.ofNullable(build.getValue());
        Optional<LengthUnit> told = Optional.ofNullable(unit.getValue());
        refuseRepairOntoItself(path);
        MeshFile read = MeshFiles.read(path);
        TriangleMesh mesh = MeshImport.AS_IS.apply(read.mesh(), told.or(read::unit));
        String unitWords = MeshReport.unit(told, read.unit());
        if (repair.getValue() == null) {
            MeshReport report = MeshReport.of(mesh, read.format(), unitWords, Soundness.of(mesh), use);
            return new MeshAnswer(path.toString(), report, read.findings());
        }
        RepairResult repaired = Repair.of(mesh);
        Path out = repair.getValue();
        StlWriter.write(out, repaired.mesh(), isGiven(overwrite));
        MeshReport report = MeshReport.of(repaired.mesh(), MeshFile.Format.STL_BINARY, "mm", repaired.after(), use);
        return new RepairAnswer(path.toString(), out.toString(), repaired, report, read.findings());
    }

    /** Not even {@code --overwrite} may cost the user the mesh that was mended. */
    private void refuseRepairOntoItself(Path mesh) {
        Path out = repair.getValue();
        if (out == null || !Files.exists(out) || !Files.exists(mesh)) {
            return;
        }
        boolean same;
        try {
            same = Files.isSameFile(mesh, out);
        } catch (IOException e) {
            throw misuse("--repair: cannot tell whether " + out + " is the mesh itself (" + e.getMessage()
                    + "). Name a file that is not there yet.");
        }
        if (same) {
            throw misuse("--repair takes a new file, and " + out + " is the mesh itself. Name another.");
        }
    }
}
