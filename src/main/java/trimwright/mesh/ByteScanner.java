package trimwright.mesh;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;

/**
 * Splits a text file into words, fast: over bytes, without making strings. Lines count from 1 and end with LF, CR or CR LF.
 * A word is held until the next is asked for.
 */
final class ByteScanner {

    /** What a word is when it is read as a number. */
    enum Reading {
        NUMBER,
        NOT_FINITE,
        DECIMAL_COMMA,
        NO_NUMBER
    }

    private static final int BUFFER = 1 << 17;
    private static final long EXACT_MANTISSA = 1L << 53;
    private static final long MANTISSA_FULL = (Long.MAX_VALUE - 9) / 10;

    /** The powers of ten that a double holds exactly. */
    private static final double[] EXACT_POWERS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };

    private final FileChannel channel;
    private final byte[] bytes = new byte[BUFFER];
    private int position;
    private int limit;
    private int wordStart;
    private int wordEnd;
    private long line = 1;
    private double value;

    ByteScanner(FileChannel channel) throws IOException {
        this.channel = channel;
        fill();
        if (limit >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF) {
            position = 3;
        }
    }

    /** The line on which the scanner stands, which is that of the last word. */
    long line() {
        return line;
    }

    /** The number in the word that was last read as one. */
    double value() {
        return value;
    }

    /** Goes to the next word, over line ends; false at the end of the file. */
    boolean next() throws IOException {
        while (true) {
            if (nextOnLine()) {
                return true;
            }
            if (!nextLine()) {
                return false;
            }
        }
    }

    /** Goes to the next word of this line; false, and no word held, at its end. A backslash at the end joins the next line to it. */
    boolean nextOnLine() throws IOException {
        while (true) {
            int b = peek();
            if (b == '\\' && joinsLines()) {
                continue;
            }
            if (b == ' ' || b == '\t' || b == '\f' || b == 0x0B) {
                position++;
                continue;
            }
            if (b < 0 || b == '\n' || b == '\r') {
                wordEnd = wordStart;
                return false;
            }
            takeWord();
            return true;
        }
    }

    /** Leaves this line for the next; false when there is none. */
    boolean nextLine() throws IOException {
        while (true) {
            int b = peek();
            if (b < 0) {
                return false;
            }
            position++;
            if (b == '\n' || b == '\r') {
                if (b == '\r' && peek() == '\n') {
                    position++;
                }
                line++;
                return true;
            }
        }
    }

    /** Whether the word is this one, given in lower case; the word itself may use capitals. */
    boolean is(String lowerCase) {
        int length = wordEnd - wordStart;
        if (length != lowerCase.length()) {
            return false;
        }
        for (int i = 0; i < length; i++) {
            int b = bytes[wordStart + i];
            if (b != lowerCase.charAt(i) && (b < 'A' || b > 'Z' || b + 32 != lowerCase.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    int wordLength() {
        return wordEnd - wordStart;
    }

    byte wordByte(int index) {
        return bytes[wordStart + index];
    }

    String word() {
        return new String(bytes, wordStart, wordEnd - wordStart, StandardCharsets.UTF_8);
    }

    /** Reads the word as a number, correctly rounded; {@link #value()} then holds it. */
    Reading number() {
        int i = wordStart;
        boolean negative = false;
        if (bytes[i] == '-' || bytes[i] == '+') {
            negative = bytes[i] == '-';
            i++;
        }
        long mantissa = 0;
        int exponent = 0;
        int digits = 0;
        boolean point = false;
        for (; i < wordEnd; i++) {
            int b = bytes[i];
            if (b >= '0' && b <= '9') {
                if (mantissa > MANTISSA_FULL) {
                    return slowly();
                }
                mantissa = 10 * mantissa + (b - '0');
                digits++;
                exponent -= point ? 1 : 0;
            } else if (b == '.' && !point) {
                point = true;
            } else {
                break;
            }
        }
        if (digits == 0) {
            return slowly();
        }
        if (i < wordEnd) {
            if (bytes[i] != 'e' && bytes[i] != 'E') {
                return slowly();
            }
            int written = exponentFrom(i + 1);
            if (written == Integer.MIN_VALUE) {
                return slowly();
            }
            exponent += written;
        }
        // Mantissa and power are exact, so that the one multiplication or division rounds correctly.
        if (mantissa > EXACT_MANTISSA || exponent > 22 || exponent < -22) {
            return slowly();
        }
        double magnitude = exponent < 0 ? mantissa / EXACT_POWERS[-exponent] : mantissa * EXACT_POWERS[exponent];
        value = negative ? -magnitude : magnitude;
        return Reading.NUMBER;
    }

    private int exponentFrom(int start) {
        int i = start;
        boolean negative = false;
        if (i < wordEnd && (bytes[i] == '-' || bytes[i] == '+')) {
            negative = bytes[i] == '-';
            i++;
        }
        int result = 0;
        if (i == wordEnd || wordEnd - i > 4) {
            return Integer.MIN_VALUE;
        }
        for (; i < wordEnd; i++) {
            if (bytes[i] < '0' || bytes[i] > '9') {
                return Integer.MIN_VALUE;
            }
            result = 10 * result + (bytes[i] - '0');
        }
        return negative ? -result : result;
    }

    /** The words that are long, rare or wrong. */
    private Reading slowly() {
        String word = word();
        if (NumberWords.isNotFinite(word)) {
            value = Double.NaN;
            return Reading.NOT_FINITE;
        }
        if (NumberWords.hasDecimalComma(word)) {
            return Reading.DECIMAL_COMMA;
        }
        if (!NumberWords.isDecimal(word)) {
            return Reading.NO_NUMBER;
        }
        value = Double.parseDouble(word);
        return Double.isInfinite(value) ? Reading.NOT_FINITE : Reading.NUMBER;
    }

    private boolean joinsLines() throws IOException {
        if (limit - position < 3) {
            keepFrom(position);
        }
        if (position + 1 >= limit || (bytes[position + 1] != '\n' && bytes[position + 1] != '\r')) {
            return false;
        }
        position++;
        return nextLine();
    }

    private void takeWord() throws IOException {
        wordStart = position;
        while (true) {
            while (position < limit && bytes[position] > ' ') {
                position++;
            }
            // Bytes above 127 are negative: they belong to the word too.
            if (position < limit && bytes[position] < 0) {
                position++;
                continue;
            }
            if (position < limit || position - wordStart == BUFFER) {
                break;
            }
            int length = position - wordStart;
            keepFrom(wordStart);
            wordStart = 0;
            position = length;
            if (position == limit) {
                break;
            }
        }
        if (position == wordStart) {
            // A control character that neither parts words nor lines is a word of its own.
            position++;
        }
        wordEnd = position;
    }

    private int peek() throws IOException {
        if (position == limit) {
            keepFrom(position);
        }
        return position < limit ? bytes[position] & 0xFF : -1;
    }

    /** Moves what is still needed to the front of the buffer and fills the rest from the file. */
    private void keepFrom(int start) throws IOException {
        int kept = limit - start;
        System.arraycopy(bytes, start, bytes, 0, kept);
        position -= start;
        limit = kept;
        fill();
    }

    private void fill() throws IOException {
        ByteBuffer free = ByteBuffer.wrap(bytes, limit, BUFFER - limit);
        MeshFiles.readFully(channel, free);
        limit = free.position();
    }
}
