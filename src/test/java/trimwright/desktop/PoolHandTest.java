package trimwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.Point2D;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javax.imageio.ImageIO;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.desktop.model.Edits;
import trimwright.desktop.model.Job;
import trimwright.desktop.model.Settings;
import trimwright.desktop.tank3d.View;
import trimwright.statics.Condition;
import trimwright.statics.Waterline;

/** What is seen and taken hold of in the pool, beside the parts. */
class PoolHandTest extends WindowCase {

    private Point2D poolPoint(double dx, double dy) {
        return robot.point(window().pool().node()).query().add(dx, dy);
    }

    private Set<String> labels() {
        return robot.lookup(".mark-misfit").queryAll().stream()
                .map(n -> ((Label) n).getText())
                .collect(Collectors.toSet());
    }

    @Test
    void whatDoesNotFitIsMarkedWhereItIs() throws Exception {
        settle();
        robot.interact(() ->
                window().desk().edit("move battery", b -> Edits.moved(b, "battery", new Vector3D(-90, 0, 0))));
        waitUntil(() -> !labels().isEmpty());
        settle();
        assertEquals(Set.of("▲ main tank runs into battery"), labels());
        assertTrue(
                robot.lookup(".misfit-sign").queryAll().stream().anyMatch(n -> n.isVisible()), "in the list as well");
        picture("window-misfit");
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        waitUntil(() -> labels().isEmpty());
    }

    @Test
    void aWaterlineIsTiltedByTheBowAndTellsWhatItWouldCarry() throws Exception {
        settle();
        robot.interact(() -> {
            window().choose(Job.AFLOAT);
            window().pool().look(View.SIDE);
        });
        settle();
        double before =
                window().desk().flotation().get().settled().orElseThrow().trimDeg();
        robot.drag("#trial-grip-bow", MouseButton.PRIMARY).moveBy(0, -12).moveBy(0, -20);
        settle();
        picture("window-trial");
        robot.drop();
        settle();
        settle();
        var shown = window().desk().looked().get();
        assertTrue(Math.toDegrees(Math.asin(shown.water().up().getX())) < before - 0.5, "the bow goes under");
        Condition condition = window().desk().flotation().get().condition();
        String grams = trimwright.report.Measure.METRIC.mass(
                Waterline.of(condition, shown.water()).displacementG());
        String words = robot.lookup("#trial-words").queryAs(Label.class).getText();
        assertTrue(words.contains("carries " + grams), words + " / " + grams);
        assertFalse(window().desk().unsaved().get(), "trying changes nothing");
        robot.push(KeyCode.ESCAPE);
        settle();
        assertEquals(null, window().desk().looked().get());
    }

    @Test
    void thePaintedLineGoesWhereTheHullIsClicked() throws Exception {
        settle();
        robot.interact(() -> {
            window().choose(Job.AFLOAT);
            window().pool().look(View.SIDE);
        });
        settle();
        ToggleButton point = robot.lookup("#paint-point").queryAs(ToggleButton.class);
        robot.interact(point::fire);
        var before = window().desk().boat().get().boat().paintedLine().orElseThrow();
        robot.clickOn(poolPoint(150, 12));
        settle();
        var after = window().desk().boat().get().boat().paintedLine().orElseThrow();
        assertEquals(before.aftmostMm(), after.aftmostMm(), "the other end stays");
        assertTrue(after.foremostMm().getZ() < before.foremostMm().getZ() - 5, "the click was under the water");
        assertEquals("painted line", window().desk().undoName().orElseThrow());
    }

    @Test
    void thePoolIsTurnedByDraggingAnywhere() throws Exception {
        settle();
        BufferedImage before = pool();
        robot.drag(poolPoint(-200, 200), MouseButton.PRIMARY)
                .moveBy(40, 0)
                .moveBy(60, 20)
                .drop();
        settle();
        assertNotEquals(fingerprint(before), fingerprint(pool()), "where no part is, the hand turns the view");
        assertEquals("", window().desk().selected().get());
    }

    private BufferedImage pool() {
        BufferedImage[] taken = new BufferedImage[1];
        robot.interact(() -> taken[0] = window().poolPane().picture());
        return taken[0];
    }

    private static long fingerprint(BufferedImage image) {
        long sum = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                sum = 31 * sum + image.getRGB(x, y);
            }
        }
        return sum;
    }

    @Test
    void aPictureIsSavedAndNeverOverAnother() throws Exception {
        settle();
        BufferedImage seen = pool();
        Path to = folder.resolve("pool.png");
        robot.interact(() -> assertTrue(window().files().savePictureTo(seen, folder.resolve("pool"))));
        BufferedImage read = ImageIO.read(to.toFile());
        assertEquals(fingerprint(seen), fingerprint(read));
        assertTrue(seen.getWidth() > 400 && seen.getHeight() > 400);
        byte[] first = Files.readAllBytes(to);
        robot.interact(() -> assertFalse(window().files().savePictureTo(seen, folder.resolve("pool"))));
        assertEquals(first.length, Files.size(to));
        robot.interact(() ->
                robot.lookup(".dialog-pane .button").queryAs(ButtonBase.class).fire());
    }

    @Test
    void aHintThatWasReadDoesNotComeAgainUntilItIsAskedFor() throws Exception {
        settle();
        assertTrue(robot.lookup("#hint-words").query().isVisible());
        robot.clickOn("#hint-read");
        assertFalse(robot.lookup("#hint-words").query().getParent().isVisible());
        robot.interact(() -> {
            window().choose(Job.DIVE);
            window().choose(Job.LOAD);
        });
        assertFalse(robot.lookup("#hint-words").query().getParent().isVisible());
        assertTrue(Settings.in(folder.resolve("home")).is("hint.read.LOAD"), "and the next window knows");
        robot.interact(() -> window().poolPane().hintAgain());
        assertTrue(robot.lookup("#hint-words").query().getParent().isVisible());
    }
}
