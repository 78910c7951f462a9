package courseworthy.demand;

import courseworthy.course.Stretch;
import courseworthy.ride.DragArea;
import courseworthy.ride.Estimate;
import courseworthy.ride.PowerBalance;
import courseworthy.ride.Range;
import courseworthy.ride.Way;

/**
 * The gears that course and rider ask for: ratio = speed over cadence and wheel circumference. Circumference is the nominal one of the
 * bike's usual tyre, 1.5 % either way, since the tyre is not settled yet.
 */
final class Gears {

    private static final Range CIRCUMFERENCE_OFF = Range.within(1, 0.015);
    /** On the steepest 100 m, about a minute, a rider gives this times hour power, less as the day tires (practice). */
    private static final double SURGE = 1.2;
    private static final double MOST_SURGE = 1.4;
    /** A top gear is turned at this share of the highest cadence: comfortable for long (practice). */
    private static final double COMFORTABLE = 0.92;
    /** Pedalling pays where it gains this much speed over coasting (practice). */
    private static final double PAYS = 1.10;
    /** The fastest part of the lap that is left out: there a little spinning out costs next to nothing. */
    private static final double LEFT_OUT = 0.01;
    /** From this share on the group sets the pace for the top gear. */
    private static final double GROUP_COUNTS = 0.10;
    /** Wind at the rider's height that may push where none is forecast, m/s. */
    private static final double SOME_TAILWIND = 2;
    /** Slower than this walking beside the bike is no slower, so no gear is asked for, m/s (4.5 km/h; common practice, no source). */
    private static final double WALKED = 1.25;
    /** The steepest descent on which pedalling is still counted on: beyond it a tuck is nearly as fast (practice). */
    private static final double PEDALLED_DOWN = 0.05;
    /** Where a profile writes no steepest: its descents are this many times steeper than its drop over its length (practice). */
    private static final double STEEPER_THAN_MEAN = 3;
    /** Steps slower than this need no top gear, m/s. */
    private static final double SLOW = 6;
    /** No faster than this, m/s, in steps of so much. */
    private static final double FASTEST = 50;
    private static final double FINE = 0.05;

    private final Premises on;
    private final Estimate estimate;
    private final Way way;
    private final double density;
    private final PowerBalance[] balances;

    Gears(Premises on, Estimate estimate) {
        this.on = on;
        this.estimate = estimate;
        this.way = estimate.way();
        this.density = estimate.density();
        this.balances = new PowerBalance[on.course.stretches().size()];
        for (int i = 0; i < balances.length; i++) {
            balances[i] = estimate.balance(i);
        }
    }

    void write(Ledger ledger, Steepness.Steepest steepest, Climbs.Climb lastLong) {
        Range needed = steepest == null ? null : whereSteepest(steepest);
        ledger.range(Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST, needed);
        if (lastLong != null) {
            ledger.range(Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB, onTheLastClimb(lastLong));
        }
        Range useful = atSpeed();
        ledger.range(Measure.RATIO_USEFUL_AT_SPEED, useful);
        if (needed != null) {
            ledger.range(Measure.GEAR_RANGE_NEEDED, Range.of(x -> x[0] / x[1], useful, needed));
        }
    }

    /** A little over hour power, by how tired the rider is on the last lap there; at the low end the ride's own power. */
    private Range whereSteepest(Steepness.Steepest steepest) {
        double at = (on.laps - 1) * way.length() + Math.min(way.length(), steepest.middle());
        double seconds = estimate.arrivalAt(at);
        double tired = 1 + Math.min(0, estimate.freshness(seconds));
        double hour = on.hourPower.mid() * tired;
        double riding = Math.min(hour, estimate.powerAt(seconds));
        return ratio(new Range(riding, hour * SURGE, hour * MOST_SURGE), steepest.gradient(), steepest.middle());
    }

    /** On the power of that hour of the ride. */
    private Range onTheLastClimb(Climbs.Climb climb) {
        double top = (on.laps - 1) * way.length() + Math.min(way.length(), climb.to());
        double tired = estimate.powerAt(estimate.arrivalAt(top));
        double off = tired * (1 - on.hourPower.low() / on.hourPower.mid());
        double more = tired * (on.hourPower.high() / on.hourPower.mid() - 1);
        Range power = new Range(tired - off, tired, tired + more);
        return ratio(power, Range.exact(climb.gradient()), (climb.from() + climb.to()) / 2);
    }

    private Range ratio(Range power, Range gradient, double where) {
        int stretch = way.stretch(estimate.stepAt(Math.min(way.length(), where)));
        Range rolling = estimate.rolling(stretch);
        double dragArea = estimate.basis().dragArea().mid();
        return Range.of(x -> {
            double speed = PowerBalance.of(x[1], dragArea, x[2]).speed(x[0], 0, x[3], density);
            return gear(Math.max(WALKED, speed), x[4], x[5] * on.kind.circumference());
        }, power, on.startLineMass, rolling, gradient, on.climbingCadence, CIRCUMFERENCE_OFF);
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

    private Range atSpeed() {
        boolean group = on.groupShare.mid() >= GROUP_COUNTS;
        double onTheFlat = flat(on.hourPower.mid(), group, group ? tailwind() : 0);
        double fastest = Math.max(Math.max(fastestPedalled(), gentleDescent()), onTheFlat);
        double pushed = flat(on.hourPower.high(), on.groupShare.high() >= GROUP_COUNTS, tailwind());
        Range speed = Range.around(fastest * 0.95, fastest, pushed);
        return Range.of(x -> gear(x[0], COMFORTABLE * x[1], x[2] * on.kind.circumference()), speed, on.highestCadence, CIRCUMFERENCE_OFF);
    }

    /** A drawn line has no short descents in it: the fastest that a stretch's gentle ones are pedalled on hour power, m/s; else 0. */
    private double gentleDescent() {
        if (on.course.line() == null || on.course.line().measured()) {
            return 0;
        }
        double fastest = 0;
        for (int i = 0; i < on.course.stretches().size(); i++) {
            double down = Math.min(PEDALLED_DOWN, steepestDown(on.course.stretches().get(i)));
            double free = estimate.balance(i).speed(on.hourPower.mid(), 0, -down, density);
            fastest = Math.max(fastest, Math.min(free, estimate.cap(i).mid()));
        }
        return fastest;
    }

    private static double steepestDown(Stretch stretch) {
        double drop = stretch.drop() == null ? 0 : stretch.drop();
        double mean = STEEPER_THAN_MEAN * drop / stretch.length();
        return drop > 0 && stretch.steepest() != null ? Math.max(mean, stretch.steepest()) : mean;
    }

    private double tailwind() {
        return estimate.basis().weather().windKnown() ? estimate.basis().weather().atRider() : SOME_TAILWIND;
    }

    /** Speed on the flat of the easiest rolling stretch, m/s. */
    private double flat(double power, boolean group, double tailwind) {
        double dragArea = DragArea.alone(on.kind, on.riderMass.mid()).mid();
        double behind = group ? DragArea.inTheGroup(DragArea.alone(on.kind, on.riderMass.mid())).mid() : dragArea;
        double least = Double.MAX_VALUE;
        double cap = 0;
        for (int i = 0; i < on.course.stretches().size(); i++) {
            least = Math.min(least, estimate.rolling(i).mid());
            Range caps = estimate.cap(i);
            cap = Math.max(cap, tailwind > 0 ? caps.high() : caps.mid());
        }
        double free = PowerBalance.of(on.startLineMass.mid(), behind, least).speed(power, -tailwind, 0, density);
        return Math.min(cap, free);
    }

    /** The fastest speed at which pedalling still pays, the fastest hundredth of the lap left out, m/s; 0 where there is none. */
    private double fastestPedalled() {
        double[] ridden = new double[(int) (FASTEST / FINE)];
        for (int i = 0; i < way.size(); i++) {
            double speed = estimate.speed(0, i);
            if (speed >= SLOW && speed < FASTEST && pays(i, speed)) {
                ridden[(int) (speed / FINE)] += way.length(i);
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

    private boolean pays(int step, double speed) {
        int stretch = way.stretch(step);
        return speed < estimate.cap(stretch).mid()
                && speed >= PAYS * balances[stretch].coasting(way.gradient(step), density);
    }
}
