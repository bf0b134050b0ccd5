package trimwright.plan;

import java.util.ArrayList;
import java.util.List;

/** Strips that are lengthened and moved together: one, or a pair port and starboard. */
record Handle(List<Strip> strips, double costFactor) {

    /** Every strip alone, and every pair of mirrored strips together, which is cheaper. */
    static List<Handle> of(List<Strip> strips) {
        List<Handle> handles = new ArrayList<>();
        for (Strip s : strips) {
            Strip image = image(s, strips);
            if (image != null && !s.twin) {
                handles.add(new Handle(List.of(s, image), 1));
            }
            handles.add(new Handle(List.of(s), image == null ? 1 : Choice.ONE_SIDE_ALONE));
        }
        return handles;
    }

    private static Strip image(Strip strip, List<Strip> strips) {
        for (Strip other : strips) {
            if (other.twin != strip.twin
                    && other.zone.equals(strip.zone)
                    && other.inside.equals(strip.inside)
                    && mirrored(strip, other)) {
                return other;
            }
        }
        return null;
    }

    private static boolean mirrored(Strip a, Strip b) {
        double tolerance = 1e-6;
        return Math.abs(a.run.fromMm().getX() - b.run.fromMm().getX()) < tolerance
                && Math.abs(a.run.toMm().getX() - b.run.toMm().getX()) < tolerance
                && Math.abs(a.run.fromMm().getY() + b.run.toMm().getY()) < tolerance
                && Math.abs(a.run.toMm().getY() + b.run.fromMm().getY()) < tolerance
                && Math.abs(a.run.fromMm().getZ() - b.run.fromMm().getZ()) < tolerance
                && Math.abs(a.run.toMm().getZ() - b.run.toMm().getZ()) < tolerance;
    }
}
