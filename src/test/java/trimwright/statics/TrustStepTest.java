package trimwright.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The step is the lowest point of the model within its radius: against a net of points over the disc, and by the eigenvalues of the 2 × 2 matrix. */
class TrustStepTest {

    private static final int NET = 100;

    /** A model g · x + ½ x · H x. */
    private record Model(double gx, double gy, double hxx, double hxy, double hyy) {

        static Model of(Random random) {
            double scale = Math.pow(10, 6 * random.nextDouble() - 3);
            double slope = scale * Math.pow(10, 4 * random.nextDouble() - 3);
            return new Model(
                    slope * random.nextGaussian(),
                    slope * random.nextGaussian(),
                    scale * random.nextGaussian(),
                    scale * random.nextGaussian(),
                    scale * random.nextGaussian());
        }

        double at(double x, double y) {
            return gx * x + gy * y + 0.5 * (hxx * x * x + 2 * hxy * x * y + hyy * y * y);
        }

        double size(double radius) {
            return Math.hypot(gx, gy) * radius + (Math.abs(hxx) + Math.abs(hxy) + Math.abs(hyy)) * radius * radius;
        }

        double leastEigenvalue() {
            return 0.5 * (hxx + hyy - Math.sqrt((hxx - hyy) * (hxx - hyy) + 4 * hxy * hxy));
        }

        TrustStep step(double radius) {
            return TrustStep.of(Principal.of(gx, gy, hxx, hxy, hyy), radius);
        }
    }

    @Test
    void nothingWithinTheRadiusLiesLower() {
        Random random = new Random(3);
        int inside = 0;
        for (int i = 0; i < 500; i++) {
            Model model = Model.of(random);
            double radius = Math.pow(10, 3 * random.nextDouble() - 3);
            TrustStep step = model.step(radius);
            double rounding = 1e-12 * model.size(radius);
            double length = Math.hypot(step.x, step.y);
            assertTrue(length <= radius * (1 + 1e-12), "length " + length + " of " + radius);
            assertEquals(
                    model.leastEigenvalue(),
                    step.leastCurvature,
                    1e-12 * (1 + Math.abs(model.hxx + model.hyy)) + 1e-12 * model.size(1));
            assertEquals(-model.at(step.x, step.y), step.fall, rounding);
            double own = model.at(step.x, step.y);
            for (int k = 0; k < NET; k++) {
                double angle = 2 * Math.PI * k / NET;
                for (double share : new double[] {0.25, 0.5, 0.75, 1}) {
                    double x = share * radius * Math.cos(angle);
                    double y = share * radius * Math.sin(angle);
                    assertTrue(own <= model.at(x, y) + rounding, () -> model + " " + x + ", " + y);
                }
            }
            inside += length < 0.999 * radius ? 1 : 0;
        }
        assertTrue(inside > 10 && inside < 490, "inside the radius: " + inside);
    }

    /** A small step changes the radius a little, not by a jump: near the edge of the disc too the slope of the model is along the radius. */
    @Test
    void onTheRimTheSlopeIsAlongTheRadius() {
        Random random = new Random(4);
        for (int i = 0; i < 500; i++) {
            Model m = Model.of(random);
            double radius = 0.1;
            TrustStep step = m.step(radius);
            double gx = m.gx + m.hxx * step.x + m.hxy * step.y;
            double gy = m.gy + m.hxy * step.x + m.hyy * step.y;
            double slope = m.size(radius) / radius;
            if (Math.hypot(step.x, step.y) < radius * (1 - 1e-9)) {
                assertEquals(0, Math.hypot(gx, gy), 1e-9 * slope);
            } else {
                assertEquals(0, (gx * step.y - gy * step.x) / radius, 1e-6 * slope);
                assertTrue(gx * step.x + gy * step.y <= 1e-9 * slope * radius);
            }
        }
    }

    /** On the very ridge, where the slope is nothing, the step goes all the way down to one side. */
    @Test
    void aRidgeIsLeft() {
        TrustStep step = TrustStep.of(Principal.of(0, 0, 4, 0, -2), 0.1);
        assertEquals(0, step.x, 1e-15);
        assertEquals(0.1, Math.abs(step.y), 1e-15);
        assertEquals(0.01, step.fall, 1e-15);
        assertEquals(-2, step.leastCurvature, 0);
    }

    @Test
    void alongOneDirectionOnly() {
        TrustStep inside = TrustStep.alongX(-3, 60, 0.1);
        assertEquals(0.05, inside.x, 1e-15);
        assertEquals(0, inside.y, 0);
        assertEquals(0.075, inside.fall, 1e-15);
        assertEquals(60, inside.leastCurvature, 0);
        assertEquals(-0.1, TrustStep.alongX(3, 20, 0.1).x, 1e-15);
        assertEquals(0.2, TrustStep.alongX(3, 20, 0.1).fall, 1e-15);
        // Over a hump the slope says to which side.
        assertEquals(0.1, TrustStep.alongX(-3, -20, 0.1).x, 1e-15);
        assertEquals(0.4, TrustStep.alongX(-3, -20, 0.1).fall, 1e-15);
    }

    /** Down into a valley at 30° to x with curvatures 50 across and 0.1 along: the least of the model on the line across. */
    @Test
    void acrossAValleyOnly() {
        double c = Math.cos(Math.PI / 6);
        double s = Math.sin(Math.PI / 6);
        // Across is (−s, c).
        double hxx = 50 * s * s + 0.1 * c * c;
        double hyy = 50 * c * c + 0.1 * s * s;
        double hxy = (0.1 - 50) * s * c;
        TrustStep step = TrustStep.across(Principal.of(7 * c + 2 * s, 7 * s - 2 * c, hxx, hxy, hyy), 0.3);
        // Slope across −2, so 0.04 along (−s, c).
        assertEquals(-0.04 * s, step.x, 1e-12);
        assertEquals(0.04 * c, step.y, 1e-12);
        assertEquals(0.04, step.fall, 1e-12);
        assertEquals(50, step.leastCurvature, 1e-12);
    }
}
