package trimwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import trimwright.finding.Finding;
import trimwright.finding.UnusableInputException;
import trimwright.report.Wording;

/** The one place that turns exceptions into messages and an exit code. */
final class Failures {

    private Failures() {}

    /** The command line itself makes no sense. */
    static int misused(ParameterException e, String[] args) {
        CommandLine line = e.getCommandLine();
        PrintWriter err = line.getErr();
        err.println("error: " + Misuse.of(e));
        err.println(Misuse.help(line));
        return ExitCode.UNUSABLE;
    }

    /** A command gave up. */
    static int failed(Exception e, CommandLine line, ParseResult parsed) {
        PrintWriter err = line.getErr();
        if (e instanceof UnusableInputException unusable) {
            for (Finding finding : unusable.findings()) {
                err.println(Wording.line(finding));
            }
            return ExitCode.UNUSABLE;
        }
        err.println("error: the program failed, which it should not: "
                + e.getClass().getSimpleName()
                + (e.getMessage() == null ? "" : ", " + oneLine(e.getMessage()))
                + ". Run the same command with --stack-trace and send its output to the authors.");
        if (line.getCommand() instanceof AnsweringCommand command && command.wantsStackTrace()) {
            e.printStackTrace(err);
        }
        return ExitCode.UNUSABLE;
    }

    static int outOfMemory(PrintWriter err) {
        long mebibytes = Runtime.getRuntime().maxMemory() >> 20;
        err.println("error: the memory that Java may use, " + mebibytes
                + " MiB, is not enough. Give it more, as in java -Xmx4g -jar trimwright.jar ...");
        return ExitCode.UNUSABLE;
    }

    /** The answer could not be printed. A reader that has seen enough and left, such as {@code head}, is told nothing. */
    static int notTold(IOException e, PrintWriter err) {
        if (!"Broken pipe".equals(e.getMessage())) {
            err.println("error: the answer could not be printed: " + e.getMessage()
                    + ". Make room where it goes, or print it elsewhere.");
        }
        return ExitCode.UNUSABLE;
    }

    private static String oneLine(String message) {
        return message.replaceAll("\\s+", " ").strip();
    }
}
