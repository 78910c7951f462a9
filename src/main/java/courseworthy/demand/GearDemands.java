package courseworthy.demand;

import courseworthy.course.Stretch;
import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.DragArea;
import courseworthy.ride.Endurance;
import courseworthy.ride.PowerBalance;
import courseworthy.ride.Range;
import courseworthy.ride.RideAssumptions;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.Walking;
import java.util.Arrays;

/**
 * The gears that course and rider ask for: ratio = speed over cadence and wheel circumference. Circumference is the nominal one of the
 * bike's usual tyre, 1.5 % either way, since the tyre is not settled yet.
 */
final class GearDemands {

    /** Real tyres of one size differ by so much in circumference (calculated over common sizes; practice). */
    private static final Range CIRCUMFERENCE_OFF = Range.within(1, 0.015);
    /** On the steepest 100 m, about a minute, a rider gives this times hour power, less as the day tires (practice). */
    static final double SURGE = 1.2;
    static final double MOST_SURGE = 1.4;
    /** The same on 500 m, two to four minutes, and at most on 1 km (practice). */
    private static final double LONG_SURGE = 1.1;
    private static final double HUNDRED = 100;
    /** A piece of climbing so long is ridden on steady power, without a surge, m (practice: from about four minutes on). */
    private static final double SUSTAINED = 1000;
    /** A top gear is turned at this share of the highest cadence, but in a sprint at all of it (practice). */
    private static final double COMFORTABLE = 0.92;
    /** Pedalling pays where it gains this much speed over coasting (practice). */
    private static final double PAYS = 1.20;
    /** The fastest part of the lap that is left out: there a little spinning out costs next to nothing (practice). */
    private static final double LEFT_OUT = 0.01;
    /** From this share on the group sets the pace for the top gear (judgement). */
    private static final double GROUP_COUNTS = 0.10;
    /** Wind at the rider's height that may push where none is forecast, m/s (practice). */
    private static final Range SOME_TAILWIND = new Range(0, 1, 2);
    /** Power of a sprint of 20 s or so after hours of racing, times hour power (practice, no source). */
    private static final Range SPRINT = Range.within(3, 0.5);
    /** No faster than this, m/s, in steps of so much (computing). */
    private static final double FASTEST = 100;
    private static final double FINE = 0.05;
    /** Gradients between which a top gear is looked for: down steeper ones no power pays (practice). */
    private static final double STEEPEST_PEDALLED = -0.10;
    private static final double FLATTEST = 0.005;
    private static final double CLASS = 0.0025;
    /** Where a profile writes no steepest, its descents are this many times steeper than its drop over its length (practice). */
    private static final double STEEPER_THAN_MEAN = 3;

    private final SurveyAssumptions on;
    private final RideEstimate estimate;
    private final DiscretisedCourse way;
    private final double density;
    private final Steepness steepness;
    private final NeededRatio whereSteepest;
    private final Range atSpeed;

    GearDemands(SurveyAssumptions on, RideEstimate estimate, Steepness steepness) {
        this.on = on;
        this.estimate = estimate;
        this.steepness = steepness;
        this.way = estimate.way();
        this.density = estimate.density();
        whereSteepest = needed();
        atSpeed = fast();
    }

    /** The ratio needed where it is steepest; null where no gradient is known. */
    Range whereSteepest() {
        return whereSteepest == null ? null : whereSteepest.ratio;
    }

    /** The ratio useful at speed. */
    Range atSpeed() {
        return atSpeed;
    }

    /** The one over the other; null where no gradient is known. */
    Range rangeNeeded() {
        return whereSteepest == null ? null : Range.of(x -> x[0] / x[1], atSpeed, whereSteepest.ratio);
    }

    /**
     * Where the easiest gear is asked for, and on which power: where it is steepest, or on a long climb. Null where no gradient is known.
     */
    EstimatedRide.RidePiece easiest() {
        NeededRatio sustained = sustained();
        NeededRatio easiest = sustained == null ? whereSteepest : easier(sustained, whereSteepest == null ? sustained : whereSteepest);
        return easiest == null ? null : easiest.piece;
    }

    /** A ratio that is needed, and where. */
    private record NeededRatio(Range ratio, EstimatedRide.RidePiece piece) {
    }

    private NeededRatio needed() {
        NeededRatio needed = null;
        for (Steepness.Steepest place : steepness.places(HUNDRED)) {
            Range power = surge(steepness.endOfPart(place.middle()), SURGE, MOST_SURGE);
            needed = easier(needed, needed(EstimatedRide.Kind.HUNDRED, place, HUNDRED, power));
        }
        return needed;
    }

    private NeededRatio needed(EstimatedRide.Kind kind, Steepness.Steepest place, double length, Range power) {
        return new NeededRatio(ratio(power, place), new EstimatedRide.RidePiece(kind, place.gradient(), place.middle(), length, power));
    }

    private static NeededRatio easier(NeededRatio one, NeededRatio other) {
        return one == null || other.ratio.mid() < one.ratio.mid() ? other : one;
    }

    /**
     * So many times hour power, by how tired the rider is there on the last lap; at the low end the ride's own power. Tired by half of what
     * a ride up to there fades, so that the same place later in a longer ride never finds a fresher rider.
     */
    private Range surge(double middle, double likely, double most) {
        double at = (on.laps - 1) * way.length() + Math.min(way.length(), middle);
        double seconds = estimate.arrivalAt(at);
        double tired = 1 - Endurance.fade(seconds).mid() / 2;
        double hour = on.hourPower.mid() * tired;
        double riding = Math.min(hour, estimate.powerAt(seconds));
        return new Range(riding, hour * likely, hour * most);
    }

    /**
     * The easiest gear that any long piece of climbing asks for, on the power that is left at the end of its part of the lap: of two alike
     * the last decides. Every piece of one length counts, so that what gets steeper never asks for a harder gear, as it could if one
     * climb were picked out by its foot and top.
     */
    Range onTheLastClimb() {
        NeededRatio sustained = sustained();
        return sustained == null ? null : sustained.ratio;
    }

    private NeededRatio sustained() {
        NeededRatio needed = null;
        for (Steepness.Steepest climb : steepness.sustained(SUSTAINED)) {
            if (climb.gradient().mid() >= Climbs.LEAST_GRADIENT) {
                Range power = powerAtTheTop(steepness.endOfPart(climb.middle()));
                needed = easier(needed, needed(EstimatedRide.Kind.KILOMETRE, climb, SUSTAINED, power));
            }
        }
        return needed;
    }

    /** The power of that hour of the ride, on the last lap. */
    private Range powerAtTheTop(double to) {
        double top = (on.laps - 1) * way.length() + Math.min(way.length(), to);
        double tired = estimate.powerAt(estimate.arrivalAt(top));
        return on.hourPower.times(tired / on.hourPower.mid());
    }

    /** What is pedalled on a piece: the shorter it is, the more (practice). */
    Range power(EstimatedRide.Kind kind, double middle, double length) {
        return switch (kind) {
            case RAMP, HUNDRED -> surge(middle, SURGE, MOST_SURGE);
            case FIVE_HUNDRED -> surge(middle, LONG_SURGE, SURGE);
            case KILOMETRE -> surge(middle, 1, LONG_SURGE);
            case LAST_CLIMB -> powerAtTheTop(middle + length / 2);
        };
    }

    /** What a finishing sprint gives, W; null where the ride has none. */
    Range sprintPower() {
        return on.training || "finish".equals(on.aim) ? null : SPRINT.times(on.hourPower.mid());
    }

    private Range ratio(Range power, Steepness.Steepest place) {
        Range rolling = estimate.rolling(way.ground(estimate.stepAt(Math.min(way.length(), place.middle()))));
        double dragArea = estimate.basis().dragArea().mid();
        return Range.of(x -> {
            double speed = PowerBalance.of(x[1], dragArea, x[2]).speed(x[0], 0, x[3], density);
            return gear(Math.max(speed, Walking.BALANCED), x[4], x[5] * on.kind.circumference());
        }, power, on.startLineMass, rolling, place.gradient(), on.climbingCadence, CIRCUMFERENCE_OFF);
    }

    /**
     * Chainring over sprocket.
     *
     * @param speed         m/s
     * @param cadence       turns of the crank a minute
     * @param circumference m
     */
    static double gear(double speed, double cadence, double circumference) {
        return speed * 60 / (cadence * circumference);
    }

    /**
     * The fastest of: where pedalling still pays on the way; the flat at hour power in the group, with a tailwind; and in a race for a
     * time or the podium the finishing sprint on the last stretch, with a tailwind.
     */
    private Range fast() {
        Range tailwind = tailwind();
        double pedalled = fastestPedalled();
        double least = atComfort(pedalled, tailwind.low(), 0);
        double likely = atComfort(pedalled, tailwind.mid(), on.groupShare.mid());
        double most = atComfort(pedalled, tailwind.high(), on.groupShare.high());
        Range speed = Range.around(least, likely, most);
        return Range.of(x -> gear(x[0], x[1], x[2] * on.kind.circumference()), speed, on.highestCadence, CIRCUMFERENCE_OFF);
    }

    /** The fastest, as if all were turned at the highest cadence: what is turned at a comfortable one counts as so much faster. */
    private double atComfort(double pedalled, double tailwind, double groupShare) {
        return Math.max(Math.max(pedalled, flat(tailwind, groupShare)) / COMFORTABLE, sprint(tailwind, groupShare));
    }

    /** What may push, m/s at the rider's height: none, half and all of the forecast's wind, by the hour that of the windiest. */
    private Range tailwind() {
        RideAssumptions.WeatherAssumptions weather = estimate.basis().weather();
        double most = weather.mostAtRider(estimate.total().mid());
        return weather.windKnown() ? new Range(0, most / 2, most) : SOME_TAILWIND;
    }

    /**
     * Speed of the finishing sprint on the last stretch, 0 where there is none: alone, or where a share is ridden in a group out of a
     * slipstream, so on a drag half-way between.
     */
    private double sprint(double tailwind, double groupShare) {
        Range sprint = sprintPower();
        if (sprint == null) {
            return 0;
        }
        int last = on.course.stretches().size() - 1;
        double dragArea = (dragArea(0) + dragArea(groupShare)) / 2;
        double free = PowerBalance.of(on.startLineMass.mid(), dragArea, estimate.rolling(last).mid())
                .speed(sprint.mid(), -tailwind, 0, density);
        return Math.min(free, estimate.cap(last).high());
    }

    /** Drag area in the group where enough is ridden so, else alone, m². */
    private double dragArea(double groupShare) {
        Range alone = DragArea.alone(on.kind, on.riderMass.mid());
        return groupShare >= GROUP_COUNTS ? DragArea.inTheGroup(alone).mid() : alone.mid();
    }

    /** Speed on the flat of the easiest rolling stretch at hour power, m/s. */
    private double flat(double tailwind, double groupShare) {
        double dragArea = dragArea(groupShare);
        int easiest = 0;
        for (int i = 1; i < on.course.stretches().size(); i++) {
            easiest = estimate.rolling(i).mid() < estimate.rolling(easiest).mid() ? i : easiest;
        }
        double free = PowerBalance.of(on.startLineMass.mid(), dragArea, estimate.rolling(easiest).mid())
                .speed(on.hourPower.mid(), -tailwind, 0, density);
        return Math.min(free, estimate.cap(easiest).mid());
    }

    /**
     * The fastest speed at which hour power still pays, alone in still air, m/s; 0 where there is none. The fastest hundredth of the lap is
     * left out. Gradients are taken together in classes of {@value #CLASS}.
     */
    private double fastestPedalled() {
        double[] ridden = new double[(int) (FASTEST / FINE)];
        double[] classes = new double[classOf(FLATTEST) + 1];
        for (int i = 0; i < way.size(); i++) {
            double gradient = way.gradient(i);
            if (gradient >= STEEPEST_PEDALLED && gradient <= FLATTEST) {
                classes[classOf(gradient)] += way.length(i);
            }
            if (i == way.size() - 1 || way.stretch(i + 1) != way.stretch(i)) {
                if (!way.isMeasured()) {
                    addSlopesNotDrawn(on.course.stretches().get(way.stretch(i)), classes);
                }
                addPedalled(way.stretch(i), classes, ridden);
                Arrays.fill(classes, 0);
            }
        }
        double left = LEFT_OUT * way.length();
        for (int i = ridden.length - 1; i >= 0; i--) {
            left -= ridden[i];
            if (left <= 0) {
                return (i + 0.5) * FINE;
            }
        }
        return 0;
    }

    private static int classOf(double gradient) {
        return (int) ((gradient - STEEPEST_PEDALLED) / CLASS);
    }

    /**
     * A drawn line has only mean slopes in it. Half of a stretch's drop is taken to lie evenly over all gradients down to what it writes as
     * steepest, or to three times its mean (practice).
     */
    private static void addSlopesNotDrawn(Stretch stretch, double[] classes) {
        double drop = stretch.descent() == null ? 0 : stretch.descent();
        double mean = STEEPER_THAN_MEAN * drop / stretch.length();
        double steepest = Math.min(-STEEPEST_PEDALLED, stretch.steepest() == null ? mean : Math.max(mean, stretch.steepest()));
        int flat = classOf(0);
        int steep = classOf(-steepest + CLASS / 2);
        for (int i = steep; i < flat; i++) {
            double gradient = -(STEEPEST_PEDALLED + (i + 0.5) * CLASS);
            classes[i] += drop / 2 / (flat - steep) / gradient;
        }
    }

    /** Adds the length of each class of gradient of a stretch to the speed it is ridden at, where pedalling pays. */
    private void addPedalled(int stretch, double[] classes, double[] ridden) {
        PowerBalance alone = PowerBalance.of(on.startLineMass.mid(), dragArea(0), estimate.rolling(stretch).mid());
        double cap = estimate.cap(stretch).mid();
        for (int i = 0; i < classes.length; i++) {
            if (classes[i] > 0) {
                double gradient = STEEPEST_PEDALLED + (i + 0.5) * CLASS;
                double speed = alone.speed(on.hourPower.mid(), 0, gradient, density);
                if (speed < cap && speed >= PAYS * alone.coasting(gradient, density)) {
                    ridden[(int) (speed / FINE)] += classes[i];
                }
            }
        }
    }
}
