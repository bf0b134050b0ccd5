package trimwright.report.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.finding.Code;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.mesh.WholeFile;

/** Pictures are written whole, and over nothing that was there. */
class PicturesTest {

    @TempDir
    Path folder;

    private static BufferedImage image(int rgb) {
        BufferedImage image = new BufferedImage(7, 5, BufferedImage.TYPE_INT_RGB);
        image.setRGB(3, 2, rgb);
        return image;
    }

    private List<Path> files() throws IOException {
        try (var listed = Files.list(folder)) {
            return listed.toList();
        }
    }

    private static Code codeOf(Path file, boolean overwrite) {
        UnusableInputException e =
                assertThrows(UnusableInputException.class, () -> Pictures.writePng(image(0), file, overwrite));
        assertEquals(new Place.InFile(file.toString()), e.findings().get(0).place());
        return e.findings().get(0).code();
    }

    @Test
    void writesWhatWasDrawn() throws IOException {
        Path file = folder.resolve("boat.png");
        Pictures.writePng(image(0x123456), file, false);
        BufferedImage read = ImageIO.read(file.toFile());
        assertEquals(0x123456, read.getRGB(3, 2) & 0xffffff);
        assertEquals(7, read.getWidth());
        assertEquals(List.of(file), files());
    }

    @Test
    void leavesAloneWhatIsThere() throws IOException {
        Path file = folder.resolve("boat.png");
        byte[] mine = {1, 2, 3};
        Files.write(file, mine);
        assertEquals(Code.FILE_EXISTS, codeOf(file, false));
        assertArrayEquals(mine, Files.readAllBytes(file));
        assertEquals(List.of(file), files());
    }

    @Test
    void replacesWhenTold() throws IOException {
        Path file = folder.resolve("boat.png");
        Files.write(file, new byte[] {1, 2, 3});
        Pictures.writePng(image(0x654321), file, true);
        assertEquals(0x654321, ImageIO.read(file.toFile()).getRGB(3, 2) & 0xffffff);
        assertEquals(List.of(file), files());
    }

    /** A writer that fails half-way leaves neither a torn file nor a draft; what was there before stays. */
    @Test
    void aTornWriteLeavesNothing() throws IOException {
        Path fresh = folder.resolve("fresh.svg");
        WholeFile.Content torn = out -> {
            out.write(new byte[100]);
            throw new IOException("disk full");
        };
        assertThrows(UnusableInputException.class, () -> WholeFile.write(fresh, false, torn));
        assertEquals(List.of(), files());
        Path old = folder.resolve("old.svg");
        Files.write(old, new byte[] {9});
        assertThrows(UnusableInputException.class, () -> WholeFile.write(old, true, torn));
        assertArrayEquals(new byte[] {9}, Files.readAllBytes(old));
        assertEquals(List.of(old), files());
    }

    @Test
    void writesNothingButPng() throws IOException {
        assertEquals(Code.PICTURE_FORMAT_UNKNOWN, codeOf(folder.resolve("boat.gif"), false));
        assertEquals(Code.PICTURE_FORMAT_UNKNOWN, codeOf(folder.resolve("boat"), true));
        assertEquals(List.of(), files());
        Pictures.writePng(image(1), folder.resolve("BOAT.PNG"), false);
        assertEquals(List.of(folder.resolve("BOAT.PNG")), files());
    }

    @Test
    void saysWhereItCannotWrite() throws IOException {
        assertEquals(Code.FOLDER_MISSING, codeOf(folder.resolve("none/boat.png"), false));
        assertEquals(Code.FILE_IS_DIRECTORY, codeOf(Files.createDirectory(folder.resolve("folder.png")), true));
    }
}
