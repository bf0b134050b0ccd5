package trimwright.report.sheet;

import java.util.Optional;
import trimwright.boat.Boat;
import trimwright.boat.Part;
import trimwright.report.Measure;
import trimwright.statics.Condition;
import trimwright.statics.DiveRun;
import trimwright.statics.DiveStep;
import trimwright.statics.Flotation;

/**
 * The boat that a sheet is about.
 *
 * @param boat the boat, with the plan carried out where there is one
 * @param condition her with empty tanks
 * @param afloat how she floats then
 * @param dive her dive; empty for a boat without tanks, or that sinks
 * @param measure the units of the sheet
 */
record Subject(Boat boat, Condition condition, Flotation afloat, Optional<DiveRun> dive, Measure measure) {

    private static final int DIVE_STEPS = 20;

    static Subject of(Boat boat, Measure measure) {
        Condition condition = Condition.of(boat).withAllTanksAt(0);
        Flotation afloat = Flotation.settling(condition);
        Optional<DiveRun> dive =
                condition.tankVolumeMm3() > 0 && afloat.settled().isPresent()
                        ? Optional.of(DiveRun.of(condition, DIVE_STEPS))
                        : Optional.empty();
        return new Subject(boat, condition, afloat, dive, measure);
    }

    /** Whether she is meant to dive. */
    boolean dives() {
        return boat.parts().stream().anyMatch(Part::isTank);
    }

    /** The end of her dive. */
    Optional<DiveStep> dived() {
        return dive.map(run -> run.course().steps().get(run.course().steps().size() - 1));
    }

    /** A heading with the unit of lengths, as in "bow mm". */
    String inLength(String what) {
        return (what + " " + measure.lengthUnit()).strip();
    }

    /** A heading with the unit of masses. */
    String inMass(String what) {
        return (what + " " + measure.massUnit()).strip();
    }

    /** A heading with the unit of volumes. */
    String inVolume(String what) {
        return (what + " " + measure.volumeUnit()).strip();
    }
}
