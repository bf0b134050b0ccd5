package trimwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs benchmarks and writes them as one table, each beside its target and its baseline of the same run. All figures are samples of single
 * operations, of which the best says what the code takes and the median what the machine makes of it.
 *
 * <p>Arguments: {@code full} or {@code short}, the file to write, then those of JMH, such as a regular expression of benchmarks.
 */
final class BenchTable {

    private static final String HEAD = """
            # Table of benchmarks

            Made by `mvn -q test-compile exec:exec@table`, and written over by it; what it means stands in [benchmarks.md](benchmarks.md).
            Samples of single operations, %s. *Ratio* is the best of the baseline over the best of the row. A target is met when the best sample meets it.

            %s

            | benchmark | for | best, ms | median, ms | samples | target, ms | | baseline | ratio |
            |---|---|---|---|---|---|---|---|---|
            """;

    private final List<Row> rows;

    private BenchTable(Collection<RunResult> results) {
        rows = results.stream().map(Row::of).toList();
    }

    /** One benchmark with one set of parameters; times in ms. */
    private record Row(
            Class<?> owner,
            String method,
            String parameters,
            double best,
            double median,
            long samples,
            List<Aim> aims) {

        static Row of(RunResult result) {
            BenchmarkParams params = result.getParams();
            String name = params.getBenchmark();
            int dot = name.lastIndexOf('.');
            Class<?> owner = owner(name.substring(0, dot));
            String method = name.substring(dot + 1);
            double inMs = params.getTimeUnit().toNanos(1) / (double) TimeUnit.MILLISECONDS.toNanos(1);
            var statistics = result.getPrimaryResult().getStatistics();
            return new Row(
                    owner,
                    method,
                    params.getParamsKeys().stream().map(params::getParam).collect(Collectors.joining(", ")),
                    inMs * statistics.getMin(),
                    inMs * statistics.getPercentile(50),
                    statistics.getN(),
                    aims(owner, method));
        }

        private static Class<?> owner(String name) {
            try {
                return Class.forName(name);
            } catch (ClassNotFoundException e) {
                throw new IllegalStateException(name, e);
            }
        }

        private static List<Aim> aims(Class<?> owner, String method) {
            return Arrays.stream(owner.getDeclaredMethods())
                    .filter(m -> m.getName().equals(method))
                    .map(m -> m.getAnnotationsByType(Aim.class))
                    .flatMap(Arrays::stream)
                    .toList();
        }

        String name() {
            return owner.getSimpleName().replace("Benchmark", "") + "." + method;
        }

        Optional<Double> target() {
            return aims.stream()
                    .filter(a -> a.at().isEmpty() || a.at().equals(parameters))
                    .map(Aim::ms)
                    .filter(ms -> !ms.isNaN())
                    .findFirst();
        }

        String baseline() {
            return aims.stream()
                    .map(Aim::baseline)
                    .filter(b -> !b.isEmpty())
                    .findFirst()
                    .orElse("");
        }
    }

    private String line(Row row) {
        Optional<Row> baseline = rows.stream()
                .filter(r ->
                        r.owner == row.owner && r.method.equals(row.baseline()) && r.parameters.equals(row.parameters))
                .findFirst();
        return "| %s | %s | %s | %s | %d | %s | %s | %s | %s |"
                .formatted(
                        row.name(),
                        row.parameters,
                        number(row.best),
                        number(row.median),
                        row.samples,
                        row.target().map(BenchTable::number).orElse(""),
                        row.target()
                                .map(t -> row.best <= t ? "met" : "**not met**")
                                .orElse(""),
                        baseline.map(Row::method).orElse(""),
                        baseline.map(b -> number(b.best / row.best)).orElse(""));
    }

    /** Three digits. */
    private static String number(double value) {
        int digits = value <= 0 ? 0 : Math.max(0, 2 - (int) Math.floor(Math.log10(value)));
        return String.format(Locale.ROOT, "%." + digits + "f", value);
    }

    private static String machine() {
        Runtime runtime = Runtime.getRuntime();
        double load = java.lang.management.ManagementFactory.getOperatingSystemMXBean()
                .getSystemLoadAverage();
        return "%s, Java %s, %s %s, %d processors, load of the machine at the start %.1f."
                .formatted(
                        LocalDate.now(ZoneOffset.UTC),
                        System.getProperty("java.version"),
                        System.getProperty("os.name"),
                        System.getProperty("os.arch"),
                        runtime.availableProcessors(),
                        load);
    }

    public static void main(String[] args) throws RunnerException, CommandLineOptionException, IOException {
        boolean isShort = args[0].equals("short");
        if (!isShort && !args[0].equals("full")) {
            throw new IllegalArgumentException("full or short, found " + args[0]);
        }
        Path to = Path.of(args[1]);
        String machine = machine();
        String[] rest = Arrays.copyOfRange(args, 2, args.length);
        ChainedOptionsBuilder options = new OptionsBuilder()
                .parent(new CommandLineOptions(rest))
                .mode(Mode.SampleTime)
                .shouldFailOnError(true)
                .resultFormat(ResultFormatType.JSON)
                .result("target/benchmarks.json");
        if (isShort) {
            options.warmupIterations(1)
                    .warmupTime(TimeValue.milliseconds(500))
                    .measurementIterations(1)
                    .measurementTime(TimeValue.milliseconds(500));
        }
        BenchTable table = new BenchTable(new Runner(options.build()).run());
        List<String> lines = new ArrayList<>();
        table.rows.forEach(row -> lines.add(table.line(row)));
        String how = isShort
                ? "half a second each, hardly warm: a short run, for a look only"
                : "warm, as each benchmark says";
        Files.writeString(to, HEAD.formatted(how, machine) + String.join("\n", lines) + "\n");
        System.out.println("Written: " + to);
    }
}
