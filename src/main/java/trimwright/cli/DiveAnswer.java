package trimwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trimwright.finding.Finding;
import trimwright.statics.Condition;
import trimwright.statics.DepthRun;
import trimwright.statics.DiveRun;
import trimwright.statics.DiveStep;
import trimwright.statics.FlotationFindings;
import trimwright.statics.GramEffects;
import trimwright.statics.LeakAllowance;
import trimwright.statics.SurfaceFilm;
import trimwright.statics.SurfacingRun;
import trimwright.statics.TankSizing;
import trimwright.statics.WaterChange;

/**
 * A dive with all that a builder asks about it.
 *
 * @param run the dive
 * @param up the way up with water inside, where it was asked for
 * @param grams what a gram does
 * @param sizing how large the tank has to be; empty for a boat that has no line
 * @param leaks how much water each cylinder may take
 * @param film what the surface film can hold
 * @param waters the boat in other waters
 * @param depth what pressure and soaking do; empty when no part gives way
 */
record DiveAnswer(
        DiveRun run,
        Optional<SurfacingRun> up,
        GramEffects grams,
        Optional<TankSizing> sizing,
        List<LeakAllowance> leaks,
        SurfaceFilm film,
        List<WaterChange> waters,
        Optional<DepthRun> depth,
        List<Finding> findings)
        implements Answer {

    private static final int DEPTHS = 10;

    /**
     * Works out what belongs to a dive.
     *
     * @param deepestM end of the table of depths
     * @param findings what is known so far besides the dive itself
     */
    static DiveAnswer of(
            Condition condition, DiveRun run, Optional<SurfacingRun> up, double deepestM, List<Finding> findings) {
        DiveStep first = run.course().steps().get(0);
        Stream<Finding> dived =
                first.settled().isPresent() ? FlotationFindings.ofDived(first.flotation()).stream() : Stream.empty();
        return new DiveAnswer(
                run,
                up,
                GramEffects.of(condition.withAllTanksAt(0)),
                TankSizing.of(condition),
                LeakAllowance.of(condition),
                SurfaceFilm.of(condition, run.course()),
                WaterChange.of(condition, WaterChange.USUAL),
                DepthRun.ifPartsGiveWay(condition, deepestM, deepestM / DEPTHS),
                Stream.concat(dived, findings.stream()).toList());
    }

    @Override
    public int exitCode() {
        return run.failSafe().sinksFromFill().isPresent() ? ExitCode.NO : ExitCode.DONE;
    }

    @Override
    public void tell(Page page) {
        DiveText.tell(this, page);
    }

    @Override
    public JsonObject json() {
        return DiveJson.of(this);
    }

    @Override
    public String caution() {
        return Cautions.DIVED;
    }
}
