package trimwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshFile;
import trimwright.mesh.MeshFiles;
import trimwright.mesh.MeshImport;
import trimwright.mesh.MeshUse;
import trimwright.mesh.Soundness;
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

    InspectCommand() {
        super(
                "inspect",
                "Says whether a mesh is closed, has one outside and is free of faults, where it is not, and what to do about"
                        + " it; of a boat also what each part weighs and displaces, what overlaps, and what sticks out.",
                "Examples:",
                "  trimwright inspect heron-hull.stl",
                "  trimwright inspect heron-hull.stl --build skin --unit mm",
                "  trimwright inspect heron.boat.json");
    }

    @Override
    Answer answer() {
        Path path = file.getValue();
        return ofMesh(path);
    }

    private Answer ofMesh(Path path) {
        Optional<MeshUse> use = Optional.ofNullable(build.getValue());
        Optional<LengthUnit> told = Optional.ofNullable(unit.getValue());
        MeshFile read = MeshFiles.read(path);
        TriangleMesh mesh = MeshImport.AS_IS.apply(read.mesh(), told.or(read::unit));
        MeshReport report =
                MeshReport.of(mesh, read.format(), MeshReport.unit(told, read.unit()), Soundness.of(mesh), use);
        return new MeshAnswer(path.toString(), report, read.findings());
    }
}
