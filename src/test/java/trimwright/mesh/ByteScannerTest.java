package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.mesh.ByteScanner.Reading;

/** Words, lines and numbers of a text file; numbers against the decimal arithmetic of the Java library. */
class ByteScannerTest {

    @TempDir
    private Path directory;

    private final List<FileChannel> opened = new ArrayList<>();

    private ByteScanner scanner(String text) throws IOException {
        FileChannel channel = FileChannel.open(Files.writeString(directory.resolve("a"), text));
        opened.add(channel);
        return new ByteScanner(channel);
    }

    @AfterEach
    void closeFiles() throws IOException {
        for (FileChannel channel : opened) {
            channel.close();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "7",
                "-7",
                "+.5",
                "5.",
                "-.25e1",
                "1e10",
                "2.5E-15",
                "-3.25e+18",
                "1e22",
                "1e-22",
                "1e23",
                "1e-23",
                "12.5e21",
                "9007199254740992",
                "9007199254740993",
                "900719925474099.3",
                "922337203685477580",
                "9223372036854775808",
                "123456789012345678901234567890",
                "0.000000000000000000000000012345",
                "1e0005",
                "1e00005",
                "1e-0012",
                "4.9e-324",
                "17e300"
            })
    void decimalNumbers(String word) throws IOException {
        ByteScanner text = scanner("v " + word + " end");
        assertTrue(text.next());
        assertTrue(text.next());
        assertEquals(Reading.NUMBER, text.number());
        assertEquals(new BigDecimal(word).doubleValue(), text.value(), 0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1e", "1e+", "e5", ".", "-", "+-1", "1.2.3", "1d", "0x1p3", "1e5.5", "1e5x", "1x", "1:", "1/2", "1e1:",
                "1e/"
            })
    void wordsThatAreNoNumbers(String word) throws IOException {
        ByteScanner text = scanner(word);
        assertTrue(text.next());
        assertEquals(Reading.NO_NUMBER, text.number());
    }

    /** Lines end with LF, CR LF or CR and count from 1; a byte order mark is no word; a backslash within a line is one. */
    @Test
    void wordsAndLines() throws IOException {
        ByteScanner text = scanner("\uFEFFone two\r\n\r\nthree\rfour \\ five\n");
        String[] words = {"one", "two", "three", "four", "\\", "five"};
        int[] lines = {1, 1, 3, 4, 4, 4};
        for (int i = 0; i < words.length; i++) {
            assertTrue(text.next());
            assertEquals(words[i], text.word());
            assertEquals(lines[i], text.line());
        }
        assertFalse(text.next());
    }

    /** A backslash at the end of a line joins the next to it, wherever in the buffer of 131 072 bytes it falls; capitals are the same to {@code is}. */
    @Test
    void joinedLinesAtTheEndOfTheBuffer() throws IOException {
        for (int before = (1 << 17) - 6; before <= (1 << 17) + 2; before++) {
            ByteScanner text = scanner(" ".repeat(before) + "a\\\r\nEnd" + "\nnext");
            // A backslash belongs to the word before it where no blank parts them.
            assertTrue(text.next());
            assertEquals("a\\", text.word());
            ByteScanner joined = scanner(" ".repeat(before) + "a \\\r\nEnd" + "\nnext");
            assertTrue(joined.next() && joined.nextOnLine());
            assertTrue(joined.is("end"));
            assertFalse(joined.is("enz") || joined.is("ends"));
            assertEquals(2, joined.line());
            assertFalse(joined.nextOnLine());
            assertTrue(joined.next());
            assertEquals("next", joined.word());
        }
    }

    /** A word longer than the buffer is cut there, and a control character that parts nothing is a word. */
    @Test
    void longWordsAndControlCharacters() throws IOException {
        ByteScanner text = scanner("x".repeat((1 << 17) + 5) + " \u0001 y");
        assertTrue(text.next());
        assertEquals(1 << 17, text.wordLength());
        assertTrue(text.next());
        assertEquals("xxxxx", text.word());
        assertTrue(text.next());
        assertEquals("\u0001", text.word());
        assertTrue(text.next());
        assertEquals("y", text.word());
    }

    /** Letters of two to four bytes belong to the word, here and at the end of the buffer; of A and Z only the case differs from a and z. */
    @Test
    void lettersBeyondAscii() throws IOException {
        ByteScanner text = scanner("größe \uD83D\uDEA2 AZ [z");
        for (String word : new String[] {"größe", "\uD83D\uDEA2"}) {
            assertTrue(text.next());
            assertEquals(word, text.word());
        }
        assertTrue(text.next() && text.is("az"));
        assertTrue(text.next());
        // The character after Z is 32 before {.
        assertFalse(text.is("{z"));
        for (int before = (1 << 17) - 5; before <= 1 << 17; before++) {
            ByteScanner late = scanner(" ".repeat(before) + "é2ü next");
            assertTrue(late.next());
            assertEquals("é2ü", late.word());
            assertTrue(late.next());
            assertEquals("next", late.word());
        }
    }

    /** A zero byte ends neither line nor file; a file of nothing but a byte order mark has no word. */
    @Test
    void zeroBytesAndABareMark() throws IOException {
        ByteScanner text = scanner("a\0\0b\nc");
        for (String word : new String[] {"a", "\0", "\0", "b", "c"}) {
            assertTrue(text.next());
            assertEquals(word, text.word());
        }
        assertEquals(2, text.line());
        ByteScanner skipped = scanner("a \0 b\nc");
        assertTrue(skipped.nextLine() && skipped.next());
        assertEquals("c", skipped.word());
        assertFalse(scanner("\uFEFF").next());
    }

    /** A backslash joins lines also where it is the last but one byte of the file, and is a word where it is the last. */
    @Test
    void aBackslashAtTheEndOfTheFile() throws IOException {
        ByteScanner joined = scanner("a \\\n");
        assertTrue(joined.next());
        assertFalse(joined.nextOnLine());
        assertEquals(2, joined.line());
        ByteScanner last = scanner("a \\");
        assertTrue(last.next() && last.nextOnLine());
        assertEquals("\\", last.word());
    }
}
