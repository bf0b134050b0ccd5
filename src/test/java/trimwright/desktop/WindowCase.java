package trimwright.desktop;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Scene;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The real window on a display, with a home of its own. Where there is no display its tests are skipped. */
abstract class WindowCase {

    private static final int PATIENCE_S = 30;

    static {
        // The toolkit's own robot needs no AWT; software drivers must be allowed explicitly.
        System.setProperty("testfx.robot", "glass");
        System.setProperty("prism.forceGPU", "true");
    }

    @TempDir
    Path folder;

    final FxRobot robot = new FxRobot();
    private WindowApplication application;

    /** Conditions on this class do not reach the classes that extend it; this does. */
    @BeforeAll
    static void needsADisplay() {
        assumeTrue(isDisplayThere(), "there is no display");
    }

    static boolean isDisplayThere() {
        boolean linux = System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("linux");
        return !linux
                || System.getenv("DISPLAY") != null && !System.getenv("DISPLAY").isEmpty();
    }

    /** What the window opens. */
    Path toOpen() {
        return Path.of("sample-meshes", "heron.boat.json");
    }

    @BeforeEach
    void openWindow() throws TimeoutException {
        System.setProperty("trimwright.home", folder.resolve("home").toString());
        FxToolkit.registerPrimaryStage();
        WindowApplication.opening(toOpen(), true);
        application = (WindowApplication) FxToolkit.setupApplication(WindowApplication.class);
        // Without a window manager nobody gives the window the keys.
        robot.interact(() -> window().takeKeys());
        waitUntil(() -> application.window().desk().flotation().get() != null);
    }

    @AfterEach
    void closeWindow() throws TimeoutException {
        FxToolkit.cleanupApplication(application);
        FxToolkit.cleanupStages();
    }

    MainWindow window() {
        return application.window();
    }

    static void waitUntil(Callable<Boolean> condition) throws TimeoutException {
        WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, condition);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Waits until nothing is worked out any more, and what moves has come to rest. */
    void settle() throws TimeoutException {
        WaitForAsyncUtils.waitForFxEvents();
        waitUntil(() -> !window().desk().busy().get());
        robot.sleep(700);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** A picture of the window, kept where the property {@code trimwright.pictures} says, if it does. */
    void picture(String name) throws IOException {
        String to = System.getProperty("trimwright.pictures", System.getenv("TRIMWRIGHT_PICTURES"));
        if (to == null) {
            return;
        }
        Scene scene = robot.lookup("#verdict").query().getScene();
        WritableImage[] taken = new WritableImage[1];
        robot.interact(() -> taken[0] = scene.snapshot(null));
        Files.createDirectories(Path.of(to));
        ImageIO.write(copy(taken[0]), "png", Path.of(to, name + ".png").toFile());
    }

    /** The same picture for everyone else. */
    static BufferedImage copy(WritableImage image) {
        PixelReader pixels = image.getPixelReader();
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                copy.setRGB(x, y, pixels.getArgb(x, y));
            }
        }
        return copy;
    }
}
