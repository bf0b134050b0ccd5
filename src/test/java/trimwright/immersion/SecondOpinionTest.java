package trimwright.immersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.TestMeshes;
import trimwright.mesh.TriangleMesh;

/**
 * A second opinion by code of others: the same meshes as regions of Apache Commons Geometry, split by the same planes. It decides
 * with an absolute tolerance of 1e-9 mm, over surfaces of some 1e4 mm²: volumes to 1e-5 mm³ and more where many faces meet.
 */
class SecondOpinionTest {

    @ParameterizedTest
    @CsvSource({"1,1,0", "2,1,0", "3,1,0.6", "4,1,0.6", "5,0,0.8", "6,1,0.4", "7,0,0"})
    void sameVolumeAndCentroid(int seed, int divisions, double roughness) {
        Random random = new Random(seed);
        TriangleMesh mesh = TestMeshes.random(random, divisions, roughness);
        MeshSolid body = MeshSolid.of(mesh);
        RegionBSPTree3D region = SecondOpinion.region(mesh);
        double size = mesh.bounds().diagonal();
        assertEquals(region.getSize(), body.volumeMm3(), 1e-9 * size * size * size);
        int cuts = 0;
        for (int i = 0; i < 12; i++) {
            Vector3D up = TestMeshes.direction(random);
            WaterPlane plane = WaterPlane.of(up, 60 * (2 * random.nextDouble() - 1));
            Immersion ours = Cuts.below(plane, body);
            RegionBSPTree3D theirs = SecondOpinion.below(region, plane);
            double volume = theirs == null ? 0 : theirs.getSize();
            assertEquals(volume, ours.volumeMm3(), 1e-9 * size * size * size);
            if (volume > 1e-3 * body.volumeMm3()) {
                org.apache.commons.geometry.euclidean.threed.Vector3D c = theirs.getCentroid();
                Cuts.assertNear(new Vector3D(c.getX(), c.getY(), c.getZ()), ours.centroidMm(), 1e-6, "B");
                cuts++;
            }
        }
        assertTrue(cuts >= 5, "too few cuts compared: " + cuts);
    }
}
