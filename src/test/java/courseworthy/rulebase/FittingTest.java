package courseworthy.rulebase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.rulebase.Fit.Result;
import courseworthy.workshop.Detail;
import courseworthy.workshop.Kind;
import courseworthy.workshop.Part;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The questions of fit against published figures and cases worked by hand. */
class FittingTest {

    private static Part part(Kind kind, Object... details) {
        Map<Detail, Object> out = new EnumMap<>(Detail.class);
        for (int i = 0; i < details.length; i += 2) {
            out.put((Detail) details[i], details[i + 1]);
        }
        return new Part("the " + kind.word(), kind, 1, out);
    }

    private static double mm(double millimetres) {
        return millimetres / 1000;
    }

    /** Bead seat diameters of ISO 5775-2: 622 and 584 differ by 38 mm, 622 and 630 are different rims although both were called 28 inch. */
    @ParameterizedTest
    @CsvSource({"622, 622, FITS", "622, 584, DOES_NOT_FIT", "622, 630, DOES_NOT_FIT", "584, 590, DOES_NOT_FIT", "406, 406, FITS"})
    void beadSeats(double tyre, double rim, Result result) {
        assertThat(Fitting.beadSeat(part(Kind.TYRE, Detail.BEAD_SEAT, mm(tyre)), part(Kind.WHEEL, Detail.BEAD_SEAT, mm(rim))).result()).isEqualTo(result);
    }

    /** ETRTO, decision of 2023: 30 mm on 25 mm is covered, 29 mm and 28 mm are not. */
    @ParameterizedTest
    @CsvSource({"30, 25, FITS", "29, 25, DOES_NOT_FIT", "28, 25, DOES_NOT_FIT", "28, 23, FITS", "57, 30, FITS"})
    void tyreOverRim(double tyre, double rim, Result result) {
        assertThat(Fitting.tyreOnRim(part(Kind.TYRE, Detail.WIDTH, mm(tyre)), part(Kind.WHEEL, Detail.RIM_INNER_WIDTH, mm(rim))).result())
                .isEqualTo(result);
    }

    /** The older general table (from memory: 19C takes 28 to 62, 25C 44 to 64) cautions and never forbids; a maker's chart leads. */
    @Test
    void theGeneralTableCautionsTheMakersChartForbids() {
        Part rim = part(Kind.WHEEL, Detail.RIM_INNER_WIDTH, mm(25));
        assertThat(Fitting.tyreOnRim(part(Kind.TYRE, Detail.WIDTH, mm(40)), rim).words()).contains("44 to 64 mm");
        assertThat(Fitting.tyreOnRim(part(Kind.TYRE, Detail.WIDTH, mm(45)), rim)).isEqualTo(Fit.FITS);
        Part charted = part(Kind.WHEEL, Detail.RIM_INNER_WIDTH, mm(25), Detail.LEAST_TYRE, mm(35), Detail.MOST_TYRE, mm(42));
        assertThat(Fitting.tyreOnRim(part(Kind.TYRE, Detail.WIDTH, mm(40)), charted)).isEqualTo(Fit.FITS);
        assertThat(Fitting.tyreOnRim(part(Kind.TYRE, Detail.WIDTH, mm(45)), charted).words()).isEqualTo("3 mm over the wheel's chart");
    }

    /** A tyre outside the wheel's chart does not fit, even where the rim's inner width is not known; within it, it is not known to fit. */
    @Test
    void aChartForbidsWithoutTheRimsWidth() {
        Part wheel = part(Kind.WHEEL, Detail.MOST_TYRE, mm(50));
        assertThat(Fitting.tyreOnRim(part(Kind.TYRE, Detail.WIDTH, mm(55)), wheel)).isEqualTo(Fit.not("5 mm over the wheel's chart"));
        assertThat(Fitting.tyreOnRim(part(Kind.TYRE, Detail.WIDTH, mm(50)), wheel).result()).isEqualTo(Result.UNKNOWN);
    }

    /** ETRTO TSS as makers quote it: tubeless-type tyres approved for it, from 28 mm. */
    @Test
    void hooklessTakesApprovedTyresAlone() {
        Part rim = part(Kind.WHEEL, Detail.HOOKLESS, true);
        assertThat(Fitting.hookless(part(Kind.TYRE, Detail.WIDTH, mm(28), Detail.HOOKLESS, true), rim)).isEqualTo(Fit.FITS);
        assertThat(Fitting.hookless(part(Kind.TYRE, Detail.WIDTH, mm(27), Detail.HOOKLESS, true), rim).result()).isEqualTo(Result.DOES_NOT_FIT);
        assertThat(Fitting.hookless(part(Kind.TYRE, Detail.WIDTH, mm(40), Detail.HOOKLESS, false), rim).result()).isEqualTo(Result.DOES_NOT_FIT);
        assertThat(Fitting.hookless(part(Kind.TYRE, Detail.WIDTH, mm(40)), rim).result()).isEqualTo(Result.UNKNOWN);
        assertThat(Fitting.hookless(part(Kind.TYRE, Detail.WIDTH, mm(40)), part(Kind.WHEEL, Detail.HOOKLESS, false))).isEqualTo(Fit.FITS);
        assertThat(Fitting.hookless(part(Kind.TYRE, Detail.WIDTH, mm(40)), part(Kind.WHEEL)).result()).isEqualTo(Result.UNKNOWN);
    }

    /** EN 17406:2020: categories 2, 3, 4 up to 15, 60 and 120 cm; ASTM F2043-13 as makers quote it: 61 and 122 cm; 5 without a bound. */
    @ParameterizedTest
    @CsvSource({"EN 2, 0.15, true", "EN 2, 0.20, false", "EN 3, 0.60, true", "EN 3, 0.61, false", "EN 4, 1.20, true", "EN 4, 1.21, false",
        "ASTM 3, 0.61, true", "ASTM 4, 1.22, true", "ASTM 4, 1.23, false", "EN 5, 4, true", "ASTM 1, 0.05, false", "EN 6, 0.15, true"})
    void categories(String category, double drop, boolean fits) {
        assertThat(Fitting.drops(part(Kind.BIKE, Detail.USE_CATEGORY, category), new Load(null, null, drop)).fits()).isEqualTo(fits);
    }

    /** Geometry: 20 mm more fork at 1020 mm/66 to 72 deg, 1150 mm/69 deg and 1250 mm/69 deg slackens by 1.03, 0.93 and 0.86 deg (within 0.05). */
    @ParameterizedTest
    @CsvSource({"1020, 69, 1.03", "1150, 69, 0.93", "1250, 69, 0.86"})
    void aLongerForkSlackensTheHeadAngle(double wheelbase, double angle, double slacker) {
        Part bike = part(Kind.BIKE, Detail.WHEELBASE, mm(wheelbase), Detail.HEAD_ANGLE, angle, Detail.DESIGN_FORK_LENGTH, mm(500));
        assertThat(Fitting.headAngleChange(part(Kind.FORK, Detail.LENGTH, mm(520)), bike)).isCloseTo(-slacker, within(0.05));
        assertThat(Fitting.headAngleChange(part(Kind.FORK, Detail.LENGTH, mm(480)), bike)).isCloseTo(slacker, within(0.05));
    }

    /**
     * At 1058 mm of wheelbase 0.0521 degrees and 0.387 mm of bottom bracket for each mm of travel are stated (at second hand); geometry gives
     * 0.0512 degrees there. A chainstay of 435 mm is usual.
     */
    @Test
    void aLongerForkRaisesTheBottomBracket() {
        Part bike = part(Kind.BIKE, Detail.WHEELBASE, mm(1058), Detail.HEAD_ANGLE, 71.0, Detail.DESIGN_FORK_LENGTH, mm(480),
                Detail.LEAST_FORK_LENGTH, mm(460), Detail.MOST_FORK_LENGTH, mm(500), Detail.CHAINSTAY, mm(435));
        Part longer = part(Kind.FORK, Detail.LENGTH, mm(500));
        assertThat(Fitting.headAngleChange(longer, bike) / 20).isCloseTo(-0.0521, within(0.0015));
        assertThat(Fitting.bottomBracketRise(longer, bike) / mm(20)).isCloseTo(0.387, within(0.01));
        assertThat(Fitting.forkLength(longer, bike)).isEqualTo(Fit.mind("head angle 1 deg slacker than the frame states, bottom bracket 7.8 mm higher"));
        assertThat(Fitting.forkLength(part(Kind.FORK, Detail.LENGTH, mm(470)), bike))
                .isEqualTo(Fit.mind("head angle 0.5 deg steeper than the frame states, bottom bracket 3.9 mm lower"));
    }

    @Test
    void theFramesRangeOfForkLengthIsKept() {
        Part bike = part(Kind.BIKE, Detail.WHEELBASE, mm(1150), Detail.HEAD_ANGLE, 69.0, Detail.DESIGN_FORK_LENGTH, mm(500),
                Detail.LEAST_FORK_LENGTH, mm(490), Detail.MOST_FORK_LENGTH, mm(520));
        assertThat(Fitting.forkLength(part(Kind.FORK, Detail.LENGTH, mm(520)), bike)).isEqualTo(Fit.mind("head angle 0.9 deg slacker than the frame states"));
        assertThat(Fitting.forkLength(part(Kind.FORK, Detail.LENGTH, mm(521)), bike)).isEqualTo(Fit.not("1 mm over the frame's range of length"));
        assertThat(Fitting.forkLength(part(Kind.FORK, Detail.LENGTH, mm(485)), bike)).isEqualTo(Fit.not("5 mm under the frame's range of length"));
        assertThat(Fitting.forkLength(part(Kind.FORK), bike).result()).isEqualTo(Result.UNKNOWN);
    }

    /** By hand: 53/39 with 11-32 takes up (53 - 39) + (32 - 11) = 35 teeth. */
    @Test
    void derailleurCapacity() {
        Part rings = part(Kind.CHAINRING, Detail.TEETH, new int[] {53, 39});
        Part cassette = part(Kind.CASSETTE, Detail.SPROCKETS, new int[] {11, 13, 16, 20, 25, 32});
        assertThat(Fitting.capacity(part(Kind.DERAILLEUR, Detail.CAPACITY, 35), cassette, rings)).isEqualTo(Fit.FITS);
        assertThat(Fitting.capacity(part(Kind.DERAILLEUR, Detail.CAPACITY, 33), cassette, rings))
                .isEqualTo(Fit.not("2 teeth of chain more than the derailleur takes up"));
        assertThat(Fitting.capacity(part(Kind.DERAILLEUR), cassette, rings).result()).isEqualTo(Result.UNKNOWN);
    }

    /** By hand: chainstay 17 in (431.8 mm), 48 and 32 teeth: 34 + 12 + 8 + 1 = 55 in, 110 links. */
    @Test
    void chainLength() {
        Part bike = part(Kind.BIKE, Detail.CHAINSTAY, 17 * 0.0254, Detail.REAR_TRAVEL, 0.0);
        Part rings = part(Kind.CHAINRING, Detail.TEETH, new int[] {48});
        Part cassette = part(Kind.CASSETTE, Detail.SPROCKETS, new int[] {11, 32});
        assertThat(Fitting.links(cassette, rings, bike)).isEqualTo(110);
        assertThat(Fitting.chainLength(part(Kind.CHAIN, Detail.LINKS, 110), cassette, rings, bike)).isEqualTo(Fit.FITS);
        assertThat(Fitting.chainLength(part(Kind.CHAIN, Detail.LINKS, 108), cassette, rings, bike).result()).isEqualTo(Result.DOES_NOT_FIT);
        assertThat(Fitting.chainLength(part(Kind.CHAIN, Detail.LINKS, 114), cassette, rings, bike).words())
                .as("a chain that is cut tears the derailleur off when a larger cassette goes back on").contains("4 links longer", "unless a larger");
        Part moving = part(Kind.BIKE, Detail.CHAINSTAY, 17 * 0.0254, Detail.REAR_TRAVEL, 0.1);
        assertThat(Fitting.chainLength(part(Kind.CHAIN, Detail.LINKS, 120), cassette, rings, moving).result())
                .as("how the chainstay grows is not known").isEqualTo(Result.UNKNOWN);
    }

    @Test
    void aMixIsFlaggedUnlessItsMakerPublishesIt() {
        Part north = part(Kind.DERAILLEUR, Detail.DRIVETRAIN, "north");
        Part south = part(Kind.CASSETTE, Detail.DRIVETRAIN, "south");
        assertThat(Fitting.family(north, south)).isEqualTo(Fit.flagged("a mix of north and south that neither maker publishes"));
        assertThat(Fitting.family(north, part(Kind.CASSETTE, Detail.DRIVETRAIN, "north"))).isEqualTo(Fit.FITS);
        assertThat(Fitting.family(north, part(Kind.CASSETTE, Detail.DRIVETRAIN, "south", Detail.PUBLISHED_WITH, List.of("north")))).isEqualTo(Fit.FITS);
        assertThat(Fitting.family(north, part(Kind.CASSETTE)).result()).isEqualTo(Result.UNKNOWN);
        assertThat(new Fit(Result.FLAGGED, "").fits()).isFalse();
    }

    /** By hand: saddle 740 mm, seat tube 440 mm, saddle 45 mm high: 255 mm of a 350 mm post stand out, 95 mm stay inside. */
    @Test
    void postInsertion() {
        Part bike = part(Kind.BIKE, Detail.SADDLE_HEIGHT, mm(740), Detail.SEAT_TUBE, mm(440), Detail.LEAST_POST_INSERTION, mm(80),
                Detail.MOST_POST_INSERTION, mm(200));
        Part saddle = part(Kind.SADDLE, Detail.HEIGHT, mm(45));
        assertThat(Fitting.postInsertion(part(Kind.SEATPOST, Detail.LENGTH, mm(350), Detail.LEAST_INSERTION, mm(95)), saddle, bike)).isEqualTo(Fit.FITS);
        assertThat(Fitting.postInsertion(part(Kind.SEATPOST, Detail.LENGTH, mm(350), Detail.LEAST_INSERTION, mm(100)), saddle, bike))
                .isEqualTo(Fit.not("the post stands 5 mm too far out at this saddle height"));
        assertThat(Fitting.postInsertion(part(Kind.SEATPOST, Detail.LENGTH, mm(460), Detail.LEAST_INSERTION, mm(95)), saddle, bike))
                .isEqualTo(Fit.not("the post is 5 mm too long for the seat tube"));
    }

    /** A tyre may measure wider than it is marked, so a marking close to the clearance is not enough. */
    @Test
    void clearanceIsOfTheTyreAsMounted() {
        Part wheel = part(Kind.WHEEL, Detail.BEAD_SEAT, mm(622));
        Part fork = part(Kind.FORK, Detail.TYRE_CLEARANCE, List.of(new Part.Clearance(mm(622), mm(45))));
        assertThat(Fitting.clears(part(Kind.TYRE, Detail.MEASURED_WIDTH, mm(45), Detail.WIDTH, mm(42)), wheel, fork)).isEqualTo(Fit.FITS);
        assertThat(Fitting.clears(part(Kind.TYRE, Detail.MEASURED_WIDTH, mm(46), Detail.WIDTH, mm(45)), wheel, fork))
                .isEqualTo(Fit.not("1 mm too wide: 45 mm clears"));
        assertThat(Fitting.clears(part(Kind.TYRE, Detail.WIDTH, mm(44)), wheel, fork).result()).isEqualTo(Result.UNKNOWN);
        assertThat(Fitting.clears(part(Kind.TYRE, Detail.WIDTH, mm(42)), wheel, fork)).isEqualTo(Fit.FITS);
        assertThat(Fitting.clears(part(Kind.TYRE, Detail.WIDTH, mm(30)), part(Kind.WHEEL, Detail.BEAD_SEAT, mm(584)), fork).words())
                .contains("not made for a wheel of 584 mm");
    }

    /** What makers permit: 30 mm of spacers under the stem, stems from 80 to 110 mm; who states nothing permits all. */
    @ParameterizedTest
    @CsvSource({"30, 80, FITS", "30.1, 80, DOES_NOT_FIT", "0, 110, FITS", "0, 79.9, DOES_NOT_FIT", "0, 110.1, DOES_NOT_FIT"})
    void spacersAndStemsWithinWhatIsPermitted(double spacers, double length, Result result) {
        Part bike = part(Kind.BIKE, Detail.HEAD_TUBE, mm(140), Detail.LEAST_STEM, mm(80), Detail.MOST_STEM, mm(110));
        Part fork = part(Kind.FORK, Detail.STEERER_LENGTH, mm(215), Detail.MOST_SPACERS, mm(30));
        Part stem = part(Kind.STEM, Detail.STEM_LENGTH, mm(length), Detail.CLAMP_HEIGHT, mm(40));
        assertThat(Fitting.steererLength(fork, stem, mm(spacers), bike).and(Fitting.stemLength(stem, bike)).result()).isEqualTo(result);
        assertThat(Fitting.stemLength(stem, part(Kind.BIKE))).isEqualTo(Fit.FITS);
    }
}
