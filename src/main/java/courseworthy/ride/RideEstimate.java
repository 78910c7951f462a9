package courseworthy.ride;

import courseworthy.course.Stretch;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * How long a way takes, and how fast each step is ridden: a power balance along the way with the speed carried over from step to step
 * ({@link Motion}), at the power that can be held for the time it takes. Power and time agree to 0.1 %. Power is shared out over slopes and
 * wind as {@link Pacing} says and falls slowly over the day as the rider tires; where the ground's cap on speed is reached the rider eases,
 * coasts or brakes; where speed falls below walking the rider walks. What can be held is compared with the fourth-power mean over time,
 * since hard minutes cost more than easy ones give back (common practice; over a cross-country lap it was 279 W where the plain mean was
 * 243 W: Macdermid and Stannard 2012, J. Sports Sci. 30:1491-1501).
 *
 * <p>Ranges are those of {@link RangeSampler}: the thinned rule rides the {@linkplain DiscretisedCourse#thinned thinned way} with each uncertain input in turn
 * at its ends and joins what changed over all draws; {@link SampledEstimate} rides every draw on the whole way.
 */
public final class RideEstimate {

    /** Gradient from which ground climbs or falls, and within which it is level: where the mean power of each is given (practice, no source). */
    public static final double CLIMBING = 0.02;
    public static final double LEVEL = 0.01;

    /** Power and what can be held for the time agree to this share; for the ends of the range less closely, the rest by its slope. */
    private static final double AGREED = 2e-4;
    private static final double ENDS_AGREED = 2e-2;
    /** Of two rides that differ by a few seconds. */
    private static final double PAIRED = 1e-6;
    /** An input that changes the time by this share is worked out half-way to its ends too. */
    private static final double MUCH = 0.06;
    /** First pieces of a step, m, and how they grow; those of the thinned way. */
    private static final double FIRST = 15;
    private static final double GROWTH = 1.6;
    private static final double THINNED_FIRST = 60;
    private static final double THINNED_GROWTH = 2.5;
    /** How often time and power are found on the thinned way; by the hour the weather moves with the ride, and is looked up again each time (computing). */
    private static final int ROUNDS = 2;
    private static final int ROUNDS_BY_HOUR = 4;

    private final DiscretisedCourse way;
    private final RideAssumptions basis;
    private final int stretches;
    private final GroundFigures ground;
    private final GoingByHour going;
    private final Map<Double, Range> arrivals = new HashMap<>();
    private final RideSimulator whole;
    private final RideSimulator thin;
    private final RideRun middle;
    private final RideTrace trace;
    /** Under a forecast by the hour; else null. */
    private final HourlyConditions conditions;
    private final Range riding;
    private final RidePortions portions;
    private final Range stops;
    private final double walked;
    private final Range total;
    private final double[][] draws = RangeSampler.draws(RangeSampler.DRAWS, UncertainInput.COUNT);
    private final SustainablePower sustainable;
    RideRun about;
    private double timeByPower;
    private RangeSampler.Together together = RangeSampler.APART;
    /** By input and place on the thinned way; null where not ridden. */
    private final RideRun[][] runs = new RideRun[UncertainInput.COUNT][RangeSampler.PLACES.length];

    private RideEstimate(DiscretisedCourse way, RideAssumptions basis, List<Stretch> stretches) {
        this.way = way;
        this.basis = basis;
        this.sustainable = new SustainablePower(basis);
        this.stretches = stretches.size();
        ground = new GroundFigures(way, basis, stretches);
        going = basis.rains() ? new GoingByHour(basis.weather().hourly()) : null;
        double[] harder = ground.harder();
        whole = new RideSimulator(way, way, basis.weather(), ground.turns, FIRST, GROWTH);
        DiscretisedCourse thinned = way.thinned();
        thin = new RideSimulator(thinned, way, basis.weather(), ground.turns, THINNED_FIRST, THINNED_GROWTH);
        settle(thinned);
        prepare(whole);
        conditions = basis.weather().hourly() == null ? null : conditionsOn(way);
        if (going != null) {
            ground.asRidden(conditions);
        }
        middle = sustainable.held(whole, inputs(), about, AGREED, true);
        trace = middle.steps();
        walked = trace.walked();
        riding = spread();
        portions = new RidePortions(this, harder);
        stops = Stops.of(middle.seconds(), basis.points(), basis.pacing().training());
        total = riding.plus(stops);
    }

    /** The estimate for a way whose steps name stretches by index. */
    public static RideEstimate of(DiscretisedCourse way, RideAssumptions basis, List<Stretch> stretches) {
        return new RideEstimate(way, basis, stretches);
    }

    /** Finds time and power on the thinned way, from which weather by the hour, pacing and tiring follow; then again with these. */
    private void settle(DiscretisedCourse thinned) {
        double expected = way.length() * basis.laps() / 6.5 + 60;
        sustainable.expect(expected);
        double watts = basis.pacing().hourPower().mid() * Endurance.share(expected, 0) * basis.pacing().intensity().mid();
        about = new RideRun(expected, watts, watts, watts, watts, 0, null);
        int rounds = basis.weather().hourly() == null ? ROUNDS : ROUNDS_BY_HOUR;
        for (int round = 0; round < rounds; round++) {
            sustainable.expect(about.seconds());
            weather(thin, thinned);
            thin.pace(inputs(), about.power());
            about = sustainable.held(thin, inputs(), about, round < rounds - 1 ? ENDS_AGREED : PAIRED, true);
        }
        thin.ride(inputs(), basis.laps(), about.power() * 1.01, sustainable.hour(inputs()), sustainable.expected(), false);
        timeByPower = Math.log(thin.seconds / about.seconds()) / Math.log(1.01);
        about = about.corrected(timeByPower);
    }

    /** Weather and pacing for the whole way as settled on the thinned one. */
    void prepare(RideSimulator other) {
        weather(other, way);
        other.paceAs(thin);
    }

    private void weather(RideSimulator ridden, DiscretisedCourse on) {
        if (basis.weather().hourly() == null) {
            ridden.air(basis.weather(), sustainable.expected(), basis.laps());
        } else {
            ridden.weather(basis.weather(), conditionsOn(on), basis.laps());
        }
    }

    /** The same on a way thinned or not. */
    public HourlyConditions conditionsOn(DiscretisedCourse on) {
        return HourlyConditions.along(on, basis, going, ground, this::clock);
    }

    /** Time from the start at a distance from it by the ride settled so far, stops spread evenly, s; before there is one, at an even pace. */
    private double clock(double distance) {
        double seconds = about.steps() == null ? about.seconds() * distance / (way.length() * basis.laps()) : about.steps().arrivalAt(distance);
        return seconds * (1 + Stops.of(about.seconds(), basis.points(), basis.pacing().training()).mid() / about.seconds());
    }

    /** The whole way made ready once more, for a thread of its own. */
    RideSimulator another() {
        RideSimulator other = new RideSimulator(way, way, basis.weather(), ground.turns, FIRST, GROWTH);
        prepare(other);
        return other;
    }

    private RideParameters inputs() {
        return inputs(new double[UncertainInput.COUNT]);
    }

    private RideParameters inputs(int which, double place) {
        double[] places = new double[UncertainInput.COUNT];
        places[which] = place;
        return inputs(places);
    }

    /** Each input at its place between its ends: -1 the slow end, 0 the middle, 1 the fast end. */
    RideParameters inputs(double[] places) {
        RideParameters in = new RideParameters();
        in.powerFactor = at(powerFactor(), places[UncertainInput.POWER.ordinal()]);
        in.mass = at(basis.mass(), -places[UncertainInput.MASS.ordinal()]);
        in.dragArea = at(basis.dragArea(), -places[UncertainInput.DRAG.ordinal()]);
        in.climbing = at(basis.climbing(), -places[UncertainInput.CLIMBING.ordinal()]);
        in.wind = at(basis.weather().windAtRider(), -places[UncertainInput.WIND.ordinal()]);
        in.airFactor = at(basis.weather().densityOff(), -places[UncertainInput.AIR.ordinal()]);
        in.fade = at(Endurance.fade(sustainable.expected()), -places[UncertainInput.TIRING.ordinal()]);
        in.rolling = at(ground.rolling, -places[UncertainInput.ROLLING.ordinal()]);
        in.cap = at(ground.cap, places[UncertainInput.CAP.ordinal()]);
        in.sideways = at(ground.sideways, places[UncertainInput.CAP.ordinal()]);
        in.dryCap = at(ground.dryCap, places[UncertainInput.CAP.ordinal()]);
        in.drySideways = at(ground.drySideways, places[UncertainInput.CAP.ordinal()]);
        in.turnInside = at(TrailCorner.INSIDE, places[UncertainInput.CAP.ordinal()]);
        in.tread = at(TrailCorner.TREAD, places[UncertainInput.CAP.ordinal()]);
        in.walking = at(Walking.SPEED, places[UncertainInput.CAP.ordinal()]);
        return in;
    }

    /** How far the power held may be off: the rider's hour power, how it lasts, and how hard the ride is ridden are independent. */
    public Range powerFactor() {
        Range lasting = Endurance.share(sustainable.expected());
        return Range.exact(1).plus(aboutOne(basis.pacing().hourPower())).plus(aboutOne(lasting)).plus(aboutOne(basis.pacing().intensity()));
    }

    private static Range aboutOne(Range range) {
        return range.times(1 / range.mid()).plus(-1);
    }

    private static double at(Range range, double place) {
        return range.mid() + place * (place < 0 ? range.mid() - range.low() : range.high() - range.mid());
    }

    private static double[] at(Range[] ranges, double place) {
        double[] out = new double[ranges.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = at(ranges[i], place);
        }
        return out;
    }

    /** The same from the middle ride's power on, the rest of what is off made good by how time goes with power. */
    RideRun held(RideSimulator ridden, RideParameters in, double agreed) {
        return sustainable.held(ridden, in, middle, agreed, false).corrected(timeByPower);
    }

    /** Rides the thinned way with each input at its places. */
    private void rideEnds() {
        for (int i = 0; i < UncertainInput.COUNT; i++) {
            runs[i][0] = at(i, 0);
            runs[i][4] = at(i, 4);
            double most = Math.max(Math.abs(runs[i][0].seconds() - about.seconds()), Math.abs(runs[i][4].seconds() - about.seconds()));
            if (most > MUCH * about.seconds()) {
                runs[i][1] = at(i, 1);
                runs[i][3] = at(i, 3);
            }
        }
        if (runs[UncertainInput.ROLLING.ordinal()][1] != null && runs[UncertainInput.CAP.ordinal()][1] != null) {
            double[] both = new double[UncertainInput.COUNT];
            both[UncertainInput.ROLLING.ordinal()] = -1;
            both[UncertainInput.CAP.ordinal()] = -1;
            double apart = runs[UncertainInput.ROLLING.ordinal()][0].seconds() * runs[UncertainInput.CAP.ordinal()][0].seconds() / about.seconds();
            double joined = sustainable.held(thin, inputs(both), about, ENDS_AGREED, false).corrected(timeByPower).seconds();
            together = new RangeSampler.Together(UncertainInput.ROLLING.ordinal(), UncertainInput.CAP.ordinal(), joined / apart);
        }
    }

    private RideRun at(int input, int place) {
        return sustainable.held(thin, inputs(input, RangeSampler.PLACES[place]), about, ENDS_AGREED, true).corrected(timeByPower);
    }

    /** The range of the riding time by the thinned rule. */
    private Range spread() {
        rideEnds();
        return spread(middle.seconds(), RideRun::seconds, false);
    }

    /**
     * The range of what a ride makes of something, by the thinned rule.
     *
     * @param mid   with all inputs in the middle
     * @param of    what a ride makes of it, on any scale
     * @param apart whether inputs do nothing together that they do not alone
     */
    Range spread(double mid, ToDoubleFunction<RideRun> of, boolean apart) {
        double base = of.applyAsDouble(about);
        double[][] results = places();
        for (int i = 0; i < UncertainInput.COUNT; i++) {
            for (int place = 0; place < RangeSampler.PLACES.length; place++) {
                results[i][place] = runs[i][place] == null ? Double.NaN : mid * of.applyAsDouble(runs[i][place]) / base;
            }
        }
        return RangeSampler.range(mid, results, apart ? RangeSampler.APART : together, draws);
    }

    /** The ride where everything rolls at the slow end. */
    RideRun rollingWorse() {
        return runs[UncertainInput.ROLLING.ordinal()][0];
    }

    private static double[][] places() {
        return new double[UncertainInput.COUNT][RangeSampler.PLACES.length];
    }

    /** Riding time to a distance from the start over all laps, s, with its range; kept once it is worked out. */
    public synchronized Range arrivals(double distance) {
        return arrivals.computeIfAbsent(distance, portions::arrival);
    }

    /**
     * Riding time between two distances from the start over all laps, s, with its range: what the inputs leave open, that a part of a ride is
     * ridden harder or easier than the whole, that a trail is harder or easier there than is told of it, and where the wind's direction is not
     * known that a part may lie along it; joined by the root of the sum of squares.
     */
    public Range between(double from, double to) {
        return portions.between(from, to, false);
    }

    /** The same where the time of the whole is known to be the middle one's: what makes the whole ride slower or faster is then left out. */
    public Range betweenOfAKnownTotal(double from, double to) {
        return portions.between(from, to, true);
    }

    /**
     * Time a change returns over the ride, stops apart, s: above 0 where it is faster. Both sides are ridden with the same uncertain inputs,
     * so the range is that of the difference. What can be held goes with the time on either side. Worked out on the thinned way, whose error
     * is the same on both sides.
     */
    public synchronized Range saved(RideChange change) {
        if (change.equals(RideChange.NONE)) {
            return Range.exact(0);
        }
        RideParameters in = inputs();
        in.change = change;
        double mid = about.seconds() - sustainable.held(thin, in, about, PAIRED, false).corrected(timeByPower).seconds();
        double plain = saved(change, inputs(), about);
        double[][] saved = places();
        for (int i = 0; i < UncertainInput.COUNT; i++) {
            for (int place = 0; place < RangeSampler.PLACES.length; place++) {
                saved[i][place] = runs[i][place] == null ? Double.NaN
                        : mid + saved(change, inputs(i, RangeSampler.PLACES[place]), runs[i][place]) - plain;
            }
        }
        return RangeSampler.range(mid, saved, null, draws);
    }

    /** By one run at the power held without the change, the rest by how time goes with power. */
    private double saved(RideChange change, RideParameters in, RideRun without) {
        in.change = change;
        double off = sustainable.ride(thin, in, without.power(), false);
        boolean flatOut = without.power() >= RideSimulator.MOST_PEDALLED * sustainable.hour(in) && off > 0;
        return without.seconds() - sustainable.run(thin, without.power(), flatOut ? 0 : off, false).corrected(timeByPower).seconds();
    }

    /** The middle ride with a change, step by step. */
    public synchronized RideTrace trace(RideChange change) {
        RideParameters in = inputs();
        in.change = change;
        return sustainable.held(whole, in, middle, AGREED, true).steps();
    }

    /** The middle ride, step by step. */
    public RideTrace trace() {
        return trace;
    }

    /** The weather that the middle ride meets; null where the forecast is of the whole day. */
    public HourlyConditions conditions() {
        return conditions;
    }

    /** Riding time, s. */
    public Range riding() {
        return riding;
    }

    /** Time not riding, s. */
    public Range stops() {
        return stops;
    }

    /** Of the stopping time what lies before a place, s: so many support points passed, the rest even over the riding time. */
    public Range stopped(int pointsPassed, double ridingSeconds) {
        Range at = Stops.atPoints(middle.seconds(), basis.points(), basis.pacing().training()).times(pointsPassed / Math.max(1.0, basis.points()));
        Range between = Stops.between(middle.seconds(), basis.points(), basis.pacing().training()).times(Math.min(1, ridingSeconds / middle.seconds()));
        return new Range(at.low() + between.low(), at.mid() + between.mid(), at.high() + between.high());
    }

    /** Of the riding time what is walked beside the bike, s. */
    public double walked() {
        return walked;
    }

    /** Riding and stopping, s. */
    public Range total() {
        return total;
    }

    /** Mean of the power on the pedals while they turn, W. */
    public double power() {
        return middle.pedalled();
    }

    /** Power uphill in the middle of the ride, W; the flat and descents are ridden at less. */
    public double uphill() {
        return middle.power();
    }

    /** Fourth-power mean over the riding time, W: what is compared with what can be held. */
    public double load() {
        return middle.load();
    }

    /** Plain mean over what is ridden, coasting included, walking not, W; 0 where all is walked. */
    public double meanPower() {
        double ridden = middle.seconds() - walked;
        return ridden > 0 ? middle.mean() * middle.seconds() / ridden : 0;
    }

    /**
     * Mean power on the pedals where the ground has a gradient between two, W, with the range of what can be held; walking is left out. Null
     * where less than a fiftieth of the time is ridden so.
     */
    public Range powerOn(double least, double most) {
        double seconds = 0;
        double work = 0;
        for (int at = 0; at < trace.size(); at++) {
            double gradient = way.gradient(trace.step(at));
            if (gradient >= least && gradient <= most) {
                seconds += trace.seconds(at) - trace.onFoot(at);
                work += trace.power(at) * trace.seconds(at);
            }
        }
        return seconds < middle.seconds() / 50 ? null : powerFactor().times(work / seconds);
    }

    /** What can be held for the riding time, W. */
    public double canHold() {
        return basis.pacing().hourPower().mid() * Endurance.share(middle.seconds(), 0) * basis.pacing().intensity().mid();
    }

    /** Power uphill at a moment of the riding time, W: lower late than early. */
    public double powerAt(double ridingSeconds) {
        return middle.power() * (1 + freshness(ridingSeconds));
    }

    /** How far power then is above or below its mean, as a share. */
    public double freshness(double ridingSeconds) {
        return Endurance.fade(middle.seconds()).mid() * (0.5 - Math.max(0, Math.min(1, ridingSeconds / middle.seconds())));
    }

    /** Mean speed on a step of a lap, m/s; laps from 0. */
    public double speed(int lap, int step) {
        return trace.speed(lap * way.size() + step);
    }

    /** Riding time to the end of a step of a lap, s; laps from 0. */
    public double arrival(int lap, int step) {
        return trace.arrival(lap * way.size() + step);
    }

    /** Riding time to a distance from the start over all laps, s. */
    public double arrivalAt(double distance) {
        return trace.arrivalAt(distance);
    }

    /** The step of a lap that holds a distance from its start. */
    public int stepAt(double distance) {
        return way.stepAt(distance);
    }

    /** Rolling resistance coefficient on a stretch as written, or on a {@linkplain DiscretisedCourse#ground ground}. */
    public Range rolling(int ground) {
        return this.ground.rolling[ground];
    }

    /** Cap on speed on a stretch as written, or on a {@linkplain DiscretisedCourse#ground ground}, m/s. */
    public Range cap(int ground) {
        return this.ground.cap[ground];
    }

    /** Sideways acceleration that bends of a stretch are taken with, m/s². */
    public Range sideways(int stretchIndex) {
        return ground.sideways[stretchIndex];
    }

    /** Turns of a stretch that must be braked for, per m: as written, less those that the track shows itself; 0 where none are. */
    public double turnsPerMetre(int stretchIndex) {
        return ground.turns[stretchIndex];
    }

    /** Number of stretches. */
    public int stretches() {
        return stretches;
    }

    /** Number of figures there are of grounds: of each as it is ridden, and under rain by the hour dry, damp and wet after all these. */
    public int groundFigures() {
        return ground.rolling.length;
    }

    /** Number of grounds, the stretches as written first. */
    public int grounds() {
        return ground.turns.length;
    }

    /** Temperature at the start's height at a moment of the riding time, °C. */
    public double temperature(double ridingSeconds) {
        DayTemperature day = basis.weather().day(sustainable.expected());
        return day == null ? basis.weather().temperature() : day.temperature(ridingSeconds, 0);
    }

    /** Share of hour power above which nobody pedals for long. */
    public double mostPedalled() {
        return RideSimulator.MOST_PEDALLED;
    }

    /** How often a ride is drawn for a range. */
    public int draws() {
        return draws.length;
    }

    /** The power balance on a stretch, all inputs in the middle. */
    public PowerBalance balance(int stretchIndex) {
        return PowerBalance.of(basis.mass().mid(), basis.dragArea().mid(), ground.rolling[stretchIndex].mid());
    }

    /** Density of air at the start, kg/m³. */
    public double density() {
        return basis.weather().density(basis.weather().startHeight());
    }

    public DiscretisedCourse way() {
        return way;
    }

    public RideAssumptions basis() {
        return basis;
    }
}
