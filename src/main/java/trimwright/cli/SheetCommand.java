package trimwright.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import trimwright.boat.Boat;
import trimwright.file.AtomicFile;
import trimwright.file.LoadedBoat;
import trimwright.file.PoolFile;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;
import trimwright.plan.BallastPlan;
import trimwright.plan.Goal;
import trimwright.plan.PlanRequest;
import trimwright.plan.Planner;
import trimwright.plan.Wanted;
import trimwright.plan.pool.PoolEstimate;
import trimwright.plan.pool.Tolerance;
import trimwright.report.picture.FileEnding;
import trimwright.report.sheet.HtmlSheet;
import trimwright.report.sheet.PdfSheet;
import trimwright.report.sheet.Sheet;
import trimwright.report.sheet.SheetCsv;
import trimwright.report.sheet.SheetMaker;
import trimwright.statics.Condition;

/** The trim sheet. */
final class SheetCommand extends BoatCommand {

    private static final int DRAWS = 300;
    private static final long SEED = 1;
    private static final List<String> ENDINGS = List.of(".pdf", ".html");

    private final OptionSpec out = option(
            10, "--out", "OUT.pdf|OUT.html", Path.class, "Where the sheet goes: PDF or one HTML file, by its ending.");
    private final OptionSpec overwrite = flag(11, "--overwrite", "Files that are there may be replaced.");
    private final OptionSpec plan =
            flag(12, "--plan", "With the ballast plan; pictures show the boat with it carried out.");
    private final OptionSpec pool =
            option(13, "--pool", "READINGS", Path.class, "With what these readings said (docs/pool-file.md).");
    private final OptionSpec paper = choice(
            14,
            "--paper",
            Sheet.Paper.class,
            List.of(Sheet.Paper.values()),
            p -> p.name().toLowerCase(Locale.ROOT),
            "Size of the paper. Without it, a4.");
    private final OptionSpec csv =
            option(15, "--csv", "DIR", Path.class, "Also every table as comma-separated values, into this folder.");
    private final OptionSpec date = option(16, "--date", "TEXT", String.class, "The date to print. Without it, today.");

    SheetCommand() {
        super(
                "sheet",
                "Makes the trim sheet: one document for the bench, the pool and the owner, with pictures, weights, cut list, dive,"
                        + " righting levers, and lines to write readings on.",
                "Examples:",
                "  trimwright sheet heron.boat.json --out heron.pdf",
                "  trimwright sheet heron.boat.json --plan --out heron.html --paper letter",
                "  trimwright sheet heron.boat.json --pool first.pool.json --csv tables --out heron.pdf",
                "",
                Cautions.HELP);
    }

    @Override
    Answer answer() {
        Path to = out.getValue();
        Path tables = csv.getValue();
        if (to == null && tables == null) {
            throw misuse("sheet needs --out OUT.pdf or OUT.html, or --csv DIR.");
        }
        boolean pdf = to != null && FileEnding.of(to, ENDINGS).equals(".pdf");
        LoadedBoat loaded = load();
        Boat boat = asToldTo(loaded);
        Optional<PoolEstimate> estimate =
                Optional.ofNullable(pool.<Path>getValue()).map(p -> PoolEstimate.of(boat, PoolFile.read(p, boat)));
        Boat known = estimate.map(PoolEstimate::corrected).orElse(boat);
        Optional<BallastPlan> planned = isGiven(plan) ? Optional.of(plan(known)) : Optional.empty();
        String day = date.getValue() == null ? LocalDate.now().toString() : date.getValue();
        Boat made =
                planned.filter(BallastPlan::feasible).map(BallastPlan::planned).orElse(known);
        Sheet sheet = SheetMaker.of(new SheetMaker.Request(
                known, day, loaded.findings(), planned, estimate, Optional.of(Tolerance.of(made, DRAWS, SEED))));
        Sheet.Paper size = paper.getValue() == null ? Sheet.Paper.A4 : paper.getValue();
        List<Path> written = new ArrayList<>();
        if (to != null) {
            byte[] bytes = pdf
                    ? PdfSheet.of(sheet, size, Date.from(Instant.now()))
                    : HtmlSheet.of(sheet, size).getBytes(StandardCharsets.UTF_8);
            AtomicFile.write(to, bytes, isGiven(overwrite));
            written.add(to);
        }
        if (tables != null) {
            written.addAll(tables(sheet, tables));
        }
        return new SheetAnswer(boat.name(), written, loaded.findings());
    }

    private BallastPlan plan(Boat boat) {
        if (boat.paintedLine().isEmpty()) {
            throw new UnusableInputException(Finding.of(Code.PLAN_WITHOUT_LINE, new Place.Whole()));
        }
        double mass = Condition.of(boat).dryMassG();
        return Planner.plan(PlanRequest.of(boat, Wanted.of(boat.targets(), mass), Goal.LEAST_MASS));
    }

    private List<Path> tables(Sheet sheet, Path folder) {
        List<Path> written = new ArrayList<>();
        Map<String, String> files = SheetCsv.of(sheet);
        if (!isGiven(overwrite)) {
            List<Finding> there = files.keySet().stream()
                    .map(folder::resolve)
                    .filter(Files::exists)
                    .map(p -> Finding.of(Code.FILE_EXISTS, new Place.InFile(p.toString())))
                    .toList();
            if (!there.isEmpty()) {
                throw new UnusableInputException(there);
            }
        }
        files.forEach((name, text) -> {
            Path file = folder.resolve(name);
            AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8), isGiven(overwrite));
            written.add(file);
        });
        return written;
    }

    private record SheetAnswer(String name, List<Path> written, List<Finding> findings) implements Answer {

        @Override
        public int exitCode() {
            return ExitCode.DONE;
        }

        @Override
        public void tell(Page page) {
            page.line(name).gap();
            written.forEach(p -> page.line("Written: " + p));
        }

        @Override
        public JsonObject json() {
            return new JsonObject()
                    .text("name", name)
                    .list("written", written.stream().map(Path::toString).toList());
        }
    }
}
