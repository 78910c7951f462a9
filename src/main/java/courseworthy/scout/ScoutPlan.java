package courseworthy.scout;

import java.util.List;

/**
 * What to go and look at on a course.
 *
 * @param questions in order of what they could change, most first
 * @param length    of the course, m
 * @param seconds   the time over the whole course as its ground is assumed now, s
 */
public record ScoutPlan(List<ScoutQuestion> questions, double length, double seconds) {

    public ScoutPlan {
        questions = List.copyOf(questions);
    }

    /** Seconds that hang on ground that is not known, all questions together. */
    public double hanging() {
        return questions.stream().mapToDouble(ScoutQuestion::hanging).sum();
    }

    /** Metres of ground that is not known for sure. */
    public double unknown() {
        return questions.stream().mapToDouble(ScoutQuestion::length).sum();
    }
}
