package courseworthy.demand;

import courseworthy.event.Event;
import courseworthy.event.Pit;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import courseworthy.rider.Bike;
import courseworthy.topic.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** What the day brings along the way: climbs, places to fill bottles, latest times, heat, sweat, light; and where tyres are pumped. */
public final class DayDemands {

    /** A place is at the finish within so many metres: lengths are written by the metre (computing). */
    private static final double AT_THE_FINISH = 1;

    private final SurveyAssumptions on;
    private final RideEstimate estimate;
    private final WeatherDemands weather;
    private final SupportPoints support;
    private final List<Climbs.Climb> climbs;
    private final RideWeather met;

    DayDemands(SurveyAssumptions on, RideEstimate estimate, WeatherDemands weather, SupportPoints support, List<Climbs.Climb> climbs) {
        this.on = on;
        this.estimate = estimate;
        this.weather = weather;
        this.support = support;
        this.climbs = climbs;
        met = new RideWeather(estimate);
    }

    /**
     * A climb of one lap.
     *
     * @param foot m from the start of the lap
     * @param top  m from the start of the lap
     * @param rise m
     */
    public record Ascent(double foot, double top, double rise) {
    }

    /**
     * A support point.
     *
     * @param at    m from the start, over all laps
     * @param water whether bottles can be filled
     * @param food  whether there is food
     * @param bag   whether a bag of one's own waits there
     */
    public record SupportStop(double at, boolean water, boolean food, boolean bag) {
    }

    /**
     * A place on each lap where things of one's own may wait.
     *
     * @param at      m from the start of the lap
     * @param helper  whether somebody of one's own stands there
     * @param bottles whether bottles may be taken there
     * @param wheels  whether wheels may wait there
     * @param bike    whether a second bike may wait there
     */
    public record PitPlace(double at, boolean helper, boolean bottles, boolean wheels, boolean bike) {
    }

    /**
     * A latest time.
     *
     * @param at     m from the start, over all laps
     * @param within s from the start
     */
    public record Latest(double at, double within) {
    }

    /** Share of the course ridden in a group. */
    public Range groupShare() {
        return on.groupShare;
    }

    /** The lowest cadence the rider will turn for long, per minute. */
    public Range lowestCadence() {
        return on.climbingCadence;
    }

    /** The highest cadence the rider will turn for long, per minute. */
    public Range highestCadence() {
        return on.highestCadence;
    }

    /**
     * Water for a gap between places to fill bottles.
     *
     * @param from  m from the start, over all laps
     * @param to    m from the start, over all laps
     * @param carry to leave with, L
     */
    public record CarriedSpan(double from, double to, Range carry) {
    }

    /**
     * Temperature and height of a place.
     *
     * @param temperature C; null where not known
     * @param height      above sea level, m; null where not known
     */
    public record RideEnvironment(Double temperature, Double height) {
    }

    /** How long a change takes where that is written, s, by the kind of work. */
    public Map<Work, Double> changes() {
        return on.event.plan().changes();
    }

    /** The start, s after midnight; null where it is not written. */
    public Integer start() {
        return on.startKnown ? Integer.valueOf(on.start) : null;
    }

    /** The climbs of one lap, in order. */
    public List<Ascent> climbs() {
        List<Ascent> out = new ArrayList<>();
        for (Climbs.Climb climb : climbs) {
            out.add(new Ascent(climb.from(), climb.to(), climb.rise()));
        }
        return out;
    }

    /** The support points on the way, in order. */
    public List<SupportStop> stops() {
        List<SupportStop> out = new ArrayList<>();
        double whole = estimate.way().length() * on.laps;
        for (Event.Support point : on.event.support()) {
            if (point.at() > 0 && point.at() < whole) {
                out.add(new SupportStop(point.at(), point.water(), point.food(), point.bag()));
            }
        }
        return out;
    }

    /** The pits of a lap, in order; those past its end are left out. */
    public List<PitPlace> pits() {
        List<PitPlace> out = new ArrayList<>();
        for (Pit pit : on.event.plan().pits()) {
            if (pit.at() <= estimate.way().length()) {
                out.add(new PitPlace(pit.at(), pit.helper(), pit.bottles(), pit.wheels(), pit.bike()));
            }
        }
        return out;
    }

    /** A stop to plug a tyre, s. */
    public Range plugStop() {
        return on.plugStop;
    }

    /** Latest times on the way and at the finish, in order, of two at the finish the earlier; those past the finish are left out. */
    public List<Latest> latest() {
        List<Latest> out = new ArrayList<>();
        double whole = estimate.way().length() * on.laps;
        Double atTheFinish = on.event.timeLimit();
        for (Event.Cutoff cutoff : on.event.plan().cutoffs()) {
            if (cutoff.at() < whole - AT_THE_FINISH) {
                out.add(new Latest(cutoff.at(), cutoff.within()));
            } else if (cutoff.at() <= whole + AT_THE_FINISH) {
                atTheFinish = atTheFinish == null ? cutoff.within() : Math.min(atTheFinish, cutoff.within());
            }
        }
        if (atTheFinish != null) {
            out.add(new Latest(whole, atTheFinish));
        }
        return out;
    }

    /** The latest times that are written for points past the finish, m from the start. */
    public List<Double> beyond() {
        List<Double> out = new ArrayList<>();
        double whole = estimate.way().length() * on.laps;
        for (Event.Cutoff cutoff : on.event.plan().cutoffs()) {
            if (cutoff.at() > whole + AT_THE_FINISH) {
                out.add(cutoff.at());
            }
        }
        return out;
    }

    /** From one place to fill bottles to the next, in order; empty where those are not known. */
    public List<CarriedSpan> carried() {
        List<CarriedSpan> out = new ArrayList<>();
        for (SupportPoints.SupportGap gap : support.all()) {
            out.add(new CarriedSpan(gap.from(), gap.to(), gap.carry()));
        }
        return out;
    }

    /** Temperature where the rider is after some riding time, °C; null without a forecast. */
    public Double temperature(double ridingSeconds, double distance) {
        double lap = estimate.way().length();
        double along = distance >= lap * on.laps ? lap : distance % lap;
        return weather.temperature(ridingSeconds, estimate.way().height(estimate.stepAt(along)));
    }

    /** The weather that the rider meets from one moment to another, s from the start; null where none is forecast by the hour. */
    public HourWeather weather(double from, double to) {
        return met.between(from, to);
    }

    /** Mass of the body, kg. */
    public double mass() {
        return on.riderMass.mid();
    }

    /** Sweat lost in an hour, L, at a temperature, which is null where not known. */
    public Range sweat(Double temperature) {
        return support.lost(temperature);
    }

    /** How far most riders' sweat is from the middle, as a share (one standard deviation); 0 where it is the rider's own. */
    public double sweatSpread() {
        return sweatKnown() ? 0 : SweatRate.SPREAD;
    }

    /** Whether sweat is written rather than estimated. */
    public boolean sweatKnown() {
        return on.rider.sweatRate() != null;
    }

    /** Sunrise and sunset, s after local midnight, NaN where there is none; null where date or place are not known. */
    public double[] sun() {
        return on.sun();
    }

    /** Civil dawn and dusk likewise. */
    public double[] twilight() {
        return on.twilight();
    }

    /** How light it is from one moment to another, s from the start. */
    public record LightSpan(double from, double to, LightLevel light) {
    }

    /** The sun above the horizon, light enough for work outdoors without it, or dark. */
    public enum LightLevel { DAY, TWILIGHT, NIGHT }

    /** How light it is from the start until a moment, s from it, without a gap; empty where date, place or start are not known. */
    public List<LightSpan> light(double until) {
        if (on.midnight() == null || !on.startKnown) {
            return List.of();
        }
        Daylight sun = new Daylight(on.midnight().plusSeconds(on.start), until, on.course.start(), Daylight.SUN);
        Daylight civil = new Daylight(on.midnight().plusSeconds(on.start), until, on.course.start(), Daylight.CIVIL);
        SortedSet<Double> moments = new TreeSet<>(sun.changes());
        moments.addAll(civil.changes());
        moments.add(until);
        List<LightSpan> out = new ArrayList<>();
        double from = 0;
        for (double to : moments.subSet(0.0, until + 1)) {
            double middle = (from + to) / 2;
            if (to > from) {
                out.add(new LightSpan(from, to, civil.dark(middle) ? LightLevel.NIGHT : sun.dark(middle) ? LightLevel.TWILIGHT : LightLevel.DAY));
            }
            from = to;
        }
        return out;
    }

    /** The start. */
    public RideEnvironment startPlace() {
        return new RideEnvironment(weather.temperature(0, estimate.way().height(0)), on.heightKnown() ? Double.valueOf(on.startHeight()) : null);
    }

    /** Where the tyres are pumped, as far as written; null where nothing is. */
    public RideEnvironment pumped() {
        Event.InflationPlace written = on.event.plan().pumped();
        return written == null ? null : new RideEnvironment(written.temperature(), written.height());
    }

    /** Clicks of the fork's rebound, null where not written. */
    public Integer clicks(boolean fork, boolean rebound) {
        Bike.DampingSettings damping = on.bike.damping();
        return fork ? rebound ? damping.rebound() : damping.compression() : rebound ? damping.shockRebound() : damping.shockCompression();
    }

    /** Stroke of the shock, m; null where not written. */
    public Double shockStroke() {
        return on.bike.damping().shockStroke();
    }
}
