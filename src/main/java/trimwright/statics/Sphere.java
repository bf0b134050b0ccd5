package trimwright.statics;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Directions spread evenly over the sphere: the corners of an icosahedron whose faces were twice divided into four, 162 in all, about 18°
 * apart, with the neighbours of each.
 */
final class Sphere {

    /** Greatest angle between neighbours, rad. */
    static final double SPACING = 0.33;

    private static final int DIVISIONS = 2;

    private final List<Vector3D> directions = new ArrayList<>();
    private final List<List<Integer>> neighbours = new ArrayList<>();

    Sphere() {
        double phi = (1 + Math.sqrt(5)) / 2;
        for (int i = 0; i < 4; i++) {
            double a = (i & 1) == 0 ? 1 : -1;
            double b = (i & 2) == 0 ? phi : -phi;
            add(new Vector3D(0, a, b));
            add(new Vector3D(a, b, 0));
            add(new Vector3D(b, 0, a));
        }
        List<int[]> faces = facesOfNearest();
        for (int i = 0; i < DIVISIONS; i++) {
            faces = divided(faces);
        }
        for (int i = 0; i < directions.size(); i++) {
            neighbours.add(new ArrayList<>());
        }
        for (int[] face : faces) {
            for (int k = 0; k < 3; k++) {
                join(face[k], face[(k + 1) % 3]);
                join(face[(k + 1) % 3], face[k]);
            }
        }
    }

    int size() {
        return directions.size();
    }

    Vector3D direction(int i) {
        return directions.get(i);
    }

    List<Integer> neighbours(int i) {
        return neighbours.get(i);
    }

    private void add(Vector3D v) {
        directions.add(v.normalize());
    }

    private void join(int from, int to) {
        if (!neighbours.get(from).contains(to)) {
            neighbours.get(from).add(to);
        }
    }

    private List<int[]> facesOfNearest() {
        double edge = Double.POSITIVE_INFINITY;
        for (int i = 1; i < directions.size(); i++) {
            edge = Math.min(edge, directions.get(0).distance(directions.get(i)));
        }
        double limit = 1.1 * edge;
        List<int[]> faces = new ArrayList<>();
        for (int i = 0; i < directions.size(); i++) {
            for (int j = i + 1; j < directions.size(); j++) {
                for (int k = j + 1; k < directions.size(); k++) {
                    if (directions.get(i).distance(directions.get(j)) < limit
                            && directions.get(j).distance(directions.get(k)) < limit
                            && directions.get(k).distance(directions.get(i)) < limit) {
                        faces.add(new int[] {i, j, k});
                    }
                }
            }
        }
        return faces;
    }

    private List<int[]> divided(List<int[]> faces) {
        Map<Integer, Integer> middles = new HashMap<>();
        List<int[]> result = new ArrayList<>();
        for (int[] f : faces) {
            int ab = middle(f[0], f[1], middles);
            int bc = middle(f[1], f[2], middles);
            int ca = middle(f[2], f[0], middles);
            result.add(new int[] {f[0], ab, ca});
            result.add(new int[] {f[1], bc, ab});
            result.add(new int[] {f[2], ca, bc});
            result.add(new int[] {ab, bc, ca});
        }
        return result;
    }

    private int middle(int a, int b, Map<Integer, Integer> middles) {
        int key = 1000 * Math.min(a, b) + Math.max(a, b);
        return middles.computeIfAbsent(key, k -> {
            add(directions.get(a).add(directions.get(b)));
            return directions.size() - 1;
        });
    }
}
