package trimwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.desktop.model.Figure;
import trimwright.desktop.model.Figures;
import trimwright.desktop.model.Job;
import trimwright.report.DiveWords;
import trimwright.statics.Condition;
import trimwright.statics.DiveRun;
import trimwright.statics.Flotation;

/** The jobs of the window on the sample boat: dive, stand, ballast. */
class JobsTest extends WindowCase {

    private void enter(Job job) {
        robot.clickOn("#job-" + job.name().toLowerCase(Locale.ROOT));
    }

    private String text(String id) {
        return robot.lookup(id).queryAs(Label.class).getText();
    }

    private Boat boat() {
        return window().desk().boat().get().boat();
    }

    @Test
    void theDiveFollowsTheSliderAndSaysWhatTheCommandLineSays() throws Exception {
        settle();
        enter(Job.DIVE);
        waitUntil(() -> !text("#dive-verdict").isEmpty());
        assertEquals(DiveWords.verdict(DiveRun.of(Condition.of(boat()), 40)), text("#dive-verdict"));
        Slider slider = robot.lookup("#dive-slider").queryAs(Slider.class);
        robot.interact(() -> slider.setValue(50));
        Flotation half = window().desk().looked().get().flotation().orElseThrow();
        assertEquals(
                0.5, half.condition().boat().part("main tank").orElseThrow().fill(), 1e-9);
        assertEquals(
                Flotation.settling(Condition.of(boat().withAllTanksAt(0.5)))
                        .settled()
                        .orElseThrow()
                        .trimDeg(),
                half.settled().orElseThrow().trimDeg(),
                1e-6);
        settle();
        picture("window-dive");
        robot.push(KeyCode.F1);
        settle();
        assertEquals(null, window().desk().looked().get(), "another job shows her as loaded again");
        assertFalse(window().desk().unsaved().get(), "looking changes nothing");
    }

    @Test
    void aPointOfTheRightingCurveIsShownInThePool() throws Exception {
        settle();
        enter(Job.STAND);
        waitUntil(() -> !text("#stand-afloat").isEmpty());
        settle();
        robot.clickOn("#stand-curve");
        robot.push(KeyCode.RIGHT).push(KeyCode.RIGHT).push(KeyCode.RIGHT);
        assertNotEquals(null, window().desk().looked().get());
        settle();
        settle();
        picture("window-stand");
    }

    @Test
    void aPlanIsLookedAtThenCarriedOutAsOneStep() throws Exception {
        settle();
        String before = window().desk().boat().get().text();
        enter(Job.BALLAST);
        robot.interact(() -> robot.lookup("#plan-run").queryAs(ButtonBase.class).fire());
        waitUntil(() -> robot.lookup("#plan-take").tryQuery().isPresent());
        assertEquals(before, window().desk().boat().get().text(), "a plan that is only shown changes nothing");
        settle();
        picture("window-plan");
        robot.interact(
                () -> robot.lookup("#plan-take").queryAs(ButtonBase.class).fire());
        settle();
        assertEquals(
                Figure.Standing.GOOD,
                Figures.standing(window().desk().flotation().get()));
        assertTrue(text("#verdict-brief").contains("AS WANTED"));
        picture("window-planned");
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertEquals(before, window().desk().boat().get().text(), "one step takes all of it back");
    }
}
