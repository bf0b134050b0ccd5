package trimwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;

/** A mesh dropped on the window. */
class NewHullWindowTest extends WindowCase {

    @Test
    void aMeshLeadsToABoat() throws Exception {
        Path mesh = Files.copy(Path.of("sample-meshes", "heron-hull.stl"), folder.resolve("mine.stl"));
        settle();
        robot.interact(() -> window().files().openAsking(mesh));
        waitUntil(() -> robot.lookup("#new-make").tryQuery().isPresent());
        settle();
        picture("window-new");
        robot.interact(() -> robot.lookup("#new-make").queryAs(ButtonBase.class).fire());
        waitUntil(() -> window().desk().boat().get().boat().name().equals("mine"));
        settle();
        assertEquals(1, window().desk().boat().get().boat().parts().size());
        assertTrue(Files.exists(folder.resolve("mine.boat.json")));
    }

    @Test
    void aFileThatIsNoMeshIsRefusedAndTheBoatStays() throws Exception {
        Path bad = Files.writeString(folder.resolve("bad.stl"), "this is no mesh");
        settle();
        String name = window().desk().boat().get().boat().name();
        robot.interact(() -> window().files().openAsking(bad));
        waitUntil(() -> robot.lookup("#dialog-words").tryQuery().isPresent());
        Label words = robot.lookup("#dialog-words").queryAs(Label.class);
        assertTrue(words.getText().contains("bad.stl"), words.getText());
        assertEquals(name, window().desk().boat().get().boat().name());
        robot.interact(() ->
                robot.lookup(".dialog-pane .button").queryAs(ButtonBase.class).fire());
    }
}
