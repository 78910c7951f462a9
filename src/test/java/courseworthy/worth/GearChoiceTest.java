package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.demand.Demands;
import courseworthy.demand.EstimatedRide;
import courseworthy.engine.GearPairs;
import courseworthy.engine.ShippedRules;
import courseworthy.ride.Range;
import courseworthy.ride.RideTrace;
import courseworthy.worth.GearShortfall.Other;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which rings and cassettes are shown for gears that are decided by hand, found once more by going through the whole table of pairs. */
class GearChoiceTest {

    private static final String COURSE = "name: Hill\nstretches:\n  - {length: 10 km, ascent: 600 m, descent: 0 m, surface: fine_gravel, smoothness: good}\n"
            + "  - {length: 10 km, ascent: 0 m, descent: 1200 m, surface: fine_gravel, smoothness: good}\n  - {length: 10 km, ascent: 0 m, descent: 0 m, surface: asphalt}\n";
    private static final String RIDER = "name: Alex\nmass: 75 kg\npower: 250 W\nheld for: 1:00 h\nclimbing cadence: 60 rpm\nhighest cadence: 100 rpm\nbike: {kind: gravel}\n";

    @TempDir
    private static Path folder;
    private static Demands demands;
    private static GearPairs pairs;

    @BeforeAll
    static void ride() {
        demands = RideFixture.demands(folder, COURSE, RIDER, "name: Day\nrole: race\naim: time\ngroup share: 0 %\n");
        pairs = ShippedRules.realPairs();
    }

    /** The call that decides one pair of the table. */
    private static HandMadeCall deciding(GearPairs.Drive drive) {
        return new HandMadeCall(demands).on("bike", 1).on("easiest gear", drive.easiest()).on("hardest gear", drive.hardest()).on("largest step", drive.step());
    }

    private static List<GearPairs.Drive> gravel() {
        return pairs.drives().stream().filter(each -> each.bike().equals("gravel")).toList();
    }

    @Test
    void theDecidedPairIsTheTables() {
        for (GearPairs.Drive drive : gravel().subList(0, 5)) {
            Drivetrain decided = GearChoice.decided(deciding(drive).call(), pairs);
            assertThat(decided.easiest().ratio()).isCloseTo(drive.easiest() / 1000.0, within(0.0006));
            assertThat(decided.hardest().ratio()).isCloseTo(drive.hardest() / 1000.0, within(0.0006));
            assertThat(decided.largestStep()).isCloseTo(drive.step() / 100.0, within(0.0051));
        }
        assertThat(GearChoice.decided(deciding(gravel().get(0)).on("largest step", 40).call(), pairs)).isNull();
        assertThat(GearChoice.decided(deciding(gravel().get(0)).without("hardest gear").call(), pairs)).isNull();
    }

    /** At most nine others (judgement), none of which another pair of the table beats in all three figures at once, the easiest first. */
    @Test
    void othersAreThoseThatNothingBeats() {
        GearChoice choice = GearChoice.of(deciding(gravel().get(0)).call(), pairs);
        List<Drivetrain> table = pairs.on("gravel").stream().map(Drivetrain::of).distinct().toList();
        List<Drivetrain> best = table.stream().filter(each -> !each.equals(choice.decided().drivetrain())).filter(each -> table.stream().noneMatch(other -> beats(other, each)))
                .sorted(Comparator.comparingDouble(each -> Math.abs(Math.log(each.easiest().ratio() / choice.decided().drivetrain().easiest().ratio())))).toList();
        assertThat(choice.common()).hasSize(Math.min(9, best.size())).hasSize(9);
        List<Drivetrain> shown = choice.common().stream().map(DrivetrainResult::drivetrain).toList();
        double farthest = shown.stream().mapToDouble(each -> Math.abs(Math.log(each.easiest().ratio() / choice.decided().drivetrain().easiest().ratio()))).max().orElseThrow();
        assertThat(best).containsAll(shown);
        assertThat(best.stream().filter(each -> !shown.contains(each))).allSatisfy(each -> assertThat(
                Math.abs(Math.log(each.easiest().ratio() / choice.decided().drivetrain().easiest().ratio()))).isGreaterThanOrEqualTo(farthest - 1e-12));
        assertThat(shown.stream().map(each -> each.easiest().ratio()).toList()).isSorted();
    }

    /** Whether one has as easy, as hard and as close gears as another, and better somewhere. */
    private static boolean beats(Drivetrain one, Drivetrain other) {
        double[] mine = {-(double) one.rings().get(one.rings().size() - 1) / one.sprockets().get(one.sprockets().size() - 1), (double) one.rings().get(0) / one.sprockets().get(0),
            -one.largestStep()};
        double[] theirs = {-(double) other.rings().get(other.rings().size() - 1) / other.sprockets().get(other.sprockets().size() - 1),
            (double) other.rings().get(0) / other.sprockets().get(0), -other.largestStep()};
        boolean better = false;
        for (int i = 0; i < 3; i++) {
            if (mine[i] < theirs[i]) {
                return false;
            }
            better |= mine[i] > theirs[i];
        }
        return better;
    }

    /** The wheel is 622 mm and twice the decided tyre across (ISO 5775-1): with 40 mm, 2.205 m a turn; top speed at 100 rpm by hand. */
    @Test
    void figuresAreForTheDecidedTyre() {
        GearChoice choice = GearChoice.of(deciding(gravel().get(0)).on("rear tyre width", 40).call(), pairs);
        Gear hardest = choice.decided().drivetrain().hardest();
        assertThat(choice.decided().hardest().topSpeed().mid()).isCloseTo((double) hardest.ring() / hardest.sprocket() * 2.205 * 100 / 60, within(0.01));
        assertThat(choice.decided().circumference()).isCloseTo(2.205, within(0.001));
        assertThat(choice.width()).isCloseTo(0.040, within(1e-9));
        assertThat(choice.bike()).isEqualTo("gravel");
        assertThat(choice.ridden()).isEqualTo("gravel");
        assertThat(choice.usual()).isEqualTo(80);
        assertThat(choice.lowest().mid()).isEqualTo(60);
        assertThat(choice.highest().mid()).isEqualTo(100);
        assertThat(choice.pieces()).isEqualTo(demands.estimated().pieces());
        // None decided: the usual tyre and the kind of the bike at hand.
        GearChoice bare = GearChoice.of(deciding(gravel().get(0)).without("rear tyre width").without("bike").call(), pairs);
        assertThat(bare.width()).isCloseTo(0.045, within(1e-9));
        assertThat(bare.bike()).isEqualTo("gravel");
        Drivetrain mounted = new Drivetrain(List.of(38), List.of(10, 20, 40));
        assertThat(GearChoice.of(deciding(gravel().get(0)).call(), pairs, mounted).decided().drivetrain()).isEqualTo(mounted);
    }

    /** A real tyre's circumference is within 1 to 2 % of the nominal (published tables against real tyres): 1.5 %, beside what the cadence is off. */
    @Test
    void theWheelIsKnownToOneAndAHalfPercent() {
        CadenceAnalysis analysis = new CadenceAnalysis(demands, 2.2);
        Range top = analysis.topSpeed(3.0);
        assertThat(top.mid()).isCloseTo(3.0 * 2.2 * 100 / 60, within(1e-9));
        Range cadence = analysis.highestCadence();
        assertThat(top.high() / top.mid() - 1).isCloseTo(Math.hypot(cadence.high() / 100 - 1, 0.015), within(0.0003));
        assertThat(1 - top.low() / top.mid()).isCloseTo(Math.hypot(1 - cadence.low() / 100, 0.015), within(0.0003));
    }

    /** Each moment is ridden in the gear that comes nearest the usual 80 rpm, found by trying all; in the easiest below 60 it is ground. */
    @Test
    void theGearNearestTheUsualCadenceIsRidden() {
        Drivetrain drivetrain = new Drivetrain(List.of(50), List.of(11, 12, 13, 15, 17, 20, 24));
        CadenceAnalysis analysis = new CadenceAnalysis(demands, 2.2);
        DrivetrainResult result = analysis.of(drivetrain);
        List<Gear> gears = drivetrain.used();
        double[] seconds = new double[gears.size()];
        double grinding = 0;
        double coasting = 0;
        RideTrace trace = demands.estimated().estimate().trace();
        for (int at = 0; at < trace.size(); at++) {
            if (trace.power(at) < 5) {
                coasting += trace.seconds(at);
                continue;
            }
            int best = 0;
            for (int i = 1; i < seconds.length; i++) {
                best = Math.abs(cadence(gears.get(i), trace.speed(at)) - 80) < Math.abs(cadence(gears.get(best), trace.speed(at)) - 80) ? i : best;
            }
            seconds[best] += trace.seconds(at);
            grinding += best == 0 && cadence(gears.get(0), trace.speed(at)) < 60 ? trace.seconds(at) : 0;
        }
        for (int i = 0; i < seconds.length; i++) {
            assertThat(result.use().get(i).gear()).isEqualTo(gears.get(i));
            assertThat(result.use().get(i).seconds()).isCloseTo(seconds[i], within(1e-6));
        }
        assertThat(grinding).isPositive();
        assertThat(result.grinding()).isCloseTo(grinding, within(1e-6));
        assertThat(result.coasting()).isCloseTo(coasting, within(1e-6)).isPositive();
        assertThat(result.climbed()).extracting(ClimbInGear::kind).containsExactlyElementsOf(demands.estimated().pieces().stream().map(EstimatedRide.RidePiece::kind).toList());
    }

    private static double cadence(Gear gear, double speed) {
        return speed * 60 / (2.2 * gear.ring() / gear.sprocket());
    }

    /** Spinning out costs half where half of it is ridden in a group, and half where it is not: the mean of both. */
    @Test
    void spinningCostsByTheShareInAGroup() {
        CadenceAnalysis analysis = new CadenceAnalysis(demands, 2.2);
        DrivetrainResult result = analysis.of(new Drivetrain(List.of(30), List.of(15, 40)));
        assertThat(result.hardest().alone().cost().mid()).isPositive();
        assertThat(analysis.costOfSpinning(2.0, 0).mid()).isCloseTo(result.hardest().alone().cost().mid(), within(1e-9));
        assertThat(analysis.costOfSpinning(2.0, 1).mid()).isCloseTo(result.hardest().group().cost().mid(), within(1e-9));
        assertThat(analysis.costOfSpinning(2.0, 0.25).mid()).isCloseTo(0.75 * result.hardest().alone().cost().mid() + 0.25 * result.hardest().group().cost().mid(), within(1e-9));
        assertThat(analysis.costOfSpinning(2.0, 0.25).low()).isCloseTo(0.75 * result.hardest().alone().cost().low() + 0.25 * result.hardest().group().cost().low(), within(1e-9));
        assertThat(analysis.costOfSpinning(2.0, 0.25).high()).isCloseTo(0.75 * result.hardest().alone().cost().high() + 0.25 * result.hardest().group().cost().high(), within(1e-9));
    }

    /** A ratio of 0.70 that is needed is reached by 0.714, a fiftieth harder, and by nothing harder (judgement: less than a tooth in fifty). */
    @ParameterizedTest
    @CsvSource({"0.69, true", "0.713, true", "0.715, false", "0.75, false"})
    void aFiftiethIsNoShortfall(double easiest, boolean reaches) {
        assertThat(new Other("trail", easiest, 0.70, Range.exact(3600)).reaches()).isEqualTo(reaches);
    }

    /** With two rings the larger is ridden on all but its two largest sprockets, where the chain runs crossed (common practice, no source). */
    @Test
    void crossedGearsAreNotRidden() {
        List<Gear> used = new Drivetrain(List.of(48, 32), List.of(11, 13, 15, 18, 22, 28)).used();
        assertThat(used).contains(new Gear(48, 18)).doesNotContain(new Gear(48, 22), new Gear(48, 28));
        assertThat(used.get(0)).isEqualTo(new Gear(32, 28));
        assertThat(new Drivetrain(List.of(40), List.of(11, 20, 40)).used()).containsExactly(new Gear(40, 40), new Gear(40, 20), new Gear(40, 11));
        assertThat(new Drivetrain(List.of(40), List.of(11, 20, 40)).teeth()).isEqualTo("40 with 11-40");
        assertThat(new Drivetrain(List.of(48, 32), List.of(11, 28)).teeth()).isEqualTo("48/32 with 11-28");
    }
}
