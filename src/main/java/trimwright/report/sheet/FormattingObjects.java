package trimwright.report.sheet;

import java.util.Base64;
import java.util.List;
import java.util.function.UnaryOperator;

/** A sheet as formatting objects (XSL-FO 1.1). */
final class FormattingObjects {

    private static final double MARGIN_MM = 15;
    /** A heading is not left alone at the foot of a page. */
    private static final String KEEP_WITH_NEXT = " keep-with-next.within-page=\"always\"";
    /** Tables are not split; one that is longer than a page still may be. */
    private static final String KEPT_TOGETHER = " keep-together.within-page=\"7\"";

    /** A line may otherwise end behind the stroke. */
    private static final String DENSITY = "g/cm³";

    private static final String KEPT_DENSITY =
            "<fo:inline keep-together.within-line=\"always\">" + DENSITY + "</fo:inline>";

    private static final String KEPT_WHOLE = " keep-together.within-page=\"8\"";

    /** How much wider bold letters run. */
    private static final double BOLD = 1.12;

    private static final String SUM = "font-weight=\"bold\" border-top=\"0.8pt solid black\"";

    private final StringBuilder out = new StringBuilder();
    private final Sheet.Paper paper;
    private final UnaryOperator<String> letters;
    private final String fonts;

    private FormattingObjects(Sheet.Paper paper, UnaryOperator<String> letters, String fonts) {
        this.paper = paper;
        this.letters = letters;
        this.fonts = fonts;
    }

    /**
     * The whole document.
     *
     * @param letters makes of words what the fonts can show
     * @param fonts names of font families, the first that has a word is taken
     */
    static String of(Sheet sheet, Sheet.Paper paper, UnaryOperator<String> letters, String fonts) {
        FormattingObjects fo = new FormattingObjects(paper, letters, fonts);
        fo.write(sheet);
        return fo.out.toString();
    }

    private void write(Sheet sheet) {
        out.append("<fo:root xmlns:fo=\"http://www.w3.org/1999/XSL/Format\" xml:lang=\"en\" font-family=\"" + fonts
                        + "\" font-size=\"9pt\"")
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
        block("font-size=\"16pt\" font-weight=\"bold\" role=\"H1\"", sheet.title());
        block("space-after=\"3mm\"", sheet.under());
        sheet.sections().forEach(this::write);
        out.append("</fo:block></fo:flow></fo:page-sequence></fo:root>");
    }

    private void write(Sheet.Section section) {
        out.append("<fo:block space-before=\"5mm\"")
                .append(
                        switch (section.pages()) {
                            case RUNS_ON -> "";
                            case BEGINS_ONE -> " break-before=\"page\"";
                            case STAYS_ON_ONE -> KEPT_WHOLE;
                        })
                .append('>');
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
                    Unbroken.of(words.text()));
        } else if (block instanceof Block.Heading heading) {
            block(
                    "space-before=\"3mm\" font-size=\"10.5pt\" font-weight=\"bold\" role=\"H3\"" + KEEP_WITH_NEXT,
                    heading.text());
        } else if (block instanceof Block.Points points) {
            out.append("<fo:block").append(KEPT_TOGETHER).append('>');
            points.points()
                    .forEach(p -> block(
                            "start-indent=\"4mm\" text-indent=\"-3mm\" space-after=\"0.7mm\"", "– " + Unbroken.of(p)));
            out.append("</fo:block>");
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
        out.append("<fo:block space-after=\"3mm\"" + KEPT_TOGETHER + ">");
        block("font-weight=\"bold\" space-before=\"1.5mm\" font-size=\"8.5pt\"" + KEEP_WITH_NEXT, grid.caption());
        out.append("<fo:table table-layout=\"fixed\" width=\"100%\" font-size=\"8.5pt\" line-height=\"1.2\">");
        for (int i = 0; i < grid.columns().length(); i++) {
            out.append("<fo:table-column column-width=\"proportional-column-width(")
                    .append(width(grid, i))
                    .append(")\"/>");
        }
        out.append("<fo:table-header>");
        row(grid.columns(), grid.head(), "font-weight=\"bold\" border-bottom=\"0.8pt solid black\"");
        out.append("</fo:table-header><fo:table-body>");
        for (int i = 0; i < grid.rows().size(); i++) {
            boolean sum = grid.sums() && i + 1 == grid.rows().size();
            row(grid.columns(), grid.rows().get(i), sum ? SUM : "border-bottom=\"0.3pt solid #777777\"");
        }
        if (grid.rows().isEmpty()) {
            row(grid.columns(), grid.columns().chars().mapToObj(c -> "").toList(), "");
        }
        out.append("</fo:table-body></fo:table></fo:block>");
    }

    /** As wide as its widest cell, within reason. */
    private static double width(Block.Grid grid, int column) {
        double widest = BOLD * run(grid.head().get(column));
        for (List<String> row : grid.rows()) {
            widest = Math.max(widest, run(row.get(column)));
        }
        return Math.max(5, Math.min(42, widest + 2));
    }

    /** How far words run, in letters of middling width. */
    private static double run(String words) {
        return words.chars()
                .mapToDouble(c -> "mMwW%".indexOf(c) >= 0 ? 1.5 : "iljtfrI.,:;'() ".indexOf(c) >= 0 ? 0.55 : 1)
                .sum();
    }

    private void row(String columns, List<String> cells, String style) {
        out.append("<fo:table-row keep-together.within-page=\"always\" ")
                .append(style)
                .append('>');
        for (int i = 0; i < cells.size(); i++) {
            out.append("<fo:table-cell padding=\"0.3mm 1mm\"><fo:block")
                    .append(columns.charAt(i) == 'r' ? " text-align=\"end\">" : ">")
                    .append(text(cells.get(i)))
                    .append("</fo:block></fo:table-cell>");
        }
        out.append("</fo:table-row>");
    }

    private void block(String style, String words) {
        out.append("<fo:block ").append(style).append('>');
        out.append(text(words).replace(DENSITY, KEPT_DENSITY)).append("</fo:block>");
    }

    private String text(String words) {
        return Xml.text(letters.apply(words));
    }
}
