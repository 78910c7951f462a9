package courseworthy.task;

import courseworthy.debrief.DebriefResult;
import courseworthy.scout.LibraryCourse;
import courseworthy.scout.SimilarCourse;
import courseworthy.scout.SimilarCourses;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The courses of a library by how similar they are to one, with what was learned there.
 *
 * @param brief    the answer for the course asked about
 * @param folder   of the library, as shown to the user
 * @param leftOut  courses that were not compared, because there are more than are looked at
 * @param courses  the library's, the most similar first
 * @param debriefs those read, by file
 */
public record SimilarResult(Brief brief, String folder, int leftOut, SimilarCourses courses, List<DebriefResult> debriefs) {

    public SimilarResult {
        debriefs = List.copyOf(debriefs);
    }

    /** Debriefs whose brief was given for a course of that name. */
    public List<DebriefResult> debriefsOf(LibraryCourse course) {
        List<DebriefResult> out = new ArrayList<>();
        for (DebriefResult debrief : debriefs) {
            if (!debrief.given().course().isEmpty() && debrief.given().course().equals(course.course().name())) {
                out.add(debrief);
            }
        }
        return out;
    }

    /** Who must be named for maps that the courses of the library, or briefs for them, were made from, each once. */
    public Set<String> attributions() {
        Set<String> out = new LinkedHashSet<>();
        for (SimilarCourse each : courses.courses()) {
            out.add(each.library().course().attribution());
            debriefsOf(each.library()).forEach(debrief -> out.add(debrief.given().attribution()));
        }
        out.removeAll(List.of("", brief.course().attribution()));
        return out;
    }
}
