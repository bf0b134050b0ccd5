package trimwright.statics;

import java.util.ArrayList;
import java.util.List;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;

/** What is worth telling about a way down or up. */
final class CourseFindings {

    private CourseFindings() {}

    static List<Finding> of(Course course) {
        List<Finding> findings = new ArrayList<>();
        for (UnstableRange range : course.unstable()) {
            findings.add(Finding.of(
                    Code.UPRIGHT_UNSTABLE,
                    new Place.Whole(),
                    "fromPercent",
                    100 * range.fromFill(),
                    "toPercent",
                    100 * range.toFill(),
                    "angleDeg",
                    range.greatestListDeg()));
        }
        for (FallsOver fall : course.falls()) {
            findings.add(Finding.of(
                    Code.FALLS_OVER,
                    new Place.Whole(),
                    "fillPercent",
                    100 * fall.fill(),
                    "fromHeelDeg",
                    fall.fromHeelDeg(),
                    "toHeelDeg",
                    fall.toHeelDeg(),
                    "fromTrimDeg",
                    fall.fromTrimDeg(),
                    "toTrimDeg",
                    fall.toTrimDeg()));
        }
        return findings;
    }
}
