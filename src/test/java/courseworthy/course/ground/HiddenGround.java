package courseworthy.course.ground;

import courseworthy.RealData;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.CourseSources;
import courseworthy.course.Ground;
import courseworthy.course.GroundPairs;
import courseworthy.course.Stretch;
import courseworthy.course.Track;
import courseworthy.course.extract.Corridor;
import courseworthy.course.extract.ExtractReader;
import courseworthy.course.extract.MapExtract;
import courseworthy.course.extract.MapWay;
import courseworthy.demand.RideInput;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.scout.GroundAnswer;
import courseworthy.scout.ScoutPlan;
import courseworthy.scout.ScoutPlanner;
import courseworthy.scout.ScoutQuestion;
import courseworthy.scout.UnknownPiece;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * A course over mapped ways, of which the map has lost the ground of some drawn by chance, and a scout who finds there what the whole map says. What
 * the whole map leaves open is as it infers.
 */
final class HiddenGround {

    private static final DroolsRules RULES = new DroolsRules(ShippedRules.rules(), ShippedRules.load());
    private static final Set<String> OF_THE_GROUND = Set.of("surface", "smoothness", "tracktype", "mtb:scale", "mtb:scale:uphill", "mtb:scale:imba", "sac_scale",
            "trail_visibility");
    /** Share of the ways whose ground is hidden. */
    private static final double HIDDEN = 0.2;
    private static final double CORRIDOR = 200;

    private final String name;
    private final Path file;
    /** Ways that the track was joined from: id, first and last point, and more. */
    private final List<String> joined;
    private final MapExtract extract;
    private final Course truth;
    private final List<String> decided;

    /**
     * What a scout gets out of a course.
     *
     * @param hidden  m of ground that is not known for sure
     * @param hanging s that hang on it
     * @param after   s that still hang after the first three answers
     * @param wrong   decisions that are otherwise with all answers than with the truth
     */
    record Outcome(double hidden, double hanging, double after, List<String> wrong) {

        /** Share of the time that hangs which the first three answers remove. */
        double removed() {
            return 1 - after / hanging;
        }

        /** Mean share that the first three answers remove. */
        static double removed(List<Outcome> outcomes) {
            return outcomes.stream().mapToDouble(Outcome::removed).average().orElseThrow();
        }

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%.0f m not sure, %.0f s hang on it, %.0f s after three answers", hidden, hanging, after);
        }
    }

    /** A track of the real data on its real map. */
    HiddenGround(String name) throws IOException {
        this.name = name;
        this.file = RealData.at("tracks/" + name + ".gpx");
        List<String> rows = Files.readAllLines(RealData.at("osm/" + name + ".ways.csv"));
        joined = rows.subList(1, rows.size());
        Track track = CourseReader.read(file, name, null, new Faults()).track();
        extract = ExtractReader.read(List.of(RealData.at("osm/liechtenstein-2022.osm.pbf")), Corridor.around(track, CORRIDOR), new Faults(), Progress.UNSEEN);
        truth = truth(course(extract));
        decided = decided(truth);
    }

    /** What is sure by the whole map; where it matched no way for sure, the ground of the ways that the track was joined from. */
    private Course truth(Course read) {
        Course out = read.with(read.stretches().stream().map(each -> each.known(found(each))).toList());
        TagInterpreter tags = new TagInterpreter(GroundRules.shipped());
        Map<String, MapWay> ways = new HashMap<>();
        extract.ways().forEach(way -> ways.put(Long.toString(way.id()), way));
        double[] distance = read.track().pieces().get(0).distance();
        for (String row : joined) {
            String[] cells = row.split(",", -1);
            Map<String, String> found = ways.containsKey(cells[0]) ? tags.of(ways.get(cells[0]).tags()).likely() : Map.of();
            double from = distance[Integer.parseInt(cells[1])];
            double to = distance[Integer.parseInt(cells[2])];
            double at = 0;
            for (Stretch stretch : read.stretches()) {
                double start = Math.max(from, at);
                double end = Math.min(to, at + stretch.length());
                if (stretch.origin().isUnmatched() && !found.isEmpty() && end - start > 1) {
                    out = new GroundAnswer(start, end, found).on(out);
                }
                at += stretch.length();
            }
        }
        return out;
    }

    /** The likely ground, else the first that it may be. */
    private static Ground found(Stretch stretch) {
        return GroundPairs.of(stretch.ground()).isEmpty() && !stretch.alternatives().isEmpty() ? stretch.alternatives().get(0) : stretch.ground();
    }

    private Course course(MapExtract map) {
        return CourseReader.with(file, name, new CourseSources(null, (track, shown, faults) -> MapGround.under(track, map), null), new Faults());
    }

    private static Call call(Course course) {
        return CallMaker.call(RULES, ride(course));
    }

    private static RideInput ride(Course course) {
        return new RideInput(course, Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN);
    }

    private static List<String> decided(Course course) {
        return call(course).decisions().stream().map(each -> each.topic().name() + " " + each.text()).toList();
    }

    /** Hides the ground of ways drawn by a seed, and scouts. */
    Outcome scouted(long seed) {
        Course course = course(hidden(seed));
        ScoutPlan plan = plan(course);
        Course three = answered(course, plan.questions().subList(0, Math.min(3, plan.questions().size())));
        List<String> wrong = new ArrayList<>(decided(answered(course, plan.questions())));
        wrong.removeAll(decided);
        return new Outcome(plan.unknown(), plan.hanging(), plan(three).hanging(), wrong);
    }

    private MapExtract hidden(long seed) {
        Random random = new Random(seed);
        Map<Long, Boolean> drawn = new HashMap<>();
        List<MapWay> ways = new ArrayList<>();
        for (MapWay way : extract.ways()) {
            Map<String, String> left = new LinkedHashMap<>(way.tags());
            left.keySet().removeAll(OF_THE_GROUND);
            boolean hide = drawn.computeIfAbsent(way.id(), none -> random.nextDouble() < HIDDEN);
            ways.add(hide ? new MapWay(way.id(), way.nodes(), way.latitude(), way.longitude(), left) : way);
        }
        return new MapExtract(ways, extract.nodes(), extract.files());
    }

    private static ScoutPlan plan(Course course) {
        return ScoutPlanner.plan(ride(course), RULES, call(course), Progress.UNSEEN);
    }

    /** The course with what the truth has on each piece that is asked of, an answer for each ground there. */
    private Course answered(Course course, List<ScoutQuestion> questions) {
        Course out = course;
        for (ScoutQuestion question : questions) {
            for (UnknownPiece piece : question.pieces()) {
                double at = 0;
                for (Stretch stretch : truth.stretches()) {
                    double from = Math.max(at, piece.from());
                    double to = Math.min(at + stretch.length(), piece.to());
                    Map<String, String> found = GroundPairs.of(stretch.ground());
                    if (to - from > 1 && !found.isEmpty()) {
                        out = new GroundAnswer(from, to, found).on(out);
                    }
                    at += stretch.length();
                }
            }
        }
        return out;
    }
}
