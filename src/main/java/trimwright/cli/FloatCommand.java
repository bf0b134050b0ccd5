package trimwright.cli;

import java.util.List;
import java.util.stream.Stream;
import trimwright.file.LoadedBoat;
import trimwright.finding.Finding;
import trimwright.statics.Flotation;
import trimwright.statics.FlotationFindings;

/** Where she floats. */
final class FloatCommand extends BoatCommand {

    FloatCommand() {
        super(
                "float",
                "Says where the boat floats: draughts, list and trim against her painted line, how firmly she stands,"
                        + " and in which other attitudes she could rest.",
                "Examples:",
                "  trimwright float heron.boat.json",
                "  trimwright float heron.boat.json --water sea --fill mbt=0.5",
                "  trimwright float heron.boat.json --json",
                "",
                Cautions.HELP);
    }

    @Override
    Answer answer() {
        LoadedBoat loaded = load();
        Flotation flotation = Flotation.of(asToldTo(loaded));
        List<Finding> findings = Stream.concat(FlotationFindings.of(flotation).stream(), loaded.findings().stream())
                .toList();
        return new Floated(flotation, findings);
    }

    private record Floated(Flotation flotation, List<Finding> findings) implements Answer {

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
}
