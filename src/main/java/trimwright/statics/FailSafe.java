package trimwright.statics;

import java.util.Optional;

/**
 * What brings her back when nobody commands her any more: the buoyancy that is left at the end of the dive.
 *
 * @param residualG buoyancy of everything less weight at the end of the dive; negative: she goes down
 * @param staysOut the highest part that stands above the water there; empty when she sinks
 * @param sinksFromFill water in the tanks, as a share of their volume, from which she sinks; empty when she does not
 */
public record FailSafe(double residualG, Optional<Standing> staysOut, Optional<Double> sinksFromFill) {}
