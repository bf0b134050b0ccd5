package trimwright.report;

import java.util.Optional;
import trimwright.statics.DepthRun;

/** What depth does to a boat with parts that give way, in sentences. */
public final class DepthWords {

    private static final double MM_PER_FOOT = 304.8;

    private DepthWords() {}

    /** From where she no longer comes up. */
    public static String noReturn(DepthRun depth, Measure measure) {
        return depth.noReturnM()
                .map(m -> m == 0
                        ? "She sinks as soon as she is under."
                        : "From " + depth(m, measure) + " down she no longer comes up by herself.")
                .orElse("Down to " + depth(DepthRun.SEARCHED_M, measure) + " she comes up by herself.");
    }

    /** What soaking takes; empty where nothing soaks. */
    public static Optional<String> soaking(DepthRun depth, Measure measure) {
        if (!(depth.soakedG() > 0)) {
            return Optional.empty();
        }
        return Optional.of("Soaking takes " + measure.mass(depth.soakedG()) + " of lift"
                + depth.noReturnSoakedM()
                        .map(m -> m == 0
                                ? ": soaked she sinks as soon as she is under."
                                : "; soaked she no longer comes up from " + depth(m, measure) + ".")
                        .orElse("."));
    }

    /** A depth with its unit. */
    private static String depth(double valueM, Measure measure) {
        return depthNumber(valueM, measure) + " " + depthUnit(measure);
    }

    /** A depth without its unit. */
    public static String depthNumber(double valueM, Measure measure) {
        return Numbers.fixed(measure == Measure.METRIC ? valueM : 1000 * valueM / MM_PER_FOOT, 1);
    }

    /** The unit of depths: metres, or feet beside inches. */
    public static String depthUnit(Measure measure) {
        return measure == Measure.METRIC ? "m" : "ft";
    }
}
