package courseworthy.task;

import courseworthy.analysis.Impact;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.checklist.ChecklistMaker;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.demand.Demands;
import courseworthy.demand.RideInput;
import courseworthy.demand.Survey;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.rider.Bike;
import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.sheet.Row;
import courseworthy.sheet.Rulebook;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.topic.Topic;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Calls every ride of a roster over a library of courses under two sheets, and compares. What is surveyed is the same for both. */
public final class ImpactTask {

    /** Stands for no sheet at all, where there is no file of that name. */
    static final String NONE = "none";

    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final String SHIPPED_EVENTS = "docs/examples/events";

    private final Path home;
    private final Faults faults = new Faults();
    private final RequestReader inputs;
    private final ShippedRules shipped = ShippedRules.load();

    /** A course with the day it is ridden on, and the file it is called by. */
    private record CourseDay(String name, Course course, Event event) {
    }

    /** A rider, and all rules for that rider under either sheet. */
    private record RiderRules(String name, Rider rider, DroolsRules before, DroolsRules after) {
    }

    private ImpactTask(Workspace workspace) {
        this.home = workspace.home();
        this.inputs = workspace.reader(faults);
    }

    /**
     * Compares two sheets.
     *
     * @param before     the sheet as it was; {@link #NONE} for none
     * @param after      the sheet as it is
     * @param courses    a folder of profiles; null for the shipped ones
     * @param riders     a folder of riders' files; null for a rider of whom nothing is known
     * @param events     a folder of events' files, each for the course of its name; null for the shipped ones beside shipped courses
     * @param topic      the one topic to show; null for all
     */
    public static Impact of(Workspace workspace, String before, String after, String courses, String riders, String events, String topic,
            Progress progress) {
        Topic only = topic == null ? null : Workspace.topic("--topic", topic);
        ImpactTask impact = new ImpactTask(workspace);
        List<Sheet> was = impact.sheet(before);
        List<Sheet> is = impact.sheet(after);
        List<CourseDay> outings = impact.outings(courses, events);
        List<RiderRules> roster = impact.roster(riders, was, is);
        workspace.stopOrWarn(impact.faults);
        List<Impact.ChangedRule> library = outings.stream().map(outing -> new Impact.ChangedRule(outing.name(), kinds(outing.course()))).toList();
        List<Impact.ChangedRule> team = roster.stream().map(ridden -> new Impact.ChangedRule(ridden.name(), kinds(ridden.rider()))).toList();
        Impact all = Impact.of(was, is, library, team, impact.differences(outings, roster, was, is, progress));
        return only == null ? all : all.on(only);
    }

    /** The ground that is more than half of a course, as sheets name it. */
    private static List<Impact.Kind> kinds(Course course) {
        for (CourseSummary.SurfaceShare each : CourseSummary.of(course).surfaces()) {
            if (each.share().compareTo(HALF) > 0 && !each.surface().equals(CourseSummary.UNKNOWN)) {
                return List.of(new Impact.Kind("mostly of", each.surface(), ""));
            }
        }
        return List.of();
    }

    /** Tags, and the bike at hand. */
    private static List<Impact.Kind> kinds(Rider rider) {
        List<Impact.Kind> out = new ArrayList<>();
        rider.tags().forEach(tag -> out.add(new Impact.Kind("tagged", tag, "")));
        if (rider.bike().kind() != null) {
            out.add(new Impact.Kind("with a", rider.bike().kind(), "bike"));
        }
        return out;
    }

    private List<Sheet> sheet(String typed) {
        Path path = inputs.path(typed);
        if (path == null || typed.equals(NONE) && !Files.exists(path)) {
            return List.of();
        }
        Sheet sheet = FileKind.sheet(path, typed, 0, faults);
        return sheet == null ? List.of() : List.of(sheet);
    }

    private List<CourseDay> outings(String courses, String events) {
        List<CourseDay> out = new ArrayList<>();
        Path shippedEvents = home == null || courses != null ? null : home.resolve(SHIPPED_EVENTS);
        Path days = events == null ? shippedEvents : inputs.path(events);
        for (YamlFolder.Found found : courses == null ? shippedCourses() : files("--courses", courses)) {
            Course course = CourseReader.read(found.path(), found.shown(), null, faults);
            Event event = event(days, events == null ? SHIPPED_EVENTS : events, found.name());
            ConsistencyCheck.check(course, event, faults);
            if (course != null && event != null) {
                out.add(new CourseDay(found.name(), course, event));
            }
        }
        if (events != null) {
            files("--events", events);
        }
        return out;
    }

    private Event event(Path days, String typed, String name) {
        Path path = days == null ? null : days.resolve(name + YamlFolder.ENDING);
        return path == null || !Files.isRegularFile(path) ? Event.UNKNOWN : EventReader.read(path, YamlFolder.shown(typed, name + YamlFolder.ENDING), faults);
    }

    private List<YamlFolder.Found> shippedCourses() {
        if (home == null) {
            faults.add("--courses", 0, "", "no folder", "a folder of course profiles", "");
            return List.of();
        }
        return YamlFolder.files("--courses", home.resolve("course-profiles"), "course-profiles", faults);
    }

    private List<YamlFolder.Found> files(String option, String typed) {
        Path folder = inputs.path(typed);
        return folder == null ? List.of() : YamlFolder.files(option, folder, typed, faults);
    }

    private List<RiderRules> roster(String riders, List<Sheet> was, List<Sheet> is) {
        DroolsRules before = rules(List.of(), was);
        DroolsRules after = rules(List.of(), is);
        if (riders == null) {
            return List.of(new RiderRules("", Rider.UNKNOWN, before, after));
        }
        List<RiderRules> out = new ArrayList<>();
        for (RosterFolder.Member member : RosterFolder.read(inputs, riders, faults)) {
            Rider rider = member.rider();
            String name = member.name();
            List<Row> own = SheetReader.rider(rider.constraints(), rider.file(), faults);
            out.add(own.isEmpty() ? new RiderRules(name, rider, before, after) : new RiderRules(name, rider, rules(own, was), rules(own, is)));
        }
        return out;
    }

    private DroolsRules rules(List<Row> own, List<Sheet> sheets) {
        Rulebook book = Rulebook.of(shipped.sheets(), own, sheets, faults);
        return faults.stop() ? null : new DroolsRules(book.rows(), shipped);
    }

    /** Course by course, rider by rider; on as many cores as there are, in the same order whatever their number. */
    private List<Impact.ImpactDifference> differences(List<CourseDay> outings, List<RiderRules> roster, List<Sheet> was, List<Sheet> is, Progress progress) {
        AtomicInteger done = new AtomicInteger();
        int all = outings.size() * roster.size();
        List<Bike> bikes = outings.stream().map(outing -> outing.event().bike() == null ? Bike.UNKNOWN
                : BikeReader.read(outing.event().file(), outing.event().bike(), faults)).toList();
        return IntStream.range(0, all).parallel().mapToObj(i -> {
            CourseDay outing = outings.get(i / roster.size());
            RiderRules ridden = roster.get(i % roster.size());
            RideInput ride = new RideInput(outing.course(), ridden.rider(), outing.event(),
                    Survey.bike(ridden.rider().bike(), bikes.get(i / roster.size())));
            Demands atHand = ride.atHand();
            Map<String, Demands> known = new HashMap<>();
            Function<String, Demands> on = kind -> known.computeIfAbsent(kind, ride::on);
            Impact.ImpactDifference out = Impact.between(new Impact.ImpactRide(outing.name(), ridden.name()),
                    side(was, CallMaker.call(ridden.before(), atHand, on)), side(is, CallMaker.call(ridden.after(), atHand, on)));
            progress.at(done.incrementAndGet(), all);
            return out;
        }).toList();
    }

    private static Impact.Side side(List<Sheet> sheets, Call call) {
        return new Impact.Side(sheets, call, ChecklistMaker.listed(call));
    }
}
