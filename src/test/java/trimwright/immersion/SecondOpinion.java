package trimwright.immersion;

import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.mesh.SimpleTriangleMesh;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;
import trimwright.TestMeshes;
import trimwright.mesh.TriangleMesh;

/** What Apache Commons Geometry says of the same meshes and planes. It decides with an absolute tolerance of 1e-9 mm. */
public final class SecondOpinion {

    private static final Precision.DoubleEquivalence PRECISION = Precision.doubleEquivalenceOfEpsilon(1e-9);

    private SecondOpinion() {}

    /**
     * The greatest difference of an immersed volume over random meshes, as a share of the cube of the mesh's size.
     *
     * @param meshes how many, each with other roughness
     * @param planes how many through each
     */
    public static double greatestDifference(int meshes, int planes) {
        double greatest = 0;
        for (int seed = 0; seed < meshes; seed++) {
            Random random = new Random(1000 + seed);
            TriangleMesh mesh = TestMeshes.random(random, 1, 0.1 * (seed % 8));
            MeshSolid body = MeshSolid.of(mesh);
            RegionBSPTree3D region = region(mesh);
            for (int i = 0; i < planes; i++) {
                WaterPlane plane = WaterPlane.of(TestMeshes.direction(random), 60 * (2 * random.nextDouble() - 1));
                RegionBSPTree3D theirs = below(region, plane);
                double volume = theirs == null ? 0 : theirs.getSize();
                double difference = Cuts.below(plane, body).volumeMm3() - volume;
                greatest = Math.max(
                        greatest, Math.abs(difference) / Math.pow(mesh.bounds().diagonal(), 3));
            }
        }
        return greatest;
    }

    /** What of a region lies below the plane; null where nothing does. */
    static RegionBSPTree3D below(RegionBSPTree3D region, WaterPlane plane) {
        Vector3D up = plane.up();
        return region.split(
                        Planes.fromPointAndNormal(theirs(up.scalarMultiply(plane.heightMm())), theirs(up), PRECISION))
                .getMinus();
    }

    static RegionBSPTree3D region(TriangleMesh mesh) {
        SimpleTriangleMesh.Builder builder = SimpleTriangleMesh.builder(PRECISION);
        for (int v = 0; v < mesh.vertexCount(); v++) {
            builder.addVertex(theirs(TestMeshes.vertex(mesh, v)));
        }
        for (int t = 0; t < mesh.triangleCount(); t++) {
            builder.addFace(mesh.corners()[3 * t], mesh.corners()[3 * t + 1], mesh.corners()[3 * t + 2]);
        }
        return builder.build().toTree();
    }

    private static org.apache.commons.geometry.euclidean.threed.Vector3D theirs(Vector3D p) {
        return org.apache.commons.geometry.euclidean.threed.Vector3D.of(p.getX(), p.getY(), p.getZ());
    }
}
