package trimwright.desktop.tank3d;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.util.Duration;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.boat.MisfitRoom;
import trimwright.desktop.model.Background;
import trimwright.desktop.model.Misfit;
import trimwright.desktop.model.Pose;
import trimwright.desktop.model.Problem;
import trimwright.mesh.TriangleMesh;
import trimwright.report.picture.BoatPicture;

/** The boat as a picture from the side and from ahead, drawn without any graphics driver: for machines that give no 3D. */
public final class FlatPool extends Region implements PoolView {

    private static final double MARGIN = 12;

    private final ImageView view = new ImageView();
    private final Label trouble = new Label();
    private final Background drawing;
    private final PauseTransition resized = new PauseTransition(Duration.millis(200));
    private Pose pose;
    private List<Vector3D> misfits = List.of();

    /**
     * Makes an empty picture.
     *
     * @param workers where pictures are drawn
     * @param front the window's own thread
     */
    public FlatPool(Executor workers, Executor front) {
        drawing = new Background(workers, front);
        view.setPreserveRatio(true);
        trouble.setWrapText(true);
        getStyleClass().add("flat-pool");
        getChildren().addAll(view, trouble);
        setMinSize(200, 150);
        resized.setOnFinished(e -> draw());
    }

    @Override
    public Node node() {
        return this;
    }

    @Override
    public boolean isTurnable() {
        return false;
    }

    @Override
    public void show(Pose next) {
        pose = next;
        draw();
    }

    private void draw() {
        if (pose == null || getWidth() <= 0) {
            return;
        }
        Pose drawn = pose;
        List<Vector3D> marked = misfits;
        int width =
                (int) Math.max(BoatPicture.LEAST_WIDTH_PX, Math.min(BoatPicture.GREATEST_WIDTH_PX, 1.5 * getWidth()));
        drawing.ask(
                () -> BoatPicture.draw(
                        new BoatPicture.Scene(
                                drawn.boat(),
                                drawn.water(),
                                drawn.boat().paintedLine(),
                                drawn.centreOfBuoyancyMm(),
                                drawn.centreOfGravityMm(),
                                drawn.metacentreMm(),
                                drawn.boat().name(),
                                drawn.caption(),
                                marked),
                        width),
                image -> {
                    trouble.setText("");
                    view.setImage(converted(image));
                    requestLayout();
                },
                e -> trouble.setText(String.join("\n", Problem.of("", e).lines())));
    }

    private static WritableImage converted(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] argb = image.getRGB(0, 0, width, height, null, 0, width);
        WritableImage copy = new WritableImage(width, height);
        copy.getPixelWriter().setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
        return copy;
    }

    @Override
    protected void layoutChildren() {
        double width = Math.max(1, getWidth() - 2 * MARGIN);
        double height = Math.max(1, getHeight() - 2 * MARGIN);
        if (view.getFitWidth() != width) {
            resized.playFromStart();
        }
        view.setFitWidth(width);
        view.setFitHeight(height);
        double shown = view.getLayoutBounds().getHeight();
        view.relocate(MARGIN, MARGIN + Math.max(0, (height - shown) / 2));
        trouble.resizeRelocate(MARGIN, MARGIN, width, height);
    }

    @Override
    public void showBoat(Boat boat) {
        // A picture is drawn with every pose.
    }

    @Override
    public void pick(String id) {
        // Parts are picked in the list.
    }

    @Override
    public void tell(Handed handed) {
        // In a picture there is nothing to take hold of.
    }

    @Override
    public void look(HullLook look) {
        // The picture looks through the hull.
    }

    @Override
    public void look(View other) {
        // Both views are shown.
    }

    @Override
    public void fit() {
        // It always fits.
    }

    @Override
    public void nudge(double turnDeg, double heightDeg, double zoom) {
        // A picture does not turn.
    }

    @Override
    public void cut(double share) {
        // The picture looks through the hull.
    }

    @Override
    public void showMarks(boolean shown) {
        // Marks belong to the picture.
    }

    @Override
    public void misfits(List<Misfit> found) {
        List<Vector3D> points = found.stream()
                .flatMap(m -> m.room().stream())
                .map(MisfitRoom::middleMm)
                .toList();
        if (!points.equals(misfits)) {
            misfits = points;
            draw();
        }
    }

    @Override
    public void trial(boolean shown) {
        // The sliders do what the grips would.
    }

    @Override
    public void onPointed(Optional<Consumer<Vector3D>> listener) {
        // Heights are typed.
    }

    @Override
    public void setDark(boolean dark) {
        // Pictures are drawn on white, as in print.
    }

    @Override
    public void extra(List<TriangleMesh> meshes, boolean planned) {
        // The pieces of a plan are in the boat of its pose.
    }
}
