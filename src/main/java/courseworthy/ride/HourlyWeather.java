package courseworthy.ride;

import courseworthy.event.WeatherHour;
import java.util.List;
import java.util.function.Function;

/**
 * The weather of a ride hour by hour, by seconds from the start. Temperature and humidity run in straight lines from one hour to the next; wind, gusts
 * and rain stay as they are until the next. Before the first hour and after the last it is as in these.
 */
public final class HourlyWeather {

    /** s, exact by definition. */
    private static final double HOUR = 3600;

    private final List<WeatherHour> hours;
    private final double start;
    private final Double wind;
    private final Double from;
    private final Integer going;

    /**
     * The weather from a forecast.
     *
     * @param hours of the forecast, at least one
     * @param start s after midnight
     * @param wind  of the whole day, m/s; null where the hours give it, or nobody
     * @param from  of the whole day, degrees; null where the hours give it, or nobody
     * @param going at the start, 0 dry, 1 damp, 2 wet; null where not given
     */
    public HourlyWeather(List<WeatherHour> hours, double start, Double wind, Double from, Integer going) {
        this.hours = List.copyOf(hours);
        this.start = start;
        this.wind = wind;
        this.from = from;
        this.going = going;
    }

    public boolean hasTemperature() {
        return gives(WeatherHour::temperature);
    }

    boolean hasHumidity() {
        return gives(WeatherHour::humidity);
    }

    public boolean hasRain() {
        return gives(WeatherHour::rain);
    }

    public boolean hasGusts() {
        return gives(WeatherHour::gust);
    }

    public boolean hasWind() {
        return wind != null || gives(WeatherHour::wind);
    }

    public boolean hasDirection() {
        return from != null || gives(WeatherHour::from);
    }

    /** The same, with rain unknown. */
    HourlyWeather withoutRain() {
        return new HourlyWeather(hours.stream().map(hour -> new WeatherHour(hour.at(), hour.temperature(), hour.wind(), hour.gust(), hour.from(), null,
                hour.humidity())).toList(), start, wind, from, going);
    }

    private boolean gives(Function<WeatherHour, Double> figure) {
        return WeatherHour.give(hours, figure);
    }

    /** When the hours begin, s from the start; below 0 before it. */
    public double begins() {
        return hours.get(0).at() - start;
    }

    /** When the last hour begins, s from the start. */
    public double lastBegins() {
        return hours.get(hours.size() - 1).at() - start;
    }

    /** The going at the start, 0 dry, 1 damp, 2 wet; null where not given. */
    Integer going() {
        return going;
    }

    /** °C. */
    public double temperature(double seconds) {
        return between(seconds, WeatherHour::temperature);
    }

    /** Relative, 0 to 1. */
    double humidity(double seconds) {
        return between(seconds, WeatherHour::humidity);
    }

    /** Mean wind at 10 m height, m/s. */
    public double wind(double seconds) {
        return wind != null ? wind : at(seconds).wind();
    }

    /** Where the wind comes from, radians clockwise from north; NaN where nobody says so, or it is calm. */
    public double from(double seconds) {
        Double degrees = from != null ? from : at(seconds).from();
        return degrees == null ? Double.NaN : Math.toRadians(degrees);
    }

    /** Strongest gust, m/s. */
    public double gust(double seconds) {
        return at(seconds).gust();
    }

    /** Rain in an hour, m. */
    public double rain(double seconds) {
        return at(seconds).rain();
    }

    private WeatherHour at(double seconds) {
        return hours.get(index(seconds));
    }

    /** The last hour that has begun by then, else the first. */
    private int index(double seconds) {
        int out = 0;
        while (out < hours.size() - 1 && hours.get(out + 1).at() - start <= seconds) {
            out++;
        }
        return out;
    }

    private double between(double seconds, Function<WeatherHour, Double> figure) {
        int i = index(seconds);
        double here = figure.apply(hours.get(i));
        if (i == hours.size() - 1) {
            return here;
        }
        double part = (seconds + start - hours.get(i).at()) / (hours.get(i + 1).at() - hours.get(i).at());
        return here + Math.max(0, part) * (figure.apply(hours.get(i + 1)) - here);
    }

    /** The highest of a figure from one moment to another, s from the start. */
    public double most(double begin, double end, Function<WeatherHour, Double> figure) {
        double out = Double.NEGATIVE_INFINITY;
        for (int i = index(begin); i <= index(end); i++) {
            out = Math.max(out, figure.apply(hours.get(i)));
        }
        return out;
    }

    /** The strongest mean wind from one moment to another, m/s. */
    public double mostWind(double begin, double end) {
        return wind != null ? wind : most(begin, end, WeatherHour::wind);
    }

    /** The lightest mean wind from one moment to another, m/s. */
    public double leastWind(double begin, double end) {
        return wind != null ? wind : -most(begin, end, hour -> -hour.wind());
    }

    /** Mean wind over a time, m/s. */
    public double meanWind(double begin, double end) {
        return mean(begin, end, this::wind);
    }

    /** Rain that falls over a time, m. */
    public double rainBetween(double begin, double end) {
        return mean(begin, end, this::rain) * (end - begin) / HOUR;
    }

    /** Where the wind comes from over a time, radians clockwise from north: that of the mean of its two components; NaN where there is none. */
    public double meanFrom(double begin, double end) {
        double east = mean(begin, end, t -> Double.isNaN(from(t)) ? 0 : wind(t) * Math.sin(from(t)));
        double north = mean(begin, end, t -> Double.isNaN(from(t)) ? 0 : wind(t) * Math.cos(from(t)));
        double out = Math.atan2(east, north);
        return Math.hypot(east, north) < 1e-9 ? Double.NaN : out < 0 ? out + 2 * Math.PI : out;
    }

    /** The mean of what stays as it is within each hour. */
    private double mean(double begin, double end, Function<Double, Double> figure) {
        double sum = 0;
        double now = begin;
        while (now < end) {
            int i = index(now);
            double next = i == hours.size() - 1 ? end : Math.max(now, Math.min(end, hours.get(i + 1).at() - start));
            next = next > now ? next : end;
            sum += figure.apply(now) * (next - now);
            now = next;
        }
        return end > begin ? sum / (end - begin) : figure.apply(begin);
    }
}
