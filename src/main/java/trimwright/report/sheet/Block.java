package trimwright.report.sheet;

import java.util.List;

/** Something on a sheet. */
public sealed interface Block {

    /** A paragraph; a verdict is set larger. */
    record Words(String text, boolean verdict) implements Block {}

    /** A heading within a section. */
    record Heading(String text) implements Block {}

    /** A list of points. */
    record Points(List<String> points) implements Block {

        public Points {
            points = List.copyOf(points);
        }
    }

    /**
     * A table.
     *
     * @param name its name as a file, without ending; no two tables of a sheet share one
     * @param caption what it shows
     * @param columns one letter each: {@code l} for words, {@code r} for numbers, set to the right
     * @param head the column heads, with the unit
     * @param rows cells row by row, as many as columns
     * @param sums whether the last row sums up the others
     */
    record Grid(String name, String caption, String columns, List<String> head, List<List<String>> rows, boolean sums)
            implements Block {

        public Grid(String name, String caption, String columns, List<String> head, List<List<String>> rows) {
            this(name, caption, columns, head, rows, false);
        }

        /** @throws IllegalArgumentException when a row has another number of cells than there are columns */
        public Grid {
            head = List.copyOf(head);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<String> row : rows) {
                if (row.size() != columns.length() || head.size() != columns.length()) {
                    throw new IllegalArgumentException(caption + ": " + row + " for the columns " + columns);
                }
            }
        }
    }

    /**
     * A drawing.
     *
     * @param svg the SVG document
     * @param aspect width over height
     * @param alt what it shows, for who cannot see it
     */
    record Drawing(String svg, double aspect, String alt) implements Block {}

    /**
     * A picture of points.
     *
     * @param png the bytes of a PNG file
     * @param aspect width over height
     * @param alt what it shows, for who cannot see it
     */
    record Picture(byte[] png, double aspect, String alt) implements Block {}

    /** A line to be written on. */
    record Blank(String label, String unit) implements Block {}
}
