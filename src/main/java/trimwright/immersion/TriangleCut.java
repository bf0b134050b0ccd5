package trimwright.immersion;

import trimwright.mesh.Bounds;

/**
 * The kernel: what one triangle of a closed surface adds below the plane. All coordinates are relative to the reference of the
 * sums, which lies on the plane, so that the cap in the plane adds nothing and is never built (docs/statics.md, section 1).
 */
final class TriangleCut {

    /** Share of the coordinates' size that rounding may shift a height by; it is less than half of this. */
    static final double ROUNDING = 2e-15;

    private TriangleCut() {}

    /**
     * How far the plane is lowered before it cuts a mesh within these bounds, mm. A face lying in the plane is dry then, whichever way it
     * leans; what this takes from a volume is no more than what rounding does.
     */
    static double loweringMm(Bounds b) {
        double away = Math.abs(b.centreX()) + Math.abs(b.centreY()) + Math.abs(b.centreZ());
        return ROUNDING * (away + b.diagonal());
    }

    /**
     * Whether any of three heights is negative; none may be -0. Their signs are read as bits: a processor that has to guess at each
     * comparison is wrong too often near the plane, and that is dearer than the rest.
     */
    static boolean anyBelow(double a, double b, double c) {
        return (Double.doubleToRawLongBits(a) | Double.doubleToRawLongBits(b) | Double.doubleToRawLongBits(c)) < 0;
    }

    /** Whether all of three heights are negative; none may be -0. */
    static boolean allBelow(double a, double b, double c) {
        return (Double.doubleToRawLongBits(a) & Double.doubleToRawLongBits(b) & Double.doubleToRawLongBits(c)) < 0;
    }

    /** Adds a triangle that is wholly below. */
    static void whole(
            Immersion s,
            double ax,
            double ay,
            double az,
            double bx,
            double by,
            double bz,
            double cx,
            double cy,
            double cz) {
        double six = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
        double w = six * (1.0 / 24);
        s.volume += six * (1.0 / 6);
        s.mx += w * (ax + bx + cx);
        s.my += w * (ay + by + cy);
        s.mz += w * (az + bz + cz);
    }

    /**
     * Adds a triangle whatever way it lies.
     *
     * @param da height of a above the plane; a vertex is immersed when it is strictly below
     */
    static void any(
            Immersion s,
            double ax,
            double ay,
            double az,
            double da,
            double bx,
            double by,
            double bz,
            double db,
            double cx,
            double cy,
            double cz,
            double dc) {
        int immersed = (da < 0 ? 1 : 0) | (db < 0 ? 2 : 0) | (dc < 0 ? 4 : 0);
        switch (immersed) {
            case 0:
                return;
            case 1:
                tip(s, ax, ay, az, da, bx, by, bz, db, cx, cy, cz, dc);
                return;
            case 2:
                tip(s, bx, by, bz, db, cx, cy, cz, dc, ax, ay, az, da);
                return;
            case 3:
                base(s, cx, cy, cz, dc, ax, ay, az, da, bx, by, bz, db);
                return;
            case 4:
                tip(s, cx, cy, cz, dc, ax, ay, az, da, bx, by, bz, db);
                return;
            case 5:
                base(s, bx, by, bz, db, cx, cy, cz, dc, ax, ay, az, da);
                return;
            case 6:
                base(s, ax, ay, az, da, bx, by, bz, db, cx, cy, cz, dc);
                return;
            default:
                whole(s, ax, ay, az, bx, by, bz, cx, cy, cz);
        }
    }

    /** Only a is below. Cut points run from the immersed to the dry end, so that neighbours get the same bits. */
    private static void tip(
            Immersion s,
            double ax,
            double ay,
            double az,
            double da,
            double bx,
            double by,
            double bz,
            double db,
            double cx,
            double cy,
            double cz,
            double dc) {
        double tb = da / (da - db);
        double px = ax + tb * (bx - ax);
        double py = ay + tb * (by - ay);
        double pz = az + tb * (bz - az);
        double tc = da / (da - dc);
        double qx = ax + tc * (cx - ax);
        double qy = ay + tc * (cy - ay);
        double qz = az + tc * (cz - az);
        whole(s, ax, ay, az, px, py, pz, qx, qy, qz);
        waterlineSegment(s, qx, qy, qz, px, py, pz);
    }

    /** Only a is dry. */
    private static void base(
            Immersion s,
            double ax,
            double ay,
            double az,
            double da,
            double bx,
            double by,
            double bz,
            double db,
            double cx,
            double cy,
            double cz,
            double dc) {
        double tb = db / (db - da);
        double px = bx + tb * (ax - bx);
        double py = by + tb * (ay - by);
        double pz = bz + tb * (az - bz);
        double tc = dc / (dc - da);
        double qx = cx + tc * (ax - cx);
        double qy = cy + tc * (ay - cy);
        double qz = cz + tc * (az - cz);
        whole(s, px, py, pz, bx, by, bz, cx, cy, cz);
        whole(s, px, py, pz, cx, cy, cz, qx, qy, qz);
        waterlineSegment(s, px, py, pz, qx, qy, qz);
    }

    /** Adds a segment of the waterline, run so that the waterplane lies to its left seen from above. */
    private static void waterlineSegment(
            Immersion s, double px, double py, double pz, double qx, double qy, double qz) {
        double u1 = s.ux * px + s.uy * py + s.uz * pz;
        double v1 = s.vx * px + s.vy * py + s.vz * pz;
        double u2 = s.ux * qx + s.uy * qy + s.uz * qz;
        double v2 = s.vx * qx + s.vy * qy + s.vz * qz;
        s.waterline(1, u1, v1, u2, v2);
    }
}
