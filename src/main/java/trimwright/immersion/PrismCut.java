package trimwright.immersion;

/**
 * Adds the prisms of a thin shell, each cut by the plane. A prism stands between a triangle and its copy moved inward by the thickness
 * along the normal: it is a stack of equal layers, and the plane cuts each at its own height (docs/statics.md, section 1).
 *
 * <p>Everything is reckoned along the plane's own axes: u ahead, v to port, w up, from the reference of the sums. No sum is a difference of
 * figures larger than the prism itself, whether it stands upright, lies level or anything between.
 */
final class PrismCut {

    /** The points of Gauss and Legendre in 0…1, two of them: exact up to cubics, and no integral over the layers is more. */
    private static final double EARLY = 0.5 - 0.5 / Math.sqrt(3);

    private static final double LATE = 0.5 + 0.5 / Math.sqrt(3);

    // The lowest and the highest corner, 0, 3 or 6, by whether b < a, c < b and c < a: bits 0, 1 and 2. Two of the
    // eight cannot be.
    private static final int[] LOWEST = {0, 3, 0, 3, 0, 3, 6, 6};
    private static final int[] HIGHEST = {6, 6, 3, 6, 6, 0, 3, 0};

    private final Immersion s;
    private final double thickness;

    /** First moment of the volume along the plane's axes, about the reference. */
    private double momentU;

    private double momentV;
    private double momentW;

    // Of the prism at hand: its outer corners, u v w each, the way inward over the whole thickness, and its volume.
    private final double[] corner = new double[9];
    private double ou;
    private double ov;
    private double ow;
    private double volume;

    PrismCut(Immersion s, double thickness) {
        this.s = s;
        this.thickness = thickness;
    }

    /** Hands the moment over to the sums; to be called once, after the last prism. */
    void finish() {
        s.mx += momentU * s.ux + momentV * s.vx + momentW * s.nx;
        s.my += momentU * s.uy + momentV * s.vy + momentW * s.ny;
        s.mz += momentU * s.uz + momentV * s.vz + momentW * s.nz;
    }

    /**
     * Begins a prism that the plane cuts.
     *
     * @param x outward unit normal in the boat's axes; the same for {@code y}, {@code z}
     * @param area of the outer triangle; positive
     */
    void begin(double x, double y, double z, double area) {
        ou = -thickness * (s.ux * x + s.uy * y + s.uz * z);
        ov = -thickness * (s.vx * x + s.vy * y + s.vz * z);
        ow = -thickness * (s.nx * x + s.ny * y + s.nz * z);
        volume = thickness * area;
    }

    /**
     * Gives an outer corner of it.
     *
     * @param at 0, 3 or 6
     * @param u place along the plane's axes about the reference; the same for {@code v}, {@code w}
     */
    void corner(int at, double u, double v, double w) {
        corner[at] = u;
        corner[at + 1] = v;
        corner[at + 2] = w;
    }

    /** Adds it in parts between the depths at which the plane passes a corner. */
    void cut() {
        double[] p = corner;
        int order = isBelow(p[5], p[2]) + 2 * isBelow(p[8], p[5]) + 4 * isBelow(p[8], p[2]);
        int low = LOWEST[order];
        int high = HIGHEST[order];
        int middle = 9 - low - high;
        double lowest = p[low + 2];
        double middling = p[middle + 2];
        double highest = p[high + 2];
        if (ow == 0) {
            // Upright: every layer is cut alike.
            if (middling >= 0) {
                tip(low, middle, high, 0, 0, 0, 1);
            } else {
                layers(0, 1);
                tip(high, middle, low, 0, 0, 0, 1);
            }
            return;
        }
        // At a depth of 0…1 the plane cuts the layer where the outer triangle has the height -depth · ow.
        double perMm = -1 / ow;
        double start = Math.min(0, -ow);
        double end = Math.max(0, -ow);
        double from = Math.max(start, lowest);
        double to = Math.min(end, middling);
        if (from < to) {
            tip(low, middle, high, from, to, from * perMm, to * perMm);
        }
        from = Math.max(start, middling);
        to = Math.min(end, highest);
        if (from < to) {
            layers(from * perMm, to * perMm);
            tip(high, middle, low, from, to, from * perMm, to * perMm);
        }
        from = Math.max(start, highest);
        if (from < end) {
            layers(from * perMm, end * perMm);
        }
    }

    /** 1 or 0, without a jump: the order of heights is anyone's guess. */
    private static int isBelow(double a, double b) {
        return (int) (Double.doubleToRawLongBits(a - b) >>> 63);
    }

    /** Adds whole layers between two depths. */
    private void layers(double fromDepth, double toDepth) {
        double[] p = corner;
        double part = volume * Math.abs(toDepth - fromDepth);
        double depth = 0.5 * (fromDepth + toDepth);
        s.volume += part;
        momentU += part * ((p[0] + p[3] + p[6]) * (1.0 / 3) + depth * ou);
        momentV += part * ((p[1] + p[4] + p[7]) * (1.0 / 3) + depth * ov);
        momentW += part * ((p[2] + p[5] + p[8]) * (1.0 / 3) + depth * ow);
    }

    /**
     * Layers cut across two edges that meet in one corner, which lies alone on its side of the plane: adds them if it is the lowest, takes it away
     * from the whole layers if it is the highest. Either way adds their waterplane.
     *
     * @param tip that corner
     * @param near the corner that is next in height
     * @param far the third
     * @param from height on the outer triangle where the plane cuts the first layer
     * @param to the same for the last layer
     */
    private void tip(int tip, int near, int far, double from, double to, double fromDepth, double toDepth) {
        double[] p = corner;
        double tu = p[tip];
        double tv = p[tip + 1];
        double tw = p[tip + 2];
        double nu = p[near] - tu;
        double nv = p[near + 1] - tv;
        double nw = p[near + 2] - tw;
        double fu = p[far] - tu;
        double fv = p[far + 1] - tv;
        double fw = p[far + 2] - tw;
        double sense = fw > 0 ? 1 : -1;
        double half = 0.5 * volume * Math.abs(toDepth - fromDepth);
        double perFar = 1 / fw;
        double perNear = 1 / nw;
        double farPerNear = nw * perFar;
        double perShare = sense * 2 * half * perFar;
        for (int point = 0; point < 2; point++) {
            double way = point == 0 ? EARLY : LATE;
            double depth = fromDepth + way * (toDepth - fromDepth);
            double share = (from - tw + way * (to - from)) * perNear;
            double alongFar = share * farPerNear;
            double du = depth * ou;
            double dv = depth * ov;
            double part = sense * half * share * alongFar;
            s.volume += part;
            momentU += part * (tu + du + (share * nu + alongFar * fu) * (1.0 / 3));
            momentV += part * (tv + dv + (share * nv + alongFar * fv) * (1.0 / 3));
            momentW += part * (tw + depth * ow + (share * nw + alongFar * fw) * (1.0 / 3));
            s.waterplaneStrip(
                    perShare * share,
                    tu + du + share * nu,
                    tv + dv + share * nv,
                    tu + du + alongFar * fu,
                    tv + dv + alongFar * fv);
        }
    }

    /** Adds it where the plane crosses it between its faces everywhere. */
    void crossedTriangle() {
        double[] p = corner;
        double area = volume / thickness;
        double sumU = p[0] + p[3] + p[6];
        double sumV = p[1] + p[4] + p[7];
        double sumW = p[2] + p[5] + p[8];
        double third = area * (1.0 / 3);
        double twelfth = area * (1.0 / 12);
        crossed(
                area,
                third * sumU,
                third * sumV,
                third * sumW,
                twelfth * (sumU * sumU + p[0] * p[0] + p[3] * p[3] + p[6] * p[6]),
                twelfth * (sumU * sumV + p[0] * p[1] + p[3] * p[4] + p[6] * p[7]),
                twelfth * (sumU * sumW + p[0] * p[2] + p[3] * p[5] + p[6] * p[8]),
                twelfth * (sumV * sumV + p[1] * p[1] + p[4] * p[4] + p[7] * p[7]),
                twelfth * (sumV * sumW + p[1] * p[2] + p[4] * p[5] + p[7] * p[8]),
                twelfth * (sumW * sumW + p[2] * p[2] + p[5] * p[5] + p[8] * p[8]));
    }

    /**
     * The prisms of a node of the tree, which share one normal and are all crossed between their faces.
     *
     * @param at where the node begins
     * @param rx the reference, seen from the tree's origin; the same for {@code ry}, {@code rz}
     */
    void crossedPatch(double[] nodes, int at, double rx, double ry, double rz) {
        int n = at + MeshTree.NORMAL;
        ou = -thickness * (s.ux * nodes[n] + s.uy * nodes[n + 1] + s.uz * nodes[n + 2]);
        ov = -thickness * (s.vx * nodes[n] + s.vy * nodes[n + 1] + s.vz * nodes[n + 2]);
        ow = -thickness * (s.nx * nodes[n] + s.ny * nodes[n + 1] + s.nz * nodes[n + 2]);
        double area = nodes[at + MeshTree.AREA];
        int m = at + MeshTree.AREA_M;
        double mx = nodes[m];
        double my = nodes[m + 1];
        double mz = nodes[m + 2];
        // Second moments about the reference.
        int q = at + MeshTree.AREA_MM;
        double xx = nodes[q] - 2 * mx * rx + area * rx * rx;
        double xy = nodes[q + 1] - mx * ry - my * rx + area * rx * ry;
        double xz = nodes[q + 2] - mx * rz - mz * rx + area * rx * rz;
        double yy = nodes[q + 3] - 2 * my * ry + area * ry * ry;
        double yz = nodes[q + 4] - my * rz - mz * ry + area * ry * rz;
        double zz = nodes[q + 5] - 2 * mz * rz + area * rz * rz;
        mx -= area * rx;
        my -= area * ry;
        mz -= area * rz;
        // The tensor times each axis of the plane.
        double xu = xx * s.ux + xy * s.uy + xz * s.uz;
        double yu = xy * s.ux + yy * s.uy + yz * s.uz;
        double zu = xz * s.ux + yz * s.uy + zz * s.uz;
        double xv = xx * s.vx + xy * s.vy + xz * s.vz;
        double yv = xy * s.vx + yy * s.vy + yz * s.vz;
        double zv = xz * s.vx + yz * s.vy + zz * s.vz;
        crossed(
                area,
                s.ux * mx + s.uy * my + s.uz * mz,
                s.vx * mx + s.vy * my + s.vz * mz,
                s.nx * mx + s.ny * my + s.nz * mz,
                s.ux * xu + s.uy * yu + s.uz * zu,
                s.vx * xu + s.vy * yu + s.vz * zu,
                s.nx * xu + s.ny * yu + s.nz * zu,
                s.vx * xv + s.vy * yv + s.vz * zv,
                s.nx * xv + s.ny * yv + s.nz * zv,
                s.nx * (xx * s.nx + xy * s.ny + xz * s.nz)
                        + s.ny * (xy * s.nx + yy * s.ny + yz * s.nz)
                        + s.nz * (xz * s.nx + yz * s.ny + zz * s.nz));
    }

    /**
     * Adds prisms with one way inward that the plane crosses between their faces everywhere: the depth at which it does is
     * linear over the surface, so that area, first and second moments of the outer face say everything.
     *
     * @param area of the outer face
     * @param mu its first moments along the plane's axes, about the reference; the same for {@code mv}, {@code mw}
     * @param quu its second moments; the same for the others
     */
    private void crossed(
            double area,
            double mu,
            double mv,
            double mw,
            double quu,
            double quv,
            double quw,
            double qvv,
            double qvw,
            double qww) {
        double perMm = -1 / ow;
        double au = perMm * ou;
        double av = perMm * ov;
        // What lies above the crossing, toward the outer face; the crossing is at the depth perMm w.
        double outer = thickness * perMm * mw;
        double outerU = thickness * perMm * (quw + 0.5 * au * qww);
        double outerV = thickness * perMm * (qvw + 0.5 * av * qww);
        double outerW = 0.5 * thickness * perMm * qww;
        if (ow < 0) {
            s.volume += thickness * area - outer;
            momentU += thickness * (mu + 0.5 * ou * area) - outerU;
            momentV += thickness * (mv + 0.5 * ov * area) - outerV;
            momentW += thickness * (mw + 0.5 * ow * area) - outerW;
        } else {
            s.volume += outer;
            momentU += outerU;
            momentV += outerV;
            momentW += outerW;
        }
        // Seen in the plane, a point of the outer face lands where its way inward meets it.
        double stretch = thickness * Math.abs(perMm);
        s.area += stretch * area;
        s.areaU += stretch * (mu + au * mw);
        s.areaV += stretch * (mv + av * mw);
        s.areaUu += stretch * (quu + 2 * au * quw + au * au * qww);
        s.areaUv += stretch * (quv + au * qvw + av * quw + au * av * qww);
        s.areaVv += stretch * (qvv + 2 * av * qvw + av * av * qww);
    }
}
