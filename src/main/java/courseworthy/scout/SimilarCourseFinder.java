package courseworthy.scout;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.course.Course;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureGroup;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.RideInput;
import courseworthy.engine.RuleSet;
import courseworthy.problem.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Finds the courses of a library that ask for the most similar set-ups, for the same rider and day. Courses are compared by their measures, and a
 * measure counts by the decisions that change on the course asked about when it alone is moved as far as it goes in the library.
 */
public final class SimilarCourseFinder {

    /** Courses for which the whole recommendation is made, the most similar (judgement, no source). */
    public static final int NEAREST = 3;

    private static final Set<MeasureGroup> OF_THE_COURSE = EnumSet.of(MeasureGroup.COURSE, MeasureGroup.TERRAIN, MeasureGroup.RIDE);
    private static final List<Measure> MEASURES = measures();

    private static final Comparator<MeasureWeight> HEAVIEST = Comparator.comparingDouble(each -> -each.weight());
    private static final Comparator<MeasureDifference> FARTHEST_APART = Comparator.comparingDouble((MeasureDifference each) -> -each.part())
            .thenComparing(each -> -each.weight());
    private static final Comparator<SimilarCourse> MOST_SIMILAR = Comparator.comparingDouble(SimilarCourse::difference)
            .thenComparing(each -> each.library().file());

    private final RideInput ride;
    private final RuleSet rules;
    private final Call now;
    private final Progress progress;
    private final int steps;
    private int done;

    private SimilarCourseFinder(RideInput ride, RuleSet rules, Call now, int courses, Progress progress) {
        this.ride = ride;
        this.rules = rules;
        this.now = now;
        this.progress = progress;
        this.steps = courses + MEASURES.size() + Math.min(NEAREST, courses);
    }

    /**
     * Compares a course with those of a library.
     *
     * @param ride the course asked about, with the rider and the day for which all are judged
     * @param now  what is recommended there
     */
    public static SimilarCourses find(RideInput ride, RuleSet rules, Call now, List<LibraryCourse> library, Progress progress) {
        return new SimilarCourseFinder(ride, rules, now, library.size(), progress).find(library);
    }

    private static List<Measure> measures() {
        List<Measure> out = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (OF_THE_COURSE.contains(measure.group()) && !measure.derived()) {
                out.add(measure);
            }
        }
        return out;
    }

    private SimilarCourses find(List<LibraryCourse> library) {
        Demands here = ride.atHand();
        List<Demands> there = new ArrayList<>();
        for (LibraryCourse each : library) {
            step();
            there.add(on(each.course()).atHand());
        }
        List<MeasureWeight> weights = weights(here, there);
        List<SimilarCourse> courses = new ArrayList<>();
        for (int i = 0; i < library.size(); i++) {
            courses.add(new SimilarCourse(library.get(i), differences(weights, here, there.get(i)), null));
        }
        courses.sort(MOST_SIMILAR);
        for (int i = 0; i < Math.min(NEAREST, courses.size()); i++) {
            step();
            SimilarCourse course = courses.get(i);
            courses.set(i, course.with(decisions(CallMaker.call(rules, on(course.library().course())))));
        }
        return new SimilarCourses(weights, courses);
    }

    /** The ride on another course: where it goes over laps, over so many there that both come nearest to each other in length, one at the least. */
    private RideInput on(Course course) {
        RideInput there = ride.with(course);
        Integer laps = ride.event().laps();
        return laps == null || laps < 2 ? there : there.with(ride.event().withLaps((int) Math.max(1, Math.round(laps * ride.course().length() / course.length()))));
    }

    private void step() {
        progress.at(done++, steps);
    }

    /** Weights of the measures that are not the same on all courses, the heaviest first. */
    private List<MeasureWeight> weights(Demands here, List<Demands> there) {
        List<MeasureWeight> out = new ArrayList<>();
        for (Measure measure : MEASURES) {
            step();
            List<MeasureValue> values = new ArrayList<>();
            values.add(here.get(measure));
            there.forEach(each -> values.add(each.get(measure)));
            MeasureValue lowest = null;
            MeasureValue highest = null;
            for (MeasureValue value : values) {
                lowest = lowest == null || value != null && value.mid() < lowest.mid() ? value : lowest;
                highest = highest == null || value != null && value.mid() > highest.mid() ? value : highest;
            }
            if (lowest != null && (lowest.mid() != highest.mid() || values.contains(null))) {
                int changes = changes(measure, lowest) + (lowest.mid() == highest.mid() ? 0 : changes(measure, highest));
                out.add(new MeasureWeight(measure, lowest, highest, changes / 2.0));
            }
        }
        out.sort(HEAVIEST);
        return out;
    }

    /** Decisions that come out differently where a measure has another value, all else as it is. */
    private int changes(Measure measure, MeasureValue value) {
        MeasureValue own = now.demands().get(measure);
        if (own != null && own.mid() == value.mid()) {
            return 0;
        }
        Call moved = CallMaker.call(rules, now.demands().with(Map.of(measure, value)));
        return decisions(moved).size();
    }

    /** What another recommendation decides differently. */
    private List<DecisionDifference> decisions(Call other) {
        List<DecisionDifference> out = new ArrayList<>();
        for (int i = 0; i < now.decisions().size(); i++) {
            Decision mine = now.decisions().get(i);
            Decision its = other.decisions().get(i);
            if (mine.status() != its.status() || !Objects.equals(mine.value(), its.value())) {
                out.add(new DecisionDifference(mine, its));
            }
        }
        return out;
    }

    /** The measures that decide something, as they are on two courses; those known on neither are left out. */
    static List<MeasureDifference> differences(List<MeasureWeight> weights, Demands here, Demands there) {
        List<MeasureDifference> out = new ArrayList<>();
        for (MeasureWeight each : weights) {
            MeasureValue mine = here.get(each.measure());
            MeasureValue its = there.get(each.measure());
            if (each.weight() > 0 && (mine != null || its != null)) {
                out.add(new MeasureDifference(each.measure(), each.weight(), mine, its, each.apart(mine, its)));
            }
        }
        out.sort(FARTHEST_APART);
        return out;
    }
}
