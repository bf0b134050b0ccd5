package trimwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The window on a machine without 3D: everything but turning and dragging works, and a picture shows the boat. */
class FlatWindowTest extends WindowCase {

    @BeforeAll
    static void without3d() {
        System.setProperty("trimwright.flat", "true");
    }

    @AfterAll
    static void with3d() {
        System.clearProperty("trimwright.flat");
    }

    @Test
    void aPictureShowsTheBoatAndSaysWhy() throws Exception {
        assertFalse(MainWindow.has3d());
        waitUntil(() -> image() != null);
        settle();
        double before =
                window().desk().flotation().get().settled().orElseThrow().trimDeg();
        Object first = image();
        robot.interact(() -> window().desk().selected().set("battery"));
        robot.interact(() -> window().takeKeys());
        robot.push(KeyCode.RIGHT);
        settle();
        waitUntil(() -> image() != first);
        assertTrue(window().desk().flotation().get().settled().orElseThrow().trimDeg() < before, "bow down");
        Label note = (Label) robot.lookup("#pool-note .label").query();
        assertTrue(note.getText().contains("no 3D"), note.getText());
        assertEquals(null, window().desk().looked().get());
        picture("window-flat");
    }

    private Object image() {
        return robot.lookup(".flat-pool .image-view").queryAll().stream()
                .map(n -> ((ImageView) n).getImage())
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }
}
