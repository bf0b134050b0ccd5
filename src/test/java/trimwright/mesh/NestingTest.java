package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/** Shells put into each other on purpose, so that it is known which lies in which. */
class NestingTest {

    private static final double TOLERANCE = 1e-6;

    private static Nesting nesting(TriangleMesh mesh) {
        return new Nesting(mesh, Soundness.quick(mesh).numbering(), TOLERANCE);
    }

    /** Boxes and balls in boxes in boxes, at random, each turned either way: the parent and the depth of every one. */
    @Test
    void shellsWithinShells() {
        Random random = new Random(4);
        int deepest = 0;
        for (int round = 0; round < 4; round++) {
            Nest nest = new Nest(random);
            nest.fill(new double[] {0, 0, 0, 1000, 700, 400}, -1, 0);
            TriangleMesh mesh = Shapes.together(nest.shells.toArray(new TriangleMesh[0]));
            Shells shells = Soundness.quick(mesh).numbering();
            Nesting found = nesting(mesh);
            int[] number = new int[nest.shells.size()];
            int first = 0;
            for (int i = 0; i < number.length; i++) {
                number[i] = shells.shellOf(first);
                first += nest.shells.get(i).triangleCount();
            }
            for (int i = 0; i < number.length; i++) {
                int parent = nest.parents.get(i);
                assertEquals(parent < 0 ? 0 : number[parent], found.parent(number[i]));
                assertEquals(nest.depths.get(i), found.depth(number[i]));
                deepest = Math.max(deepest, nest.depths.get(i));
            }
            assertEquals(List.of(), found.overlaps());
        }
        assertTrue(deepest == 3, "only " + deepest + " deep");
    }

    /** Sixty boxes in each other, the largest of which is shell 1: while there are visits they are right, and it is told which were not looked at. */
    @Test
    void visitsRunOut() {
        List<TriangleMesh> boxes = new ArrayList<>();
        for (int i = 1; i <= 60; i++) {
            boxes.add(Solids.box(-i, -i, -i, i, i, i));
        }
        TriangleMesh mesh = Shapes.together(boxes.toArray(new TriangleMesh[0]));
        Shells shells = Soundness.quick(mesh).numbering();
        for (long visits : new long[] {1, 5000, 40_000, 400_000, Long.MAX_VALUE}) {
            Nesting nesting = new Nesting(mesh, shells, TOLERANCE, visits);
            int looked = 0;
            for (int shell = 1; shell <= 60; shell++) {
                assertEquals(nesting.isLookedAt(shell) ? shell - 1 : 0, nesting.depth(shell), "depth with " + visits);
                looked += nesting.isLookedAt(shell) ? 1 : 0;
            }
            assertTrue(visits < 400_000 ? looked < 60 : looked == 60, visits + " visits: " + looked);
            assertTrue(looked >= 1);
        }
    }

    private static final class Nest {
        private final Random random;
        private final List<TriangleMesh> shells = new ArrayList<>();
        private final List<Integer> parents = new ArrayList<>();
        private final List<Integer> depths = new ArrayList<>();

        Nest(Random random) {
            this.random = random;
        }

        /** Cuts a room in two until it is a shell, then fills that. */
        void fill(double[] room, int parent, int depth) {
            if (depth > 3 || room[3] - room[0] < 20) {
                return;
            }
            if (random.nextInt(3) > 0) {
                int axis = random.nextInt(3);
                double cut = room[axis] + (0.3 + 0.4 * random.nextDouble()) * (room[3 + axis] - room[axis]);
                double[] low = room.clone();
                double[] high = room.clone();
                low[3 + axis] = cut;
                high[axis] = cut;
                if (room[3 + axis] - room[axis] > 60) {
                    fill(low, parent, depth);
                    fill(high, parent, depth);
                    return;
                }
            }
            double[] in = room.clone();
            for (int k = 0; k < 3; k++) {
                double margin = 0.03 * (room[3 + k] - room[k]);
                in[k] += margin;
                in[3 + k] -= margin;
            }
            int self = shells.size();
            if (random.nextInt(4) == 0) {
                double radius = Math.min(in[3] - in[0], Math.min(in[4] - in[1], in[5] - in[2])) / 2;
                add(
                        Shapes.ball((in[0] + in[3]) / 2, (in[1] + in[4]) / 2, (in[2] + in[5]) / 2, radius, 7, 9),
                        parent,
                        depth);
            } else {
                add(Solids.box(in[0], in[1], in[2], in[3], in[4], in[5]), parent, depth);
                fill(in, self, depth + 1);
            }
        }

        private void add(TriangleMesh shell, int parent, int depth) {
            shells.add(random.nextBoolean() ? shell : shell.flipped());
            parents.add(parent);
            depths.add(depth);
        }
    }

    /** A square tube, open through: what stands in its passage is in the box of the shell and not in the shell. */
    private static TriangleMesh tube() {
        double[] xyz = new double[48];
        for (int i = 0; i < 16; i++) {
            double half = i < 8 ? 100 : 60;
            xyz[3 * i] = (i % 4 == 0 || i % 4 == 3 ? -1 : 1) * half;
            xyz[3 * i + 1] = (i % 4 < 2 ? -1 : 1) * half;
            xyz[3 * i + 2] = i % 8 < 4 ? 0 : 200;
        }
        List<Integer> corners = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            int k = (i + 1) % 4;
            corners.addAll(List.of(i, k, 4 + k, i, 4 + k, 4 + i));
            corners.addAll(List.of(8 + i, 12 + k, 8 + k, 8 + i, 12 + i, 12 + k));
            corners.addAll(List.of(i, 8 + k, k, i, 8 + i, 8 + k));
            corners.addAll(List.of(4 + i, 4 + k, 12 + k, 4 + i, 12 + k, 12 + i));
        }
        return TriangleMesh.owning(
                xyz, corners.stream().mapToInt(Integer::intValue).toArray());
    }

    @Test
    void whatStandsInAPassageIsOutside() {
        assertEquals(200 * (200 * 200 - 120 * 120), tube().signedVolume(), 1e-6);
        TriangleMesh mesh =
                Shapes.together(tube(), Solids.box(-50, -50, 20, 50, 50, 180), Solids.box(-90, -90, 20, -70, 90, 180));
        Nesting found = nesting(mesh);
        assertEquals(0, found.parent(2));
        assertEquals(0, found.depth(2));
        assertEquals(1, found.parent(3));
        assertEquals(List.of(), found.overlaps());
    }

    /** A long rod of 1600 triangles with a box around a tenth of it: wherever the box sits, some of the points looked at lie in it. */
    @Test
    void pointsAreSpreadOverTheWholeShell() {
        TriangleMesh rod = Shapes.ball(0, 0, 0, 1, 41, 20);
        for (int i = 0; i < rod.xyz().length; i += 3) {
            rod.xyz()[i + 2] = 500 * Math.asin(Math.max(-1, Math.min(1, rod.xyz()[i + 2]))) / (Math.PI / 2);
        }
        // The triangles of the ball run round in slices from pole to pole, so that each slice is spread along the rod.
        TriangleMesh sorted = sortedAlongZ(rod);
        for (TriangleMesh one : List.of(sorted, reversed(sorted))) {
            for (int tenth = -5; tenth < 5; tenth++) {
                TriangleMesh box = Solids.box(-200, -200, 100 * tenth, 200, 200, 100 * tenth + 100);
                TriangleMesh aside = Solids.box(-3000, -200, -200, -2000, 800, 800);
                List<Nesting.Overlap> overlaps =
                        nesting(Shapes.together(aside, box, one)).overlaps();
                assertEquals(1, overlaps.size(), "tenth " + tenth);
                Nesting.Overlap overlap = overlaps.get(0);
                assertEquals(2, overlap.shell());
                assertEquals(3, overlap.other());
                assertTrue(overlap.z() >= 100 * tenth && overlap.z() <= 100 * tenth + 100);
                assertTrue(Math.hypot(overlap.x(), overlap.y()) <= 1);
            }
        }
    }

    private static TriangleMesh sortedAlongZ(TriangleMesh mesh) {
        Integer[] order = new Integer[mesh.triangleCount()];
        Arrays.setAll(order, t -> t);
        Arrays.sort(
                order,
                (s, t) -> Double.compare(
                        mesh.xyz()[3 * mesh.corners()[3 * s] + 2], mesh.xyz()[3 * mesh.corners()[3 * t] + 2]));
        int[] corners = new int[mesh.corners().length];
        for (int t = 0; t < order.length; t++) {
            System.arraycopy(mesh.corners(), 3 * order[t], corners, 3 * t, 3);
        }
        return TriangleMesh.owning(mesh.xyz(), corners);
    }

    private static TriangleMesh reversed(TriangleMesh mesh) {
        int[] corners = new int[mesh.corners().length];
        for (int t = 0; t < mesh.triangleCount(); t++) {
            System.arraycopy(mesh.corners(), 3 * t, corners, corners.length - 3 * t - 3, 3);
        }
        return TriangleMesh.owning(mesh.xyz(), corners);
    }

    /** A body in the corner of another, three of its walls on the other's: all its points are in or on it, so it is inside. */
    @Test
    void wallsThatTouchFromInsideAreInside() {
        Nesting found = nesting(Shapes.together(Solids.box(0, 0, 0, 50, 50, 50), Solids.box(0, 0, 0, 100, 100, 100)));
        assertEquals(1, found.parent(2));
        assertEquals(1, found.depth(2));
        assertEquals(0, found.depth(1));
        assertEquals(List.of(), found.overlaps());
    }

    /** The same body twice, apart by less than a file of single precision can tell: nothing crosses, no point is inside, and it would count twice. */
    @Test
    void aBodyThatLiesOnAnother() {
        TriangleMesh ball = Shapes.ball(0, 0, 0, 100, 10, 14);
        double hair = 0.4 * SoundnessCheck.tolerance(ball.bounds());
        TriangleMesh twice =
                Shapes.together(Solids.box(300, 0, 0, 800, 400, 400), ball, Shapes.moved(ball, hair, hair, hair));
        for (TriangleMesh mesh : List.of(twice, twice.flipped())) {
            Soundness soundness = Soundness.of(mesh);
            Finding overlap = first(soundness, Code.MESH_SHELLS_OVERLAP);
            assertEquals(2, overlap.values().get("shell"));
            assertEquals(3, overlap.values().get("other"));
            assertEquals(1, overlap.values().get("total"));
            Place.AtPoint place = (Place.AtPoint) overlap.place();
            double r = Math.sqrt(place.xMm() * place.xMm() + place.yMm() * place.yMm() + place.zMm() * place.zMm());
            assertTrue(r > 95 && r < 100.001, "a point of it, " + r + " from its middle");
            assertFalse(soundness.sound());
        }
    }

    /** Twelve hollows in a block, eleven blocks that are inside out beside it, and twelve pairs of blocks through each other: ten of each are listed, all counted. */
    @Test
    void tenOfAKindAreListedAndAllCounted() {
        List<TriangleMesh> shells = new ArrayList<>(List.of(Solids.box(0, 0, 0, 1300, 100, 100)));
        for (int i = 0; i < 12; i++) {
            shells.add(
                    Solids.box(100 * i + 10, 10, 10, 100 * i + 90, 90, 90 - i).flipped());
            shells.add(Solids.box(100 * i, 300, 0, 100 * i + 60, 360, 60 - i));
            shells.add(Solids.box(100 * i + 20, 320, 20, 100 * i + 80, 380, 80 - i));
            if (i > 0) {
                shells.add(
                        Solids.box(100 * i, 600, 0, 100 * i + 90, 690, 90 - i).flipped());
            }
        }
        Soundness soundness = Soundness.of(Shapes.together(shells.toArray(new TriangleMesh[0])));
        assertListed(soundness, Code.MESH_CAVITY, 12);
        assertListed(soundness, Code.MESH_INSIDE_OUT, 11);
        assertListed(soundness, Code.MESH_SHELLS_OVERLAP, 12);
        for (Finding finding : soundness.findings()) {
            if (finding.code() == Code.MESH_SHELLS_OVERLAP) {
                Bounds one =
                        soundness.numbering().bounds((Integer) finding.values().get("shell"));
                Bounds other =
                        soundness.numbering().bounds((Integer) finding.values().get("other"));
                assertTrue(one.intersection(other).shortestSide() > 0);
                assertTrue((Long) finding.values().get("crossings") > 0);
            }
        }
        Finding hollow = first(soundness, Code.MESH_CAVITY);
        assertEquals(80 * 80 * 80.0, (Double) hollow.values().get("volumeMm3"), 1e-6);
        assertEquals(1, hollow.values().get("inside"));
        assertEquals(new Place.OnShell((Integer) hollow.values().get("shell")), hollow.place());
        Finding inside = first(soundness, Code.MESH_INSIDE_OUT);
        assertEquals(-90 * 90 * 89.0, (Double) inside.values().get("volumeMm3"), 1e-6);
    }

    private static Finding first(Soundness soundness, Code code) {
        return soundness.findings().stream()
                .filter(f -> f.code() == code)
                .findFirst()
                .orElseThrow();
    }

    private static void assertListed(Soundness soundness, Code code, int total) {
        List<Finding> found =
                soundness.findings().stream().filter(f -> f.code() == code).toList();
        assertEquals(10, found.size(), code::toString);
        for (int i = 0; i < found.size(); i++) {
            assertEquals(i + 1, found.get(i).values().get("index"));
            assertEquals(total, found.get(i).values().get("total"));
        }
    }

    /** The places are the middles of the lower-numbered triangles, in their order. */
    @Test
    void whereAShellGoesThroughItself() {
        TriangleMesh ball = Shapes.ball(0, 0, 0, 100, 10, 12);
        // The north pole pulled through the south, a little aside, so that no edge meets another: twelve triangles go
        // through the twelve around the south.
        System.arraycopy(new double[] {3, 2, -150}, 0, ball.xyz(), ball.xyz().length - 3, 3);
        Soundness soundness = Soundness.of(ball);
        List<Finding> found = soundness.findings().stream()
                .filter(f -> f.code() == Code.MESH_CROSSES_ITSELF)
                .toList();
        assertEquals(10, found.size());
        int total = (Integer) found.get(0).values().get("total");
        assertTrue(total > 10, "only " + total);
        int last = 0;
        for (Finding finding : found) {
            int t = (int) finding.values().get("triangle");
            int other = (Integer) finding.values().get("other");
            assertTrue(t < other && t >= last);
            last = t;
            assertEquals(1, finding.values().get("shell"));
            double[] middle = new double[3];
            for (int i = 0; i < 9; i++) {
                middle[i % 3] += ball.xyz()[3 * ball.corners()[3 * t + i / 3] + i % 3] / 3;
            }
            Place.AtTriangle place = (Place.AtTriangle) finding.place();
            assertEquals(t, place.triangle());
            assertEquals(middle[0], place.xMm(), 1e-9);
            assertEquals(middle[1], place.yMm(), 1e-9);
            assertEquals(middle[2], place.zMm(), 1e-9);
        }
    }
}
