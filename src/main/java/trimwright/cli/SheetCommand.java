package trimwright.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import trimwright.report.Measure;
import trimwright.report.picture.FileEnding;
import trimwright.report.sheet.HtmlSheet;
import trimwright.report.sheet.PdfSheet;
import trimwright.report.sheet.Rehearsal;
import trimwright.report.sheet.Sheet;
import trimwright.report.sheet.SheetCsv;
import trimwright.report.sheet.SheetMaker;
import trimwright.statics.Condition;

/** The trim sheet. */
final class SheetCommand extends BoatCommand {

    private static final int DRAWS = 100;
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

    private final OptionSpec units = choice(
            17,
            "--units",
            Measure.class,
            List.of(Measure.values()),
            m -> m.name().toLowerCase(Locale.ROOT),
            "Units of the whole sheet and its tables: metric (mm, g) or inch (inches, ounces). Without it, metric.");

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
        check(to, tables);
        Rehearsal.begin(pdf);
        LoadedBoat loaded = load();
        Boat boat = asToldTo(loaded);
        Optional<PoolEstimate> estimate =
                Optional.ofNullable(pool.<Path>getValue()).map(p -> PoolEstimate.of(boat, PoolFile.read(p, boat)));
        Boat known = estimate.map(PoolEstimate::corrected).orElse(boat);
        Optional<BallastPlan> planned = isGiven(plan) ? Optional.of(plan(known)) : Optional.empty();
        String day = date.getValue() == null ? LocalDate.now().toString() : date.getValue();
        Measure measure = units.getValue() == null ? Measure.METRIC : units.getValue();
        Sheet sheet = SheetMaker.of(
                new SheetMaker.Request(known, day, measure, loaded.allFindings(), planned, estimate, DRAWS));
        Sheet.Paper size = paper.getValue() == null ? Sheet.Paper.A4 : paper.getValue();
        Map<Path, byte[]> files = new LinkedHashMap<>();
        if (to != null) {
            files.put(
                    to,
                    pdf
                            ? PdfSheet.of(sheet, size, made(day))
                            : HtmlSheet.of(sheet, size).getBytes(StandardCharsets.UTF_8));
        }
        if (tables != null) {
            SheetCsv.of(sheet)
                    .forEach((name, text) -> files.put(tables.resolve(name), text.getBytes(StandardCharsets.UTF_8)));
        }
        checkFree(files.keySet());
        files.forEach((file, bytes) -> AtomicFile.write(file, bytes, isGiven(overwrite)));
        return new SheetAnswer(boat.name(), List.copyOf(files.keySet()), loaded.allFindings());
    }

    /** What can be known before there is a sheet: nobody waits to be told that. */
    private void check(Path to, Path tables) {
        if (to != null) {
            checkFree(Set.of(to));
            Path folder = to.toAbsolutePath().getParent();
            if (!Files.isDirectory(folder)) {
                throw new UnusableInputException(
                        Finding.of(Code.FOLDER_MISSING, new Place.InFile(to.toString()), "folder", folder.toString()));
            }
        }
        if (tables != null && !Files.isDirectory(tables)) {
            throw new UnusableInputException(Finding.of(
                    Code.FOLDER_MISSING,
                    new Place.AtOption("--csv"),
                    "folder",
                    tables.toAbsolutePath().toString()));
        }
    }

    private void checkFree(Set<Path> files) {
        List<Finding> there = files.stream()
                .filter(p -> !isGiven(overwrite) && Files.exists(p))
                .map(p -> Finding.of(Code.FILE_EXISTS, new Place.InFile(p.toString())))
                .toList();
        if (!there.isEmpty()) {
            throw new UnusableInputException(there);
        }
    }

    /** The printed date where it is one that a machine reads, so that the same command gives the same file; now where it is not. */
    private static Date made(String day) {
        try {
            return Date.from(LocalDate.parse(day).atStartOfDay(ZoneOffset.UTC).toInstant());
        } catch (DateTimeParseException e) {
            return Date.from(Instant.now());
        }
    }

    private BallastPlan plan(Boat boat) {
        if (boat.paintedLine().isEmpty()) {
            throw new UnusableInputException(Finding.of(Code.PLAN_WITHOUT_LINE, new Place.Whole()));
        }
        double mass = Condition.of(boat).dryMassG();
        return Planner.plan(PlanRequest.of(boat, Wanted.of(boat.targets(), mass), Goal.LEAST_MASS));
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
