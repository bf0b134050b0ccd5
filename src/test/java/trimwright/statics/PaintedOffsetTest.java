package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.boat.PaintedLine;
import trimwright.immersion.WaterPlane;

class PaintedOffsetTest {

    /** A line painted with a list: 20° to port is a plane that rises to port by tan 20°. The difference is told the shorter way round. */
    @ParameterizedTest
    @CsvSource({"0,20", "-20,0", "-50,-30", "170,-170", "150,170", "180,-160"})
    void listIsAgainstThePaintedOne(double heelDeg, double listDeg) {
        double rise = 10 * Math.tan(Math.toRadians(20));
        PaintedLine line = new PaintedLine(
                List.of(new Vector3D(0, 0, 5), new Vector3D(100, 0, 5), new Vector3D(50, 10, 5 + rise)));
        WaterPlane water = WaterPlane.of(Equilibrium.up(heelDeg, 0), 1);
        assertEquals(listDeg, PaintedOffset.of(line, water).listDeg(), 1e-9);
    }

    /** Water 2 mm above the paint along the boat's z axis at the bow, 1 mm below it at the stern. */
    @Test
    void offsetsAreAlongZ() {
        PaintedLine line = new PaintedLine(List.of(new Vector3D(0, 3, 40), new Vector3D(100, 7, 40)));
        Vector3D up = new Vector3D(-3, 0, 100).normalize();
        PaintedOffset off = PaintedOffset.of(line, WaterPlane.of(up, up.dotProduct(new Vector3D(0, 0, 39))));
        assertEquals(2, off.bowMm(), 1e-12);
        assertEquals(-1, off.sternMm(), 1e-12);
        assertEquals(0, off.listDeg(), 1e-12);
    }
}
