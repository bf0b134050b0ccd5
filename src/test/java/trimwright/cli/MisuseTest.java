package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** A mistyped command line ends with exit code 2, nothing on standard output, one sentence about what is wrong, and the way to the help. */
class MisuseTest {

    /** Words of the library for command lines, which nobody should meet. */
    private static final List<String> JARGON = List.of(
            "Unmatched", "Missing required", "Invalid value", "parameter", "argument", "converter", "null", "java.");

    static Set<String> commands() {
        return Trimwright.commandLine().getSubcommands().keySet();
    }

    private static CommandSpec spec(String command) {
        return Trimwright.commandLine().getSubcommands().get(command).getCommandSpec();
    }

    private static String refused(String help, List<String> words) {
        Run run = Run.of(words.toArray());
        assertEquals(ExitCode.UNUSABLE, run.exitCode(), words + run.out() + run.err());
        assertEquals("", run.out());
        List<String> lines = run.err().lines().toList();
        assertEquals(List.of(help), lines.subList(1, lines.size()), run.err());
        String told = lines.get(0);
        assertTrue(told.startsWith("error: "), told);
        JARGON.forEach(word -> assertFalse(told.contains(word), told));
        return told.substring("error: ".length());
    }

    /** The command with as many files as it takes, and further words. */
    private static List<String> line(CommandSpec spec, String... more) {
        List<String> words = new ArrayList<>(List.of(spec.name()));
        spec.positionalParameters().forEach(p -> words.add("a.boat.json"));
        words.addAll(List.of(more));
        return words;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "flaot a.boat.json|there is no command 'flaot'. Did you mean float?",
                "Ballast|there is no command 'Ballast'. Did you mean ballast?",
                "quux|there is no command 'quux'. The commands are inspect, float, waterlines, dive, righting,",
                "a.boat.json|there is no command 'a.boat.json'. A command goes before the file, as in trimwright float",
                "--bogus|trimwright has no option '--bogus'."
            })
    void aLineWithoutAKnownCommandIsExplained(String line, String message) {
        String told = refused("Help: trimwright --help", List.of(line.split(" ")));
        assertTrue(told.startsWith(message), told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "float|float needs BOAT, and it is not given: the boat file, as in heron.boat.json.",
                "pool a.boat.json|pool needs READINGS, and it is not given: what was read in the pool",
                "float a b|float takes BOAT and no more, found 'b'.",
                "completion x|completion takes no file, found 'x'.",
                "float a --watr sea|float has no option '--watr'. Did you mean --water?",
                "float a --wtaer=sea|float has no option '--wtaer'. Did you mean --water?",
                "float a \u2014json|float has no option '\u2014json'. Did you mean --json?",
                "float a --json --depth 3|float has no option '--depth'.",
                "float a --water|--water has no value behind it; it takes fresh|sea|DENSITY. Other water than",
                "float a --water --json|--water has no value behind it; it takes fresh|sea|DENSITY. Other water than",
                "float a --json=yes|--json takes no value, found 'yes'. Write --json alone.",
                "float a --draws 1,5|--draws: '1,5' is no number; write it with a decimal point: 1.5. With --tolerance",
                "float a --draws 1e999|--draws: '1e999' is too large a number. With --tolerance",
                "sheet a --paper a5|--paper: 'a5' is none of a4, letter. Size of the paper.",
                "righting a --step 0|--step takes 0.1 to 45 degrees, found 0.",
                "dive a --steps 2.5|--steps takes a whole number, found 2.5."
            })
    void whatIsWrongIsToldWithWhatIsAllowed(String line, String message) {
        // A message may hold the delimiter of the table.
        String start = message.replace("|sea|DENSITY", "");
        String command = line.split(" ")[0];
        String told = refused("Help: trimwright " + command + " --help", List.of(line.split(" ")));
        assertTrue(told.startsWith(start), told);
    }

    /** A word that begins with @ is no list of further words. */
    @Test
    void aNameMayBeginWithAt(@TempDir Path folder) throws IOException {
        Path words = Files.writeString(folder.resolve("words"), "float --help");
        Run run = Run.of("float", "@" + words);
        assertEquals(ExitCode.UNUSABLE, run.exitCode());
        assertTrue(run.err().startsWith("error: @" + words + ": there is no such file."), run.err());
    }

    @Test
    void anEmptyNameIsNoFile() {
        String told = refused("Help: trimwright float --help", List.of("float", ""));
        assertEquals("BOAT: the name is empty. The boat file, as in heron.boat.json.", told);
        refused("Help: trimwright dive --help", List.of("dive", "a.boat.json", "--plot", " "));
    }

    /** Every option of every command: without its value, twice, with a word for a number; and every command with too much or too little. */
    @ParameterizedTest
    @MethodSource("commands")
    void everyOptionIsHardToMisuse(String command) {
        CommandSpec spec = spec(command);
        String help = "Help: trimwright " + command + " --help";
        assertTrue(refused(help, line(spec, "one more")).contains("'one more'"));
        assertTrue(refused(help, line(spec, "--xyzzy")).contains("--xyzzy"));
        spec.positionalParameters().stream()
                .filter(p -> p.required())
                .forEach(p -> assertTrue(refused(help, List.of(command)).contains("needs ")));
        for (OptionSpec option : spec.options()) {
            String name = option.longestName();
            boolean isFlag = option.arity().max() == 0;
            if (option.usageHelp()) {
                continue;
            }
            String bare = refused(help, isFlag ? line(spec, name + "=maybe") : line(spec, name));
            assertTrue(bare.startsWith(name), bare);
            if (option.type().equals(Double.class)) {
                String word = refused(help, line(spec, name, "much"));
                assertTrue(word.startsWith(name + ": 'much' is no number. "), word);
            }
            if (!option.isMultiValue()) {
                String value = option.type().equals(Double.class) ? "1" : firstWord(option);
                String[] twice = isFlag ? new String[] {name, name} : new String[] {name, value, name, value};
                assertEquals(name + " is given more than once. Give it once.", refused(help, line(spec, twice)));
            }
        }
    }

    private static String firstWord(OptionSpec option) {
        return option.paramLabel().split("\\|")[0];
    }
}
