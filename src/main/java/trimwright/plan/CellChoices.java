package trimwright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trimwright.boat.Zone;

/** The choices of the first programme: how many grams go into each free cell, alone or as a pair with its mirror image. */
final class CellChoices {

    /** Share of a cell that is kept for its pair; the rest may be filled on one side alone, against a list. */
    private static final double PAIR_SHARE = 0.75;

    private final List<RoomCell> cells;
    private final List<Choice> choices = new ArrayList<>();
    private final List<int[]> members = new ArrayList<>();
    private final PlanRequest request;

    CellChoices(List<RoomCell> cells, PlanRequest request, PlanBasis basis) {
        this.cells = cells;
        this.request = request;
        Map<String, Integer> portside = new HashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            if (!cells.get(i).twin()) {
                portside.put(place(cells.get(i)), i);
            }
        }
        Influence[] perGram = new Influence[cells.size()];
        boolean[] paired = new boolean[cells.size()];
        for (int i = 0; i < cells.size(); i++) {
            RoomCell cell = cells.get(i);
            double density = densityOf(cell);
            perGram[i] =
                    basis.perMm3(cell.box().solid(), cell.inside(), density).times(1 / density);
        }
        for (int i = 0; i < cells.size(); i++) {
            Integer port = cells.get(i).twin() ? portside.get(place(cells.get(i))) : null;
            if (port != null) {
                paired[i] = true;
                paired[port] = true;
                double most = 2 * PAIR_SHARE * Math.min(mostG(cells.get(i)), mostG(cells.get(port)));
                add(perGram[i].plus(perGram[port]).times(0.5), most, 1, port, i);
            }
        }
        for (int i = 0; i < cells.size(); i++) {
            double share = paired[i] ? 1 - PAIR_SHARE : 1;
            add(perGram[i], share * mostG(cells.get(i)), paired[i] ? Choice.ONE_SIDE_ALONE : 1, i);
        }
    }

    /** The choices and, after them, others. */
    List<Choice> with(List<Choice> others) {
        List<Choice> all = new ArrayList<>(choices);
        all.addAll(others);
        return all;
    }

    /** The choices of one use again, each beyond its room and as dear as said. */
    List<Choice> beyond(Zone.Use use, double factor, double cost) {
        List<Choice> result = new ArrayList<>();
        for (Choice choice : choices) {
            if (choice.spots().get(0).use() == use) {
                Unknown u = choice.unknown();
                result.add(new Choice(
                        new Unknown(u.name(), u.perUnit(), factor * u.most(), cost),
                        choice.spots(),
                        choice.gramsEach()));
            }
        }
        return result;
    }

    /** Volume that goes into each cell, mm³. */
    double[] amountsMm3(double[] x) {
        double[] amounts = new double[cells.size()];
        for (int k = 0; k < choices.size(); k++) {
            for (int member : members.get(k)) {
                amounts[member] += x[k] * choices.get(k).gramsEach() / densityOf(cells.get(member));
            }
        }
        return amounts;
    }

    private void add(Influence perGram, double most, double cost, int... cellsFilled) {
        List<Choice.Spot> spots = new ArrayList<>();
        for (int c : cellsFilled) {
            spots.add(new Choice.Spot(
                    cells.get(c).zone(), cells.get(c).use(), cells.get(c).twin()));
        }
        Unknown unknown = new Unknown(cells.get(cellsFilled[0]).zone(), perGram, most, cost);
        choices.add(new Choice(unknown, spots, 1.0 / cellsFilled.length));
        members.add(cellsFilled);
    }

    private double mostG(RoomCell cell) {
        return densityOf(cell) * cell.volumeMm3();
    }

    private double densityOf(RoomCell cell) {
        return (cell.use() == Zone.Use.BALLAST ? request.leadGPerCm3() : request.foamGPerCm3()) / 1000;
    }

    private static String place(RoomCell cell) {
        return cell.zone() + '\n' + cell.inside() + '\n' + cell.slice() + '\n' + cell.layer();
    }
}
