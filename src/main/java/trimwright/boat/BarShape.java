package trimwright.boat;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.immersion.Displacer;
import trimwright.immersion.RoundBar;
import trimwright.mesh.Bounds;

/**
 * A round bar.
 *
 * @param fromMm one end of the axis: the centre of a flat end, the tip of a round one
 * @param toMm the other end of the axis
 * @param diameterMm diameter; with round ends at most the length
 * @param ends how both ends are shaped
 */
public record BarShape(Vector3D fromMm, Vector3D toMm, double diameterMm, Ends ends) implements Shape {

    /** The shape of a bar's ends. */
    public enum Ends {
        /** Square to the axis. */
        FLAT,
        /** Half a ball of the bar's diameter. */
        ROUND;

        /** The word in the boat file. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Ends> ofWord(String word) {
            return Arrays.stream(values()).filter(e -> e.word().equals(word)).findFirst();
        }
    }

    public double lengthMm() {
        return fromMm.distance(toMm);
    }

    @Override
    public Displacer solid() {
        return ends == Ends.FLAT
                ? RoundBar.flat(fromMm, toMm, diameterMm / 2)
                : RoundBar.round(fromMm, toMm, diameterMm / 2);
    }

    @Override
    public BarShape mirrored() {
        return new BarShape(Shape.mirrored(fromMm), Shape.mirrored(toMm), diameterMm, ends);
    }

    @Override
    public Bounds bounds() {
        Displacer body = solid();
        return new Bounds(
                body.bottomMm(Vector3D.PLUS_I),
                body.bottomMm(Vector3D.PLUS_J),
                body.bottomMm(Vector3D.PLUS_K),
                body.topMm(Vector3D.PLUS_I),
                body.topMm(Vector3D.PLUS_J),
                body.topMm(Vector3D.PLUS_K));
    }

    @Override
    public Chords chords(double xMm, double yMm) {
        double radius = diameterMm / 2;
        if (ends == Ends.FLAT) {
            return Chords.flatBar(fromMm, toMm, radius, xMm, yMm);
        }
        double share = radius / lengthMm();
        Vector3D first = new Vector3D(1 - share, fromMm, share, toMm);
        Vector3D last = new Vector3D(share, fromMm, 1 - share, toMm);
        Chords balls = Chords.hull(Chords.ball(first, radius, xMm, yMm), Chords.ball(last, radius, xMm, yMm));
        // A ball written as a bar has no straight part between its ends.
        return share < 0.5 ? Chords.hull(balls, Chords.flatBar(first, last, radius, xMm, yMm)) : balls;
    }
}
