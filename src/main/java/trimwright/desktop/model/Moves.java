package trimwright.desktop.model;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.logging.Logger;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Boat;
import trimwright.file.LoadedBoat;
import trimwright.statics.Flotation;

/** Parts that are dragged and nudged. */
public final class Moves {

    private static final Logger LOG = Logger.getLogger(Moves.class.getName());

    private final Desk desk;
    private final Nudges nudges = new Nudges();
    private Flotation beforeDrag;

    Moves(Desk desk) {
        this.desk = desk;
    }

    /** How she floated before a drag that is under way; otherwise as she floats now. */
    Flotation before() {
        return beforeDrag != null ? beforeDrag : desk.flotation().get();
    }

    /** Whether a step of this name goes on with the last nudge. */
    boolean joins(String name) {
        return nudges.joins(name);
    }

    /** A step was taken. */
    void stepped() {
        nudges.forget();
    }

    void dragEnded() {
        beforeDrag = null;
    }

    /** Moves a part a little; nudges that follow each other quickly are one step. */
    public Optional<String> nudge(String id, Vector3D byMm) {
        if (desk.locked().contains(id)) {
            return Optional.of(id + " is locked.");
        }
        if (desk.busy().get()) {
            // A key that is held comes faster than she settles.
            nudges.await(id, byMm);
            return Optional.empty();
        }
        String name = "nudge " + id;
        if (Edits.movesMesh(now().boat(), id)) {
            desk.editAside(name, b -> Edits.moved(b, id, byMm), refused -> {
                nudges.done(name);
                refused.ifPresent(LOG::fine);
            });
            return Optional.empty();
        }
        Optional<String> refused = desk.edit(name, b -> Edits.moved(b, id, byMm));
        nudges.done(name);
        return refused;
    }

    /** Goes on with a nudge that waited. */
    void nudgeOn() {
        nudges.take()
                .filter(n -> now().boat().part(n.id()).isPresent())
                .flatMap(n -> nudge(n.id(), n.byMm()))
                .ifPresent(LOG::fine);
    }

    /** The boat with a part elsewhere, only to look at: the drag has not ended. */
    public void drag(String id, Vector3D byMm) {
        if (beforeDrag == null) {
            beforeDrag = desk.flotation().get();
        }
        Boat from = now().boat();
        desk.settleDragged("moving " + id, beforeDrag, () -> Edits.moved(from, id, byMm));
    }

    /**
     * The end of a drag: a step, when the part moved at all.
     *
     * @param then told when it is done, with what was refused
     */
    public void dragged(String id, Vector3D byMm, Consumer<Optional<String>> then) {
        if (byMm.getNorm() == 0) {
            back();
            then.accept(Optional.empty());
            return;
        }
        String name = "move " + id;
        Consumer<Optional<String>> done = refused -> {
            if (refused.isPresent()) {
                back();
            }
            then.accept(refused);
        };
        if (Edits.movesMesh(now().boat(), id)) {
            desk.editAside(name, b -> Edits.moved(b, id, byMm), done);
        } else {
            done.accept(desk.edit(name, b -> Edits.moved(b, id, byMm)));
        }
    }

    private void back() {
        beforeDrag = null;
        desk.settleAsLoaded();
    }

    private LoadedBoat now() {
        return desk.boat().get();
    }
}
