package trimwright.desktop;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Problem;
import trimwright.desktop.model.ReadingsDesk;
import trimwright.desktop.model.Recovery;
import trimwright.desktop.panes.ReadingsBox;
import trimwright.file.LoadedBoat;

/** Opening and saving readings, with all the questions that keep them from being lost. */
final class ReadingFiles implements ReadingsBox.Files {

    private static final Logger LOG = Logger.getLogger(ReadingFiles.class.getName());
    private static final String ENDING = ".pool.json";

    private final Stage stage;
    private final Desk desk;
    private final ReadingsDesk readings;
    private final Dialogs dialogs;

    ReadingFiles(Stage stage, Desk desk, ReadingsDesk readings, Dialogs dialogs) {
        this.stage = stage;
        this.desk = desk;
        this.readings = readings;
        this.dialogs = dialogs;
    }

    static boolean isReadings(Path file) {
        return file.toString().endsWith(ENDING);
    }

    @Override
    public void openReadings() {
        File chosen = chooser("Open readings").showOpenDialog(stage);
        if (chosen != null) {
            open(chosen.toPath());
        }
    }

    /** Opens readings after asking about those that are not saved. */
    void open(Path file) {
        if (mayLeave()) {
            readings.open(file).ifPresent(dialogs::problem);
        }
    }

    @Override
    public void saveReadings() {
        save();
    }

    /** Saves; asks for a name where there is none yet. Whether it was done. */
    boolean save() {
        Optional<Path> file = readings.readings().get().path();
        if (file.isEmpty()) {
            return saveAs();
        }
        if (readings.isChangedByOthers()) {
            return dialogs.saveDespiteOthers(file.get(), () -> told(readings.saveTo(file.get(), true)), this::saveAs);
        }
        return told(readings.saveTo(file.get(), true));
    }

    @Override
    public void saveReadingsAs() {
        saveAs();
    }

    boolean saveAs() {
        FileChooser chooser = chooser("Save the readings");
        chooser.setInitialFileName(readings.readings()
                .get()
                .path()
                .map(p -> p.getFileName().toString())
                .orElse("first" + ENDING));
        File chosen = chooser.showSaveDialog(stage);
        if (chosen == null) {
            return false;
        }
        Path typed = chosen.toPath();
        Path to = isReadings(typed) ? typed : typed.resolveSibling(typed.getFileName() + ENDING);
        // The chooser asked about the name as it was typed, not about the one with our ending.
        return told(readings.saveTo(to, to.equals(typed)));
    }

    private boolean told(Optional<String> refused) {
        refused.ifPresent(
                why -> dialogs.problem(new Problem("The readings were not saved", List.of(why), Optional.empty())));
        return refused.isEmpty();
    }

    /** Whether the readings at hand may be left: saved, or given up on purpose. */
    boolean mayLeave() {
        return !readings.unsaved().get()
                || dialogs.mayLeave(
                        "Save the readings?",
                        "There are readings that no file has yet as they are.",
                        this::save,
                        readings::forgetRecovery);
    }

    /** Asks about readings that a window left behind. */
    void offerLost(Recovery.Lost lost) {
        ButtonType take = new ButtonType("Take them up", ButtonData.YES);
        ButtonType drop = new ButtonType("Throw them away", ButtonData.NO);
        ButtonType later = new ButtonType("Ask again later", ButtonData.CANCEL_CLOSE);
        Optional<ButtonType> answer = dialogs.ask(
                "There are unsaved readings from last time",
                "The window ended without closing while readings of "
                        + lost.boatFile().getFileName() + " were not saved. Take them up again?",
                take,
                drop,
                later);
        if (answer.filter(take::equals).isPresent()) {
            LoadedBoat boat = desk.boat().get();
            if (boat != null && boat.path().toAbsolutePath().equals(lost.boatFile())) {
                takeUp(lost);
            } else {
                desk.open(lost.boatFile(), false, () -> takeUp(lost));
            }
        } else if (answer.filter(drop::equals).isPresent()) {
            forget(lost);
        }
    }

    private void takeUp(Recovery.Lost lost) {
        readings.takeRecovered(lost.text()).ifPresentOrElse(dialogs::problem, () -> forget(lost));
    }

    private static void forget(Recovery.Lost lost) {
        try {
            Recovery.forget(lost);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "kept readings could not be taken away", e);
        }
    }

    private FileChooser chooser(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter("Readings", "*" + ENDING),
                        new FileChooser.ExtensionFilter("All files", "*"));
        readings.readings()
                .get()
                .path()
                .or(() -> Optional.ofNullable(desk.path()))
                .map(p -> p.toAbsolutePath().getParent().toFile())
                .filter(File::isDirectory)
                .ifPresent(chooser::setInitialDirectory);
        return chooser;
    }
}
