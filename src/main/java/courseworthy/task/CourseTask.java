package courseworthy.task;

import courseworthy.course.Course;
import courseworthy.demand.Survey;
import courseworthy.event.Event;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;

/** Surveys a course by itself. */
public final class CourseTask {

    private CourseTask() {
    }

    /** @param ground ground to take where none is given; null for none */
    public static CourseResult of(Workspace workspace, String file, String ground) {
        Faults faults = new Faults();
        Course course = workspace.reader(faults).course(file, ground);
        workspace.stopOrWarn(faults);
        return new CourseResult(CourseSummary.of(course), Survey.of(course, Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN));
    }
}
