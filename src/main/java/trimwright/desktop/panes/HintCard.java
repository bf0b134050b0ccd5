package trimwright.desktop.panes;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import trimwright.desktop.model.Job;
import trimwright.desktop.model.Settings;

/** A hint for those who see a job for the first time. It goes away for good when it was read. */
final class HintCard extends VBox {

    private static final String FLAG = "hint.read.";

    private final Settings settings;
    private final Label words = Ui.words("");
    private final Button read =
            Ui.button("Got it", "Does not come again; the Help menu brings the hints back", this::read);
    private Job job;

    HintCard(Settings settings) {
        super(6);
        this.settings = settings;
        words.setId("hint-words");
        read.setId("hint-read");
        HBox row = new HBox(read);
        row.setAlignment(Pos.CENTER_RIGHT);
        getStyleClass().add("hint");
        setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
        setStyle("-fx-pref-width: 23em;");
        getChildren().addAll(words, row);
        setVisible(false);
    }

    /** Shows the hint for a job, unless it was read before; none while there is no job. */
    void show(Job now) {
        job = now;
        String text = now == null ? "" : text(now);
        words.setText(text);
        setVisible(!text.isEmpty() && !settings.is(FLAG + now.name()));
    }

    private void read() {
        settings.set(FLAG + job.name(), true);
        setVisible(false);
    }

    /** Makes all hints come again. */
    void again() {
        for (Job each : Job.values()) {
            settings.set(FLAG + each.name(), false);
        }
        show(job);
    }

    private static String text(Job job) {
        return switch (job) {
            case LOAD ->
                "Click a part, in the list or in the water, then drag it: she settles anew at once."
                        + " The readings say what it did.";
            case AFLOAT ->
                "The orange dashes are her painted line, the blue line is where the water stands."
                        + " Drag the violet grips to try another waterline.";
            case DIVE -> "Pull the slider: the tanks fill and she goes under. Click a curve to see her at that point.";
            case STAND ->
                "Click the curve and she is laid over so far. Where it comes back to zero she comes back no more.";
            case BALLAST ->
                "A plan is only shown, with its pieces in green, until you carry it out. Then one undo takes all of it"
                        + " back.";
            case POOL_TEST ->
                "Add what you read: the state she was in, and the numbers you saw. What they say changes nothing until you"
                        + " take it over.";
        };
    }
}
