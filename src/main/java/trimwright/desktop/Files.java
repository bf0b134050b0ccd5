package trimwright.desktop;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Problem;
import trimwright.desktop.model.Recovery;
import trimwright.desktop.model.Settings;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.finding.UnusableInputException;
import trimwright.report.picture.Pictures;

/** Opening and saving, with all the questions that keep work from being lost. */
final class Files {

    private static final Logger LOG = Logger.getLogger(Files.class.getName());
    private static final String BOAT_ENDING = ".boat.json";
    private static final String PICTURE_ENDING = ".png";

    private final Stage stage;
    private final Desk desk;
    private final Settings settings;
    private final Dialogs dialogs;
    private final Consumer<Path> newHull;
    private BooleanSupplier others = () -> true;
    private final OtherPrograms otherPrograms;

    /** @param newHull what is done with a file that is no boat file: it may be the mesh of a hull */
    Files(Stage stage, Desk desk, Settings settings, Dialogs dialogs, Consumer<Path> newHull) {
        this.stage = stage;
        this.desk = desk;
        this.settings = settings;
        this.dialogs = dialogs;
        this.newHull = newHull;
        otherPrograms = new OtherPrograms(desk, dialogs);
    }

    /** Who else is asked before the boat is left, after her. */
    void alsoAsk(BooleanSupplier mayLeave) {
        others = mayLeave;
    }

    /** Opens a boat file without asking for unsaved work. */
    void open(Path file, boolean sample) {
        open(() -> BoatFile.read(file), file, sample);
    }

    /** The same with a boat that is being read already. */
    void open(Callable<LoadedBoat> read, Path file, boolean sample) {
        desk.open(read, sample, () -> {
            otherPrograms.opened();
            if (!sample) {
                settings.opened(file);
            }
        });
    }

    /** Opens what was chosen or dropped, after asking for unsaved work. */
    void openAsking(Path file) {
        if (isBoat(file)) {
            if (mayLeave()) {
                open(file, false);
            }
            return;
        }
        newHull.accept(file);
    }

    /**
     * Opens what was dropped: one file, or a boat together with her meshes, which are read from where her file says. More than that would leave open which
     * is meant.
     */
    void openDropped(List<Path> dropped) {
        List<Path> boats = dropped.stream().filter(Files::isBoat).toList();
        boolean sheAndHers = boats.size() == 1 && dropped.stream().noneMatch(ReadingFiles::isReadings);
        if (dropped.size() == 1) {
            openAsking(dropped.get(0));
        } else if (sheAndHers) {
            openAsking(boats.get(0));
        } else {
            String names = dropped.stream().map(f -> f.getFileName().toString()).collect(Collectors.joining(", "));
            dialogs.problem(new Problem(
                    "Drop one file at a time",
                    List.of(names
                            + ": none of these was opened. One boat at a time is at hand; drop the one you mean."),
                    Optional.empty()));
        }
    }

    /** Opens one of the boats opened lately. One that is gone is told, and taken from the list. */
    void openRecent(Path file) {
        if (java.nio.file.Files.exists(file)) {
            openAsking(file);
            return;
        }
        settings.gone(file);
        dialogs.problem(new Problem(
                "This boat is no longer there",
                List.of(file
                        + " was moved, renamed or deleted, or its disk is not connected. It was taken from the list;"
                        + " where it is elsewhere now, open it from there."),
                Optional.empty()));
    }

    static boolean isBoat(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".json") && !ReadingFiles.isReadings(file);
    }

    void chooseAndOpen() {
        FileChooser chooser = chooser("Open a boat");
        File chosen = chooser.showOpenDialog(stage);
        if (chosen != null) {
            openAsking(chosen.toPath());
        }
    }

    /** A mesh, chosen in the folder of the boat at hand. */
    Optional<Path> chooseMesh(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter("Meshes", "*.stl", "*.obj", "*.3mf"),
                        new FileChooser.ExtensionFilter("All files", "*"));
        chooser.setInitialDirectory(folder());
        return Optional.ofNullable(chooser.showOpenDialog(stage)).map(File::toPath);
    }

    private FileChooser chooser(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter("Boat files", "*.boat.json"),
                        new FileChooser.ExtensionFilter("Meshes", "*.stl", "*.obj", "*.3mf"),
                        new FileChooser.ExtensionFilter("All files", "*"));
        chooser.setInitialDirectory(folder());
        return chooser;
    }

    /** The folder of the boat at hand; null where there is none, which leaves it to the system. */
    private File folder() {
        if (desk.path() == null) {
            return null;
        }
        File folder = desk.path().toAbsolutePath().getParent().toFile();
        return folder.isDirectory() ? folder : null;
    }

    /** Saves; asks for a name where there is none yet. Whether it was done. */
    boolean save() {
        if (desk.boat().get() == null) {
            return true;
        }
        if (desk.needsNewFile()) {
            return saveAs();
        }
        if (desk.isChangedByOthers()) {
            return dialogs.saveDespiteOthers(desk.path(), () -> told(desk.save()), this::saveAs);
        }
        return told(desk.save());
    }

    /** Saves to a file that is chosen. */
    boolean saveAs() {
        FileChooser chooser = chooser("Save the boat");
        chooser.setInitialFileName(
                desk.path() == null
                        ? "boat" + BOAT_ENDING
                        : desk.path().getFileName().toString());
        File chosen = chooser.showSaveDialog(stage);
        return chosen != null && saveTo(chosen.toPath());
    }

    /** Saves to a file that the chooser has already asked about. */
    boolean saveTo(Path chosen) {
        Path to = chosen.toString().endsWith(BOAT_ENDING)
                ? chosen
                : chosen.resolveSibling(chosen.getFileName() + BOAT_ENDING);
        // The chooser asked about the name as it was typed, not about the one with our ending.
        boolean done = told(desk.saveTo(to, to.equals(chosen)));
        if (done) {
            settings.opened(to);
        }
        return done;
    }

    /** Saves a picture to a file that is chosen. */
    void savePicture(BufferedImage picture) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Save a picture");
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Pictures", "*.png"));
        chooser.setInitialDirectory(folder());
        chooser.setInitialFileName(freeName());
        File chosen = chooser.showSaveDialog(stage);
        if (chosen != null) {
            savePictureTo(picture, chosen.toPath());
        }
    }

    /** A name that is not taken: nobody has to be asked whether to replace an earlier picture. */
    private String freeName() {
        String boat =
                desk.path() == null ? "boat" : stem(desk.path().getFileName().toString());
        String name = boat + PICTURE_ENDING;
        for (int n = 2; folder() != null && new File(folder(), name).exists(); n++) {
            name = boat + "-" + n + PICTURE_ENDING;
        }
        return name;
    }

    private static String stem(String name) {
        return name.endsWith(BOAT_ENDING) ? name.substring(0, name.length() - BOAT_ENDING.length()) : name;
    }

    /** Saves a picture to a file that the chooser has already asked about. Whether it was done. */
    boolean savePictureTo(BufferedImage picture, Path chosen) {
        boolean ended = chosen.toString().toLowerCase(Locale.ROOT).endsWith(PICTURE_ENDING);
        Path to = ended ? chosen : chosen.resolveSibling(chosen.getFileName() + PICTURE_ENDING);
        try {
            // The chooser asked about the name as it was typed, not about the one with our ending.
            Pictures.writePng(picture, to, ended);
            return true;
        } catch (UnusableInputException e) {
            dialogs.problem(Problem.of("The picture was not saved", e));
            return false;
        }
    }

    private boolean told(Optional<String> refused) {
        refused.ifPresent(
                why -> dialogs.problem(new Problem("The boat was not saved", List.of(why), Optional.empty())));
        return refused.isEmpty();
    }

    /** Whether the boat at hand, and what belongs to her, may be left: saved, or given up on purpose. */
    boolean mayLeave() {
        return mayLeaveBoat() && others.getAsBoolean();
    }

    private boolean mayLeaveBoat() {
        return !desk.unsaved().get()
                || dialogs.mayLeave(
                        "Save what you changed?",
                        "The boat has changes that her file does not have: "
                                + desk.undoName().orElse("a new boat") + ".",
                        this::save,
                        desk::forgetRecovery);
    }

    /** Looks whether another program has written to her file or her meshes. */
    void lookForOthers() {
        otherPrograms.look();
    }

    /** Asks about work that a window left behind. */
    void offerLost(Recovery.Lost lost) {
        ButtonType take = new ButtonType("Take it up", ButtonData.YES);
        ButtonType drop = new ButtonType("Throw it away", ButtonData.NO);
        ButtonType later = new ButtonType("Ask again later", ButtonData.CANCEL_CLOSE);
        Optional<ButtonType> answer = dialogs.ask(
                "There is unsaved work from last time",
                "The window ended without closing while " + lost.boatFile().getFileName()
                        + " had changes that were not saved. Take them up again?",
                take,
                drop,
                later);
        try {
            if (answer.filter(take::equals).isPresent()) {
                LoadedBoat saved = BoatFile.read(lost.boatFile());
                desk.takeRecovered(saved, BoatFile.edited(saved, lost.text()));
                otherPrograms.opened();
                Recovery.forget(lost);
            } else if (answer.filter(drop::equals).isPresent()) {
                Recovery.forget(lost);
            }
        } catch (UnusableInputException e) {
            desk.problem("The unsaved work could not be taken up; it stays in " + lost.kept(), e);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "kept work could not be taken away", e);
        }
    }
}
