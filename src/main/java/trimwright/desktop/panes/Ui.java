package trimwright.desktop.panes;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import javafx.util.StringConverter;

/** Small pieces that every pane is made of. */
public final class Ui {

    private static final Duration TIP_DELAY = Duration.millis(400);

    private Ui() {}

    public static Label heading(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("heading");
        return label;
    }

    /** A label that breaks into lines where its pane is too narrow. */
    public static Label words(String text, String... styles) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().addAll(styles);
        return label;
    }

    /** Something to mind, as a sentence of its own. */
    public static Label warning(String sentence) {
        String first = sentence.substring(0, Math.min(1, sentence.length())).toUpperCase(Locale.ROOT);
        return words("▲ " + first + sentence.substring(Math.min(1, sentence.length())), "warning");
    }

    public static Button button(String text, String tip, Runnable action) {
        Button button = new Button(text);
        button.setOnAction(e -> action.run());
        button.setMinWidth(Region.USE_PREF_SIZE);
        if (!tip.isEmpty()) {
            button.setTooltip(tip(tip));
        }
        return button;
    }

    public static Tooltip tip(String text) {
        Tooltip tip = new Tooltip(text);
        tip.setShowDelay(TIP_DELAY);
        tip.setWrapText(true);
        tip.setStyle("-fx-max-width: 28em;");
        return tip;
    }

    /** Values to choose from, each told in words. */
    static <T> ComboBox<T> choices(List<T> values, Function<T, String> words) {
        ComboBox<T> box = new ComboBox<>();
        box.getItems().setAll(values);
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(T value) {
                return value == null ? "" : words.apply(value);
            }

            @Override
            public T fromString(String text) {
                return null;
            }
        });
        return box;
    }

    /** Names, fields and units in three columns; as wide as the size of text asks for, so that columns of several stand below each other. */
    static GridPane fields() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("fields");
        ColumnConstraints wide = new ColumnConstraints();
        wide.setHgrow(Priority.ALWAYS);
        ColumnConstraints field = new ColumnConstraints();
        field.setMinWidth(Region.USE_PREF_SIZE);
        ColumnConstraints unit = new ColumnConstraints();
        unit.setMinWidth(Region.USE_PREF_SIZE);
        grid.getColumnConstraints().addAll(wide, field, unit);
        grid.getChildren().addListener((ListChangeListener<Node>) change -> {
            while (change.next()) {
                for (Node node : change.getAddedSubList()) {
                    Integer column = GridPane.getColumnIndex(node);
                    if (node instanceof Label && Integer.valueOf(2).equals(column)) {
                        node.getStyleClass().add("unit");
                    } else if (node instanceof Label name && Integer.valueOf(0).equals(column)) {
                        name.setWrapText(true);
                        name.setMinHeight(Region.USE_PREF_SIZE);
                    }
                }
            }
        });
        return grid;
    }

    public static VBox column(double gap, Node... children) {
        VBox box = new VBox(gap, children);
        box.setFillWidth(true);
        return box;
    }

    /** Scrolls so that a node's upper edge is on top, as far as there is something below to scroll to. */
    static void reveal(Node node) {
        Platform.runLater(() -> {
            for (Node n = node.getParent(); n != null; n = n.getParent()) {
                if (n instanceof ScrollPane scroll && scroll.getContent() != null) {
                    Node content = scroll.getContent();
                    double top = content.sceneToLocal(node.localToScene(0, 0)).getY();
                    double most = content.getLayoutBounds().getHeight()
                            - scroll.getViewportBounds().getHeight();
                    scroll.setVvalue(most > 0 ? Math.min(1, top / most) : 0);
                    return;
                }
            }
        });
    }

    public static Region filler() {
        Region region = new Region();
        HBox.setHgrow(region, Priority.ALWAYS);
        return region;
    }
}
