package courseworthy.demand;

import courseworthy.event.Event;
import courseworthy.ride.DayTemperature;
import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import org.shredzone.commons.suncalc.SunTimes.Twilight;

/** What the day asks: heat and cold where the rider is at the hour, and how much of it is dark. */
final class WeatherDemands {

    /**
     * Temperatures by the hour are good to this, °C: means of 1 to 3, and up to 9 on overcast days (Reicosky and others 1989, Agric. For.
     * Meteorol. 46:193, of several such curves).
     */
    private static final double HOURS_OFF = 3;
    /** Where only the lowest or the highest of the day is forecast, the other is this far off, °C (practice). */
    private static final double USUAL_SWING = 10;
    /** Where the start is not written it may be this much earlier or later, s (judgement). */
    private static final int START_OFF = 2 * 3600;

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

    void write(DemandsBuilder ledger) {
        Event.Forecast forecast = on.event.forecast();
        ledger.word(Measure.GOING, forecast.going());
        ledger.exact(Measure.WIND, forecast.wind());
        boolean placed = on.event.date() != null && on.course.start() != null;
        if (!on.startKnown && (placed || day != null)) {
            ledger.assume("start", "8:00 (6:00 to 10:00)");
        }
        Daylight light = placed ? daylight(ledger) : null;
        if (day != null) {
            assumeSwing(ledger);
            temperatures(ledger, light);
        }
    }

    private void assumeSwing(DemandsBuilder ledger) {
        Event.Forecast forecast = on.event.forecast();
        if (forecast.low() == null || forecast.high() == null) {
            ledger.assume(forecast.low() == null ? "lowest temperature" : "highest temperature",
                    Math.round(USUAL_SWING) + " C " + (forecast.low() == null ? "under" : "over") + " the other");
        }
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

    private void temperatures(DemandsBuilder ledger, Daylight light) {
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
        Range earlier = Range.within(early.temperature(0, 0), off(early.unsure(0)));
        Range later = Range.within(late.temperature(0, 0), off(late.unsure(0)));
        ledger.range(Measure.START_TEMPERATURE, Range.around(Math.min(earlier.low(), later.low()), start, Math.max(earlier.high(), later.high())));
        ledger.range(Measure.COLDEST_TEMPERATURE, Range.within(Math.min(start, coldest), off(unsure)));
        ledger.range(Measure.HOTTEST_TEMPERATURE, Range.within(Math.max(start, hottest), off(unsure)));
        if (on.course.line() != null) {
            ledger.range(Measure.SUMMIT_TEMPERATURE, Range.within(summit, off(unsure)));
        }
        if (night < Double.MAX_VALUE) {
            ledger.range(Measure.NIGHT_TEMPERATURE, Range.within(night, off(unsure)));
        }
    }

    /**
     * Hours of the slow estimate without sun and in the dark, the middle estimate at their low end; where the start is not written, also for
     * earlier and later ones.
     */
    private Daylight daylight(DemandsBuilder ledger) {
        if (on.event.offset() == null) {
            ledger.assume("local time's offset from UTC", "the sun's, by longitude");
        }
        double slow = estimate.total().high();
        Daylight sun = light(0, Daylight.SUN);
        Daylight civil = light(0, Daylight.CIVIL);
        Range spare = spare(sun);
        Range sunless = without(sun);
        Range dark = without(civil);
        if (!on.startKnown) {
            for (int shift : new int[] {-START_OFF, START_OFF}) {
                Daylight other = light(shift, Daylight.SUN);
                spare = wider(spare, spare(other));
                sunless = wider(sunless, without(other));
                dark = wider(dark, without(light(shift, Daylight.CIVIL)));
            }
        }
        ledger.range(Measure.SUNLESS_HOURS, sunless);
        ledger.range(Measure.DARK_HOURS, dark);
        ledger.range(Measure.DARK_SHARE, new Range(dark.low() / slow, dark.mid() / slow, Math.min(1, dark.high() / slow)));
        ledger.range(Measure.DAYLIGHT_TO_SPARE, spare);
        return civil;
    }

    private Range without(Daylight light) {
        double slow = light.darkUntil(estimate.total().high());
        return Range.around(light.darkUntil(estimate.total().mid()), slow, slow);
    }

    private Range spare(Daylight light) {
        double slow = light.lightLeft(estimate.total().high());
        return Range.around(slow, slow, light.lightLeft(estimate.total().mid()));
    }

    private static Range wider(Range range, Range other) {
        return new Range(Math.min(range.low(), other.low()), range.mid(), Math.max(range.high(), other.high()));
    }

    private Daylight light(int shift, Twilight edge) {
        return new Daylight(on.midnight().plusSeconds(on.start + shift), estimate.total().high(), on.course.start(), edge);
    }

    /** How far temperatures may be off, °C: as the forecast says, else the usual, beside what the curves differ by. */
    private double off(double curves) {
        Double written = on.event.forecast().goodTo();
        return Math.hypot(written == null ? HOURS_OFF : written, curves);
    }
}
