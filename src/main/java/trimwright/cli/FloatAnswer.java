package trimwright.cli;

import java.util.List;
import java.util.Optional;
import trimwright.finding.Finding;
import trimwright.plan.pool.Tolerance;
import trimwright.statics.Flotation;

/**
 * Where a boat floats.
 *
 * @param tolerance how far that may be off, where it was asked for
 */
record FloatAnswer(Flotation flotation, Optional<Tolerance> tolerance, List<Finding> findings) implements Answer {

    FloatAnswer(Flotation flotation, List<Finding> findings) {
        this(flotation, Optional.empty(), findings);
    }

    @Override
    public int exitCode() {
        return flotation.settled().isPresent() ? ExitCode.DONE : ExitCode.NO;
    }

    @Override
    public void tell(Page page) {
        FloatText.tell(flotation, page);
        tolerance.ifPresent(t -> ToleranceText.tell(t, page));
    }

    @Override
    public JsonObject json() {
        JsonObject json = FloatJson.of(flotation);
        tolerance.ifPresent(t -> json.object("tolerance", ToleranceText.json(t)));
        return json;
    }

    @Override
    public String caution() {
        return Cautions.AFLOAT;
    }
}
