package trimwright.statics;

/**
 * A range of fills in which she does not stand upright. The course runs from {@code fromFill} to {@code toFill}; on the way up the
 * first is the greater.
 *
 * @param fromFill fill where she begins to lie over
 * @param toFill fill where she stands upright again, or the last one at which she floats
 * @param greatestListDeg how far she lies over at most, either side
 * @param atFill where that is
 */
public record UnstableRange(double fromFill, double toFill, double greatestListDeg, double atFill) {}
