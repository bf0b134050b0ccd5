package trimwright.report.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.finding.Code;
import trimwright.finding.UnusableInputException;

/** Plots as they are written: text that is text, curves where their values are. */
class PlotTest {

    private static final String FILL = "fill, %";

    @TempDir
    Path folder;

    private static Plot.Curve curve(String name, double... y) {
        double[] x = new double[y.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = 100.0 * i / (x.length - 1);
        }
        return new Plot.Curve(name, x, y);
    }

    private static Plot dive() {
        Plot.Panel stability = new Plot.Panel(
                FILL,
                "GM and BG, mm",
                List.of(curve("GM", 9, 4, 2, 3, 6), curve("BG & more", 3, 4, 5, 5.5, 6)),
                List.of(new Plot.Mark("least GM < 3 mm", 50, 2)),
                List.of(
                        new Plot.Band("below target", Plot.Axis.Y, -50, 4),
                        new Plot.Band("deck awash", Plot.Axis.X, 40, 60)));
        Plot.Panel trim = new Plot.Panel(FILL, "trim, °", List.of(curve("trim", 0, 0.5, -0.5, 1, 0)), List.of());
        return new Plot("The dive", List.of(stability, trim));
    }

    private String svg(Plot plot, String name) throws Exception {
        Path file = folder.resolve(name);
        plot.write(file, false);
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    /** A text element and where it stands. */
    private record Text(String text, double x, double y) {}

    private static List<Text> texts(String svg) {
        List<Text> texts = new ArrayList<>();
        Matcher m = Pattern.compile("<text style=\"[^\"]*\" x=\"([-0-9.]+)\" y=\"([-0-9.]+)\">([^<]*)</text>")
                .matcher(svg);
        while (m.find()) {
            String text = m.group(3).replace("&lt;", "<").replace("&amp;", "&");
            texts.add(new Text(text, Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))));
        }
        return texts;
    }

    private static Text text(List<Text> texts, String wanted) {
        return texts.stream()
                .filter(t -> t.text().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new AssertionError(wanted + " not in " + texts));
    }

    @Test
    void allTextIsText() throws Exception {
        List<Text> texts = texts(svg(dive(), "dive.svg"));
        for (String wanted : List.of(
                "The dive",
                FILL,
                "GM and BG, mm",
                "trim, °",
                "GM",
                "BG & more",
                "least GM < 3 mm",
                "below target",
                "deck awash",
                "−0.5",
                "100")) {
            text(texts, wanted);
        }
        // Both panels run over the fill: one axis is lettered. A single curve needs no legend.
        assertEquals(1, texts.stream().filter(t -> t.text().equals(FILL)).count());
        assertEquals(0, texts.stream().filter(t -> t.text().equals("trim")).count());
    }

    @Test
    void fontsOfOtherMachinesWillDo() throws Exception {
        String svg = svg(dive(), "dive.svg");
        int named = svg.split("font-family:").length;
        assertTrue(named > 10);
        assertEquals(named, svg.split("font-family:&quot;[^&]*&quot;,sans-serif").length);
    }

    /**
     * A curve that rises from 0 to 10 over the whole range: its ends stand level with the labels of the ticks 0 and 10, and
     * halfway it is halfway.
     */
    @Test
    void curvesStandWhereTheirTicksSay() throws Exception {
        double[] y = {0, 2.5, 5, 7.5, 10};
        Plot plot = new Plot("Line", List.of(new Plot.Panel("x", "y", List.of(curve("line", y)), List.of())));
        String svg = svg(plot, "line.svg");
        List<Text> texts = texts(svg);
        double rise = text(texts, "0").y() - text(texts, "10").y();
        Matcher move = Pattern.compile("<g clip-path=\"[^\"]*\" transform=\"translate\\(([0-9.]+) ([0-9.]+)\\)\">")
                .matcher(svg);
        assertTrue(move.find());
        Matcher pieces = Pattern.compile("<line style=\"[^\"]*stroke:rgb\\(11,92,148\\)[^\"]*\" "
                        + "x1=\"([-0-9.]+)\" x2=\"([-0-9.]+)\" y1=\"([-0-9.]+)\" y2=\"([-0-9.]+)\"")
                .matcher(svg);
        List<double[]> ends = new ArrayList<>();
        while (pieces.find()) {
            ends.add(new double[] {Double.parseDouble(pieces.group(2)), Double.parseDouble(pieces.group(4))});
        }
        assertEquals(4, ends.size());
        double width = ends.get(3)[0];
        for (int i = 0; i < 4; i++) {
            assertEquals(width * (i + 1) / 4, ends.get(i)[0], 1e-6);
            assertEquals(rise * (1 - (i + 1) / 4.0), ends.get(i)[1], 1e-3);
        }
        // Labels stand centred on their ticks, so that the baseline is half a capital lower.
        double half = text(texts, "10").y() - Double.parseDouble(move.group(2));
        assertTrue(half > 2 && half < 7, "half a capital: " + half);
    }

    @Test
    void theSamePlotGivesTheSameFile() throws Exception {
        assertEquals(svg(dive(), "one.svg"), svg(dive(), "other.svg"));
        dive().write(folder.resolve("one.png"), false);
        dive().write(folder.resolve("other.png"), false);
        assertArrayEquals(
                Files.readAllBytes(folder.resolve("one.png")), Files.readAllBytes(folder.resolve("other.png")));
    }

    @Test
    void pngIsTwiceAsFine() throws Exception {
        Path file = folder.resolve("Dive.PNG");
        dive().write(file, false);
        BufferedImage image = ImageIO.read(file.toFile());
        assertEquals(1800, image.getWidth());
        assertEquals(dive().draw(900).getHeight() * 2, image.getHeight());
    }

    /** A range darkens the ground between its ends, and nothing outside it. */
    @Test
    void rangesAreShaded() {
        Plot.Curve flat = curve("flat", 0, 10);
        Plot.Band band = new Plot.Band("", Plot.Axis.X, 25, 75);
        BufferedImage plain = panel(flat, List.of()).draw(900);
        BufferedImage shaded = panel(flat, List.of(band)).draw(900);
        int row = plain.getHeight() / 2 + 20;
        int first = -1;
        int last = -1;
        for (int x = 0; x < 900; x++) {
            if (plain.getRGB(x, row) != shaded.getRGB(x, row)) {
                first = first < 0 ? x : first;
                last = x;
            }
        }
        int left = firstInked(plain, row, 0, 1);
        int right = firstInked(plain, row, 899, -1);
        assertEquals(left + 0.25 * (right - left), first, 2);
        assertEquals(left + 0.75 * (right - left), last, 2);
    }

    private static Plot panel(Plot.Curve curve, List<Plot.Band> bands) {
        return new Plot("Range", List.of(new Plot.Panel("x", "y", List.of(curve), List.of(), bands)));
    }

    private static int firstInked(BufferedImage image, int row, int from, int step) {
        int x = from;
        while ((image.getRGB(x, row) & 0xffffff) == 0xffffff) {
            x += step;
        }
        return x;
    }

    @Test
    void endingsThatCannotBeWrittenAreRefused() throws Exception {
        Path file = folder.resolve("dive.pdf");
        UnusableInputException e = assertThrows(UnusableInputException.class, () -> dive().write(file, false));
        assertEquals(Code.PICTURE_FORMAT_UNKNOWN, e.findings().get(0).code());
        assertEquals(".pdf", e.findings().get(0).values().get("found"));
        assertEquals(List.of(".svg", ".png"), e.findings().get(0).values().get("allowed"));
        try (var files = Files.list(folder)) {
            assertEquals(0, files.count());
        }
    }

    @Test
    void leavesAloneWhatIsThere() throws Exception {
        Path file = folder.resolve("dive.svg");
        Files.writeString(file, "mine");
        UnusableInputException e = assertThrows(UnusableInputException.class, () -> dive().write(file, false));
        assertEquals(Code.FILE_EXISTS, e.findings().get(0).code());
        assertEquals("mine", Files.readString(file));
        dive().write(file, true);
        assertTrue(Files.readString(file).endsWith("</svg>\n"));
    }

    @Test
    void refusesWhatCannotBePlotted() {
        assertThrows(IllegalArgumentException.class, () -> new Plot("", List.of()));
        assertThrows(IllegalArgumentException.class, () -> curve("", 1, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> new Plot.Curve("", new double[] {1, 2}, new double[] {1}));
        Plot.Curve empty = curve("", Double.NaN, Double.NaN);
        assertThrows(IllegalArgumentException.class, () -> panel(empty, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Plot.Band("", Plot.Axis.Y, 2, 2));
        assertThrows(IllegalArgumentException.class, () -> new Plot.Mark("", Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> dive().draw(10));
    }

    /** Many curves of one name, a gap, no height, one point: nothing of it fails. */
    @Test
    void oddDataCanBePlotted() {
        List<Plot.Curve> many = Collections.nCopies(9, curve("same", 5, 5, Double.NaN, 5, 5));
        Plot plot = new Plot(
                "Odd",
                List.of(
                        new Plot.Panel("a", "flat", many, List.of()),
                        new Plot.Panel(
                                "b",
                                "point",
                                List.of(new Plot.Curve("p", new double[] {3}, new double[] {0})),
                                List.of()),
                        new Plot.Panel("c", "tiny", List.of(curve("t", 1e-7, 2e-7)), List.of())));
        assertTrue(plot.draw(600).getHeight() > 300);
    }
}
