package trimwright.report;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Pictures as files. */
public final class Pictures {

    private Pictures() {}

    /**
     * Writes a picture as PNG. The file appears whole or not at all.
     *
     * @param overwrite whether a file of that name may be replaced
     * @throws trimwright.finding.UnusableInputException when the file is there and may not be replaced, or cannot be written
     */
    public static void writePng(BufferedImage image, Path file, boolean overwrite) {
        NewFile.write(file, overwrite, out -> {
            if (!ImageIO.write(image, "png", out)) {
                throw new UncheckedIOException(new IOException("no PNG writer"));
            }
        });
    }
}
