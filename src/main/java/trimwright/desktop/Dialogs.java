package trimwright.desktop;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BooleanSupplier;
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

    /** The choice that changes nothing. */
    static final ButtonType STAY = new ButtonType("Cancel", ButtonBar.ButtonData.CANCEL_CLOSE);

    private static final ButtonType SAVE = new ButtonType("Save", ButtonBar.ButtonData.YES);
    private static final ButtonType DISCARD = new ButtonType("Don't save", ButtonBar.ButtonData.NO);
    private static final ButtonType SAVE_OVER = new ButtonType("Save over it", ButtonBar.ButtonData.YES);
    private static final ButtonType SAVE_ELSEWHERE = new ButtonType("Save elsewhere", ButtonBar.ButtonData.OTHER);

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

    /**
     * Asks what to do with a file that another program has changed since it was read.
     *
     * @param saveOver saves over it; whether it was done
     * @param saveElsewhere saves to another file; whether it was done
     * @return whether anything was saved
     */
    boolean saveDespiteOthers(Path file, BooleanSupplier saveOver, BooleanSupplier saveElsewhere) {
        Optional<ButtonType> answer = ask(
                "Another program has changed this file",
                file + " is no longer what was read here. Saving over it loses what the other program wrote.",
                SAVE_ELSEWHERE,
                SAVE_OVER,
                STAY);
        if (answer.filter(SAVE_ELSEWHERE::equals).isPresent()) {
            return saveElsewhere.getAsBoolean();
        }
        return answer.filter(SAVE_OVER::equals).isPresent() && saveOver.getAsBoolean();
    }

    /**
     * Asks about work that no file has yet.
     *
     * @param save saves it; whether it was done
     * @param forget gives it up
     * @return whether the work may be left: saved, or given up on purpose
     */
    boolean mayLeave(String title, String text, BooleanSupplier save, Runnable forget) {
        Optional<ButtonType> answer = ask(title, text, SAVE, DISCARD, STAY);
        if (answer.filter(SAVE::equals).isPresent()) {
            return save.getAsBoolean();
        }
        boolean discarded = answer.filter(DISCARD::equals).isPresent();
        if (discarded) {
            forget.run();
        }
        return discarded;
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
