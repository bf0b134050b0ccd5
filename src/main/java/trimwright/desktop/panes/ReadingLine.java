package trimwright.desktop.panes;

import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import trimwright.desktop.model.Figure;

/** One reading. It is made once and written anew with every change, which comes many times a second while a part is dragged. */
final class ReadingLine extends VBox {

    private final Label name = Ui.words("", "reading-name");
    private final Label sign = new Label();
    private final Label value = Ui.words("", "reading-value");
    private final Label before = Ui.words("", "reading-before");
    private Figure shown;
    private boolean changed;

    ReadingLine() {
        sign.setStyle("-fx-min-width: 1.4em;");
        before.managedProperty().bind(before.visibleProperty());
        before.setVisible(false);
        getStyleClass().add("reading");
        getChildren().addAll(name, new HBox(4, sign, value), before);
    }

    void show(Figure figure) {
        if (figure.equals(shown)) {
            return;
        }
        if (shown == null || shown.standing() != figure.standing()) {
            sign.getStyleClass()
                    .setAll(
                            "label",
                            "reading-sign",
                            "sign-" + figure.standing().name().toLowerCase(Locale.ROOT));
            sign.setText(figure.standing().sign());
        }
        shown = figure;
        name.setText(figure.name() + (figure.wanted().isEmpty() ? "" : "  (" + figure.wanted() + ")"));
        value.setText(figure.now());
        before.setText("was " + figure.before());
        before.setVisible(figure.hasChanged());
        if (changed != figure.hasChanged()) {
            changed = figure.hasChanged();
            if (changed) {
                getStyleClass().add("reading-changed");
            } else {
                getStyleClass().remove("reading-changed");
            }
        }
    }
}
