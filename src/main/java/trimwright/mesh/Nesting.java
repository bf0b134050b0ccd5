package trimwright.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which closed shells lie inside which, told by points on them: two shells that do not cross are either wholly inside or
 * wholly outside each other. Shells that are partly inside each other although no two of their triangles cross (walls that lie
 * in one plane) are found where one of the points happens to be inside, and those that lie on each other all over as well.
 */
final class Nesting {

    private static final int MOST_POINTS = 32;
    /** Triangles and boxes that may be passed by for all points together; more where the mesh has more than a million triangles. */
    private static final long MOST_VISITS = 100_000_000;

    private static final int VISITS_PER_TRIANGLE = 100;

    private final TriangleMesh mesh;
    private final Shells shells;
    private final int[] parent;
    private final int[] depth;
    private final boolean[] lookedAt;
    private final List<Overlap> overlaps = new ArrayList<>();

    /** Two shells, the lower number first, and a point of one that lies in the other, or on it where none does. */
    record Overlap(int shell, int other, double x, double y, double z) {}

    /**
     * @param tolerance distance below which a point counts as lying on a triangle
     */
    Nesting(TriangleMesh mesh, Shells shells, double tolerance) {
        this(mesh, shells, tolerance, Math.max(MOST_VISITS, (long) VISITS_PER_TRIANGLE * mesh.triangleCount()));
    }

    /** @param mostVisits how many triangles and boxes may be passed by: of shells that lie in each other many deep every point passes most */
    Nesting(TriangleMesh mesh, Shells shells, double tolerance, long mostVisits) {
        this.mesh = mesh;
        this.shells = shells;
        parent = new int[shells.count() + 1];
        depth = new int[shells.count() + 1];
        lookedAt = new boolean[shells.count() + 1];
        if (shells.count() > 1) {
            new Walk(tolerance, mostVisits).run();
        } else {
            Arrays.fill(lookedAt, true);
        }
    }

    /** Whether it was looked for what this closed shell lies in, before the visits ran out. */
    boolean isLookedAt(int shell) {
        return lookedAt[shell];
    }

    /** The smallest shell around this one, or 0. */
    int parent(int shell) {
        return parent[shell];
    }

    /** How many shells lie around this one. */
    int depth(int shell) {
        return depth[shell];
    }

    /** Pairs of shells of which one has points inside and points outside the other, or lies on it all over. */
    List<Overlap> overlaps() {
        return overlaps;
    }

    private final class Walk implements Columns.Visitor {

        private final double tolerance;
        /** Made for the first point that needs them. */
        private Columns columns;

        private final BoxGrid boxes;
        /** Of the point at hand, per shell: how often the shell winds around it, and whether it lies on the shell. */
        private final int[] winding = new int[shells.count() + 1];

        private final boolean[] touching = new boolean[shells.count() + 1];
        private final IntList met = new IntList(16);
        /** Of the shell at hand, per other shell: how many of its points are inside, and how many on it. */
        private final int[] inside = new int[shells.count() + 1];

        private final int[] on = new int[shells.count() + 1];
        /** A point of it that lies in the other, or else on it. */
        private final double[] shared = new double[3 * (shells.count() + 1)];

        private final IntList around = new IntList(16);
        private final double[] box = new double[6];
        private int shellAtHand;
        private long visitsLeft;

        Walk(double tolerance, long mostVisits) {
            this.tolerance = tolerance;
            visitsLeft = mostVisits;
            double sides = 0;
            for (int shell = 1; shell <= shells.count(); shell++) {
                sides += shells.bounds(shell).longestSide();
            }
            boxes = new BoxGrid(shells.count(), this::write, mesh.bounds(), sides / shells.count(), -1);
        }

        /** The box of a shell, from 0 here, wider by the tolerance. */
        private void write(int index, double[] box) {
            Bounds bounds = shells.bounds(index + 1);
            box[0] = bounds.minX() - tolerance;
            box[1] = bounds.minY() - tolerance;
            box[2] = bounds.minZ() - tolerance;
            box[3] = bounds.maxX() + tolerance;
            box[4] = bounds.maxY() + tolerance;
            box[5] = bounds.maxZ() + tolerance;
        }

        /** Whether the point is in the box of another closed shell, without which it cannot be in the shell. */
        private boolean isInAnyBox(double x, double y, double z) {
            int cell = boxes.cell(x, y, z);
            for (int i = boxes.start(cell); i < boxes.start(cell + 1); i++) {
                visitsLeft--;
                int other = boxes.entry(i) + 1;
                if (other != shellAtHand && shells.isSolid(other)) {
                    write(other - 1, box);
                    if (x >= box[0] && y >= box[1] && z >= box[2] && x <= box[3] && y <= box[4] && z <= box[5]) {
                        return true;
                    }
                }
            }
            return false;
        }

        void run() {
            int[][] triangles = samples(MOST_POINTS / 2);
            int shellsLeft = shells.count();
            for (int shell = 1; shell <= shells.count() && visitsLeft > 0; shell++) {
                if (shells.isSolid(shell)) {
                    shellAtHand = shell;
                    // What the shells before it did not use is there for those that come.
                    conclude(2 * look(triangles[shell], visitsLeft / shellsLeft));
                    lookedAt[shell] = true;
                }
                shellsLeft--;
            }
        }

        /** Looks at triangles until its share of the visits is used up, but at one in any case; at how many. */
        private int look(int[] triangles, long share) {
            long before = visitsLeft;
            int count = 0;
            while (count < triangles.length && (count == 0 || before - visitsLeft < share)) {
                look(triangles[count]);
                count++;
            }
            return count;
        }

        /** Of each shell the triangles to look at, spread evenly over it. */
        private int[][] samples(int perShell) {
            int[][] result = new int[shells.count() + 1][];
            int[] seen = new int[shells.count() + 1];
            for (int shell = 1; shell <= shells.count(); shell++) {
                result[shell] = new int[Math.min(perShell, shells.triangles(shell))];
            }
            for (int t = 0; t < mesh.triangleCount(); t++) {
                int shell = shells.shellOf(t);
                if (shell == 0) {
                    continue;
                }
                // The k-th of n samples is triangle ⌊k m / n⌋ of the m triangles of its shell.
                int wanted = result[shell].length;
                long m = shells.triangles(shell);
                int k = (int) (((long) seen[shell] * wanted + m - 1) / m);
                if (k < wanted && k * m / wanted == seen[shell]) {
                    result[shell][k] = t;
                }
                seen[shell]++;
            }
            return result;
        }

        private void look(int t) {
            double[] xyz = mesh.xyz();
            int a = 3 * mesh.corners()[3 * t];
            int b = 3 * mesh.corners()[3 * t + 1];
            int c = 3 * mesh.corners()[3 * t + 2];
            look(xyz[a], xyz[a + 1], xyz[a + 2]);
            look(
                    (xyz[a] + xyz[b] + xyz[c]) / 3,
                    (xyz[a + 1] + xyz[b + 1] + xyz[c + 1]) / 3,
                    (xyz[a + 2] + xyz[b + 2] + xyz[c + 2]) / 3);
        }

        private void look(double x, double y, double z) {
            if (!isInAnyBox(x, y, z)) {
                return;
            }
            if (columns == null) {
                columns = new Columns(mesh, Columns.shortestAxis(mesh.bounds()), tolerance);
            }
            visitsLeft -= columns.visit(x, y, z, this);
            for (int i = 0; i < met.size(); i++) {
                int other = met.get(i);
                if (touching[other] || winding[other] != 0) {
                    boolean isFirst = inside[other] == 0 && on[other] == 0;
                    if (isFirst) {
                        around.add(other);
                    }
                    if (isFirst || (inside[other] == 0 && !touching[other])) {
                        shared[3 * other] = x;
                        shared[3 * other + 1] = y;
                        shared[3 * other + 2] = z;
                    }
                    if (touching[other]) {
                        on[other]++;
                    } else {
                        inside[other]++;
                    }
                }
                winding[other] = 0;
                touching[other] = false;
            }
            met.truncate(0);
        }

        @Override
        public void crosses(int triangle, int sense, double distance) {
            int other = shells.shellOf(triangle);
            // Above the point are the outsides that look up with the point behind them, and those that look down before
            // it.
            if (distance * sense < 0 && meets(other)) {
                winding[other] += sense;
            }
        }

        @Override
        public void touches(int triangle) {
            int other = shells.shellOf(triangle);
            if (meets(other)) {
                touching[other] = true;
            }
        }

        private boolean meets(int other) {
            if (other == 0 || other == shellAtHand || !shells.isSolid(other)) {
                return false;
            }
            met.add(other);
            return true;
        }

        private void conclude(int points) {
            for (int i = 0; i < around.size(); i++) {
                int other = around.get(i);
                if (inside[other] > 0 && inside[other] + on[other] == points) {
                    depth[shellAtHand]++;
                    int best = parent[shellAtHand];
                    if (best == 0 || Math.abs(shells.volume(other)) < Math.abs(shells.volume(best))) {
                        parent[shellAtHand] = other;
                    }
                } else if (inside[other] > 0 || (on[other] == points && other < shellAtHand)) {
                    // Of two shells that lie on each other all over, each encloses what the other does.
                    overlaps.add(new Overlap(
                            Math.min(shellAtHand, other),
                            Math.max(shellAtHand, other),
                            shared[3 * other],
                            shared[3 * other + 1],
                            shared[3 * other + 2]));
                }
                inside[other] = 0;
                on[other] = 0;
            }
            around.truncate(0);
        }
    }
}
