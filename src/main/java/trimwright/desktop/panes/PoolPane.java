package trimwright.desktop.panes;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import javafx.collections.SetChangeListener;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Part;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Job;
import trimwright.desktop.model.Pose;
import trimwright.desktop.model.Settings;
import trimwright.desktop.model.Trial;
import trimwright.desktop.tank3d.HullLook;
import trimwright.desktop.tank3d.PoolView;
import trimwright.desktop.tank3d.View;
import trimwright.immersion.WaterPlane;
import trimwright.report.Measure;
import trimwright.statics.Flotation;

/** The pool with the buttons that lie over it, and a line that says what is shown. */
public final class PoolPane extends StackPane {

    private static final String FLAT = "This machine gives the window no 3D, so she is shown as a picture."
            + " A newer graphics driver may bring it. Pick parts in the list, and nudge them with the arrow keys.";

    /** The share of the pool's width that the button in the line of words takes at most. */
    private static final double ROOM_FOR_BUTTON = 0.35;

    private final Desk desk;
    private final PoolView pool;
    private final Trial trial;
    private final Region sky = new Region();
    private final Label caption = new Label();
    private final Button back = new Button("Back to her as loaded");
    private final HBox row = new HBox(8, caption, back);
    private final VBox note = new VBox(6, row);
    private final HintCard hint;
    private final ToggleGroup looks = new ToggleGroup();
    private Measure measure = Measure.METRIC;
    private String dragNote = "";
    private String guide = "";

    public PoolPane(Desk desk, PoolView pool, Trial trial, Settings settings) {
        this.desk = desk;
        this.pool = pool;
        this.trial = trial;
        hint = new HintCard(settings);
        getStyleClass().add("pool");
        sky.getStyleClass().add("pool-sky");
        // It lies behind what moves: drawn anew with every frame it would take a software renderer a fifth of the time.
        sky.setCache(true);
        note.getStyleClass().add("pool-note");
        row.setAlignment(Pos.CENTER_LEFT);
        widthProperty().addListener((o, was, now) -> arrangeNote());
        back.widthProperty().addListener((o, was, now) -> arrangeNote());
        note.setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
        note.setId("pool-note");
        back.setMinWidth(USE_PREF_SIZE);
        caption.setWrapText(true);
        caption.setMinHeight(USE_PREF_SIZE);
        back.setOnAction(e -> desk.lookAt(null));
        FlowPane bar = new FlowPane(6, 6, views(), hulls(), marks(), cut());
        bar.getStyleClass().add("pool-bar");
        bar.setPickOnBounds(false);
        bar.setMaxHeight(USE_PREF_SIZE);
        StackPane.setAlignment(bar, Pos.TOP_LEFT);
        StackPane.setAlignment(note, Pos.BOTTOM_LEFT);
        StackPane.setAlignment(hint, Pos.BOTTOM_RIGHT);
        // Over the line of words, which is higher where the text is large.
        note.heightProperty()
                .addListener((o, was, now) -> StackPane.setMargin(hint, new Insets(0, 14, now.doubleValue() + 20, 14)));
        getChildren().addAll(sky, pool.node(), bar, note, hint);
        bar.setVisible(pool.isTurnable());
        desk.boat().addListener((o, was, now) -> {
            // Saved to another file she is the same boat, and her marks stay.
            if (was == null || !was.boat().equals(now.boat())) {
                pool.showBoat(now.boat());
            }
        });
        desk.flotation().addListener((o, was, now) -> showPose());
        desk.looked().addListener((o, was, now) -> showPose());
        desk.selected().addListener((o, was, now) -> {
            pool.pick(now);
            showNote();
        });
        pool.tell(new Hands());
        desk.locked().addListener((SetChangeListener<String>) c -> showNote());
        trial.tried().addListener((o, was, now) -> showNote());
        desk.whole()
                .addListener((o, was, now) ->
                        pool.misfits(now == null ? List.of() : desk.misfits().get()));
        showNote();
    }

    /** What the hand does in the pool, done to the boat. */
    private final class Hands implements PoolView.Handed {
        @Override
        public void picked(String id) {
            desk.selected().set(id);
        }

        @Override
        public boolean mayDrag(String id) {
            return desk.selectedPart()
                    .filter(p ->
                            p.id().equals(id) && !p.isHull() && !desk.locked().contains(id))
                    .isPresent();
        }

        @Override
        public void dragging(String id, Vector3D byMm, double stepMm) {
            pool.misfits(List.of());
            dragNote = id + ": " + way(byMm) + "   (steps of " + measure.length(stepMm)
                    + (stepMm == 1 ? "; Alt for finer" : "") + ")";
            desk.moves().drag(id, byMm);
            showNote();
        }

        @Override
        public void dragged(String id, Vector3D byMm) {
            dragNote = "";
            desk.moves().dragged(id, byMm, refused -> {
                refused.ifPresent(why -> dragNote = "▲ " + why);
                pool.showBoat(desk.boat().get().boat());
                showNote();
            });
        }

        @Override
        public void tried(WaterPlane plane, boolean released) {
            trial.at(plane, !released);
        }
    }

    /** Where the button would leave the words too little room beside it, it goes below them. */
    private void arrangeNote() {
        boolean below = back.getWidth() > ROOM_FOR_BUTTON * getWidth();
        if (below != note.getChildren().contains(back)) {
            row.getChildren().remove(back);
            note.getChildren().remove(back);
            (below ? note : row).getChildren().add(back);
        }
    }

    public void setMeasure(Measure other) {
        measure = other;
        showNote();
    }

    /** Says this in place of all else; an empty text ends it. */
    public void say(String text) {
        guide = text;
        showNote();
    }

    /** The hint for a job, unless it was read; none for null. */
    public void hint(Job job) {
        hint.show(job);
    }

    /** Makes hints that were read come again. */
    public void hintAgain() {
        hint.again();
    }

    /** The pool as it is seen, without what lies over it. */
    public BufferedImage picture() {
        Paint behind = sky.getBackground() == null
                ? Color.WHITE
                : sky.getBackground().getFills().get(0).getFill();
        return PoolPicture.of(pool.node(), behind);
    }

    private HBox views() {
        HBox box = new HBox();
        box.getStyleClass().add("segments");
        int key = 1;
        for (View view : View.values()) {
            Button button = Ui.button(view.title(), view.title() + " view, key " + key++, () -> pool.look(view));
            button.setId("view-" + view.name().toLowerCase(Locale.ROOT));
            box.getChildren().add(button);
        }
        box.getChildren().add(Ui.button("Fit", "The whole boat, key F", pool::fit));
        return box;
    }

    private HBox hulls() {
        HBox box = new HBox();
        box.getStyleClass().add("segments");
        for (HullLook look : HullLook.values()) {
            ToggleButton button = new ToggleButton(look.title());
            button.setUserData(look);
            button.setToggleGroup(looks);
            button.setTooltip(Ui.tip("Hull as " + look.title().toLowerCase(Locale.ROOT) + ", key H for the next"));
            button.setSelected(look == HullLook.GLASS);
            box.getChildren().add(button);
        }
        looks.selectedToggleProperty().addListener((o, was, now) -> {
            if (now == null) {
                looks.selectToggle(was);
            } else {
                pool.look((HullLook) now.getUserData());
            }
        });
        return box;
    }

    /** The hull the next way. */
    public void nextHullLook() {
        int now = looks.getToggles().indexOf(looks.getSelectedToggle());
        looks.selectToggle(looks.getToggles().get((now + 1) % looks.getToggles().size()));
    }

    private HBox marks() {
        ToggleButton button = new ToggleButton("B G M");
        button.setTooltip(Ui.tip("Buoyancy, weight and metacentre with their labels"));
        button.setSelected(true);
        button.selectedProperty().addListener((o, was, now) -> pool.showMarks(now));
        HBox box = new HBox(button);
        box.getStyleClass().add("segments");
        return box;
    }

    private HBox cut() {
        Slider slider = new Slider(0, 1, 0);
        slider.setPrefWidth(90);
        slider.setId("cut");
        slider.setAccessibleText("How much of the near side is cut away");
        slider.setTooltip(Ui.tip("Cuts away the near side, to look inside"));
        slider.valueProperty().addListener((o, was, now) -> pool.cut(now.doubleValue()));
        Label label = new Label("Cut");
        label.setLabelFor(slider);
        HBox box = new HBox(4, label, slider);
        box.setAlignment(Pos.CENTER);
        return box;
    }

    private void showPose() {
        Pose looked = desk.looked().get();
        Flotation flotation = desk.flotation().get();
        if (looked != null) {
            pool.show(looked);
        } else if (flotation != null) {
            pool.show(Pose.of(flotation, ""));
        }
        showNote();
    }

    private String way(Vector3D by) {
        return by.getX() != 0
                ? measure.length(Math.abs(by.getX())) + (by.getX() > 0 ? " forward" : " aft")
                : by.getY() != 0
                        ? measure.length(Math.abs(by.getY())) + (by.getY() > 0 ? " to port" : " to starboard")
                        : measure.length(Math.abs(by.getZ())) + (by.getZ() < 0 ? " down" : " up");
    }

    private String picked(String id) {
        return desk.locked().contains(id)
                ? id + " is picked, and locked: its numbers can be typed"
                : desk.selectedPart().filter(Part::isHull).isPresent()
                        ? id + " is picked; the hull stays where it is"
                        : id + " is picked: drag it, or nudge it with the arrow keys";
    }

    private void showNote() {
        if (!guide.isEmpty()) {
            caption.setText(guide);
            back.setVisible(false);
            back.setManaged(false);
            return;
        }
        Pose looked = desk.looked().get();
        Trial.Tried tried = trial.tried().get();
        String text = !dragNote.isEmpty()
                ? dragNote
                : tried != null && tried.held()
                        ? tried.brief(measure)
                        : looked != null
                                ? looked.caption()
                                : !pool.isTurnable()
                                        ? FLAT
                                        : desk.selected().get().isEmpty()
                                                ? "Drag turns the view · wheel nears · click picks a part"
                                                : picked(desk.selected().get());
        caption.setText(text);
        back.setVisible(looked != null);
        back.setManaged(looked != null);
    }
}
