package courseworthy.scout;

import java.util.List;

/**
 * The courses of a library by how similar they are to one.
 *
 * @param weights of the measures that differ over the library, the heaviest first
 * @param courses the most similar first; decisions are worked out for the first of them
 */
public record SimilarCourses(List<MeasureWeight> weights, List<SimilarCourse> courses) {

    public SimilarCourses {
        weights = List.copyOf(weights);
        courses = List.copyOf(courses);
    }

    /** Those whose decisions were worked out. */
    public List<SimilarCourse> nearest() {
        return courses.stream().filter(each -> each.decisions() != null).toList();
    }

    /** Those whose decisions were not worked out. */
    public List<SimilarCourse> others() {
        return courses.stream().filter(each -> each.decisions() == null).toList();
    }

    /** The measures that decide anything here. */
    public List<MeasureWeight> deciding() {
        return weights.stream().filter(each -> each.weight() > 0).toList();
    }
}
