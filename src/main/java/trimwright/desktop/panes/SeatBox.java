package trimwright.desktop.panes;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import trimwright.boat.BarShape;
import trimwright.boat.Part;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.PlanDesk;
import trimwright.plan.CylinderSeat;
import trimwright.report.Measure;

/** Where the cylinder fits, and lowering it to there. */
final class SeatBox extends VBox {

    private final PlanDesk plans;
    private final VBox words = Ui.column(3);
    private final Button lower = Ui.button("Lower it to there", "With all that stands in it, as one step", this::lower);
    private Measure measure = Measure.METRIC;

    SeatBox(Desk desk, PlanDesk plans) {
        super(6);
        this.plans = plans;
        Button find = Ui.button("Find the cylinder's seat", "Where it fits, and how low it could lie", this::find);
        find.setId("seat-find");
        find.disableProperty().bind(plans.running());
        lower.setId("seat-lower");
        lower.setVisible(false);
        getChildren().addAll(Ui.heading("Cylinder"), new FlowPane(6, 6, find, lower), words);
        desk.boat().addListener((o, was, now) -> {
            boolean there = plans.cylinder().isPresent();
            setVisible(there);
            setManaged(there);
        });
        plans.seat().addListener((o, was, now) -> show(now));
    }

    void setMeasure(Measure other) {
        measure = other;
        show(plans.seat().get());
    }

    private void find() {
        plans.cylinder().ifPresent(c -> plans.findSeat(c, 0));
    }

    private void lower() {
        plans.lower().ifPresent(why -> words.getChildren().add(Ui.words("▲ " + why, "error")));
    }

    private void show(CylinderSeat seat) {
        words.getChildren().clear();
        lower.setVisible(seat != null && seat.lowestAxisMm().isPresent());
        if (seat == null) {
            return;
        }
        Part part = seat.part();
        double axis = ((BarShape) part.shape().orElseThrow()).fromMm().getZ();
        words.getChildren()
                .add(Ui.words(
                        seat.fits()
                                ? "✓ " + part.id() + " fits where it is, with " + measure.length(seat.clearanceMm())
                                        + " to the inside of the hull."
                                : "✖ " + part.id() + " does not fit where it is: it comes "
                                        + measure.length(Math.abs(seat.clearanceMm())) + " into the hull.",
                        "strong"));
        Optional<Double> lowest = seat.lowestAxisMm();
        words.getChildren()
                .add(Ui.words(lowest.map(z -> "Its axis is at " + measure.length(axis) + " and could lie as low as "
                                + measure.length(z) + ". Low is good: lead goes under it, foam beside and above.")
                        .orElse("It fits at no height. Make it thinner or shorter, or move it along.")));
        words.getChildren()
                .add(Ui.words("The thickest that would fit at its present axis is "
                        + measure.length(seat.largestDiameterMm()) + "."));
    }
}
