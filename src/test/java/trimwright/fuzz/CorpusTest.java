package trimwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every input that the fuzzer begins with, and every one that it ever found a fault with, read in the ordinary way: without the fuzzer's
 * agent, which would slow down all other tests of the same Java machine. {@code mvn -Pfuzz test} looks for new ones.
 */
class CorpusTest {

    private static final Path CORPORA = Path.of("src/test/resources/trimwright/fuzz");

    private interface Target {
        void read(byte[] bytes) throws Throwable;
    }

    private static List<DynamicTest> tests(String folder, Target target) throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        try (Stream<Path> files = Files.list(CORPORA.resolve(folder))) {
            for (Path file : files.sorted().toList()) {
                tests.add(DynamicTest.dynamicTest(
                        String.valueOf(file.getFileName()), () -> target.read(Files.readAllBytes(file))));
            }
        }
        tests.add(DynamicTest.dynamicTest("nothing", () -> target.read(new byte[0])));
        assertTrue(tests.size() > 2, "the corpus in " + folder + " is gone");
        return tests;
    }

    @TestFactory
    List<DynamicTest> meshes() throws IOException {
        return tests("MeshFuzzInputs/anyFile", new MeshFuzz()::anyFile);
    }

    @TestFactory
    List<DynamicTest> models() throws IOException {
        return tests("ModelFuzzInputs/anyModel", new ModelFuzz()::anyModel);
    }

    @TestFactory
    List<DynamicTest> boats() throws IOException {
        return tests("BoatFuzzInputs/anyBoat", new BoatFuzz()::anyBoat);
    }

    @TestFactory
    List<DynamicTest> readings() throws IOException {
        return tests("ReadingsFuzzInputs/anyReadings", new ReadingsFuzz()::anyReadings);
    }
}
