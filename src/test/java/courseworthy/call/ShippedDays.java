package courseworthy.call;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.demand.Demands;
import courseworthy.demand.Survey;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.event.ExampleDay;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Every shipped course with its event, alone and with every shipped rider. */
record ShippedDays(String name, Demands demands) {

    private static final Path COURSES = Path.of("course-profiles");
    private static final Path EXAMPLES = Path.of("docs", "examples");

    static List<ShippedDays> all() {
        List<ShippedDays> out = new ArrayList<>();
        for (Path course : files(COURSES)) {
            out.add(of(course, null));
            for (Path rider : files(EXAMPLES.resolve("riders"))) {
                out.add(of(course, rider));
            }
        }
        return out;
    }

    /** Every shipped course with one rider and the same event of one lap, by its role. */
    static List<ShippedDays> allAlike(String role, String rider) {
        List<ShippedDays> out = new ArrayList<>();
        Path riderFile = EXAMPLES.resolve("riders").resolve(rider + ".yaml");
        for (Path courseFile : files(COURSES)) {
            Faults faults = new Faults();
            Course course = CourseReader.read(courseFile, courseFile.toString(), null, faults);
            Rider read = RiderReader.read(riderFile, riderFile.toString(), faults);
            faults.throwIfAny();
            Event event = Event.builder().role(role).date(LocalDate.of(2026, 6, 20)).build();
            out.add(new ShippedDays(courseFile.getFileName() + " " + rider + " " + role, Survey.of(course, read, event, read.bike())));
        }
        return out;
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> list = Files.list(folder)) {
            return list.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ShippedDays of(Path courseFile, Path riderFile) {
        return of(courseFile, EXAMPLES.resolve("events").resolve(courseFile.getFileName()), riderFile);
    }

    static ShippedDays of(Path courseFile, Path eventFile, Path riderFile) {
        Faults faults = new Faults();
        Course course = CourseReader.read(courseFile, courseFile.toString(), null, faults);
        Event event = EventReader.read(eventFile, eventFile.toString(), faults);
        Rider rider = riderFile == null ? Rider.UNKNOWN : RiderReader.read(riderFile, riderFile.toString(), faults);
        faults.throwIfAny();
        event = ExampleDay.on(event, courseFile);
        Bike atEvent = event.bike() == null ? Bike.UNKNOWN : BikeReader.read(eventFile.toString(), event.bike(), faults);
        faults.throwIfAny();
        return new ShippedDays(courseFile.getFileName() + " " + riderFile,
                Survey.of(course, rider, event, Survey.bike(rider.bike(), atEvent)));
    }

    @Override
    public String toString() {
        return name;
    }
}
