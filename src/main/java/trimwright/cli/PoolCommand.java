package trimwright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import trimwright.boat.Boat;
import trimwright.boat.pool.PoolTest;
import trimwright.boat.pool.Reading;
import trimwright.file.BoatFile;
import trimwright.file.LoadedBoat;
import trimwright.file.PoolFile;
import trimwright.finding.Finding;
import trimwright.plan.pool.Corrections;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.PoolOutcome;

/** What the readings of a pool test say. */
final class PoolCommand extends BoatCommand {

    private final PositionalParamSpec readings =
            file("READINGS", "What was read in the pool, as in first.pool.json (docs/pool-file.md).");
    private final OptionSpec without = add(OptionSpec.builder("--without")
            .order(10)
            .paramLabel("ID")
            .type(List.class)
            .auxiliaryTypes(String.class)
            .description("Leave a reading out, by its id. May be repeated."));
    private final OptionSpec out =
            option(40, "--write", "OUT", Path.class, "Save the boat as the readings have her, as a new boat file.");
    private final OptionSpec overwrite = flag(41, "--overwrite", "With --write: an existing file may be replaced.");
    private final OptionSpec log = flag(
            42,
            "--log",
            "Keep readings and answer, dated, in a folder beside the boat file. Nothing there is ever replaced.");

    PoolCommand() {
        super(
                "pool",
                "Says what readings in the pool tell about the real weights: what the boat weighs and where, which part is most"
                        + " likely off, which reading disagrees, what to read next, and what to change now.",
                "Examples:",
                "  trimwright pool heron.boat.json first.pool.json",
                "  trimwright pool heron.boat.json first.pool.json --write heron-2.boat.json",
                "  trimwright pool heron.boat.json first.pool.json --without \"second look\" --json",
                "  trimwright pool heron.boat.json first.pool.json --log",
                "",
                Cautions.HELP);
    }

    @Override
    Answer answer() {
        LoadedBoat loaded = load();
        Boat boat = asToldTo(loaded);
        Path readingsFile = readings.getValue();
        PoolTest test = leftIn(PoolFile.read(readingsFile, boat));
        PoolOutcome outcome = PoolOutcome.of(boat, test);
        PoolEstimate estimate = outcome.estimate();
        List<Finding> findings = new ArrayList<>(estimate.findings());
        Optional<Path> written = Optional.ofNullable(out.getValue());
        written.ifPresent(to -> findings.addAll(write(loaded, estimate, to)));
        findings.addAll(loaded.allFindings());
        PoolAnswer answer = new PoolAnswer(boat, test, estimate, outcome.change(), written, findings);
        if (isGiven(log)) {
            String day = test.date().isEmpty() ? LocalDate.now().toString() : test.date();
            return answer.logged(PoolLog.keep(loaded.path(), day, text(answer), readingsFile));
        }
        return answer;
    }

    private PoolTest leftIn(PoolTest test) {
        List<String> out = without.getValue() == null ? List.of() : without.getValue();
        Set<String> ids = test.readings().stream().map(Reading::id).collect(Collectors.toSet());
        for (String id : out) {
            if (!ids.contains(id)) {
                throw misuse("--without: there is no reading '" + id + "'. The readings are "
                        + test.readings().stream().map(Reading::id).collect(Collectors.joining(", ")) + ".");
            }
        }
        List<Reading> left =
                test.readings().stream().filter(r -> !out.contains(r.id())).toList();
        if (left.isEmpty()) {
            throw misuse("--without leaves no reading. Leave at least one in.");
        }
        return new PoolTest(test.name(), test.date(), left);
    }

    /** The file with what the readings changed in it; other water and fills of the command line are not written. */
    private List<Finding> write(LoadedBoat loaded, PoolEstimate estimate, Path to) {
        LoadedBoat changed = loaded.withPartsOf(Corrections.rounded(loaded.boat(), estimate.corrected()));
        return BoatFile.write(changed, to, isGiven(overwrite));
    }
}
