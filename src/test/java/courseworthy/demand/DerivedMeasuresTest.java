package courseworthy.demand;

import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Course;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import courseworthy.event.Event;
import courseworthy.ride.InventedCourse;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Measures derived between layers: the pressures, from what is settled on the tyres. */
class DerivedMeasuresTest {

    private static final Course ROUGH = InventedCourse.course(stretch(30, 500, 500, ground(Surface.GRAVEL, Smoothness.VERY_BAD, null, null)));
    private static final Course ROAD = InventedCourse.course(stretch(30, 500, 500, ground(Surface.ASPHALT, Smoothness.GOOD, null, null)));

    private static Demands demands(Course course, double riderMass) {
        Rider rider = Rider.builder().mass(riderMass).build();
        Bike gravel = Bike.builder("gravel").mass(9.5).build();
        return Survey.of(course, rider, Event.UNKNOWN, gravel);
    }

    private static Map<Topic, SettledTopic> settled(String bike, long width, String casing, String insert) {
        Map<Topic, SettledTopic> out = new HashMap<>();
        put(out, "bike", Topics.BIKE.option(bike));
        for (String side : new String[] {"front", "rear"}) {
            put(out, side + " tyre width", width);
            put(out, side + " tyre casing", Topics.of(side + " tyre casing").option(casing));
            put(out, side + " insert", Topics.of(side + " insert").option(insert));
        }
        return out;
    }

    private static void put(Map<Topic, SettledTopic> out, String topic, long value) {
        out.put(Topics.of(topic), new SettledTopic(Topics.of(topic), true, value));
    }

    private static double bar(Map<Measure, MeasureValue> derived, Measure measure) {
        return measure.scale().resolution().shown(derived.get(measure).mid());
    }

    /** Common practice, no source: front and rear travel within about 20 mm of each other. */
    @Test
    void rearTravelStaysWithinTwentyMillimetresOfTheFork() {
        Map<Topic, SettledTopic> fork = new HashMap<>();
        put(fork, "fork travel", 120);
        Map<Measure, MeasureValue> derived = DerivedMeasures.after(2, demands(ROUGH, 75), fork);
        assertThat(derived).containsOnly(Map.entry(Measure.SHORTEST_REAR_TRAVEL, MeasureValue.exact(100)), Map.entry(Measure.LONGEST_REAR_TRAVEL, MeasureValue.exact(140)));
        assertThat(DerivedMeasures.after(3, demands(ROUGH, 75), fork)).isEmpty();
        fork.put(Topics.FORK_TRAVEL, new SettledTopic(Topics.FORK_TRAVEL, false, 0));
        assertThat(DerivedMeasures.after(2, demands(ROUGH, 75), fork)).isEmpty();
        assertThat(DerivedMeasures.topicsRead(Measure.LONGEST_REAR_TRAVEL)).containsExactly(Topics.FORK_TRAVEL);
    }

    @Test
    void pressuresAreKnownAfterTheFifthLayer() {
        Demands demands = demands(ROUGH, 75);
        for (int layer = 0; layer <= Topics.LAST_LAYER; layer++) {
            Map<Measure, MeasureValue> derived = DerivedMeasures.after(layer, demands, settled("gravel", 45, "reinforced", "none"));
            assertThat(derived.size()).isEqualTo(layer == 5 ? 4 : 0);
            derived.keySet().forEach(measure -> assertThat(measure.layer()).isEqualTo(5));
        }
    }

    /** Anchors of practice with a rider of 75 kg (common practice, no source): 45 mm gravel front 1.9 to 2.3, rear 2.1 to 2.5 bar. */
    @Test
    void theRearCarriesMore() {
        Map<Measure, MeasureValue> derived = DerivedMeasures.after(5, demands(ROUGH, 75), settled("gravel", 45, "reinforced", "none"));
        assertThat(bar(derived, Measure.FRONT_REFERENCE_PRESSURE)).isBetween(1.9, 2.3);
        assertThat(bar(derived, Measure.REAR_REFERENCE_PRESSURE)).isBetween(2.1, 2.5);
        assertThat(bar(derived, Measure.FRONT_PRESSURE_FLOOR)).isLessThan(bar(derived, Measure.FRONT_REFERENCE_PRESSURE));
        assertThat(bar(derived, Measure.REAR_PRESSURE_FLOOR)).isLessThan(bar(derived, Measure.REAR_REFERENCE_PRESSURE));
    }

    @Test
    void heavierRidersWiderTyresInsertsAndRoughGround() {
        double usual = bar(DerivedMeasures.after(5, demands(ROUGH, 75), settled("gravel", 45, "reinforced", "none")), Measure.REAR_REFERENCE_PRESSURE);
        Map<Measure, MeasureValue> heavy = DerivedMeasures.after(5, demands(ROUGH, 95), settled("gravel", 45, "reinforced", "none"));
        Map<Measure, MeasureValue> wide = DerivedMeasures.after(5, demands(ROUGH, 75), settled("gravel", 50, "reinforced", "none"));
        Map<Measure, MeasureValue> lined = DerivedMeasures.after(5, demands(ROUGH, 75), settled("gravel", 45, "reinforced", "fitted"));
        Map<Measure, MeasureValue> road = DerivedMeasures.after(5, demands(ROAD, 75), settled("gravel", 45, "reinforced", "none"));
        Map<Measure, MeasureValue> rough = DerivedMeasures.after(5, demands(ROUGH, 75), settled("gravel", 45, "reinforced", "none"));
        assertThat(bar(heavy, Measure.REAR_REFERENCE_PRESSURE)).isGreaterThan(usual);
        assertThat(bar(wide, Measure.REAR_REFERENCE_PRESSURE)).isLessThan(usual);
        assertThat(bar(lined, Measure.REAR_PRESSURE_FLOOR)).isLessThan(bar(rough, Measure.REAR_PRESSURE_FLOOR));
        assertThat(bar(road, Measure.REAR_PRESSURE_FLOOR)).isLessThan(bar(rough, Measure.REAR_PRESSURE_FLOOR));
        assertThat(bar(road, Measure.REAR_REFERENCE_PRESSURE)).isEqualTo(usual);
    }

    /** Without a width, or without a bike settled or at hand, there is nothing to go by. */
    @Test
    void whatIsNotSettledIsNotDerived() {
        Map<Topic, SettledTopic> noWidth = settled("gravel", 45, "reinforced", "none");
        noWidth.put(Topics.FRONT_TYRE_WIDTH, new SettledTopic(Topics.FRONT_TYRE_WIDTH, false, 0));
        assertThat(DerivedMeasures.after(5, demands(ROUGH, 75), noWidth)).containsOnlyKeys(Measure.REAR_REFERENCE_PRESSURE,
                Measure.REAR_PRESSURE_FLOOR);
        Map<Topic, SettledTopic> noBike = settled("gravel", 45, "reinforced", "none");
        noBike.remove(Topics.BIKE);
        Demands anyBike = Survey.of(ROUGH, Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN);
        assertThat(DerivedMeasures.after(5, anyBike, noBike)).isEmpty();
        assertThat(DerivedMeasures.after(5, demands(ROUGH, 75), noBike)).hasSize(4);
    }
}
