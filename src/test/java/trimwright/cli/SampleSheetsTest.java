package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The sample sheets of the documentation are what the program makes. With {@code TRIMWRIGHT_SHEETS=docs/sheets} they are written anew.
 *
 * <p>Words and figures are held to the letter. Letters within plots and pictures are drawn with the fonts of the machine, so pictures are held to
 * look the same.
 */
class SampleSheetsTest {

    private static final Path SHEETS = Path.of("docs", "sheets");
    private static final Pattern PICTURE = Pattern.compile("data:image/png;base64,([^\"]*)");
    private static final Pattern PLOT = Pattern.compile("(?s)<svg.*?</svg>");
    /** Mean difference of a colour that other letters make on a picture, of 255. */
    private static final double OTHER_LETTERS = 4;

    @TempDir
    private Path folder;

    /** A sample and how it is made. */
    enum Sample {
        HERON_HTML("heron.html", "heron", "--plan"),
        HERON_PDF("heron.pdf", "heron", "--plan"),
        DABCHICK("dabchick.html", "dabchick", "--units", "inch", "--paper", "letter"),
        COOT("coot.html", "coot", "--plan");

        private final String file;
        private final String boat;
        private final List<String> options;

        Sample(String file, String boat, String... options) {
            this.file = file;
            this.boat = boat;
            this.options = List.of(options);
        }

        private void make(Path to) {
            List<Object> args = new ArrayList<>(
                    List.of("sheet", "sample-meshes/" + boat + ".boat.json", "--out", to, "--date", "2026-05-17"));
            args.addAll(options);
            args.add("--overwrite");
            Run run = Run.of(args.toArray());
            assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        }
    }

    @ParameterizedTest
    @EnumSource(Sample.class)
    void theSampleIsWhatTheProgramMakes(Sample sample) throws IOException {
        String renew = System.getenv("TRIMWRIGHT_SHEETS");
        if (renew != null) {
            sample.make(Files.createDirectories(Path.of(renew)).resolve(sample.file));
        }
        Path made = folder.resolve(sample.file);
        sample.make(made);
        Path kept = SHEETS.resolve(sample.file);
        if (sample.file.endsWith(".pdf")) {
            assertEquals(words(kept), words(made));
            byte[] once = Files.readAllBytes(made);
            sample.make(made);
            assertArrayEquals(once, Files.readAllBytes(made), "the same twice");
        } else {
            String before = Files.readString(kept);
            String now = Files.readString(made);
            assertEquals(plain(before), plain(now));
            List<BufferedImage> was = pictures(before);
            List<BufferedImage> is = pictures(now);
            assertEquals(was.size(), is.size());
            for (int i = 0; i < was.size(); i++) {
                alike(was.get(i), is.get(i));
            }
        }
    }

    private static String words(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    /** Without what fonts decide: pictures, and where things stand in plots. */
    private static String plain(String html) {
        return PLOT.matcher(PICTURE.matcher(html).replaceAll("picture"))
                .replaceAll(plot -> plot.group().replaceAll("(?s)<[^>]*>", " ").replaceAll("\\s+", " "));
    }

    private static List<BufferedImage> pictures(String html) throws IOException {
        List<BufferedImage> pictures = new ArrayList<>();
        for (MatchResult found : PICTURE.matcher(html).results().toList()) {
            pictures.add(
                    ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(found.group(1)))));
        }
        return pictures;
    }

    private static void alike(BufferedImage a, BufferedImage b) {
        assertEquals(a.getWidth(), b.getWidth());
        assertEquals(a.getHeight(), b.getHeight(), 30);
        long sum = 0;
        int height = Math.min(a.getHeight(), b.getHeight());
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                for (int shift = 0; shift <= 16; shift += 8) {
                    sum += Math.abs((a.getRGB(x, y) >> shift & 0xff) - (b.getRGB(x, y) >> shift & 0xff));
                }
            }
        }
        double mean = sum / (3.0 * height * a.getWidth());
        assertTrue(mean < OTHER_LETTERS, "pictures differ by " + mean);
    }
}
