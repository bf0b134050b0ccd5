package trimwright.plan;

import java.util.List;
import trimwright.boat.Zone;

/**
 * An unknown of a plan and where its lead or foam goes. A choice may fill two places alike, port and starboard, which is dearer to do in halves: a
 * builder cuts pairs.
 *
 * @param unknown the unknown
 * @param spots the places it fills, each with the same amount; empty for anything but lead and foam
 * @param gramsEach mass that one unit puts into each place
 */
record Choice(Unknown unknown, List<Spot> spots, double gramsEach) {

    /** Cost factor of a piece on one side alone where a pair would go. */
    static final double ONE_SIDE_ALONE = 1.3;

    /** One side of one zone. */
    record Spot(String zone, Zone.Use use, boolean twin) {}

    /** An unknown that is neither lead nor foam to be added. */
    static Choice plain(Unknown unknown) {
        return new Choice(unknown, List.of(), 0);
    }

    /** Grams of lead or foam that one unit adds. */
    double grams() {
        return gramsEach * spots.size();
    }
}
