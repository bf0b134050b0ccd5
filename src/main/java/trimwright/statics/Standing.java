package trimwright.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.boat.Piece;
import trimwright.immersion.WaterPlane;

/**
 * A part that stands above the water.
 *
 * @param part id of the part, with a prime for the twin of a mirrored one
 * @param aboveMm height of its highest point above the water
 * @param pointMm that point in the boat's frame
 */
public record Standing(String part, double aboveMm, Vector3D pointMm) {

    /** Everything that stands above the water, the highest first. */
    public static List<Standing> of(Condition condition, WaterPlane water) {
        List<Standing> out = new ArrayList<>();
        for (Piece piece : condition.pieces()) {
            if (piece.displacer().isPresent()) {
                Vector3D highest = piece.displacer().get().highestMm(water.up());
                double above = water.up().dotProduct(highest) - water.heightMm();
                if (above > 0) {
                    out.add(new Standing(piece.id(), above, highest));
                }
            }
        }
        out.sort(Comparator.comparingDouble(Standing::aboveMm).reversed());
        return List.copyOf(out);
    }
}
