package trimwright.report.sheet;

import java.util.Base64;
import java.util.List;

/** A sheet as one HTML file that needs no other. */
public final class HtmlSheet {

    private static final String STYLE = """
            :root { color-scheme: light; }
            body { font: 15px/1.45 "DejaVu Sans", Verdana, sans-serif; color: #1b2430; background: #fff; max-width: 60em; margin: 2em auto; padding: 0 1em; }
            h1 { font-size: 1.7em; margin: 0; } h2 { font-size: 1.2em; margin: 1.8em 0 .4em; border-bottom: 2px solid #1b2430; }
            .under { margin: .2em 0 1em; color: #3b4654; } .verdict { font-size: 1.15em; font-weight: bold; }
            table { border-collapse: collapse; margin: .8em 0; width: 100%; } caption { text-align: left; font-weight: bold; padding: .2em 0; }
            th, td { padding: .15em .5em; border-bottom: 1px solid #c9d0d8; text-align: left; vertical-align: top; }
            th.r, td.r { text-align: right; font-variant-numeric: tabular-nums; } thead th { border-bottom: 2px solid #1b2430; }
            figure { margin: .8em 0; } figure img, figure svg { width: 100%; height: auto; }
            .blank { display: flex; gap: .6em; margin: .7em 0; } .blank span.line { flex: 1; border-bottom: 1px solid #1b2430; }
            @media print { body { margin: 0; max-width: none; font-size: 9pt; } h2 { break-after: avoid; } tr, figure, .blank { break-inside: avoid; }
              thead { display: table-header-group; } section.page { break-before: page; } }
            """;

    private final StringBuilder out = new StringBuilder();

    private HtmlSheet() {}

    /** The whole document. */
    public static String of(Sheet sheet, Sheet.Paper paper) {
        HtmlSheet html = new HtmlSheet();
        html.write(sheet, paper);
        return html.out.toString();
    }

    private void write(Sheet sheet, Sheet.Paper paper) {
        out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
        out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
        out.append("<title>").append(Xml.text(sheet.title())).append(": trim sheet</title>\n<style>\n");
        out.append("@page { size: ").append(paper.widthMm()).append("mm ").append(paper.heightMm());
        out.append("mm; margin: 15mm; }\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n");
        element("h1", "", sheet.title());
        element("p", "under", sheet.under());
        for (Sheet.Section section : sheet.sections()) {
            out.append(section.newPage() ? "<section class=\"page\">\n" : "<section>\n");
            if (!section.title().isEmpty()) {
                element("h2", "", section.title());
            }
            section.blocks().forEach(this::write);
            out.append("</section>\n");
        }
        out.append("</main>\n</body>\n</html>\n");
    }

    private void write(Block block) {
        if (block instanceof Block.Words words) {
            element("p", words.verdict() ? "verdict" : "", words.text());
        } else if (block instanceof Block.Points points) {
            out.append("<ul>\n");
            points.points().forEach(p -> element("li", "", p));
            out.append("</ul>\n");
        } else if (block instanceof Block.Grid grid) {
            write(grid);
        } else if (block instanceof Block.Drawing drawing) {
            out.append("<figure role=\"img\" aria-label=\"")
                    .append(Xml.text(drawing.alt()))
                    .append("\">");
            out.append(Xml.inner(drawing.svg()).strip()).append("</figure>\n");
        } else if (block instanceof Block.Picture picture) {
            out.append("<figure><img alt=\"").append(Xml.text(picture.alt())).append("\" src=\"data:image/png;base64,");
            out.append(Base64.getEncoder().encodeToString(picture.png())).append("\"/></figure>\n");
        } else if (block instanceof Block.Blank blank) {
            out.append("<div class=\"blank\"><span>").append(Xml.text(blank.label()));
            out.append("</span><span class=\"line\"></span><span>")
                    .append(Xml.text(blank.unit()))
                    .append("</span></div>\n");
        }
    }

    private void write(Block.Grid grid) {
        out.append("<table>\n");
        element("caption", "", grid.caption());
        out.append("<thead>");
        row("th scope=\"col\"", "th", grid.columns(), grid.head());
        out.append("</thead>\n<tbody>\n");
        grid.rows().forEach(row -> row("td", "td", grid.columns(), row));
        out.append("</tbody>\n</table>\n");
    }

    private void row(String open, String close, String columns, List<String> cells) {
        out.append("<tr>");
        for (int i = 0; i < cells.size(); i++) {
            out.append('<').append(open).append(columns.charAt(i) == 'r' ? " class=\"r\">" : ">");
            out.append(Xml.text(cells.get(i))).append("</").append(close).append('>');
        }
        out.append("</tr>\n");
    }

    private void element(String name, String cssClass, String text) {
        out.append('<').append(name).append(cssClass.isEmpty() ? ">" : " class=\"" + cssClass + "\">");
        out.append(Xml.text(text)).append("</").append(name).append(">\n");
    }
}
