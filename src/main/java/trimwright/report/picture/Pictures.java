package trimwright.report.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import trimwright.mesh.WholeFile;

/** Pictures as files. */
public final class Pictures {

    private Pictures() {}

    /**
     * Writes a picture as PNG. The file appears whole or not at all.
     *
     * @param file its name ends in .png
     * @param overwrite whether a file of that name may be replaced
     * @throws trimwright.finding.UnusableInputException when the name ends otherwise, the file is there and may not be replaced, or
     *     it cannot be written
     */
    public static void writePng(BufferedImage image, Path file, boolean overwrite) {
        FileEnding.of(file, List.of(".png"));
        WholeFile.write(file, overwrite, out -> {
            if (!ImageIO.write(image, "png", out)) {
                throw new UncheckedIOException(new IOException("no PNG writer"));
            }
        });
    }

    /** A picture as the bytes of a PNG file. */
    public static byte[] png(BufferedImage image) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image, "png", bytes)) {
                throw new IOException("no PNG writer");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
