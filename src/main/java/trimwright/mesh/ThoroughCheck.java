package trimwright.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/** Looks for what runs into itself or lies in each other in a mesh whose edges and shells are known, and adds it to what was found of those. */
final class ThoroughCheck {

    private final TriangleMesh mesh;
    private final Soundness quick;
    private final Places places;
    private final Shells shells;
    private final List<Finding> findings;

    /** @param quick what is known of the same mesh's edges and shells */
    ThoroughCheck(TriangleMesh mesh, Soundness quick) {
        this.mesh = mesh;
        this.quick = quick;
        this.places = new Places(mesh);
        this.shells = quick.numbering();
        // Inside out is told anew, shell by shell.
        findings = new ArrayList<>(quick.findings());
        findings.removeIf(f -> f.code() == Code.MESH_INSIDE_OUT);
    }

    /** @param mostPairs how many pairs of near triangles may be looked at */
    Soundness run(long mostPairs) {
        double tolerance = SoundnessCheck.tolerance(mesh.bounds());
        Crossings crossings = Crossings.of(mesh, shells, tolerance, mostPairs);
        Nesting nesting = new Nesting(mesh, shells, tolerance);
        noteCrossings(crossings);
        noteOverlaps(crossings, nesting);
        noteNesting(nesting);
        return new Soundness(
                quick.closed(),
                quick.oriented(),
                quick.triangles(),
                quick.vertices(),
                quick.areaMm2(),
                quick.volumeMm3(),
                quick.bounds(),
                shells,
                Optional.of(new Soundness.CrossingSearch(crossings.pairsTested(), crossings.pairs())),
                findings);
    }

    private void noteCrossings(Crossings crossings) {
        int total = (int) Math.min(Integer.MAX_VALUE, crossings.crossingsWithin());
        for (int i = 0; i < Math.min(SoundnessCheck.LISTED, crossings.withinKept()); i++) {
            int t = crossings.withinTriangle(i);
            note(
                    Code.MESH_CROSSES_ITSELF,
                    places.triangle(t),
                    i,
                    total,
                    "shell",
                    shells.shellOf(t),
                    "triangle",
                    t,
                    "other",
                    crossings.withinOther(i));
        }
        if (crossings.pairsTested() < crossings.pairs()) {
            findings.add(Finding.of(
                    Code.MESH_CROSSINGS_SAMPLED,
                    new Place.Whole(),
                    "pairsTested",
                    crossings.pairsTested(),
                    "pairs",
                    crossings.pairs()));
        }
    }

    private void noteOverlaps(Crossings crossings, Nesting nesting) {
        Map<Long, Finding> overlaps = new TreeMap<>();
        crossings.between().forEach((key, between) -> {
            Place place = places.point(between.triangle());
            overlaps.put(key, overlap(place, key, between.count()));
        });
        for (Nesting.Overlap overlap : nesting.overlaps()) {
            long key = (long) overlap.shell() << 32 | overlap.other();
            Place place = new Place.AtPoint(overlap.x(), overlap.y(), overlap.z());
            overlaps.putIfAbsent(key, overlap(place, key, 0));
        }
        int index = 0;
        for (Finding overlap : overlaps.values()) {
            if (index < SoundnessCheck.LISTED) {
                List<Object> values = new ArrayList<>();
                overlap.values().forEach((name, value) -> values.addAll(List.of(name, value)));
                note(overlap.code(), overlap.place(), index++, overlaps.size(), values.toArray());
            }
        }
    }

    private static Finding overlap(Place place, long key, long crossings) {
        return Finding.of(
                Code.MESH_SHELLS_OVERLAP,
                place,
                "shell",
                (int) (key >>> 32),
                "other",
                (int) key,
                "crossings",
                crossings);
    }

    private void noteNesting(Nesting nesting) {
        int solid = 0;
        int lookedAt = 0;
        for (int shell = 1; shell <= shells.count(); shell++) {
            solid += shells.isSolid(shell) ? 1 : 0;
            lookedAt += shells.isSolid(shell) && nesting.isLookedAt(shell) ? 1 : 0;
        }
        if (lookedAt < solid) {
            findings.add(
                    Finding.of(Code.MESH_NESTING_SAMPLED, new Place.Whole(), "shells", solid, "lookedAt", lookedAt));
        }
        noteShellsWhere(Code.MESH_INSIDE_OUT, nesting);
        noteShellsWhere(Code.MESH_CAVITY, nesting);
        noteShellsWhere(Code.MESH_COUNTED_TWICE, nesting);
    }

    private void noteShellsWhere(Code code, Nesting nesting) {
        IntList found = new IntList(16);
        for (int shell = 1; shell <= shells.count(); shell++) {
            if (code == kind(shell, nesting)) {
                found.add(shell);
            }
        }
        for (int i = 0; i < Math.min(SoundnessCheck.LISTED, found.size()); i++) {
            int shell = found.get(i);
            double volume = shells.volume(shell);
            if (code == Code.MESH_INSIDE_OUT) {
                note(code, new Place.OnShell(shell), i, found.size(), "shell", shell, "volumeMm3", volume);
            } else {
                note(
                        code,
                        new Place.OnShell(shell),
                        i,
                        found.size(),
                        "shell",
                        shell,
                        "inside",
                        nesting.parent(shell),
                        "volumeMm3",
                        Math.abs(volume));
            }
        }
    }

    private Code kind(int shell, Nesting nesting) {
        double volume = shells.volume(shell);
        int parent = nesting.parent(shell);
        if (!shells.isSolid(shell) || volume == 0) {
            return null;
        }
        if (parent == 0) {
            return volume < 0 ? Code.MESH_INSIDE_OUT : null;
        }
        return volume > 0 == shells.volume(parent) > 0 ? Code.MESH_COUNTED_TWICE : Code.MESH_CAVITY;
    }

    private void note(Code code, Place place, int index, int total, Object... more) {
        findings.add(SoundnessCheck.listed(code, place, index, total, more));
    }
}
