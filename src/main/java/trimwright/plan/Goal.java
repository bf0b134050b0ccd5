package trimwright.plan;

/**
 * What a plan strives for once its aims are met.
 *
 * @param firmest whether she is to stand as firm as she can; otherwise as little as possible is added
 * @param mostG the most mass that may be added; infinite for no limit
 * @param mostLeadG the most lead that may be added; infinite for no limit
 * @param mostFoamMm3 the most foam that may be added; infinite for no limit
 * @param exactly whether just the most lead, or the most foam, is to be added and no less
 */
public record Goal(boolean firmest, double mostG, double mostLeadG, double mostFoamMm3, boolean exactly) {

    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

    /** As little as meets the aims. */
    public static final Goal LEAST_MASS = new Goal(false, NO_LIMIT, NO_LIMIT, NO_LIMIT, false);

    /** As firm as an added mass allows. */
    public static Goal firmestFor(double massG) {
        return new Goal(true, massG, NO_LIMIT, NO_LIMIT, false);
    }

    /** As firm as an amount of lead makes her, with whatever foam carries it. */
    public static Goal firmestWithLead(double leadG) {
        return new Goal(true, NO_LIMIT, leadG, NO_LIMIT, true);
    }

    /** As firm as an amount of foam makes her, with whatever lead it carries. */
    public static Goal firmestWithFoam(double foamMm3) {
        return new Goal(true, NO_LIMIT, NO_LIMIT, foamMm3, true);
    }

    /** The same with less allowed where there is no room for so much. */
    Goal orLess() {
        return new Goal(firmest, mostG, mostLeadG, mostFoamMm3, false);
    }
}
