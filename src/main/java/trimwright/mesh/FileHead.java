package trimwright.mesh;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/** The first bytes of a file and its length, from which its format is told. */
final class FileHead {

    static final int LENGTH = 4096;

    private static final int SHOWN = 24;
    private static final Set<String> OBJ_KEYWORDS =
            Set.of("v", "vt", "vn", "vp", "f", "o", "g", "s", "l", "p", "mtllib", "usemtl");
    private static final Pattern LINES = Pattern.compile("\\R");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    /** Beginnings of files that people try, with the name of their format. */
    private static final Map<String, String> OTHER_FORMATS = Map.ofEntries(
            Map.entry("ply", "PLY"),
            Map.entry("OFF", "OFF"),
            Map.entry("ISO-10303-21", "STEP"),
            Map.entry("glTF", "glTF"),
            Map.entry("<?xml", "XML"),
            Map.entry("{", "JSON"),
            Map.entry("%PDF", "PDF"),
            Map.entry("AC10", "DWG"),
            Map.entry("\u00ff\u00fe", "UTF-16"),
            Map.entry("\u00fe\u00ff", "UTF-16"),
            Map.entry("\u001f\u008b", "gzip"));

    private final ByteBuffer bytes;
    private final long size;
    private final String text;

    /** @param bytes little endian, from the start of the file */
    FileHead(ByteBuffer bytes, long size) {
        this.bytes = bytes;
        this.size = size;
        this.text = StandardCharsets.ISO_8859_1.decode(bytes.duplicate()).toString();
    }

    enum Guess {
        ZIP,
        STL_TEXT,
        OBJ_TEXT,
        STL_DAMAGED,
        UNKNOWN
    }

    /** The count that a binary STL has after its 80 bytes of header; 0 in a file too short for it. */
    long stlTriangles() {
        return size < StlBinaryReader.HEADER ? 0 : Integer.toUnsignedLong(bytes.getInt(StlBinaryReader.HEADER - 4));
    }

    boolean hasStlLength() {
        return size >= StlBinaryReader.HEADER
                && size == StlBinaryReader.HEADER + StlBinaryReader.RECORD * stlTriangles();
    }

    Guess guess() {
        if (text.startsWith("PK\u0003\u0004") || text.startsWith("PK\u0005\u0006")) {
            return Guess.ZIP;
        }
        if (text.indexOf('\0') < 0) {
            return guessText();
        }
        boolean other = OTHER_FORMATS.keySet().stream().anyMatch(text::startsWith);
        return !other && looksLikeDamagedStl() ? Guess.STL_DAMAGED : Guess.UNKNOWN;
    }

    Finding unknownFormat(String file) {
        List<Object> values = new ArrayList<>(List.of("found", printable(text, SHOWN)));
        OTHER_FORMATS.forEach((start, name) -> {
            if (text.startsWith(start)) {
                values.add("looksLike");
                values.add(name);
            }
        });
        values.add("allowed");
        values.add(List.of("STL", "OBJ", "3MF"));
        return Finding.of(Code.MESH_FORMAT_UNKNOWN, new Place.InFile(file), values.toArray());
    }

    /** The start of a text with everything that a terminal could stumble over replaced by dots. */
    static String printable(String text, int most) {
        StringBuilder shown = new StringBuilder();
        for (int i = 0; i < Math.min(text.length(), most); i++) {
            char c = text.charAt(i);
            shown.append(c < ' ' || c >= 0x7f ? '.' : c);
        }
        return shown.append(text.length() > most ? "…" : "").toString();
    }

    private Guess guessText() {
        String body = text.startsWith("\u00ef\u00bb\u00bf") ? text.substring(3) : text;
        if (OTHER_FORMATS.keySet().stream().anyMatch(body::startsWith)) {
            return Guess.UNKNOWN;
        }
        if (body.stripLeading().toLowerCase(Locale.ROOT).startsWith("solid")) {
            return Guess.STL_TEXT;
        }
        for (String line : LINES.split(body)) {
            String word = BLANKS.split(line.strip())[0];
            if (!word.isEmpty() && !word.startsWith("#")) {
                return OBJ_KEYWORDS.contains(word) ? Guess.OBJ_TEXT : Guess.UNKNOWN;
            }
        }
        return size > LENGTH ? Guess.OBJ_TEXT : Guess.UNKNOWN;
    }

    /** Binary, with a count that could be meant, and a first triangle with sensible numbers where there is one. */
    private boolean looksLikeDamagedStl() {
        if (size < StlBinaryReader.HEADER || stlTriangles() > MeshFiles.MOST_TRIANGLES) {
            return false;
        }
        boolean someSize = false;
        for (int i = StlBinaryReader.HEADER + 12;
                i + 4 <= Math.min(bytes.limit(), StlBinaryReader.HEADER + 48);
                i += 4) {
            float coordinate = bytes.getFloat(i);
            if (!(Math.abs(coordinate) <= MeshFiles.LARGEST_COORDINATE)) {
                return false;
            }
            someSize |= Math.abs(coordinate) > 1e-6;
        }
        return someSize || bytes.limit() < StlBinaryReader.HEADER + 48;
    }
}
