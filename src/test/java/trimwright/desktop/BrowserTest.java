package trimwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.scene.image.WritableImage;
import javafx.scene.robot.Robot;
import javafx.stage.Screen;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The sample sheets in a real browser: printed, pictured, and the PDF in its reader. Skipped where there is no browser. */
@EnabledIf(value = "trimwright.desktop.BrowserTest#isBrowserThere", disabledReason = "there is no Chromium")
class BrowserTest {

    private static final Path SHEETS = Path.of("docs", "sheets").toAbsolutePath();
    private static final int PATIENCE_S = 60;
    private static final double MM_PER_POINT = 25.4 / 72;
    /** The orange of the painted line in pictures. */
    private static final int PAINT = 0xC8420A;

    @TempDir
    private Path folder;

    static boolean isBrowserThere() {
        return browser().isPresent();
    }

    private static Optional<Path> browser() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .flatMap(dir -> Stream.of("chromium", "chromium-browser", "google-chrome")
                        .map(n -> Path.of(dir, n)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    @BeforeEach
    void profileIsFresh() throws IOException {
        Files.createDirectory(folder.resolve("profile"));
    }

    private Process start(String... options) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                browser().orElseThrow().toString(),
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + folder.resolve("profile")));
        command.addAll(List.of(options));
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("browser.log").toFile())
                .start();
    }

    private void run(String... options) throws IOException, InterruptedException {
        Process process = start(options);
        boolean ended = process.waitFor(PATIENCE_S, TimeUnit.SECONDS);
        if (!ended) {
            process.destroyForcibly();
        }
        assertTrue(ended, "the browser did not end");
        assertEquals(0, process.exitValue(), Files.readString(folder.resolve("browser.log")));
    }

    private static double inked(BufferedImage image) {
        long dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                dark += (rgb >> 16 & 0xff) + (rgb >> 8 & 0xff) + (rgb & 0xff) < 3 * 128 ? 1 : 0;
            }
        }
        return dark / (double) (image.getWidth() * image.getHeight());
    }

    private static long ofPaint(BufferedImage image) {
        long found = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                boolean near = true;
                for (int shift = 0; shift <= 16; shift += 8) {
                    near &= Math.abs((rgb >> shift & 0xff) - (PAINT >> shift & 0xff)) < 40;
                }
                found += near ? 1 : 0;
            }
        }
        return found;
    }

    /** Printed by the browser: the size of the paper, words, no page left blank, as many pages as the PDF, give or take one. */
    @ParameterizedTest
    @CsvSource({
        "heron.html, 210, 297, 7, GM across, 20 to 40",
        "dabchick.html, 215.9, 279.4, 6, inches, ounces by 28.35",
        "coot.html, 210, 297, 5, harbour tug, at least 12"
    })
    void theHtmlPrints(String name, double widthMm, double heightMm, int pages, String one, String other)
            throws Exception {
        Path pdf = folder.resolve("printed.pdf");
        run(
                "--headless",
                "--no-pdf-header-footer",
                "--print-to-pdf=" + pdf,
                SHEETS.resolve(name).toUri().toString());
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertEquals(pages, document.getNumberOfPages(), 1);
            assertEquals(widthMm, document.getPage(0).getMediaBox().getWidth() * MM_PER_POINT, 0.5);
            assertEquals(heightMm, document.getPage(0).getMediaBox().getHeight() * MM_PER_POINT, 0.5);
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertTrue(text.contains(one) && text.contains(other), text);
            assertTrue(text.contains("not for craft that carry people"), text);
            PDFRenderer renderer = new PDFRenderer(document);
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                double inked = inked(renderer.renderImageWithDPI(i, 50));
                assertTrue(inked > 0.002, "page " + (i + 1) + " is blank: " + inked);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"heron.html", "dabchick.html", "coot.html"})
    void theHtmlShows(String name) throws Exception {
        Path shot = folder.resolve("shot.png");
        run(
                "--headless",
                "--window-size=1000,1400",
                "--screenshot=" + shot,
                SHEETS.resolve(name).toUri().toString());
        BufferedImage image = ImageIO.read(shot.toFile());
        assertTrue(inked(image) > 0.01, "blank: " + inked(image));
        assertTrue(ofPaint(image) > 50, "the picture is missing: " + ofPaint(image));
    }

    /** Without a display the browser shows no PDF: its reader is a window. */
    @Test
    void thePdfOpensInTheReader() throws Exception {
        assumeTrue(WindowCase.isDisplayThere(), "there is no display");
        System.setProperty("testfx.robot", "glass");
        FxToolkit.registerPrimaryStage();
        Process process = start(
                "--window-size=1000,900",
                "--window-position=0,0",
                SHEETS.resolve("heron.pdf").toUri().toString());
        try {
            BufferedImage seen = null;
            long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
            while (seen == null || ofPaint(seen) <= 50 && System.nanoTime() < until) {
                TimeUnit.MILLISECONDS.sleep(500);
                seen = screen();
            }
            assertTrue(process.isAlive(), "the browser ended");
            assertTrue(ofPaint(seen) > 50, "the picture is missing: " + ofPaint(seen));
        } finally {
            process.descendants().forEach(ProcessHandle::destroy);
            process.destroy();
            process.waitFor(PATIENCE_S, TimeUnit.SECONDS);
        }
    }

    private static BufferedImage screen() throws Exception {
        return WaitForAsyncUtils.asyncFx(() -> {
                    WritableImage image = new Robot()
                            .getScreenCapture(null, Screen.getPrimary().getBounds());
                    return WindowCase.copy(image);
                })
                .get(PATIENCE_S, TimeUnit.SECONDS);
    }
}
