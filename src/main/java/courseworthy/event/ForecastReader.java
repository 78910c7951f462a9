package courseworthy.event;

import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.text.Node;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import courseworthy.units.Unit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.function.Function;

/** Reads the forecast of an event: figures for the whole day, hours, or some of each, and what it may turn to. */
public final class ForecastReader {

    private static final FileKeys DECLARED = new FileKeys();
    private static final FileKey<Double> LOW = temperature("low", "Lowest temperature of the day, at the height of the start");
    private static final FileKey<Double> HIGH = temperature("high", "Highest temperature of the day, at the height of the start");
    private static final FileKey<String> GOING = DECLARED.word("going", "", Event.Forecast.GOINGS);
    private static final FileKey<Double> WIND = DECLARED.amount("wind", "Mean wind", Dimension.SPEED, 0, 50, "a mean wind from 0 m/s to 50 m/s");
    private static final FileKey<Double> HUMIDITY = DECLARED.others("wind from")
            .amount("humidity", "Mean relative humidity of the ride", Dimension.SHARE, 0, 1, "a relative humidity from 0 % to 100 %");
    private static final FileKey<Double> AIR_PRESSURE = DECLARED.amount("air pressure", "At sea level, as weather services give it", Dimension.PRESSURE,
            85_000, 108_500, "a pressure at sea level from 850 hPa to 1085 hPa");

    /** The keys of {@code forecast} and of what it may turn to, with the forms of their values. */
    public static final List<FileKey<?>> KEY_FORMS = DECLARED.others("hours").all();
    /** The names of all keys of {@code forecast}. */
    public static final List<String> KEYS = DECLARED.others("good to", "or").names();
    /** The keys of an hour, with the forms of their values. */
    public static final List<FileKey<?>> HOUR_FORMS = HoursReader.KEY_FORMS;
    /** Their names. */
    public static final List<String> HOUR_KEYS = HoursReader.KEYS;

    /** Between a day's low and high, degrees: the widest on record is about 57 C (from memory); half of it is a slip. */
    private static final double WIDEST_DAY = 40;

    private final HoursReader hours;

    /**
     * A reader for one event.
     *
     * @param event its own file; null where it stands in another one
     */
    ForecastReader(Path event, LocalDate date, LocalTime start, boolean startWritten, Faults faults) {
        hours = new HoursReader(event, date, start, startWritten, faults);
    }

    Event.Forecast read(FieldReader event) {
        FieldReader from = event.fields("forecast");
        return from == null ? Event.Forecast.UNKNOWN : forecast(from, null);
    }

    /** Reads a forecast, or the alternative to one, which says only what differs. */
    private Event.Forecast forecast(FieldReader from, Event.Forecast first) {
        Event.Forecast day = day(from);
        List<WeatherHour> table = hours.read(from);
        Event.Forecast.Builder written = Event.Forecast.builder().low(day.low()).high(day.high()).going(day.going()).wind(day.wind()).from(day.from())
                .goodTo(first == null ? goodTo(from) : null).air(day.air()).hours(table);
        once(from, table, "temperature", WeatherHour::temperature, "low", "high");
        once(from, table, "wind", WeatherHour::wind, "wind");
        once(from, table, "from", WeatherHour::from, "wind from");
        once(from, table, "humidity", WeatherHour::humidity, "humidity");
        if (WeatherHour.give(table, WeatherHour::temperature)) {
            written.low(WeatherHour.least(table, WeatherHour::temperature)).high(WeatherHour.most(table, WeatherHour::temperature));
        }
        Event.Forecast forecast = first == null ? written.build() : written.build().orElse(first);
        believable(from, forecast, first);
        forecast = first == null ? alternative(from, forecast) : forecast;
        from.done();
        return forecast;
    }

    /** The figures for the whole day. */
    private static Event.Forecast day(FieldReader from) {
        return Event.Forecast.builder().low(LOW.read(from)).high(HIGH.read(from)).going(GOING.read(from)).wind(WIND.read(from))
                .from(WindDirection.read(from, "wind from")).air(new Event.AirConditions(HUMIDITY.read(from), AIR_PRESSURE.read(from))).build();
    }

    private static FileKey<Double> temperature(String key, String about) {
        return DECLARED.amount(key, about, Dimension.TEMPERATURE, -40, 55, "a temperature from -40 C to 55 C");
    }

    /** What the hours give is not given for the whole day besides: one of the two would be wrong, or unused. */
    private static void once(FieldReader from, List<WeatherHour> table, String column, Function<WeatherHour, Double> figure, String... keys) {
        for (String key : keys) {
            if (WeatherHour.give(table, figure) && from.has(key)) {
                from.fault(key, from.node(key).describe() + " beside hours that give the " + (column.equals("from") ? "direction of the wind" : column),
                        "one of the two", "Remove this line, or the " + column + " of the hours.");
            }
        }
    }

    private static void believable(FieldReader from, Event.Forecast forecast, Event.Forecast first) {
        if (forecast.low() == null || forecast.high() == null) {
            return;
        }
        if (forecast.low() > forecast.high()) {
            String key = from.has("low") ? "low" : "high";
            from.fault(key, from.node(key) == null ? "an alternative" : from.node(key).describe(), "no more than the high", first == null ? ""
                    : "What is not given in the alternative is as in the forecast: write both low and high.");
        }
        if (forecast.high() - forecast.low() > WIDEST_DAY) {
            String key = from.has("high") ? "high" : from.has("low") ? "low" : "hours";
            from.fault(key, from.node(key) == null ? "an alternative" : from.node(key).describe(), "at most 40 C above the low", "Check the units of low and high.");
        }
    }

    private Event.Forecast alternative(FieldReader from, Event.Forecast first) {
        FieldReader or = from.fields("or");
        if (or == null) {
            return first;
        }
        if (or.block().entries().isEmpty()) {
            from.fault("or", "nothing", "what the day may turn to, such as {going: wet, high: 12 C}", "");
        }
        return first.turningTo(forecast(or, first));
    }

    /** How far temperatures may be off: a difference, so in degrees of either scale. */
    private static Double goodTo(FieldReader from) {
        String expected = "how far its temperatures may be off, such as 3 C or 5 F";
        Node.Scalar value = from.scalar("good to", expected);
        if (value == null) {
            return null;
        }
        try {
            Amount amount = Amount.parse(value.text(), Dimension.TEMPERATURE);
            double degrees = amount.inBase() - Amount.parse(amount.unit() == Unit.F ? "0 F" : "0 C", Dimension.TEMPERATURE).inBase();
            if (degrees > 0 && degrees <= 20) {
                return degrees;
            }
        } catch (Amount.NotAnAmount e) {
            // Said below.
        }
        from.fault("good to", value.describe(), expected, "It is over 0 C and at most 20 C.");
        return null;
    }
}
