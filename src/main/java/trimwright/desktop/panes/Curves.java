package trimwright.desktop.panes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.css.CssMetaData;
import javafx.css.SimpleStyleableObjectProperty;
import javafx.css.Styleable;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import trimwright.report.Numbers;

/** Curves over a common axis. The point that is shown in the pool is marked; another is chosen by pointer or arrow keys. */
final class Curves extends Region {

    /**
     * A curve through computed points; NaN where there is none.
     *
     * @param dashed told apart without colour
     */
    record Curve(String name, double[] y, Color colour, boolean dashed) {}

    /** A value of x that matters. */
    record Mark(String label, double x) {}

    private static final StyleablePropertyFactory<Curves> STYLES =
            new StyleablePropertyFactory<>(Region.getClassCssMetaData());
    private static final CssMetaData<Curves, Paint> INK =
            STYLES.createPaintCssMetaData("-tw-curve-ink", c -> c.ink, Color.BLACK);
    private static final double LEFT = 46;
    private static final double RIGHT = 12;
    private static final double TOP = 26;
    private static final double BOTTOM = 34;

    private final SimpleStyleableObjectProperty<Paint> ink =
            new SimpleStyleableObjectProperty<>(INK, this, "ink", Color.BLACK);
    /** Text at 100 %, px: all else is drawn for that, and grows with it. */
    private static final double USUAL_TEXT_PX = 13;

    private final Canvas canvas = new Canvas();
    /** Never seen; it has the font that the pane gives its words. */
    private final Label text = new Label();

    private double tall;
    private final IntegerProperty chosen = new SimpleIntegerProperty(-1);
    private final String xTitle;
    private String yTitle;
    private double[] x = {};
    private List<Curve> curves = List.of();
    private List<Mark> marks = List.of();
    private double least;
    private double most;

    /** @param onChosen takes the number of the point that was chosen by hand */
    Curves(String xTitle, String yTitle, IntConsumer onChosen) {
        this.xTitle = xTitle;
        this.yTitle = yTitle;
        getStyleClass().add("curves");
        getChildren().addAll(canvas, text);
        text.setVisible(false);
        text.setManaged(false);
        text.fontProperty().addListener((o, was, now) -> setTall(tall));
        setTall(190);
        setFocusTraversable(true);
        chosen.addListener((o, was, now) -> draw());
        ink.addListener((o, was, now) -> draw());
        focusedProperty().addListener((o, was, now) -> draw());
        addEventHandler(MouseEvent.MOUSE_PRESSED, e -> {
            requestFocus();
            choose(e.getX(), onChosen);
        });
        addEventHandler(MouseEvent.MOUSE_DRAGGED, e -> choose(e.getX(), onChosen));
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            int step = e.getCode() == KeyCode.RIGHT ? 1 : e.getCode() == KeyCode.LEFT ? -1 : 0;
            if (step != 0 && x.length > 0) {
                onChosen.accept(Math.max(0, Math.min(x.length - 1, chosen.get() + step)));
                e.consume();
            }
        });
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return STYLES.getCssMetaData();
    }

    /** Number of the point that is shown in the pool; -1 for none. */
    IntegerProperty chosen() {
        return chosen;
    }

    /** How high it is where text has its usual size. */
    void setTall(double atUsualTextPx) {
        tall = atUsualTextPx;
        setMinHeight(150 * scale());
        setPrefHeight(tall * scale());
        requestLayout();
    }

    private double scale() {
        return text.getFont().getSize() / USUAL_TEXT_PX;
    }

    private double width() {
        return getWidth() / scale();
    }

    private double height() {
        return getHeight() / scale();
    }

    /** Says what goes up, and in which unit. */
    void setYTitle(String title) {
        yTitle = title;
    }

    void show(double[] xs, List<Curve> shown, List<Mark> marked) {
        x = xs.clone();
        curves = shown;
        marks = marked;
        least = 0;
        most = 0;
        for (Curve curve : shown) {
            for (double y : curve.y()) {
                if (Double.isFinite(y)) {
                    least = Math.min(least, y);
                    most = Math.max(most, y);
                }
            }
        }
        double room = Math.max(1e-6, 0.08 * (most - least));
        most += room;
        least -= least < 0 ? room : 0;
        setAccessibleText(yTitle + " over " + xTitle);
        draw();
    }

    private void choose(double px, IntConsumer onChosen) {
        if (x.length == 0) {
            return;
        }
        double wanted = x[0] + (px / scale() - LEFT) / plotWidth() * (x[x.length - 1] - x[0]);
        int best = 0;
        for (int i = 1; i < x.length; i++) {
            if (Math.abs(x[i] - wanted) < Math.abs(x[best] - wanted)) {
                best = i;
            }
        }
        onChosen.accept(best);
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        draw();
    }

    private double plotWidth() {
        return Math.max(1, width() - LEFT - RIGHT);
    }

    private double px(double value) {
        return LEFT + (value - x[0]) / (x[x.length - 1] - x[0]) * plotWidth();
    }

    private double py(double value) {
        return TOP + (most - value) / (most - least) * Math.max(1, height() - TOP - BOTTOM);
    }

    private void draw() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (x.length < 2 || width() < 80) {
            return;
        }
        g.save();
        g.scale(scale(), scale());
        g.setFont(Font.font(11));
        Paint strong = ink.get();
        Color faint = strong instanceof Color c ? c.deriveColor(0, 1, 1, 0.25) : Color.GRAY;
        axes(g, strong, faint);
        names(g, strong);
        marks(g, strong);
        curves.forEach(c -> curve(g, c));
        point(g, strong);
        if (isFocused()) {
            g.setStroke(strong);
            g.setLineWidth(1);
            g.strokeRect(0.5, 0.5, width() - 1, height() - 1);
        }
        g.restore();
    }

    private void axes(GraphicsContext g, Paint strong, Color faint) {
        g.setLineWidth(1);
        g.setLineDashes();
        g.setTextAlign(TextAlignment.RIGHT);
        for (double y : steps(least, most, 4)) {
            g.setStroke(y == 0 ? strong : faint);
            g.strokeLine(LEFT, py(y), width() - RIGHT, py(y));
            g.setFill(strong);
            g.fillText(Numbers.plain(y), LEFT - 5, py(y) + 4);
        }
        g.setTextAlign(TextAlignment.CENTER);
        double bottom = height() - BOTTOM;
        for (double value : steps(x[0], x[x.length - 1], 5)) {
            g.setStroke(faint);
            g.strokeLine(px(value), TOP, px(value), bottom);
            g.setFill(strong);
            g.fillText(Numbers.plain(value), px(value), bottom + 14);
        }
        g.fillText(xTitle, LEFT + plotWidth() / 2, bottom + 28);
    }

    /** Round numbers between two, about so many. */
    static List<Double> steps(double from, double to, int about) {
        double raw = (to - from) / about;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double step =
                raw / power < 1.5 ? power : raw / power < 3.5 ? 2 * power : raw / power < 7.5 ? 5 * power : 10 * power;
        if (Math.abs(to - from - 360) < 1e-9) {
            step = 90;
        }
        List<Double> steps = new ArrayList<>();
        for (long i = (long) Math.ceil(from / step - 1e-9); i * step <= to + 1e-9 * step; i++) {
            steps.add(i * step);
        }
        return steps;
    }

    private void names(GraphicsContext g, Paint strong) {
        g.setTextAlign(TextAlignment.LEFT);
        g.setFill(strong);
        g.fillText(yTitle, 4, 14);
        double at = width() - RIGHT;
        for (int i = curves.size() - 1; i >= 0 && curves.size() > 1; i--) {
            Curve curve = curves.get(i);
            double width = 5.8 * curve.name().length();
            at -= width;
            g.setFill(strong);
            g.fillText(curve.name(), at, 14);
            at -= 18;
            stroke(g, curve);
            g.strokeLine(at, 10, at + 14, 10);
            at -= 6;
        }
        g.setLineDashes();
    }

    private static void stroke(GraphicsContext g, Curve curve) {
        g.setStroke(curve.colour());
        g.setLineWidth(2);
        if (curve.dashed()) {
            g.setLineDashes(6, 4);
        } else {
            g.setLineDashes();
        }
    }

    private void curve(GraphicsContext g, Curve curve) {
        stroke(g, curve);
        g.beginPath();
        boolean on = false;
        for (int i = 0; i < x.length; i++) {
            double y = curve.y()[i];
            if (!Double.isFinite(y)) {
                on = false;
            } else if (on) {
                g.lineTo(px(x[i]), py(y));
            } else {
                g.moveTo(px(x[i]), py(y));
                on = true;
            }
        }
        g.stroke();
        g.setLineDashes();
    }

    private void marks(GraphicsContext g, Paint strong) {
        for (Mark mark : marks) {
            double at = px(mark.x());
            g.setStroke(strong);
            g.setLineWidth(1);
            g.setLineDashes(2, 3);
            g.strokeLine(at, TOP, at, height() - BOTTOM);
            g.setLineDashes();
            g.setFill(strong);
            boolean late = at > width() / 2;
            g.setTextAlign(late ? TextAlignment.RIGHT : TextAlignment.LEFT);
            g.fillText(mark.label(), at + (late ? -4 : 4), TOP + 10);
        }
    }

    private void point(GraphicsContext g, Paint strong) {
        int i = chosen.get();
        if (i < 0 || i >= x.length) {
            return;
        }
        g.setStroke(strong);
        g.setLineWidth(1.5);
        g.strokeLine(px(x[i]), TOP, px(x[i]), height() - BOTTOM);
        for (Curve curve : curves) {
            if (Double.isFinite(curve.y()[i])) {
                g.setFill(curve.colour());
                g.fillOval(px(x[i]) - 5, py(curve.y()[i]) - 5, 10, 10);
                g.strokeOval(px(x[i]) - 5, py(curve.y()[i]) - 5, 10, 10);
            }
        }
    }
}
