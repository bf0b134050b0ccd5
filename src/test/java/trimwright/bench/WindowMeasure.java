package trimwright.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import javafx.animation.AnimationTimer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.SubScene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Window;
import javafx.util.Duration;
import trimwright.desktop.Launcher;
import trimwright.desktop.tank3d.Tank;
import trimwright.file.OwnFolder;

/**
 * How fast the window opens and turns, and what memory it takes: from the start of the virtual machine to the first frame and to the verdict,
 * frames a second while the view is turned, how soon a part that is dragged is answered, memory. Frames cannot be had from JMH. Under a screen in memory:
 *
 * <pre>xvfb-run -a -s "-screen 0 1280x800x24" java -cp … trimwright.bench.WindowMeasure sample-meshes/heron.boat.json "keel lead"</pre>
 */
public final class WindowMeasure {

    private static final int FRAMES_TO_SKIP = 10;
    private static final double TURN_S = 10;
    private static final double TURN_DEG = 3;
    private static final int WARM_UP = 20;
    private static final int MOVES = 100;
    private static final Duration BETWEEN_MOVES = Duration.millis(60);

    private static final AtomicLong FIRST_FRAME_MS = new AtomicLong();
    private static final AtomicLong FIRST_FRAME_CPU_MS = new AtomicLong();

    private WindowMeasure() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path boat = Path.of(args[0]);
        long began = ManagementFactory.getRuntimeMXBean().getStartTime();
        // As after the first start, which unpacks the toolkit's libraries.
        System.setProperty(
                "javafx.cachedir", OwnFolder.usual().resolve("toolkit").toString());
        // A fresh one: work that a broken off run left would be offered in a dialog before everything else.
        System.setProperty(
                "trimwright.home",
                Files.createTempDirectory("trimwright-measure").toString());
        Thread window = new Thread(() -> Launcher.open(boat, true), "window");
        window.start();
        Scene scene = scene();
        firstFrame();
        Label verdict = (Label) scene.lookup("#verdict");
        while (verdict.getText().isEmpty()) {
            Thread.sleep(5);
        }
        say(
                "first frame %d ms after the start of Java (processor time %d ms), verdict %d ms (%d ms)",
                FIRST_FRAME_MS.get() - began, FIRST_FRAME_CPU_MS.get(), now() - began, cpuNs() / 1_000_000);
        Thread.sleep(4000);
        say("frames a second while turning at %.0f x %.0f: %s", scene.getWidth(), scene.getHeight(), turn(scene));
        if (args.length > 1) {
            say("from the part moved by the hand to the readings that show it: %s", drag(scene, args[1]));
        }
        System.gc();
        Thread.sleep(300);
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        say("most memory of the process %s", mostMemory());
        say("heap in use %d MB", (runtime.totalMemory() - runtime.freeMemory()) >> 20);
        Runtime.getRuntime().halt(0);
    }

    private static long now() {
        return System.currentTimeMillis();
    }

    private static Scene scene() throws InterruptedException {
        while (true) {
            Thread.sleep(2);
            for (Window window : Window.getWindows().toArray(Window[]::new)) {
                if (window.isShowing() && window.getScene() != null) {
                    return window.getScene();
                }
            }
        }
    }

    /** The first is on the screen when the second is asked for. */
    private static void firstFrame() throws InterruptedException {
        CountDownLatch seen = new CountDownLatch(2);
        Platform.runLater(() -> new AnimationTimer() {
            @Override
            public void handle(long nanos) {
                if (seen.getCount() == 1) {
                    FIRST_FRAME_MS.set(now());
                    FIRST_FRAME_CPU_MS.set(cpuNs() / 1_000_000);
                    stop();
                }
                seen.countDown();
            }
        }.start());
        seen.await();
    }

    private static String turn(Scene scene) throws InterruptedException {
        Node found = scene.lookup(".tank");
        if (!(found instanceof Tank tank)) {
            return "no 3D";
        }
        long[] times = new long[10_000];
        int[] count = {0};
        CountDownLatch done = new CountDownLatch(1);
        Platform.runLater(() -> new AnimationTimer() {
            @Override
            public void handle(long nanos) {
                times[count[0]++] = System.nanoTime();
                tank.nudge(TURN_DEG, 0, 1);
                if (times[count[0] - 1] - times[0] > TURN_S * 1e9 || count[0] == times.length) {
                    stop();
                    done.countDown();
                }
            }
        }.start());
        long cpuBefore = cpuNs();
        done.await();
        double cpuMs = (cpuNs() - cpuBefore) / 1e6 / count[0];
        double[] gaps = new double[Math.max(1, count[0] - 1 - FRAMES_TO_SKIP)];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = (times[i + 1 + FRAMES_TO_SKIP] - times[i + FRAMES_TO_SKIP]) / 1e6;
        }
        double mean = Arrays.stream(gaps).average().orElseThrow();
        Arrays.sort(gaps);
        return String.format(
                Locale.ROOT,
                "%.1f on average, the slowest tenth %.1f; processor time a frame %.1f ms",
                1000 / mean,
                1000 / gaps[(int) (0.9 * gaps.length)],
                cpuMs);
    }

    /** Takes a part and moves it to and fro along the boat, after the readings show the last move. */
    private static String drag(Scene scene, String part) throws InterruptedException {
        double[] ms = new double[MOVES];
        CountDownLatch done = new CountDownLatch(1);
        Platform.runLater(((Button) scene.lookup("#view-side"))::fire);
        // The view turns there smoothly; the part lies still only then.
        Thread.sleep(2000);
        Platform.runLater(() -> {
            Robot robot = new Robot();
            Node body = body(scene.getRoot(), part);
            Bounds bounds = body.localToScreen(body.getBoundsInLocal());
            Point2D at = new Point2D(bounds.getCenterX(), bounds.getCenterY());
            robot.mouseMove(at);
            robot.mouseClick(MouseButton.PRIMARY);
            robot.mousePress(MouseButton.PRIMARY);
            move(scene, robot, at, ms, done);
        });
        done.await();
        Arrays.sort(ms);
        return String.format(
                Locale.ROOT,
                "%.0f ms in the middle, %.0f ms 95 of 100, %.0f ms at most",
                ms[MOVES / 2],
                ms[MOVES * 95 / 100],
                ms[MOVES - 1]);
    }

    private static void move(Scene scene, Robot robot, Point2D from, double[] ms, CountDownLatch done) {
        long[] movedNs = {0};
        int[] number = {-WARM_UP};
        PauseTransition next = new PauseTransition(BETWEEN_MOVES);
        next.setOnFinished(e -> {
            if (number[0] == MOVES) {
                robot.mouseRelease(MouseButton.PRIMARY);
                done.countDown();
                return;
            }
            movedNs[0] = System.nanoTime();
            robot.mouseMove(from.add(number[0] % 2 == 0 ? 30 : 50, 0));
        });
        for (Node reading : scene.getRoot().lookupAll(".reading-value")) {
            ((Label) reading).textProperty().addListener((o, was, now) -> {
                if (movedNs[0] > 0) {
                    if (number[0] >= 0) {
                        ms[number[0]] = (System.nanoTime() - movedNs[0]) / 1e6;
                    }
                    number[0]++;
                    movedNs[0] = 0;
                    next.playFromStart();
                }
            });
        }
        next.play();
    }

    private static Node body(Node node, String part) {
        if (part.equals(node.getUserData())) {
            return node;
        }
        Parent parent = node instanceof SubScene scene ? scene.getRoot() : node instanceof Parent p ? p : null;
        return parent == null
                ? null
                : parent.getChildrenUnmodifiable().stream()
                        .map(child -> body(child, part))
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(null);
    }

    /** As Linux counts it; elsewhere nothing. */
    private static String mostMemory() {
        try (Stream<String> lines = Files.lines(Path.of("/proc/self/status"))) {
            return lines.filter(l -> l.startsWith("VmHWM")).findFirst().orElse("");
        } catch (IOException e) {
            return "not known here";
        }
    }

    /** Processor time of all threads, the renderer's included. */
    private static long cpuNs() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    private static void say(String words, Object... values) {
        System.out.println(String.format(Locale.ROOT, words, values));
    }
}
