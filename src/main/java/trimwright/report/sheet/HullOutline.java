package trimwright.report.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import trimwright.boat.Boat;
import trimwright.boat.MeshShape;
import trimwright.boat.Part;
import trimwright.boat.Shape;
import trimwright.mesh.Bounds;

/** The outline of a hull from the side and from above, at even stations over her length; of a boat without hull parts that of all that stands in the water. */
final class HullOutline {

    static final int STATIONS = 160;

    private final Bounds whole;
    private final double[] top = new double[STATIONS + 1];
    private final double[] bottom = new double[STATIONS + 1];
    private final double[] starboard = new double[STATIONS + 1];
    private final double[] port = new double[STATIONS + 1];

    HullOutline(Boat boat) {
        List<Shape> outer = new ArrayList<>();
        boolean hull = boat.parts().stream().anyMatch(Part::isHull);
        for (Part part : boat.parts()) {
            if (part.shape().isPresent()
                    && (part.isHull() || !hull && part.inside().isEmpty())) {
                outer.add(part.shape().get());
                if (part.mirror()) {
                    outer.add(part.shape().get().mirrored());
                }
            }
        }
        whole = around(outer);
        Arrays.fill(top, Double.NaN);
        outer.forEach(this::trace);
    }

    /** The box around it, mm. */
    Bounds bounds() {
        return whole;
    }

    /** x of a station, mm. */
    double xMm(int station) {
        return whole.minX() + station * whole.sizeX() / STATIONS;
    }

    /** Whether anything stands at a station. */
    boolean isThere(int station) {
        return !Double.isNaN(top[station]);
    }

    double topMm(int station) {
        return top[station];
    }

    double bottomMm(int station) {
        return bottom[station];
    }

    double portMm(int station) {
        return port[station];
    }

    double starboardMm(int station) {
        return starboard[station];
    }

    private static Bounds around(List<Shape> shapes) {
        double[] corners = shapes.stream()
                .flatMapToDouble(s -> {
                    Bounds b = s.bounds();
                    return DoubleStream.of(b.minX(), b.minY(), b.minZ(), b.maxX(), b.maxY(), b.maxZ());
                })
                .toArray();
        return Bounds.of(corners);
    }

    /** Widens the outline by the points of a mesh, or the box of another shape, station by station. */
    private void trace(Shape shape) {
        if (shape instanceof MeshShape mesh) {
            double[] p = mesh.mesh().xyz();
            int[] corners = mesh.mesh().corners();
            for (int t = 0; t < corners.length; t += 3) {
                span(p, 3 * corners[t], 3 * corners[t + 1]);
                span(p, 3 * corners[t + 1], 3 * corners[t + 2]);
                span(p, 3 * corners[t + 2], 3 * corners[t]);
            }
            return;
        }
        Bounds b = shape.bounds();
        for (int i = station(b.minX()); i <= station(b.maxX()); i++) {
            widen(i, b.minY(), b.minZ());
            widen(i, b.maxY(), b.maxZ());
        }
    }

    /** The stations that an edge runs over. */
    private void span(double[] p, int a, int b) {
        int from = Math.min(station(p[a]), station(p[b]));
        int to = Math.max(station(p[a]), station(p[b]));
        for (int i = from; i <= to; i++) {
            double x = whole.minX() + i * whole.sizeX() / STATIONS;
            double share = p[a] == p[b] ? 0 : (x - p[a]) / (p[b] - p[a]);
            double within = Math.min(1, Math.max(0, share));
            widen(i, p[a + 1] + within * (p[b + 1] - p[a + 1]), p[a + 2] + within * (p[b + 2] - p[a + 2]));
        }
    }

    private int station(double x) {
        return (int) Math.round((x - whole.minX()) / whole.sizeX() * STATIONS);
    }

    private void widen(int i, double y, double z) {
        boolean first = Double.isNaN(top[i]);
        top[i] = first ? z : Math.max(top[i], z);
        bottom[i] = first ? z : Math.min(bottom[i], z);
        port[i] = first ? y : Math.max(port[i], y);
        starboard[i] = first ? y : Math.min(starboard[i], y);
    }
}
