package courseworthy.scout;

import java.util.List;

/**
 * A course of a library beside the one asked about.
 *
 * @param library   the other course
 * @param measures  those that decide something and are known on either course, what sets the two apart most first
 * @param decisions those that differ, in the order of the catalogue; null where they were not worked out
 */
public record SimilarCourse(LibraryCourse library, List<MeasureDifference> measures, List<DecisionDifference> decisions) {

    public SimilarCourse {
        measures = List.copyOf(measures);
        decisions = decisions == null ? null : List.copyOf(decisions);
    }

    /** How different the courses are, 0 to 1: the mean of what their measures are apart, by weight; 0 where no measure decides anything. */
    public double difference() {
        double weights = measures.stream().mapToDouble(MeasureDifference::weight).sum();
        return weights == 0 ? 0 : measures.stream().mapToDouble(MeasureDifference::part).sum() / weights;
    }

    /** The measures in which the courses differ. */
    public List<MeasureDifference> differing() {
        return measures.stream().filter(each -> each.apart() > 0).toList();
    }

    SimilarCourse with(List<DecisionDifference> differing) {
        return new SimilarCourse(library, measures, differing);
    }
}
