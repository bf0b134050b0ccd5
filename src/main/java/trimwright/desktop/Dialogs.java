package trimwright.desktop;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.geometry.Rectangle2D;
import javafx.geometry.VPos;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.DialogPane;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.stage.Screen;
import javafx.stage.Stage;
import trimwright.desktop.model.Problem;
import trimwright.desktop.panes.Ui;

/** Questions and bad news. */
final class Dialogs {

    /** In letters. */
    private static final double WIDTH = 52;

    /** Shares of the screen that a dialog's words take at most; what is longer is scrolled. */
    private static final double MOST_WIDE = 0.85;

    private static final double MOST_HIGH = 0.72;

    /** The choice that changes nothing. */
    static final ButtonType STAY = new ButtonType("Cancel", ButtonBar.ButtonData.CANCEL_CLOSE);

    private static final ButtonType SAVE = new ButtonType("Save", ButtonBar.ButtonData.YES);
    private static final ButtonType DISCARD = new ButtonType("Don't save", ButtonBar.ButtonData.NO);
    private static final ButtonType SAVE_OVER = new ButtonType("Save over it", ButtonBar.ButtonData.YES);
    private static final ButtonType SAVE_ELSEWHERE = new ButtonType("Save elsewhere", ButtonBar.ButtonData.OTHER);

    private final Stage owner;
    private final Pane styled;
    private double textPx = 13;

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

    /** A list of two columns to read: lines of two halves with a tab between them; an empty line sets a new group off. */
    void tellPairs(String title, String lines) {
        GridPane grid = new GridPane();
        grid.setStyle("-fx-hgap: 1.5em; -fx-vgap: 0.25em; -fx-padding: 0 1em 0 0;");
        ColumnConstraints keys = new ColumnConstraints();
        keys.setMinWidth(Region.USE_PREF_SIZE);
        grid.getColumnConstraints().add(keys);
        int row = 0;
        for (String line : lines.split("\n", -1)) {
            String[] halves = line.split("\t");
            Label key = new Label(halves[0]);
            key.getStyleClass().add("strong");
            GridPane.setValignment(key, VPos.TOP);
            grid.add(key, 0, row);
            grid.add(Ui.words(halves.length > 1 ? halves[1] : ""), 1, row++);
        }
        Alert alert = alert(Alert.AlertType.NONE, title, grid);
        alert.getButtonTypes().setAll(new ButtonType("Close", ButtonBar.ButtonData.CANCEL_CLOSE));
        alert.show();
    }

    /** Words that are scrolled where the screen is too small for them; they must have their style. */
    private void fill(DialogPane pane, Region words) {
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        ScrollPane scroll = new ScrollPane(words);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().addAll("plain-scroll", "dialog-scroll");
        pane.setContent(scroll);
        pane.applyCss();
        double width = Math.min(WIDTH * textPx, MOST_WIDE * screen.getWidth());
        // A few px more than it takes: rounding must not bring a scroll bar.
        double height = words.prefHeight(width - 3 * textPx) + 2 * textPx;
        scroll.setPrefSize(width, Math.min(height, MOST_HIGH * screen.getHeight()));
    }

    /** How large the text is. */
    void setTextPx(double px) {
        textPx = px;
    }

    private Alert alert(Alert.AlertType type, String title, String text) {
        Label words = Ui.words(text);
        words.setId("dialog-words");
        return alert(type, title, words);
    }

    private Alert alert(Alert.AlertType type, String title, Region words) {
        Alert alert = new Alert(type);
        alert.initOwner(owner);
        alert.setTitle("Trimwright");
        alert.setHeaderText(title);
        alert.getDialogPane().setMinHeight(Region.USE_PREF_SIZE);
        alert.getDialogPane().getStylesheets().setAll(styled.getScene().getStylesheets());
        alert.getDialogPane().getStyleClass().addAll(styled.getStyleClass());
        alert.getDialogPane().setStyle(styled.getStyle());
        fill(alert.getDialogPane(), words);
        return alert;
    }
}
