package trimwright.file;

import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import trimwright.boat.MeshShape;
import trimwright.mesh.LengthUnit;
import trimwright.mesh.MeshFile;
import trimwright.mesh.Soundness;

/** A mesh that a boat file names, in the boat's frame, with what its file said. Its soundness is looked into when asked for. */
public final class ImportedMesh {

    private final MeshShape shape;
    private final MeshFile.Format format;
    private final Optional<LengthUnit> fileUnit;
    private final FutureTask<Soundness> soundness;
    private Soundness quick;

    ImportedMesh(MeshShape shape, MeshFile.Format format, Optional<LengthUnit> fileUnit) {
        this.shape = shape;
        this.format = format;
        this.fileUnit = fileUnit;
        soundness = new FutureTask<>(() -> quickSoundness().thorough(shape.mesh()));
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
    public Soundness soundness() {
        soundness.run();
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return soundness.get();
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
        } catch (ExecutionException e) {
            throw thrown(e.getCause());
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** Begins to look into it in a second thread. */
    void lookAhead() {
        Thread looking = new Thread(soundness, "soundness of " + shape.file());
        looking.setDaemon(true);
        looking.start();
    }

    /** The same as far as it is quickly found: whether the mesh encloses a volume at all. */
    synchronized Soundness quickSoundness() {
        if (quick == null) {
            quick = Soundness.quick(shape.mesh());
        }
        return quick;
    }

    /** What was thrown in the second thread, such as for want of memory, as if it had been thrown here. */
    private static RuntimeException thrown(Throwable cause) {
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof RuntimeException e ? e : new IllegalStateException(cause);
    }
}
