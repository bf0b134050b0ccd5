package trimwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import trimwright.boat.Kind;
import trimwright.mesh.Solids;
import trimwright.mesh.StlWriter;

/** A mesh dropped on the window. */
class NewHullWindowTest extends WindowCase {

    @Test
    void aMeshLeadsToABoat() throws Exception {
        Path mesh = Files.copy(Path.of("sample-meshes", "heron-hull.stl"), folder.resolve("mine.stl"));
        settle();
        robot.interact(() -> window().files().openAsking(mesh));
        answer("The hull of a new boat");
        waitUntil(() -> robot.lookup("#new-make").tryQuery().isPresent());
        settle();
        picture("window-new");
        robot.interact(() -> robot.lookup("#new-make").queryAs(ButtonBase.class).fire());
        waitUntil(() -> window().desk().boat().get().boat().name().equals("mine"));
        settle();
        assertEquals(1, window().desk().boat().get().boat().parts().size());
        assertTrue(Files.exists(folder.resolve("mine.boat.json")));
    }

    /** A block of lead drawn in its place, for a boat that has a file: it weighs 40 × 20 × 10 mm × 11.34 g/cm³ (handbook value for lead). */
    @Test
    void aMeshBecomesAPart() throws Exception {
        Path boat = folder.resolve("boats").resolve("mine.boat.json");
        Path mesh = folder.resolve("elsewhere").resolve("ingot.stl");
        Files.createDirectories(boat.getParent());
        Files.createDirectories(mesh.getParent());
        StlWriter.write(mesh, Solids.box(500, -10, 10, 540, 10, 20));
        robot.interact(() -> window().files().saveTo(boat));
        settle();
        robot.interact(() -> window().files().openAsking(mesh));
        answer("A part of this boat");
        waitUntil(() -> robot.lookup("#mesh-add").tryQuery().isPresent());
        ComboBox<Kind> kind = robot.lookup("#mesh-kind").queryComboBox();
        robot.interact(() -> kind.setValue(Kind.BALLAST));
        settle();
        picture("window-mesh-part");
        robot.interact(() -> robot.lookup("#mesh-add").queryAs(ButtonBase.class).fire());
        settle();
        assertEquals("ingot", window().desk().selected().get());
        assertEquals(8 * 11.34, massOf("ingot"), 0.01);
        assertTrue(Files.exists(boat.resolveSibling("ingot.stl")), "copied beside the boat");
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertTrue(window().desk().boat().get().boat().part("ingot").isEmpty());
    }

    private double massOf(String id) {
        return window().desk().flotation().get().condition().pieces().stream()
                .filter(p -> p.part().id().equals(id))
                .mapToDouble(p -> p.massG())
                .sum();
    }

    private void answer(String choice) throws Exception {
        waitUntil(() -> robot.lookup("#dialog-words").tryQuery().isPresent());
        robot.interact(() -> robot.lookup(choice).queryAs(ButtonBase.class).fire());
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
