package trimwright.desktop.panes;

import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Figure;
import trimwright.desktop.model.Figures;
import trimwright.report.Measure;
import trimwright.statics.Flotation;

/** What matters most, to be read from two metres: a sign, two words, and the sentence. */
public final class VerdictBand extends HBox {

    private final Desk desk;
    private final Label sign = new Label();
    private final Label brief = new Label();
    private final Label sentence = Ui.words("", "verdict-sentence");
    private final ProgressIndicator busy = new ProgressIndicator();
    private Measure measure = Measure.METRIC;

    public VerdictBand(Desk desk) {
        super(14);
        this.desk = desk;
        getStyleClass().add("verdict");
        setAlignment(Pos.CENTER_LEFT);
        sign.getStyleClass().add("verdict-sign");
        brief.getStyleClass().add("verdict-brief");
        brief.setId("verdict-brief");
        sentence.setId("verdict");
        busy.setPrefSize(22, 22);
        busy.setMaxSize(22, 22);
        busy.visibleProperty().bind(desk.busy());
        VBox words = Ui.column(1, brief, sentence);
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setAlignment(Pos.CENTER_LEFT);
        setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(sign, words, busy);
        desk.flotation().addListener((o, was, now) -> show());
        desk.looked().addListener((o, was, now) -> show());
    }

    public void setMeasure(Measure other) {
        measure = other;
        show();
    }

    private void show() {
        Flotation flotation = desk.flotation().get();
        if (flotation == null) {
            return;
        }
        Figure.Standing standing = Figures.standing(flotation);
        getStyleClass().removeIf(s -> s.startsWith("standing-"));
        getStyleClass().add("standing-" + standing.name().toLowerCase(Locale.ROOT));
        sign.setText(standing.sign());
        brief.setText(
                Figures.shortVerdict(flotation) + (desk.looked().get() == null ? "" : "   (as loaded, not as shown)"));
        sentence.setText(Figures.verdict(flotation, measure));
    }
}
