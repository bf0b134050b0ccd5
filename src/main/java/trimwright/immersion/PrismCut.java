package trimwright.immersion;

/**
 * Adds the prisms of a thin shell, each cut by the plane. A prism stands between a triangle abc and its copy moved inward by o, the
 * thickness along the normal; its faces are the two triangles and a parallelogram over each edge.
 *
 * <p>Everything is reckoned along the plane's own axes: u ahead, v to port, w up, from the reference of the sums. Of each face the share
 * below the plane and its centroid are found in the face's own coordinates x, y (0…1 along two of its edges), which the heights of its corners
 * give alone. The volume is the sum of cones over those shares from the point of the plane straight below a: none is larger
 * than the prism is, so nothing is lost in adding them up, and the cap in the plane adds nothing (docs/statics.md, section 1).
 */
final class PrismCut {

    private final Immersion s;
    private final double thickness;

    /** First moment of the volume along the plane's axes, about the reference. */
    private double momentU;

    private double momentV;
    private double momentW;

    // Of the face at hand: the share below the plane and its first moments in x and y, and where the plane cuts it.
    private double share;
    private double shareX;
    private double shareY;
    private boolean isCut;
    private double leaveX;
    private double leaveY;
    private double enterX;
    private double enterY;

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

    /** Adds the prism over one triangle, from the places of its corners along the plane's axes. */
    void add(double au, double av, double aw, double bu, double bv, double bw, double cu, double cv, double cw) {
        double ub = bu - au;
        double vb = bv - av;
        double wb = bw - aw;
        double uc = cu - au;
        double vc = cv - av;
        double wc = cw - aw;
        double su = vb * wc - wb * vc;
        double sv = wb * uc - ub * wc;
        double sw = ub * vc - vb * uc;
        double twice = Math.sqrt(su * su + sv * sv + sw * sw);
        if (twice == 0) {
            return;
        }
        double inward = -thickness / twice;
        double ou = inward * su;
        double ov = inward * sv;
        double ow = inward * sw;
        double lowest = Math.min(aw, Math.min(bw, cw)) + Math.min(0, ow);
        if (lowest >= 0) {
            return;
        }
        double volume = 0.5 * thickness * twice;
        double highest = Math.max(aw, Math.max(bw, cw)) + Math.max(0, ow);
        if (highest < 0) {
            s.volume += volume;
            momentU += volume * ((au + bu + cu) * (1.0 / 3) + 0.5 * ou);
            momentV += volume * ((av + bv + cv) * (1.0 / 3) + 0.5 * ov);
            momentW += volume * ((aw + bw + cw) * (1.0 / 3) + 0.5 * ow);
            return;
        }
        cut(au, av, aw, ub, vb, bw, uc, vc, cw, ou, ov, ow, volume, sw);
    }

    /** @param sw part along w of the vector product of the two edges that meet in a */
    private void cut(
            double au,
            double av,
            double aw,
            double ub,
            double vb,
            double bw,
            double uc,
            double vc,
            double cw,
            double ou,
            double ov,
            double ow,
            double volume,
            double sw) {
        double dw = aw + ow;
        double ew = bw + ow;
        double fw = cw + ow;
        // Six times the cones over whole faces: outer and inner triangle, the walls over ab and ac.
        double outer = aw * sw;
        double overAb = 2 * aw * (ou * vb - ov * ub);
        double overAc = 2 * aw * (ou * vc - ov * uc);
        double immersed = 0;
        // The moment about the apex, in parts along ab, ac and o.
        double alongAb = 0;
        double alongAc = 0;
        double alongO = 0;

        if (triangle(aw, bw, cw)) {
            immersed += outer * share;
            alongAb += outer * shareX;
            alongAc += outer * shareY;
            waterline(1, au, av, ub, vb, uc, vc);
        }
        if (triangle(dw, ew, fw)) {
            double inner = 2 * volume - outer;
            immersed += inner * share;
            alongAb += inner * shareX;
            alongAc += inner * shareY;
            alongO += inner * share;
            waterline(-1, au + ou, av + ov, ub, vb, uc, vc);
        }
        if (parallelogram(aw, bw, ew, dw)) {
            immersed += overAb * share;
            alongAb += overAb * shareX;
            alongO += overAb * shareY;
            waterline(-1, au, av, ub, vb, ou, ov);
        }
        if (parallelogram(bw, cw, fw, ew)) {
            double overBc = overAc - overAb + 4 * volume;
            immersed += overBc * share;
            alongAb += overBc * (share - shareX);
            alongAc += overBc * shareX;
            alongO += overBc * shareY;
            waterline(-1, au + ub, av + vb, uc - ub, vc - vb, ou, ov);
        }
        if (parallelogram(aw, cw, fw, dw)) {
            immersed -= overAc * share;
            alongAc -= overAc * shareX;
            alongO -= overAc * shareY;
            waterline(1, au, av, uc, vc, ou, ov);
        }
        double v = immersed * (1.0 / 6);
        s.volume += v;
        // The centroid of a cone lies three quarters of the way from its apex to that of its base.
        momentU += v * au + (alongAb * ub + alongAc * uc + alongO * ou) * (1.0 / 8);
        momentV += v * av + (alongAb * vb + alongAc * vc + alongO * ov) * (1.0 / 8);
        momentW += (immersed * aw + alongAb * (bw - aw) + alongAc * (cw - aw) + alongO * ow) * (1.0 / 8);
    }

    /** Adds the cut of the face at hand, which begins at a place and runs along two edges, to the outline of the waterplane. */
    private void waterline(
            double sense, double u, double v, double uAlongX, double vAlongX, double uAlongY, double vAlongY) {
        if (isCut) {
            s.waterline(
                    sense,
                    u + enterX * uAlongX + enterY * uAlongY,
                    v + enterX * vAlongX + enterY * vAlongY,
                    u + leaveX * uAlongX + leaveY * uAlongY,
                    v + leaveX * vAlongX + leaveY * vAlongY);
        }
    }

    /** Clips the triangle (0, 0), (1, 0), (0, 1) from the heights of its corners; false when nothing of it is below. */
    private boolean triangle(double h0, double h1, double h2) {
        if (h0 >= 0 && h1 >= 0 && h2 >= 0) {
            return false;
        }
        if (h0 < 0 && h1 < 0 && h2 < 0) {
            wholeFace(1.0 / 3);
            return true;
        }
        begin();
        side(0, 0, h0, 1, 0, h1);
        side(1, 0, h1, 0, 1, h2);
        side(0, 1, h2, 0, 0, h0);
        end(1);
        return true;
    }

    /** The same for the parallelogram (0, 0), (1, 0), (1, 1), (0, 1). */
    private boolean parallelogram(double h00, double h10, double h11, double h01) {
        if (h00 >= 0 && h10 >= 0 && h11 >= 0 && h01 >= 0) {
            return false;
        }
        if (h00 < 0 && h10 < 0 && h11 < 0 && h01 < 0) {
            wholeFace(0.5);
            return true;
        }
        begin();
        side(0, 0, h00, 1, 0, h10);
        side(1, 0, h10, 1, 1, h11);
        side(1, 1, h11, 0, 1, h01);
        side(0, 1, h01, 0, 0, h00);
        end(0.5);
        return true;
    }

    private void wholeFace(double centroid) {
        share = 1;
        shareX = centroid;
        shareY = centroid;
        isCut = false;
    }

    private void begin() {
        share = 0;
        shareX = 0;
        shareY = 0;
    }

    /** What of the side from one corner to the next lies below; cut points run from the immersed to the dry end. */
    private void side(double xa, double ya, double ha, double xb, double yb, double hb) {
        if (ha < 0) {
            if (hb < 0) {
                piece(xa, ya, xb, yb);
            } else {
                double t = ha / (ha - hb);
                leaveX = xa + t * (xb - xa);
                leaveY = ya + t * (yb - ya);
                piece(xa, ya, leaveX, leaveY);
            }
        } else if (hb < 0) {
            double t = hb / (hb - ha);
            enterX = xb + t * (xa - xb);
            enterY = yb + t * (ya - yb);
            piece(enterX, enterY, xb, yb);
        }
    }

    /** Twice the area left of a piece of the border as seen from the corner (0, 0), and six times its moments. */
    private void piece(double xa, double ya, double xb, double yb) {
        double cross = xa * yb - xb * ya;
        share += cross;
        shareX += cross * (xa + xb);
        shareY += cross * (ya + yb);
    }

    /** @param inverse one over twice the area of the face */
    private void end(double inverse) {
        piece(leaveX, leaveY, enterX, enterY);
        isCut = true;
        share *= inverse;
        shareX *= inverse * (1.0 / 3);
        shareY *= inverse * (1.0 / 3);
    }
}
