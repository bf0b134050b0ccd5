package trimwright.report.raster;

/**
 * Lambert's light on flat faces: from above, from the left, from behind the viewer; with enough of it everywhere. A translucent
 * face seen at a slant can be denser, as a pane of glass is, which shows the form of what can be looked into.
 */
final class Light {

    private static final double FROM_LEFT = -0.3906;
    private static final double FROM_ABOVE = 0.7289;
    private static final double FROM_VIEWER = 0.5623;
    private static final double EVERYWHERE = 0.66;

    private Light() {}

    /**
     * The tint of a face in this light.
     *
     * @param p corners in pixels, y down, depth away from the viewer
     * @param a where the first corner starts, and so on
     * @param denser share of the light through the face that is lost when it is seen edge-on, 0…1
     */
    static int on(float[] p, int a, int b, int c, int tint, double denser) {
        double ux = p[b] - p[a];
        double uy = p[b + 1] - p[a + 1];
        double uz = p[b + 2] - p[a + 2];
        double vx = p[c] - p[a];
        double vy = p[c + 1] - p[a + 1];
        double vz = p[c + 2] - p[a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        if (length == 0) {
            return tint;
        }
        // The side that faces the viewer is the one that is seen.
        double facing = nz > 0 ? -1 : 1;
        double lit = facing * (FROM_LEFT * nx - FROM_ABOVE * ny - FROM_VIEWER * nz) / length;
        double slant = 1 - Math.abs(nz) / length;
        double alpha = tint >>> 24;
        double dense = alpha + (255 - alpha) * denser * slant * slant;
        return shaded(tint, EVERYWHERE + (1 - EVERYWHERE) * Math.max(0, lit)) | (int) (dense + 0.5) << 24;
    }

    private static int shaded(int argb, double share) {
        int red = (int) (((argb >> 16) & 0xff) * share + 0.5);
        int green = (int) (((argb >> 8) & 0xff) * share + 0.5);
        int blue = (int) ((argb & 0xff) * share + 0.5);
        return red << 16 | green << 8 | blue;
    }
}
