package trimwright.cli;

import java.io.IOException;
import java.net.Proxy;
import java.net.ProxySelector;
import java.net.SocketAddress;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import trimwright.mesh.Solids;
import trimwright.mesh.StlWriter;

/** Every command one after the other, in a process of its own: what they print and what they are told to write goes into one folder. */
final class EveryCommand {

    /** What the commands are told to write, besides the numbered texts that they print. */
    static final List<String> WRITTEN = List.of(
            "mended.stl",
            "afloat.png",
            "dive.svg",
            "levers.png",
            "cost.svg",
            "planned.boat.json",
            "corrected.boat.json",
            "sheet.html",
            "sheet.pdf");

    private static final String READINGS = """
            {"version": 1, "readings": [
              {"id": "as she is", "seen": [{"aboveMm": -20, "at": "bow"}, {"aboveMm": -18, "at": "stern"}, {"heelDeg": 2}]},
              {"id": "weight across", "moved": [{"massG": 20, "byMm": [0, 60, 0]}], "seen": [{"heelDeg": 5}]}]}
            """;

    private EveryCommand() {}

    /** Puts what the commands read into a folder. */
    static void prepare(Path in) throws IOException {
        BoxSubmarine.of(in);
        StlWriter.write(
                in.resolve("inside-out.stl"),
                Solids.box(0, -60, 0, 800, 60, 110).flipped());
        Files.writeString(in.resolve("box.pool.json"), READINGS);
        Files.writeString(in.resolve("wrong.boat.json"), "{\"version\": 1, \"parts\": [{\"id\": 3}]}");
    }

    /** How many commands are run. */
    static int count(Path in, Path out) {
        return commands(in, out).size();
    }

    private static List<List<Object>> commands(Path in, Path out) {
        Path boat = in.resolve("box.boat.json");
        Path mesh = in.resolve("box.stl");
        Path readings = in.resolve("box.pool.json");
        return List.of(
                List.of("inspect", mesh, "--build", "skin", "--json"),
                List.of("inspect", in.resolve("inside-out.stl"), "--repair", out.resolve("mended.stl")),
                List.of("inspect", boat, "--json"),
                List.of("float", boat, "--tolerance", "--json"),
                List.of("float", boat, "--picture", out.resolve("afloat.png")),
                List.of("waterlines", boat, "--json"),
                List.of("dive", boat, "--draining", "0.3", "--json"),
                List.of("dive", boat, "--plot", out.resolve("dive.svg")),
                List.of("righting", boat, "--json"),
                List.of("righting", boat, "--plot", out.resolve("levers.png")),
                List.of("ballast", boat, "--trade-off", "--lines", "--json"),
                List.of(
                        "ballast",
                        boat,
                        "--plot",
                        out.resolve("cost.svg"),
                        "--write",
                        out.resolve("planned.boat.json")),
                List.of("seat", boat, "--json"),
                List.of("pool", boat, readings, "--json"),
                List.of("pool", boat, readings, "--write", out.resolve("corrected.boat.json")),
                List.of(
                        "sheet",
                        boat,
                        "--pool",
                        readings,
                        "--date",
                        "1 May",
                        "--out",
                        out.resolve("sheet.html"),
                        "--csv",
                        out),
                List.of("sheet", boat, "--date", "1 May", "--out", out.resolve("sheet.pdf"), "--json"),
                List.of("completion"),
                List.of("float", "--help"),
                List.of("float", boat, "--depth", "x"),
                List.of("float", in.resolve("none.boat.json")),
                List.of("float", in.resolve("wrong.boat.json"), "--json"),
                List.of("inspect", readings));
    }

    /** @param args the folder to read from, and the one to write to */
    public static void main(String[] args) throws IOException {
        Path in = Path.of(args[0]);
        Path out = Path.of(args[1]);
        List<URI> asked = new CopyOnWriteArrayList<>();
        ProxySelector.setDefault(new Offline(asked));
        int number = 0;
        for (List<Object> command : commands(in, out)) {
            Run run = Run.of(command.toArray());
            // Where things lie is another folder each time.
            String told = (run.exitCode() + "\n" + run.out() + run.err()).replace(args[1], "OUT");
            Files.writeString(out.resolve("%02d-%s.txt".formatted(number++, command.get(0))), told);
        }
        if (!asked.isEmpty()) {
            throw new IllegalStateException("connections were asked for: " + asked);
        }
    }

    /** Java asks this for the way to every other machine, for sockets and for addresses of the web; here there is none. */
    private static final class Offline extends ProxySelector {
        private final List<URI> asked;

        Offline(List<URI> asked) {
            this.asked = asked;
        }

        @Override
        public List<Proxy> select(URI uri) {
            asked.add(uri);
            throw new IllegalStateException("a connection to " + uri);
        }

        @Override
        public void connectFailed(URI uri, SocketAddress address, IOException e) {
            asked.add(uri);
        }
    }
}
