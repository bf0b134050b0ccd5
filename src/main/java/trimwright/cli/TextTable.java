package trimwright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table in fixed-width text: columns as wide as their widest cell, numbers to the right, words to the left. */
final class TextTable {

    private static final String GAP = "  ";

    private final boolean[] toTheRight;
    private final List<String[]> rows = new ArrayList<>();
    private int headLines;

    private TextTable(boolean[] toTheRight) {
        this.toTheRight = toTheRight;
    }

    /**
     * @param columns one letter a column: {@code l} for words, set to the left, {@code r} for numbers, set to the right
     */
    static TextTable of(String columns) {
        boolean[] right = new boolean[columns.length()];
        for (int i = 0; i < right.length; i++) {
            right[i] = columns.charAt(i) == 'r';
        }
        return new TextTable(right);
    }

    /** A line of column heads; a rule is drawn below the last. Call before any row. */
    TextTable head(String... cells) {
        row(cells);
        headLines++;
        return this;
    }

    /** As many cells as there are columns; missing ones at the end stay empty. */
    TextTable row(String... cells) {
        if (cells.length > toTheRight.length) {
            throw new IllegalArgumentException(cells.length + " cells for " + toTheRight.length + " columns");
        }
        String[] full = Arrays.copyOf(cells, toTheRight.length);
        for (int i = cells.length; i < full.length; i++) {
            full[i] = "";
        }
        rows.add(full);
        return this;
    }

    /** The lines of the table, without spaces at their ends. */
    List<String> lines() {
        int[] widths = new int[toTheRight.length];
        for (String[] row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], width(row[i]));
            }
        }
        List<String> lines = new ArrayList<>();
        for (String[] row : rows) {
            lines.add(line(row, widths));
            if (lines.size() == headLines) {
                lines.add("-".repeat(Arrays.stream(widths).sum() + GAP.length() * (widths.length - 1)));
            }
        }
        return lines;
    }

    private String line(String[] row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String space = " ".repeat(widths[i] - width(row[i]));
            line.append(i == 0 ? "" : GAP);
            line.append(toTheRight[i] ? space + row[i] : row[i] + space);
        }
        return line.toString().stripTrailing();
    }

    /** Characters as a terminal counts them, so that letters outside the basic plane count once. */
    private static int width(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
