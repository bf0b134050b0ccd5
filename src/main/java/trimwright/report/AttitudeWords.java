package trimwright.report;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import trimwright.statics.Equilibrium;

/** Attitudes in words: sides and ends instead of signs. */
public final class AttitudeWords {

    /** Trim from which a boat stands on end and her list says little. */
    private static final double ON_END_DEG = 80;
    /** List from which her bottom is up. */
    private static final double BOTTOM_UP_DEG = 135;

    private AttitudeWords() {}

    /** As in "list 1.3° to port, bow up 0.4°"; "upright and level" where both round to nothing. */
    public static String of(Vector3D up) {
        return of(Equilibrium.heelDeg(up), Equilibrium.trimDeg(up));
    }

    /**
     * @param heelDeg positive to starboard
     * @param trimDeg positive bow up
     */
    public static String of(double heelDeg, double trimDeg) {
        if (Math.abs(trimDeg) >= ON_END_DEG) {
            return "on end, " + trim(trimDeg);
        }
        boolean noList = Numbers.roundsToZero(heelDeg, 1);
        boolean noTrim = Numbers.roundsToZero(trimDeg, 1);
        if (noList && noTrim) {
            return "upright and level";
        }
        String bottomUp = Math.abs(heelDeg) >= BOTTOM_UP_DEG ? "bottom up, " : "";
        return bottomUp + list(heelDeg) + ", " + trim(trimDeg);
    }

    /** As in "list 1.3° to port"; "no list" where it rounds to nothing. */
    public static String list(double heelDeg) {
        if (Numbers.roundsToZero(heelDeg, 1)) {
            return "no list";
        }
        return "list " + Numbers.degrees(Math.abs(heelDeg)) + " to " + (heelDeg > 0 ? "starboard" : "port");
    }

    /** As in "bow up 0.4°"; "no trim" where it rounds to nothing. */
    public static String trim(double trimDeg) {
        if (Numbers.roundsToZero(trimDeg, 1)) {
            return "no trim";
        }
        return (trimDeg > 0 ? "bow up " : "bow down ") + Numbers.degrees(Math.abs(trimDeg));
    }
}
