package trimwright.desktop;

import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import trimwright.desktop.model.Problem;
import trimwright.desktop.panes.Ui;

/** Questions and bad news. */
final class Dialogs {

    private static final double WIDTH = 520;

    private final Stage owner;
    private final Pane styled;

    /** @param styled the pane whose theme dialogs take */
    Dialogs(Stage owner, Pane styled) {
        this.owner = owner;
        this.styled = styled;
    }

    /** What could not be done, why, and what to do. */
    void problem(Problem problem) {
        String lines = String.join("\n\n", problem.lines());
        String log = problem.unexpected().isPresent() ? "\n\nWhat you did so far is kept. " + LogFile.told() : "";
        Alert alert = alert(Alert.AlertType.NONE, problem.title(), lines + log);
        alert.getButtonTypes().setAll(ButtonType.OK);
        alert.show();
    }

    /** Something to read. */
    void tell(String title, String text) {
        Alert alert = alert(Alert.AlertType.NONE, title, text);
        alert.getButtonTypes().setAll(new ButtonType("Close", ButtonBar.ButtonData.CANCEL_CLOSE));
        alert.show();
    }

    /** A question; the answer is one of the choices, or none when it was turned away. */
    Optional<ButtonType> ask(String title, String text, ButtonType... choices) {
        Alert alert = alert(Alert.AlertType.NONE, title, text);
        alert.getButtonTypes().setAll(choices);
        return alert.showAndWait();
    }

    private Alert alert(Alert.AlertType type, String title, String text) {
        Alert alert = new Alert(type);
        alert.initOwner(owner);
        alert.setTitle("Trimwright");
        alert.setHeaderText(title);
        Label words = Ui.words(text);
        words.setPrefWidth(WIDTH);
        words.setId("dialog-words");
        alert.getDialogPane().setContent(words);
        alert.getDialogPane().setMinHeight(Region.USE_PREF_SIZE);
        alert.getDialogPane().getStylesheets().setAll(styled.getScene().getStylesheets());
        alert.getDialogPane().getStyleClass().addAll(styled.getStyleClass());
        alert.getDialogPane().setStyle(styled.getStyle());
        return alert;
    }
}
