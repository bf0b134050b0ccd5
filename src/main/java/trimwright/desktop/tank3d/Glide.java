package trimwright.desktop.tank3d;

import javafx.animation.AnimationTimer;

/** Brings the boat from one stance to the next smoothly; a newer goal is made for from wherever she is. */
final class Glide extends AnimationTimer {

    private static final double GLIDE_S = 0.45;

    private final Runnable onStep;
    private final Runnable onArrived;
    private Stance stance;
    private Stance from;
    private Stance to;
    private long beganNs;
    private boolean gliding;

    /**
     * @param onStep called with every step on the way
     * @param onArrived called when she is where she is to be
     */
    Glide(Stance first, Runnable onStep, Runnable onArrived) {
        stance = first;
        from = first;
        to = first;
        this.onStep = onStep;
        this.onArrived = onArrived;
    }

    /** Where she is now. */
    Stance stance() {
        return stance;
    }

    /** Where she is going, or is. */
    Stance goal() {
        return to;
    }

    boolean isGliding() {
        return gliding;
    }

    /** Puts her there at once. */
    void put(Stance there) {
        stance = there;
        to = there;
        arrive();
    }

    /** Brings her there. */
    void go(Stance there, double lengthMm) {
        if (gliding && there.isNear(to, lengthMm)) {
            return;
        }
        from = stance;
        to = there;
        if (there.isNear(stance, lengthMm)) {
            arrive();
            return;
        }
        beganNs = 0;
        if (!gliding) {
            gliding = true;
            start();
        }
    }

    @Override
    public void handle(long nowNs) {
        if (beganNs == 0) {
            beganNs = nowNs;
        }
        double share = (nowNs - beganNs) / 1e9 / GLIDE_S;
        if (share >= 1) {
            stance = to;
            arrive();
            return;
        }
        stance = from.toward(to, share * share * (3 - 2 * share));
        onStep.run();
    }

    private void arrive() {
        stop();
        gliding = false;
        onArrived.run();
    }
}
