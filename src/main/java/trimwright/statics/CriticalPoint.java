package trimwright.statics;

/**
 * The moment on the way down or up in which she stands least firmly.
 *
 * @param fill water in all tanks as a share of their volume, 0…1
 * @param steadiness how firmly she stands there
 */
public record CriticalPoint(double fill, Steadiness steadiness) {

    /** Transverse metacentric height upright, mm. */
    public double gmMm() {
        return steadiness.gmMm();
    }
}
