package trimwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.finding.Finding;
import trimwright.finding.Severity;
import trimwright.mesh.Bounds;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshFile;
import trimwright.mesh.MeshUse;
import trimwright.mesh.Shell;
import trimwright.mesh.Soundness;
import trimwright.mesh.TriangleMesh;

/**
 * A mesh looked over, in mm.
 *
 * @param format what kind of file it came from
 * @param unit how its numbers became mm, in words
 * @param soundness what was found
 * @param use what it is to be built as, where that is known
 * @param forUse what is to be said about it as that
 */
record MeshReport(
        MeshFile.Format format, String unit, Soundness soundness, Optional<MeshUse> use, List<Finding> forUse) {

    /** So many shells are listed, the largest; a mesh may have a million. */
    private static final int MOST_SHELLS = 1000;

    private static final double MM2_PER_CM2 = 100;
    private static final double MM3_PER_CM3 = 1000;

    static MeshReport of(
            TriangleMesh mesh, MeshFile.Format format, String unit, Soundness soundness, Optional<MeshUse> use) {
        return new MeshReport(
                format,
                unit,
                soundness,
                use,
                use.map(u -> soundness.againstBuild(mesh, u)).orElse(List.of()));
    }

    /** In words: which unit the numbers of a file were taken in, and why. */
    static String unit(Optional<LengthUnit> told, Optional<LengthUnit> stated) {
        if (told.isPresent()) {
            return told.get().symbol() + ", as told";
        }
        return stated.map(unit -> unit.symbol() + ", as the file states")
                .orElse("taken as mm, since the file states no unit");
    }

    /** Whether it is good for its build, where that is known; otherwise whether it is sound. */
    boolean good() {
        return use.map(u -> defects().stream().noneMatch(d -> MeshMatters.spoils(d.code(), u)))
                .orElse(soundness.sound());
    }

    /** What is wrong with it, by itself and for its build. */
    List<Finding> defects() {
        List<Finding> defects = new ArrayList<>(forUse);
        soundness.findings().stream().filter(f -> f.severity() != Severity.NOTE).forEach(defects::add);
        return defects;
    }

    /** What is worth knowing besides. */
    List<Finding> notes() {
        return soundness.findings().stream()
                .filter(f -> f.severity() == Severity.NOTE)
                .toList();
    }

    /** The keys of {@code inspect}, put to those that are there. */
    JsonObject json(JsonObject json) {
        json.text("format", format.name())
                .truth("sound", soundness.sound())
                .truth("closed", soundness.closed())
                .truth("oriented", soundness.oriented())
                .count("triangles", soundness.triangles())
                .count("vertices", soundness.vertices())
                .count("shells", soundness.shells().size())
                .number("areaCm2", soundness.areaMm2() / MM2_PER_CM2)
                .number("volumeCm3", soundness.volumeMm3().map(v -> v / MM3_PER_CM3))
                .vector("sizeMm", size(soundness.bounds()))
                .vector("fromMm", from(soundness.bounds()))
                .vector("toMm", to(soundness.bounds()))
                .list("defects", FindingJson.of(defects()))
                .list(
                        "shellList",
                        soundness.shells().stream()
                                .limit(MOST_SHELLS)
                                .map(MeshReport::json)
                                .toList());
        if (use.isPresent()) {
            json.text("build", use.get().symbol()).truth("goodForBuild", good());
        }
        return json;
    }

    private static JsonObject json(Shell shell) {
        JsonObject json = new JsonObject()
                .count("number", shell.number())
                .count("triangles", shell.triangles())
                .truth("closed", shell.closed())
                .truth("oriented", shell.oriented())
                .number("areaCm2", shell.areaMm2() / MM2_PER_CM2);
        if (shell.closed() && shell.oriented()) {
            json.number("volumeCm3", shell.volumeMm3() / MM3_PER_CM3);
        }
        return json.vector("fromMm", from(shell.bounds())).vector("toMm", to(shell.bounds()));
    }

    private static Vector3D size(Bounds b) {
        return new Vector3D(b.sizeX(), b.sizeY(), b.sizeZ());
    }

    private static Vector3D from(Bounds b) {
        return new Vector3D(b.minX(), b.minY(), b.minZ());
    }

    private static Vector3D to(Bounds b) {
        return new Vector3D(b.maxX(), b.maxY(), b.maxZ());
    }
}
