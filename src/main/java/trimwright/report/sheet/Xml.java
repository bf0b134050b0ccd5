package trimwright.report.sheet;

/** Text as it stands in XML. */
final class Xml {

    private Xml() {}

    static String text(String words) {
        StringBuilder escaped = new StringBuilder(words.length());
        words.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(allowed(c) ? c : 0xFFFD);
            }
        });
        return escaped.toString();
    }

    /** XML 1.0 knows no control characters but these. */
    private static boolean allowed(int c) {
        return c >= 0x20 && c != 0x7F || c == '\t' || c == '\n' || c == '\r';
    }

    /** A document without its declaration, to stand inside another. */
    static String inner(String document) {
        int root = document.indexOf("<svg");
        return root < 0 ? document : document.substring(root);
    }
}
