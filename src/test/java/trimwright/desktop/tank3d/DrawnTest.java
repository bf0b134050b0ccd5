package trimwright.desktop.tank3d;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Point3D;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.immersion.WaterPlane;
import trimwright.mesh.Solids;
import trimwright.mesh.TriangleMesh;

/** What is drawn and pointed at, checked on bodies whose volumes and sides are known. */
class DrawnTest {

    private static final TriangleMesh BOX = Solids.box(0, 0, 0, 40, 20, 10);

    @Test
    void theWaterInALevelBoxIsABox() {
        TriangleMesh water = WaterBody.below(BOX, WaterPlane.level(4));
        assertEquals(40 * 20 * 4, water.signedVolume(), 1e-6);
        assertEquals(4, water.bounds().maxZ(), 1e-9);
    }

    /** A plane through the middle of a box halves it, however it is tilted. */
    @Test
    void theWaterInATiltedBoxIsHalfOfIt() {
        Vector3D up = new Vector3D(0.1, 0.15, 1).normalize();
        WaterPlane plane = WaterPlane.of(up, up.dotProduct(new Vector3D(20, 10, 5)));
        // Strips end square: each is off by less than a strip.
        assertEquals(40 * 20 * 5, WaterBody.below(BOX, plane).signedVolume(), 40 * 20 * 5 * 0.01);
    }

    /** A section of two pieces: its surface has no skin between them. */
    @Test
    void theWaterInATankOfTwoLegsHasTwoSurfaces() {
        TriangleMesh legs = TriangleMesh.joined(List.of(BOX, Solids.box(0, 60, 0, 40, 80, 10)));
        assertEquals(2 * 40 * 20 * 4, WaterBody.below(legs, WaterPlane.level(4)).signedVolume(), 1e-6);
    }

    @Test
    void theNearSideIsPointedAt() {
        Ray ray = new Ray(new Vector3D(20, -100, 5), new Vector3D(0, 1, 0), 1);
        assertEquals(0, ray.firstOn(List.of(BOX)).orElseThrow().distance(new Vector3D(20, 0, 5)), 1e-9);
        Ray behind = new Ray(new Vector3D(20, -100, 5), new Vector3D(0, 1, 0), 110);
        assertEquals(
                20,
                behind.firstOn(List.of(BOX)).orElseThrow().getY(),
                1e-9,
                "where the near side is cut away, the far one is meant");
        assertEquals(
                Optional.empty(), new Ray(new Vector3D(50, -100, 5), new Vector3D(0, 1, 0), 1).firstOn(List.of(BOX)));
    }

    @Test
    void fromTheSceneBackToTheBoatIsTheWayUndone() {
        Stance stance = new Stance(new Vector3D(0.2, -0.3, 0.9).normalize(), 17);
        Point3D there = stance.scene(new Vector3D(3, -5, 7));
        Point3D back = stance.toBoat().transform(there);
        assertTrue(back.distance(new Point3D(3, -5, 7)) < 1e-9, back.toString());
    }

    @Test
    void aCoarserMeshKeepsToItsMeasure() {
        TriangleMesh fine = trimwright.report.raster.Bodies.ball(new Vector3D(0, 0, 0), 50);
        javafx.scene.shape.TriangleMesh shown = Surfaces.of(fine, Vector3D.ZERO, 40, 500);
        int triangles = shown.getFaces().size() / shown.getFaceElementSize();
        assertTrue(triangles <= 500 && triangles > 100, triangles + " of " + fine.triangleCount());
    }

    /** Twelve triangles, each side parted into squares: what is left of them still has the sides and edges of the box. */
    @Test
    void aCoarserBoxIsTheSameBox() {
        TriangleMesh fine = refined(BOX, 5);
        TriangleMesh coarse = Coarser.of(fine, 600);
        assertTrue(coarse.triangleCount() <= 600, coarse.triangleCount() + " of " + fine.triangleCount());
        assertEquals(fine.signedVolume(), coarse.signedVolume(), 0.01 * fine.signedVolume());
        assertEquals(fine.bounds().sizeX(), coarse.bounds().sizeX(), 0.05);
    }

    /** A plane cuts a box in a rectangle, through however many triangles. */
    @Test
    void aLineAroundABoxHasFourCorners() {
        TriangleMesh fine = refined(BOX, 5);
        List<List<Vector3D>> lines = CutLine.of(List.of(fine), WaterPlane.level(4.1), 0.01, 0);
        assertEquals(1, lines.size(), "one ring");
        assertEquals(2 * (40 + 20), length(lines.get(0)), 0.1);
        assertTrue(lines.get(0).size() <= 9, lines.get(0).size() + " points");
    }

    /** Of a circle points may be left out only as far as the line stays in place: its length by a known share. */
    @Test
    void aLineAroundABallKeepsItsPlace() {
        TriangleMesh ball = trimwright.report.raster.Bodies.ball(Vector3D.ZERO, 50);
        List<List<Vector3D>> lines = CutLine.of(List.of(ball), WaterPlane.level(0.3), 0.1, 0);
        assertEquals(1, lines.size());
        assertEquals(2 * Math.PI * 50, length(lines.get(0)), 0.02 * 2 * Math.PI * 50);
        for (Vector3D p : lines.get(0)) {
            assertEquals(0.3, p.getZ(), 1e-9);
        }
    }

    /** Dashes are two thirds of the way along the boat. */
    @Test
    void dashesLeaveGaps() {
        TriangleMesh fine = refined(Solids.box(0, 0, 0, 300, 20, 10), 7);
        double drawn = CutLine.of(List.of(fine), WaterPlane.level(4.1), 0.01, 10).stream()
                .mapToDouble(DrawnTest::length)
                .sum();
        assertEquals(2 * 300 * 2.0 / 3 + 2 * 20, drawn, 20 + 30);
    }

    /** Every triangle parted into four at the middles of its sides, so many times. */
    private static TriangleMesh refined(TriangleMesh mesh, int times) {
        if (times == 0) {
            return mesh;
        }
        List<Double> xyz = new ArrayList<>();
        for (double coordinate : mesh.xyz()) {
            xyz.add(coordinate);
        }
        Map<Set<Integer>, Integer> middles = new HashMap<>();
        List<Integer> corners = new ArrayList<>();
        for (int t = 0; t < mesh.corners().length; t += 3) {
            int[] m = new int[3];
            for (int k = 0; k < 3; k++) {
                int a = mesh.corners()[t + k];
                int b = mesh.corners()[t + (k + 1) % 3];
                m[k] = middles.computeIfAbsent(Set.of(a, b), side -> {
                    for (int i = 0; i < 3; i++) {
                        xyz.add((mesh.xyz()[3 * a + i] + mesh.xyz()[3 * b + i]) / 2);
                    }
                    return xyz.size() / 3 - 1;
                });
            }
            for (int k = 0; k < 3; k++) {
                corners.addAll(List.of(mesh.corners()[t + k], m[k], m[(k + 2) % 3]));
            }
            corners.addAll(List.of(m[0], m[1], m[2]));
        }
        double[] points = xyz.stream().mapToDouble(Double::doubleValue).toArray();
        int[] faces = corners.stream().mapToInt(Integer::intValue).toArray();
        return refined(TriangleMesh.owning(points, faces), times - 1);
    }

    private static double length(List<Vector3D> line) {
        double sum = 0;
        for (int i = 1; i < line.size(); i++) {
            sum += line.get(i).distance(line.get(i - 1));
        }
        return sum;
    }
}
