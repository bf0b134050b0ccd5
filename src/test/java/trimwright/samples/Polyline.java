package trimwright.samples;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Points along a line, taken again at even steps. */
final class Polyline {

    private Polyline() {}

    /** {@code steps} + 1 points at even distances along the line from its first to its last point. */
    static Vector3D[] even(Vector3D[] line, int steps) {
        double[] along = new double[line.length];
        for (int i = 1; i < line.length; i++) {
            along[i] = along[i - 1] + line[i].distance(line[i - 1]);
        }
        double length = along[line.length - 1];
        Vector3D[] result = new Vector3D[steps + 1];
        result[0] = line[0];
        int i = 1;
        for (int k = 1; k < steps; k++) {
            double s = length * k / steps;
            while (along[i] < s) {
                i++;
            }
            double share = (s - along[i - 1]) / (along[i] - along[i - 1]);
            result[k] = between(line[i - 1], line[i], share);
        }
        result[steps] = line[line.length - 1];
        return result;
    }

    /** One line from several that each begin where the one before ends. */
    static Vector3D[] chained(Vector3D[]... lines) {
        List<Vector3D> chain = new ArrayList<>(List.of(lines[0]));
        for (int i = 1; i < lines.length; i++) {
            chain.addAll(List.of(lines[i]).subList(1, lines[i].length));
        }
        return chain.toArray(Vector3D[]::new);
    }

    static Vector3D between(Vector3D a, Vector3D b, double share) {
        return new Vector3D(1 - share, a, share, b);
    }
}
