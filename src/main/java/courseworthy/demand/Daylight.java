package courseworthy.demand;

import courseworthy.course.GeoPoint;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.shredzone.commons.suncalc.SunTimes;
import org.shredzone.commons.suncalc.SunTimes.Twilight;

/**
 * When it is light, from a moment on: between sunrise and sunset at sea level, refraction counted, or from civil dawn to civil dusk, when the
 * sun's centre is 6 degrees down and the light just adequate for work outdoors; by commons-suncalc. Hills and trees darken earlier.
 */
final class Daylight {

    /** Sunrise and sunset, the upper edge of the sun on the horizon. */
    static final Twilight SUN = Twilight.VISUAL;
    /** Civil dawn and dusk. */
    static final Twilight CIVIL = Twilight.CIVIL;

    private static final Duration WINDOW = Duration.ofHours(24);
    /** On from a change by this before the next is looked for, s, so that it is not found again (computing). */
    private static final double PAST = 120;

    private final Instant start;
    private final GeoPoint place;
    private final Twilight edge;
    private final boolean darkAtStart;
    /** Moments at which light and dark change over, s from the start, rising. */
    private final List<Double> changes = new ArrayList<>();

    /**
     * Daylight from a moment on.
     *
     * @param start    the moment
     * @param lasting  how long it must be known, s
     * @param edge     where light ends: {@link #SUN} or {@link #CIVIL}
     */
    Daylight(Instant start, double lasting, GeoPoint place, Twilight edge) {
        this.start = start;
        this.edge = edge;
        this.place = place;
        darkAtStart = dark(window(0));
        double at = 0;
        while (at < lasting + WINDOW.toSeconds()) {
            double next = next(at);
            if (next > at) {
                changes.add(next);
            }
            at = next > at ? next + PAST : at + WINDOW.toSeconds();
        }
    }

    /** The next change after a moment, s from the start; the moment itself where there is none within a day. */
    private double next(double from) {
        SunTimes times = window(from);
        double rise = after(times.getRise(), from);
        double set = after(times.getSet(), from);
        double next = Math.min(rise, set);
        return next == Double.MAX_VALUE ? from : next;
    }

    private double after(ZonedDateTime moment, double from) {
        double seconds = moment == null ? from : Duration.between(start, moment.toInstant()).toSeconds();
        return seconds > from ? seconds : Double.MAX_VALUE;
    }

    private SunTimes window(double from) {
        ZonedDateTime at = start.plusSeconds(Math.round(from)).atZone(ZoneOffset.UTC);
        return SunTimes.compute().on(at).at(place.latitude(), place.longitude()).twilight(edge).limit(WINDOW).execute();
    }

    private static boolean dark(SunTimes times) {
        if (times.getRise() == null || times.getSet() == null) {
            return times.getRise() != null || times.getSet() == null && times.isAlwaysDown();
        }
        return times.getRise().isBefore(times.getSet());
    }

    /** When it gets light and when dark in the day from a moment on, s from it; NaN where it does not. */
    static double[] of(Instant from, GeoPoint place, Twilight edge) {
        SunTimes times = SunTimes.compute().on(from.atZone(ZoneOffset.UTC)).at(place.latitude(), place.longitude()).twilight(edge).limit(WINDOW).execute();
        return new double[] {seconds(from, times.getRise()), seconds(from, times.getSet())};
    }

    private static double seconds(Instant from, ZonedDateTime moment) {
        return moment == null ? Double.NaN : Duration.between(from, moment.toInstant()).toSeconds();
    }

    /** Moments at which light and dark change over, s from the start, rising. */
    List<Double> changes() {
        return changes;
    }

    /** Whether it is dark, s from the start. */
    boolean dark(double seconds) {
        boolean dark = darkAtStart;
        for (double change : changes) {
            if (change > seconds) {
                break;
            }
            dark = !dark;
        }
        return dark;
    }

    /** How much of the time up to a moment is dark, s. */
    double darkUntil(double seconds) {
        double sum = 0;
        boolean dark = darkAtStart;
        double from = 0;
        for (double change : changes) {
            double to = Math.min(change, seconds);
            sum += dark && to > from ? to - from : 0;
            from = Math.max(from, to);
            dark = !dark;
        }
        return dark && seconds > from ? sum + seconds - from : sum;
    }

    /** Light left at a moment until the next sunset, s; 0 where it is dark, a day at most. */
    double lightLeft(double seconds) {
        if (dark(seconds)) {
            return 0;
        }
        for (double change : changes) {
            if (change > seconds) {
                return Math.min(WINDOW.toSeconds(), change - seconds);
            }
        }
        return WINDOW.toSeconds();
    }
}
