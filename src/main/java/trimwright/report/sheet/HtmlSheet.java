package trimwright.report.sheet;

import java.util.Base64;
import java.util.List;
import java.util.regex.Pattern;

/** A sheet as one HTML file that needs no other. */
public final class HtmlSheet {

    private static final String STYLE = """
            body { font: 15px/1.45 "DejaVu Sans", Verdana, sans-serif; color: #1b2430; background: #fff; max-width: 64em; margin: 2em auto; padding: 0 1em; }
            h1 { font-size: 1.7em; line-height: 1.2; margin: 0; } h2 { font-size: 1.2em; margin: 1.8em 0 .4em; border-bottom: 2px solid #1b2430; } h3 { font-size: 1em; margin: 1.2em 0 .2em; }
            .under { margin: .2em 0 1em; color: #3b4654; } .verdict { font-size: 1.15em; font-weight: bold; }
            .table { overflow-x: auto; } table { border-collapse: collapse; margin: .8em 0; width: 100%; } caption { text-align: left; font-weight: bold; padding: .2em 0; }
            th, td { padding: .15em .5em; border-bottom: 1px solid #c9d0d8; text-align: left; vertical-align: top; } tbody th { font-weight: normal; }
            th.r, td.r { text-align: right; font-variant-numeric: tabular-nums; } thead th, thead td { border-bottom: 2px solid #1b2430; vertical-align: bottom; }
            tr.sum th, tr.sum td { font-weight: bold; border-top: 2px solid #1b2430; }
            ul { padding-left: 1.5em; } figure { margin: .8em 0; } figure img, figure svg { display: block; width: 100%; height: auto; }
            .blank { display: flex; gap: .6em; margin: .7em 0; } .blank span.line { flex: 1; border-bottom: 1px solid #1b2430; }
            @media print { body { margin: 0; padding: 0; max-width: none; font-size: 8pt; line-height: 1.3; } h1 { font-size: 1.6em; } h2 { margin-top: 1.3em; } p, ul { margin: .5em 0; } figure, table { margin: .5em 0; }
              section.first h2 { position: absolute; left: -1000em; } h1, h2, h3, caption { break-after: avoid; } table, tr, figure, .blank, ul { break-inside: avoid; }
              .table { overflow: visible; } th, td { padding: .1em .35em; } thead { display: table-header-group; } section.page { break-before: page; } section.whole { break-inside: avoid; } }
            """;

    /** Names inside a drawing, which another drawing on the page may use too. */
    private static final Pattern NAMES = Pattern.compile("(\\sid=\"|url\\(#|href=\"#)");

    private final StringBuilder out = new StringBuilder();
    private int drawings;

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
            out.append("<section").append(cssClass(section)).append(">\n");
            if (section.title().isEmpty()) {
                element("h2", "", "At a glance");
            } else {
                element("h2", "", section.title());
            }
            section.blocks().forEach(this::write);
            out.append("</section>\n");
        }
        out.append("</main>\n</body>\n</html>\n");
    }

    private static String cssClass(Sheet.Section section) {
        if (section.title().isEmpty()) {
            return " class=\"first\"";
        }
        return switch (section.pages()) {
            case RUNS_ON -> "";
            case BEGINS_ONE -> " class=\"page\"";
            case STAYS_ON_ONE -> " class=\"whole\"";
        };
    }

    private void write(Block block) {
        if (block instanceof Block.Words words) {
            element("p", words.verdict() ? "verdict" : "", Unbroken.of(words.text()));
        } else if (block instanceof Block.Heading heading) {
            element("h3", "", heading.text());
        } else if (block instanceof Block.Points points) {
            out.append("<ul>\n");
            points.points().forEach(p -> element("li", "", Unbroken.of(p)));
            out.append("</ul>\n");
        } else if (block instanceof Block.Grid grid) {
            write(grid);
        } else if (block instanceof Block.Drawing drawing) {
            String prefix = "d" + ++drawings + "-";
            out.append("<figure><div role=\"img\" aria-label=\"")
                    .append(Xml.text(drawing.alt()))
                    .append("\">");
            out.append(NAMES.matcher(Xml.inner(drawing.svg()).strip()).replaceAll("$1" + prefix))
                    .append("</div></figure>\n");
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
        out.append("<div class=\"table\"><table>\n");
        element("caption", "", grid.caption());
        out.append("<thead>\n");
        row("", "col", grid, grid.head());
        out.append("</thead>\n<tbody>\n");
        for (int i = 0; i < grid.rows().size(); i++) {
            boolean sum = grid.sums() && i + 1 == grid.rows().size();
            row(sum ? " class=\"sum\"" : "", "row", grid, grid.rows().get(i));
        }
        out.append("</tbody>\n</table></div>\n");
    }

    /** A row whose first cell heads it, or that heads the columns. */
    private void row(String cssClass, String scope, Block.Grid grid, List<String> cells) {
        out.append("<tr").append(cssClass).append('>');
        for (int i = 0; i < cells.size(); i++) {
            boolean heads = (scope.equals("col") || i == 0) && !cells.get(i).isEmpty();
            String name = heads ? "th" : "td";
            out.append('<').append(name).append(heads ? " scope=\"" + scope + "\"" : "");
            out.append(grid.columns().charAt(i) == 'r' ? " class=\"r\">" : ">");
            out.append(Xml.text(cells.get(i))).append("</").append(name).append('>');
        }
        out.append("</tr>\n");
    }

    private void element(String name, String cssClass, String text) {
        out.append('<').append(name).append(cssClass.isEmpty() ? ">" : " class=\"" + cssClass + "\">");
        out.append(Xml.text(text)).append("</").append(name).append(">\n");
    }
}
