package trimwright.desktop.model;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Nudges that follow each other: they are one step, and those that come faster than she settles are added up. */
final class Nudges {

    /** Nudges nearer to each other than this are one step. */
    private static final long JOIN_NS = 1_200_000_000L;

    private String last = "";
    private long lastNs;
    private Optional<Waiting> waiting = Optional.empty();

    /** A nudge that was asked for while she was settling. */
    record Waiting(String id, Vector3D byMm) {}

    /** Whether a step of this name goes on with the last nudge. */
    boolean joins(String step) {
        return step.equals(last) && System.nanoTime() - lastNs < JOIN_NS;
    }

    /** A nudge was done. */
    void done(String step) {
        last = step;
        lastNs = System.nanoTime();
    }

    /** Something else was done. */
    void forget() {
        last = "";
    }

    void await(String id, Vector3D byMm) {
        Vector3D before =
                waiting.filter(w -> w.id().equals(id)).map(Waiting::byMm).orElse(Vector3D.ZERO);
        waiting = Optional.of(new Waiting(id, before.add(byMm)));
    }

    /** What waits; it waits no more. */
    Optional<Waiting> take() {
        Optional<Waiting> taken = waiting;
        waiting = Optional.empty();
        return taken;
    }
}
