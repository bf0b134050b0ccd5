package trimwright.bench;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicLong;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Window;
import trimwright.desktop.Launcher;
import trimwright.desktop.tank3d.Tank;

/**
 * How fast the window opens and turns, and what memory it takes: from the start of the virtual machine to the first frame and to the verdict,
 * frames a second while the view is turned, the heap in use after a collection. Frames cannot be had from JMH. Under a screen in memory:
 *
 * <pre>xvfb-run -a -s "-screen 0 1280x800x24" java -cp … trimwright.bench.WindowMeasure sample-meshes/heron.boat.json</pre>
 */
public final class WindowMeasure {

    private static final int FRAMES_TO_SKIP = 10;
    private static final double TURN_S = 10;
    private static final double TURN_DEG = 3;

    private static final AtomicLong FIRST_FRAME_MS = new AtomicLong();
    private static final AtomicLong FIRST_FRAME_CPU_MS = new AtomicLong();

    private WindowMeasure() {}

    public static void main(String[] args) throws InterruptedException {
        Path boat = Path.of(args[0]);
        long began = ManagementFactory.getRuntimeMXBean().getStartTime();
        System.setProperty("trimwright.home", System.getProperty("java.io.tmpdir") + "/trimwright-measure");
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
        System.gc();
        Thread.sleep(300);
        System.gc();
        Runtime runtime = Runtime.getRuntime();
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

    /** Processor time of all threads, the renderer's included. */
    private static long cpuNs() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    private static void say(String words, Object... values) {
        System.out.println(String.format(Locale.ROOT, words, values));
    }
}
