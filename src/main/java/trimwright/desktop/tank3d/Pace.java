package trimwright.desktop.tank3d;

/**
 * Whether the machine keeps up with what moves. Where it does not, as with a renderer in software, motion is drawn plainly. It is taken for
 * slow until it has shown otherwise: plain edges for the first moment are noticed less than a view that sticks.
 */
final class Pace {

    private static final double SLOW_NS = 50e6;
    private static final int SLOW_FRAMES = 3;
    /** Drawn finely a frame takes about half as long again: no machine is taken for both in turn. */
    private static final double QUICK_NS = 25e6;

    private static final int QUICK_FRAMES = 10;
    /** Nothing was drawn between frames that are so far apart. */
    private static final double PAUSE_NS = 2e9;

    private boolean slow = true;
    private long lastNs;
    private int slowInRow;
    private int quickInRow;

    boolean isSlow() {
        return slow;
    }

    /** Nothing moved in the last frame. */
    void rest() {
        lastNs = 0;
    }

    /** A frame begins in which something moved. */
    void frame(long nowNs) {
        double tookNs = nowNs - lastNs;
        boolean counts = lastNs != 0 && tookNs < PAUSE_NS;
        lastNs = nowNs;
        if (!counts) {
            return;
        }
        slowInRow = tookNs > SLOW_NS ? slowInRow + 1 : 0;
        quickInRow = tookNs < QUICK_NS ? quickInRow + 1 : 0;
        if (slowInRow >= SLOW_FRAMES) {
            slow = true;
        } else if (quickInRow >= QUICK_FRAMES) {
            slow = false;
        }
    }
}
