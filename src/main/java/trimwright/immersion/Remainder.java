package trimwright.immersion;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * What is left of a room when bodies stand in it: the space that water can take.
 *
 * @param room the room
 * @param taken bodies that lie within it and not within each other
 */
public record Remainder(Displacer room, List<Displacer> taken) implements Displacer {

    public Remainder {
        taken = List.copyOf(taken);
    }

    @Override
    public void addBelow(Immersion sum) {
        room.addBelow(sum);
        Immersion less = sum.emptied();
        for (Displacer body : taken) {
            body.addBelow(less);
        }
        sum.addScaled(less, -1);
    }

    @Override
    public double volumeMm3() {
        return room.volumeMm3()
                - taken.stream().mapToDouble(Displacer::volumeMm3).sum();
    }

    @Override
    public Vector3D centroidMm() {
        double volume = volumeMm3();
        if (volume == 0) {
            return Vector3D.ZERO;
        }
        Vector3D moment = room.centroidMm().scalarMultiply(room.volumeMm3());
        for (Displacer body : taken) {
            moment = moment.add(-body.volumeMm3(), body.centroidMm());
        }
        return moment.scalarMultiply(1 / volume);
    }

    @Override
    public double topMm(Vector3D up) {
        return room.topMm(up);
    }

    @Override
    public Vector3D highestMm(Vector3D up) {
        return room.highestMm(up);
    }

    /** The outline of the room itself. */
    @Override
    public double outlineMm(WaterPlane plane) {
        return room.outlineMm(plane);
    }
}
