package trimwright.report.sheet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Date;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.sax.SAXResult;
import javax.xml.transform.stream.StreamSource;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.Fop;
import org.apache.fop.apps.FopFactory;
import org.apache.fop.apps.MimeConstants;
import org.xml.sax.SAXException;

/** A sheet as PDF, set by way of formatting objects (XSL-FO 1.1). */
public final class PdfSheet {

    private static final double MARGIN_MM = 15;
    /** The formatter wants a place from which to look for files; a sheet names none. */
    private static final URI NOWHERE = URI.create("file:///");
    /** A heading is not left alone at the foot of a page. */
    private static final String KEEP_WITH_NEXT = " keep-with-next.within-page=\"always\"";
    /** Tables of no more rows stand on one page. */
    private static final int KEPT_TOGETHER = 24;
    /** The formatter takes its loggers by name; it talks of fonts that it does not need. */
    private static final Logger FORMATTER = Logger.getLogger("org.apache.fop");

    private final StringBuilder out = new StringBuilder();
    private final Sheet.Paper paper;

    private PdfSheet(Sheet.Paper paper) {
        this.paper = paper;
    }

    /**
     * The bytes of the PDF file.
     *
     * @param made when it was made, as it says of itself
     */
    public static byte[] of(Sheet sheet, Sheet.Paper paper, Date made) {
        FORMATTER.setLevel(Level.SEVERE);
        PdfSheet fo = new PdfSheet(paper);
        fo.write(sheet);
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        try {
            FopFactory factory = FopFactory.newInstance(
                    NOWHERE,
                    new ByteArrayInputStream(
                            "<fop version=\"1.0\"><strict-configuration>true</strict-configuration></fop>"
                                    .getBytes(StandardCharsets.UTF_8)));
            FOUserAgent agent = factory.newFOUserAgent();
            agent.setTitle(sheet.title() + ": trim sheet");
            agent.setCreationDate(made);
            agent.setProducer("Trimwright");
            agent.setAccessibility(true);
            Fop fop = factory.newFop(MimeConstants.MIME_PDF, agent, pdf);
            TransformerFactory.newDefaultInstance()
                    .newTransformer()
                    .transform(
                            new StreamSource(new StringReader(fo.out.toString())),
                            new SAXResult(fop.getDefaultHandler()));
        } catch (TransformerException | SAXException | IOException e) {
            throw new IllegalStateException("the formatter refused our own document: " + e.getMessage(), e);
        }
        return pdf.toByteArray();
    }

    private void write(Sheet sheet) {
        out.append(
                        "<fo:root xmlns:fo=\"http://www.w3.org/1999/XSL/Format\" xml:lang=\"en\" font-family=\"Helvetica\" font-size=\"9pt\"")
                .append(
                        " line-height=\"1.3\"><fo:layout-master-set><fo:simple-page-master master-name=\"page\" page-width=\"")
                .append(paper.widthMm())
                .append("mm\" page-height=\"")
                .append(paper.heightMm())
                .append("mm\" margin=\"")
                .append(MARGIN_MM)
                .append("mm\"><fo:region-body margin-bottom=\"8mm\"/><fo:region-after extent=\"5mm\"/>")
                .append(
                        "</fo:simple-page-master></fo:layout-master-set><fo:page-sequence id=\"whole\" master-reference=\"page\">")
                .append(
                        "<fo:static-content flow-name=\"xsl-region-after\"><fo:block font-size=\"7.5pt\" text-align-last=\"justify\">")
                .append(text(sheet.title()))
                .append(
                        "<fo:leader leader-pattern=\"space\"/><fo:page-number/> of <fo:page-number-citation-last ref-id=\"whole\"/>")
                .append("</fo:block></fo:static-content><fo:flow flow-name=\"xsl-region-body\"><fo:block>");
        block("font-size=\"17pt\" font-weight=\"bold\" role=\"H1\"", sheet.title());
        block("space-after=\"3mm\"", sheet.under());
        sheet.sections().forEach(this::write);
        out.append("</fo:block></fo:flow></fo:page-sequence></fo:root>");
    }

    private void write(Sheet.Section section) {
        out.append("<fo:block space-before=\"5mm\"").append(section.newPage() ? " break-before=\"page\">" : ">");
        if (!section.title().isEmpty()) {
            block(
                    "font-size=\"12pt\" font-weight=\"bold\" border-bottom=\"1pt solid black\" space-after=\"1.5mm\" role=\"H2\""
                            + KEEP_WITH_NEXT,
                    section.title());
        }
        section.blocks().forEach(this::write);
        out.append("</fo:block>");
    }

    private void write(Block block) {
        if (block instanceof Block.Words words) {
            block(
                    "space-after=\"1.5mm\""
                            + (words.verdict()
                                    ? " space-before=\"2mm\" font-size=\"11pt\" font-weight=\"bold\"" + KEEP_WITH_NEXT
                                    : ""),
                    words.text());
        } else if (block instanceof Block.Points points) {
            points.points()
                    .forEach(p -> block("start-indent=\"4mm\" text-indent=\"-3mm\" space-after=\"0.7mm\"", "– " + p));
        } else if (block instanceof Block.Grid grid) {
            write(grid);
        } else if (block instanceof Block.Drawing drawing) {
            out.append(
                            "<fo:block space-after=\"2mm\" keep-together.within-page=\"always\"><fo:instream-foreign-object ")
                    .append(size(drawing.aspect()))
                    .append(" fox:alt-text=\"")
                    .append(text(drawing.alt()))
                    .append("\" xmlns:fox=\"http://xmlgraphics.apache.org/fop/extensions\">")
                    .append(Xml.inner(drawing.svg()))
                    .append("</fo:instream-foreign-object></fo:block>");
        } else if (block instanceof Block.Picture picture) {
            out.append("<fo:block space-after=\"2mm\"><fo:external-graphic ")
                    .append(size(picture.aspect()))
                    .append(" fox:alt-text=\"")
                    .append(text(picture.alt()))
                    .append(
                            "\" xmlns:fox=\"http://xmlgraphics.apache.org/fop/extensions\" src=\"data:image/png;base64,")
                    .append(Base64.getEncoder().encodeToString(picture.png()))
                    .append("\"/></fo:block>");
        } else if (block instanceof Block.Blank blank) {
            out.append(
                            "<fo:block space-before=\"3mm\" text-align-last=\"justify\" keep-together.within-page=\"always\">")
                    .append(text(blank.label()))
                    .append(" <fo:leader leader-pattern=\"rule\" rule-thickness=\"0.5pt\"/> ")
                    .append(text(blank.unit()))
                    .append("</fo:block>");
        }
    }

    private String size(double aspect) {
        double width = paper.widthMm() - 2 * MARGIN_MM;
        return "content-width=\"" + width + "mm\" content-height=\"" + width / aspect + "mm\" scaling=\"non-uniform\"";
    }

    private void write(Block.Grid grid) {
        boolean together = grid.rows().size() <= KEPT_TOGETHER;
        out.append("<fo:block space-after=\"3mm\"").append(together ? " keep-together.within-page=\"always\">" : ">");
        block("font-weight=\"bold\" space-before=\"1.5mm\"" + KEEP_WITH_NEXT, grid.caption());
        out.append("<fo:table table-layout=\"fixed\" width=\"100%\">");
        for (int i = 0; i < grid.columns().length(); i++) {
            out.append("<fo:table-column column-width=\"proportional-column-width(")
                    .append(width(grid, i))
                    .append(")\"/>");
        }
        out.append("<fo:table-header>");
        row(grid.columns(), grid.head(), "font-weight=\"bold\" border-bottom=\"0.8pt solid black\"");
        out.append("</fo:table-header><fo:table-body>");
        grid.rows().forEach(row -> row(grid.columns(), row, "border-bottom=\"0.2pt solid #888888\""));
        if (grid.rows().isEmpty()) {
            row(grid.columns(), grid.columns().chars().mapToObj(c -> "").toList(), "");
        }
        out.append("</fo:table-body></fo:table></fo:block>");
    }

    /** As wide as its widest cell, within reason. */
    private static int width(Block.Grid grid, int column) {
        int widest = grid.head().get(column).length();
        for (List<String> row : grid.rows()) {
            widest = Math.max(widest, row.get(column).length());
        }
        return Math.max(5, Math.min(42, widest + 2));
    }

    private void row(String columns, List<String> cells, String style) {
        out.append("<fo:table-row keep-together.within-page=\"always\" ")
                .append(style)
                .append('>');
        for (int i = 0; i < cells.size(); i++) {
            out.append("<fo:table-cell padding=\"0.5mm 1.5mm\"><fo:block")
                    .append(columns.charAt(i) == 'r' ? " text-align=\"end\">" : ">")
                    .append(text(cells.get(i)))
                    .append("</fo:block></fo:table-cell>");
        }
        out.append("</fo:table-row>");
    }

    private void block(String style, String words) {
        out.append("<fo:block ").append(style).append('>').append(text(words)).append("</fo:block>");
    }

    /** The fonts that every reader of PDF has know no prime and no sigma. */
    private static String text(String words) {
        return Xml.text(words.replace('′', '\'')
                .replace("σ", "s.d.")
                .replace('−', '-')
                .replace("✓", "yes")
                .replace("✗", "NO"));
    }
}
