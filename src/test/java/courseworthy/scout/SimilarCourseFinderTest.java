package courseworthy.scout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.Ground;
import courseworthy.course.GroundPairs;
import courseworthy.course.Stretch;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.RideInput;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SimilarCourseFinderTest {

    private static final DroolsRules RULES = new DroolsRules(ShippedRules.rules(), ShippedRules.load());
    private static final List<LibraryCourse> SHIPPED = shipped();

    private static List<LibraryCourse> shipped() {
        List<LibraryCourse> out = new ArrayList<>();
        for (String name : List.of("beech-hollow", "heather-ridge", "market-roads", "ochre-flats", "three-becks", "wide-fallow")) {
            Faults faults = new Faults();
            out.add(new LibraryCourse(name, CourseReader.read(Path.of("course-profiles", name + ".yaml"), name, null, faults)));
            faults.throwIfAny();
        }
        return out;
    }

    private static Course course(String name) {
        return SHIPPED.stream().filter(each -> each.file().equals(name)).findFirst().orElseThrow().course();
    }

    private static RideInput ride(Course course) {
        return new RideInput(course, Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN);
    }

    private static SimilarCourses find(Course course, List<LibraryCourse> library) {
        RideInput ride = ride(course);
        return SimilarCourseFinder.find(ride, RULES, CallMaker.call(RULES, ride), library, Progress.UNSEEN);
    }

    private static Ground ground(String surface, String smoothness) {
        return GroundPairs.ground(new LinkedHashMap<>(Map.of("surface", surface, "smoothness", smoothness)));
    }

    private static Course onGround(String name, double length, Ground ground) {
        return Course.builder(name, List.of(new Stretch(length, null, null, null, ground, 0))).build();
    }

    @Test
    void theOriginalOfASlightlyChangedCourseIsTheNearest() {
        for (LibraryCourse original : SHIPPED) {
            List<Stretch> stretches = new ArrayList<>(original.course().stretches());
            Stretch first = stretches.get(0);
            stretches.set(0, new Stretch(first.length() + 50, first.ascent(), first.descent(), first.steepest(), first.ground(), first.line()));

            SimilarCourses found = find(original.course().with(stretches), SHIPPED);

            assertThat(found.courses().get(0).library()).isEqualTo(original);
            assertThat(found.courses().get(0).difference()).isLessThan(0.02);
            assertThat(found.courses().get(1).difference()).isGreaterThan(found.courses().get(0).difference());
        }
    }

    /** Seven laps of 4 km are 28 km: nobody rides seven laps of 118 km to compare with them, and 14 of 2 km are the same distance. */
    @Test
    void aLongCourseIsNotRiddenOverTheLapsOfAShortOne() {
        Course lap = onGround("lap", 4000, ground("gravel", "bad"));
        List<LibraryCourse> library = List.of(new LibraryCourse("shorter", onGround("shorter", 2000, ground("gravel", "bad"))), new LibraryCourse("longer", course("market-roads")));
        RideInput ride = ride(lap).with(Event.builder().laps(7).build());
        SimilarCourses found = SimilarCourseFinder.find(ride, RULES, CallMaker.call(RULES, ride), library, Progress.UNSEEN);
        MeasureWeight distance = found.weights().stream().filter(each -> each.measure() == Measure.DISTANCE).findFirst().orElseThrow();
        assertThat(distance.measure().scale().text(distance.highest().mid())).isEqualTo("118.0 km");
        assertThat(distance.measure().scale().text(distance.lowest().mid())).as("14 laps of the shorter are the same 28 km").isEqualTo("28.0 km");
    }

    @Test
    void aCopyIsTheSameInEverything() {
        SimilarCourse copy = find(course("heather-ridge"), SHIPPED).courses().get(0);

        assertThat(copy.library().file()).isEqualTo("heather-ridge");
        assertThat(copy.difference()).isZero();
        assertThat(copy.differing()).isEmpty();
        assertThat(copy.decisions()).isEmpty();
    }

    /** What rules use is read from their files, not from the tool. */
    @Test
    void measuresThatNoRuleUsesHaveNoWeight() throws IOException {
        StringBuilder written = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".yaml") || each.toString().endsWith(".drl")).sorted().toList()) {
                written.append(file.toString().contains(".cases.") ? "" : Files.readString(file));
            }
        }
        List<MeasureWeight> weights = find(course("heather-ridge"), SHIPPED).weights();

        List<MeasureWeight> unused = weights.stream().filter(each -> written.indexOf(each.measure().written()) < 0).toList();
        assertThat(unused).extracting(MeasureWeight::measure).contains(Measure.TURNS_PER_KM);
        assertThat(unused).allSatisfy(each -> assertThat(each.weight()).isZero());
        assertThat(weights.get(0).weight()).isGreaterThan(1);
        assertThat(weights).isSortedAccordingTo((one, other) -> Double.compare(other.weight(), one.weight()));
    }

    @Test
    void aWeightIsTheMeanOfWhatItsEndsChange() {
        RideInput ride = ride(course("heather-ridge"));
        Call now = CallMaker.call(RULES, ride);
        MeasureWeight sharp = find(ride.course(), SHIPPED).weights().stream().filter(each -> each.measure() == Measure.WORST_ROUGHNESS).findFirst().orElseThrow();

        int changes = 0;
        for (MeasureValue end : List.of(sharp.lowest(), sharp.highest())) {
            Call moved = CallMaker.call(RULES, now.demands().with(Map.of(Measure.WORST_ROUGHNESS, end)));
            for (Decision decision : now.decisions()) {
                changes += moved.on(decision.topic()).text().equals(decision.text()) ? 0 : 1;
            }
        }
        assertThat(sharp.weight()).isEqualTo(changes / 2.0);
        assertThat(changes).isPositive();
    }

    @Test
    void twoCoursesAreAsFarApartFromEitherSide() {
        List<MeasureWeight> weights = find(course("heather-ridge"), SHIPPED).weights();
        for (LibraryCourse one : SHIPPED) {
            for (LibraryCourse other : SHIPPED) {
                assertThat(difference(weights, one, other)).isEqualTo(difference(weights, other, one), within(1e-12)).isBetween(0.0, 1.0);
            }
        }
    }

    private static double difference(List<MeasureWeight> weights, LibraryCourse one, LibraryCourse other) {
        Demands here = ride(one.course()).atHand();
        Demands there = ride(other.course()).atHand();
        return new SimilarCourse(other, SimilarCourseFinder.differences(weights, here, there), null).difference();
    }

    @Test
    void ofThreeTheMiddleOneIsNearerToEitherThanTheyAreToEachOther() {
        Course smooth = onGround("smooth", 40_000, ground("asphalt", "good"));
        Course middling = onGround("middling", 40_000, ground("compacted", "intermediate"));
        Course rough = onGround("rough", 40_000, ground("ground", "horrible"));
        List<LibraryCourse> all = List.of(new LibraryCourse("smooth", smooth), new LibraryCourse("middling", middling), new LibraryCourse("rough", rough));

        assertThat(find(smooth, all).courses()).extracting(each -> each.library().file()).containsExactly("smooth", "middling", "rough");
        assertThat(find(rough, all).courses()).extracting(each -> each.library().file()).containsExactly("rough", "middling", "smooth");
    }

    @Test
    void whatIsKnownOnOneSideOnlyCountsHalf() {
        MeasureWeight ascent = new MeasureWeight(Measure.ASCENT, MeasureValue.exact(10), MeasureValue.exact(110), 3);

        assertThat(ascent.apart(MeasureValue.exact(10), MeasureValue.exact(110))).isEqualTo(1);
        assertThat(ascent.apart(MeasureValue.exact(60), MeasureValue.exact(35))).isEqualTo(0.25);
        assertThat(ascent.apart(null, MeasureValue.exact(35))).isEqualTo(0.5);
        assertThat(ascent.apart(MeasureValue.exact(35), null)).isEqualTo(0.5);
        assertThat(ascent.apart(null, null)).isZero();
        assertThat(new MeasureWeight(Measure.ASCENT, MeasureValue.exact(10), MeasureValue.exact(10), 3).apart(MeasureValue.exact(10), MeasureValue.exact(10))).isZero();
    }

    @Test
    void theDifferenceIsTheMeanByWeight() {
        List<MeasureWeight> weights = List.of(new MeasureWeight(Measure.DISTANCE, MeasureValue.exact(0), MeasureValue.exact(100), 3),
                new MeasureWeight(Measure.ASCENT, MeasureValue.exact(0), MeasureValue.exact(100), 1),
                new MeasureWeight(Measure.DESCENT, MeasureValue.exact(0), MeasureValue.exact(100), 4),
                new MeasureWeight(Measure.CLIMBS, MeasureValue.exact(0), MeasureValue.exact(100), 0));
        Demands here = new Demands(Map.of(Measure.DISTANCE, MeasureValue.exact(20), Measure.ASCENT, MeasureValue.exact(0), Measure.CLIMBS,
                MeasureValue.exact(0)), List.of(), List.of());
        Demands there = new Demands(Map.of(Measure.DISTANCE, MeasureValue.exact(40), Measure.ASCENT, MeasureValue.exact(100), Measure.CLIMBS,
                MeasureValue.exact(100)), List.of(), List.of());

        SimilarCourse course = new SimilarCourse(SHIPPED.get(0), SimilarCourseFinder.differences(weights, here, there), null);

        assertThat(course.measures()).extracting(MeasureDifference::measure).containsExactly(Measure.ASCENT, Measure.DISTANCE);
        assertThat(course.difference()).isEqualTo((3 * 0.2 + 1 * 1.0) / (3 + 1), within(1e-12));
    }

    @Test
    void decisionsAreThoseOfTheWholeRecommendationOnEachCourse() {
        Call here = CallMaker.call(RULES, ride(course("heather-ridge")));
        SimilarCourses found = find(course("heather-ridge"), SHIPPED.stream().filter(each -> !each.file().equals("heather-ridge")).toList());

        assertThat(found.nearest()).hasSize(3);
        assertThat(found.others()).hasSize(2);
        for (SimilarCourse near : found.nearest()) {
            Call there = CallMaker.call(RULES, ride(near.library().course()));
            List<String> expected = new ArrayList<>();
            for (Decision decision : here.decisions()) {
                String its = there.on(decision.topic()).text();
                if (!its.equals(decision.text())) {
                    expected.add(decision.topic() + ": " + decision.text() + " / " + its);
                }
            }
            assertThat(near.decisions()).extracting(each -> each.topic() + ": " + each.here() + " / " + each.there()).containsExactlyElementsOf(expected);
        }
    }
}
