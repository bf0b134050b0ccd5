package trimwright.report.picture;

import java.awt.Color;
import trimwright.boat.Kind;

/**
 * Colours of pictures and plots. Told apart by people who do not see red and green, and on a grey print by their lightness.
 */
final class Palette {

    static final Color INK = new Color(0x1B2430);
    static final Color QUIET_INK = new Color(0x5A6672);
    static final Color FRAME = new Color(0xB4BEC7);
    static final Color WATER_LINE = new Color(0x0B5C94);
    static final Color PAINT = new Color(0xC8420A);

    static final Color MISFIT = new Color(0xB00020);

    static final int AIR = 0xFDFEFE;

    /** The water behind the boat, and its tint over what is under it. */
    static final int WATER_BEHIND = 0xCFE4F1;

    static final int WATER_IN_FRONT = 0x265BA3CF;

    static final int OUTLINE = 0xE62B3642;
    static final int FAINT_OUTLINE = 0xA0303C48;

    private Palette() {}

    /** Tint of a kind of part, ARGB: hull and cylinder let see what is in them. */
    static int tint(Kind kind) {
        return switch (kind) {
            case HULL -> 0x34788B9C;
            case CYLINDER -> 0x6A8A62A8;
            case FOAM -> 0xE0F5CF4A;
            case TANK -> 0xFFF2F8FC;
            case BALLAST -> 0xFF3D4048;
            case FITTING -> 0xFF66AD8E;
            case AIR -> 0xC0E9E4F6;
        };
    }

    static final int TANK_WATER = 0xFF3E8EC4;
}
