package trimwright.file;

import java.util.Optional;
import trimwright.boat.MeshShape;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshFile;
import trimwright.mesh.Soundness;

/** A mesh that a boat file names, in the boat's frame, with what its file said. Its soundness is looked into when asked for. */
public final class ImportedMesh {

    private final MeshShape shape;
    private final MeshFile.Format format;
    private final Optional<LengthUnit> fileUnit;
    private Soundness soundness;
    private Soundness quick;

    ImportedMesh(MeshShape shape, MeshFile.Format format, Optional<LengthUnit> fileUnit) {
        this.shape = shape;
        this.format = format;
        this.fileUnit = fileUnit;
    }

    /** The mesh in the boat's frame, mm, with the name of its file and how it was imported. */
    public MeshShape shape() {
        return shape;
    }

    public MeshFile.Format format() {
        return format;
    }

    /** The unit that the file itself states. */
    public Optional<LengthUnit> fileUnit() {
        return fileUnit;
    }

    /** Whether the surface is closed and one-sided, with the places of its defects in the boat's frame. */
    public synchronized Soundness soundness() {
        if (soundness == null) {
            soundness = Soundness.of(shape.mesh());
        }
        return soundness;
    }

    /** The same as far as it is quickly found: whether the mesh encloses a volume at all. */
    synchronized Soundness quickSoundness() {
        if (quick == null) {
            quick = soundness != null ? soundness : Soundness.quick(shape.mesh());
        }
        return quick;
    }
}
