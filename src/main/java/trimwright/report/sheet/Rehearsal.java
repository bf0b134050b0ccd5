package trimwright.report.sheet;

import java.awt.image.BufferedImage;
import java.util.Date;
import java.util.List;
import trimwright.report.picture.Pictures;
import trimwright.report.picture.Plot;

/**
 * Prints a sheet of one line into nothing, in a thread of its own, while a boat is read and planned: the libraries that plot and print take as long to load as all
 * the rest takes to compute.
 */
public final class Rehearsal {

    private Rehearsal() {}

    /**
     * Begins, and comes back at once.
     *
     * @param pdf whether a PDF is wanted
     */
    public static void begin(boolean pdf) {
        Thread thread = new Thread(() -> print(pdf), "rehearsal");
        thread.setDaemon(true);
        // What fails here fails again when the sheet itself is printed, and is told then.
        thread.setUncaughtExceptionHandler((t, failure) -> {});
        thread.start();
    }

    private static void print(boolean pdf) {
        byte[] png = Pictures.png(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB));
        String svg = new Plot(
                        "-",
                        List.of(new Plot.Panel(
                                "x",
                                "y",
                                List.of(new Plot.Curve("y", new double[] {0, 1}, new double[] {0, 1})),
                                List.of())))
                .svg();
        if (pdf) {
            List<Block> blocks = List.of(
                    new Block.Words("-", true),
                    new Block.Points(List.of("-")),
                    new Block.Grid("-", "-", "lr", List.of("-", "-"), List.of(List.of("-", "-"))),
                    new Block.Drawing(svg, 1, "-"),
                    new Block.Picture(png, 1, "-"),
                    new Block.Blank("-", "-"));
            PdfSheet.of(
                    new Sheet("-", "-", List.of(new Sheet.Section("-", Sheet.Pages.RUNS_ON, blocks))),
                    Sheet.Paper.A4,
                    new Date(0));
        }
    }
}
