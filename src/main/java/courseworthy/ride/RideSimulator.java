package courseworthy.ride;

/**
 * A way cut into pieces and made ready to be ridden many times. Steps longer than a first piece are cut into pieces that grow from the
 * step's start on, since there speed changes most.
 */
final class RideSimulator {

    /** Pieces ridden in one go (computing): short enough that the loop is compiled early in a cold run. */
    private static final int AT_A_TIME = 64;
    /** To keep the lowest cadence in the easiest gear a rider gives up to this times the power of the moment (practice, no source). */
    private static final double MOST_GROUND = 1.35;
    /** Then cadence falls; from this share of the lowest cadence down the rider gets off and walks, sooner where walking costs less (practice). */
    private static final double WALKED_BELOW = 0.6;
    /** However much is coasted, nobody pedals for long above this share of hour power (practice, no source). */
    static final double MOST_PEDALLED = 1.3;

    private final DiscretisedCourse way;
    /** For each step of the way not thinned: the step it went into, and its length, m. */
    private final int[] stepOf;
    private final double[] lengths;

    private final CoursePieces pieces;
    private final int size;
    private final int[] step;
    /** By lap and piece where the air changes with the hour, else by piece. */
    private double[] halfDensity;
    private boolean hourly;
    /** By lap and piece where the forecast is by the hour, else by piece: headwind over the wind's strength, and ground. */
    private double[] head;
    private int[] ground;
    /** Whether the forecast is by the hour. */
    private boolean byHour;
    /** Where the lap under way begins in what is by lap and piece under a forecast by the hour, else 0. */
    private int lapStart;
    /** Whether only the strength of the wind is known. */
    private final boolean anyWay;
    /** Share of the power uphill that each piece, and each step, is ridden at. */
    private double[] pace;
    private double[] paceOfStep;
    private double[] area = new double[0];

    // The ride under way.
    private final Motion motion = new Motion();
    private RideParameters in;
    private boolean kept;
    private double power;
    private double most;
    private double lasting;
    private double weight;
    private double plainArea;
    private double[] rollingForce;
    private double[] caps;
    private double[] sideways;
    private double slowest;
    private double fastest;
    private double onFoot;

    // What came of it.
    double seconds;
    private double load;
    private double fourth;
    private double work;
    private double pedalling;
    private static final double[] NONE = {};
    private double[] arrival = NONE;
    private double[] powers = NONE;
    private double[] feet = NONE;

    /**
     * Cuts a way into pieces.
     *
     * @param way           the way, thinned or not
     * @param full          the way not thinned
     * @param weather       of the day
     * @param turnsPerMetre turns that must be braked for, by ground
     * @param first         length of a first piece, m
     * @param growth        of the pieces after it
     */
    RideSimulator(DiscretisedCourse way, DiscretisedCourse full, RideAssumptions.WeatherAssumptions weather, double[] turnsPerMetre, double first, double growth) {
        this.way = way;
        stepOf = new int[full.size()];
        lengths = new double[full.size()];
        joined(full);
        boolean headings = way.hasHeadings() && weather.directed();
        anyWay = !headings && (!weather.windKnown() || weather.wind() > 0);
        pieces = new CoursePieces(way, anyWay, headings ? weather.from() : Double.NaN, turnsPerMetre, first, growth);
        size = pieces.size;
        step = pieces.step;
        head = pieces.head;
        ground = pieces.ground;
    }

    private void joined(DiscretisedCourse full) {
        int into = 0;
        for (int i = 0; i < stepOf.length; i++) {
            lengths[i] = full.length(i);
            into = into(into, full.along(i) - 0.5 * full.length(i));
            stepOf[i] = into;
        }
    }

    private int into(int from, double middle) {
        int into = from;
        while (into < way.size() - 1 && way.along(into) < middle) {
            into++;
        }
        return into;
    }

    /** Number of pieces of a lap. */
    int size() {
        return size;
    }

    /** Fills in the air: by height and, where the forecast has them, by the hour for a ride of so many seconds in all. */
    void air(RideAssumptions.WeatherAssumptions weather, double whole, int laps) {
        DensityByHeight densities = new DensityByHeight(way, weather);
        DayTemperature day = weather.day(whole);
        hourly = day != null;
        halfDensity = new double[hourly ? size * laps : size];
        for (int lap = 0; lap < (hourly ? laps : 1); lap++) {
            for (int i = 0; i < size; i++) {
                halfDensity[lap * size + i] = halfDensity(i, densities);
                if (hourly) {
                    double seconds = (lap + way.along(step[i]) / way.length()) / laps * whole;
                    halfDensity[lap * size + i] /= warmer(day, weather.temperature(), seconds);
                }
            }
        }
    }

    /** Fills in air, wind and ground as each lap meets them under a forecast by the hour. */
    void weather(RideAssumptions.WeatherAssumptions weather, HourlyConditions conditions, int laps) {
        DensityByHeight densities = new DensityByHeight(way, weather);
        hourly = true;
        byHour = true;
        halfDensity = new double[size * laps];
        head = new double[size * laps];
        ground = new int[size * laps];
        for (int lap = 0; lap < laps; lap++) {
            for (int i = 0; i < size; i++) {
                int at = lap * way.size() + step[i];
                int here = lap * size + i;
                halfDensity[here] = halfDensity(i, densities) * conditions.density(at);
                head[here] = (anyWay ? pieces.head[i] : 1) * conditions.wind(at);
                ground[here] = pieces.ground[i] + way.grounds() * conditions.slotAt(at);
            }
        }
    }

    private double halfDensity(int i, DensityByHeight densities) {
        int s = step[i];
        return 0.5 * densities.at(way.height(s));
    }

    /** Absolute temperature at a time over the mean one. */
    private static double warmer(DayTemperature day, double mean, double seconds) {
        return (day.temperature(seconds, 0) + KELVIN) / (mean + KELVIN);
    }

    /** 0 °C in K, exact by definition. */
    private static final double KELVIN = 273.15;

    /**
     * Lays down how power is shared out over the steps of the lap, for inputs and a power uphill, see {@link Pacing}.
     *
     * @param uphill at the crank, W
     */
    void pace(RideParameters inputs, double uphill) {
        int laps = laps();
        paceOfStep = new double[way.size() * laps];
        pace = new double[size * laps];
        for (int lap = 0; lap < laps; lap++) {
            int begin = lap * size;
            int from = lap * way.size();
            for (int i = 0; i < size; i++) {
                int s = step[i];
                if (i == 0 || s != step[i - 1]) {
                    paceOfStep[from + s] = pace(begin, i, inputs, uphill * PowerBalance.EFFICIENCY);
                }
                pace[begin + i] = paceOfStep[from + s];
            }
        }
    }

    /** Laps that are paced each by itself: all under a forecast by the hour, else one stands for all. */
    private int laps() {
        return byHour ? halfDensity.length / size : 1;
    }

    private double pace(int begin, int i, RideParameters inputs, double wheelPower) {
        int at = begin + i;
        double air = halfDensity[at] * inputs.airFactor * (inputs.dragArea + PowerBalance.WHEEL_DRAG);
        double steady = inputs.mass * PowerBalance.GRAVITY * (inputs.rolling[ground[at]] * pieces.cosine[i] + inputs.climbing * pieces.sine[i])
                + PowerBalance.BEARING_FORCE;
        return Pacing.share(wheelPower, air, anyWay ? 0 : inputs.wind * head[at], steady, 6);
    }

    /** Shares power out as on the thinned way, so that it does not follow every rise of the ground. */
    void paceAs(RideSimulator thinned) {
        int laps = laps();
        pace = new double[size * laps];
        for (int lap = 0; lap < laps; lap++) {
            int begin = lap * size;
            int from = lap * thinned.way.size();
            for (int i = 0; i < size; i++) {
                pace[begin + i] = thinned.paceOf(from, step[i]);
            }
        }
    }

    private double paceOf(int from, int fullStep) {
        return paceOfStep[from + stepOf[fullStep]];
    }

    /**
     * Rides all laps at a power that falls about its mean as the rider tires.
     *
     * @param inputs   the inputs
     * @param laps     of the way
     * @param uphill   power uphill in the middle of the ride, W
     * @param hour     hour power, W
     * @param expected time over which the rider tires, s
     * @param keep     whether to keep how each step was ridden
     */
    void ride(RideParameters inputs, int laps, double uphill, double hour, double expected, boolean keep) {
        in = inputs;
        kept = keep;
        power = uphill;
        most = MOST_PEDALLED * hour;
        lasting = 1 / expected;
        weight = (in.mass + in.change.mass()) * PowerBalance.GRAVITY;
        Gearing gears = in.change.gearing();
        slowest = gears == null ? 0 : gears.slowest();
        fastest = gears == null ? Double.MAX_VALUE : gears.fastest();
        byGround();
        plainArea = in.change.dragArea(in.dragArea, 1) + PowerBalance.WHEEL_DRAG;
        changedAreas();
        if (keep) {
            arrival = new double[way.size() * laps];
            powers = new double[way.size() * laps];
            feet = new double[way.size() * laps];
        }
        motion.start(Walking.SPEED.mid(), in.mass + in.change.mass() + PowerBalance.WHEEL_INERTIA_MASS);
        seconds = 0;
        fourth = 0;
        work = 0;
        pedalling = 0;
        for (int lap = 0; lap < laps; lap++) {
            for (int i = 0; i < size; i += AT_A_TIME) {
                ride(lap, i, Math.min(size, i + AT_A_TIME));
            }
        }
        if (keep) {
            meanPowers();
        }
    }

    private void byGround() {
        rollingForce = new double[in.rolling.length];
        caps = in.change.dryPace() ? in.dryCap : in.cap;
        sideways = in.change.dryPace() ? in.drySideways : in.sideways;
        for (int i = 0; i < rollingForce.length; i++) {
            rollingForce[i] = weight * in.rolling[i] * in.change.rollingOn(way.stretchOf(i % way.grounds()));
        }
    }

    /** Rides pieces of a lap one after the other. What is usual is done here, the rest in {@link #minded}. */
    private void ride(int lap, int first, int end) {
        Motion m = motion;
        double[] lengths = pieces.length;
        double[] paces = pace;
        double[] densities = halfDensity;
        double[] bends = pieces.radius;
        double[] corners = pieces.turns;
        double[] sharply = pieces.sharp;
        double[] along = pieces.cosine;
        double[] up = pieces.sine;
        double[] winds = head;
        double[] rolls = rollingForce;
        double[] limits = caps;
        double mean = power;
        double highest = most;
        double per = lasting;
        int[] on = ground;
        double fade = in.fade;
        double airFactor = in.airFactor;
        double area = plainArea;
        boolean apart = this.area.length > 0;
        double slope = weight * in.climbing;
        double windSpeed = in.wind;
        double[] steeps = pieces.steep;
        double walking = in.walking;
        double balanced = Walking.BALANCED - walking;
        double inGear = slowest;
        double fast = fastest;
        int shift = hourly ? lap * size : 0;
        int begin = byHour ? lap * size : 0;
        lapStart = begin;
        double now = seconds;
        double fourths = fourth;
        double works = work;
        double turning = pedalling;
        for (int i = first; i < end; i++) {
            int s = on[begin + i];
            double gone = now * per;
            double fresh = mean * paces[begin + i] * (1 + fade * (0.5 - (gone < 1 ? gone : 1)));
            fresh = fresh < highest ? fresh : highest;
            double steady = rolls[s] * along[i] + slope * up[i] + PowerBalance.BEARING_FORCE;
            double air = densities[shift + i] * airFactor * (apart ? this.area[i] : area);
            double wind = windSpeed * winds[begin + i];
            double cap = bends[i] < DiscretisedCourse.STRAIGHT_RADIUS ? inBend(i, s) : limits[s];
            double took = sharply[i] > 0 ? throughCorner(i, s) : 0;
            double from = m.speed();
            took += from > cap ? brake(cap) : 0;
            m.ride(lengths[i], fresh * PowerBalance.EFFICIENCY, air, wind, steady);
            double v = m.speed();
            double pedalled = fresh;
            double counts = fresh;
            double least = walking + steeps[i] * balanced;
            least = least < inGear ? inGear : least;
            double foot = 0;
            if (v > cap || v < least || v > fast) {
                pedalled = minded(i, from < cap ? from : cap, fresh, cap, steady, air, wind);
                counts = load;
                foot = onFoot;
            }
            took += m.seconds;
            if (corners[i] > 0) {
                took += corners[i] * SpeedLimits.turn(m.speed());
            }
            double square = counts * counts;
            fourths += square * square * took;
            works += pedalled * took;
            turning += pedalled > 0 ? took : 0;
            now += took;
            if (kept) {
                int at = lap * way.size() + step[i];
                arrival[at] = now;
                powers[at] += pedalled * took;
                feet[at] += foot;
            }
        }
        seconds = now;
        fourth = fourths;
        work = works;
        pedalling = turning;
    }

    private double inBend(int i, int on) {
        return Math.min(caps[on], Math.sqrt(sideways[on] * pieces.radius[i]));
    }

    /** Brakes for a sharp turn where it must be, and returns what that takes longer than riding on, s. */
    private double throughCorner(int i, int on) {
        double through = Math.sqrt(sideways[on] * (in.turnInside + in.tread * pieces.sharp[i]));
        return motion.speed() > through ? brake(through) : 0;
    }

    /**
     * Minds the ground's cap, the gears and the end of riding where a piece ridden freely from a speed ran into one of them; returns the power
     * on the pedals and leaves in {@link #load} what it counts as.
     */
    private double minded(int i, double from, double fresh, double cap, double steady, double air, double wind) {
        double pedalled = fresh;
        double v = motion.speed();
        load = fresh;
        onFoot = 0;
        if (v > fastest && fastest < cap) {
            pedalled = spunOut(i, from, fresh, steady, air, wind);
            load = pedalled;
        } else if (v < slowest) {
            pedalled = Math.max(fresh, Math.min(most, Math.min(asked(slowest, steady, air, wind), MOST_GROUND * fresh)));
            load = pedalled;
            motion.speed(from);
            motion.ride(pieces.length[i], load * PowerBalance.EFFICIENCY, air, wind, steady);
        }
        v = motion.speed();
        if (v > cap && caps[ground[lapStart + i]] == in.walking) {
            walk(i, from);
            pedalled = 0;
        } else if (v > cap) {
            pedalled = held(i, from, cap, pedalled, steady, air, wind);
            load = pedalled;
        } else if (v < Walking.below(in.walking, pieces.steep[i]) || v < slowest * (WALKED_BELOW + (1 - WALKED_BELOW) * pieces.steep[i])) {
            walk(i, from);
            pedalled = 0;
        }
        return pedalled;
    }

    /** Brakes to a cap and returns what that takes longer than riding on, s. */
    private double brake(double cap) {
        double v = motion.speed();
        motion.speed(cap);
        return (v - cap) * (v - cap) / (2 * SpeedLimits.BRAKING * v);
    }

    /** Goes no faster than the cap and returns the power on the pedals: once the cap is reached, what holding it asks for. */
    private double held(int i, double from, double cap, double pedalled, double steady, double air, double wind) {
        motion.speed(cap);
        if (from < cap * (1 - 1e-9)) {
            motion.seconds = Math.max(motion.seconds, pieces.length[i] / cap);
            return pedalled;
        }
        motion.seconds = pieces.length[i] / cap;
        return Math.min(pedalled, Math.max(0, asked(cap, steady, air, wind)));
    }

    /** Gets off where speed has fallen to walking, and walks on. */
    private void walk(int i, double from) {
        double ridden = from > in.walking ? Math.min(pieces.length[i], ROLLS_OUT) : 0;
        motion.speed(in.walking);
        onFoot = (pieces.length[i] - ridden) / in.walking;
        motion.seconds = ridden * 2 / (from + in.walking) + onFoot;
    }

    /** Where the rider gets off, speed falls to walking over about this length, m (practice). */
    private static final double ROLLS_OUT = 10;

    /** Beyond the highest cadence in the hardest gear the rider coasts, or pedals just enough to hold it; returns the power. */
    private double spunOut(int i, double from, double fresh, double steady, double air, double wind) {
        motion.speed(from);
        motion.ride(pieces.length[i], 0, air, wind, steady);
        if (motion.speed() >= fastest) {
            return 0;
        }
        motion.speed(fastest);
        motion.seconds = Math.max(pieces.length[i] / fastest, Math.min(motion.seconds, pieces.length[i] * 2 / (from + fastest)));
        return Math.min(fresh, Math.max(0, asked(fastest, steady, air, wind)));
    }

    /** Power at the crank that holding a speed asks for, W. */
    private static double asked(double v, double steady, double air, double wind) {
        double through = v + wind;
        return v * (air * through * Math.abs(through) + steady + PowerBalance.BEARING_SLOPE * v) / PowerBalance.EFFICIENCY;
    }

    /** Drag area by piece where a change counts on part of the way only. */
    private void changedAreas() {
        double[] shares = in.change.dragOn();
        if (shares.length == 0) {
            area = shares;
            return;
        }
        double[] changed = new double[way.size()];
        double[] whole = new double[way.size()];
        for (int i = 0; i < stepOf.length; i++) {
            changed[stepOf[i]] += shares[i] * lengths[i];
            whole[stepOf[i]] += lengths[i];
        }
        area = new double[size];
        for (int i = 0; i < size; i++) {
            area[i] = in.change.dragArea(in.dragArea, changed[step[i]] / whole[step[i]]) + PowerBalance.WHEEL_DRAG;
        }
    }

    private void meanPowers() {
        for (int at = 0; at < powers.length; at++) {
            double seconds = arrival[at] - (at == 0 ? 0 : arrival[at - 1]);
            powers[at] = seconds > 0 ? powers[at] / seconds : 0;
        }
    }

    /** Fourth-power mean over the riding time, W. */
    double load() {
        return Math.max(1, Math.sqrt(Math.sqrt(fourth / seconds)));
    }

    /** Mean over the whole time, what is walked counted as none, W. */
    double mean() {
        return work / seconds;
    }

    /** Mean over the time pedalled, W. */
    double pedalled() {
        return pedalling == 0 ? 0 : work / pedalling;
    }

    /** The last ride, which must have been kept; handed over, so that a long ride's arrays are not held twice. */
    RideTrace trace(int laps) {
        RideTrace out = new RideTrace(way, laps, arrival, powers, feet);
        arrival = NONE;
        powers = NONE;
        feet = NONE;
        return out;
    }
}
