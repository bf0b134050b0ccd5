package trimwright.samples;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/** Where the sections of a hull stand along x. */
final class Stations {

    private Stations() {}

    /**
     * From 0 to a length, at about a given spacing.
     *
     * @param lengthMm a whole number of mm
     * @param spacingMm the spacing wanted over x
     * @param fineness divides the spacing
     */
    static double[] spaced(double lengthMm, Curve spacingMm, double fineness) {
        double cells = 0;
        for (int x = 0; x < lengthMm; x++) {
            cells += 1 / spacingMm.at(x + 0.5);
        }
        int count = (int) Math.rint(cells * fineness);
        double[] stations = new double[count + 1];
        double sum = 0;
        int next = 1;
        for (int x = 0; x < lengthMm && next < count; x++) {
            double here = 1 / spacingMm.at(x + 0.5);
            while (next < count && sum + here >= cells * next / count) {
                stations[next] = x + (cells * next / count - sum) / here;
                next++;
            }
            sum += here;
        }
        stations[count] = lengthMm;
        return stations;
    }

    /** Those between two x, with the two themselves as ends; none within 1 mm of an end, which the ends themselves stand for. */
    static double[] between(double[] stations, double from, double to) {
        double[] inside =
                Arrays.stream(stations).filter(x -> x > from + 1 && x < to - 1).toArray();
        return DoubleStream.concat(
                        DoubleStream.concat(DoubleStream.of(from), Arrays.stream(inside)), DoubleStream.of(to))
                .toArray();
    }

    /** Number of the first station at or beyond x. */
    static int first(double[] stations, double x) {
        int i = 0;
        while (stations[i] < x) {
            i++;
        }
        return i;
    }
}
