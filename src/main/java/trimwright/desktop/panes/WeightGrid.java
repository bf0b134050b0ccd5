package trimwright.desktop.panes;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** Weights of a reading, a row each, narrow enough for the side of the window. */
final class WeightGrid extends VBox {

    private static final int DIGITS = 4;

    private final GridPane grid = new GridPane();
    private final List<String> names;

    /** @param names what stands over each field */
    WeightGrid(String title, List<String> names) {
        super(3);
        this.names = names;
        grid.setHgap(4);
        grid.setVgap(4);
        for (int i = 0; i < names.size(); i++) {
            Label name = new Label(names.get(i));
            name.getStyleClass().add("quiet");
            grid.add(name, i, 0);
        }
        getChildren().addAll(Ui.words(title), grid);
    }

    void row(String id, List<NumberField> fields, Runnable remove) {
        int row = grid.getRowCount();
        for (int i = 0; i < fields.size(); i++) {
            NumberField field = fields.get(i);
            field.setId(id + "-" + i);
            field.setPrefColumnCount(DIGITS);
            field.setAccessibleText(names.get(i));
            grid.add(field, i, row);
        }
        Button out = Ui.button("×", "Take this weight away", remove);
        grid.add(out, fields.size(), row);
    }
}
