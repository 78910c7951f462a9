package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What parts weigh, roll and drag, in grams and percent: against what is published, and against a workshop's scale (common practice, no source). */
class PartEffectsTest {

    /**
     * Grams of ordinary parts, lightest, usual, heaviest, from what a workshop's scale shows (common practice, no source). Values of topics are
     * positions in their lists, or millimetres, pieces and tenths of a litre.
     */
    @ParameterizedTest
    @CsvSource({
        // A spare tube for 28 x 622 weighs 80 g, for 45 to 57 x 622 around 140 g, thick ones for wide tyres up to 240 g; a plug a few grams.
        "tubes, 0, 1, 80, 140, 240",
        "tubes, 1, 3, 160, 280, 480",
        "plugs, 0, 5, 10, 20, 50",
        // Foam inserts of 60 to 250 g, cut to size.
        "front insert, 0, 1, 60, 120, 250",
        "rear insert, 0, 1, 60, 120, 250",
        // The same tyre in three casings, 650, 730 and 930 g.
        "front tyre casing, 0, 1, 40, 80, 150",
        "rear tyre casing, 1, 2, 100, 200, 350",
        // Tread blocks: 30 g a step.
        "front tyre tread, 0, 1, 0, 30, 60",
        "rear tyre tread, 1, 3, 0, 60, 120",
        // 50 mm of rim against 30 mm; and a carbon rim against the alloy one.
        "front rim depth, 0, 1, 0, 60, 150",
        "rear rim depth, 0, 1, 0, 60, 150",
        "front rim material, 0, 1, -300, -150, -50",
        "rear rim material, 0, 1, -300, -150, -50",
        // Forks of 120 and 100 mm differ by their chassis at most; a full fork chassis to the next stouter one by 220 g.
        "fork travel, 100, 120, 0, 30, 120",
        "rear travel, 100, 120, 0, 60, 200",
        "fork chassis, 0, 1, 100, 220, 400",
        // A dropper of 550 to 700 g for a post of 200 to 300 g; a remote lever with its cable; none and by hand weigh the same.
        "seatpost, 0, 1, 250, 400, 600",
        "lockout, 0, 2, 30, 70, 150",
        "lockout, 1, 2, 30, 70, 150",
        "lockout, 2, 1, -150, -70, -30",
        "lockout, 0, 1, 0, 0, 0",
        // Rotors of 160 and 180 mm weigh 100 to 115 and 120 to 155 g.
        "front rotor, 160, 180, 15, 25, 45",
        "rear rotor, 160, 200, 30, 50, 90",
        // Second ring, front derailleur, left shifter's works and cable, less what a wider cassette weighs more.
        "chainrings, 0, 1, 150, 250, 400",
        // Of a litre more half is carried on average, drunk evenly; 300 g where it is drunk first, 700 g where it is kept.
        "water, 5, 15, 300, 500, 700"})
    void grams(String topic, long from, long to, double low, double mid, double high) {
        Effect effect = PartEffects.between(Topics.of(topic), from, to);
        assertThat(effect.mass().low() * 1000).isCloseTo(low, within(1e-6));
        assertThat(effect.mass().mid() * 1000).isCloseTo(mid, within(1e-6));
        assertThat(effect.mass().high() * 1000).isCloseTo(high, within(1e-6));
    }

    /** From light to heavy is both steps of casing, each on its own as uncertain: 40 and 100 g, 80 and 200 g (root of the sum of squares). */
    @Test
    void twoStepsOfCasingAreBoth() {
        Range mass = PartEffects.between(Topics.of("rear tyre casing"), 0, 2).mass();
        assertThat(mass.mid()).isCloseTo(0.28, within(1e-9));
        assertThat(mass.low()).isCloseTo(0.28 - Math.hypot(0.04, 0.10), within(1e-9));
        assertThat(mass.high()).isCloseTo(0.28 + Math.hypot(0.07, 0.15), within(1e-9));
        assertThat(PartEffects.between(Topics.of("rear tyre casing"), 2, 0).mass().mid()).isCloseTo(-0.28, within(1e-9));
    }

    /**
     * Tyres of 40 to 57 mm for 622 mm rims weigh 7 to 16 g a millimetre, 11 g where they are ordinary: 440 g for 40 mm, 630 g for 57 mm
     * (common practice, no source).
     */
    @Test
    void aWiderTyreWeighsMore() {
        Range mass = PartEffects.between(Topics.of("front tyre width"), 40, 57).mass();
        assertThat(mass.low() * 1000).isCloseTo(17 * 7, within(1e-6));
        assertThat(mass.mid() * 1000).isCloseTo(17 * 11, within(1e-6));
        assertThat(mass.high() * 1000).isCloseTo(17 * 16, within(1e-6));
        assertThat(PartEffects.between(Topics.of("front tyre width"), 57, 40).mass().mid() * 1000).isCloseTo(-187, within(1e-6));
    }

    /**
     * A pair of tyres 1 mm wider, 0.7 m high, shows 0.0007 m² more to the wind: 0.2 % of a rider of 0.35 m² (drag coefficient about 1;
     * arithmetic). A quarter of it where the tyre hides behind the frame, 1.75 of it at the most (judgement).
     */
    @Test
    void aWiderTyreDragsByItsFront() {
        Effect pair = both("tyre width", 40, 50);
        double shown = 10 * 0.0007 / 0.35;
        assertThat(pair.drag().mid()).isCloseTo(shown, within(1e-9));
        assertThat(pair.drag().low()).isCloseTo(shown / 4, within(1e-9));
        assertThat(pair.drag().high()).isCloseTo(shown * 1.75, within(1e-9));
    }

    /**
     * A wider tyre of one type rolls about 10 % better (Rothhämel 2023, Int. J. Vehicle Systems Modelling and Testing 17:67-80), sizes taken
     * as 28 and 36 mm: that much at the best, six as is likely, and nothing at the worst.
     */
    @Test
    void aWiderTyreRollsBetterByATenthAtMost() {
        Effect pair = both("tyre width", 28, 36);
        assertThat(pair.rolling().low()).isCloseTo(-0.100, within(0.001));
        assertThat(pair.rolling().mid()).isCloseTo(-0.061, within(0.0005));
        assertThat(pair.rolling().high()).isZero();
        // One tyre has half of the rolling.
        assertThat(PartEffects.between(Topics.of("front tyre width"), 28, 36).rolling().low()).isCloseTo(-0.050, within(0.0005));
    }

    /** A smooth tyre against a knobby one, four steps: 21 ± 15 % (Bertucci, Rogier, Reiser 2013, J. Sports Sci. 31:1606-1613, from memory). */
    @Test
    void treadRollsAsIsPublished() {
        Effect pair = both("tyre tread", 0, 4);
        assertThat(pair.rolling().low()).isCloseTo(0.21 - 0.15, within(1e-9));
        assertThat(pair.rolling().high()).isCloseTo(0.21 + 0.15, within(1e-9));
        assertThat(pair.rolling().mid()).isCloseTo(0.21, within(0.011));
    }

    /**
     * Rolling by casing and insert, both wheels: reinforced 1 to 8 %, likely 4; heavy 3 to 15 % more, likely 8; an insert up to 3 %, likely 1
     * (common practice, no source).
     */
    @ParameterizedTest
    @CsvSource({"tyre casing, 0, 1, 1, 4, 8", "tyre casing, 1, 2, 3, 8, 15", "insert, 0, 1, 0, 1, 3"})
    void percentOfRolling(String part, long from, long to, double low, double mid, double high) {
        Range rolling = both(part, from, to).rolling();
        assertThat(rolling.low() * 100).isCloseTo(low, within(1e-9));
        assertThat(rolling.mid() * 100).isCloseTo(mid, within(1e-9));
        assertThat(rolling.high() * 100).isCloseTo(high, within(1e-9));
    }

    /**
     * Better wheels take 2 to 3 % off the whole drag, 2.5 as is likely, with 1 to 3.5 about it since rims differ; a rear wheel has 40 % less
     * drag than a front one (Greenwell et al. 1995, Aeronaut. J. 99:109-120, second-hand). Two steps of depth, both wheels.
     */
    @Test
    void deepRimsTakeOffWhatIsPublished() {
        Range pair = both("rim depth", 0, 2).drag();
        assertThat(pair.mid()).isCloseTo(-0.025, within(1e-9));
        assertThat(pair.low()).isCloseTo(-0.035, within(1e-9));
        assertThat(pair.high()).isCloseTo(-0.010, within(1e-9));
        double front = PartEffects.between(Topics.of("front rim depth"), 0, 2).drag().mid();
        double rear = PartEffects.between(Topics.of("rear rim depth"), 0, 2).drag().mid();
        assertThat(rear / front).isCloseTo(1 - 0.40, within(1e-9));
    }

    /** Of grip, comfort and hours of light nothing can be computed from mass, drag and rolling. */
    @Test
    void whatCannotBeComputedIsNotInvented() {
        for (String topic : List.of("bike", "saddle", "lights", "front tyre pressure", "easiest gear")) {
            Topic each = Topics.of(topic);
            assertThat(PartEffects.between(each, each.least(), each.most())).as(topic).isNull();
        }
    }

    private static Effect both(String part, long from, long to) {
        return PartEffects.between(Topics.of("front " + part), from, to).alike(PartEffects.between(Topics.of("rear " + part), from, to));
    }
}
