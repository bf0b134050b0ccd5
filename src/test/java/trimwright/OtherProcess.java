package trimwright;

import java.io.File;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Starts a class of ours in a Java machine of its own, as quickly as that goes. */
public final class OtherProcess {

    private OtherProcess() {}

    /**
     * A process to start.
     *
     * @param options options of the Java machine besides those that make it start quickly
     */
    public static ProcessBuilder of(List<String> options, Class<?> main, Object... args) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-cp", classPath()));
        command.addAll(options);
        command.add(main.getName());
        Arrays.stream(args).map(String::valueOf).forEach(command::add);
        return new ProcessBuilder(command);
    }

    /** Where the classes of the tests come from, also where the loader of the tests is not that of the system. */
    static String classPath() {
        List<String> places = new ArrayList<>();
        for (ClassLoader loader = OtherProcess.class.getClassLoader(); loader != null; loader = loader.getParent()) {
            if (loader instanceof URLClassLoader urls) {
                for (URL url : urls.getURLs()) {
                    places.add(place(url));
                }
            }
        }
        places.add(System.getProperty("java.class.path"));
        return String.join(File.pathSeparator, places);
    }

    private static String place(URL url) {
        try {
            return Path.of(url.toURI()).toString();
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException(String.valueOf(url), e);
        }
    }
}
