package trimwright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.mesh.MeshFiles;
import trimwright.mesh.Soundness;
import trimwright.mesh.TriangleMesh;

/**
 * Reading a binary STL of a million triangles, merging its vertices and checking it. The baseline does the reading and merging
 * plainly, with a hash map of points. Each answer is checked: a torus of n by m has nm vertices, 2nm triangles, one closed
 * shell, and no crossing.
 *
 * <p>Run with {@code java -cp target/classes:target/test-classes:… org.openjdk.jmh.Main MeshReadBenchmark}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 8, time = 1)
@Fork(1)
public class MeshReadBenchmark {

    private static final int AROUND = 1000;
    private static final int ACROSS = 500;

    private Path file;
    private TriangleMesh mesh;

    @Setup
    public void write() throws IOException {
        file = Files.createTempFile("torus", ".stl");
        ByteBuffer out = ByteBuffer.allocate(84 + 50 * 2 * AROUND * ACROSS).order(ByteOrder.LITTLE_ENDIAN);
        out.putInt(80, 2 * AROUND * ACROSS);
        int record = 84;
        for (int i = 0; i < AROUND; i++) {
            for (int j = 0; j < ACROSS; j++) {
                record = triangle(out, record, i, j, i + 1, j, i + 1, j + 1);
                record = triangle(out, record, i, j, i + 1, j + 1, i, j + 1);
            }
        }
        Files.write(file, out.array());
        mesh = MeshFiles.read(file).mesh();
    }

    @TearDown
    public void delete() throws IOException {
        Files.delete(file);
    }

    @Benchmark
    @Aim(baseline = "baselineReadWithHashMap")
    public TriangleMesh read() {
        return checked(MeshFiles.read(file).mesh());
    }

    @Benchmark
    public Soundness quickCheck() {
        return checked(Soundness.quick(mesh));
    }

    @Benchmark
    @Aim(ms = 200, baseline = "baselineReadWithHashMap")
    public Soundness readAndQuickCheck() {
        return checked(Soundness.quick(MeshFiles.read(file).mesh()));
    }

    @Benchmark
    public Soundness wholeCheck() {
        return checked(Soundness.of(mesh));
    }

    @Benchmark
    public TriangleMesh baselineReadWithHashMap() {
        record Point(float x, float y, float z) {}

        try {
            ByteBuffer in = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
            int triangles = in.getInt(80);
            Map<Point, Integer> numbers = new HashMap<>();
            int[] corners = new int[3 * triangles];
            double[] xyz = new double[9 * triangles];
            for (int i = 0; i < corners.length; i++) {
                int at = 84 + 50 * (i / 3) + 12 + 12 * (i % 3);
                Point point = new Point(in.getFloat(at), in.getFloat(at + 4), in.getFloat(at + 8));
                Integer number = numbers.putIfAbsent(point, numbers.size());
                if (number == null) {
                    number = numbers.size() - 1;
                    xyz[3 * number] = point.x;
                    xyz[3 * number + 1] = point.y;
                    xyz[3 * number + 2] = point.z;
                }
                corners[i] = number;
            }
            return checked(TriangleMesh.owning(Arrays.copyOf(xyz, 3 * numbers.size()), corners));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static TriangleMesh checked(TriangleMesh mesh) {
        if (mesh.triangleCount() != 2 * AROUND * ACROSS || mesh.vertexCount() != AROUND * ACROSS) {
            throw new IllegalStateException(mesh.triangleCount() + " triangles, " + mesh.vertexCount() + " vertices");
        }
        return mesh;
    }

    private static Soundness checked(Soundness soundness) {
        if (!soundness.sound()
                || soundness.shells().size() != 1
                || !soundness.findings().isEmpty()) {
            throw new IllegalStateException(soundness.findings().toString());
        }
        return soundness;
    }

    private static int triangle(ByteBuffer out, int record, int i0, int j0, int i1, int j1, int i2, int j2) {
        point(out, record + 12, i0, j0);
        point(out, record + 24, i1, j1);
        point(out, record + 36, i2, j2);
        return record + 50;
    }

    private static void point(ByteBuffer out, int at, int i, int j) {
        double along = 2 * Math.PI * (i % AROUND) / AROUND;
        double across = 2 * Math.PI * (j % ACROSS) / ACROSS;
        double radius = 400 + 100 * Math.cos(across);
        out.putFloat(at, (float) (radius * Math.cos(along)));
        out.putFloat(at + 4, (float) (radius * Math.sin(along)));
        out.putFloat(at + 8, (float) (100 * Math.sin(across)));
    }
}
