package trimwright.file;

import java.util.Optional;
import trimwright.boat.MeshShape;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshFile;

/** A mesh that a boat file names, in the boat's frame, with what its file said. */
public final class ImportedMesh {

    private final MeshShape shape;
    private final MeshFile.Format format;
    private final Optional<LengthUnit> fileUnit;

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
}
