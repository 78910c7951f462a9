package courseworthy.demand;

import courseworthy.event.Event;
import courseworthy.event.WeatherHour;
import courseworthy.ride.DayTemperature;
import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.HourlyConditions;
import courseworthy.ride.HourlyWeather;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;

/** Heat and cold where the rider is at the hour. */
final class WeatherDemands {

    /**
     * Temperatures by the hour are good to this, °C: means of 1 to 3, and up to 9 on overcast days (Reicosky and others 1989, Agric. For.
     * Meteorol. 46:193, of several such curves).
     */
    private static final double HOURS_OFF = 3;
    /** The same where the forecast itself is by the hour, as one of the day before is (from memory; no input states it). */
    private static final double FORECAST_HOURS_OFF = 2;
    /** A gust of 3 s over the mean of ten minutes inland (Harper, Kepert, Ginger 2010, WMO/TD-No. 1555, from memory). */
    private static final double GUST_FACTOR = 1.66;
    /** Share of the distance over which ground has to be so wet that the bike is set up for it (practice). */
    private static final double WET_ENOUGH = 1.0 / 3;
    /** Where only the lowest or the highest of the day is forecast, the other is this far off, °C (practice). */
    private static final double USUAL_SWING = 10;
    /** Where the start is not written it may be this much earlier or later, s (judgement). */
    static final int START_OFF = 2 * 3600;
    private static final double HOUR = 3600;

    private final SurveyAssumptions on;
    private final RideEstimate estimate;
    private final DiscretisedCourse way;
    private final double slower;
    /** The weather by the hour; null where the forecast is of the whole day. */
    private final HourlyWeather hourly;
    private DayTemperature day;
    /** The same day for a start that may be earlier or later. */
    private DayTemperature early;
    private DayTemperature late;

    WeatherDemands(SurveyAssumptions on, RideEstimate estimate) {
        this.on = on;
        this.estimate = estimate;
        this.way = estimate.way();
        this.slower = estimate.total().high() / estimate.riding().mid();
        Event.Forecast forecast = on.event.forecast();
        hourly = estimate.basis().weather().hourly();
        if (hourly != null && hourly.hasTemperature()) {
            day = new DayTemperature(hourly, estimate.total().high());
            early = day;
            late = day;
        } else if (forecast.low() != null || forecast.high() != null) {
            double low = forecast.low() != null ? forecast.low() : forecast.high() - USUAL_SWING;
            double high = forecast.high() != null ? forecast.high() : forecast.low() + USUAL_SWING;
            double[] sun = on.sun();
            day = new DayTemperature(on.start, estimate.total().high(), low, high, sun == null ? Double.NaN : sun[0], sun == null ? Double.NaN : sun[1]);
            early = on.startKnown ? day : shifted(-START_OFF, low, high, sun);
            late = on.startKnown ? day : shifted(START_OFF, low, high, sun);
        }
    }

    private DayTemperature shifted(int by, double low, double high, double[] sun) {
        return new DayTemperature(on.start + by, 0, low, high, sun == null ? Double.NaN : sun[0], sun == null ? Double.NaN : sun[1]);
    }

    /** Notes down what is assumed for the temperatures. */
    void assume() {
        Event.Forecast forecast = on.event.forecast();
        if (day != null && (forecast.low() == null || forecast.high() == null)) {
            on.assume(forecast.low() == null ? "lowest temperature" : "highest temperature",
                    Math.round(USUAL_SWING) + " C " + (forecast.low() == null ? "under" : "over") + " the other");
        }
        if (hourly != null && hourly.lastBegins() + HOUR < estimate.total().mid()) {
            on.assume("weather after the hours of the forecast", "as in the last of them");
        }
        if (hourly != null && hourly.hasWind() && hourly.hasDirection() && !way.hasHeadings()) {
            on.assume("headings against the wind, without a track", "every way, so only how strong it is each hour counts");
        }
    }

    /** Whether temperatures are known. */
    boolean known() {
        return day != null;
    }

    /** The temperature at a riding time of the middle estimate and a height, °C; null without a forecast. */
    Double temperature(double ridingSeconds, double height) {
        return day == null ? null : Double.valueOf(day.temperature(ridingSeconds * pauses(), height - startHeight()));
    }

    /** The temperature so many seconds after the start at a height, °C; null without a forecast. */
    Double after(double seconds, double height) {
        return day == null ? null : Double.valueOf(day.temperature(seconds, height - startHeight()));
    }

    /** Time on the way over time riding, stops spread evenly. */
    private double pauses() {
        return estimate.total().mid() / estimate.riding().mid();
    }

    private double startHeight() {
        return way.size() == 0 ? 0 : way.height(0);
    }

    /**
     * Temperatures of the ride, °C, null where not known.
     *
     * @param start   at the start
     * @param summit  at the highest point, when the rider is there
     * @param coldest the lowest on the way
     * @param hottest the highest on the way
     * @param night   the lowest in the dark
     */
    record Temperatures(Range start, Range summit, Range coldest, Range hottest, Range night) {
        static final Temperatures UNKNOWN = new Temperatures(null, null, null, null, null);
    }

    /** @param light when it is dark; null where that is not known */
    Temperatures temperatures(Daylight light) {
        if (day == null) {
            return Temperatures.UNKNOWN;
        }
        double coldest = Double.MAX_VALUE;
        double hottest = -Double.MAX_VALUE;
        double night = Double.MAX_VALUE;
        double summit = Double.NaN;
        double highest = -Double.MAX_VALUE;
        double wasDark = -1;
        boolean dark = false;
        double unsure = day.unsure(0);
        for (int lap = 0; lap < on.laps; lap++) {
            for (int i = 0; i < way.size(); i++) {
                double seconds = estimate.arrival(lap, i);
                double t = temperature(seconds, way.height(i));
                unsure = Math.max(unsure, day.unsure(seconds * pauses()));
                coldest = Math.min(coldest, t);
                hottest = Math.max(hottest, t);
                if (way.height(i) > highest) {
                    highest = way.height(i);
                    summit = t;
                }
                if (light != null && seconds * slower - wasDark > 300) {
                    wasDark = seconds * slower;
                    dark = light.dark(wasDark);
                }
                night = dark ? Math.min(night, day.temperature(seconds * slower, way.height(i) - startHeight())) : night;
            }
        }
        double start = day.temperature(0, 0);
        double off = off(unsure);
        return new Temperatures(atTheStart(start), on.course.line() == null ? null : Range.within(summit, off),
                Range.within(Math.min(start, coldest), off), Range.within(Math.max(start, hottest), off),
                night < Double.MAX_VALUE ? Range.within(night, off) : null);
    }

    /** As far off as where it begins earlier or later, if that is not known. */
    private Range atTheStart(double likely) {
        Range earlier = Range.within(early.temperature(0, 0), off(early.unsure(0)));
        Range later = Range.within(late.temperature(0, 0), off(late.unsure(0)));
        return Range.around(Math.min(earlier.low(), later.low()), likely, Math.max(earlier.high(), later.high()));
    }

    /** How far temperatures may be off, °C: as the forecast says, else the usual, beside what the curves differ by. */
    private double off(double curves) {
        Double written = on.event.forecast().goodTo();
        double usual = hourly != null && hourly.hasTemperature() ? FORECAST_HOURS_OFF : HOURS_OFF;
        return Math.hypot(written == null ? usual : written, curves);
    }

    /**
     * How wet the ground is: by the hour from the driest to the wettest on the way, its middle the wettest that lies under at least a third of the
     * distance, or what is wetter still; null where neither going nor rain is forecast.
     */
    MeasureValue going() {
        String written = on.event.forecast().going();
        if (hourly == null || !hourly.hasRain()) {
            return written == null ? null : MeasureValue.exact(Event.Forecast.GOINGS.indexOf(written));
        }
        double[] share = goingShares();
        int wettest = share[2] > 0 ? 2 : share[1] > 0 ? 1 : 0;
        int driest = share[0] > 0 ? 0 : share[1] > 0 ? 1 : 2;
        int mid = share[2] >= WET_ENOUGH ? 2 : share[1] + share[2] >= WET_ENOUGH ? 1 : 0;
        return new MeasureValue(Math.min(driest, mid), mid, Math.max(mid, wettest));
    }

    /** The going that the bike is set up for, in words; null where it is not known. */
    String goingWord() {
        MeasureValue going = going();
        return going == null ? null : Event.Forecast.GOINGS.get((int) going.mid());
    }

    /** Shares of the distance on dry, damp and wet ground. */
    private double[] goingShares() {
        HourlyConditions conditions = estimate.conditions();
        double[] out = new double[Event.Forecast.GOINGS.size()];
        for (int at = 0; at < way.size() * on.laps; at++) {
            out[conditions.wetness(at)] += way.length(at % way.size()) / (way.length() * on.laps);
        }
        return out;
    }

    /**
     * The wind that the bike has to be set up for, m/s: by the hour that of the windiest, down to the lightest; at least the wind in which the
     * strongest gust would be usual. Null where no wind is forecast.
     */
    Range wind() {
        if (hourly == null) {
            Double written = on.event.forecast().wind();
            return written == null ? null : Range.exact(written);
        }
        double until = estimate.total().mid();
        double gust = hourly.hasGusts() ? hourly.most(0, until, WeatherHour::gust) / GUST_FACTOR : 0;
        if (!hourly.hasWind()) {
            return hourly.hasGusts() ? new Range(0, gust, gust) : null;
        }
        double most = Math.max(hourly.mostWind(0, until), gust);
        return new Range(hourly.leastWind(0, until), most, most);
    }
}
