package trimwright.desktop.model;

import java.util.Optional;

/** What was done to boat and readings, in one order: the last thing is undone first, whichever of the two it was done to. */
public final class Timeline {

    private final Desk desk;
    private final ReadingsDesk readings;

    public Timeline(Desk desk, ReadingsDesk readings) {
        this.desk = desk;
        this.readings = readings;
    }

    public void undo() {
        if (readings.isLast()) {
            readings.undo();
        } else {
            desk.undo();
        }
    }

    public void redo() {
        if (readings.isNext()) {
            readings.redo();
        } else {
            desk.redo();
        }
    }

    public Optional<String> undoName() {
        return readings.isLast() ? Optional.of(readings.undoName()) : desk.undoName();
    }

    public Optional<String> redoName() {
        return readings.isNext() ? Optional.of(readings.redoName()) : desk.redoName();
    }

    /** Who is told when something was done, undone or done again. */
    public void onChange(Runnable listener) {
        desk.boat().addListener((o, was, now) -> listener.run());
        readings.readings().addListener((o, was, now) -> listener.run());
    }
}
