package trimwright.plan;

/**
 * What a plan strives for once its aims are met.
 *
 * @param firmest whether she is to stand as firm as she can; otherwise as little as possible is added
 * @param mostG the most mass that may be added; infinite for no limit
 * @param mostLeadG the most lead that may be added; infinite for no limit
 * @param mostFoamMm3 the most foam that may be added; infinite for no limit
 */
public record Goal(boolean firmest, double mostG, double mostLeadG, double mostFoamMm3) {

    /** As little as meets the aims. */
    public static final Goal LEAST_MASS =
            new Goal(false, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** As firm as an added mass allows. */
    public static Goal firmestFor(double massG) {
        return new Goal(true, massG, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** As firm as an amount of lead allows, with whatever foam carries it. */
    public static Goal firmestWithLead(double leadG) {
        return new Goal(true, Double.POSITIVE_INFINITY, leadG, Double.POSITIVE_INFINITY);
    }

    /** As firm as an amount of foam allows, with whatever lead it carries. */
    public static Goal firmestWithFoam(double foamMm3) {
        return new Goal(true, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, foamMm3);
    }
}
