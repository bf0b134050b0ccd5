package trimwright.desktop.panes;

import java.awt.image.BufferedImage;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Paint;

/** What is seen, as a picture that can be saved. */
final class PoolPicture {

    private PoolPicture() {}

    /** A node as it is seen, pixel by pixel, before a background. */
    static BufferedImage of(Node node, Paint background) {
        SnapshotParameters how = new SnapshotParameters();
        how.setFill(background);
        WritableImage seen = node.snapshot(how, null);
        int width = (int) seen.getWidth();
        int height = (int) seen.getHeight();
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        PixelReader pixels = seen.getPixelReader();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                picture.setRGB(x, y, pixels.getArgb(x, y));
            }
        }
        return picture;
    }
}
