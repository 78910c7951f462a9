package courseworthy.event;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * One hour of a forecast. Temperature and humidity are those at its beginning; wind, gusts and rain are of the time until the next one. Null means
 * not written, and then is so in every hour of the forecast.
 *
 * @param at          s after midnight of the event's day; below 0 the day before
 * @param temperature at the height of the start, C
 * @param wind        mean wind at 10 m height, m/s
 * @param gust        strongest gust, m/s
 * @param from        direction the wind comes from, degrees clockwise from north
 * @param rain        in an hour, m
 * @param humidity    relative, 0 to 1
 */
public record WeatherHour(double at, Double temperature, Double wind, Double gust, Double from, Double rain, Double humidity) {

    /** Whether anything is said of the weather. */
    boolean saysAnything() {
        return temperature != null || wind != null || gust != null || from != null || rain != null || humidity != null;
    }

    /** The same with the temperature so much higher, C. */
    WeatherHour warmer(double by) {
        return new WeatherHour(at, temperature == null ? null : Double.valueOf(temperature + by), wind, gust, from, rain, humidity);
    }

    /** What is left of it where a forecast gives a figure for the whole day instead. */
    WeatherHour without(Event.Forecast day) {
        boolean calm = day.wind() != null;
        return new WeatherHour(at, day.low() != null || day.high() != null ? null : temperature, calm ? null : wind, calm ? null : gust,
                day.from() != null ? null : from, day.going() != null ? null : rain, day.air().humidity() != null ? null : humidity);
    }

    /** Whether hours give a figure; they do in all of them or in none. */
    public static boolean give(List<WeatherHour> hours, Function<WeatherHour, Double> figure) {
        return hours.stream().map(figure).anyMatch(Objects::nonNull);
    }

    /** The lowest of a figure that the hours give. */
    static double least(List<WeatherHour> hours, Function<WeatherHour, Double> figure) {
        return hours.stream().map(figure).mapToDouble(Double::doubleValue).min().orElseThrow();
    }

    /** The highest of a figure that the hours give. */
    static double most(List<WeatherHour> hours, Function<WeatherHour, Double> figure) {
        return hours.stream().map(figure).mapToDouble(Double::doubleValue).max().orElseThrow();
    }
}
