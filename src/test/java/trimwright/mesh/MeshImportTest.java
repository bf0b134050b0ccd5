package trimwright.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import trimwright.mesh.MeshImport.Axis;

/** The 24 ways to lay a mesh's axes onto the boat's, against rotations of Commons Math. */
class MeshImportTest {

    private static final Vector3D[] DIRECTIONS = {
        Vector3D.PLUS_I, Vector3D.MINUS_I, Vector3D.PLUS_J, Vector3D.MINUS_J, Vector3D.PLUS_K, Vector3D.MINUS_K
    };
    private static final String[] SYMBOLS = {"+x", "-x", "+y", "-y", "+z", "-z"};

    @Test
    void axesAreTurnedUnitsAndScaleMultipliedThenMoved() {
        TriangleMesh mesh = TriangleMesh.owning(new double[] {1, 2, 3, -4, 5, 7, 0, -1, 2}, new int[] {0, 1, 2});
        Vector3D move = new Vector3D(10, -20, 30);
        int ways = 0;
        for (int forward = 0; forward < 6; forward++) {
            for (int up = 0; up < 6; up++) {
                Axis f = Axis.ofSymbol(SYMBOLS[forward]).orElseThrow();
                Axis u = Axis.ofSymbol(SYMBOLS[up]).orElseThrow();
                assertEquals(SYMBOLS[forward], f.symbol());
                if (forward / 2 == up / 2) {
                    assertThrows(
                            IllegalArgumentException.class,
                            () -> new MeshImport(Optional.empty(), 1, f, u, 0, 0, 0, List.of()));
                    continue;
                }
                Rotation turn = new Rotation(DIRECTIONS[forward], DIRECTIONS[up], Vector3D.PLUS_I, Vector3D.PLUS_K);
                MeshImport how = new MeshImport(
                        Optional.of(LengthUnit.INCH), 0.5, f, u, move.getX(), move.getY(), move.getZ(), List.of());
                TriangleMesh there = how.apply(mesh, Optional.of(LengthUnit.METRE));
                for (int v = 0; v < 3; v++) {
                    Vector3D from = new Vector3D(mesh.xyz()[3 * v], mesh.xyz()[3 * v + 1], mesh.xyz()[3 * v + 2]);
                    Vector3D to = turn.applyTo(from).scalarMultiply(12.7).add(move);
                    assertArrayEquals(
                            to.toArray(),
                            new double[] {there.xyz()[3 * v], there.xyz()[3 * v + 1], there.xyz()[3 * v + 2]},
                            1e-12);
                }
                assertArrayEquals(mesh.corners(), there.corners());
                ways++;
            }
        }
        assertEquals(24, ways);
    }

    /** The unit of the boat file counts before that of the mesh file, and mm where neither says one. */
    @Test
    void unitsInTheirOrder() {
        TriangleMesh box = Solids.box(0, 0, 0, 1, 1, 1);
        assertEquals(1, MeshImport.AS_IS.apply(box, Optional.empty()).bounds().sizeX(), 0);
        assertEquals(
                1000,
                MeshImport.AS_IS
                        .apply(box, Optional.of(LengthUnit.METRE))
                        .bounds()
                        .sizeX(),
                0);
        for (LengthUnit unit : LengthUnit.values()) {
            assertEquals(Optional.of(unit), LengthUnit.ofSymbol(unit.symbol()));
        }
        assertEquals(10, LengthUnit.ofSymbol("cm").orElseThrow().mm(), 0);
        assertEquals(Optional.empty(), LengthUnit.ofSymbol("ft"));
        assertEquals(Optional.empty(), Axis.ofSymbol("x"));
    }

    @Test
    void onlyAPositiveScale() {
        for (double scale : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new MeshImport(Optional.empty(), scale, Axis.PLUS_X, Axis.PLUS_Z, 0, 0, 0, List.of()));
        }
    }
}
