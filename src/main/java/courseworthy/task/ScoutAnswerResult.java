package courseworthy.task;

import java.util.List;

/**
 * A profile with what was found on a course.
 *
 * @param file    the profile, as typed
 * @param track   the track, seen from the profile's folder; empty where there is none
 * @param copied  whether the track was put there
 * @param answers as typed
 * @param course  as it was written
 */
public record ScoutAnswerResult(String file, String track, boolean copied, List<String> answers, CourseSummary course) {

    public ScoutAnswerResult {
        answers = List.copyOf(answers);
    }
}
