package courseworthy.worth;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.demand.Demands;
import courseworthy.demand.Survey;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Courses, riders and days written for a test, surveyed. */
final class RideFixture {

    private RideFixture() {
    }

    /** Surveys what is written; an empty text is not written. */
    static Demands demands(Path folder, String course, String rider, String event) {
        Faults faults = new Faults();
        Course read = CourseReader.read(file(folder, "course.yaml", course), "course.yaml", null, faults);
        Rider who = rider.isEmpty() ? Rider.UNKNOWN : RiderReader.read(file(folder, "rider.yaml", rider), "rider.yaml", faults);
        Event day = event.isEmpty() ? Event.UNKNOWN : EventReader.read(file(folder, "event.yaml", event), "event.yaml", faults);
        faults.throwIfAny();
        return Survey.of(read, who, day, Survey.bike(who.bike(), Bike.UNKNOWN));
    }

    private static Path file(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
