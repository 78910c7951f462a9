package courseworthy.worth;

import courseworthy.demand.Demands;
import courseworthy.demand.EstimatedRide;
import courseworthy.demand.EstimatedRide.RidePiece;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.ride.BikeKind;
import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.DragArea;
import courseworthy.ride.PowerBalance;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.RideTrace;
import java.util.ArrayList;
import java.util.List;

/**
 * How the cranks turn on one course with one wheel: cadence and torque where it is steep, the gear in use at every step, and where the
 * hardest is spun out. The ride is the estimate's; a gear that is too easy or too hard costs nothing in it, so the cost is worked out here.
 */
public final class CadenceAnalysis {

    /** How far a real tyre's circumference may be off the nominal (published tables against real tyres: 1 to 2 %). */
    private static final Range CIRCUMFERENCE_OFF = Range.within(1, 0.015);
    /** Less than this on the pedals is soft pedalling, W (practice). */
    static final double PEDALLED = 5;
    /** A difference in speed that counts as lost, m/s (computing). */
    private static final double LOST = 0.01;

    private final Demands demands;
    private final EstimatedRide on;
    private final RideEstimate estimate;
    private final DiscretisedCourse way;
    private final double circumference;
    private final Range lowest;
    private final Range highest;
    private final Range mass;
    private PacedSegment alone;
    private PacedSegment group;

    /**
     * @param demands       surveyed, see {@link Demands#estimated()}
     * @param circumference of the driven wheel, m
     */
    public CadenceAnalysis(Demands demands, double circumference) {
        this.demands = demands;
        this.circumference = circumference;
        on = demands.estimated();
        estimate = on.estimate();
        way = estimate.way();
        lowest = base(Measure.CLIMBING_CADENCE);
        highest = base(Measure.HIGHEST_CADENCE);
        mass = estimate.basis().mass();
    }

    private Range base(Measure measure) {
        MeasureValue value = demands.get(measure);
        var resolution = measure.scale().resolution();
        return new Range(resolution.base(value.low()), resolution.base(value.mid()), resolution.base(value.high()));
    }

    /** The cadence a rider turns where the ground lets them choose: half-way between their lowest and highest (practice). */
    double usualCadence() {
        return (lowest.mid() + highest.mid()) / 2;
    }

    /** How gears are changed, the easiest first. */
    GearShifting shifting(List<Gear> gears) {
        return new GearShifting(gears, usualCadence(), circumference);
    }

    /** Of the driven wheel, m. */
    double circumference() {
        return circumference;
    }

    /** The lowest cadence the rider will turn for long, a minute. */
    Range lowestCadence() {
        return lowest;
    }

    Range highestCadence() {
        return highest;
    }

    /** How a piece is ridden in a gear. */
    ClimbInGear climbed(RidePiece piece, Gear gear) {
        return climbed(piece, gear.ratio());
    }

    /** How a piece is ridden with so many turns of the wheel for one of the crank. */
    ClimbInGear climbed(RidePiece piece, double ratio) {
        Range rolling = estimate.rolling(way.ground(estimate.stepAt(Math.min(way.length(), piece.middle()))));
        double dragArea = estimate.basis().dragArea().mid();
        double density = estimate.density();
        Range speed = Range.of(x -> PowerBalance.of(x[1], dragArea, x[2]).speed(x[0], 0, x[3], density), piece.power(), mass, rolling,
                piece.gradient());
        Range cadence = Range.of(x -> x[0] * 60 / (ratio * x[1] * circumference), speed, CIRCUMFERENCE_OFF);
        return new ClimbInGear(piece.kind(), piece.gradient(), piece.power(), speed, cadence, torque(piece.power().mid(), cadence));
    }

    /** At one power the torque is least where the cadence is highest. */
    private static Range torque(double power, Range cadence) {
        return Range.around(Gear.torque(power, cadence.high()), Gear.torque(power, cadence.mid()), Gear.torque(power, cadence.low()));
    }

    /** Speed in a gear at the rider's highest cadence, m/s. */
    Range topSpeed(Gear gear) {
        return topSpeed(gear.ratio());
    }

    Range topSpeed(double ratio) {
        return Range.of(x -> ratio * x[1] * circumference * x[0] / 60, highest, CIRCUMFERENCE_OFF);
    }

    /** All that rings and a cassette give here. */
    public DrivetrainResult of(Drivetrain drivetrain) {
        Gear easiest = drivetrain.easiest();
        Gear hardest = drivetrain.hardest();
        List<ClimbInGear> climbed = new ArrayList<>();
        for (RidePiece piece : on.pieces()) {
            climbed.add(climbed(piece, easiest));
        }
        GearUsage using = new GearUsage(drivetrain.used());
        Range top = topSpeed(hardest);
        return new DrivetrainResult(drivetrain, circumference, climbed, using.use(), using.grinding, using.coasting, using.walking,
                new DrivetrainResult.HardestGear(top, spinning(alone(), top), spinning(group(), top), sprint(top)));
    }

    /** Counts the time in each gear: the one whose cadence comes nearest the usual. */
    private final class GearUsage {
        private final List<Gear> gears;
        private final double[] seconds;
        private double grinding;
        private double coasting;
        private double walking;

        GearUsage(List<Gear> gears) {
            this.gears = gears;
            this.seconds = new double[gears.size()];
            GearShifting shifting = shifting(gears);
            RideTrace trace = estimate.trace();
            for (int at = 0; at < trace.size(); at++) {
                count(trace, at, shifting);
            }
        }

        private void count(RideTrace trace, int at, GearShifting shifting) {
            double speed = trace.speed(at);
            double time = trace.seconds(at) - trace.onFoot(at);
            walking += trace.onFoot(at);
            if (trace.power(at) < PEDALLED) {
                coasting += time;
            } else {
                int gear = shifting.at(speed);
                seconds[gear] += time;
                boolean tooHard = gear == 0 && gears.get(0).cadence(speed, circumference) < lowest.mid();
                grinding += tooHard ? time : 0;
            }
        }

        List<DrivetrainResult.GearTime> use() {
            List<DrivetrainResult.GearTime> out = new ArrayList<>();
            for (int i = 0; i < seconds.length; i++) {
                out.add(new DrivetrainResult.GearTime(gears.get(i), seconds[i]));
            }
            return out;
        }
    }

    private double headwind(int step) {
        double from = estimate.basis().weather().from();
        boolean known = way.hasHeadings() && !Double.isNaN(from);
        return known ? estimate.basis().weather().atRider() * Math.cos(from - way.bearing(step)) : 0;
    }

    private double density(int step) {
        return estimate.basis().weather().density(way.height(step));
    }

    private PacedSegment alone() {
        if (alone == null) {
            alone = new PacedSegment(DragArea.alone(kind(), riderMass()).mid());
        }
        return alone;
    }

    private PacedSegment group() {
        if (group == null) {
            group = new PacedSegment(DragArea.inTheGroup(DragArea.alone(kind(), riderMass())).mid());
        }
        return group;
    }

    private BikeKind kind() {
        return estimate.basis().kind();
    }

    private double riderMass() {
        return base(Measure.RIDER_MASS).mid();
    }

    /** Speeds at one drag area, on the power of each moment and on none, however fast the cranks would turn, held to the ground's cap. */
    private final class PacedSegment {
        /** On every step of every lap, m/s. */
        private final double[] pedalled = new double[way.size() * estimate.basis().laps()];
        /** On every step of one lap, m/s. */
        private final double[] coasting = new double[way.size()];

        PacedSegment(double dragArea) {
            for (int i = 0; i < coasting.length; i++) {
                coasting[i] = Math.min(cap(i), speed(dragArea, i, 0));
            }
            for (int at = 0; at < pedalled.length; at++) {
                int step = at % coasting.length;
                double power = estimate.powerAt(estimate.arrival(at / coasting.length, step));
                pedalled[at] = Math.min(cap(step), speed(dragArea, step, power));
            }
        }
    }

    private double speed(double dragArea, int step, double power) {
        PowerBalance balance = PowerBalance.of(mass.mid(), dragArea, estimate.rolling(way.ground(step)).mid());
        return balance.speed(power, headwind(step), way.gradient(step), density(step));
    }

    private double cap(int step) {
        return estimate.cap(way.ground(step)).mid();
    }

    /** Time lost to spinning out a gear of a ratio, so much of the distance ridden in a group, s. */
    Range costOfSpinning(double ratio, double groupShare) {
        Range top = topSpeed(ratio);
        Range inAGroup = spinning(group(), top).cost().times(groupShare);
        Range byOneself = spinning(alone(), top).cost().times(1 - groupShare);
        return new Range(inAGroup.low() + byOneself.low(), inAGroup.mid() + byOneself.mid(), inAGroup.high() + byOneself.high());
    }

    private SpunOut spinning(PacedSegment paced, Range limit) {
        double[] low = spunOut(paced, limit.low());
        double[] mid = spunOut(paced, limit.mid());
        double[] high = spunOut(paced, limit.high());
        return new SpunOut(Range.around(high[0], mid[0], low[0]), Range.around(high[1], mid[1], low[1]), Range.around(high[2], mid[2], low[2]));
    }

    /** Metres, seconds and seconds lost where a limit on speed from the pedals bites: the rider coasts where that is faster. */
    private double[] spunOut(PacedSegment paced, double limit) {
        double[] out = new double[3];
        for (int at = 0; at < paced.pedalled.length; at++) {
            double wanted = paced.pedalled[at];
            if (wanted > limit) {
                int step = at % way.size();
                double still = Math.max(limit, paced.coasting[step]);
                if (wanted - still > LOST) {
                    out[0] += way.length(step);
                    out[1] += way.length(step) / still;
                    out[2] += way.length(step) / still - way.length(step) / wanted;
                }
            }
        }
        return out;
    }

    private Sprint sprint(Range limit) {
        if (on.sprint() == null) {
            return null;
        }
        int last = way.ground(way.size() - 1);
        double dragArea = (DragArea.alone(kind(), riderMass()).mid() + estimate.basis().dragArea().mid()) / 2;
        PowerBalance balance = PowerBalance.of(mass.mid(), dragArea, estimate.rolling(last).mid());
        double cap = estimate.cap(last).high();
        Range speed = Range.of(x -> Math.min(cap, balance.speed(x[0], 0, 0, estimate.density())), on.sprint());
        Range cost = Range.of(x -> Math.max(0, Sprint.LENGTH / x[1] - Sprint.LENGTH / x[0]), speed, limit);
        return new Sprint(on.sprint(), speed, limit, new Range(Math.max(0, cost.low()), cost.mid(), cost.high()));
    }
}
