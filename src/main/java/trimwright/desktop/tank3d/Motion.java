package trimwright.desktop.tank3d;

import java.util.function.Consumer;
import javafx.animation.AnimationTimer;

/** Whether the pool is to be drawn plainly: while something moves, and only where the machine does not keep up otherwise. */
final class Motion extends AnimationTimer {

    /** Still for so long, it is drawn finely again. */
    private static final double STILL_NS = 350e6;

    private final Pace pace = new Pace();
    private final Consumer<Boolean> plainly;
    private boolean going;
    private boolean moved;
    private long lastNs;
    private boolean plain;

    /** @param plainly told when it is to be drawn plainly, and when no longer */
    Motion(Consumer<Boolean> plainly) {
        this.plainly = plainly;
    }

    /** Something moves. */
    void moved() {
        moved = true;
        if (!going) {
            going = true;
            lastNs = 0;
            start();
            tell();
        }
    }

    @Override
    public void handle(long nowNs) {
        if (moved || lastNs == 0) {
            pace.frame(nowNs);
            lastNs = nowNs;
        } else {
            pace.rest();
            if (nowNs - lastNs > STILL_NS) {
                going = false;
                stop();
            }
        }
        moved = false;
        tell();
    }

    private void tell() {
        boolean wanted = going && pace.isSlow();
        if (wanted != plain) {
            plain = wanted;
            plainly.accept(plain);
        }
    }
}
