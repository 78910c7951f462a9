package courseworthy.task;

import courseworthy.call.Call;
import courseworthy.course.Course;
import courseworthy.event.Event;
import courseworthy.worth.Drivetrain;
import courseworthy.worth.HeldGradients;
import courseworthy.worth.RoadBook;
import courseworthy.worth.RoadBookMaker;

/** What a brief tells at length of the ride, each worked out when it is first asked for. */
public final class BriefDetail {

    private final Course course;
    private final Event event;
    private final Call call;
    private final Drivetrain mounted;
    private final Reliance reliance;
    private RoadBook roadBook;
    private HeldGradients held;

    /**
     * @param mounted  rings and cassette of a build; null for those recommended
     * @param reliance what other ground and other figures would change; null where that is not wanted
     */
    BriefDetail(Course course, Event event, Call call, Drivetrain mounted, Reliance reliance) {
        this.course = course;
        this.event = event;
        this.call = call;
        this.mounted = mounted;
        this.reliance = reliance;
    }

    /** Null where it is not wanted. */
    GroundReliance reliance() {
        return reliance == null ? null : reliance.ground();
    }

    /** Null where they are not wanted. */
    SingleChanges changes() {
        return reliance == null ? null : reliance.changes();
    }

    /** Null where no ride was estimated. */
    synchronized RoadBook roadBook() {
        if (roadBook == null) {
            roadBook = RoadBookMaker.of(course, call, mounted);
        }
        return roadBook;
    }

    Event event() {
        return event;
    }

    /** The line of the course seen from above; null where no track is known. */
    CourseMap courseMap() {
        return CourseMap.of(course);
    }

    /** Null where no ride was estimated or no gears are known. */
    synchronized HeldGradients heldGradients() {
        if (held == null) {
            held = HeldGradients.of(call, mounted);
        }
        return held;
    }
}
