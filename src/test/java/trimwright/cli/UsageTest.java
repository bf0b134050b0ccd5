package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** What the program says of itself. */
class UsageTest {

    static Set<String> commands() {
        return Trimwright.commandLine().getSubcommands().keySet();
    }

    @Test
    void itsHelpListsTheCommands() {
        Run run = Run.of("--help");
        assertEquals(ExitCode.DONE, run.exitCode());
        commands().forEach(c -> assertTrue(run.out().contains("\n  " + c), c));
        assertTrue(run.out().contains("not for craft that carry people"), run.out());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandHelpsWithExamples(String command) {
        Run run = Run.of(command, "--help");
        assertEquals(ExitCode.DONE, run.exitCode());
        assertTrue(run.out().startsWith("Usage: trimwright " + command), run.out());
        assertTrue(run.out().contains("Examples:\n"), run.out());
        assertTrue(run.out().lines().allMatch(l -> l.length() <= Page.WIDTH), run.out());
        CommandLine line = Trimwright.commandLine().getSubcommands().get(command);
        line.getCommandSpec().options().forEach(o -> assertTrue(run.out().contains(o.longestName()), o.longestName()));
    }

    @Test
    void completionKnowsEveryCommand() {
        Run run = Run.of("completion");
        assertEquals(ExitCode.DONE, run.exitCode());
        assertTrue(run.out().startsWith("#!/usr/bin/env bash"));
        commands().forEach(c -> assertTrue(run.out().contains("_picocli_trimwright_" + c), c));
    }

    /** A fault of the program is one line, with its trace only when asked for. */
    @Test
    void aFaultOfTheProgramIsOneLine() {
        CommandLine line = new CommandLine(new Faulty().spec()).setExecutionExceptionHandler(Failures::failed);
        StringWriter err = new StringWriter();
        line.setErr(new PrintWriter(err));
        assertEquals(ExitCode.UNUSABLE, line.execute());
        assertEquals(1, err.toString().lines().count(), err.toString());
        assertTrue(err.toString().contains("IllegalStateException, two lines"), err.toString());
        assertTrue(err.toString().contains("--stack-trace"));
        assertEquals(ExitCode.UNUSABLE, line.execute("--stack-trace"));
        assertTrue(err.toString().contains("\tat trimwright.cli.UsageTest"), err.toString());
    }

    private static final class Faulty extends AnsweringCommand {

        Faulty() {
            super("faulty", "Fails.");
        }

        @Override
        Answer answer() {
            throw new IllegalStateException("two\nlines");
        }
    }
}
