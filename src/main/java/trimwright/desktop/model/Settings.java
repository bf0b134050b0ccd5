package trimwright.desktop.model;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Properties;
import trimwright.file.AtomicFile;
import trimwright.finding.UnusableInputException;
import trimwright.report.Measure;

/** What the window remembers from one time to the next: theme, units, recent files, hints that were put away. */
public final class Settings {

    private static final int MOST_RECENT = 8;
    private static final String RECENT = "recent.";

    private final Path folder;
    private final Properties values = new Properties();

    private Settings(Path folder) {
        this.folder = folder;
    }

    /** Settings from a folder; those that cannot be read are as if never made, since nothing depends on them. */
    public static Settings in(Path folder) {
        Settings settings = new Settings(folder);
        Path file = settings.file();
        if (Files.isRegularFile(file)) {
            try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                settings.values.load(reader);
            } catch (IOException | IllegalArgumentException e) {
                settings.values.clear();
            }
        }
        return settings;
    }

    public Path folder() {
        return folder;
    }

    private Path file() {
        return folder.resolve("window.properties");
    }

    public boolean isDark() {
        return is("dark");
    }

    public Measure measure() {
        return is("inch") ? Measure.INCH : Measure.METRIC;
    }

    public boolean is(String flag) {
        return Boolean.parseBoolean(values.getProperty(flag));
    }

    /** Puts a flag and keeps it. */
    public void set(String flag, boolean value) {
        values.setProperty(flag, String.valueOf(value));
        keep();
    }

    /** A number that was kept, or another. */
    public double number(String name, double otherwise) {
        try {
            return Double.parseDouble(values.getProperty(name, ""));
        } catch (NumberFormatException e) {
            return otherwise;
        }
    }

    /** Keeps a number. */
    public void set(String name, double value) {
        values.setProperty(name, String.valueOf(value));
        keep();
    }

    /** Words that were kept; none where there were none. */
    public List<String> list(String name) {
        return values.getProperty(name, "").lines().toList();
    }

    /** Keeps words, none of which has a line break. */
    public void set(String name, Collection<String> words) {
        if (words.isEmpty()) {
            values.remove(name);
        } else {
            values.setProperty(name, String.join("\n", words));
        }
        keep();
    }

    /** Forgets a boat file that is gone. */
    public void gone(Path boat) {
        List<Path> files = recent();
        if (files.remove(boat.toAbsolutePath())) {
            putRecent(files);
        }
    }

    /** Boat files opened lately, the last one first. */
    public List<Path> recent() {
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < MOST_RECENT; i++) {
            String name = values.getProperty(RECENT + i);
            if (name != null) {
                try {
                    files.add(Path.of(name));
                } catch (InvalidPathException e) {
                    // A name from another machine; there is nothing to open.
                }
            }
        }
        return files;
    }

    /** Puts a boat file first among the recent ones. */
    public void opened(Path boat) {
        List<Path> files = recent();
        files.remove(boat.toAbsolutePath());
        files.add(0, boat.toAbsolutePath());
        putRecent(files);
    }

    private void putRecent(List<Path> files) {
        for (int i = 0; i < MOST_RECENT; i++) {
            if (i < files.size()) {
                values.setProperty(RECENT + i, files.get(i).toString());
            } else {
                values.remove(RECENT + i);
            }
        }
        keep();
    }

    private void keep() {
        try {
            Files.createDirectories(folder);
            StringWriter text = new StringWriter();
            values.store(text, null);
            AtomicFile.write(file(), text.toString().getBytes(StandardCharsets.UTF_8), true);
        } catch (IOException | UnusableInputException e) {
            // A home that cannot be written to: settings then last as long as the window.
            values.setProperty("unkept", "true");
        }
    }
}
