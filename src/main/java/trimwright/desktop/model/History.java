package trimwright.desktop.model;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import trimwright.file.LoadedBoat;

/** What was done to a boat, step by step, so that all of it can be undone and redone. Confined to one thread. */
public final class History {

    /** The boat after a step, and what the step was called. */
    private record Step(String name, LoadedBoat boat) {}

    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> undone = new ArrayDeque<>();
    private String savedText;

    /** Begins with a boat as she was opened. */
    public History(LoadedBoat opened) {
        done.push(new Step("", opened));
        savedText = opened.text();
    }

    public LoadedBoat now() {
        return done.peek().boat();
    }

    /**
     * Adds a step; what was undone before is forgotten. A step that changes nothing is none.
     *
     * @param joined whether it belongs to the step before, as one nudge of many does
     */
    public boolean add(String name, LoadedBoat boat, boolean joined) {
        if (boat.text().equals(now().text())) {
            return false;
        }
        if (joined && done.size() > 1 && done.peek().name().equals(name)) {
            done.pop();
        }
        done.push(new Step(name, boat));
        undone.clear();
        return true;
    }

    /** Goes one step back. */
    public boolean undo() {
        if (done.size() < 2) {
            return false;
        }
        undone.push(done.pop());
        return true;
    }

    /** Goes one undone step forward again. */
    public boolean redo() {
        if (undone.isEmpty()) {
            return false;
        }
        done.push(undone.pop());
        return true;
    }

    /** What the next undo takes back. */
    public Optional<String> undoName() {
        return done.size() < 2 ? Optional.empty() : Optional.of(done.peek().name());
    }

    /** What the next redo does again. */
    public Optional<String> redoName() {
        return Optional.ofNullable(undone.peek()).map(Step::name);
    }

    /** Whether there is anything that the file does not have. */
    public boolean isUnsaved() {
        return !now().text().equals(savedText);
    }

    /** The boat as she is now is in that file. Earlier steps stay where they were: the meshes of parts that are gone were not taken along. */
    public void saved(Path file) {
        Step last = done.pop();
        done.push(new Step(last.name(), last.boat().at(file)));
        savedText = now().text();
    }

    /** The boat as she is now is in no file: she was recovered, or never had one. */
    public void neverSaved() {
        savedText = "";
    }

    /** The text that the file has as far as is known. */
    public String savedText() {
        return savedText;
    }
}
