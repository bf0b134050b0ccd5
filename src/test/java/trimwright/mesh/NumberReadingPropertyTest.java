package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Positive;

class NumberReadingPropertyTest {

    @Property
    void numbersAreReadAsJavaReadsThem(@ForAll double any, @ForAll @Positive int digits) throws IOException {
        double x = Double.isFinite(any) ? any : digits;
        for (String written : List.of(
                Double.toString(x % 1e8),
                String.format(Locale.ROOT, "%." + digits % 12 + "f", x % 1e8),
                String.format(Locale.ROOT, "%+.6E", x % 1e8))) {
            Path path = Files.writeString(Files.createTempFile("number", ".obj"), "v " + written);
            try (var channel = FileChannel.open(path)) {
                ByteScanner scanner = new ByteScanner(channel);
                scanner.next();
                scanner.next();
                assertEquals(ByteScanner.Reading.NUMBER, scanner.number());
                assertEquals(Double.parseDouble(written), scanner.value());
            } finally {
                Files.delete(path);
            }
        }
    }
}
