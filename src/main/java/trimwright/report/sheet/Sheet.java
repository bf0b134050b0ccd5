package trimwright.report.sheet;

import java.util.List;

/**
 * A trim sheet, independent of how it is printed.
 *
 * @param title the boat's name
 * @param under water, date and what else stands under it
 * @param sections from first to last
 */
public record Sheet(String title, String under, List<Section> sections) {

    public Sheet {
        sections = List.copyOf(sections);
    }

    /**
     * A part of the sheet.
     *
     * @param title its heading; empty for none
     * @param pages how it goes over pages
     */
    public record Section(String title, Pages pages, List<Block> blocks) {

        public Section {
            blocks = List.copyOf(blocks);
        }
    }

    /** How a section goes over pages. */
    public enum Pages {
        /** Goes on where the one before it ended. */
        RUNS_ON,
        BEGINS_ONE,
        /** Stands on one page, if it can; begins it where the one before leaves too little room. */
        STAYS_ON_ONE
    }

    /** A size of paper. */
    public enum Paper {
        A4(210, 297),
        LETTER(215.9, 279.4);

        private final double widthMm;
        private final double heightMm;

        Paper(double widthMm, double heightMm) {
            this.widthMm = widthMm;
            this.heightMm = heightMm;
        }

        public double widthMm() {
            return widthMm;
        }

        public double heightMm() {
            return heightMm;
        }
    }
}
