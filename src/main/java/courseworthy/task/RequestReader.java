package courseworthy.task;

import courseworthy.course.AssumedGround;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.CourseSources;
import courseworthy.course.RecordedRide;
import courseworthy.course.TrackGround;
import courseworthy.course.ground.MapGround;
import courseworthy.course.terrain.ElevationFolder;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.ProgressWatch;
import courseworthy.problem.Spelling;
import courseworthy.ride.BikeKind;
import courseworthy.ride.RecordedGround;
import courseworthy.rider.Rider;
import courseworthy.rider.SharedRider;
import courseworthy.text.Dates;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Reads what a request names. Every fault is collected; what could not be read is null. */
final class RequestReader {

    static final List<String> ROLES = List.of("training", "race");

    private static final String SHIPPED = "course-profiles";

    private final Path home;
    private final Faults faults;
    private final Function<String, ProgressWatch> watches;
    /** The bike of a recorded ride, where the rider's is not known. */
    private BikeKind recorded = BikeKind.GRAVEL;

    /** @param home the folder of the checkout, where shipped courses lie; null where it is not known */
    RequestReader(Path home, Faults faults) {
        this(home, faults, what -> ProgressWatch.unseen());
    }

    /** @param watches starts to show how far the reading of a map has come */
    RequestReader(Path home, Faults faults, Function<String, ProgressWatch> watches) {
        this.home = home;
        this.faults = faults;
        this.watches = watches;
    }

    /** The course of a path, or a shipped one by its name. */
    Course course(String typed, String ground) {
        return course(typed, ground, MapRequest.NONE);
    }

    /** The course of a path, or a shipped one by its name, with its ground from a map where one is given. */
    Course course(String typed, String ground, MapRequest map) {
        Path path = path(typed);
        if (path == null) {
            return null;
        }
        if (isName(typed) && !Files.exists(path)) {
            return shipped(typed, ground, map);
        }
        Faults own = new Faults();
        Course course = CourseReader.with(path, typed, sources(ground, map), own);
        take(own, typed, "");
        return hinted(course, map);
    }

    /** A course with what a recorded ride hints at, where one is named. */
    private Course hinted(Course course, MapRequest map) {
        if (map.ride() == null) {
            return course;
        }
        Path path = path(map.ride());
        RecordedRide ride = path == null ? null : RecordedRide.read(path, map.ride(), faults);
        if (course != null && course.track() == null) {
            faults.add("--recording", 0, "", "a course without a track", "a course with a track, on which a ride has its place", "Name a GPX track, or a profile that names one.");
            return course;
        }
        return course == null || ride == null ? course : RecordedGround.hinted(course, ride, recorded);
    }

    /** What courses are read with besides their own files. */
    CourseSources sources(String ground, MapRequest map) {
        Path tiles = map.elevation() == null ? null : path(map.elevation());
        return new CourseSources(AssumedGround.option(ground), ground(map), tiles == null ? null : new ElevationFolder(tiles, map.elevation()));
    }

    /** Where the ground under a track comes from; null where no map is given. */
    TrackGround ground(MapRequest map) {
        List<Path> extracts = new ArrayList<>();
        for (String each : map.extracts()) {
            Path path = path(each);
            if (path != null) {
                extracts.add(path);
            }
        }
        return extracts.isEmpty() ? null : new MapGround(extracts, map.cached(), watches);
    }

    /** Takes over what is wrong with a file named behind an option; where it is a file of another kind, that alone. */
    private void take(Faults own, String typed, String option) {
        Fault mistaken = own.stop() ? FileKind.mistaken(own.faults(), typed, option) : null;
        if (mistaken == null) {
            faults.addAll(own);
        } else {
            faults.add(mistaken);
        }
    }

    private static boolean isName(String typed) {
        return !typed.contains("/") && !typed.contains(File.separator);
    }

    private Course shipped(String name, String ground, MapRequest map) {
        Path path = shippedFile(name);
        if (path != null) {
            return hinted(CourseReader.with(path, shippedName(path), sources(ground, map), faults), map);
        }
        String near = Spelling.didYouMean(name, names());
        faults.add(name, 0, "", "no such file", "a course profile (.yaml), a GPX track (.gpx) or the name of a shipped course",
                near.isEmpty() ? "Check the spelling of the path." : near);
        return null;
    }

    /** The file that is read for a course; what was typed has been read already. */
    Path fileOf(String typed) {
        return isName(typed) && !Files.exists(Path.of(typed)) ? shippedFile(typed) : Path.of(typed);
    }

    /** The file of a shipped course, or null where there is none of that name. */
    Path shippedFile(String name) {
        try {
            Path path = home == null ? null : home.resolve(SHIPPED).resolve(name.endsWith(".yaml") ? name : name + ".yaml");
            return path != null && Files.isRegularFile(path) ? path : null;
        } catch (InvalidPathException e) {
            return null;
        }
    }

    /** The folder of the shipped courses; null where it is not known. */
    Path shippedFolder() {
        Path folder = home == null ? null : home.resolve(SHIPPED);
        return folder != null && Files.isDirectory(folder) ? folder : null;
    }

    /** How the file of a shipped course is named in faults. */
    static String shippedName(Path file) {
        return SHIPPED + "/" + file.getFileName();
    }

    /** The names of the shipped courses. */
    List<String> names() {
        String[] files = home == null ? null : home.resolve(SHIPPED).toFile().list();
        List<String> out = new ArrayList<>();
        for (String file : files == null ? new String[0] : files) {
            if (file.endsWith(".yaml")) {
                out.add(file.substring(0, file.length() - ".yaml".length()));
            }
        }
        out.sort(null);
        return out;
    }

    /** The rider, with what the folder of the file shares; unknown where no file is named. */
    Rider rider(String typed) {
        if (typed == null) {
            return Rider.UNKNOWN;
        }
        Path path = path(typed);
        Faults own = new Faults();
        Rider rider = path == null ? null : SharedRider.readWithFolder(path, typed, own);
        take(own, typed, "--rider");
        return rider;
    }

    /** A recorded ride counts as one on the bike of this rider, where that is known. */
    void recordedBy(Rider rider) {
        BikeKind kind = rider == null || rider.bike().kind() == null ? null : BikeKind.of(rider.bike().kind());
        recorded = kind == null ? recorded : kind;
    }

    /** The workshop of a request, with the recorded rides that it adds to its log; null where no file is named. */
    Workshop workshop(Request request) {
        Workshop workshop = workshop(request.workshop());
        RecordedRides rides = request.recorded();
        Path path = workshop == null || rides == null || faults.stop() ? null : path(rides.typed());
        if (path == null) {
            return workshop;
        }
        faults.reads(path);
        return RideLogFiles.add(workshop, rides, path, faults);
    }

    /** The workshop; null where no file is named. */
    Workshop workshop(String typed) {
        Path path = typed == null ? null : path(typed);
        Faults own = new Faults();
        Workshop workshop = path == null ? null : RideLogFiles.read(WorkshopReader.read(path, typed, own), own);
        take(own, typed, "--workshop");
        return workshop;
    }

    /** The event with the role and the date that the request puts before its own. */
    Event event(Request request) {
        String role = role(request.role());
        LocalDate date = date(request.date());
        Event event = request.event() == null ? Event.UNKNOWN : event(request.event());
        if (event != null && event.isStageRace()) {
            return faults.stop() ? null : new StageFiles(this, faults).stageOn(event, request.course(), date).with(role, null);
        }
        return event == null ? null : event.with(role, date);
    }

    /** A race over several days, as a whole; null with a fault where the file holds another event. */
    Event stageRace(String typed) {
        Event event = event(typed);
        if (event == null || event.isStageRace()) {
            return event;
        }
        if (!faults.stop()) {
            faults.add(typed, 0, "stages", "an event of one day", "stages, each with its course and date",
                    "For one day: \"courseworthy brief COURSE --event " + typed + "\".");
        }
        return null;
    }

    private Event event(String typed) {
        Path path = path(typed);
        Faults own = new Faults();
        Event event = path == null ? null : EventReader.read(path, typed, own);
        take(own, typed, "--event");
        return event;
    }

    private String role(String typed) {
        if (typed != null && !ROLES.contains(typed)) {
            faults.add("--role", 0, "", quoted(typed), "training or race", Spelling.didYouMean(typed, ROLES));
        }
        return typed;
    }

    private LocalDate date(String typed) {
        LocalDate date = typed == null ? null : Dates.of(typed);
        if (typed != null && date == null) {
            faults.add("--date", 0, "", quoted(typed), "a day of the calendar such as 2025-06-14", Dates.mend(typed));
        }
        return date;
    }

    /** The path, or null with a fault where the machine cannot have such a path. */
    Path path(String typed) {
        try {
            return Path.of(typed);
        } catch (InvalidPathException e) {
            faults.add(typed, 0, "", "a path that cannot be", "the path of a file", "Check the spelling of the path.");
            return null;
        }
    }

    static String quoted(String typed) {
        return "\"" + typed + "\"";
    }
}
