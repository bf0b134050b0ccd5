package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import trimwright.finding.Code;
import trimwright.finding.Finding;

/** What is found does not depend on where a mesh lies, on the order of its triangles, or on which side is port. */
class SoundnessPropertyTest {

    @Property(tries = 200)
    void theOrderOfTrianglesAndCornersDoesNotMatter(@ForAll("meshes") TriangleMesh mesh, @ForAll long random) {
        Random dice = new Random(random);
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, mesh.triangleCount()).boxed().toList());
        Collections.shuffle(order, dice);
        int[] corners = new int[mesh.corners().length];
        for (int t = 0; t < order.size(); t++) {
            int first = dice.nextInt(3);
            for (int k = 0; k < 3; k++) {
                corners[3 * t + k] = mesh.corners()[3 * order.get(t) + (first + k) % 3];
            }
        }
        assertAlike(mesh, Shapes.merged(TriangleMesh.owning(mesh.xyz().clone(), corners)));
    }

    @Property(tries = 200)
    void thePlaceDoesNotMatter(
            @ForAll("meshes") TriangleMesh mesh,
            @ForAll @DoubleRange(min = -500, max = 500) double dx,
            @ForAll @DoubleRange(min = -500, max = 500) double dy) {
        assertAlike(mesh, Shapes.moved(mesh, dx, dy, dx - dy));
    }

    @Property(tries = 200)
    void theMirrorImageIsAsSound(@ForAll("meshes") TriangleMesh mesh) {
        assertAlike(mesh, mesh.mirroredY());
    }

    @Property(tries = 50)
    void whatIsFoundIsTheSameToTheLastBit(@ForAll("meshes") TriangleMesh mesh) {
        Soundness one = Soundness.of(mesh);
        Soundness other = Soundness.of(Shapes.moved(mesh, 0, 0, 0));
        assertEquals(one.findings(), other.findings());
        assertEquals(one.shells(), other.shells());
        assertEquals(one.areaMm2(), other.areaMm2(), 0);
    }

    @Property(tries = 100)
    void aBallIsSoundAndClosesOnItsVolume(
            @ForAll @DoubleRange(min = 30, max = 900) double radius, @ForAll("sides") int sides) {
        TriangleMesh ball = Shapes.ball(5, -7, 11, radius, sides, 2 * sides);
        Soundness soundness = Soundness.of(ball);
        assertEquals(true, soundness.sound(), soundness.findings().toString());
        // Inscribed: below the ball's volume by a share that falls with the square of the sides; π²/6 (1/n² + 2/(2n)²)
        // or less.
        double exact = 4 * Math.PI / 3 * radius * radius * radius;
        double short_ = 1 - soundness.volumeMm3().orElseThrow() / exact;
        assertEquals(true, short_ > 0 && short_ < 8.0 / (sides * sides), "short by " + short_);
    }

    @Provide
    Arbitrary<Integer> sides() {
        return Arbitraries.integers().between(6, 30);
    }

    @Provide
    Arbitrary<TriangleMesh> meshes() {
        return Arbitraries.of(BrokenMeshes.meshes().entrySet().stream()
                        // Far away nothing can be told any more; a box of metres is out of its size anyway.
                        .filter(entry -> !entry.getKey().equals("far-away"))
                        .map(Map.Entry::getValue)
                        .toList())
                .map(Shapes::merged);
    }

    private static void assertAlike(TriangleMesh mesh, TriangleMesh other) {
        Soundness one = Soundness.of(mesh);
        Soundness two = Soundness.of(other);
        assertEquals(one.closed(), two.closed());
        assertEquals(one.oriented(), two.oriented());
        assertEquals(one.sound(), two.sound());
        assertEquals(one.shells().size(), two.shells().size());
        assertEquals(counts(one), counts(two));
        assertEquals(one.areaMm2(), two.areaMm2(), 1e-9 * one.areaMm2());
        assertEquals(one.volumeMm3().isPresent(), two.volumeMm3().isPresent());
        one.volumeMm3().ifPresent(v -> assertEquals(v, two.volumeMm3().orElseThrow(), 1e-9 * Math.abs(v)));
    }

    private static Map<Code, Object> counts(Soundness soundness) {
        Map<Code, Object> counts = new TreeMap<>();
        for (Finding finding : soundness.findings()) {
            counts.put(finding.code(), finding.values().getOrDefault("total", 1));
        }
        return counts;
    }

    /** A heap of large triangles, each through most others, ten million pairs: looked through in part, and that is said. */
    @Test
    void aHeapOfTrianglesIsSampled() {
        Random random = new Random(7);
        double[] xyz = random.doubles(9 * 4500, 0, 500).toArray();
        int[] corners = IntStream.range(0, 3 * 4500).toArray();
        Soundness heap = Soundness.of(TriangleMesh.owning(xyz, corners));
        Soundness.CrossingSearch search = heap.crossings().orElseThrow();
        assertFalse(search.complete());
        assertTrue(search.pairsTested() > 5_000_000, "tested " + search.pairsTested());
        assertTrue(heap.findings().stream().anyMatch(f -> f.code() == Code.MESH_SHELLS_OVERLAP));
        assertTrue(heap.findings().stream().anyMatch(f -> f.code() == Code.MESH_CROSSINGS_SAMPLED));
    }
}
