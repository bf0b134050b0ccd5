package trimwright.report.picture;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.svg.SVGProcessor;
import de.erichseifert.vectorgraphics2d.util.PageSize;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import trimwright.mesh.WholeFile;

/** Plots as files. */
final class PlotFile {

    /** A PNG has two pixels for each of the design, to stay crisp in print. */
    private static final int PNG_WIDTH_PX = 2 * PlotPainter.WIDTH;

    private PlotFile() {}

    /** What a plot can be written as. */
    enum Format {
        SVG,
        PNG;

        private String ending() {
            return "." + name().toLowerCase(Locale.ROOT);
        }

        /** @throws trimwright.finding.UnusableInputException when the name has the ending of none */
        static Format of(Path file) {
            List<String> endings = Stream.of(values()).map(Format::ending).toList();
            return values()[endings.indexOf(FileEnding.of(file, endings))];
        }

        void write(Plot plot, Path file, boolean overwrite) {
            if (this == PNG) {
                Pictures.writePng(plot.draw(PNG_WIDTH_PX), file, overwrite);
            } else {
                WholeFile.write(file, overwrite, out -> out.write(svg(plot).getBytes(StandardCharsets.UTF_8)));
            }
        }
    }

    /** The plot as an SVG document. */
    static String svg(Plot plot) {
        PlotPainter painter = new PlotPainter(plot);
        VectorGraphics2D g = new VectorGraphics2D();
        painter.paint(g);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            new SVGProcessor()
                    .getDocument(g.getCommands(), new PageSize(0, 0, PlotPainter.WIDTH, painter.height()))
                    .writeTo(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("memory cannot fail to be written", e);
        }
        // The writer names only this machine's font; another machine may take any other without serifs.
        return bytes.toString(StandardCharsets.UTF_8)
                .replaceAll("font-family:(&quot;[^&]*&quot;)", "font-family:$1,sans-serif");
    }
}
