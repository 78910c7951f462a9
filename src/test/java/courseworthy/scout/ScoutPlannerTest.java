package courseworthy.scout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.course.Course;
import courseworthy.course.GeoPoint;
import courseworthy.course.Ground;
import courseworthy.course.GroundOrigin;
import courseworthy.course.GroundPairs;
import courseworthy.course.Stretch;
import courseworthy.course.Track;
import courseworthy.demand.RideInput;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.problem.Progress;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ScoutPlannerTest {

    private static final DroolsRules RULES = new DroolsRules(ShippedRules.rules(), ShippedRules.load());
    private static final Ground ROAD = ground("surface=asphalt, smoothness=good");
    private static final Ground GRAVEL = ground("surface=gravel, smoothness=bad");

    private static Ground ground(String pairs) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String pair : pairs.split(", ")) {
            values.put(pair.split("=")[0], pair.split("=")[1]);
        }
        return GroundPairs.ground(values);
    }

    private static Stretch stretch(double length, Ground ground) {
        return new Stretch(length, null, null, null, ground, 0);
    }

    private static Stretch perhaps(double length, GroundOrigin origin, Ground ground, Ground... others) {
        return new Stretch(length, null, null, null, ground, List.of(others), origin, 0);
    }

    private static RideInput ride(Course course) {
        return new RideInput(course, Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN);
    }

    private static ScoutPlan plan(Stretch... stretches) {
        return plan(Course.builder("a", List.of(stretches)).build());
    }

    private static ScoutPlan plan(Course course) {
        RideInput ride = ride(course);
        return ScoutPlanner.plan(ride, RULES, CallMaker.call(RULES, ride), Progress.UNSEEN);
    }

    private static List<String> pieces(ScoutQuestion question) {
        return question.pieces().stream().map(each -> Math.round(each.from()) + "-" + Math.round(each.to())).toList();
    }

    @Test
    void knownGroundAsksNothing() {
        assertThat(plan(stretch(5000, ROAD), stretch(3000, GRAVEL)).questions()).isEmpty();
    }

    @Test
    void whatIsNotWrittenIsAskedOfTogether() {
        ScoutPlan plan = plan(stretch(5000, ROAD), stretch(4000, Ground.UNKNOWN), stretch(6000, GRAVEL), stretch(1000, Ground.UNKNOWN));

        assertThat(plan.questions()).hasSize(1);
        assertThat(pieces(plan.questions().get(0))).containsExactly("5000-9000", "15000-16000");
        assertThat(plan.unknown()).isEqualTo(5000, within(1e-6));
        assertThat(plan.length()).isEqualTo(16000, within(1e-6));
    }

    @Test
    void anAnswerIsTheRecommendationOnThatGround() {
        ScoutPlan plan = plan(stretch(5000, ROAD), stretch(4000, Ground.UNKNOWN));

        for (PossibleAnswer answer : plan.questions().get(0).answers()) {
            Call truth = CallMaker.call(RULES, ride(Course.builder("a", List.of(stretch(5000, ROAD), stretch(4000, answer.ground()))).build()));
            assertThat(answer.seconds()).isEqualTo(truth.demands().estimated().estimate().total().mid(), within(1e-6));
            truth.decisions().forEach(decision -> {
                if (answer.changes().containsKey(decision.topic().name())) {
                    assertThat(answer.changes()).containsEntry(decision.topic().name(), decision.text());
                }
            });
        }
    }

    @Test
    void whatTheMapLeavesOpenIsAskedOfTagByTag() {
        GroundOrigin track = new GroundOrigin("Mill Lane", Map.of("tracktype", "grade3"), Map.of());
        GroundOrigin path = new GroundOrigin("", Map.of(), Map.of("path", Map.of()));
        ScoutPlan plan = plan(perhaps(2000, track, ground("surface=unpaved"), GRAVEL, ground("surface=ground")), stretch(3000, ROAD),
                perhaps(1000, path, ground("surface=unpaved"), GRAVEL, ROAD),
                perhaps(500, new GroundOrigin("Mill Road", Map.of("tracktype", "grade3"), Map.of()), ground("surface=unpaved"), GRAVEL, ground("surface=ground")));

        assertThat(plan.questions()).extracting(ScoutPlannerTest::pieces).containsExactlyInAnyOrder(List.of("0-2000", "6000-6500"), List.of("5000-6000"));
        assertThat(plan.questions()).allSatisfy(question -> assertThat(question.answers()).hasSize(3));
        assertThat(plan.questions().stream().flatMap(question -> question.pieces().stream()).map(UnknownPiece::way))
                .containsExactlyInAnyOrder("Mill Lane", "Mill Road", "");
    }

    @Test
    void placesWhereNoWayWasMatchedHaveNothingInCommon() {
        Stretch lost = perhaps(800, GroundOrigin.UNMATCHED, Ground.UNKNOWN);
        ScoutPlan plan = plan(lost, lost, stretch(3000, ROAD), lost);

        assertThat(plan.questions()).extracting(ScoutPlannerTest::pieces).containsExactlyInAnyOrder(List.of("0-1600"), List.of("4600-5400"));
    }

    @Test
    void whatCouldChangeMostComesFirst() {
        ScoutPlan plan = plan(perhaps(300, GroundOrigin.UNMATCHED, Ground.UNKNOWN), stretch(3000, ROAD),
                perhaps(9000, GroundOrigin.UNMATCHED, Ground.UNKNOWN), stretch(3000, ROAD), perhaps(2000, GroundOrigin.UNMATCHED, Ground.UNKNOWN));

        assertThat(plan.questions()).extracting(question -> Math.round(question.length())).containsExactly(9000L, 2000L, 300L);
        assertThat(plan.questions()).isSortedAccordingTo((one, other) -> Double.compare(other.hanging(), one.hanging()));
        assertThat(plan.hanging()).isEqualTo(plan.questions().stream().mapToDouble(ScoutQuestion::hanging).sum(), within(1e-9));
    }

    @Test
    void aPieceHasItsPlaceOnTheTrack() {
        double[] lat = {50, 50.01, 50.02};
        double[] lon = {-20, -20, -20};
        Track track = new Track(List.of(new Track.TrackPiece(lat, lon, new double[] {0, 1112, 2224}, new double[] {0, 0, 0})), Track.Elevation.MISSING);
        ScoutPlan plan = plan(Course.builder("a", List.of(stretch(556, ROAD), stretch(1668, Ground.UNKNOWN))).track(track).build());

        GeoPoint place = plan.questions().get(0).pieces().get(0).place();
        assertThat(place.latitude()).isEqualTo(50.005, within(1e-6));
        assertThat(place.longitude()).isEqualTo(-20, within(1e-6));
    }

    /** The truth is hidden on parts of a course; what a scout finds there brings the true recommendation back. */
    @Test
    void answersBringTheTrueRecommendationBack() {
        List<Stretch> truth = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            truth.add(stretch(1500 + 100 * i, i % 3 == 0 ? ground("surface=ground, smoothness=very_bad, mtb:scale=1") : i % 3 == 1 ? GRAVEL : ROAD));
        }
        List<Stretch> hidden = new ArrayList<>(truth);
        for (int i : List.of(1, 5, 6)) {
            hidden.set(i, perhaps(truth.get(i).length(), GroundOrigin.UNMATCHED, Ground.UNKNOWN));
        }
        ScoutPlan plan = plan(Course.builder("a", hidden).build());
        List<Stretch> answered = new ArrayList<>(hidden);
        for (ScoutQuestion question : plan.questions()) {
            for (UnknownPiece piece : question.pieces()) {
                double at = 0;
                for (int i = 0; i < answered.size(); i++) {
                    boolean within = at >= piece.from() - 1 && at + answered.get(i).length() <= piece.to() + 1;
                    at += answered.get(i).length();
                    if (within) {
                        answered.set(i, answered.get(i).known(truth.get(i).ground()));
                    }
                }
            }
        }

        Call found = CallMaker.call(RULES, ride(Course.builder("a", answered).build()));
        Call whole = CallMaker.call(RULES, ride(Course.builder("a", truth).build()));
        assertThat(found.decisions()).extracting(each -> each.topic() + " " + each.text())
                .containsExactlyElementsOf(whole.decisions().stream().map(each -> each.topic() + " " + each.text()).toList());
    }
}
