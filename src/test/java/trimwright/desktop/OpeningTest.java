package trimwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** Files that are dropped, opened again, gone, or changed by another program. */
class OpeningTest extends WindowCase {

    private Path copy(String name) throws IOException {
        Path to = Files.createDirectories(folder.resolve("boats"));
        Files.copy(
                Path.of("sample-meshes", "heron-hull.stl"),
                to.resolve("heron-hull.stl"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        return Files.writeString(to.resolve(name + ".boat.json"), text(name));
    }

    private static String text(String name) throws IOException {
        return Files.readString(Path.of("sample-meshes", "heron.boat.json"))
                .replaceFirst("\"name\": *\"[^\"]*\"", "\"name\": \"" + name + "\"");
    }

    private String boatName() {
        return window().desk().boat().get().boat().name();
    }

    private boolean isAsking() {
        return robot.lookup("#dialog-words").tryQuery().isPresent();
    }

    private String asked() throws TimeoutException {
        waitUntil(this::isAsking);
        return robot.lookup("#dialog-words").queryAs(Label.class).getText();
    }

    private void answer(String button) throws TimeoutException {
        Set<Node> found = robot.lookup(
                        (Node n) -> n instanceof Button b && b.getText().equals(button))
                .queryAll();
        robot.interact(() -> ((Button) found.iterator().next()).fire());
        waitUntil(() -> !isAsking());
    }

    private void open(Path boat) throws TimeoutException {
        robot.interact(() -> window().files().open(boat, false));
        waitUntil(() ->
                boat.equals(window().desk().path()) && !window().desk().busy().get());
    }

    @Test
    void whatIsDroppedIsOpenedWhereItIsPlainWhatIsMeant() throws Exception {
        Path one = copy("One");
        Path other = copy("Other");
        robot.interact(() -> window().files().openDropped(List.of(one, other)));
        assertTrue(asked().contains("One.boat.json, Other.boat.json"), asked());
        answer("OK");
        assertTrue(boatName().startsWith("Heron"), boatName());
        robot.interact(() -> window().files().openDropped(List.of(one.resolveSibling("heron-hull.stl"), one)));
        waitUntil(() -> boatName().equals("One"));
        Files.delete(other);
        robot.interact(() -> window().files().openRecent(other));
        assertTrue(asked().contains("Other.boat.json"), asked());
        answer("OK");
        assertEquals("One", boatName());
    }

    @Test
    void whatAnotherProgramDidIsAskedAboutOnce() throws Exception {
        Path boat = copy("One");
        open(boat);
        Files.writeString(boat, text("Two"));
        Platform.runLater(window().files()::lookForOthers);
        assertTrue(asked().contains("no longer what was read"), asked());
        answer("Keep what is here");
        robot.interact(window().files()::lookForOthers);
        WaitForAsyncUtils.waitForFxEvents();
        assertTrue(!isAsking(), "it was answered");
        robot.interact(() -> window().desk().selected().set("battery"));
        robot.interact(() -> window().desk()
                .moves()
                .nudge("battery", new org.apache.commons.math3.geometry.euclidean.threed.Vector3D(1, 0, 0)));
        settle();
        Files.writeString(boat, text("Three") + "\n");
        Platform.runLater(window().files()::lookForOthers);
        assertTrue(asked().contains("gives up"), asked());
        answer("Read it again");
        waitUntil(() -> boatName().equals("Three") && !window().desk().unsaved().get());
    }
}
