package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SheetCommandTest {

    private static final Path HERON = Path.of("sample-meshes/heron.boat.json");

    @TempDir
    private Path folder;

    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static void holds(String text, String pattern) {
        assertTrue(Pattern.compile(pattern).matcher(text).find(), () -> "no " + pattern + " in " + text);
    }

    /** The PDF, read by a library of others, holds what float and dive say. */
    @Test
    void thePdfHoldsTheKeyFigures() throws IOException {
        Path pdf = folder.resolve("heron.pdf");
        Run run = Run.of("sheet", HERON, "--out", pdf, "--date", "17 May 2026", "--paper", "letter");
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        JsonNode floated = Run.json("float", HERON).object();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertTrue(document.getNumberOfPages() >= 4);
            assertEquals(215.9 / 25.4 * 72, document.getPage(0).getMediaBox().getWidth(), 0.1);
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertTrue(text.contains("Heron, coastal submarine, 1:60"), text);
            assertTrue(text.contains("17 May 2026"), text);
            holds(
                    text,
                    "Water above the paint, bow "
                            + mm(floated.get("offPaintedLine").get("bowMm").doubleValue())
                            + " mm ± [0-9.]+ within 0.5 NO");
            holds(
                    text,
                    "GM across, surfaced " + mm(floated.get("gmTransverseMm").doubleValue()) + " mm");
            holds(
                    text,
                    "Buoyancy left, dived "
                            + mm(floated.get("submerged").get("residualG").doubleValue()) + " g ± [0-9.]+ 20 to 40 NO");
            assertTrue(text.contains("Lithium batteries burn"), text);
            assertTrue(text.contains("not for craft that carry people"), text);
            assertTrue(text.contains("1 of " + document.getNumberOfPages()), text);
        }
        byte[] bytes = Files.readAllBytes(pdf);
        Run again = Run.of("sheet", HERON, "--out", pdf);
        assertEquals(ExitCode.UNUSABLE, again.exitCode());
        assertArrayEquals(bytes, Files.readAllBytes(pdf));
    }

    /** The HTML is one well-formed document that fetches nothing, with alternatives for every picture. */
    @Test
    void theHtmlStandsAlone() throws Exception {
        Path html = folder.resolve("heron.html");
        Path tables = Files.createDirectory(folder.resolve("tables"));
        Run run = Run.json(
                "sheet", HERON, "--plan", "--pool", "sample-meshes/heron.pool.json", "--out", html, "--csv", tables);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        String text = Files.readString(html);
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(text.replaceFirst("<!DOCTYPE html>", ""))));
        NodeList images = document.getElementsByTagName("img");
        assertEquals(2, images.getLength());
        for (int i = 0; i < images.getLength(); i++) {
            assertFalse(images.item(i)
                    .getAttributes()
                    .getNamedItem("alt")
                    .getNodeValue()
                    .isBlank());
            assertTrue(images.item(i)
                    .getAttributes()
                    .getNamedItem("src")
                    .getNodeValue()
                    .startsWith("data:image/png;base64,"));
        }
        assertTrue(document.getElementsByTagName("svg").getLength() >= 3);
        assertFalse(text.contains("src=\"http") || text.contains("href=\"http://") && text.contains("<link"));
        assertTrue(text.contains("With the plan carried out"), "verdict");
        assertTrue(text.contains("What the pool said"), "pool");
        JsonNode written = run.object().get("written");
        assertTrue(written.size() > 8);
        List<String> weights = Files.readAllLines(tables.resolve("weights.csv"));
        assertTrue(weights.get(0).startsWith("part,weight g,x mm,y mm,z mm"), weights.get(0));
        assertTrue(weights.get(weights.size() - 1).startsWith("all together,"), weights.toString());
    }

    @Test
    void printsAreEstimatedAndASoakingInfillIsTold() throws IOException {
        String boat = Files.readString(Path.of("sample-meshes/dabchick.boat.json"))
                .replaceFirst(
                        "\"build\": \"printed\"",
                        "\"build\": \"printed\", \"infill\": {\"wallMm\": 0.4, \"percent\": 20}");
        for (Path mesh : Files.list(Path.of("sample-meshes"))
                .filter(p -> p.toString().endsWith(".stl"))
                .toList()) {
            Files.copy(mesh, folder.resolve(mesh.getFileName()));
        }
        Path file = Files.writeString(folder.resolve("dabchick.boat.json"), boat);
        Path html = folder.resolve("dabchick.html");
        Run run = Run.of("sheet", file, "--out", html);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        String text = Files.readString(html);
        assertTrue(text.contains("20 %, walls 0.4 mm"), "infill");
        assertTrue(text.contains("If the infill is not sealed"), "soaking");
        // Of what the walls leave, 80 % is hollow: a wall of 0.4 mm on every surface, and volume and area as inspect
        // measures them.
        JsonNode stern =
                Run.json("inspect", Path.of("sample-meshes/dabchick-stern.stl")).object();
        double hollow = 0.8
                * (stern.get("volumeCm3").doubleValue()
                        - 0.04 * stern.get("areaCm2").doubleValue());
        holds(text, "stern</th><td>20 %, walls 0.4 mm</td>.*<td class=\"r\">" + mm(hollow) + "</td></tr>");
    }

    /** What dive --json says of depth, where foam gives way and soaks; nothing on the sheet of a boat whose parts stay as they are. */
    @Test
    void depthIsToldWherePartsGiveWay() throws IOException {
        Path csv = Files.createDirectory(folder.resolve("csv"));
        assertEquals(
                ExitCode.DONE, Run.of("sheet", HERON, "--csv", csv).exitCode(), "a boat whose parts stay as they are");
        assertFalse(Files.exists(csv.resolve("depth.csv")));
        String boat = Files.readString(HERON)
                .replace(
                        "\"kind\": \"foam\",",
                        "\"kind\": \"foam\", \"compressionPercentPerM\": 8, \"uptakePercent\": 5,");
        Files.copy(Path.of("sample-meshes/heron-hull.stl"), folder.resolve("heron-hull.stl"));
        Path soft = Files.writeString(folder.resolve("soft.boat.json"), boat);
        Path html = folder.resolve("soft.html");
        Run run = Run.of("sheet", soft, "--csv", csv, "--overwrite", "--out", html);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        JsonNode depth = Run.json("dive", soft).object().get("depth");
        List<String> lines = Files.readAllLines(csv.resolve("depth.csv"));
        assertEquals(depth.get("rows").size() + 1, lines.size());
        for (int i = 0; i < depth.get("rows").size(); i++) {
            JsonNode row = depth.get("rows").get(i);
            String expected = String.join(
                    ",",
                    mm(row.get("depthM").doubleValue()),
                    mm(row.get("residualG").doubleValue()),
                    mm(row.get("soakedResidualG").doubleValue()));
            assertTrue(lines.get(i + 1).startsWith(expected + ","), lines.get(i + 1) + " for " + expected);
        }
        String text = Files.readString(html).replace('\u00A0', ' ');
        holds(text, "From " + mm(depth.get("noReturnM").doubleValue()) + " m down she no longer comes up by herself");
    }

    /** The lines of the checklist, heading by heading, have keys of a reading, in the order in which the schema has them. */
    @Test
    void theChecklistIsInTheOrderOfAFileOfReadings() throws IOException {
        String schema = Files.readString(Path.of("docs/pool-file.schema.json"));
        Path html = folder.resolve("list.html");
        assertEquals(ExitCode.DONE, Run.of("sheet", HERON, "--out", html).exitCode());
        String text = Files.readString(html);
        String list = text.substring(text.indexOf("In the pool</h2>"));
        String[] readings = list.split("<h3>", -1);
        assertEquals(7, readings.length, "what comes before, and six readings");
        for (int i = 1; i < readings.length; i++) {
            Matcher key =
                    Pattern.compile("<span>[^<]*\\((\\w+)\\)</span></div>").matcher(readings[i]);
            int before = 0;
            int keys = 0;
            while (key.find()) {
                int at = schema.indexOf('"' + key.group(1) + "\": {");
                assertTrue(at >= before, key.group(1) + " stands elsewhere in the schema, in " + readings[i]);
                before = at;
                keys++;
            }
            assertTrue(keys > 0, readings[i]);
        }
    }

    @Test
    void wrongInputIsToldInALine() {
        Run nothing = Run.of("sheet", HERON);
        assertEquals(ExitCode.UNUSABLE, nothing.exitCode());
        assertTrue(nothing.err().contains("--out"), nothing.err());
        Run odd = Run.json("sheet", HERON, "--out", folder.resolve("heron.docx"));
        assertEquals(ExitCode.UNUSABLE, odd.exitCode());
        assertEquals("", odd.out());
        assertTrue(odd.err().contains(".docx"), odd.err());
        Run noFolder = Run.json("sheet", HERON, "--out", folder.resolve("none/heron.pdf"));
        assertEquals(ExitCode.UNUSABLE, noFolder.exitCode());
        Run paper = Run.json("sheet", HERON, "--out", folder.resolve("a.pdf"), "--paper", "a5");
        assertEquals(ExitCode.UNUSABLE, paper.exitCode());
        assertTrue(paper.err().contains("letter"), paper.err());
    }

    /** In inches nothing is left in mm or g but what the file of readings takes; 25.4 mm and 28.349523125 g exactly (agreement of 1959). */
    @Test
    void aSheetInInchesIsInInchesThroughout() throws IOException {
        Path html = folder.resolve("heron.html");
        Path tables = Files.createDirectory(folder.resolve("inch"));
        Run run = Run.of("sheet", HERON, "--plan", "--units", "inch", "--out", html, "--csv", tables);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        String text = Files.readString(html)
                .replaceAll("data:image/png;base64,[^\"]*", "")
                .replaceAll("<style>(?s:.*?)</style>", "")
                .replace("The file takes mm, g and degrees", "")
                .replaceAll("\\((aboveMm|hangingG)\\)", "")
                .replace('\u00A0', ' ');

        Matcher metric =
                Pattern.compile("[^<>]*[0-9 ](mm|cm³|g·mm|g)\\b(?!/)[^<>]*").matcher(text.replaceAll("<[^>]*>", "\n"));
        assertFalse(metric.find(), () -> metric.group());
        List<String> weights = Files.readAllLines(tables.resolve("weights.csv"));
        assertTrue(weights.get(0).startsWith("part,weight oz,x in,y in,z in,along oz·in"), weights.get(0));
        String cylinder = weights.stream()
                .filter(l -> l.startsWith("cylinder,"))
                .findFirst()
                .orElseThrow();
        assertTrue(
                cylinder.startsWith(String.format(Locale.ROOT, "cylinder,%.2f,%.3f,", 702 / 28.349523125, 590 / 25.4)),
                cylinder);
        for (Path table : Files.list(tables).toList()) {
            String head = Files.readAllLines(table).get(0);
            assertFalse(Pattern.compile("\\b(mm|cm³|g)\\b").matcher(head).find(), table + ": " + head);
        }
    }

    private Path changed(String sample, UnaryOperator<String> change) throws IOException {
        for (Path mesh : Files.list(Path.of("sample-meshes"))
                .filter(p -> p.toString().endsWith(".stl"))
                .toList()) {
            Files.copy(mesh, folder.resolve(mesh.getFileName()));
        }
        String boat = Files.readString(Path.of("sample-meshes", sample + ".boat.json"));
        String other = change.apply(boat);
        assertFalse(boat.equals(other));
        return Files.writeString(folder.resolve(sample + ".boat.json"), other);
    }

    /** A boat that sinks has her sheet: it says so, and shows her under water. */
    @Test
    void aBoatThatSinksIsToldAndShown() throws IOException {
        Path file = changed("heron", s -> s.replace("\"massG\": 424", "\"massG\": 1424"));
        Path html = folder.resolve("sinks.html");
        Run run = Run.of("sheet", file, "--out", html);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        String text = Files.readString(html).replace('\u00A0', ' ');
        holds(text, "class=\"verdict\">She sinks: she is [0-9.]+ g heavier");
        assertTrue(text.contains("The boat under water from starboard"), "picture");
        assertTrue(text.contains("mend that first"), "checklist");
    }

    /** A tug that runs on clockwork, with nothing of lead: no caution about what is not in her. Greek and Cyrillic are printed, and what is not is told. */
    @Test
    void cautionsFitTheBoatAndNamesArePrinted() throws IOException {
        Path file = changed(
                "coot",
                s -> s.replace("\"battery\"", "\"spring\"")
                        .replace("\"bilge lead\", \"kind\": \"ballast\"", "\"brass bar\", \"kind\": \"fitting\"")
                        .replace("Coot, harbour tug", "Чайка Κάστορας 潜"));
        Path pdf = folder.resolve("tug.pdf");
        Run run = Run.of("sheet", file, "--out", pdf);
        assertEquals(ExitCode.DONE, run.exitCode(), run.err());
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertTrue(text.contains("Чайка Κάστορας ?"), text);
            assertTrue(text.contains("stand as ?; the same sheet as HTML has them all"), text);
            assertFalse(text.contains("Lithium") || text.contains("batteries sealed in"), text);
            assertFalse(text.contains("Lead is") || text.contains("gas or pressure"), text);
            assertTrue(text.contains("not for craft that carry people"), text);
        }
    }
}
