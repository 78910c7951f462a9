package courseworthy.task;

import courseworthy.course.Course;
import courseworthy.demand.Survey;
import courseworthy.event.Event;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.worth.RoadBook.SimplifiedHeights;

/** Surveys a course by itself. */
public final class CourseTask {

    private CourseTask() {
    }

    /** Of a request only the course, its ground and the map count. */
    public static CourseResult of(Workspace workspace, Request request) {
        Faults faults = new Faults();
        Course course = workspace.reader(faults).course(request.course(), request.ground(), request.map());
        workspace.stopOrWarn(faults);
        return new CourseResult(CourseSummary.of(course), SimplifiedHeights.of(course.line()), Survey.of(course, Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN));
    }
}
