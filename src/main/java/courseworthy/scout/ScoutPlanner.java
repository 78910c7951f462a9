package courseworthy.scout;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.call.CloseThresholdFinder;
import courseworthy.course.Course;
import courseworthy.course.GeoPoint;
import courseworthy.course.Ground;
import courseworthy.course.Stretch;
import courseworthy.course.Track;
import courseworthy.decision.Decision;
import courseworthy.demand.RideInput;
import courseworthy.engine.RuleSet;
import courseworthy.problem.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Works out what unknown ground could change: the recommendation is made once for each thing that may be found on each class of pieces, all other
 * ground as it is assumed, and compared with the one that is made now.
 */
public final class ScoutPlanner {

    /** Classes that are worked out, the longest; each takes a recommendation for each thing that may be found. */
    static final int MOST_CLASSES = 30;

    /** Most to change first; then most decisions; then the longest; then the first on the course. */
    private static final Comparator<ScoutQuestion> ORDER = Comparator.comparingLong((ScoutQuestion each) -> -Math.round(each.hanging()))
            .thenComparing(each -> -each.topics().size()).thenComparing(each -> -each.length()).thenComparing(each -> each.pieces().get(0).from());

    private final RideInput ride;
    private final RuleSet rules;
    private final Course course;

    private ScoutPlanner(RideInput ride, RuleSet rules) {
        this.ride = ride;
        this.rules = rules;
        this.course = ride.course();
    }

    /**
     * What to look at before a ride.
     *
     * @param now what is recommended on the ground as it is assumed
     */
    public static ScoutPlan plan(RideInput ride, RuleSet rules, Call now, Progress progress) {
        return new ScoutPlanner(ride, rules).plan(now, progress);
    }

    private ScoutPlan plan(Call now, Progress progress) {
        Map<GroundClass, List<Integer>> classes = classes();
        List<Map.Entry<GroundClass, List<Integer>>> longest = new ArrayList<>(classes.entrySet());
        longest.sort(Comparator.comparingDouble(each -> -length(each.getValue())));
        List<ScoutQuestion> questions = new ArrayList<>();
        for (int i = 0; i < longest.size(); i++) {
            progress.at(i, longest.size());
            GroundClass ground = longest.get(i).getKey();
            List<Integer> stretches = longest.get(i).getValue();
            List<PossibleAnswer> answers = new ArrayList<>();
            for (Ground found : i < MOST_CLASSES ? ground.possible() : List.<Ground>of()) {
                answers.add(answer(found, stretches, now));
            }
            questions.add(new ScoutQuestion(pieces(stretches), course.stretches().get(stretches.get(0)).origin(), answers));
        }
        questions.sort(ORDER);
        return new ScoutPlan(questions, course.length(), seconds(now));
    }

    /** Stretches of unknown ground by class. */
    private Map<GroundClass, List<Integer>> classes() {
        Map<GroundClass, List<Integer>> out = new LinkedHashMap<>();
        int place = 0;
        boolean goesOn = false;
        for (int i = 0; i < course.stretches().size(); i++) {
            Stretch stretch = course.stretches().get(i);
            boolean unmatched = stretch.origin() != null && stretch.origin().isUnmatched();
            place += unmatched && !goesOn ? 1 : 0;
            goesOn = unmatched;
            GroundClass ground = GroundClass.of(stretch, place);
            if (ground != null) {
                out.computeIfAbsent(ground, none -> new ArrayList<>()).add(i);
            }
        }
        return out;
    }

    private double length(List<Integer> stretches) {
        return stretches.stream().mapToDouble(i -> course.stretches().get(i).length()).sum();
    }

    private PossibleAnswer answer(Ground found, List<Integer> stretches, Call now) {
        List<Stretch> ground = new ArrayList<>(course.stretches());
        for (int i : stretches) {
            ground.set(i, ground.get(i).known(found));
        }
        RideInput changed = ride.with(course.with(ground));
        Call call = CallMaker.call(rules, changed);
        Map<String, String> changes = new LinkedHashMap<>();
        for (Decision decision : call.decisions()) {
            if (CloseThresholdFinder.turned(decision, now.on(decision.topic()))) {
                changes.put(decision.topic().name(), decision.text());
            }
        }
        return new PossibleAnswer(found, seconds(call), changes);
    }

    private static double seconds(Call call) {
        return call.demands().estimated().estimate().total().mid();
    }

    /** Neighbouring stretches are one piece. */
    private List<UnknownPiece> pieces(List<Integer> stretches) {
        List<UnknownPiece> out = new ArrayList<>();
        double at = 0;
        int before = -2;
        for (int i = 0; i < course.stretches().size(); i++) {
            Stretch stretch = course.stretches().get(i);
            double to = at + stretch.length();
            if (stretches.contains(i)) {
                String way = stretch.origin() == null ? "" : stretch.origin().way();
                UnknownPiece last = before == i - 1 ? out.remove(out.size() - 1) : null;
                boolean same = last != null && last.way().equals(way);
                if (last != null && !same) {
                    out.add(last);
                }
                out.add(same ? new UnknownPiece(last.from(), to, last.place(), way) : new UnknownPiece(at, to, place(at), way));
                before = i;
            }
            at = to;
        }
        return out;
    }

    /** Where a distance lies on the track; null where there is none. */
    private GeoPoint place(double distance) {
        if (course.track() == null) {
            return null;
        }
        for (Track.TrackPiece piece : course.track().pieces()) {
            for (int i = 1; i < piece.size(); i++) {
                if (piece.distance()[i] >= distance) {
                    double part = Math.max(0, (distance - piece.distance()[i - 1]) / (piece.distance()[i] - piece.distance()[i - 1]));
                    return new GeoPoint(piece.lat()[i - 1] + part * (piece.lat()[i] - piece.lat()[i - 1]),
                            piece.lon()[i - 1] + part * (piece.lon()[i] - piece.lon()[i - 1]));
                }
            }
        }
        return null;
    }
}
