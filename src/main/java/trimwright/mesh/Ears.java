package trimwright.mesh;

/**
 * Cuts a flat polygon into triangles ear by ear (G. H. Meisters, Polygons have ears, 1975). Which corners are ears is remembered, and looked into again
 * only beside a cut, so that the time grows with the square of the corners, whatever the shape.
 */
final class Ears {

    /** Corners that touch others can become ears when those are gone; so often all that are left are looked through again. */
    private static final int MOST_LOOKS = 8;

    private final double[] flat;
    private final int[] ring;
    private final int[] next;
    private final int[] before;
    private final boolean[] ear;
    private final IntList waiting = new IntList(64);
    private int taken;
    private int looks;
    private int left;

    /** @param flat the corners as u, v, u, v, …, counter-clockwise */
    Ears(double[] flat, int[] ring, int size) {
        this.flat = flat;
        this.ring = ring;
        left = size;
        next = new int[size];
        before = new int[size];
        ear = new boolean[size];
        for (int i = 0; i < size; i++) {
            next[i] = (i + 1) % size;
            before[next[i]] = i;
        }
    }

    /** @return false where the ring crosses itself; what was left without an ear was then cut as a fan */
    boolean cut(IntList out) {
        int some = 0;
        lookAll(some);
        while (left > 3) {
            int b = nextEar(some);
            if (b < 0) {
                b = flatCorner(some);
            }
            if (b < 0) {
                fanOf(some, out);
                return false;
            }
            some = cutOff(b, out);
        }
        fanOf(some, out);
        // The rest of a ring that crosses itself may be wound the other way.
        return turn(before[some], some, next[some]) >= 0;
    }

    private int nextEar(int some) {
        int ear = waitingEar();
        if (ear < 0 && looks++ < MOST_LOOKS) {
            lookAll(some);
            ear = waitingEar();
        }
        return ear;
    }

    private int waitingEar() {
        while (taken < waiting.size()) {
            int b = waiting.get(taken++);
            if (next[b] >= 0 && ear[b]) {
                return b;
            }
        }
        return -1;
    }

    private int cutOff(int b, IntList out) {
        int a = before[b];
        int c = next[b];
        out.add(ring[a]);
        out.add(ring[b]);
        out.add(ring[c]);
        next[a] = c;
        before[c] = a;
        next[b] = -1;
        left--;
        look(a);
        look(c);
        return a;
    }

    private void lookAll(int first) {
        int corner = first;
        do {
            look(corner);
            corner = next[corner];
        } while (corner != first);
    }

    private void look(int b) {
        int a = before[b];
        int c = next[b];
        ear[b] = turn(a, b, c) > 0 && isEmpty(a, b, c);
        if (ear[b]) {
            waiting.add(b);
        }
    }

    /** A corner on a straight line, which takes a triangle without area away; −1 where there is none. */
    private int flatCorner(int first) {
        int corner = first;
        do {
            if (turn(before[corner], corner, next[corner]) == 0) {
                return corner;
            }
            corner = next[corner];
        } while (corner != first);
        return -1;
    }

    /** Only a corner that bends inward can lie in the triangle of an ear. */
    private boolean isEmpty(int a, int b, int c) {
        for (int p = next[c]; p != a; p = next[p]) {
            if (turn(before[p], p, next[p]) <= 0
                    && !isAt(p, a)
                    && !isAt(p, b)
                    && !isAt(p, c)
                    && turn(a, b, p) >= 0
                    && turn(b, c, p) >= 0
                    && turn(c, a, p) >= 0) {
                return false;
            }
        }
        return true;
    }

    /** The two banks of a slit lie on each other. */
    private boolean isAt(int p, int q) {
        return flat[2 * p] == flat[2 * q] && flat[2 * p + 1] == flat[2 * q + 1];
    }

    private void fanOf(int first, IntList out) {
        int[] rest = new int[left];
        int corner = first;
        for (int i = 0; i < left; i++) {
            rest[i] = ring[corner];
            corner = next[corner];
        }
        Polygons.fan(rest, left, out);
    }

    private double turn(int a, int b, int c) {
        return Polygons.turn(flat, a, b, c);
    }
}
