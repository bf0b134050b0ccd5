package trimwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.mesh.Bounds;
import trimwright.mesh.MeshFile;
import trimwright.mesh.MeshUse;
import trimwright.mesh.Shell;
import trimwright.mesh.Soundness;
import trimwright.report.Numbers;
import trimwright.report.Wording;

/** A mesh that was looked over, as text. */
final class MeshText {

    private static final int SHELLS_SHOWN = 20;
    private static final int PLACES_SHOWN = 3;

    private MeshText() {}

    static void tell(MeshReport report, Page page) {
        Soundness s = report.soundness();
        page.paragraph(verdict(report)).gap();
        TextTable table = TextTable.of("ll");
        table.row(
                "File", format(report.format()) + " of " + s.triangles() + " triangles, " + s.vertices() + " vertices");
        table.row("Unit", report.unit());
        table.row("Size", extent(s.bounds()));
        table.row("Place", place(s.bounds()));
        table.row("Closed", s.closed() ? "yes" : "no");
        table.row("One outside", s.oriented() ? "yes" : "no, its triangles do not agree which side that is");
        table.row("Area", Numbers.brief(s.areaMm2() / 100) + " cm²");
        table.row(
                "Volume",
                s.volumeMm3()
                        .map(v -> Numbers.brief(v / 1000) + " cm³")
                        .orElse("none, for that it would have to be closed, with one outside"));
        page.table(table);
        shells(s.shells(), page);
        defects(report, page);
    }

    private static String verdict(MeshReport report) {
        long kinds = report.defects().stream().map(Finding::code).distinct().count();
        boolean sound = report.soundness().sound();
        String surface = sound ? "Sound" : "Not sound";
        String faults =
                kinds == 0 ? ", nothing wrong found." : sound ? ", but see below." : ", see below what is wrong.";
        return surface
                + faults
                + report.use().map(use -> " " + forBuild(report.good(), use)).orElse("");
    }

    private static String forBuild(boolean good, MeshUse use) {
        return (good ? "Good" : "Not good") + " for a hull built as " + use.symbol() + ".";
    }

    private static String format(MeshFile.Format format) {
        return switch (format) {
            case STL_BINARY -> "binary STL";
            case STL_ASCII -> "text STL";
            case OBJ -> "OBJ";
            case THREE_MF -> "3MF";
        };
    }

    private static String extent(Bounds b) {
        return Numbers.fixed(b.sizeX(), 1) + " x " + Numbers.fixed(b.sizeY(), 1) + " x " + Numbers.mm(b.sizeZ())
                + " (along x, y, z)";
    }

    private static String place(Bounds b) {
        return "x " + range(b.minX(), b.maxX()) + ", y " + range(b.minY(), b.maxY()) + ", z "
                + range(b.minZ(), b.maxZ()) + " mm";
    }

    static String range(double from, double to) {
        return Numbers.fixed(from, 1) + " to " + Numbers.fixed(to, 1);
    }

    private static void shells(List<Shell> shells, Page page) {
        if (shells.size() < 2) {
            return;
        }
        page.heading("Shells, the largest first");
        TextTable table = TextTable.of("rrrrlll")
                .head("Shell", "Triangles", "Area", "Volume", "x", "y", "z")
                .head("", "", "cm²", "cm³", "mm", "mm", "mm");
        for (Shell shell : shells.subList(0, Math.min(SHELLS_SHOWN, shells.size()))) {
            Bounds b = shell.bounds();
            table.row(
                    String.valueOf(shell.number()),
                    String.valueOf(shell.triangles()),
                    Numbers.fixed(shell.areaMm2() / 100, 1),
                    shell.closed() && shell.oriented() ? Numbers.fixed(shell.volumeMm3() / 1000, 1) : "open",
                    range(b.minX(), b.maxX()),
                    range(b.minY(), b.maxY()),
                    range(b.minZ(), b.maxZ()));
        }
        page.table(table);
        if (shells.size() > SHELLS_SHOWN) {
            page.line("and " + (shells.size() - SHELLS_SHOWN) + " more, all of them with --json");
        }
    }

    /** By kind: a few places of each, how many more there are, and then once what is to be done. */
    private static void defects(MeshReport report, Page page) {
        Map<Code, List<Finding>> kinds = new LinkedHashMap<>();
        report.defects()
                .forEach(f ->
                        kinds.computeIfAbsent(f.code(), c -> new ArrayList<>()).add(f));
        if (kinds.isEmpty()) {
            return;
        }
        page.heading(report.soundness().sound() ? "What is doubtful" : "What is wrong");
        for (Map.Entry<Code, List<Finding>> kind : kinds.entrySet()) {
            List<Finding> places = kind.getValue();
            places.stream().limit(PLACES_SHOWN).forEach(f -> page.point(Wording.placedFact(f)));
            long more = total(places) - Math.min(PLACES_SHOWN, places.size());
            String rest = more > 0 ? "And " + more + " more of this kind. " : "";
            page.under(rest + Wording.advice(kind.getKey()) + matters(kind.getKey(), report));
        }
    }

    private static String matters(Code code, MeshReport report) {
        // What is said about the build itself needs no such word.
        if (report.use().isEmpty() || MeshMatters.isDoubt(code) || code == Code.MESH_BUILD_NEEDS_CLOSED) {
            return "";
        }
        MeshUse use = report.use().get();
        return (MeshMatters.spoils(code, use) ? " It matters" : " It does not matter") + " for a hull built as "
                + use.symbol() + ".";
    }

    private static long total(List<Finding> places) {
        return places.get(0).values().get("total") instanceof Number total ? total.longValue() : places.size();
    }
}
