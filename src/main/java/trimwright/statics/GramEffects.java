package trimwright.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Kind;
import trimwright.boat.PaintedLine;
import trimwright.boat.Piece;
import trimwright.immersion.WaterPlane;

/**
 * What a gram does: ten grams laid on her here and there, and the heaviest lead moved by a millimetre, afloat and dived. The ten grams
 * displace nothing; each is laid at one extreme of the boat, level with her centre of gravity in the two other directions, so that a
 * row shows one thing only.
 *
 * @param rows one for each change
 */
public record GramEffects(List<Row> rows) {

    public static final double MASS_G = 10;
    public static final double MOVE_MM = 1;

    public GramEffects {
        rows = List.copyOf(rows);
    }

    /** What was changed. */
    public enum Change {
        WEIGHT_AT_BOW,
        WEIGHT_AT_STERN,
        WEIGHT_TO_PORT,
        WEIGHT_LOW,
        WEIGHT_HIGH,
        LEAD_FORWARD,
        LEAD_TO_PORT,
        LEAD_UP
    }

    /**
     * One change and what it does.
     *
     * @param change what was changed
     * @param part the lead that was moved; empty for a weight laid on her
     * @param afloat what it does with the fills at hand; empty when she sinks before or after
     * @param dived what it does with everything under and the tanks full
     */
    public record Row(Change change, Optional<String> part, Optional<GramEffect> afloat, GramEffect dived) {}

    /** For a boat with the fills that she states. */
    public static GramEffects of(Condition condition) {
        return new Run(condition).all();
    }

    private static final class Run {

        private final Condition condition;
        private final Optional<Equilibrium> settled;
        private final Submerged submerged;
        private final double bowXMm;
        private final double sternXMm;
        private final List<Row> rows = new ArrayList<>();

        Run(Condition condition) {
            this.condition = condition;
            settled = settle(condition, Balance.upright(condition));
            submerged = Submerged.of(condition);
            Optional<PaintedLine> line = condition.boat().paintedLine();
            bowXMm = line.map(l -> l.foremostMm().getX()).orElseGet(() -> condition.topMm(Vector3D.PLUS_I));
            sternXMm = line.map(l -> l.aftmostMm().getX()).orElseGet(() -> condition.bottomMm(Vector3D.PLUS_I));
        }

        GramEffects all() {
            Vector3D g = condition.centreOfGravityMm(Balance.upright(condition));
            double bow = condition.topMm(Vector3D.PLUS_I);
            double stern = condition.bottomMm(Vector3D.PLUS_I);
            double port = condition.topMm(Vector3D.PLUS_J);
            double high = condition.topMm(Vector3D.PLUS_K);
            double low = condition.bottomMm(Vector3D.PLUS_K);
            lay(Change.WEIGHT_AT_BOW, new Vector3D(bow, g.getY(), g.getZ()));
            lay(Change.WEIGHT_AT_STERN, new Vector3D(stern, g.getY(), g.getZ()));
            lay(Change.WEIGHT_TO_PORT, new Vector3D(g.getX(), port, g.getZ()));
            lay(Change.WEIGHT_LOW, new Vector3D(g.getX(), g.getY(), low));
            lay(Change.WEIGHT_HIGH, new Vector3D(g.getX(), g.getY(), high));
            heaviestLead().ifPresent(lead -> {
                move(Change.LEAD_FORWARD, lead, Vector3D.PLUS_I);
                move(Change.LEAD_TO_PORT, lead, Vector3D.PLUS_J);
                move(Change.LEAD_UP, lead, Vector3D.PLUS_K);
            });
            return new GramEffects(rows);
        }

        private void lay(Change change, Vector3D place) {
            add(change, Optional.empty(), condition.carrying(MASS_G, place));
        }

        private void move(Change change, Piece lead, Vector3D way) {
            add(change, Optional.of(lead.id()), condition.shifted(way.scalarMultiply(lead.massG() * MOVE_MM)));
        }

        private void add(Change change, Optional<String> part, Condition changed) {
            Optional<GramEffect> afloat = settled.flatMap(before ->
                    settle(changed, before.plane()).map(after -> GramEffect.afloat(before, after, bowXMm, sternXMm)));
            rows.add(new Row(change, part, afloat, GramEffect.dived(submerged, Submerged.of(changed))));
        }

        private Optional<Piece> heaviestLead() {
            return condition.pieces().stream()
                    .filter(piece -> piece.part().kind() == Kind.BALLAST)
                    .max(Comparator.comparingDouble(Piece::massG));
        }

        private static Optional<Equilibrium> settle(Condition condition, WaterPlane start) {
            return Flotation.floats(condition) ? Optional.of(Balance.settle(condition, start)) : Optional.empty();
        }
    }
}
