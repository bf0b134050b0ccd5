package trimwright.desktop;

import java.util.concurrent.Executor;
import javafx.application.Platform;
import javafx.stage.Stage;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.PlanDesk;
import trimwright.desktop.model.PoolTestDesk;
import trimwright.desktop.model.ReadingsDesk;
import trimwright.desktop.model.Recovery;
import trimwright.desktop.model.Timeline;
import trimwright.desktop.model.ToleranceDesk;
import trimwright.desktop.panes.PoolTestPane;
import trimwright.desktop.tank3d.PoolView;

/**
 * What belongs to the pool test of the boat at hand.
 *
 * @param readings what was read
 * @param files opening and saving it
 * @param timeline the order in which boat and readings are undone
 * @param pane where all of it is shown
 */
record PoolTestJob(ReadingsDesk readings, ReadingFiles files, Timeline timeline, PoolTestPane pane) {

    static PoolTestJob of(
            Stage stage,
            Desk desk,
            PlanDesk plans,
            PoolView pool,
            Dialogs dialogs,
            Executor workers,
            Recovery recovery) {
        ReadingsDesk readings = new ReadingsDesk(desk, recovery);
        ReadingFiles files = new ReadingFiles(stage, desk, readings, dialogs);
        PoolTestPane pane = new PoolTestPane(
                desk,
                readings,
                new PoolTestDesk(desk, readings, workers, Platform::runLater),
                new ToleranceDesk(desk, workers, Platform::runLater),
                plans,
                pool,
                files);
        return new PoolTestJob(readings, files, new Timeline(desk, readings), pane);
    }
}
