package trimwright.samples;

/** An opening in a hull's side between two stations and two points of the section. */
record Slot(int aft, int fore, int low, int high) {

    boolean at(int station, int point) {
        return station >= aft && station < fore && point >= low && point < high;
    }

    static boolean anyAt(Slot[] slots, int station, int point) {
        for (Slot slot : slots) {
            if (slot.at(station, point)) {
                return true;
            }
        }
        return false;
    }
}
