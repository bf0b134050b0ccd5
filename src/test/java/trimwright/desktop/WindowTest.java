package trimwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.SubScene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.desktop.model.Figures;
import trimwright.file.BoatFile;
import trimwright.report.Measure;
import trimwright.statics.Flotation;

/** The window as a builder uses it: with pointer and keys, on the sample boat. */
class WindowTest extends WindowCase {

    private String verdict() {
        return robot.lookup("#verdict").queryAs(Label.class).getText();
    }

    /** What the command line says about the same boat: it words the same answer. */
    private static String verdictOf(Boat boat) {
        return Figures.verdict(Flotation.of(boat), Measure.METRIC);
    }

    private static Node part(Node node, String id) {
        if (id.equals(node.getUserData())) {
            return node;
        }
        if (node instanceof SubScene scene) {
            return part(scene.getRoot(), id);
        }
        if (node instanceof Group group) {
            return group.getChildren().stream()
                    .map(child -> part(child, id))
                    .filter(found -> found != null)
                    .findFirst()
                    .orElse(null);
        }
        if (node instanceof javafx.scene.layout.Region region) {
            return region.getChildrenUnmodifiable().stream()
                    .map(child -> part(child, id))
                    .filter(found -> found != null)
                    .findFirst()
                    .orElse(null);
        }
        return null;
    }

    private Point2D onScreen(String id) {
        Node node = part(window().pool().node(), id);
        Bounds bounds = node.localToScreen(node.getBoundsInLocal());
        return new Point2D(bounds.getCenterX(), bounds.getCenterY());
    }

    @Test
    void itOpensOnTheSampleWithTheSameVerdictAsTheCommandLine() throws Exception {
        assertTrue(MainWindow.has3d(), "the window is tested where there is 3D");
        assertEquals(verdictOf(BoatFile.read(toOpen()).boat()), verdict());
        settle();
        picture("window-load");
    }

    @Test
    void leadThatIsDraggedChangesTheReadingAndIsUndone() throws Exception {
        settle();
        String before = verdict();
        double fromX = part("keel lead");
        robot.clickOn("#view-side");
        settle();
        robot.clickOn(onScreen("keel lead"));
        settle();
        assertEquals("keel lead", window().desk().selected().get());
        robot.drag(onScreen("keel lead"), MouseButton.PRIMARY).moveBy(12, 0).moveBy(50, 1);
        settle();
        assertNotEquals(before, verdict(), "the reading follows while the button is held");
        picture("window-drag");
        robot.drop();
        settle();
        double movedX = part("keel lead");
        assertTrue(movedX > fromX + 10, fromX + " to " + movedX);
        assertEquals(Math.rint(movedX - fromX), movedX - fromX, 1e-9, "whole millimetres");
        assertEquals(verdictOf(window().desk().boat().get().boat()), verdict());
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertEquals(before, verdict());
        assertEquals(fromX, part("keel lead"), 0);
    }

    private double part(String id) {
        return window().desk()
                .boat()
                .get()
                .boat()
                .part(id)
                .orElseThrow()
                .shape()
                .orElseThrow()
                .bounds()
                .minX();
    }

    @Test
    void aTypedMassCountsAndNonsenseIsRefusedInPlace() throws Exception {
        settle();
        robot.interact(() -> window().desk().selected().set("battery"));
        TextField mass = robot.lookup("#field-weighed").queryAs(TextField.class);
        robot.doubleClickOn(mass).write("500").push(KeyCode.ENTER);
        settle();
        Boat now = window().desk().boat().get().boat();
        assertEquals(Optional.of(500.0), now.part("battery").orElseThrow().weighedMassG());
        assertEquals(verdictOf(now), verdict());
        assertTrue(window().desk().unsaved().get());
        TextField again = robot.lookup("#field-weighed").queryAs(TextField.class);
        robot.doubleClickOn(again).write("-5").push(KeyCode.ENTER);
        settle();
        String complaint = robot.lookup("#part-complaint").queryAs(Label.class).getText();
        assertTrue(complaint.contains("massG") && complaint.contains("-5"), complaint);
        assertEquals(now, window().desk().boat().get().boat());
        picture("window-refused");
    }

    @Test
    void savedAndReopenedSheIsTheSame() throws Exception {
        settle();
        robot.interact(() -> window().desk().selected().set("battery"));
        robot.push(KeyCode.RIGHT);
        settle();
        robot.push(KeyCode.RIGHT);
        settle();
        Boat edited = window().desk().boat().get().boat();
        assertEquals(
                688,
                edited.part("battery")
                        .orElseThrow()
                        .shape()
                        .orElseThrow()
                        .bounds()
                        .minX(),
                0);
        Path to = folder.resolve("mine.boat.json");
        robot.interact(() -> assertTrue(window().files().saveTo(to)));
        assertFalse(window().desk().unsaved().get());
        assertEquals(
                Flotation.of(edited).settled().orElseThrow().plane(),
                Flotation.of(BoatFile.read(to).boat()).settled().orElseThrow().plane());
    }

    @Test
    void itIsReadableInTheDark() throws Exception {
        robot.push(KeyCode.CONTROL, KeyCode.L);
        robot.interact(() -> window().desk().selected().set("keel lead"));
        settle();
        picture("window-dark");
        assertTrue(robot.lookup(".window.dark").tryQuery().isPresent());
    }
}
