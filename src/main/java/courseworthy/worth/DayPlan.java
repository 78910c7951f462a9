package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.demand.DayDemands;
import courseworthy.demand.DayDemands.Ascent;
import courseworthy.demand.DayDemands.Latest;
import courseworthy.demand.DayDemands.LightSpan;
import courseworthy.demand.DayDemands.SupportStop;
import courseworthy.demand.Demands;
import courseworthy.demand.FluidBalance;
import courseworthy.demand.HourWeather;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.RideTrace;
import courseworthy.ride.Walking;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The day's plan: when the rider is where, what each hour asks to be eaten and drunk, what water to carry over each gap, and when it is light.
 * Times are those of the estimate; stops are spread over the support points passed, or evenly where none are written.
 *
 * @param start     s after midnight; null where it is not written
 * @param splits    the main places in order; the last is the finish
 * @param every     all places, worked out when they are asked for
 * @param hours     each hour from the start
 * @param energy    what the day takes, and what is eaten for it
 * @param fluids    what is drunk, carried and lost
 * @param light     null where date or place are not known
 * @param beyond    latest times written for points past the finish, m
 */
public record DayPlan(Integer start, List<Split> splits, EverySplit every, List<PlanHour> hours, Energy energy, Fluids fluids, DaylightTimes light,
        List<Double> beyond) {

    /**
     * Share of the energy used that turns the cranks. Moseley and Jeukendrup (2001), Med. Sci. Sports Exerc. 33:621-627: 0.198 ± 0.006, lower at
     * low power; Stebbins and others (2014), J. Sports Sci. Med. 13:114-119: 0.213 to 0.228 over three hours; up to 0.24 is usual for the
     * well trained (practice).
     */
    public static final Range GROSS_EFFICIENCY = new Range(0.20, 0.22, 0.24);
    /** J in a kcal, thermochemical, exact by definition. */
    public static final double KCAL = 4184;
    private static final double HOUR = 3600;
    /**
     * Carbohydrate an hour, g. To an hour little is needed (practice); one to two and a half hours 30 to 60 (Thomas, Erdman and Burke (2016),
     * Med. Sci. Sports Exerc. 48:543, from memory); longer 30 to 90, above 60 as mixed sugars alone (Jeukendrup (2014), Sports Med. 44 Suppl. 1;
     * Wallis and Podlogar (2022)). It does not go with body mass.
     */
    private static final double[][] INTAKE = {{HOUR, 0, 30}, {2.5 * HOUR, 30, 60}, {Double.MAX_VALUE, 30, 90}};
    /** Climbs of a lap told in the short plan: so many, with at least this share of the biggest one's rise (judgement). */
    private static final int MAIN_CLIMBS = 3;
    private static final double MAIN_RISE = 0.25;
    /** A last hour shorter than this is counted to the one before, s (judgement). */
    private static final double LEFT_OVER = 900;

    public DayPlan {
        splits = List.copyOf(splits);
        hours = List.copyOf(hours);
        beyond = List.copyOf(beyond);
    }

    /**
     * What the day takes, and what is eaten for it.
     *
     * @param work   over the day, J
     * @param used   for that work, and for walking, J
     * @param walked walked beside the bike, s; what that uses is in the energy, not in the work
     * @param food   carbohydrate over the day, g
     * @param rate   of carbohydrate, decided, with the limits of intake for such a time, g/h; null where none is decided
     */
    public record Energy(Range work, Range used, double walked, Range food, Range rate) {
    }

    /**
     * What is drunk, carried and lost.
     *
     * @param drink      to drink over the day, L
     * @param gaps       water to leave with at each place to fill bottles; empty where those are not known
     * @param loss       of body mass that this drinking leaves at the end, kg; ends for most riders' sweat, by one standard deviation
     * @param lossShare  the same as a share of body mass
     * @param sweatKnown whether sweat is the rider's own figure
     */
    public record Fluids(Range drink, List<SupplyGap> gaps, Range loss, Range lossShare, boolean sweatKnown) {

        public Fluids {
            gaps = List.copyOf(gaps);
        }
    }

    /** All places on the way. */
    public interface EverySplit {
        /** In order; the last is the finish. */
        List<Split> all();
    }

    /** What a split is at. */
    public enum Kind { FOOT, TOP, SUPPORT, LAP, CUT_OFF, FINISH }

    /** How an arrival's range stands to a latest time. */
    public enum Stands { IN_TIME, SLOW_END_MISSES, MIDDLE_MISSES, ALL_MISS }

    /**
     * A place on the way.
     *
     * @param kind   what is there
     * @param at     m from the start
     * @param after  time from the start, stops before it counted, s
     * @param lap    from 1
     * @param main   whether it belongs in a short plan
     * @param climb  of FOOT and TOP, else null
     * @param stop   of SUPPORT, else null
     * @param latest of CUT_OFF, and of FINISH where there is one: s from the start; else null
     */
    public record Split(Kind kind, double at, Range after, int lap, boolean main, Ascent climb, SupportStop stop, Double latest) {

        /** How it stands to its latest time, null where there is none. */
        public Stands stands() {
            if (latest == null) {
                return null;
            }
            return after.high() <= latest ? Stands.IN_TIME : after.mid() <= latest ? Stands.SLOW_END_MISSES
                    : after.low() <= latest ? Stands.MIDDLE_MISSES : Stands.ALL_MISS;
        }
    }

    /**
     * One hour; the last is cut short or takes up to a quarter more.
     *
     * @param from         s from the start
     * @param to           s from the start
     * @param work         on the pedals, J
     * @param energy       used for it, and for walking, J
     * @param carbohydrate to eat, g
     * @param drink        L
     * @param sweat        lost, L
     * @param temperature  in its middle, C; null without a forecast
     * @param weather      that the rider meets; null where none is forecast by the hour
     */
    public record PlanHour(double from, double to, Range work, Range energy, Range carbohydrate, Range drink, Range sweat, Double temperature,
            HourWeather weather) {
    }

    /**
     * From one place to fill bottles to the next.
     *
     * @param carry to leave with, L: slow time, heat, a reserve of 15 %; from the start what was decided
     */
    public record SupplyGap(double from, double to, Range carry) {
    }

    /**
     * Daylight of the day.
     *
     * @param rise sunrise, s after midnight; NaN where there is none
     * @param set  sunset, s after midnight; NaN where there is none
     * @param dawn civil dawn, s after midnight; NaN where there is none
     * @param dusk civil dusk, s after midnight; NaN where there is none
     * @param spans how light it is from the start to the end of the ride, in order; empty where the start is not known
     */
    public record DaylightTimes(double rise, double set, double dawn, double dusk, List<LightSpan> spans) {

        public DaylightTimes {
            spans = List.copyOf(spans);
        }
    }

    /** Less on foot needs no word, s (judgement). */
    private static final double WALKED = 30;

    /** Whether so long beside the bike, s, is worth a word. */
    public static boolean walks(double seconds) {
        return seconds >= WALKED;
    }

    /** Works out arrivals, which hang on no decision, before the call is made: the estimate keeps them. */
    public static void ahead(Demands demands) {
        new DayPlanner(null, demands).splits(false);
    }

    /** The plan of a call; null where it was not surveyed. */
    public static DayPlan of(Call call) {
        return call.demands().estimated() == null ? null : new DayPlanner(call).plan();
    }

    /** Energy used for work at the pedals, J. */
    public static Range energy(Range work) {
        double mid = work.mid() / GROSS_EFFICIENCY.mid();
        double down = Math.hypot(mid - work.low() / GROSS_EFFICIENCY.mid(), mid - work.mid() / GROSS_EFFICIENCY.high());
        double up = Math.hypot(work.high() / GROSS_EFFICIENCY.mid() - mid, work.mid() / GROSS_EFFICIENCY.low() - mid);
        return new Range(mid - down, mid, mid + up);
    }

    /** Carbohydrate in an hour of a ride of some length, g: what is decided, inside the limits of intake for such a ride. */
    public static Range carbohydrate(double decided, double seconds) {
        for (double[] limit : INTAKE) {
            if (seconds <= limit[0]) {
                return new Range(limit[1], Math.max(limit[1], Math.min(limit[2], decided)), limit[2]);
            }
        }
        throw new IllegalArgumentException(seconds + " s");
    }

    /** Works one plan out. */
    private static final class DayPlanner implements EverySplit {
        private final Call call;
        private final RideEstimate estimate;
        private final DayDemands day;
        private final double lap;
        private final int laps;
        private final List<SupportStop> stops;
        private final ArrivalTimes arrivals;

        DayPlanner(Call call) {
            this(call, call.demands());
        }

        /** @param call may be null where only arrivals are asked for */
        DayPlanner(Call call, Demands demands) {
            this.call = call;
            estimate = demands.estimated().estimate();
            day = demands.estimated().day();
            lap = estimate.way().length();
            laps = estimate.basis().laps();
            stops = day.stops();
            arrivals = new ArrivalTimes(demands.estimated());
        }

        DayPlan plan() {
            Double food = PressureSettings.base(call, Topics.FOOD);
            Range rate = food == null ? null : carbohydrate(food, estimate.total().mid());
            List<PlanHour> hours = hours(rate);
            Range behind = Range.around(behind(hours, 1 - day.sweatSpread()), behind(hours, 1), behind(hours, 1 + day.sweatSpread()));
            double[] sun = day.sun();
            double[] twilight = day.twilight();
            return new DayPlan(day.start(), splits(false), this, hours,
                    new Energy(sum(hours, PlanHour::work), sum(hours, PlanHour::energy), estimate.walked(), sum(hours, PlanHour::carbohydrate), rate),
                    new Fluids(sum(hours, PlanHour::drink), gaps(), behind, behind.times(1 / day.mass()), day.sweatKnown()),
                    sun == null ? null : new DaylightTimes(sun[0], sun[1], twilight[0], twilight[1], day.light(estimate.total().mid())), day.beyond());
        }

        @Override
        public List<Split> all() {
            return splits(true);
        }

        private List<Split> splits(boolean all) {
            List<Split> out = new ArrayList<>();
            List<Ascent> climbs = day.climbs();
            for (int i = 0; i < laps; i++) {
                for (Ascent climb : climbs) {
                    boolean main = (i == 0 || i == laps - 1) && main(climb, climbs);
                    if (main || all) {
                        add(out, Kind.FOOT, i * lap + climb.foot(), i + 1, main, climb, null, null);
                        add(out, Kind.TOP, i * lap + climb.top(), i + 1, main, climb, null, null);
                    }
                }
                if (i < laps - 1) {
                    add(out, Kind.LAP, (i + 1) * lap, i + 1, true, null, null, null);
                }
            }
            for (SupportStop stop : stops) {
                add(out, Kind.SUPPORT, stop.at(), lapAt(stop.at()), true, null, stop, null);
            }
            Double atTheFinish = null;
            for (Latest latest : day.latest()) {
                if (latest.at() < lap * laps) {
                    add(out, Kind.CUT_OFF, latest.at(), lapAt(latest.at()), true, null, null, latest.within());
                } else {
                    atTheFinish = latest.within();
                }
            }
            add(out, Kind.FINISH, lap * laps, laps, true, null, null, atTheFinish);
            return out;
        }

        private int lapAt(double at) {
            return (int) Math.min(laps, Math.floor(at / lap) + 1);
        }

        private static boolean main(Ascent climb, List<Ascent> climbs) {
            for (Ascent other : climbs) {
                if (climb.rise() < MAIN_RISE * other.rise()) {
                    return false;
                }
            }
            return rank(climb, climbs) < MAIN_CLIMBS;
        }

        /** How many climbs rise more, earlier ones of the same rise counted. */
        private static int rank(Ascent climb, List<Ascent> climbs) {
            int rank = 0;
            boolean before = true;
            for (Ascent other : climbs) {
                before = before && other != climb;
                rank += other.rise() > climb.rise() || before && other.rise() == climb.rise() ? 1 : 0;
            }
            return rank;
        }

        /** Keeps the list in order of distance; what is at one place stays in the order in which it came. */
        private void add(List<Split> out, Kind kind, double at, int lapNumber, boolean main, Ascent climb, SupportStop stop, Double latest) {
            int place = out.size();
            while (place > 0 && out.get(place - 1).at() > at) {
                place--;
            }
            out.add(place, new Split(kind, at, arrivals.after(at), lapNumber, main, climb, stop, latest));
        }

        /** Hours of the middle estimate, stops spread evenly; drinking is kept account of for who sweats little, usually and much. */
        private List<PlanHour> hours(Range rate) {
            FluidBalance[] balance = {new FluidBalance(day.mass()), new FluidBalance(day.mass()), new FluidBalance(day.mass())};
            double whole = estimate.total().mid();
            double pauses = whole / estimate.riding().mid();
            int count = (int) Math.max(1, Math.ceil((whole - LEFT_OVER) / HOUR));
            double[] work = new double[count];
            double[] middle = new double[count];
            double[][] walked = new double[3][count];
            share(work, middle, walked, pauses);
            double sure = power();
            List<PlanHour> out = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                double from = i * HOUR;
                double to = i == count - 1 ? whole : from + HOUR;
                double part = (to - from) / HOUR;
                Range done = Range.within(work[i], work[i] * sure);
                Double temperature = day.temperature((from + to) / 2 / pauses, middle[i]);
                Range sweat = day.sweat(temperature).times(part);
                Range drink = Range.around(balance[0].drink(sweat.low(), part), balance[1].drink(sweat.mid(), part),
                        balance[2].drink(sweat.high(), part));
                Range ridden = energy(done);
                Range energy = new Range(ridden.low() + walked[0][i], ridden.mid() + walked[1][i], ridden.high() + walked[2][i]);
                out.add(new PlanHour(from, to, done, energy, rate == null ? Range.exact(0) : rate.times(part),
                        drink, sweat, temperature, day.weather(from, to)));
            }
            return out;
        }

        /** Loss at the end of who sweats so many times as much as is likely, kg. */
        private double behind(List<PlanHour> hours, double times) {
            FluidBalance balance = new FluidBalance(day.mass());
            for (PlanHour hour : hours) {
                balance.drink(times * hour.sweat().mid(), (hour.to() - hour.from()) / HOUR);
            }
            return balance.behind();
        }

        /** Shares the work of each step, and what walking uses, over the hours it lies in, and finds where the rider is in the middle of each. */
        private void share(double[] work, double[] middle, double[][] walked, double pauses) {
            RideTrace trace = estimate.trace();
            int size = trace.size();
            double before = 0;
            int next = 0;
            for (int i = 0; i < size; i++) {
                double after = trace.arrival(i) * pauses;
                double power = trace.power(i) / pauses;
                Range onFoot = trace.onFoot(i) > 0 ? walking(trace, i).times(1 / pauses) : Range.exact(0);
                while (before < after) {
                    int hour = (int) Math.min(work.length - 1, Math.floor(before / HOUR));
                    double to = hour == work.length - 1 ? after : Math.min(after, (hour + 1) * HOUR);
                    work[hour] += power * (to - before);
                    walked[0][hour] += onFoot.low() * (to - before);
                    walked[1][hour] += onFoot.mid() * (to - before);
                    walked[2][hour] += onFoot.high() * (to - before);
                    before = to;
                }
                while (next < middle.length && after >= (next == middle.length - 1 ? (next * HOUR + estimate.total().mid()) / 2 : (next + 0.5) * HOUR)) {
                    middle[next++] = trace.along(i);
                }
            }
            while (next < middle.length) {
                middle[next++] = lap * laps;
            }
        }

        /** What walking uses on a step, W over its time. */
        private Range walking(RideTrace trace, int at) {
            double load = estimate.basis().mass().mid() - day.mass();
            return Walking.power(day.mass(), load, estimate.way().gradient(trace.step(at))).times(trace.onFoot(at) / trace.seconds(at));
        }

        /** How far power may be off, as a share: hour power and how hard the ride is ridden are independent. */
        private double power() {
            Range hour = estimate.basis().pacing().hourPower();
            Range intensity = estimate.basis().pacing().intensity();
            return Math.hypot((hour.high() - hour.low()) / 2 / hour.mid(), (intensity.high() - intensity.low()) / 2 / intensity.mid());
        }

        /** Ends add up: who eats or drinks little does so all day. */
        private static Range sum(List<PlanHour> hours, Function<PlanHour, Range> what) {
            double low = 0;
            double mid = 0;
            double high = 0;
            for (PlanHour hour : hours) {
                Range each = what.apply(hour);
                low += each.low();
                mid += each.mid();
                high += each.high();
            }
            return new Range(low, mid, high);
        }

        private List<SupplyGap> gaps() {
            List<SupplyGap> out = new ArrayList<>();
            Double start = PressureSettings.base(call, Topics.WATER);
            for (DayDemands.CarriedSpan gap : day.carried()) {
                Range carry = gap.carry();
                boolean first = out.isEmpty() && start != null;
                out.add(new SupplyGap(gap.from(), gap.to(), first ? Range.around(carry.low(), start, carry.high()) : carry));
            }
            return out;
        }
    }
}
