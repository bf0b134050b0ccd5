package trimwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import trimwright.file.OwnFolder;

/** Where the program starts. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        // Pictures are drawn in memory; no command here opens a window.
        System.setProperty("java.awt.headless", "true");
        if (LightCompiler.suits(args)) {
            LightCompiler.ask(OwnFolder.usual());
        }
        Told answer = new Told(new FileOutputStream(FileDescriptor.out));
        PrintWriter out = writer(answer, "stdout");
        PrintWriter err = writer(new FileOutputStream(FileDescriptor.err), "stderr");
        int exitCode = run(out, err, args);
        out.flush();
        if (answer.failure() != null) {
            exitCode = Failures.notTold(answer.failure(), err);
        }
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
    private static PrintWriter writer(OutputStream stream, String name) {
        String stated = System.getProperty("sun." + name + ".encoding");
        Charset charset = stated == null ? Charset.defaultCharset() : Charset.forName(stated);
        if (charset.equals(StandardCharsets.US_ASCII)) {
            charset = StandardCharsets.UTF_8;
        }
        return new PrintWriter(new OutputStreamWriter(stream, charset), false);
    }

    /** Remembers why it could not be written to, which a writer for print does not say. */
    private static final class Told extends FilterOutputStream {

        private IOException failure;

        Told(OutputStream out) {
            super(out);
        }

        /** What went wrong first; null when all was written. */
        IOException failure() {
            return failure;
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            try {
                out.write(bytes, from, count);
            } catch (IOException e) {
                failure = failure == null ? e : failure;
                throw e;
            }
        }
    }
}
