package trimwright.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The program, run in this process with its streams caught.
 *
 * @param exitCode how it ended
 * @param out what it printed
 * @param err what it complained of
 */
public record Run(int exitCode, String out, String err) {

    /** Numbers must be JSON numbers, and nothing may follow the one object. */
    private static final ObjectMapper STRICT =
            new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    /** Runs a command; paths are taken as they are, everything else as its text. */
    public static Run of(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] texts = Arrays.stream(args).map(String::valueOf).toArray(String[]::new);
        int exitCode = Main.run(new PrintWriter(out), new PrintWriter(err), texts);
        return new Run(exitCode, out.toString(), err.toString());
    }

    /** Runs a command on a file with {@code --json}, and checks nothing. */
    public static Run json(String command, Path file, Object... more) {
        Object[] args = new Object[more.length + 3];
        args[0] = command;
        args[1] = file;
        args[2] = "--json";
        System.arraycopy(more, 0, args, 3, more.length);
        return of(args);
    }

    /** The one JSON object on standard output. */
    public JsonNode object() {
        try {
            return STRICT.readTree(out);
        } catch (JsonProcessingException e) {
            throw new AssertionError("no single JSON object: " + out + err, e);
        }
    }

    static Vector3D vector(JsonNode node) {
        return new Vector3D(
                node.get(0).doubleValue(),
                node.get(1).doubleValue(),
                node.get(2).doubleValue());
    }
}
