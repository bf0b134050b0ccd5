package trimwright.cli;

/** The text of an answer, laid out for a terminal of 96 columns. */
final class Page {

    static final int WIDTH = 96;

    private final StringBuilder text = new StringBuilder();

    /** A paragraph, broken between words. */
    Page paragraph(String words) {
        wrap(words, "", "");
        return this;
    }

    /** A point of a list, broken between words, later lines set in. */
    Page point(String words) {
        wrap(words, "- ", "  ");
        return this;
    }

    /** More about the point above, set in under it; nothing for no words. */
    Page under(String words) {
        if (!words.isBlank()) {
            wrap(words, "  ", "  ");
        }
        return this;
    }

    /** A heading of a section, with an empty line before it. */
    Page heading(String words) {
        return gap().line(words);
    }

    /** One line as it is. */
    Page line(String words) {
        text.append(words.stripTrailing()).append('\n');
        return this;
    }

    Page table(TextTable table) {
        table.lines().forEach(this::line);
        return this;
    }

    /** An empty line, unless the page is empty or there is one already. */
    Page gap() {
        if (!text.isEmpty() && !text.toString().endsWith("\n\n")) {
            text.append('\n');
        }
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }

    private void wrap(String words, String first, String later) {
        StringBuilder line = new StringBuilder(first);
        boolean bare = true;
        for (String word : words.strip().split("\\s+")) {
            if (!bare && line.length() + 1 + word.length() > WIDTH) {
                line(line.toString());
                line = new StringBuilder(later);
                bare = true;
            }
            line.append(bare ? "" : " ").append(word);
            bare = false;
        }
        line(line.toString());
    }
}
