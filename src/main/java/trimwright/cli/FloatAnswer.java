package trimwright.cli;

import java.util.List;
import trimwright.finding.Finding;
import trimwright.statics.Flotation;

/** Where a boat floats. */
record FloatAnswer(Flotation flotation, List<Finding> findings) implements Answer {

    @Override
    public int exitCode() {
        return flotation.settled().isPresent() ? ExitCode.DONE : ExitCode.NO;
    }

    @Override
    public void tell(Page page) {
        FloatText.tell(flotation, page);
    }

    @Override
    public JsonObject json() {
        return FloatJson.of(flotation);
    }

    @Override
    public String caution() {
        return Cautions.AFLOAT;
    }
}
