package trimwright.report.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * The diagram of one panel, drawn by the charting library: ranges, grid and curves. Letters are left to the painter, since the library
 * draws them as shapes, which no one can search, copy or read aloud.
 */
final class PlotChart {

    private static final Color CLEAR = new Color(255, 255, 255, 0);
    private static final Color GRID = new Color(0xDDE3E8);
    private static final Color ZERO = new Color(0x8A96A1);
    private static final Color BAND = new Color(0x66, 0x77, 0x88, 0x30);

    private final XYChart chart;
    private final PlotScale across;
    private final PlotScale up;
    private final int width;
    private final int height;

    PlotChart(Plot.Panel panel, PlotScale across, PlotScale up, int width, int height) {
        this.across = across;
        this.up = up;
        this.width = width;
        this.height = height;
        this.chart = new XYChart(width, height);
        bare();
        for (Plot.Band band : panel.bands()) {
            shade(band);
        }
        grid();
        for (int i = 0; i < panel.curves().size(); i++) {
            curve(panel.curves().get(i), PlotStroke.of(i));
        }
    }

    /** Draws with the top left corner of the diagram at a point. */
    void paintAt(Graphics2D g, double left, double top) {
        g.translate(left, top);
        chart.paint(g, width, height);
        g.translate(-left, -top);
    }

    /** Nothing but the diagram itself, filling the whole room. */
    private void bare() {
        XYStyler styler = chart.getStyler();
        styler.setLegendVisible(false);
        styler.setChartTitleVisible(false);
        styler.setAxisTitlesVisible(false);
        styler.setAxisTicksVisible(false);
        styler.setPlotGridLinesVisible(false);
        styler.setPlotTicksMarksVisible(false);
        styler.setPlotBorderVisible(false);
        styler.setPlotMargin(0);
        styler.setChartPadding(0);
        styler.setPlotContentSize(1);
        styler.setChartBackgroundColor(CLEAR);
        styler.setPlotBackgroundColor(CLEAR);
        styler.setXAxisMin(across.least());
        styler.setXAxisMax(across.greatest());
        styler.setYAxisMin(up.least());
        styler.setYAxisMax(up.greatest());
    }

    private void shade(Plot.Band band) {
        boolean alongX = band.axis() == Plot.Axis.X;
        PlotScale scale = alongX ? across : up;
        double from = Math.max(band.from(), scale.least());
        double to = Math.min(band.to(), scale.greatest());
        if (from >= to) {
            return;
        }
        double left = alongX ? from : across.least();
        double right = alongX ? to : across.greatest();
        double low = alongX ? up.least() : from;
        double high = alongX ? up.greatest() : to;
        XYSeries area = chart.addSeries(
                nextName(), new double[] {left, right, right, left}, new double[] {low, low, high, high});
        area.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea);
        area.setMarker(SeriesMarkers.NONE);
        area.setFillColor(BAND);
        area.setLineColor(CLEAR);
    }

    private void grid() {
        for (double x : across.ticks()) {
            line(new double[] {x, x}, new double[] {up.least(), up.greatest()}, GRID);
        }
        for (double y : up.ticks()) {
            Color colour = y == 0 ? ZERO : GRID;
            line(new double[] {across.least(), across.greatest()}, new double[] {y, y}, colour);
        }
    }

    private void line(double[] x, double[] y, Color colour) {
        XYSeries series = chart.addSeries(nextName(), x, y);
        series.setMarker(SeriesMarkers.NONE);
        series.setLineColor(colour);
        series.setLineStyle(new BasicStroke(1));
    }

    private void curve(Plot.Curve curve, PlotStroke stroke) {
        double pxPerX = width / (across.greatest() - across.least());
        double pxPerY = height / (up.greatest() - up.least());
        Dashes.Cut cut = Dashes.of(curve.x(), curve.y(), stroke.pattern(), pxPerX, pxPerY);
        XYSeries series = chart.addSeries(nextName(), cut.x, cut.y);
        series.setMarker(SeriesMarkers.NONE);
        series.setLineColor(stroke.colour());
        series.setLineStyle(PlotStroke.PEN);
    }

    /** The library tells series apart by name; two curves of a panel may bear the same. */
    private String nextName() {
        return "series " + chart.getSeriesMap().size();
    }
}
