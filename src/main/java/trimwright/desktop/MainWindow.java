package trimwright.desktop;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import trimwright.desktop.model.Background;
import trimwright.desktop.model.Derived;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Job;
import trimwright.desktop.model.Levers;
import trimwright.desktop.model.NewHull;
import trimwright.desktop.model.PlanDesk;
import trimwright.desktop.model.Pose;
import trimwright.desktop.model.Problem;
import trimwright.desktop.model.Recovery;
import trimwright.desktop.model.Settings;
import trimwright.desktop.model.Trial;
import trimwright.desktop.panes.AfloatPane;
import trimwright.desktop.panes.BallastPane;
import trimwright.desktop.panes.DivePane;
import trimwright.desktop.panes.NewHullPane;
import trimwright.desktop.panes.PartsPane;
import trimwright.desktop.panes.PoolPane;
import trimwright.desktop.panes.ReadingsPane;
import trimwright.desktop.panes.StandPane;
import trimwright.desktop.panes.Ui;
import trimwright.desktop.panes.VerdictBand;
import trimwright.desktop.tank3d.FlatPool;
import trimwright.desktop.tank3d.PoolView;
import trimwright.desktop.tank3d.Tank;
import trimwright.desktop.tank3d.View;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.MeshFile;
import trimwright.report.Measure;
import trimwright.statics.Condition;
import trimwright.statics.DiveRun;

/** The window: the verdict on top, the jobs at the left, the pool in the middle, the readings at the right. */
final class MainWindow {

    private static final Logger LOG = Logger.getLogger(MainWindow.class.getName());
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    private final Stage stage;
    private final Desk desk;
    private final Settings settings;
    private final Dialogs dialogs;
    private final Files files;
    private final MeshParts meshParts;
    private final BorderPane root = new BorderPane();
    private final PoolView pool;
    private final Trial trial;
    private final PoolPane poolPane;
    private final PartsPane parts;
    private final AfloatPane afloat;
    private final DivePane dive;
    private final StandPane stand;
    private final BallastPane ballast;
    private final Derived<DiveRun> diveRun;
    private final Derived<Levers> levers;
    private final PlanDesk plans;
    private final PoolTestJob poolTest;
    private final ReadingsPane readings;
    private final VerdictBand verdict;
    private final Map<Job, Node> jobPanes = new EnumMap<>(Job.class);
    private final ToggleGroup jobs = new ToggleGroup();
    private final ScrollPane jobScroll = new ScrollPane();
    private Arrangement arrangement;

    MainWindow(Stage stage, Desk desk, Settings settings, Executor workers) {
        this.stage = stage;
        this.desk = desk;
        this.settings = settings;
        dialogs = new Dialogs(stage, root);
        files = new Files(stage, desk, settings, dialogs, this::openOther);
        pool = has3d() ? new Tank(workers, Platform::runLater) : new FlatPool(workers, Platform::runLater);
        Background reading = new Background(workers, Platform::runLater);
        meshParts = new MeshParts(desk, files, dialogs, reading, pool);
        trial = new Trial(desk, workers, Platform::runLater);
        poolPane = new PoolPane(desk, pool, trial, settings);
        parts = new PartsPane(desk, this::choosePart);
        afloat = new AfloatPane(desk, trial, pool);
        readings = new ReadingsPane(desk);
        verdict = new VerdictBand(desk);
        jobPanes.put(Job.LOAD, parts);
        jobPanes.put(Job.AFLOAT, afloat);
        diveRun = new Derived<>(
                desk, workers, Platform::runLater, boat -> DiveRun.of(Condition.of(boat), DivePane.STEPS));
        dive = new DivePane(desk, diveRun);
        jobPanes.put(Job.DIVE, dive);
        levers = new Derived<>(desk, workers, Platform::runLater, Levers::of);
        stand = new StandPane(desk, levers);
        jobPanes.put(Job.STAND, stand);
        plans = new PlanDesk(desk, workers, Platform::runLater);
        ballast = new BallastPane(desk, plans, pool);
        jobPanes.put(Job.BALLAST, ballast);
        poolTest = PoolTestJob.of(stage, desk, plans, pool, dialogs, workers, Recovery.ofReadings(settings.folder()));
        files.alsoAsk(poolTest.files()::mayLeave);
        jobPanes.put(Job.POOL_TEST, poolTest.pane());
        desk.onProblem(dialogs::problem);
    }

    void show() {
        root.getStyleClass().add("window");
        Menus menus = new Menus(desk, settings, files, this, dialogs);
        root.setTop(Ui.column(0, menus.bar(), verdict));
        arrangement = new Arrangement(root, rail(), jobScroll, poolPane, readings);
        jobScroll.setFitToWidth(true);
        jobScroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        jobScroll.getStyleClass().addAll("plain-scroll", "job-pane");
        Scene scene = new Scene(root, WIDTH, HEIGHT);
        scene.getStylesheets().add(MainWindow.class.getResource("window.css").toExternalForm());
        Drops.install(scene, files::openDropped);
        Keys.install(scene, desk, this, poolPane, pool, parts);
        choose(Job.LOAD);
        restyle();
        stage.setScene(scene);
        stage.setMinWidth(900);
        stage.setMinHeight(600);
        stage.setOnCloseRequest(e -> {
            if (!files.mayLeave()) {
                e.consume();
            }
        });
        stage.focusedProperty().addListener((o, was, now) -> {
            if (now) {
                files.lookForOthers();
            }
        });
        desk.boat().addListener((o, was, now) -> retitle());
        desk.unsaved().addListener((o, was, now) -> retitle());
        retitle();
        stage.show();
        Arrangement.fit(stage);
        takeKeys();
    }

    private VBox rail() {
        VBox rail = new VBox();
        rail.getStyleClass().add("rail");
        for (Job job : Job.values()) {
            ToggleButton button = new ToggleButton(job.title());
            button.setUserData(job);
            button.setId("job-" + job.name().toLowerCase(Locale.ROOT));
            button.setToggleGroup(jobs);
            button.setMaxWidth(Double.MAX_VALUE);
            button.setTooltip(Ui.tip(job.purpose() + ", key F" + (job.ordinal() + 1)));
            rail.getChildren().add(button);
        }
        jobs.selectedToggleProperty().addListener((o, was, now) -> {
            if (now == null) {
                jobs.selectToggle(was);
            } else {
                enter((Job) now.getUserData());
            }
        });
        return rail;
    }

    /** Turns to a job. */
    void choose(Job job) {
        jobs.getToggles().stream()
                .filter(t -> t.getUserData() == job)
                .findFirst()
                .ifPresent(jobs::selectToggle);
    }

    private void enter(Job job) {
        showReadings(true);
        desk.lookAt(null);
        ballast.left();
        afloat.left();
        pool.onPointed(Optional.empty());
        poolPane.hint(job);
        poolPane.say("");
        poolTest.pane().left();
        diveRun.setLookedAt(job == Job.DIVE);
        levers.setLookedAt(job == Job.STAND);
        pool.trial(job == Job.AFLOAT);
        lead(Ui.column(6, Ui.words(job.purpose(), "purpose"), jobPanes.get(job)));
        if (job == Job.DIVE) {
            dive.entered();
        } else if (job == Job.BALLAST) {
            ballast.entered();
        } else if (job == Job.POOL_TEST) {
            poolTest.pane().entered();
        }
    }

    /** Takes up theme and units as the settings say. */
    void restyle() {
        root.getStyleClass().remove("dark");
        if (settings.isDark()) {
            root.getStyleClass().add("dark");
        }
        pool.setDark(settings.isDark());
        double textPx = Math.round(13 * settings.number("textPercent", 100) / 100);
        root.setStyle("-fx-font-size: " + textPx + "px;");
        arrangement.setTextPx(textPx);
        dialogs.setTextPx(textPx);
        Measure measure = settings.measure();
        trial.setMeasure(measure);
        poolPane.setMeasure(measure);
        parts.setMeasure(measure);
        afloat.setMeasure(measure);
        dive.setMeasure(measure);
        stand.setMeasure(measure);
        ballast.setMeasure(measure);
        poolTest.pane().setMeasure(measure);
        readings.setMeasure(measure);
        verdict.setMeasure(measure);
    }

    private void retitle() {
        String name = desk.boat().get() == null ? "" : desk.boat().get().boat().name() + "  ";
        stage.setTitle((desk.unsaved().get() ? "● " : "") + name + "– Trimwright");
    }

    void takeKeys() {
        stage.toFront();
        stage.requestFocus();
        pool.node().requestFocus();
    }

    Stage stage() {
        return stage;
    }

    Desk desk() {
        return desk;
    }

    Files files() {
        return files;
    }

    PoolView pool() {
        return pool;
    }

    PoolPane poolPane() {
        return poolPane;
    }

    PartsPane parts() {
        return parts;
    }

    /** Closes the window, unless there is unsaved work to be kept. */
    void close() {
        if (files.mayLeave()) {
            stage.close();
        }
    }

    /** Opens a boat file. */
    void open(Path file, boolean sample) {
        if (Files.isBoat(file)) {
            files.open(file, sample);
        } else {
            newHull(file);
        }
    }

    /** What is done with a file that is no boat: readings are opened, anything else may be the mesh of a hull. */
    private void openOther(Path file) {
        if (ReadingFiles.isReadings(file)) {
            choose(Job.POOL_TEST);
            poolTest.files().open(file);
        } else {
            meshParts.read(
                    file,
                    mesh -> meshParts.ask(file, () -> guide(NewHull.guess(file, mesh)), () -> newPart(file, mesh)));
        }
    }

    PoolTestJob poolTest() {
        return poolTest;
    }

    /** Leads from the mesh of a hull to a boat. */
    void newHull(Path file) {
        meshParts.read(file, mesh -> guide(NewHull.guess(file, mesh)));
    }

    private void choosePart() {
        files.chooseMesh("The mesh of the part").ifPresent(file -> meshParts.read(file, mesh -> newPart(file, mesh)));
    }

    /** Leads from a mesh to a part of the boat at hand. */
    private void newPart(Path file, MeshFile mesh) {
        choose(Job.LOAD);
        meshParts.begin(file, mesh, settings.measure(), pane -> {
            if (pane == null) {
                enter(Job.LOAD);
            } else {
                lead(pane);
            }
        });
    }

    private void lead(Region pane) {
        pane.getStyleClass().add("side-pane");
        jobScroll.setContent(pane);
        jobScroll.setVvalue(0);
    }

    private void guide(NewHull guessed) {
        desk.lookAt(null);
        pool.trial(false);
        poolPane.hint(null);
        poolPane.say("Drag turns the view · wheel nears · click the hull where the water is to stand");
        lead(new NewHullPane(guessed, settings.measure(), pool, this::make, this::leaveNew));
        showReadings(false);
        pool.look(View.SIDE);
    }

    /** Verdict and readings are of the boat at hand, and would mislead while a new one is made. */
    private void showReadings(boolean shown) {
        verdict.setVisible(shown);
        verdict.setManaged(shown);
        readings.setVisible(shown);
        readings.setManaged(shown);
    }

    private Optional<String> make(NewHull hull) {
        if (!files.mayLeave()) {
            return Optional.empty();
        }
        try {
            Path file = hull.write();
            files.open(file, false);
            choose(Job.LOAD);
            enter(Job.LOAD);
            return Optional.empty();
        } catch (UnusableInputException e) {
            return Optional.of(String.join(" ", Problem.of("", e).lines()));
        }
    }

    private void leaveNew() {
        if (desk.boat().get() != null) {
            pool.showBoat(desk.boat().get().boat());
            pool.show(Pose.of(desk.flotation().get(), ""));
        }
        enter((Job) jobs.getSelectedToggle().getUserData());
    }

    /** Work that an earlier window left behind. */
    void offerLost(Recovery.Lost lost) {
        files.offerLost(lost);
    }

    /** A fault of the program: told, logged, and the work kept. */
    void unexpected(Throwable e) {
        LOG.log(Level.SEVERE, "unexpected", e);
        Problem problem = Problem.of("Something went wrong inside the program", e);
        dialogs.problem(problem);
    }

    /** Whether the boat can be drawn in 3D; the property {@code trimwright.flat} says that she shall not be. */
    static boolean has3d() {
        return Platform.isSupported(ConditionalFeature.SCENE3D) && !Boolean.getBoolean("trimwright.flat");
    }
}
