package courseworthy.demand;

import courseworthy.event.Event;
import courseworthy.ride.DayTemperature;
import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;

/** Heat and cold where the rider is at the hour. */
final class WeatherDemands {

    /**
     * Temperatures by the hour are good to this, °C: means of 1 to 3, and up to 9 on overcast days (Reicosky and others 1989, Agric. For.
     * Meteorol. 46:193, of several such curves).
     */
    private static final double HOURS_OFF = 3;
    /** Where only the lowest or the highest of the day is forecast, the other is this far off, °C (practice). */
    private static final double USUAL_SWING = 10;
    /** Where the start is not written it may be this much earlier or later, s (judgement). */
    static final int START_OFF = 2 * 3600;

    private final SurveyAssumptions on;
    private final RideEstimate estimate;
    private final DiscretisedCourse way;
    private final double slower;
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
        if (forecast.low() != null || forecast.high() != null) {
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
        return Math.hypot(written == null ? HOURS_OFF : written, curves);
    }
}
