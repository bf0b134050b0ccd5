package trimwright.desktop.model;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import trimwright.immersion.WaterPlane;
import trimwright.report.AttitudeWords;
import trimwright.report.Measure;
import trimwright.statics.Condition;
import trimwright.statics.Waterline;

/** A waterline that is tried: the water is moved and tilted through the hull, and tells what it would carry there. */
public final class Trial {

    /**
     * A waterline with what it tells.
     *
     * @param of the boat it was tried on
     * @param held whether the hand still holds it, so that it may be elsewhere in a moment
     */
    public record Tried(Condition of, Waterline line, boolean held) {

        /** What it would carry, in a few words. */
        public String carried(Measure measure) {
            double more = line.displacementG() - of.massG();
            return "carries " + measure.mass(line.displacementG()) + ", " + measure.mass(Math.abs(more))
                    + (more < 0 ? " less than she weighs" : " more than she weighs");
        }

        /** How it lies, and what it would carry. */
        public String brief(Measure measure) {
            return "A waterline to try, " + AttitudeWords.of(line.plane().up()) + ": " + carried(measure);
        }

        /** All it tells. */
        public String words(Measure measure) {
            return "Here the water " + carried(measure) + "; 1 mm is " + measure.mass(line.gramsPerMmImmersion())
                    + ", waterplane "
                    + Math.round(line.sums().waterplaneMm2() / 100) + " cm²"
                    + line.bmTransverseMm()
                            .map(bm -> ", BM " + measure.length(bm))
                            .orElse("") + ".";
        }
    }

    private final Desk desk;
    private final Background work;
    private final ReadOnlyObjectWrapper<Tried> tried = new ReadOnlyObjectWrapper<>();
    private Measure measure = Measure.METRIC;

    public Trial(Desk desk, Executor workers, Executor front) {
        this.desk = desk;
        work = new Background(workers, front);
        desk.looked().addListener((o, was, now) -> {
            if (now == null) {
                forget();
            }
        });
        desk.boat().addListener((o, was, now) -> forget());
    }

    public void setMeasure(Measure other) {
        measure = other;
    }

    private void forget() {
        work.giveUp();
        tried.set(null);
    }

    /**
     * Tries a waterline; one that is let go is then shown with the water level.
     *
     * @param held whether the hand still holds it
     */
    public void at(WaterPlane plane, boolean held) {
        if (desk.flotation().get() == null) {
            return;
        }
        Condition condition = desk.flotation().get().condition();
        work.ask(
                () -> Waterline.of(condition, plane),
                line -> show(new Tried(condition, line, held)),
                e -> desk.problem("This waterline could not be worked out", e));
    }

    private void show(Tried now) {
        tried.set(now);
        if (now.held()) {
            return;
        }
        desk.lookAt(new Pose(
                now.of().boat(),
                now.line().plane(),
                Optional.of(now.of().centreOfGravityMm(now.line().plane())),
                now.line().centreOfBuoyancyMm(),
                Optional.empty(),
                Optional.empty(),
                now.brief(measure)));
    }

    /** What is tried; null for nothing. */
    public ReadOnlyObjectProperty<Tried> tried() {
        return tried.getReadOnlyProperty();
    }
}
