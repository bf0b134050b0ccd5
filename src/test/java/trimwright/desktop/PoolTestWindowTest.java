package trimwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import trimwright.cli.Run;
import trimwright.file.BoatFile;
import trimwright.plan.pool.Figure;
import trimwright.report.EstimateWords;
import trimwright.report.Measure;
import trimwright.report.PoolWords;

/** The pool test as a builder does it: readings typed, what they say, the change taken over and taken back; and how far she may be off before. */
class PoolTestWindowTest extends WindowCase {

    /** The sample boat with aims that she nearly meets, so that the change is small. */
    @Override
    Path toOpen() {
        Path samples = Path.of("sample-meshes");
        Path boat = folder.resolve("heron.boat.json");
        try {
            if (!Files.exists(boat)) {
                Files.copy(samples.resolve("heron-hull.stl"), folder.resolve("heron-hull.stl"));
                String text = Files.readString(samples.resolve("heron.boat.json"));
                String easier = text.replace("\"bgMm\": 8, \"gmMm\": 4", "\"bgMm\": 5, \"gmMm\": 2");
                assertNotEquals(text, easier);
                Files.writeString(boat, easier);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return boat;
    }

    private String text(String id) {
        return robot.lookup(id).queryAs(Label.class).getText();
    }

    private String boat() {
        return window().desk().boat().get().text();
    }

    private void fire(String id) throws Exception {
        ButtonBase button = robot.lookup(id).queryAs(ButtonBase.class);
        // As a click does: in a field Ctrl+Z takes back letters.
        robot.interact(button::requestFocus);
        robot.interact(button::fire);
        settle();
    }

    /** Adds a reading of the kind that stands at this place in the menu. */
    private void add(int kind) throws Exception {
        robot.interact(() -> {
            MenuButton menu = robot.lookup("#add-reading").queryAs(MenuButton.class);
            menu.getItems().get(kind).fire();
        });
        settle();
    }

    private void type(String id, String number) {
        TextField field = robot.lookup(id).queryAs(TextField.class);
        robot.interact(() -> {
            field.requestFocus();
            field.selectAll();
        });
        robot.write(number).push(KeyCode.ENTER);
        // A field that is left counts too; what it holds by then must not count twice.
        robot.push(KeyCode.TAB);
    }

    private void enterTwoReadings() throws Exception {
        robot.clickOn("#job-pool_test");
        add(0);
        type("#seen-0", "-2");
        type("#seen-1", "3.5");
        type("#seen-2", "-3.4");
        type("#seen-error-2", "0.5");
        add(1);
        type("#moved-0-0", "50");
        type("#moved-0-2", "-20");
        type("#seen-0", "4.2");
        settle();
    }

    @Test
    void twoReadingsAreTypedAndTheChangeTakenOverAndBack() throws Exception {
        settle();
        String before = boat();
        enterTwoReadings();
        Path file = folder.resolve("typed.pool.json");
        robot.interact(() ->
                assertEquals(Optional.empty(), window().poolTest().readings().saveTo(file, false)));
        ObjectMapper mapper = new ObjectMapper();
        assertEquals(mapper.readTree("""
                        {"version": 1, "readings": [
                          {"id": "surfaced", "fills": {"main tank": 0}, "seen": [
                            {"at": "bow", "aboveMm": -2}, {"at": "stern", "aboveMm": 3.5}, {"heelDeg": -3.4, "plusMinusDeg": 0.5}]},
                          {"id": "weight across", "fills": {"main tank": 0}, "moved": [{"massG": 50, "byMm": [0, -20, 0]}],
                           "seen": [{"heelDeg": 4.2}]}]}
                        """), mapper.readTree(Files.readString(file)));
        assertEquals(before, boat(), "readings change nothing of the boat");

        robot.interact(() -> robot.lookup("#pool-run").queryAs(ButtonBase.class).fire());
        waitUntil(() -> robot.lookup("#pool-verdict").tryQuery().isPresent());
        JsonNode told = Run.json("pool", toOpen(), file).object();
        for (Figure figure : Figure.values()) {
            JsonNode known = told.get("figures").get(figure.key());
            assertEquals(
                    EstimateWords.plusMinus(
                            figure,
                            known.get("after").doubleValue(),
                            known.get("afterError").doubleValue(),
                            Measure.METRIC),
                    text("#figure-" + figure.key()),
                    figure.key());
        }
        settle();
        picture("window-pool");

        fire("#pool-take-change");
        String changed = boat();
        assertNotEquals(before, changed);
        assertEquals(
                told.get("plan").get("pieces").size(),
                window().desk().boat().get().boat().parts().stream()
                        .filter(p -> before.indexOf("\"" + p.id() + "\"") < 0 && !p.id().endsWith(" twin"))
                        .count(),
                "every piece of the change is in her file");
        assertTrue(robot.lookup("#pool-taken").query().isVisible(), "the same readings would count twice");
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertEquals(before, boat(), "one step takes all of it back");
        assertFalse(robot.lookup("#pool-taken").query().isVisible());
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertEquals(
                List.of(),
                window().poolTest().readings().selectedReading().orElseThrow().seen(),
                "the step before was the last number that was typed");
        robot.push(KeyCode.SHIFT, KeyCode.CONTROL, KeyCode.Z);
        robot.push(KeyCode.SHIFT, KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertEquals(changed, boat(), "both are done again in their order");
    }

    @Test
    void howFarSheMayBeOffIsWhatTheCommandLineSays() throws Exception {
        settle();
        robot.clickOn("#job-pool_test");
        ToggleButton stage = robot.lookup("#pool-before").queryAs(ToggleButton.class);
        robot.interact(stage::fire);
        type("#tolerance-draws", "300");
        type("#tolerance-seed", "7");
        robot.interact(
                () -> robot.lookup("#tolerance-run").queryAs(ButtonBase.class).fire());
        waitUntil(() -> robot.lookup("#tolerance-chance").tryQuery().isPresent());
        JsonNode told = Run.json("float", toOpen(), "--tolerance", "--draws", 300, "--seed", 7)
                .object()
                .get("tolerance");
        for (Figure figure : Figure.values()) {
            JsonNode spread = told.get("figures").get(figure.key());
            assertEquals(
                    EstimateWords.plusMinus(
                            figure,
                            spread.get("asGiven").doubleValue(),
                            spread.get("error").doubleValue(),
                            Measure.METRIC),
                    text("#spread-" + figure.key()),
                    figure.key());
        }
        assertTrue(text("#tolerance-chance")
                .contains(PoolWords.percent(told.get("within").doubleValue())));
        assertTrue(text("#tolerance-in-hand").contains(" g of lead in hand"), text("#tolerance-in-hand"));
        settle();
        picture("window-tolerance");
        type("#tolerance-draws", "3");
        robot.interact(
                () -> robot.lookup("#tolerance-run").queryAs(ButtonBase.class).fire());
        assertTrue(text("#tolerance-complaint").contains("found \"3\""), text("#tolerance-complaint"));
        assertFalse(window().desk().unsaved().get(), "looking changes nothing");
    }

    @Test
    void aFileOfReadingsIsOpenedChangedAndSavedAsItWasWritten() throws Exception {
        settle();
        robot.clickOn("#job-pool_test");
        String sample = Files.readString(Path.of("sample-meshes/heron.pool.json"));
        Path file = Files.writeString(folder.resolve("copy.pool.json"), sample);
        robot.interact(() -> window().poolTest().files().open(file));
        settle();
        type("#seen-2", "-3.6");
        robot.interact(() -> window().poolTest().files().save());
        assertEquals(sample.replace("{\"heelDeg\": -3.4}", "{\"heelDeg\": -3.6}"), Files.readString(file));
        assertTrue(BoatFile.read(toOpen()).text().equals(boat()));
        type("#seen-2", "400");
        assertTrue(text("#reading-complaint").contains("180"), text("#reading-complaint"));
    }
}
