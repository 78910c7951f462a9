package courseworthy.task;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.event.Event;
import courseworthy.event.Pit;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.topic.Work;
import courseworthy.worth.PlanB;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What is sound in a course and in an event by themselves and cannot be together. */
final class ConsistencyCheck {

    /** Longest event, m, as the longest course. */
    private static final double LONGEST = CourseReader.LONGEST;
    /** Points may lie past the finish by this much of the distance, as organisers measure: they count as at the finish. */
    private static final double MEASURED = 0.02;
    /** Nobody keeps this up from the start to a point on the way, m/s: 60 km/h, above the hour record behind no shelter (judgement). */
    private static final double FASTEST = 60 / 3.6;
    private static final double KM = 1000;

    private ConsistencyCheck() {
    }

    /** @param event may be of no file, where there is nothing to check; either may be null, having faults of its own */
    static void check(Course course, Event event, Faults faults) {
        LongitudeCheck.of(course, event, faults);
        if (course == null || event == null || event.file().isEmpty()) {
            return;
        }
        double whole = course.length() * (event.laps() == null ? 1 : event.laps());
        if (whole > LONGEST) {
            faults.add(event.file(), event.lines().of("laps"), "laps", event.laps() + " laps of " + km(course.length()), "at most 3000 km over all laps", "Check laps and course.");
            return;
        }
        for (Event.Support point : event.support()) {
            if (point.at() > whole * (1 + MEASURED)) {
                faults.add(Fault.warning(event.file(), point.line(), "support", "a point at " + km(point.at()), "points up to the finish at " + km(whole),
                        "It is not used. Check its distance, the laps and the course."));
            }
        }
        for (Pit pit : event.plan().pits()) {
            if (pit.at() > course.length() * (1 + MEASURED)) {
                faults.add(Fault.warning(event.file(), pit.line(), "pits", "a pit at " + km(pit.at()), "pits within a lap of " + km(course.length()),
                        "It is not used. Distances of pits are from the start of the lap."));
            }
        }
        if (event.timeLimit() != null && whole / event.timeLimit() > FASTEST) {
            faults.add(event.file(), event.lines().of("time limit"), "time limit", km(whole) + " in " + Math.round(event.timeLimit() / 60) + " min", "a time that can be ridden",
                    "Check time limit, laps and course.");
        }
        if (event.startHeight() != null && course.line() != null && course.line().absolute()) {
            faults.add(Fault.warning(event.file(), event.lines().of("start height"), "start height", "a height for a course that has its own", "none", "It is not used."));
        }
    }

    /** Times of changes that no day asks for which may come instead. */
    static void changes(Event event, List<PlanB> others, Faults faults) {
        Set<String> unused = new TreeSet<>(event.plan().changes().keySet().stream().map(Work::word).toList());
        for (PlanB other : others) {
            other.lines().forEach(line -> unused.remove(line.change().word()));
        }
        for (String change : unused) {
            faults.add(Fault.warning(event.file(), event.lines().of("time to change/" + change), "time to change", change,
                    "what would change if the day turned out differently",
                    others.isEmpty() ? "It is not used: the forecast has neither \"or\" nor \"good to\"." : "It is not used: nothing else would change."));
        }
    }

    private static String km(double metres) {
        return Math.round(metres / KM * 10) / 10.0 + " km";
    }
}
