package courseworthy.task;

import courseworthy.problem.Progress;
import courseworthy.scout.ScoutPlanner;

/** Finds the ground of a course that is not known, and what it could change. */
public final class ScoutTask {

    private ScoutTask() {
    }

    public static ScoutResult of(Workspace workspace, Request request, Progress progress) {
        BriefResult answer = BriefTask.withoutOutlook(workspace, request);
        return new ScoutResult(answer.brief(), ScoutPlanner.plan(answer.ride(), answer.rules(), answer.call(), progress));
    }
}
