package trimwright.report.sheet;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The letters of a sheet as PDF. The fonts that every reader has know the letters of western Europe; for others a font that comes with the PDF library is put into
 * the file. What neither has stands as a question mark, and a note says so.
 */
final class PdfLetters {

    static final String FONT_NAME = "LiberationSans-Regular.ttf";
    /** Where PDFBox keeps the font (SIL Open Font License). */
    private static final String FONT_PLACE = "/org/apache/pdfbox/resources/ttf/" + FONT_NAME;

    private static final String WIDE = "Wide";
    private static final String UNKNOWN = "?";

    /** The letters of the fonts that every reader has. */
    private final CharsetEncoder common = Charset.forName("windows-1252").newEncoder();

    /** The font for other letters; empty where a sheet has none. */
    private final Optional<Font> wide;

    private PdfLetters(boolean needsMore) {
        wide = needsMore ? Optional.of(read()) : Optional.empty();
    }

    static PdfLetters of(Sheet sheet) {
        PdfLetters plain = new PdfLetters(false);
        boolean covered = words(sheet).stream().allMatch(w -> plain.isCommon(usual(w)));
        return covered ? plain : new PdfLetters(true);
    }

    private static Font read() {
        try (InputStream in = font()) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(FONT_NAME + " cannot be read", e);
        }
    }

    static InputStream font() {
        return PdfLetters.class.getResourceAsStream(FONT_PLACE);
    }

    /** Font families, in the order in which they are tried. */
    String families() {
        return wide.isPresent() ? "Helvetica," + WIDE : "Helvetica";
    }

    /** What the formatter has to know of fonts. */
    String configuration() {
        String fonts = wide.isPresent()
                ? "<renderers><renderer mime=\"application/pdf\"><fonts><font embed-url=\"" + FONT_NAME
                        + "\"><font-triplet name=\"" + WIDE
                        + "\" style=\"normal\" weight=\"normal\"/><font-triplet name=\"" + WIDE
                        + "\" style=\"normal\" weight=\"bold\"/></font></fonts></renderer></renderers>"
                : "";
        return "<fop version=\"1.0\"><strict-configuration>true</strict-configuration>" + fonts + "</fop>";
    }

    /** The words with what no font has as question marks. */
    String shown(String words) {
        String told = usual(words);
        if (wide.isEmpty()) {
            return told;
        }
        StringBuilder shown = new StringBuilder();
        told.codePoints().forEach(c -> {
            String letter = Character.toString(c);
            shown.append(isKnown(c, letter) ? letter : UNKNOWN);
        });
        return shown.toString();
    }

    /** The sheet, with a note under its title where letters are missing. */
    Sheet noted(Sheet sheet) {
        boolean complete = wide.isEmpty()
                || words(sheet).stream()
                        .map(PdfLetters::usual)
                        .allMatch(w -> w.codePoints().allMatch(c -> isKnown(c, Character.toString(c))));
        return complete
                ? sheet
                : new Sheet(
                        sheet.title(),
                        sheet.under() + " Letters that the fonts of this PDF do not have stand as " + UNKNOWN
                                + "; the same sheet as HTML has them all.",
                        sheet.sections());
    }

    private boolean isKnown(int c, String letter) {
        return isCommon(letter) || wide.get().canDisplay(c);
    }

    private boolean isCommon(String words) {
        return common.canEncode(words);
    }

    /** Signs of our own that have a plain form. */
    private static String usual(String words) {
        return words.replace('′', '\'').replace('−', '-');
    }

    private static List<String> words(Sheet sheet) {
        List<String> words = new ArrayList<>(List.of(sheet.title(), sheet.under()));
        for (Sheet.Section section : sheet.sections()) {
            words.add(section.title());
            section.blocks().forEach(block -> words.addAll(words(block)));
        }
        return words;
    }

    private static List<String> words(Block block) {
        List<String> words = new ArrayList<>();
        if (block instanceof Block.Words w) {
            words.add(w.text());
        } else if (block instanceof Block.Points p) {
            words.addAll(p.points());
        } else if (block instanceof Block.Grid grid) {
            words.add(grid.caption());
            words.addAll(grid.head());
            grid.rows().forEach(words::addAll);
        } else if (block instanceof Block.Blank blank) {
            words.add(blank.label());
            words.add(blank.unit());
        }
        return words;
    }
}
