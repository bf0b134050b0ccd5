package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * Sheets as HTML are valid by the checker of the HTML standard (Nu Html Checker), and can be used by who cannot see them: criteria of WCAG 2.1 by
 * their numbers. The samples are what the program makes; another test holds that.
 */
class SheetAccessTest {

    /** WCAG 2.1, 1.4.3: text against its background. */
    private static final double LEAST_CONTRAST = 4.5;
    /** The darkest ground on which a sheet sets text. */
    private static final int GROUND = 0xF3F5F8;

    private static String sheet(String name) throws IOException {
        return Files.readString(Path.of("docs", "sheets", name));
    }

    private static String complaints(String html) throws Exception {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.TEXT);
        // A slash at the end of an empty element does no harm, and lets the file be read as XML too.
        String quiet = html.replaceAll("<(meta|img) ([^>]*)/>", "<$1 $2>");
        try (InputStream in = new ByteArrayInputStream(quiet.getBytes(StandardCharsets.UTF_8))) {
            return validator.validate(in);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron.html", "dabchick.html", "coot.html"})
    void theHtmlIsValid(String name) throws Exception {
        String complaints = complaints(sheet(name));
        assertFalse(complaints.contains("Error") || complaints.contains("Warning"), complaints);
    }

    /** The checker does see what is wrong. */
    @Test
    void theCheckerFindsMistakes() throws Exception {
        String broken = sheet("coot.html")
                .replaceFirst("alt=\"[^\"]*\"", "")
                .replaceFirst("<th ", "<th id=\"a\" ")
                .replaceFirst("<td", "<td id=\"a\"");
        String complaints = complaints(broken);
        assertTrue(complaints.contains("alt") && complaints.contains("Duplicate ID"), complaints);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron.html", "dabchick.html", "coot.html"})
    void everythingHasItsName(String name) throws Exception {
        String text = sheet(name);
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(text.replaceFirst("<!DOCTYPE html>", ""))));
        // 3.1.1 and 2.4.2
        assertEquals("en", document.getDocumentElement().getAttribute("lang"));
        assertFalse(elements(document, "title").get(0).getTextContent().isBlank());
        assertEquals(1, elements(document, "main").size());
        headingsAreInOrder(document);
        // 1.1.1
        for (Element image : elements(document, "img")) {
            assertTrue(image.getAttribute("alt").length() > 20, image.getAttribute("alt"));
        }
        for (Element drawing : elements(document, "svg")) {
            Element holder = (Element) drawing.getParentNode();
            assertEquals("img", holder.getAttribute("role"));
            assertTrue(holder.getAttribute("aria-label").length() > 20, holder.getAttribute("aria-label"));
        }
        tablesHaveHeads(document);
        contrast(text);
    }

    /** 1.3.1: one of the first rank, and no rank left out on the way down. */
    private static void headingsAreInOrder(Document document) {
        List<Integer> ranks = new ArrayList<>();
        NodeList all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            if (all.item(i).getNodeName().matches("h[1-6]")) {
                ranks.add(all.item(i).getNodeName().charAt(1) - '0');
                assertFalse(all.item(i).getTextContent().isBlank());
            }
        }
        assertEquals(1, ranks.get(0));
        assertEquals(1, ranks.stream().filter(r -> r == 1).count());
        for (int i = 1; i < ranks.size(); i++) {
            assertTrue(ranks.get(i) <= ranks.get(i - 1) + 1, "heading " + i + " of " + ranks);
        }
    }

    /** 1.3.1: a caption, heads of columns, and a head for every row. */
    private static void tablesHaveHeads(Document document) {
        for (Element table : elements(document, "table")) {
            String caption = elements(table, "caption").get(0).getTextContent();
            assertFalse(caption.isBlank());
            for (Element head : elements(table, "th")) {
                assertTrue(List.of("col", "row").contains(head.getAttribute("scope")), caption);
                assertFalse(head.getTextContent().isBlank(), caption);
            }
            for (Element row : elements((Element) elements(table, "tbody").get(0), "tr")) {
                assertEquals(1, elements(row, "th").size(), () -> caption + ": " + row.getTextContent());
            }
        }
    }

    private static List<Element> elements(Node within, String name) {
        NodeList nodes = within instanceof Document d
                ? d.getElementsByTagName(name)
                : ((Element) within).getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    /** Every colour of text: of the style, and of words in drawings that do not stand on dark ground of their own. */
    private static void contrast(String text) {
        int found = 0;
        for (Pattern pattern : List.of(
                Pattern.compile("[{ ;]color: #(\\p{XDigit}{6})"),
                Pattern.compile("<text[^>]* fill=\"#(\\p{XDigit}{6})\""))) {
            Matcher colour = pattern.matcher(text);
            while (colour.find()) {
                found++;
                double contrast = contrast(Integer.parseInt(colour.group(1), 16), GROUND);
                assertTrue(contrast >= LEAST_CONTRAST, colour.group() + " has a contrast of " + contrast);
            }
        }
        assertTrue(found >= 2);
    }

    /** WCAG 2.1, definitions of contrast ratio and relative luminance. */
    private static double contrast(int a, int b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 0xff) + 0.7152 * linear(rgb >> 8 & 0xff) + 0.0722 * linear(rgb & 0xff);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    /** Against values of the definition itself: black on white is 21, a colour on itself 1. */
    @Test
    void contrastIsMeasuredAsDefined() {
        assertEquals(21, contrast(0, 0xFFFFFF), 1e-9);
        assertEquals(1, contrast(0x123456, 0x123456), 1e-9);
    }
}
