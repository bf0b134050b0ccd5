package trimwright.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/** Whether a mesh, taken in mm, has the size of a model, and which unit would give it one. */
final class SizeCheck {

    /** No model hull is shorter or longer; common practice, no source. */
    static final double LEAST_MM = 50;

    static final double MOST_MM = 5000;

    private static final double USUAL_LEAST_MM = 200;
    private static final double USUAL_MOST_MM = 3000;

    private SizeCheck() {}

    static Optional<Finding> of(Bounds bounds) {
        double longest = bounds.longestSide();
        if (!(longest < LEAST_MM || longest > MOST_MM)) {
            return Optional.empty();
        }
        List<String> units = new ArrayList<>();
        List<Double> lengths = new ArrayList<>();
        for (LengthUnit unit : LengthUnit.values()) {
            double length = longest * unit.mm();
            if (length >= USUAL_LEAST_MM && length <= USUAL_MOST_MM) {
                units.add(unit.symbol());
                lengths.add(length);
            }
        }
        return Optional.of(Finding.of(
                Code.MESH_SIZE_IMPLAUSIBLE,
                new Place.Whole(),
                "longestMm",
                longest,
                "leastMm",
                LEAST_MM,
                "mostMm",
                MOST_MM,
                "units",
                units,
                "lengthsMm",
                lengths));
    }
}
