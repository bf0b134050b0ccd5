package trimwright.statics;

import java.util.List;
import java.util.Optional;
import trimwright.finding.Finding;

/**
 * The righting lever over the list, at constant weight with the trim free: GZ = de*⁄dφ, e*(φ) the least over the trim of
 * n(φ, θ) · (G − B) (docs/statics.md, section 3). A positive lever brings her back from a list to starboard.
 *
 * @param equilibrium where she rests, and where the curve begins; the one to starboard where she rests on either side
 * @param rows the curve from port to starboard; lists without a stable trim are left out
 * @param summary what it comes to on the starboard side
 * @param deckEdgeUnderDeg list to starboard at which the deck edge goes under; the equilibrium's own list when it is under there;
 *     empty when it stays out as far as the curve goes, or there is no hull
 * @param topUnder the highest point of the boat and the list to starboard at which it goes under
 * @param findings what is worth telling
 */
public record RightingCurve(
        Attitude equilibrium,
        List<Row> rows,
        Summary summary,
        Optional<Double> deckEdgeUnderDeg,
        Optional<TopUnder> topUnder,
        List<Finding> findings) {

    public RightingCurve {
        rows = List.copyOf(rows);
        findings = List.copyOf(findings);
    }

    /** A list and trim in degrees. */
    public record Attitude(double heelDeg, double trimDeg) {}

    /**
     * One list.
     *
     * @param heelDeg list, positive to starboard
     * @param trimDeg the trim she takes then, positive bow up
     * @param gzMm righting lever
     * @param momentGmm weight times lever
     */
    public record Row(double heelDeg, double trimDeg, double gzMm, double momentGmm) {}

    /**
     * From the equilibrium to where the lever is zero again on the starboard side, or to where no trim is stable any more.
     *
     * @param rangeDeg how far that is
     * @param maxGzMm greatest lever
     * @param maxGzAtDeg list at which it is
     * @param areaMmRad area under the curve: how far B has to sink against G
     * @param endsWithoutTrim whether it ends because no trim is stable, with the lever still positive
     */
    public record Summary(
            double rangeDeg, double maxGzMm, double maxGzAtDeg, double areaMmRad, boolean endsWithoutTrim) {}

    /** The part that stands highest upright, and the list at which its highest point goes under. */
    public record TopUnder(String part, double heelDeg) {}

    /**
     * Afloat with the fills that the condition states.
     *
     * @param stepDeg step of the list; positive
     * @return empty when she sinks
     */
    public static Optional<RightingCurve> surfaced(Condition condition, double stepDeg) {
        return Flotation.floats(condition)
                ? Optional.of(new RightingSearch(condition, stepDeg).curve())
                : Optional.empty();
    }

    /**
     * The lever at one list, afloat with the fills that the condition states.
     *
     * @return mm; empty when she sinks or no trim is stable there
     */
    public static Optional<Double> leverMm(Condition condition, double heelDeg) {
        return Flotation.floats(condition) ? RightingSearch.leverMm(condition, heelDeg) : Optional.empty();
    }

    /** Everything under water and the tanks full; the lever is that of B above G, whatever the depth. */
    public static RightingCurve submerged(Condition condition, double stepDeg) {
        return SubmergedLevers.of(condition, stepDeg);
    }
}
