package trimwright.desktop;

import java.nio.file.Path;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;
import trimwright.desktop.model.Desk;
import trimwright.desktop.model.Settings;
import trimwright.desktop.model.Timeline;

/** The menus. */
final class Menus {

    private static final double[] TEXT_SIZES = {100, 125, 150, 200};

    private final Desk desk;
    private final Settings settings;
    private final Files files;
    private final MainWindow window;
    private final Dialogs dialogs;
    private final Menu recent = new Menu("Open recent");
    private final MenuItem undo = item("Undo", "Shortcut+Z", () -> {});
    private final MenuItem redo = item("Redo", "Shortcut+Shift+Z", () -> {});

    Menus(Desk desk, Settings settings, Files files, MainWindow window, Dialogs dialogs) {
        this.desk = desk;
        this.settings = settings;
        this.files = files;
        this.window = window;
        this.dialogs = dialogs;
    }

    MenuBar bar() {
        MenuBar bar = new MenuBar(boat(), edit(), look(), help());
        window.poolTest().timeline().onChange(this::nameSteps);
        nameSteps();
        return bar;
    }

    private static MenuItem item(String text, String keys, Runnable action) {
        MenuItem item = new MenuItem(text);
        if (!keys.isEmpty()) {
            item.setAccelerator(KeyCombination.keyCombination(keys));
        }
        item.setOnAction(e -> action.run());
        return item;
    }

    private Menu boat() {
        Menu menu = new Menu("_Boat");
        menu.getItems()
                .addAll(
                        item(
                                "New from a mesh…",
                                "Shortcut+N",
                                () -> files.chooseMesh("The mesh of her hull").ifPresent(window::newHull)),
                        item("Open…", "Shortcut+O", files::chooseAndOpen),
                        recent,
                        new SeparatorMenuItem(),
                        item("Save", "Shortcut+S", files::save),
                        item("Save as…", "Shortcut+Shift+S", files::saveAs),
                        item(
                                "Save a picture of the pool…",
                                "Shortcut+P",
                                () -> files.savePicture(window.poolPane().picture())),
                        new SeparatorMenuItem(),
                        item("Quit", "Shortcut+Q", window::close));
        menu.setOnShowing(e -> listRecent());
        listRecent();
        return menu;
    }

    private void listRecent() {
        recent.getItems().clear();
        for (Path file : settings.recent()) {
            MenuItem item = item(file.getFileName() + "   " + file.getParent(), "", () -> files.openRecent(file));
            item.setMnemonicParsing(false);
            recent.getItems().add(item);
        }
        recent.setDisable(recent.getItems().isEmpty());
    }

    private Menu edit() {
        Menu menu = new Menu("_Edit");
        undo.setOnAction(e -> window.poolTest().timeline().undo());
        redo.setOnAction(e -> window.poolTest().timeline().redo());
        menu.getItems()
                .addAll(
                        undo,
                        redo,
                        new SeparatorMenuItem(),
                        ofPicked(item("Copy the picked part", "Shortcut+D", window.parts()::copy)),
                        ofPicked(item("Take the picked part out", "", window.parts()::delete)));
        return menu;
    }

    private MenuItem ofPicked(MenuItem item) {
        item.disableProperty().bind(desk.selected().isEqualTo(""));
        return item;
    }

    private void nameSteps() {
        Timeline steps = window.poolTest().timeline();
        undo.setText(steps.undoName().map(n -> "Undo " + n).orElse("Undo"));
        undo.setDisable(steps.undoName().isEmpty());
        redo.setText(steps.redoName().map(n -> "Redo " + n).orElse("Redo"));
        redo.setDisable(steps.redoName().isEmpty());
    }

    private Menu look() {
        Menu menu = new Menu("_Look");
        menu.getItems().addAll(flag("Dark", "dark", "Shortcut+L"), flag("Inches and ounces", "inch", "Shortcut+I"));
        Menu size = new Menu("Size of text");
        for (double percent : TEXT_SIZES) {
            size.getItems().add(item(Math.round(percent) + " %", "", () -> {
                settings.set("textPercent", percent);
                window.restyle();
            }));
        }
        menu.getItems().add(size);
        return menu;
    }

    private CheckMenuItem flag(String text, String name, String keys) {
        CheckMenuItem item = new CheckMenuItem(text);
        item.setAccelerator(KeyCombination.keyCombination(keys));
        item.setSelected(settings.is(name));
        item.setOnAction(e -> {
            settings.set(name, item.isSelected());
            window.restyle();
        });
        return item;
    }

    private Menu help() {
        Menu menu = new Menu("_Help");
        menu.getItems()
                .addAll(
                        item("Keys and pointer", "F11", () -> dialogs.tellPairs("Keys and pointer", HelpText.KEYS)),
                        item("What the words mean", "", () -> dialogs.tell("What the words mean", HelpText.WORDS)),
                        item("Cautions", "", () -> dialogs.tell("Cautions", HelpText.CAUTIONS)),
                        new SeparatorMenuItem(),
                        item("Show the hints again", "", window.poolPane()::hintAgain));
        return menu;
    }
}
