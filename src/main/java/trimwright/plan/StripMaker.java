package trimwright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.BoxShape;
import trimwright.boat.Zone;

/**
 * Turns amounts spread over cells into few strips that can be cut: in each zone, side and side of the painted line, one bar (or two where one does
 * not find room) of a cross-section that is free along its whole run. Lead takes the lowest layers, foam the highest.
 */
final class StripMaker {

    /** A run must hold this much more than is to go into it, so that the strip can still be lengthened and moved. */
    private static final double SPARE = 1.25;
    /** How far the free cross-section may shrink along a run. */
    private static final double LEAST_SECTION_SHARE = 0.75;

    private static final int MOST_STRIPS = 3;

    private StripMaker() {}

    /**
     * @param cells all free cells
     * @param amountsMm3 how much of each is to be filled
     * @param style how finely
     */
    static List<Strip> strips(
            List<RoomCell> cells, double[] amountsMm3, double leadGPerMm3, double foamGPerMm3, Style style) {
        Map<String, List<Integer>> groups = groups(cells, amountsMm3, style.apart());
        List<Strip> strips = new ArrayList<>();
        for (List<Integer> group : groups.values()) {
            List<RoomCell> own = new ArrayList<>(group.stream().map(cells::get).toList());
            double amount = 0;
            double moment = 0;
            for (int i : group) {
                amount += amountsMm3[i];
                moment += amountsMm3[i]
                        * 0.5
                        * (cells.get(i).box().fromMm().getX()
                                + cells.get(i).box().toMm().getX());
            }
            double density = own.get(0).use() == Zone.Use.BALLAST ? leadGPerMm3 : foamGPerMm3;
            if (amount > 1e-6 * own.stream().mapToDouble(RoomCell::volumeMm3).sum()) {
                addStrips(strips, own, amount, moment / amount, density);
            }
        }
        for (Zone.Use use : Zone.Use.values()) {
            double all = strips.stream()
                    .filter(s -> s.use == use)
                    .mapToDouble(Strip::volumeMm3)
                    .sum();
            strips.removeIf(s -> s.use == use && s.volumeMm3() < style.sliverShare() * all);
        }
        return strips;
    }

    /**
     * How finely amounts are turned into strips.
     *
     * @param sliverShare share of all lead, or all foam, below which a strip is left out; what it would have held goes to the others when
     *     sizes are solved again
     * @param apart whether what lies apart in a zone stays apart; otherwise one strip takes it all, in the middle
     */
    record Style(double sliverShare, boolean apart) {}

    private static Map<String, List<Integer>> groups(List<RoomCell> cells, double[] amountsMm3, boolean apart) {
        Map<String, List<Integer>> groups = new TreeMap<>();
        for (int i = 0; i < cells.size(); i++) {
            RoomCell c = cells.get(i);
            int cluster = 0;
            if (apart) {
                for (int slice = 1; slice <= c.slice(); slice++) {
                    cluster +=
                            isEmpty(cells, amountsMm3, c, slice - 1) && !isEmpty(cells, amountsMm3, c, slice) ? 1 : 0;
                }
            }
            groups.computeIfAbsent(
                            c.zone() + '\n' + c.inside() + '\n' + c.twin() + '\n' + c.belowLine() + '\n' + cluster,
                            k -> new ArrayList<>())
                    .add(i);
        }
        return groups;
    }

    private static boolean isEmpty(List<RoomCell> cells, double[] amountsMm3, RoomCell like, int slice) {
        for (int i = 0; i < cells.size(); i++) {
            RoomCell c = cells.get(i);
            if (c.slice() == slice
                    && c.twin() == like.twin()
                    && c.belowLine() == like.belowLine()
                    && c.zone().equals(like.zone())
                    && c.inside().equals(like.inside())
                    && amountsMm3[i] > 1e-6 * c.volumeMm3()) {
                return false;
            }
        }
        return true;
    }

    private static void addStrips(
            List<Strip> strips, List<RoomCell> cells, double amount, double centreX, double density) {
        double left = amount;
        for (int k = 0; k < MOST_STRIPS && left > 0 && !cells.isEmpty(); k++) {
            BoxShape run = bestRun(cells, left, centreX);
            Strip strip = new Strip(cells.get(0), run, density, 0, centreX);
            double own = Math.min(left, strip.capacityMm3());
            strip.put(own, centreX);
            strips.add(strip);
            left -= own;
            cells.removeIf(c -> c.box().fromMm().getX() < run.toMm().getX()
                    && c.box().toMm().getX() > run.fromMm().getX()
                    && c.box().fromMm().getZ() < run.toMm().getZ()
                    && c.box().toMm().getZ() > run.fromMm().getZ());
            if (left < 1e-9 * amount) {
                break;
            }
        }
    }

    /** The run of fewest layers that holds the amount with some to spare; otherwise the one that holds most. */
    private static BoxShape bestRun(List<RoomCell> cells, double amount, double centreX) {
        boolean lead = cells.get(0).use() == Zone.Use.BALLAST;
        List<Integer> layers =
                cells.stream().map(RoomCell::layer).distinct().sorted().toList();
        BoxShape best = null;
        double bestVolume = 0;
        for (int n = 1; n <= layers.size(); n++) {
            List<Integer> used = lead ? layers.subList(0, n) : layers.subList(layers.size() - n, layers.size());
            BoxShape run = run(cells, used, centreX);
            if (run == null) {
                continue;
            }
            Vector3D size = run.toMm().subtract(run.fromMm());
            double volume = size.getX() * size.getY() * size.getZ();
            if (volume >= SPARE * amount) {
                return run;
            }
            if (volume > bestVolume) {
                best = run;
                bestVolume = volume;
            }
        }
        return best != null ? best : cells.get(0).box();
    }

    /** The longest run about a place whose cross-section stays free, over the layers given. */
    private static BoxShape run(List<RoomCell> cells, List<Integer> layers, double centreX) {
        Map<Integer, BoxShape> bySlice = new TreeMap<>();
        for (RoomCell c : cells) {
            if (layers.contains(c.layer())) {
                bySlice.merge(c.slice(), c.box(), StripMaker::stacked);
            }
        }
        List<Map.Entry<Integer, BoxShape>> slices =
                bySlice.entrySet().stream().filter(e -> e.getValue() != NO_BOX).toList();
        BoxShape best = null;
        double bestWorth = 0;
        // Every slice is tried as the seed; runs nearer the place wanted are worth more.
        for (int seed = 0; seed < slices.size(); seed++) {
            BoxShape run = grown(slices, seed);
            double off = Math.max(
                    0,
                    Math.max(run.fromMm().getX() - centreX, centreX - run.toMm().getX()));
            Vector3D size = run.toMm().subtract(run.fromMm());
            double worth = size.getX() * size.getY() * size.getZ() / (1 + off / size.getX());
            if (worth > bestWorth) {
                bestWorth = worth;
                best = run;
            }
        }
        return best;
    }

    private static final BoxShape NO_BOX = new BoxShape(Vector3D.ZERO, Vector3D.ZERO);

    /** Two boxes of one slice, one on the other, as one; none when they do not touch. */
    private static BoxShape stacked(BoxShape a, BoxShape b) {
        if (a == NO_BOX || b == NO_BOX) {
            return NO_BOX;
        }
        BoxShape low = a.fromMm().getZ() < b.fromMm().getZ() ? a : b;
        BoxShape high = low == a ? b : a;
        double y0 = Math.max(a.fromMm().getY(), b.fromMm().getY());
        double y1 = Math.min(a.toMm().getY(), b.toMm().getY());
        if (high.fromMm().getZ() - low.toMm().getZ() > 1e-6 || !(y1 > y0)) {
            return NO_BOX;
        }
        return new BoxShape(
                new Vector3D(a.fromMm().getX(), y0, low.fromMm().getZ()),
                new Vector3D(a.toMm().getX(), y1, high.toMm().getZ()));
    }

    private static BoxShape grown(List<Map.Entry<Integer, BoxShape>> slices, int seed) {
        BoxShape run = slices.get(seed).getValue();
        double least = LEAST_SECTION_SHARE * section(run);
        int first = seed;
        int last = seed;
        boolean grew = true;
        while (grew) {
            grew = false;
            if (last + 1 < slices.size()
                    && slices.get(last + 1).getKey() == slices.get(last).getKey() + 1) {
                BoxShape longer = joined(run, slices.get(last + 1).getValue());
                if (section(longer) >= least) {
                    run = longer;
                    last++;
                    grew = true;
                }
            }
            if (first > 0 && slices.get(first - 1).getKey() == slices.get(first).getKey() - 1) {
                BoxShape longer = joined(run, slices.get(first - 1).getValue());
                if (section(longer) >= least) {
                    run = longer;
                    first--;
                    grew = true;
                }
            }
        }
        return run;
    }

    private static double section(BoxShape box) {
        Vector3D size = box.toMm().subtract(box.fromMm());
        return size.getY() <= 0 || size.getZ() <= 0 ? 0 : size.getY() * size.getZ();
    }

    /** The box over both lengths whose cross-section both have. */
    private static BoxShape joined(BoxShape a, BoxShape b) {
        return new BoxShape(
                new Vector3D(
                        Math.min(a.fromMm().getX(), b.fromMm().getX()),
                        Math.max(a.fromMm().getY(), b.fromMm().getY()),
                        Math.max(a.fromMm().getZ(), b.fromMm().getZ())),
                new Vector3D(
                        Math.max(a.toMm().getX(), b.toMm().getX()),
                        Math.min(a.toMm().getY(), b.toMm().getY()),
                        Math.min(a.toMm().getZ(), b.toMm().getZ())));
    }

    /** The order in which places are rounded: those that turn her most per mm first. */
    static final Comparator<Strip> HEAVIEST_FIRST = Comparator.comparingDouble(
                    (Strip s) -> -Math.abs(s.massG() - s.volumeMm3() / 1000))
            .thenComparing(s -> s.zone)
            .thenComparing(s -> s.twin);
}
