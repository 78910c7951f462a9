package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.demand.RideInput;
import courseworthy.demand.Survey;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
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

/** Courses, riders and days written for a test, called by the shipped rules. */
final class CallFixture {

    private static final DroolsRules RULES = new DroolsRules(ShippedRules.rules(), ShippedRules.load());

    private CallFixture() {
    }

    /** The call for what is written; an empty text is not written. */
    static Call call(Path folder, String course, String rider, String event) {
        return call(folder, course, rider, day(folder, event));
    }

    static Call call(Path folder, String course, String rider, Event day) {
        Faults faults = new Faults();
        Course read = CourseReader.read(file(folder, "course.yaml", course), "course.yaml", null, faults);
        Rider who = rider.isEmpty() ? Rider.UNKNOWN : RiderReader.read(file(folder, "rider.yaml", rider), "rider.yaml", faults);
        faults.throwIfAny();
        return CallMaker.call(RULES, Survey.of(read, who, day, Survey.bike(who.bike(), Bike.UNKNOWN)));
    }

    /** The call for what is written, all of it but the kind of bike made for the bike that is called. */
    static Call onTheBikeThatIsCalled(Path folder, String course, String rider, String event) {
        Faults faults = new Faults();
        Course read = CourseReader.read(file(folder, "course.yaml", course), "course.yaml", null, faults);
        Rider who = RiderReader.read(file(folder, "rider.yaml", rider), "rider.yaml", faults);
        faults.throwIfAny();
        return CallMaker.call(RULES, new RideInput(read, who, day(folder, event), Survey.bike(who.bike(), Bike.UNKNOWN)));
    }

    static Event day(Path folder, String event) {
        Faults faults = new Faults();
        Event day = event.isEmpty() ? Event.UNKNOWN : EventReader.read(file(folder, "event.yaml", event), "event.yaml", faults);
        faults.throwIfAny();
        return day;
    }

    private static Path file(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
