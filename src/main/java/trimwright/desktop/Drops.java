package trimwright.desktop;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

/** Files that are dropped on the window: a boat, readings, or the mesh of a hull. */
final class Drops {

    private Drops() {}

    /** @param open what is done with the files, after the drop is over: it may ask */
    static void install(Scene scene, Consumer<List<Path>> open) {
        scene.setOnDragOver(e -> {
            if (e.getDragboard().hasFiles()) {
                e.acceptTransferModes(TransferMode.COPY);
            }
            e.consume();
        });
        scene.setOnDragDropped(e -> drop(e, open));
    }

    private static void drop(DragEvent e, Consumer<List<Path>> open) {
        List<File> dropped = e.getDragboard().getFiles();
        e.setDropCompleted(!dropped.isEmpty());
        e.consume();
        if (!dropped.isEmpty()) {
            List<Path> files = dropped.stream().map(File::toPath).toList();
            Platform.runLater(() -> open.accept(files));
        }
    }
}
