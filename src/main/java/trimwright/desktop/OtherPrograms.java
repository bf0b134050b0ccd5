package trimwright.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Problem;
import trimwright.desktop.model.Stamps;
import trimwright.file.BoatFile;

/** Notices what other programs did to the boat's file and her meshes, and asks what to do: once for each change. */
final class OtherPrograms {

    private static final ButtonType AGAIN = new ButtonType("Read it again", ButtonData.YES);
    private static final ButtonType KEEP = new ButtonType("Keep what is here", ButtonData.CANCEL_CLOSE);

    private final Desk desk;
    private final Dialogs dialogs;
    private final Stamps stamps = new Stamps();
    private String told = "";
    private boolean asking;

    OtherPrograms(Desk desk, Dialogs dialogs) {
        this.desk = desk;
        this.dialogs = dialogs;
        desk.boat().addListener((o, was, now) -> stamps.add(now));
    }

    /** A boat was opened. */
    void opened() {
        stamps.read(desk.boat().get());
        told = "";
    }

    /** Asks, unless it was asked already; while she is being read or settles, the next look is early enough. */
    void look() {
        if (asking || desk.busy().get() || desk.needsNewFile()) {
            return;
        }
        boolean boat = desk.isChangedByOthers();
        List<Path> meshes = stamps.changed(desk.boat().get());
        List<Path> all = boat ? List.of(desk.path()) : meshes;
        String news = all.stream().map(f -> f + " " + Stamps.of(f)).collect(Collectors.joining("\n"));
        if (news.equals(told)) {
            return;
        }
        told = news;
        if (!all.isEmpty()) {
            asking = true;
            ask(boat, all);
            asking = false;
        }
    }

    private void ask(boolean boat, List<Path> files) {
        String names = files.stream().map(Path::toString).collect(Collectors.joining(", "));
        String text = names + (files.size() == 1 ? " is" : " are") + " no longer what was read here."
                + (!desk.unsaved().get()
                        ? ""
                        : boat
                                ? " Reading it again gives up what you changed here and did not save."
                                : " What you changed here stays.");
        Optional<ButtonType> answer = dialogs.ask(
                boat ? "Her file was changed by another program" : "A mesh of hers was changed by another program",
                text,
                AGAIN,
                KEEP);
        if (answer.filter(AGAIN::equals).isPresent()) {
            again(boat);
        }
    }

    /** Reads her again; where only a mesh is another, what is not saved yet is done to her anew. */
    private void again(boolean boat) {
        Optional<String> unsaved =
                !boat && desk.unsaved().get() ? Optional.of(desk.boat().get().text()) : Optional.empty();
        desk.open(desk.path(), false, () -> {
            opened();
            unsaved.flatMap(text -> desk.edit("what was not saved yet", b -> BoatFile.edited(b, text)))
                    .ifPresent(why -> dialogs.problem(new Problem(
                            "With the other mesh she cannot be as she was", List.of(why), Optional.empty())));
        });
    }
}
