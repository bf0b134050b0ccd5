package trimwright.mesh;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/** The shells of a mesh and which triangle belongs to which; immutable. A mesh of a million shells is no hardship. */
public final class Shells {

    private final int[] shellOf;
    private final double[] sums;
    private final int[] firstTriangle;
    private final int[] triangles;
    private final boolean[] closed;
    private final boolean[] oriented;
    private final double originX;
    private final double originY;
    private final double originZ;

    private Shells(int[] shellOf, ShellSums unordered, int[] numbers, Bounds bounds) {
        int count = numbers.length - 1;
        this.shellOf = shellOf;
        this.sums = new double[ShellSums.STRIDE * count];
        this.firstTriangle = new int[count];
        this.triangles = new int[count];
        for (int piece = 1; piece <= count; piece++) {
            int s = numbers[piece] - 1;
            System.arraycopy(unordered.values, ShellSums.STRIDE * piece, sums, ShellSums.STRIDE * s, ShellSums.STRIDE);
            firstTriangle[s] = unordered.firstTriangle[piece];
            triangles[s] = unordered.triangles[piece];
        }
        this.closed = new boolean[count];
        this.oriented = new boolean[count];
        this.originX = bounds.centreX();
        this.originY = bounds.centreY();
        this.originZ = bounds.centreZ();
    }

    /**
     * The part of a mesh that consists of the given shells, with the numbers that {@link Soundness} gives them.
     *
     * @param numbers from 1; none for the whole mesh
     * @throws UnusableInputException with a finding for each number that no shell has
     */
    public static TriangleMesh pick(TriangleMesh mesh, List<Integer> numbers) {
        if (numbers.isEmpty()) {
            return mesh;
        }
        Shells shells = Soundness.quick(mesh).numbering();
        List<Finding> missing = new ArrayList<>();
        boolean[] wanted = new boolean[shells.count() + 1];
        for (int number : numbers) {
            if (number < 1 || number > shells.count()) {
                missing.add(Finding.of(
                        Code.MESH_SHELL_MISSING, new Place.OnShell(number), "found", number, "shells", shells.count()));
            } else {
                wanted[number] = true;
            }
        }
        if (!missing.isEmpty()) {
            throw new UnusableInputException(missing);
        }
        boolean[] keep = new boolean[mesh.triangleCount()];
        for (int t = 0; t < keep.length; t++) {
            keep[t] = wanted[shells.shellOf[t]];
        }
        return mesh.only(keep);
    }

    /**
     * @param edges pairs that leave out triangles with a vertex twice, and the copies
     * @param duplicates the copies, which belong where their originals do
     */
    static Shells of(TriangleMesh mesh, HalfEdges edges, Duplicates duplicates) {
        int[] shellOf = new int[mesh.triangleCount()];
        int pieces = pieces(edges.twin, shellOf);
        for (int i = 0; i < duplicates.copies().size(); i++) {
            shellOf[duplicates.copies().get(i)] = shellOf[duplicates.originals().get(i)];
        }
        ShellSums sums = new ShellSums(mesh, shellOf, pieces);
        int[] numbers = numbers(sums.values, pieces);
        for (int t = 0; t < shellOf.length; t++) {
            shellOf[t] = numbers[shellOf[t]];
        }
        Shells shells = new Shells(shellOf, sums, numbers, mesh.bounds());
        shells.judge(mesh.corners(), edges);
        return shells;
    }

    public int count() {
        return firstTriangle.length;
    }

    /** The number of the shell that a triangle belongs to; 0 for one with a vertex twice, which belongs to none. */
    public int shellOf(int triangle) {
        return shellOf[triangle];
    }

    /** @param number from 1 to {@link #count()} */
    public Shell get(int number) {
        int s = number - 1;
        int i = ShellSums.STRIDE * s;
        double area = sums[i];
        // A shell without area has no centroid of its surface; the middle of its box is as good a place.
        Bounds box = bounds(number);
        Vector3D centroid = area > 0
                ? new Vector3D(originX + sums[i + 2] / area, originY + sums[i + 3] / area, originZ + sums[i + 4] / area)
                : new Vector3D(box.centreX(), box.centreY(), box.centreZ());
        return new Shell(
                number, triangles[s], area, sums[i + 1], box, closed[s], oriented[s], centroid, firstTriangle[s]);
    }

    /** All shells in the order of their numbers; each is made when asked for. */
    public List<Shell> list() {
        return new ShellList();
    }

    double area(int number) {
        return sums[ShellSums.STRIDE * (number - 1)];
    }

    double totalArea() {
        return total(0);
    }

    double totalVolume() {
        return total(ShellSums.VOLUME);
    }

    private double total(int which) {
        double total = 0;
        for (int i = which; i < sums.length; i += ShellSums.STRIDE) {
            total += sums[i];
        }
        return total;
    }

    int triangles(int number) {
        return triangles[number - 1];
    }

    double volume(int number) {
        return sums[ShellSums.STRIDE * (number - 1) + 1];
    }

    boolean isClosed(int number) {
        return closed[number - 1];
    }

    /** Whether its volume has a meaning. */
    boolean isSolid(int number) {
        return closed[number - 1] && oriented[number - 1];
    }

    Bounds bounds(int number) {
        int i = ShellSums.STRIDE * (number - 1) + ShellSums.BOX;
        return new Bounds(sums[i], sums[i + 1], sums[i + 2], sums[i + 3], sums[i + 4], sums[i + 5]);
    }

    /**
     * Gives pieces the numbers 1, 2, … in the order of their first triangles, and 0 to triangles that take no part. Sets are
     * joined as the half-edges come, each under its lowest triangle, which runs through memory far more evenly than a
     * walk from neighbour to neighbour would.
     */
    private static int pieces(int[] twin, int[] pieceOf) {
        int[] parent = new int[pieceOf.length];
        for (int t = 0; t < parent.length; t++) {
            parent[t] = t;
        }
        for (int h = 0; h < twin.length; h++) {
            if (twin[h] > h) {
                int one = root(parent, h / 3);
                int other = root(parent, twin[h] / 3);
                parent[Math.max(one, other)] = Math.min(one, other);
            }
        }
        int pieces = 0;
        for (int t = 0; t < parent.length; t++) {
            if (twin[3 * t] != HalfEdges.SKIPPED) {
                int root = root(parent, t);
                pieceOf[t] = root == t ? ++pieces : pieceOf[root];
            }
        }
        return pieces;
    }

    private static int root(int[] parent, int t) {
        int root = t;
        while (parent[root] != root) {
            parent[root] = parent[parent[root]];
            root = parent[root];
        }
        return root;
    }

    /** The number of each piece: by falling area in single precision, then as they came. */
    private static int[] numbers(double[] sums, int pieces) {
        long[] order = new long[pieces];
        for (int piece = 1; piece <= pieces; piece++) {
            int area = Float.floatToIntBits((float) sums[ShellSums.STRIDE * piece]);
            order[piece - 1] = (long) (Integer.MAX_VALUE - area) << 32 | piece;
        }
        Arrays.sort(order);
        int[] numbers = new int[pieces + 1];
        for (int i = 0; i < pieces; i++) {
            numbers[(int) order[i]] = i + 1;
        }
        return numbers;
    }

    private void judge(int[] corners, HalfEdges edges) {
        Arrays.fill(closed, true);
        Arrays.fill(oriented, true);
        for (int h : edges.open) {
            closed[shellOf[h / 3] - 1] = false;
        }
        for (int h : edges.disagreeing) {
            oriented[shellOf[h / 3] - 1] = false;
        }
        int i = 0;
        while (i < edges.many.length) {
            int end = i + 1 + edges.many[i];
            judgeEdge(corners, Arrays.copyOfRange(edges.many, i + 1, end));
            i = end;
        }
    }

    /** An edge of many triangles, shell by shell: of each shell an even number, half of them each way. */
    private void judgeEdge(int[] corners, int[] halfEdges) {
        long[] byShell = new long[halfEdges.length];
        for (int k = 0; k < halfEdges.length; k++) {
            byShell[k] = (long) shellOf[halfEdges[k] / 3] << 32 | halfEdges[k];
        }
        Arrays.sort(byShell);
        int start = 0;
        while (start < byShell.length) {
            int shell = (int) (byShell[start] >>> 32);
            int oneWay = 0;
            int end = start;
            while (end < byShell.length && (int) (byShell[end] >>> 32) == shell) {
                oneWay += HalfEdges.sameWay(corners, (int) byShell[start], (int) byShell[end]) ? 1 : 0;
                end++;
            }
            int onShell = end - start;
            closed[shell - 1] &= onShell % 2 == 0;
            oriented[shell - 1] &= Math.abs(2 * oneWay - onShell) <= onShell % 2;
            start = end;
        }
    }

    private final class ShellList extends AbstractList<Shell> implements RandomAccess {
        @Override
        public Shell get(int index) {
            if (index < 0 || index >= count()) {
                throw new IndexOutOfBoundsException(index);
            }
            return Shells.this.get(index + 1);
        }

        @Override
        public int size() {
            return count();
        }
    }
}
