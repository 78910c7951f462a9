package courseworthy.ride;

import courseworthy.course.Ground;
import courseworthy.course.Stretch;
import java.util.List;

/**
 * How long a way takes, and how fast each step is ridden: a steady power balance on every step, at the power that can be held for the
 * time it takes. Power and time agree to 0.1 %. Every step is ridden at one power that falls slowly over the day as the rider tires, none
 * where the ground's cap on speed is reached first; what can be held is compared with the fourth-power mean over time, since hard minutes
 * cost more than easy ones give back (common practice; over a cross-country lap it was 279 W where the plain mean was 243 W: Macdermid
 * and Stannard 2012, J. Sports Sci. 30:1491-1501).
 *
 * <p>The range: each uncertain input in turn is set to its ends and the time worked out again, power included; the differences are
 * joined by the root of the sum of their squares, as for independent uncertainties (JCGM 100:2008, 5.1.2, from memory). These runs use
 * the {@linkplain Way#thinned thinned way}.
 */
public final class Estimate {

    /** Power and what can be held for the time agree to this share; for the ends of the range less closely. */
    private static final double AGREED = 5e-4;
    private static final double ENDS_AGREED = 3e-3;
    /** Of two runs that differ by a few seconds. */
    private static final double PAIRED_AGREED = 1e-7;
    private static final int MOST_ROUNDS = 40;
    /** To keep the lowest cadence in the easiest gear a rider gives up to this times the ride's power; else gets off and walks (practice). */
    private static final double MOST_GROUND = 1.35;
    /** However much is coasted, nobody pedals for long above this share of hour power. */
    private static final double MOST_PEDALLED = 1.2;

    private final Way way;
    private final Basis basis;
    private final Range[] rolling;
    private final Range[] cap;
    private final Run middle;
    private final Range riding;
    private final Range stops;
    private final Range total;
    private final Trace trace;
    private final Ridden whole;
    private final Ridden thin;
    private final Run about;
    private double expected;

    private Estimate(Way way, Basis basis, List<Stretch> stretches) {
        this.way = way;
        this.basis = basis;
        this.rolling = new Range[stretches.size()];
        this.cap = new Range[stretches.size()];
        for (int i = 0; i < rolling.length; i++) {
            Ground ground = stretches.get(i).ground();
            rolling[i] = Rolling.of(ground, basis.kind(), basis.wetness());
            cap[i] = Pace.cap(ground, basis.kind(), basis.skill(), basis.wetness());
        }
        double[] turns = turns(stretches);
        whole = new Ridden(way, way, basis.weather(), turns);
        thin = new Ridden(way.thinned(), way, basis.weather(), turns);
        expected = firstGuess().seconds;
        about = held(thin, scenario(Uncertain.NONE, 0), firstGuess(), AGREED);
        expected = about.seconds;
        middle = held(whole, scenario(Uncertain.NONE, 0), about, AGREED);
        trace = whole.trace(basis.laps());
        riding = spread(thin, about);
        stops = Stops.of(middle.seconds, basis.points(), basis.training());
        total = riding.plus(stops);
    }

    /** The estimate for a way whose steps name stretches by index. */
    public static Estimate of(Way way, Basis basis, List<Stretch> stretches) {
        return new Estimate(way, basis, stretches);
    }

    private static double[] turns(List<Stretch> stretches) {
        double[] turns = new double[stretches.size()];
        for (int i = 0; i < turns.length; i++) {
            Double perKm = stretches.get(i).ground().turnsPerKm();
            turns[i] = perKm == null ? 0 : perKm / 1000;
        }
        return turns;
    }

    private Run firstGuess() {
        double seconds = way.length() * basis.laps() / 6.5 + 60;
        double watts = basis.hourPower().mid() * Endurance.share(seconds, 0) * basis.intensity().mid();
        return new Run(seconds, watts, watts, watts);
    }

    /** Inputs that are uncertain independently of each other. */
    private enum Uncertain { NONE, POWER, ROLLING, DRAG, CAP, MASS, CLIMBING }

    /** One choice of all inputs. */
    private static final class Scenario {
        double powerFactor;
        double mass;
        double dragArea;
        double climbing;
        double wind;
        double[] rolling;
        double[] cap;
        Change change = Change.NONE;
    }

    /** All in the middle but one, at its fast (1) or slow (-1) end. */
    private Scenario scenario(Uncertain which, int end) {
        Scenario s = new Scenario();
        s.powerFactor = which == Uncertain.POWER ? at(powerFactor(), end) : 1;
        s.mass = at(basis.mass(), which == Uncertain.MASS ? -end : 0);
        s.dragArea = at(basis.dragArea(), which == Uncertain.DRAG ? -end : 0);
        s.climbing = at(basis.climbing(), which == Uncertain.CLIMBING ? -end : 0);
        s.wind = which == Uncertain.DRAG && end < 0 ? basis.weather().atRiderOnABadDay() : basis.weather().atRider();
        s.rolling = at(rolling, which == Uncertain.ROLLING ? -end : 0);
        s.cap = at(cap, which == Uncertain.CAP ? end : 0);
        return s;
    }

    /** How far the power held may be off: the rider's hour power, how it lasts, and how hard the ride is ridden are independent. */
    private Range powerFactor() {
        Range lasting = Endurance.share(expected);
        return Range.exact(1).plus(aboutOne(basis.hourPower())).plus(aboutOne(lasting)).plus(aboutOne(basis.intensity()));
    }

    private static Range aboutOne(Range range) {
        return range.times(1 / range.mid()).plus(-1);
    }

    private static double at(Range range, int end) {
        return end == 0 ? range.mid() : end < 0 ? range.low() : range.high();
    }

    private static double[] at(Range[] ranges, int end) {
        double[] out = new double[ranges.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = at(ranges[i], end);
        }
        return out;
    }

    /** What came of one scenario. */
    private record Run(double seconds, double power, double load, double mean) {
    }

    /** Finds the power whose fourth-power mean over the ride is what can be held for the time the ride takes with it. */
    private Run held(Ridden ridden, Scenario s, Run guess, double agreed) {
        double seconds = guess.seconds;
        double power = guess.power * target(s, seconds) / guess.load;
        double most = MOST_PEDALLED * basis.hourPower().mid() * s.powerFactor;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            ridden.ride(s, basis.laps(), Math.min(power, most), seconds);
            seconds = ridden.seconds;
            double off = target(s, seconds) / ridden.load;
            if (Math.abs(off - 1) < agreed || power >= most && off > 1) {
                break;
            }
            power = Math.min(most, power) * Math.min(2, off);
        }
        return new Run(seconds, Math.min(power, most), ridden.load, ridden.mean);
    }

    /** What can be held for a time and is meant to be ridden, W. */
    private double target(Scenario s, double seconds) {
        return basis.hourPower().mid() * Endurance.share(seconds, 0) * basis.intensity().mid() * s.powerFactor;
    }

    private Range spread(Ridden thin, Run base) {
        double faster = 0;
        double slower = 0;
        for (Uncertain which : Uncertain.values()) {
            if (which == Uncertain.NONE) {
                continue;
            }
            double gain = 1 - held(thin, scenario(which, 1), base, ENDS_AGREED).seconds / base.seconds;
            double loss = held(thin, scenario(which, -1), base, ENDS_AGREED).seconds / base.seconds - 1;
            faster += Math.max(0, gain) * Math.max(0, gain);
            slower += Math.max(0, loss) * Math.max(0, loss);
        }
        double mid = middle.seconds;
        return new Range(mid * Math.max(0.3, 1 - Math.sqrt(faster)), mid, mid * (1 + Math.sqrt(slower)));
    }

    /**
     * Time a change returns over the ride, stops apart, s: above 0 where it is faster. Both sides are ridden with the same uncertain inputs,
     * so the range is that of the difference. What can be held goes with the time on either side. Worked out on the thinned way, whose error
     * is the same on both sides.
     */
    public Range saved(Change change) {
        double mid = saved(change, Uncertain.NONE, 0);
        double down = 0;
        double up = 0;
        for (Uncertain which : Uncertain.values()) {
            if (which != Uncertain.NONE) {
                double fast = saved(change, which, 1) - mid;
                double slow = saved(change, which, -1) - mid;
                down = Math.hypot(down, Math.max(0, -Math.min(fast, slow)));
                up = Math.hypot(up, Math.max(0, Math.max(fast, slow)));
            }
        }
        return new Range(mid - down, mid, mid + up);
    }

    private double saved(Change change, Uncertain which, int end) {
        Scenario s = scenario(which, end);
        double without = held(thin, s, about, PAIRED_AGREED).seconds;
        s.change = change;
        return without - held(thin, s, about, PAIRED_AGREED).seconds;
    }

    /** The middle ride with a change, step by step. */
    public Trace trace(Change change) {
        Scenario s = scenario(Uncertain.NONE, 0);
        s.change = change;
        held(whole, s, middle, AGREED);
        return whole.trace(basis.laps());
    }

    /** The middle ride, step by step. */
    public Trace trace() {
        return trace;
    }

    /** The way made ready for many runs, and what the last of them gave. */
    private static final class Ridden {
        private final int size;
        private final double[] length;
        private final double[] sine;
        private final double[] cosine;
        private final double[] halfDensity;
        private final double[] head;
        private final double[] turns;
        private final int[] stretch;
        private final boolean headings;
        private final Way way;
        /** For each step of the way not thinned: the step it went into, and its length, m. */
        private final int[] stepOf;
        private final double[] lengths;
        private double[] arrival = new double[0];
        private double[] speeds = new double[0];
        private double[] powers = new double[0];
        private double[] changed = new double[0];
        private double seconds;
        private double load;
        private double mean;

        Ridden(Way way, Way full, Basis.Weather weather, double[] turnsPerMetre) {
            this.way = way;
            stepOf = new int[full.size()];
            lengths = new double[full.size()];
            size = way.size();
            int into = 0;
            for (int i = 0; i < stepOf.length; i++) {
                lengths[i] = full.length(i);
                while (into < size - 1 && way.along(into) < full.along(i) - 0.5 * full.length(i)) {
                    into++;
                }
                stepOf[i] = into;
            }
            length = new double[size];
            sine = new double[size];
            cosine = new double[size];
            halfDensity = new double[size];
            head = new double[size];
            turns = new double[size];
            stretch = new int[size];
            headings = way.hasHeadings() && !Double.isNaN(weather.from()) && weather.windKnown();
            Densities densities = new Densities(way, weather);
            for (int i = 0; i < size; i++) {
                double gradient = way.gradient(i);
                length[i] = way.length(i);
                cosine[i] = 1 / Math.sqrt(1 + gradient * gradient);
                sine[i] = gradient * cosine[i];
                halfDensity[i] = 0.5 * densities.at(way.height(i));
                head[i] = headings ? Math.cos(weather.from() - way.bearing(i)) : 1;
                stretch[i] = way.stretch(i);
                turns[i] = turnsPerMetre[stretch[i]] * length[i];
            }
        }

        /** Rides all laps at a power that falls about its mean as the rider tires over the expected time. */
        void ride(Scenario s, int laps, double power, double expected) {
            room(laps);
            prepare(s.change);
            Gearing gears = s.change.gearing();
            double fade = Endurance.fade(expected);
            double time = 0;
            double fourth = 0;
            double work = 0;
            int at = 0;
            double v = 6;
            for (int lap = 0; lap < laps; lap++) {
                for (int i = 0; i < size; i++) {
                    double fresh = power * (1 + fade * (0.5 - Math.min(1, time / expected)));
                    double most = s.cap[stretch[i]] * s.change.cap();
                    double free = free(s, i, fresh * PowerBalance.EFFICIENCY, v);
                    double pedalled = fresh;
                    if (gears != null && free > gears.fastest() && gears.fastest() < most) {
                        free = Math.max(gears.fastest(), free(s, i, 0, v));
                        pedalled = Math.min(fresh, Math.max(0, pedalled(s, i, free)));
                    } else if (gears != null && free < gears.slowest()) {
                        double asked = pedalled(s, i, gears.slowest());
                        pedalled = asked <= power * MOST_GROUND ? asked : fresh;
                        free = asked <= power * MOST_GROUND ? gears.slowest() : Pace.WALK;
                    }
                    v = free > most ? most : Math.max(free, Pace.WALK);
                    pedalled = free > most ? Math.min(fresh, Math.max(0, pedalled(s, i, v))) : pedalled;
                    double dt = length[i] / v + turns[i] * Pace.turn(v);
                    double square = pedalled * pedalled;
                    fourth += square * square * dt;
                    work += pedalled * dt;
                    time += dt;
                    arrival[at] = time;
                    speeds[at] = v;
                    powers[at] = pedalled;
                    at++;
                }
            }
            seconds = time;
            load = Math.max(1, Math.sqrt(Math.sqrt(fourth / time)));
            mean = work / time;
        }

        /** Speed by the power balance alone; without headings half of the step is ridden against the wind and half with it. */
        private double free(Scenario s, int i, double wheelPower, double guess) {
            double air = halfDensity[i] * (s.change.dragArea(s.dragArea, share(i)) + PowerBalance.WHEEL_DRAG);
            double steady = steady(s, i);
            double wind = s.wind * head[i];
            double v = PowerBalance.steadySpeed(wheelPower, air, wind, steady, PowerBalance.BEARING_SLOPE, guess);
            if (headings || wind == 0) {
                return v;
            }
            double with = PowerBalance.steadySpeed(wheelPower, air, -wind, steady, PowerBalance.BEARING_SLOPE, v);
            return 2 / (1 / v + 1 / with);
        }

        private double steady(Scenario s, int i) {
            double rolling = s.rolling[stretch[i]] * s.change.rollingOn(stretch[i]);
            return (s.mass + s.change.mass()) * PowerBalance.GRAVITY * (rolling * cosine[i] + s.climbing * sine[i])
                    + PowerBalance.BEARING_FORCE;
        }

        /** Power at the crank that a speed asks for. */
        private double pedalled(Scenario s, int i, double v) {
            double through = v + (headings ? s.wind * head[i] : 0);
            double dragArea = s.change.dragArea(s.dragArea, share(i)) + PowerBalance.WHEEL_DRAG;
            double air = halfDensity[i] * dragArea * through * Math.abs(through);
            return v * (air + steady(s, i) + PowerBalance.BEARING_SLOPE * v) / PowerBalance.EFFICIENCY;
        }

        private void room(int laps) {
            if (arrival.length != size * laps) {
                arrival = new double[size * laps];
                speeds = new double[size * laps];
                powers = new double[size * laps];
            }
        }

        /** The share of each step on which the drag changes, from the shares of the steps it was joined of. */
        private void prepare(Change change) {
            double[] shares = change.dragOn();
            if (shares.length == 0) {
                changed = shares;
                return;
            }
            changed = new double[size];
            double[] joined = new double[size];
            for (int i = 0; i < stepOf.length; i++) {
                changed[stepOf[i]] += shares[i] * lengths[i];
                joined[stepOf[i]] += lengths[i];
            }
            for (int i = 0; i < size; i++) {
                changed[i] /= joined[i];
            }
        }

        private double share(int i) {
            return changed.length == 0 ? 1 : changed[i];
        }

        /** What the last ride was, kept apart from the next one. */
        Trace trace(int laps) {
            Trace kept = new Trace(way, laps, arrival, speeds, powers);
            arrival = new double[0];
            return kept;
        }
    }

    /** Density by height in steps of 25 m, linear between: the error is below 1e-6 of it. */
    private static final class Densities {
        private static final double STEP = 25;
        private final double least;
        private final double[] table;

        Densities(Way way, Basis.Weather weather) {
            double low = Double.MAX_VALUE;
            double high = -Double.MAX_VALUE;
            for (int i = 0; i < way.size(); i++) {
                low = Math.min(low, way.height(i));
                high = Math.max(high, way.height(i));
            }
            least = low;
            table = new double[(int) Math.max(0, Math.ceil((high - low) / STEP)) + 2];
            for (int i = 0; i < table.length; i++) {
                table[i] = weather.density(low + i * STEP);
            }
        }

        double at(double height) {
            double place = (height - least) / STEP;
            int below = (int) place;
            return table[below] + (table[below + 1] - table[below]) * (place - below);
        }
    }

    /** Riding time, s. */
    public Range riding() {
        return riding;
    }

    /** Time not riding, s. */
    public Range stops() {
        return stops;
    }

    /** Riding and stopping, s. */
    public Range total() {
        return total;
    }

    /** Mean of the power on the pedals where they turn, W. */
    public double power() {
        return middle.power;
    }

    /** Fourth-power mean over the riding time, W: what is compared with what can be held. */
    public double load() {
        return middle.load;
    }

    /** Plain mean over the riding time, coasting included, W. */
    public double meanPower() {
        return middle.mean;
    }

    /** What can be held for the riding time, W. */
    public double canHold() {
        return basis.hourPower().mid() * Endurance.share(middle.seconds, 0) * basis.intensity().mid();
    }

    /** Power on the pedals at a moment of the riding time, W: lower late than early. */
    public double powerAt(double ridingSeconds) {
        return middle.power * (1 + freshness(ridingSeconds));
    }

    /** How far power then is above or below its mean, as a share. */
    public double freshness(double ridingSeconds) {
        return Endurance.fade(middle.seconds) * (0.5 - Math.max(0, Math.min(1, ridingSeconds / middle.seconds)));
    }

    /** Speed on a step of a lap, m/s; laps from 0. */
    public double speed(int lap, int step) {
        return trace.speed(lap * way.size() + step);
    }

    /** Riding time to the end of a step of a lap, s; laps from 0. */
    public double arrival(int lap, int step) {
        return trace.arrival(lap * way.size() + step);
    }

    /** Riding time to a distance from the start over all laps, s. */
    public double arrivalAt(double distance) {
        double lap = way.length();
        int full = (int) Math.min(basis.laps() - 1.0, Math.floor(distance / lap));
        double rest = distance - full * lap;
        int step = stepAt(rest);
        double end = arrival(full, step);
        double before = step > 0 ? arrival(full, step - 1) : full > 0 ? arrival(full - 1, way.size() - 1) : 0;
        double from = way.along(step) - way.length(step);
        double part = Math.max(0, Math.min(1, (rest - from) / way.length(step)));
        return before + (end - before) * part;
    }

    /** The step of a lap that holds a distance from its start. */
    public int stepAt(double distance) {
        int low = 0;
        int high = way.size() - 1;
        while (low < high) {
            int between = (low + high) >>> 1;
            if (way.along(between) < distance) {
                low = between + 1;
            } else {
                high = between;
            }
        }
        return low;
    }

    /** Rolling resistance coefficient on a stretch. */
    public Range rolling(int stretchIndex) {
        return rolling[stretchIndex];
    }

    /** Cap on speed on a stretch, m/s. */
    public Range cap(int stretchIndex) {
        return cap[stretchIndex];
    }

    /** The power balance on a stretch, all inputs in the middle. */
    public PowerBalance balance(int stretchIndex) {
        return PowerBalance.of(basis.mass().mid(), basis.dragArea().mid(), rolling[stretchIndex].mid());
    }

    /** Density of air at the start, kg/m³. */
    public double density() {
        return basis.weather().density(basis.weather().startHeight());
    }

    public Way way() {
        return way;
    }

    public Basis basis() {
        return basis;
    }
}
