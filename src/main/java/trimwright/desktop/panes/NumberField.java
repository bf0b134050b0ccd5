package trimwright.desktop.panes;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;

/** A field for a number. What is typed counts with Enter or when the field is left; Escape takes it back; a refusal is marked. */
final class NumberField extends TextField {

    private final Function<Optional<Double>, Optional<String>> put;
    private String shown = "";

    /** @param put takes a value, empty for none, and says why not, or nothing */
    NumberField(Function<Optional<Double>, Optional<String>> put) {
        this.put = put;
        getStyleClass().add("number");
        setPrefColumnCount(7);
        setOnAction(e -> commit());
        focusedProperty().addListener((o, was, now) -> {
            if (!now) {
                commit();
            }
        });
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                show(shown);
                e.consume();
            }
        });
    }

    /** Shows a value as it is now. */
    void show(String text) {
        shown = text;
        setText(text);
        getStyleClass().remove("refused");
    }

    private void commit() {
        String typed = getText().strip().replace(',', '.');
        if (typed.equals(shown)) {
            getStyleClass().remove("refused");
            return;
        }
        Optional<Double> value;
        try {
            value = typed.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(typed).doubleValue());
        } catch (NumberFormatException e) {
            refuse();
            return;
        }
        if (put.apply(value).isPresent()) {
            refuse();
        } else {
            // Where it takes a while until it is shown anew, leaving the field does not put it again.
            shown = typed;
            getStyleClass().remove("refused");
        }
    }

    private void refuse() {
        if (!getStyleClass().contains("refused")) {
            getStyleClass().add("refused");
        }
    }
}
