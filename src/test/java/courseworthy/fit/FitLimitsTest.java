package courseworthy.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.fit.FitResult.FitVerdict;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures of fit at their very ends: what just fits, and what misses by as little as is measured. */
class FitLimitsTest {

    private static Part part(PartKind kind, Object... details) {
        Map<PartDetail, Object> out = new EnumMap<>(PartDetail.class);
        for (int i = 0; i < details.length; i += 2) {
            out.put((PartDetail) details[i], details[i + 1]);
        }
        return new Part("the " + kind.word(), kind, 1, out);
    }

    private static FitResult general(double tyre, double rim) {
        return WheelFit.tyreOnRim(part(PartKind.TYRE, PartDetail.WIDTH, tyre / 1000), part(PartKind.WHEEL, PartDetail.RIM_INNER_WIDTH, rim / 1000));
    }

    /**
     * The older general table of the ETRTO manuals, from memory: narrowest and widest tyre by inner width. Half a millimetre either way is measuring,
     * and a rim between two rows belongs to the lower till half a millimetre below the next.
     */
    @ParameterizedTest
    @CsvSource({"13, 18, 25", "15, 23, 32", "17, 25, 52", "19, 28, 62", "21, 35, 64", "23, 40, 64", "25, 44, 64", "27, 47, 64", "29, 50, 64", "35, 50, 64", "18.4, 25, 52",
        "18.6, 28, 62", "12, 18, 25"})
    void theOlderTable(double rim, int narrowest, int widest) {
        // Five millimetres over the rim are asked for anyway.
        assertThat(general(Math.max(narrowest - 0.4, rim + 5), rim)).isEqualTo(FitResult.FITS);
        assertThat(general(narrowest + 1, rim)).isEqualTo(FitResult.FITS);
        assertThat(general(widest + 0.4, rim)).isEqualTo(FitResult.FITS);
        assertThat(general(widest + 0.6, rim).words()).contains("mm is wider than the " + narrowest + " to " + widest + " mm ");
        assertThat(general(widest + 0.6, rim).result()).isEqualTo(FitVerdict.FITS);
        if (narrowest - 0.6 >= rim + 5) {
            assertThat(general(narrowest - 0.6, rim).words()).contains("mm is narrower than the " + narrowest + " to " + widest + " mm ");
        }
    }

    /** Whether a maker's chart is whole: a chart of one end alone leaves the other to the older table. */
    @Test
    void halfAChartLeavesTheOlderTable() {
        Part tyre = part(PartKind.TYRE, PartDetail.WIDTH, 0.070);
        Part half = part(PartKind.WHEEL, PartDetail.RIM_INNER_WIDTH, 0.025, PartDetail.LEAST_TYRE, 0.035);
        assertThat(WheelFit.tyreOnRim(tyre, half).words()).contains("44 to 64 mm");
        Part other = part(PartKind.WHEEL, PartDetail.RIM_INNER_WIDTH, 0.025, PartDetail.MOST_TYRE, 0.080);
        assertThat(WheelFit.tyreOnRim(tyre, other).words()).contains("44 to 64 mm");
        Part both = part(PartKind.WHEEL, PartDetail.RIM_INNER_WIDTH, 0.025, PartDetail.LEAST_TYRE, 0.035, PartDetail.MOST_TYRE, 0.080);
        assertThat(WheelFit.tyreOnRim(tyre, both)).isEqualTo(FitResult.FITS);
        Part plain = part(PartKind.WHEEL, PartDetail.RIM_INNER_WIDTH, 0.025);
        Part charted = part(PartKind.TYRE, PartDetail.WIDTH, 0.070, PartDetail.LEAST_RIM, 0.023, PartDetail.MOST_RIM, 0.035);
        assertThat(WheelFit.tyreOnRim(charted, plain)).isEqualTo(FitResult.FITS);
        assertThat(WheelFit.tyreOnRim(part(PartKind.TYRE, PartDetail.WIDTH, 0.070, PartDetail.MOST_RIM, 0.035), plain).words()).contains("44 to 64 mm");
        assertThat(WheelFit.tyreOnRim(part(PartKind.TYRE, PartDetail.WIDTH, 0.070, PartDetail.LEAST_RIM, 0.023), plain).words()).contains("44 to 64 mm");
    }

    /** Steerer by hand: 200 mm of it, 120 of head tube, 40 of clamp, the rest under the stem. Up to 3 mm out of the stem needs no spacer on top. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"40 | FITS | ''", "40.1 | DOES_NOT_FIT | 0.1 mm too short", "37.1 | FITS | ''", "36.9 | FITS | 3.1 mm of spacers go above the stem",
        "50 | DOES_NOT_FIT | 10 mm too short"})
    void steererByHand(double under, FitVerdict result, String words) {
        FitResult fit = CockpitFit.steererLength(part(PartKind.FORK, PartDetail.STEERER_LENGTH, 0.200), part(PartKind.STEM, PartDetail.CLAMP_HEIGHT, 0.040), under / 1000,
                part(PartKind.BIKE, PartDetail.HEAD_TUBE, 0.120));
        assertThat(fit.result()).isEqualTo(result);
        assertThat(fit.words()).contains(words);
        assertThat(fit.words().isEmpty()).isEqualTo(words.isEmpty());
    }

    /** What the fork's maker permits of spacers: as much, and no more; and without a figure nothing. */
    @Test
    void spacersThatTheMakerPermits() {
        Part fork = part(PartKind.FORK, PartDetail.STEERER_LENGTH, 0.200, PartDetail.MOST_SPACERS, 0.038);
        Part stem = part(PartKind.STEM, PartDetail.CLAMP_HEIGHT, 0.040);
        Part bike = part(PartKind.BIKE, PartDetail.HEAD_TUBE, 0.120);
        assertThat(CockpitFit.steererLength(fork, stem, 0.038, bike).fits()).isTrue();
        assertThat(CockpitFit.steererLength(fork, stem, 0.039, bike).words()).startsWith("1 mm more spacers");
    }

    @Test
    void eitherEndOfAStemsLengthIsKept() {
        Part stem = part(PartKind.STEM, PartDetail.STEM_LENGTH, 0.070);
        assertThat(CockpitFit.stemLength(stem, part(PartKind.BIKE))).isEqualTo(FitResult.FITS);
        assertThat(CockpitFit.stemLength(stem, part(PartKind.BIKE, PartDetail.LEAST_STEM, 0.080)).words()).startsWith("10 mm under");
        assertThat(CockpitFit.stemLength(stem, part(PartKind.BIKE, PartDetail.MOST_STEM, 0.060)).words()).startsWith("10 mm over");
        assertThat(CockpitFit.stemLength(part(PartKind.STEM), part(PartKind.BIKE, PartDetail.MOST_STEM, 0.060)).result()).isEqualTo(FitVerdict.UNKNOWN);
    }

    /**
     * A fork 20 mm longer than the frame is drawn for, at 67 degrees on a wheelbase of 1150 mm, turns the bike by asin(20 sin 67 / 1150) = 0.917
     * degrees, and lifts the bottom bracket over a chainstay of 435 mm by 435 x 0.0160 = 7 mm (by hand).
     */
    @Test
    void aLongerForkSlackensAndLifts() {
        Part bike = part(PartKind.BIKE, PartDetail.DESIGN_FORK_LENGTH, 0.500, PartDetail.HEAD_ANGLE, 67.0, PartDetail.WHEELBASE, 1.150, PartDetail.CHAINSTAY, 0.435,
                PartDetail.MOST_FORK_LENGTH, 0.530);
        assertThat(SuspensionFit.headAngleChange(part(PartKind.FORK, PartDetail.LENGTH, 0.520), bike)).isCloseTo(-0.917, within(0.001));
        assertThat(SuspensionFit.headAngleChange(part(PartKind.FORK, PartDetail.LENGTH, 0.490), bike)).isCloseTo(0.459, within(0.001));
        assertThat(SuspensionFit.bottomBracketRise(part(PartKind.FORK, PartDetail.LENGTH, 0.520), bike)).isCloseTo(0.00696, within(0.0001));
        assertThat(fork(520, bike)).isEqualTo("head angle 0.9 deg slacker than the frame states, bottom bracket 7 mm higher");
        assertThat(fork(490, bike)).isEqualTo("head angle 0.5 deg steeper than the frame states, bottom bracket 3.5 mm lower");
        // Under a twentieth of a degree, and under a millimetre, is not worth a word.
        assertThat(fork(501, bike)).isEmpty();
        assertThat(fork(502, bike)).isEqualTo("head angle 0.1 deg slacker than the frame states");
        assertThat(fork(498, bike)).isEqualTo("head angle 0.1 deg steeper than the frame states");
        assertThat(fork(503, bike)).contains("bottom bracket 1 mm higher");
        assertThat(fork(531, bike)).isEqualTo("1 mm over the frame's range of length");
        assertThat(fork(530, bike)).startsWith("head angle");
    }

    private static String fork(double millimetres, Part bike) {
        return SuspensionFit.forkLength(part(PartKind.FORK, PartDetail.LENGTH, millimetres / 1000), bike).words();
    }

    /** Front and rear travel at most 20 mm apart (the rules' own limit); a bike without one of them has nothing to balance. */
    @ParameterizedTest
    @CsvSource({"120, 100, true", "121, 100, false", "100, 121, false", "0, 100, true", "120, 0, true", "30, 0, true", "0, 30, true"})
    void travelInBalance(double front, double rear, boolean fits) {
        assertThat(SuspensionFit.travelInBalance(part(PartKind.FORK, PartDetail.TRAVEL, front / 1000), part(PartKind.BIKE, PartDetail.REAR_TRAVEL, rear / 1000)).fits()).isEqualTo(fits);
    }

    /** A chain by hand: 435 mm of stay are 17.126 in; 2 x 17.126 + 32 / 4 + 50 / 4 + 1 = 55.75 in, 112 links with whole pairs; 3 more may stay. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"112 | ''", "110 | 2 links too short", "114 | ''", "115 | ''", "116 | 4 links longer"})
    void chainByHand(double links, String words) {
        Part cassette = part(PartKind.CASSETTE, PartDetail.SPROCKETS, new int[] {10, 20, 50});
        Part rings = part(PartKind.CHAINRING, PartDetail.TEETH, new int[] {32});
        Part bike = part(PartKind.BIKE, PartDetail.CHAINSTAY, 0.435, PartDetail.REAR_TRAVEL, 0.0);
        int needed = DrivetrainFit.links(cassette, rings, bike);
        assertThat(needed).isEqualTo(112);
        FitResult fit = DrivetrainFit.chainLength(part(PartKind.CHAIN, PartDetail.LINKS, links), cassette, rings, bike);
        assertThat(fit.fits()).isEqualTo(links >= needed);
        assertThat(fit.words()).contains(words);
        assertThat(fit.words().isEmpty()).isEqualTo(links >= needed && links < needed + 4);
    }

    /** A seatpost goes by tenths of a millimetre: 27.2 and 27.25 are two, 27.2 and 27.24 are one. */
    @Test
    void postsGoByTenths() {
        assertThat(post(27.24).fits()).isTrue();
        assertThat(post(27.30).words()).isEqualTo("0.1 mm too thick");
        assertThat(post(26.8).words()).isEqualTo("0.4 mm too thin");
    }

    private static FitResult post(double millimetres) {
        return SeatFit.postDiameter(part(PartKind.SEATPOST, PartDetail.POST_DIAMETER, millimetres / 1000), part(PartKind.BIKE, PartDetail.POST_DIAMETER, 0.0272));
    }

    /** Sizes closer than half a millimetre are the same, and a front rotor so much smaller is no smaller. */
    @Test
    void sizesAreTheSameWithinHalfAMillimetre() {
        assertThat(clamp(31.8, 31.4).fits()).isTrue();
        assertThat(clamp(31.8, 31.2).fits()).isFalse();
        assertThat(BrakeFit.rotorsInOrder(part(PartKind.ROTOR, PartDetail.DIAMETER, 0.1796), part(PartKind.ROTOR, PartDetail.DIAMETER, 0.180)).fits()).isTrue();
        assertThat(BrakeFit.rotorsInOrder(part(PartKind.ROTOR, PartDetail.DIAMETER, 0.1794), part(PartKind.ROTOR, PartDetail.DIAMETER, 0.180)).fits()).isFalse();
    }

    private static FitResult clamp(double one, double other) {
        return CockpitFit.barClamp(part(PartKind.BAR, PartDetail.BAR_CLAMP, one / 1000), part(PartKind.STEM, PartDetail.BAR_CLAMP, other / 1000));
    }

    /** Figures to a tenth, halves up, without a zero; an inch is 25.4 mm by definition. */
    @Test
    void figuresAreShownToATenth() {
        assertThat(FitComparison.mm(0.0254)).isEqualTo("25.4 mm");
        assertThat(FitComparison.mm(0.002)).isEqualTo("2 mm");
        assertThat(FitComparison.mm(-0.0003)).isEqualTo("-0.3 mm");
        assertThat(FitComparison.mm(-0.0013)).isEqualTo("-1.3 mm");
        assertThat(FitComparison.kg(0)).isEqualTo("0 kg");
        assertThat(FitComparison.kg(0.25)).isEqualTo("0.3 kg");
        assertThat(FitComparison.teeth(1)).isEqualTo("1 tooth");
        assertThat(FitComparison.teeth(2)).isEqualTo("2 teeth");
    }

    /** Of two results the worse counts, and of two that fit what each has to mind. */
    @Test
    void theWorseCounts() {
        FitResult one = FitResult.mind("one");
        FitResult two = FitResult.mind("two");
        assertThat(FitResult.FITS.and(one)).isEqualTo(one);
        assertThat(one.and(FitResult.FITS)).isEqualTo(one);
        assertThat(one.and(two)).isEqualTo(FitResult.mind("one; two"));
        assertThat(one.and(FitResult.unknown("x"))).isEqualTo(FitResult.unknown("x"));
        assertThat(FitResult.unknown("x").and(one)).isEqualTo(FitResult.unknown("x"));
        assertThat(FitResult.unknown("x").and(FitResult.unknown("y"))).isEqualTo(FitResult.unknown("x"));
        assertThat(FitResult.flagged("x").and(FitResult.unknown("y"))).isEqualTo(FitResult.flagged("x"));
        assertThat(FitResult.flagged("x").and(FitResult.not("y"))).isEqualTo(FitResult.not("y"));
        assertThat(one.isReportable()).isTrue();
        assertThat(FitResult.FITS.isReportable()).isFalse();
        assertThat(FitResult.unknown("").isReportable()).isTrue();
    }

    /** A ledge of 1.20 m on what is marked for 1.20; in centimetres, as it is marked (EN 17406). */
    @Test
    void ledgesAreGivenInCentimetres() {
        Part bike = part(PartKind.BIKE, PartDetail.LEDGE_LIMIT, 1.2);
        assertThat(LoadFit.ledges(bike, new BuildLoad(null, null, 1.2)).fits()).isTrue();
        assertThat(LoadFit.ledges(bike, new BuildLoad(null, null, 1.5)).words()).isEqualTo("a ledge of 150 cm is above what it is marked for (120 cm)");
    }
}
