package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.demand.Demands;
import courseworthy.demand.EstimatedRide.Kind;
import courseworthy.demand.Measure;
import courseworthy.ride.BikeKind;
import courseworthy.ride.DragArea;
import courseworthy.ride.PowerBalance;
import courseworthy.ride.RideEstimate;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How the cranks turn over a course, against arithmetic by hand and against what must hold for any. */
class CadenceAnalysisTest {

    private static final String RIDER = """
            name: Alex
            mass: 75 kg
            power: 250 W
            held for: 1:00 h
            climbing cadence: 60 rpm
            highest cadence: 100 rpm
            bike: {kind: gravel, mass: 9 kg}
            """;
    private static final String HILL = """
            name: One Hill
            stretches:
              - {length: 10 km, ascent: 700 m, descent: 0 m, surface: asphalt, smoothness: excellent}
              - {length: 10 km, ascent: 0 m, descent: 700 m, surface: asphalt, smoothness: excellent}
            """;
    private static final String ALONE = "name: Alone\nrole: race\naim: time\ngroup share: 0 %\n";

    @TempDir
    private Path folder;

    private Demands hill() {
        return RideFixture.demands(folder, HILL, RIDER, ALONE);
    }

    private static double wheel() {
        return BikeKind.circumference(0.622, 0.045);
    }

    private static Drivetrain one(int ring, Integer... sprockets) {
        return new Drivetrain(List.of(ring), List.of(sprockets));
    }

    private static ClimbInGear on(DrivetrainResult geared, Kind kind) {
        return geared.climbed().stream().filter(each -> each.kind() == kind).findFirst().orElseThrow();
    }

    /** In the gear that the demands say is needed the rider turns the lowest cadence, since both come from the same balance. */
    @Test
    void theRatioNeededGivesTheLowestCadence() {
        Demands demands = hill();
        double ratio = Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB.scale().resolution()
                .base(demands.get(Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB).mid());
        CadenceAnalysis turning = new CadenceAnalysis(demands, BikeKind.GRAVEL.circumference());
        Gear gear = new Gear((int) Math.round(ratio * 1000), 1000);
        assertThat(turning.climbed(demands.estimated().piece(Kind.LAST_CLIMB), gear).cadence().mid()).isCloseTo(60, within(0.1));
    }

    /** Speed on the climb by the power balance itself, cadence and torque by hand from it. */
    @Test
    void cadenceAndTorqueFollowFromSpeed() {
        Demands demands = hill();
        ClimbInGear climb = on(new CadenceAnalysis(demands, wheel()).of(one(40, 11, 40)), Kind.LAST_CLIMB);
        RideEstimate estimate = demands.estimated().estimate();
        double speed = PowerBalance.of(estimate.basis().mass().mid(), estimate.basis().dragArea().mid(), estimate.rolling(0).mid())
                .speed(climb.power().mid(), 0, 0.07, estimate.density());
        assertThat(climb.speed().mid()).isCloseTo(speed, within(0.005 * speed));
        assertThat(climb.cadence().mid()).isCloseTo(speed * 60 / wheel(), within(0.5));
        assertThat(climb.torque().mid() * climb.cadence().mid() * 2 * Math.PI / 60).isCloseTo(climb.power().mid(), within(1e-6));
        assertThat(climb.cadence().low()).isLessThan(climb.cadence().mid());
        assertThat(climb.torque().high()).isGreaterThan(climb.torque().mid());
    }

    /** Time in gears, coasting and on foot make the whole ride. */
    @Test
    void allTimeIsCounted() {
        Demands demands = hill();
        DrivetrainResult geared = new CadenceAnalysis(demands, wheel()).of(one(40, 11, 13, 15, 18, 21, 25, 30, 36, 42));
        double sum = geared.coasting() + geared.walking() + geared.use().stream().mapToDouble(DrivetrainResult.GearTime::seconds).sum();
        assertThat(sum).isCloseTo(demands.estimated().estimate().trace().total(), within(0.5));
        assertThat(geared.use().get(0).gear()).isEqualTo(new Gear(40, 42));
        assertThat(geared.grinding()).isLessThanOrEqualTo(geared.use().get(0).seconds());
    }

    /** A harder gear at the top is never spun out longer nor at a higher cost; a hard enough one is not at all. */
    @Test
    void aHarderTopGearSpinsOutLess() {
        CadenceAnalysis turning = new CadenceAnalysis(hill(), wheel());
        double before = Double.MAX_VALUE;
        for (int ring = 26; ring <= 60; ring += 4) {
            DrivetrainResult geared = turning.of(one(ring, 11, 42));
            assertThat(geared.hardest().alone().cost().mid()).isLessThanOrEqualTo(before);
            assertThat(geared.hardest().alone().cost().low()).isGreaterThanOrEqualTo(0);
            before = geared.hardest().alone().cost().mid();
        }
        assertThat(turning.of(one(26, 11, 42)).hardest().alone().cost().mid()).isPositive();
        assertThat(turning.of(one(99, 9, 42)).hardest().alone().none()).isTrue();
    }

    /** On a level road in a group 20 km long: the cost by hand, from the power balance at the group's drag and the gear's top speed. */
    @Test
    void spinningOutInAGroupCostsWhatTheSpeedsSay() {
        Demands demands = RideFixture.demands(folder, "name: Flat\nstretches: [{length: 20 km, ascent: 0 m, descent: 0 m, surface: asphalt, smoothness: excellent}]",
                RIDER, ALONE);
        RideEstimate estimate = demands.estimated().estimate();
        CadenceAnalysis turning = new CadenceAnalysis(demands, wheel());
        DrivetrainResult geared = turning.of(one(36, 13, 42));
        double limit = 36.0 / 13 * wheel() * 100 / 60;
        double dragArea = DragArea.inTheGroup(DragArea.alone(BikeKind.GRAVEL, 75)).mid();
        double density = estimate.basis().weather().density(estimate.basis().weather().startHeight());
        double early = PowerBalance.of(estimate.basis().mass().mid(), dragArea, estimate.rolling(0).mid()).speed(estimate.powerAt(0), 0, 0, density);
        double late = PowerBalance.of(estimate.basis().mass().mid(), dragArea, estimate.rolling(0).mid())
                .speed(estimate.powerAt(1e9), 0, 0, density);
        assertThat(limit).isLessThan(late);
        assertThat(geared.hardest().topSpeed().mid()).isCloseTo(limit, within(1e-9));
        assertThat(geared.hardest().group().metres().mid()).isCloseTo(20_000, within(1.0));
        assertThat(geared.hardest().group().cost().mid()).isBetween(20_000 / limit - 20_000 / late, 20_000 / limit - 20_000 / early);
        assertThat(geared.hardest().alone().cost().mid()).isLessThan(geared.hardest().group().cost().mid());
    }

    /** 200 m at the speed the power holds against 200 m at the gear's top speed. */
    @Test
    void aSprintCostsWhatTheSpeedsSay() {
        CadenceAnalysis turning = new CadenceAnalysis(hill(), wheel());
        Sprint sprint = turning.of(one(34, 12, 42)).hardest().sprint();
        assertThat(sprint.power().mid()).isEqualTo(750, within(1.0));
        assertThat(sprint.cost().mid()).isCloseTo(200 / sprint.limit().mid() - 200 / sprint.speed().mid(), within(1e-9));
        assertThat(turning.of(one(60, 9, 42)).hardest().sprint().cost().mid()).isZero();
        assertThat(new CadenceAnalysis(RideFixture.demands(folder, HILL, RIDER, "name: Ride\nrole: training\n"), wheel()).of(one(34, 12, 42)).hardest().sprint()).isNull();
    }
}
