package trimwright.statics;

/**
 * What a small change does to her, found by settling her again.
 *
 * @param lineAtBowMm how much higher the water stands at the fore end of the line
 * @param lineAtSternMm the same at the after end
 * @param heelDeg change of list, positive to starboard
 * @param trimDeg change of trim, positive bow up
 * @param firmnessMm change of what rights her: transverse GM afloat, BG dived
 */
public record GramEffect(double lineAtBowMm, double lineAtSternMm, double heelDeg, double trimDeg, double firmnessMm) {

    /** Between two attitudes afloat, at two stations of the boat along x. */
    static GramEffect afloat(Equilibrium before, Equilibrium after, double bowXMm, double sternXMm) {
        return new GramEffect(
                lineAt(after, bowXMm) - lineAt(before, bowXMm),
                lineAt(after, sternXMm) - lineAt(before, sternXMm),
                after.heelDeg() - before.heelDeg(),
                after.trimDeg() - before.trimDeg(),
                after.gmTransverseMm() - before.gmTransverseMm());
    }

    /** Between two attitudes under water, where there is no line. */
    static GramEffect dived(Submerged before, Submerged after) {
        return new GramEffect(
                0,
                0,
                after.heelDeg() - before.heelDeg(),
                after.trimDeg() - before.trimDeg(),
                after.bgMm() - before.bgMm());
    }

    /** Height of the water on the centreline along the boat's z axis. */
    private static double lineAt(Equilibrium e, double xMm) {
        return (e.plane().heightMm() - e.plane().up().getX() * xMm)
                / e.plane().up().getZ();
    }
}
