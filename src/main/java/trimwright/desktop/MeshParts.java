package trimwright.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.scene.layout.Region;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.desktop.model.Background;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.MeshPart;
import trimwright.desktop.panes.MeshPartPane;
import trimwright.desktop.tank3d.PoolView;
import trimwright.file.LoadedBoat;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.MeshFile;
import trimwright.mesh.MeshFiles;
import trimwright.report.Measure;

/** Meshes that are opened: hulls of new boats, and parts of the boat at hand. */
final class MeshParts {

    private static final ButtonType SAVE = new ButtonType("Save her", ButtonData.YES);
    private static final ButtonType NEW_BOAT = new ButtonType("The hull of a new boat", ButtonData.OTHER);
    private static final ButtonType NEW_PART = new ButtonType("A part of this boat", ButtonData.YES);

    private final Desk desk;
    private final Files files;
    private final Dialogs dialogs;
    private final Background meshes;
    private final PoolView pool;

    MeshParts(Desk desk, Files files, Dialogs dialogs, Background meshes, PoolView pool) {
        this.desk = desk;
        this.files = files;
        this.dialogs = dialogs;
        this.meshes = meshes;
        this.pool = pool;
    }

    /** Reads a mesh, and hands it over. */
    void read(Path file, Consumer<MeshFile> then) {
        meshes.ask(
                () -> MeshFiles.read(file),
                then,
                e -> desk.problem("This is neither a boat file nor a mesh that can be read", e));
    }

    /**
     * Asks what a mesh is that was dropped or opened.
     *
     * @param hull does what is done with the hull of a new boat
     * @param part does what is done with a part of the boat at hand
     */
    void ask(Path file, Runnable hull, Runnable part) {
        if (desk.boat().get() == null) {
            hull.run();
            return;
        }
        Optional<ButtonType> answer = dialogs.ask(
                "What is " + file.getFileName() + "?",
                "It can be the hull of a new boat, or a part of "
                        + desk.boat().get().boat().name() + ".",
                NEW_BOAT,
                NEW_PART,
                Dialogs.STAY);
        answer.filter(NEW_BOAT::equals).ifPresent(b -> hull.run());
        answer.filter(NEW_PART::equals).ifPresent(b -> part.run());
    }

    /**
     * Leads from a mesh to a part.
     *
     * @param show takes the pane that leads; null when it is done
     */
    void begin(Path file, MeshFile mesh, Measure measure, Consumer<Region> show) {
        if (desk.flotation().get() == null || !hasFile()) {
            return;
        }
        Boat boat = desk.boat().get().boat();
        show.accept(new MeshPartPane(
                MeshPart.guess(boat, file, mesh),
                boat,
                middle(),
                measure,
                pool,
                (part, complain) -> add(part, show, complain),
                () -> end(show)));
    }

    /** A mesh lies beside the boat file that names it: there must be one. */
    private boolean hasFile() {
        return !desk.needsNewFile() || isToBeSaved() && files.saveAs();
    }

    private boolean isToBeSaved() {
        return dialogs.ask(
                        "Save the boat first?",
                        "A mesh lies in the folder of the boat file that names it, and this boat has no file of yours yet.",
                        SAVE,
                        Dialogs.STAY)
                .filter(SAVE::equals)
                .isPresent();
    }

    private Vector3D middle() {
        return desk.flotation().get().condition().volumeCentroidMm();
    }

    private void add(MeshPart part, Consumer<Region> show, Consumer<String> complain) {
        String id = part.id(desk.boat().get().boat());
        Path boatFile = desk.path();
        Vector3D at = middle();
        desk.editAside(
                "add " + id,
                boat -> with(boat, part, boatFile, at),
                refused -> refused.ifPresentOrElse(complain, () -> {
                    end(show);
                    desk.selected().set(id);
                }));
    }

    private static LoadedBoat with(LoadedBoat boat, MeshPart part, Path boatFile, Vector3D at) {
        MeshPart.Brought brought = part.bring(boatFile);
        try {
            return boat.plus(List.of(part.part(boat.boat(), brought.name(), at)));
        } catch (UnusableInputException e) {
            brought.takeBack();
            throw e;
        }
    }

    private void end(Consumer<Region> show) {
        pool.extra(List.of(), true);
        show.accept(null);
    }
}
