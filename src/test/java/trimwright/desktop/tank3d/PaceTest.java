package trimwright.desktop.tank3d;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PaceTest {

    private final Pace pace = new Pace();
    private long nowNs = 1;

    private void frames(int count, double everyMs) {
        for (int i = 0; i < count; i++) {
            nowNs += (long) (everyMs * 1e6);
            pace.frame(nowNs);
        }
    }

    @Test
    void aMachineIsSlowUntilItHasShownOtherwise() {
        assertTrue(pace.isSlow());
        frames(5, 17);
        assertTrue(pace.isSlow(), "a few frames say nothing");
        frames(10, 17);
        assertFalse(pace.isSlow());
    }

    @Test
    void oneLongFrameIsNoSlowMachine() {
        frames(15, 17);
        frames(1, 200);
        frames(2, 17);
        assertFalse(pace.isSlow());
        frames(3, 70);
        assertTrue(pace.isSlow());
    }

    @Test
    void aPauseIsNoFrame() {
        frames(15, 17);
        for (int i = 0; i < 5; i++) {
            pace.rest();
            frames(1, 500);
        }
        assertFalse(pace.isSlow());
    }

    /** What takes 30 ms plainly takes some 45 finely: it stays as it is, and does not change to and fro. */
    @Test
    void inBetweenNothingChanges() {
        frames(40, 30);
        assertTrue(pace.isSlow());
        frames(15, 17);
        frames(40, 45);
        assertFalse(pace.isSlow());
    }
}
