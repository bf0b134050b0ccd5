package trimwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Where the program starts. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        // Pictures are drawn in memory; no command here opens a window.
        System.setProperty("java.awt.headless", "true");
        PrintWriter out = writer(FileDescriptor.out, "stdout");
        PrintWriter err = writer(FileDescriptor.err, "stderr");
        int exitCode = run(out, err, args);
        out.flush();
        err.flush();
        System.exit(exitCode);
    }

    /**
     * Runs one command.
     *
     * @param out for the answer
     * @param err for messages
     * @return the exit code: 0 done, 1 the answer is "no", 2 unusable input
     */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = Trimwright.commandLine(args).setOut(out).setErr(err);
        try {
            return line.execute(args);
        } catch (OutOfMemoryError e) {
            return Failures.outOfMemory(err);
        }
    }

    /**
     * A stream in the terminal's encoding; UTF-8 where only ASCII is known, since that is what a terminal without a locale most likely
     * shows, and degree signs must not become question marks.
     */
    private static PrintWriter writer(FileDescriptor descriptor, String name) {
        String stated = System.getProperty("sun." + name + ".encoding");
        Charset charset = stated == null ? Charset.defaultCharset() : Charset.forName(stated);
        if (charset.equals(StandardCharsets.US_ASCII)) {
            charset = StandardCharsets.UTF_8;
        }
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), charset), false);
    }
}
