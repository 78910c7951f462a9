package courseworthy.demand;

import courseworthy.event.Event;
import courseworthy.ride.Day;
import courseworthy.ride.Estimate;
import courseworthy.ride.Range;
import courseworthy.ride.Way;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;

/** What the day asks: heat and cold where the rider is at the hour, and how much of it is dark. */
final class Weathering {

    /** A forecast is good to this, °C (common practice, no source). */
    private static final double FORECAST_OFF = 2;
    /** Where only the lowest or the highest is forecast, the other is this far off, °C (practice). */
    private static final double USUAL_SWING = 8;
    /** Where the start is not written it may be this much earlier or later, s. */
    private static final int START_OFF = 2 * 3600;

    private final Premises on;
    private final Estimate estimate;
    private final Way way;
    private final double slower;
    private Day day;

    Weathering(Premises on, Estimate estimate) {
        this.on = on;
        this.estimate = estimate;
        this.way = estimate.way();
        this.slower = estimate.total().high() / estimate.riding().mid();
        Event.Forecast forecast = on.event.forecast();
        if (forecast.low() != null || forecast.high() != null) {
            double low = forecast.low() != null ? forecast.low() : forecast.high() - USUAL_SWING;
            double high = forecast.high() != null ? forecast.high() : forecast.low() + USUAL_SWING;
            day = new Day(on.start, estimate.total().high(), low, high);
        }
    }

    void write(Ledger ledger) {
        Event.Forecast forecast = on.event.forecast();
        ledger.word(Measure.GROUND, forecast.ground());
        ledger.exact(Measure.WIND, forecast.wind());
        boolean placed = on.event.date() != null && !Double.isNaN(on.course.latitude());
        if (!on.startKnown && (placed || day != null)) {
            ledger.assume("start", "8:00 (6:00 to 10:00)");
        }
        Daylight light = placed ? daylight(ledger) : null;
        if (day != null) {
            assumeSwing(ledger);
            temperatures(ledger, light);
        }
    }

    private void assumeSwing(Ledger ledger) {
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

    private void temperatures(Ledger ledger, Daylight light) {
        double coldest = Double.MAX_VALUE;
        double hottest = -Double.MAX_VALUE;
        double night = Double.MAX_VALUE;
        double summit = Double.NaN;
        double highest = -Double.MAX_VALUE;
        double wasDark = -1;
        boolean dark = false;
        for (int lap = 0; lap < on.laps; lap++) {
            for (int i = 0; i < way.size(); i++) {
                double seconds = estimate.arrival(lap, i);
                double t = temperature(seconds, way.height(i));
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
        ledger.range(Measure.START_TEMPERATURE, Range.within(start, off()));
        ledger.range(Measure.COLDEST_TEMPERATURE, Range.within(Math.min(start, coldest), off()));
        ledger.range(Measure.HOTTEST_TEMPERATURE, Range.within(Math.max(start, hottest), off()));
        if (on.course.line() != null) {
            ledger.range(Measure.SUMMIT_TEMPERATURE, Range.within(summit, off()));
        }
        if (night < Double.MAX_VALUE) {
            ledger.range(Measure.NIGHT_TEMPERATURE, Range.within(night, off()));
        }
    }

    /** Dark hours of the slow estimate, at the low end of the middle one; where the start is not written, also for earlier and later ones. */
    private Daylight daylight(Ledger ledger) {
        if (on.event.offset() == null) {
            ledger.assume("local time's offset from UTC", "the sun's, by longitude");
        }
        double mid = estimate.total().mid();
        double slow = estimate.total().high();
        Instant midnight = midnight();
        Daylight likely = daylight(midnight, on.start, slow);
        double least = Math.min(likely.darkUntil(mid), likely.darkUntil(slow));
        double most = likely.darkUntil(slow);
        double leastLeft = likely.lightLeft(slow);
        double mostLeft = Math.max(leastLeft, likely.lightLeft(mid));
        if (!on.startKnown) {
            for (int shift : new int[] {-START_OFF, START_OFF}) {
                Daylight other = daylight(midnight, on.start + shift, slow);
                least = Math.min(least, Math.min(other.darkUntil(mid), other.darkUntil(slow)));
                most = Math.max(most, other.darkUntil(slow));
                leastLeft = Math.min(leastLeft, other.lightLeft(slow));
                mostLeft = Math.max(mostLeft, other.lightLeft(mid));
            }
        }
        ledger.range(Measure.DARK_HOURS, Range.around(least, likely.darkUntil(slow), most));
        ledger.range(Measure.DAYLIGHT_TO_SPARE, Range.around(leastLeft, likely.lightLeft(slow), mostLeft));
        return likely;
    }

    /** How far temperatures may be off, °C: as the forecast says, else the usual. */
    private double off() {
        Double written = on.event.forecast().goodTo();
        return written == null ? FORECAST_OFF : written;
    }

    /** Local midnight of the day, where date and place are known; else null. */
    private Instant midnight() {
        if (on.event.date() == null || Double.isNaN(on.course.latitude())) {
            return null;
        }
        ZoneOffset offset = on.event.offset();
        double beside = offset != null ? offset.getTotalSeconds() : Math.round(on.course.longitude() / 15 * 3600);
        return LocalDateTime.of(on.event.date(), java.time.LocalTime.MIDNIGHT).toInstant(ZoneOffset.UTC).minusSeconds(Math.round(beside));
    }

    /** Sunrise and sunset of the day, s after local midnight, NaN where there is none; null where date or place are not known. */
    double[] sun() {
        Instant midnight = midnight();
        return midnight == null ? null : Daylight.of(midnight, on.course.latitude(), on.course.longitude());
    }

    private Daylight daylight(Instant midnight, int startOfDay, double lasting) {
        return new Daylight(midnight.plusSeconds(startOfDay), lasting, on.course.latitude(), on.course.longitude());
    }
}
