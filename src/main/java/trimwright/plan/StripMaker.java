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

    /** What a spare strip should have room for, as a share of what goes into its zone. */
    private static final double SPARE_SHARE = 0.2;

    /** Sides of a cross-section are rounded to this, finer where they are short. */
    private static final double COARSE_STEP_MM = 0.5;

    private static final double FINE_STEP_MM = 0.1;
    private static final double THIN_MM = 10;

    private StripMaker() {}

    /**
     * @param cells all free cells
     * @param amountsMm3 how much of each is to be filled
     * @param middleZMm height from which lead should be far down and foam far up
     * @param style how finely
     */
    static List<Strip> strips(
            List<RoomCell> cells,
            double[] amountsMm3,
            double leadGPerMm3,
            double foamGPerMm3,
            double middleZMm,
            Style style) {
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
                addStrips(strips, own, new Wish(amount, moment / amount, middleZMm), density, style);
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
     * @param spare whether each strip gets a second one beside it, of no length yet
     * @param most how many strips a zone may hold on each side, below the line and above it
     */
    record Style(double sliverShare, boolean apart, boolean spare, int most) {}

    /** How much is to lie where: about a place along the boat, as far from a height as can be. */
    private record Wish(double amountMm3, double centreXMm, double middleZMm) {

        Wish left(double amount) {
            return new Wish(amount, centreXMm, middleZMm);
        }

        /** What a run is worth: volume, as far as it is wanted, times its distance from the middle; less where it lies away. */
        double worth(BoxShape run) {
            double off = Math.max(
                    0,
                    Math.max(
                            run.fromMm().getX() - centreXMm,
                            centreXMm - run.toMm().getX()));
            Vector3D size = run.toMm().subtract(run.fromMm());
            double volume = Math.min(SPARE * amountMm3, size.getX() * size.getY() * size.getZ());
            double far = Math.abs(0.5 * (run.fromMm().getZ() + run.toMm().getZ()) - middleZMm);
            return volume * far / (1 + off / size.getX());
        }
    }

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

    private static void addStrips(List<Strip> strips, List<RoomCell> cells, Wish wish, double density, Style style) {
        double amount = wish.amountMm3();
        double centreX = wish.centreXMm();
        double left = amount;
        int fewest = style.spare() ? 2 : 1;
        for (int k = 0; k < style.most() && (left > 0 || k < fewest) && !cells.isEmpty(); k++) {
            BoxShape run = cuttable(
                    bestRun(cells, wish.left(Math.max(left, SPARE_SHARE * amount))),
                    cells.get(0).use());
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
                left = 0;
            }
        }
    }

    /** The run with its cross-section rounded down to what can be measured; lead stays on the bottom of it, foam under its top. */
    private static BoxShape cuttable(BoxShape run, Zone.Use use) {
        Vector3D size = run.toMm().subtract(run.fromMm());
        double width = rounded(size.getY());
        double height = rounded(size.getZ());
        double middle = 0.5 * (run.fromMm().getY() + run.toMm().getY());
        double bottom =
                use == Zone.Use.BALLAST ? run.fromMm().getZ() : run.toMm().getZ() - height;
        return new BoxShape(
                new Vector3D(run.fromMm().getX(), middle - width / 2, bottom),
                new Vector3D(run.toMm().getX(), middle + width / 2, bottom + height));
    }

    private static double rounded(double sizeMm) {
        double step = sizeMm < THIN_MM ? FINE_STEP_MM : COARSE_STEP_MM;
        return Math.max(FINE_STEP_MM, Math.floor(sizeMm / step + 1e-9) * step);
    }

    /** The run of fewest layers that holds the amount with some to spare; otherwise the one that holds most. */
    private static BoxShape bestRun(List<RoomCell> cells, Wish wish) {
        boolean lead = cells.get(0).use() == Zone.Use.BALLAST;
        List<Integer> layers =
                cells.stream().map(RoomCell::layer).distinct().sorted().toList();
        BoxShape best = null;
        double bestVolume = 0;
        for (int n = 1; n <= layers.size(); n++) {
            List<Integer> used = lead ? layers.subList(0, n) : layers.subList(layers.size() - n, layers.size());
            BoxShape run = run(cells, used, wish);
            if (run == null) {
                continue;
            }
            Vector3D size = run.toMm().subtract(run.fromMm());
            double volume = size.getX() * size.getY() * size.getZ();
            if (volume >= SPARE * wish.amountMm3()) {
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
    private static BoxShape run(List<RoomCell> cells, List<Integer> layers, Wish wish) {
        Map<Integer, BoxShape> bySlice = new TreeMap<>();
        for (RoomCell c : cells) {
            if (layers.contains(c.layer())) {
                bySlice.merge(c.slice(), c.box(), StripMaker::stacked);
            }
        }
        List<Map.Entry<Integer, BoxShape>> slices = List.copyOf(bySlice.entrySet());
        BoxShape best = null;
        double bestWorth = 0;
        // Every slice is tried as the seed; runs nearer the place wanted are worth more.
        for (int seed = 0; seed < slices.size(); seed++) {
            BoxShape run = grown(slices, seed);
            double worth = wish.worth(run);
            if (worth > bestWorth) {
                bestWorth = worth;
                best = run;
            }
        }
        return best;
    }

    /** Two boxes of one slice, one on the other, as one; the larger alone where they do not touch or share less width than it is worth. */
    private static BoxShape stacked(BoxShape a, BoxShape b) {
        BoxShape larger = section(a) >= section(b) ? a : b;
        boolean aLow = a.fromMm().getZ() < b.fromMm().getZ();
        BoxShape low = aLow ? a : b;
        BoxShape high = aLow ? b : a;
        if (high.fromMm().getZ() - low.toMm().getZ() > 1e-6) {
            return larger;
        }
        BoxShape both = new BoxShape(
                new Vector3D(
                        a.fromMm().getX(),
                        Math.max(a.fromMm().getY(), b.fromMm().getY()),
                        low.fromMm().getZ()),
                new Vector3D(
                        a.toMm().getX(),
                        Math.min(a.toMm().getY(), b.toMm().getY()),
                        high.toMm().getZ()));
        return section(both) > section(larger) ? both : larger;
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
