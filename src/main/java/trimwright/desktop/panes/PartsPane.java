package trimwright.desktop.panes;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.collections.SetChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Kind;
import trimwright.boat.Part;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Edits;
import trimwright.desktop.model.FreshPart;
import trimwright.desktop.model.Misfit;
import trimwright.file.LoadedBoat;
import trimwright.report.Measure;
import trimwright.report.Wording;
import trimwright.statics.Flotation;

/** What is in her: a list with weights and their sum, and the numbers of the part that is picked. */
public final class PartsPane extends VBox {

    private final Desk desk;
    private final ListView<Part> list = new ListView<>();
    private final Label sum = Ui.words("", "quiet");
    private final PartForm form;
    private final VBox misfits = Ui.column(4);
    private Measure measure = Measure.METRIC;
    private final Map<String, Double> massById = new HashMap<>();
    private boolean following;

    /** @param fromMesh leads from a mesh, which is chosen first, to a part */
    public PartsPane(Desk desk, Runnable fromMesh) {
        super(8);
        this.desk = desk;
        form = new PartForm(desk);
        list.setId("parts");
        list.setStyle("-fx-pref-height: 18.5em; -fx-min-height: 9.2em;");
        list.setCellFactory(l -> new PartCell());
        VBox.setVgrow(list, Priority.SOMETIMES);
        FlowPane buttons = new FlowPane(
                6,
                6,
                adding(fromMesh),
                Ui.button("Copy", "Ctrl+D", this::copy),
                Ui.button("Delete", "Delete", this::delete));
        getChildren().addAll(list, sum, buttons, form, misfits);
        desk.boat().addListener((o, was, now) -> show(now));
        desk.flotation().addListener((o, was, now) -> {
            if (now != null) {
                weigh(now);
            }
        });
        desk.selected().addListener((o, was, now) -> follow());
        list.getSelectionModel().selectedItemProperty().addListener((o, was, now) -> {
            if (!following && now != null) {
                desk.selected().set(now.id());
            }
        });
        desk.locked().addListener((SetChangeListener<String>) c -> list.refresh());
        desk.misfits().addListener((o, was, now) -> showMisfits(now));
    }

    public void setMeasure(Measure other) {
        measure = other;
        form.setMeasure(other);
        if (desk.flotation().get() != null) {
            weigh(desk.flotation().get());
        }
        if (desk.boat().get() != null) {
            show(desk.boat().get());
        }
    }

    private MenuButton adding(Runnable fromMesh) {
        MenuButton add = new MenuButton("Add");
        add.setId("add-part");
        for (Kind kind : List.of(Kind.BALLAST, Kind.FOAM, Kind.FITTING, Kind.CYLINDER, Kind.TANK)) {
            MenuItem item = new MenuItem(FreshPart.name(kind));
            item.setOnAction(e -> add(kind));
            add.getItems().add(item);
        }
        MenuItem mesh = new MenuItem("From a mesh…");
        mesh.setId("add-mesh");
        mesh.setOnAction(e -> fromMesh.run());
        add.getItems().add(mesh);
        return add;
    }

    private void add(Kind kind) {
        Flotation flotation = desk.flotation().get();
        if (flotation == null) {
            return;
        }
        Part part = FreshPart.of(
                desk.boat().get().boat(), kind, flotation.condition().volumeCentroidMm());
        desk.edit("add " + part.id(), b -> b.plus(List.of(part))).ifPresent(form::complain);
        desk.selected().set(part.id());
    }

    /** Copies the picked part, a little ahead of it. */
    public void copy() {
        desk.selectedPart().ifPresent(part -> {
            String id = Edits.freeId(desk.boat().get().boat(), part.id());
            double ahead = part.shape().map(s -> s.bounds().sizeX()).orElse(20.0);
            UnaryOperator<LoadedBoat> change =
                    b -> b.plus(List.of(Edits.moved(Edits.named(part, id), new Vector3D(Math.rint(ahead), 0, 0))));
            Consumer<Optional<String>> then = refused -> refused.ifPresentOrElse(
                    form::complain, () -> desk.selected().set(id));
            if (Edits.isMesh(part)) {
                desk.editAside("copy " + part.id(), change, then);
            } else {
                then.accept(desk.edit("copy " + part.id(), change));
            }
        });
    }

    /** Takes the picked part out. */
    public void delete() {
        if (desk.locked().contains(desk.selected().get())) {
            form.complain(desk.selected().get() + " is locked.");
            return;
        }
        desk.selectedPart()
                .ifPresent(part -> desk.edit("delete " + part.id(), b -> b.without(part.id()))
                        .ifPresent(form::complain));
    }

    private void show(LoadedBoat boat) {
        following = true;
        List<Part> parts = boat.boat().parts();
        if (parts.size() == list.getItems().size()) {
            for (int i = 0; i < parts.size(); i++) {
                if (!parts.get(i).equals(list.getItems().get(i))) {
                    list.getItems().set(i, parts.get(i));
                }
            }
        } else {
            list.getItems().setAll(parts);
        }
        following = false;
        follow();
    }

    /** Weights come with the solve: working out that of a big hull would hold up the pointer. */
    private void weigh(Flotation flotation) {
        massById.clear();
        flotation.condition().pieces().forEach(p -> massById.merge(p.part().id(), p.massG(), Double::sum));
        sum.setText(massById.size() + " parts, "
                + measure.mass(flotation.condition().dryMassG()) + " without tank water");
        list.refresh();
    }

    private void follow() {
        following = true;
        Optional<Part> part = desk.selectedPart();
        if (part.isPresent()) {
            list.getSelectionModel().select(part.get());
            if (!list.isFocused()) {
                list.scrollTo(Math.max(0, list.getSelectionModel().getSelectedIndex() - 2));
            }
        } else {
            list.getSelectionModel().clearSelection();
        }
        following = false;
        form.show(part);
    }

    private void showMisfits(List<Misfit> found) {
        misfits.getChildren().clear();
        if (!found.isEmpty()) {
            misfits.getChildren().add(Ui.heading("Does not fit"));
        }
        found.forEach(m -> misfits.getChildren().add(Ui.warning(Wording.of(m.finding(), measure))));
        list.refresh();
    }

    /** A part in the list: colour of its kind, name, weight of all its pieces. */
    private final class PartCell extends ListCell<Part> {

        private final Region swatch = new Region();
        private final Label name = new Label();
        private final Label mass = new Label();
        private final Label warning = new Label("▲");
        private final Label lock = new Label("locked");
        private final HBox row = new HBox(8, swatch, name, warning, Ui.filler(), lock, mass);

        PartCell() {
            row.setAlignment(Pos.CENTER_LEFT);
            swatch.getStyleClass().add("swatch");
            mass.getStyleClass().add("quiet");
            lock.getStyleClass().add("quiet");
            warning.getStyleClass().add("misfit-sign");
            warning.setTooltip(Ui.tip("Does not fit: see below"));
            for (Label label : List.of(mass, warning, lock)) {
                label.setMinWidth(Region.USE_PREF_SIZE);
            }
            name.setMinWidth(40);
        }

        @Override
        protected void updateItem(Part part, boolean empty) {
            super.updateItem(part, empty);
            setText(null);
            if (empty || part == null) {
                setGraphic(null);
                return;
            }
            swatch.getStyleClass().setAll("swatch", "kind-" + part.kind().name().toLowerCase(Locale.ROOT));
            boolean misfit =
                    desk.misfits().get().stream().anyMatch(m -> m.parts().contains(part.id()));
            warning.setVisible(misfit);
            warning.setManaged(misfit);
            lock.setVisible(desk.locked().contains(part.id()));
            lock.setManaged(lock.isVisible());
            name.setText(part.id() + (part.mirror() ? "  (pair)" : ""));
            double grams = massById.getOrDefault(part.id(), 0.0);
            mass.setText(grams > 0 ? measure.mass(grams) : part.isTank() ? "tank" : "");
            setGraphic(row);
            setAccessibleText(part.kind().word() + " " + part.id() + (misfit ? ", does not fit" : "")
                    + (lock.isVisible() ? ", locked" : ""));
        }
    }
}
