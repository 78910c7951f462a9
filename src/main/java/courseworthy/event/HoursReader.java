package courseworthy.event;

import courseworthy.problem.Faults;
import courseworthy.text.CsvReader;
import courseworthy.text.Dates;
import courseworthy.text.FieldReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.text.Node;
import courseworthy.text.RelativeFile;
import courseworthy.units.Dimension;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Reads the hours of a forecast, from a list in the event or from a CSV file named there. Bounds are wide (judgement, no source): they catch slips. */
final class HoursReader {

    private static final FileKeys DECLARED = new FileKeys();
    private static final FileKey<Double> TEMPERATURE = DECLARED.others("hour")
            .amount("temperature", "At the height of the start", Dimension.TEMPERATURE, -40, 55, "a temperature from -40 C to 55 C");
    private static final FileKey<Double> WIND =
            DECLARED.amount("wind", "Mean wind until the next hour", Dimension.SPEED, 0, 50, "a mean wind from 0 m/s to 50 m/s");
    private static final FileKey<Double> GUST = DECLARED.amount("gust", "Strongest gust until the next hour", Dimension.SPEED, 0, 90, "a gust from 0 m/s to 90 m/s");
    private static final FileKey<Double> RAIN = DECLARED.others("from").amount("rain", "Rain in an hour", Dimension.LENGTH, 0, 0.3, "rain of an hour from 0 mm to 300 mm");
    private static final FileKey<Double> HUMIDITY =
            DECLARED.amount("humidity", "Relative humidity", Dimension.SHARE, 0, 1, "a relative humidity from 0 % to 100 %");

    /** The keys of an hour, with the forms of their values. */
    static final List<FileKey<?>> KEY_FORMS = DECLARED.all();
    /** Their names, which are those of the columns as well. */
    static final List<String> KEYS = DECLARED.names();
    /** Most hours read: ten days. */
    static final int MOST = 240;

    private static final String HOUR = "a time as HH:MM, such as 14:00, or with its day, such as 2026-05-23T14:00";
    private static final String ORDER = "a time after the one before, at most 6 h later";
    private static final String ALL_OR_NONE = "a value in every hour, or in none";
    private static final String LIST = "a list of hours, such as - {hour: 09:00, temperature: 12 C}, or the name of a CSV file";
    private static final double DAY = 86_400;
    private static final double WIDEST = 6 * 3600;
    private static final RelativeFile TABLE = new RelativeFile("event", "table", "a CSV file");

    private final Path event;
    private final LocalDate date;
    private final LocalTime start;
    private final boolean startWritten;
    private final Faults faults;

    /** @param event the event's own file; null where the event stands in another one */
    HoursReader(Path event, LocalDate date, LocalTime start, boolean startWritten, Faults faults) {
        this.event = event;
        this.date = date;
        this.start = start;
        this.startWritten = startWritten;
        this.faults = faults;
    }

    /** The hours of a forecast in order; empty where none are written, or where something is wrong with them. */
    List<WeatherHour> read(FieldReader forecast) {
        Node node = forecast.node("hours");
        if (node == null) {
            return List.of();
        }
        if (start == null && !startWritten) {
            forecast.fault("hours", "hours without a start", "the time at which the ride starts", "Add a line \"start: 09:00\" to the event.");
        }
        String file = node instanceof Node.Scalar name ? RelativeFile.shown(forecast.file(), name.text()) : forecast.file();
        Node.Sequence rows = node instanceof Node.Scalar name ? table(forecast, name, file)
                : node instanceof Node.Sequence list ? list : null;
        if (node instanceof Node.Mapping) {
            forecast.fault("hours", node.describe(), LIST, "Start each hour with a dash.");
        }
        return rows == null ? List.of() : hours(forecast, rows, file);
    }

    private Node.Sequence table(FieldReader forecast, Node.Scalar name, String shown) {
        if (event == null) {
            forecast.fault("hours", name.describe(), "a list of hours", "A file can be named only in an event's own file.");
            return null;
        }
        Path path = TABLE.find(event, forecast.file(), "hours", name.line(), name.text(), faults);
        return path == null ? null : CsvReader.read(path, shown, faults);
    }

    private List<WeatherHour> hours(FieldReader forecast, Node.Sequence rows, String file) {
        int before = faults.faults().size();
        if (rows.items().isEmpty() || rows.items().size() > MOST) {
            forecast.fault("hours", rows.items().size() + " hours", "from 1 to " + MOST + " hours", "");
            return List.of();
        }
        List<WeatherHour> out = new ArrayList<>();
        List<FieldReader> from = new ArrayList<>();
        for (Node row : rows.items()) {
            if (!(row instanceof Node.Mapping block)) {
                faults.add(file, row.line(), "hours", row.describe(), LIST, "");
                continue;
            }
            FieldReader fields = new FieldReader(file, block, faults);
            WeatherHour hour = hour(fields, out.isEmpty() ? null : out.get(out.size() - 1));
            if (hour != null) {
                out.add(hour);
                from.add(fields);
            }
        }
        if (faults.faults().size() == before) {
            together(forecast, out, from);
        }
        return faults.faults().size() == before ? List.copyOf(out) : List.of();
    }

    private WeatherHour hour(FieldReader from, WeatherHour before) {
        from.required("hour", HOUR);
        Double at = at(from, before);
        WeatherHour hour = new WeatherHour(at == null ? 0 : at, TEMPERATURE.read(from), WIND.read(from), GUST.read(from), WindDirection.read(from, "from"),
                RAIN.read(from), HUMIDITY.read(from));
        from.done();
        if (at != null && !hour.saysAnything() && from.block().entries().size() == 1) {
            from.fault("hour", "an hour alone", "what the weather is then", "Add what is forecast, such as \"temperature: 12 C\".");
        }
        if (hour.gust() != null && hour.wind() != null && hour.gust() < hour.wind()) {
            from.fault("gust", from.node("gust").describe(), "no less than the wind", "Check whether the two are exchanged.");
        }
        return at == null ? null : hour;
    }

    /** A time in s after midnight of the event's day; one of the clock alone goes on to the next day where it is not after the one before. */
    private Double at(FieldReader from, WeatherHour before) {
        Node.Scalar value = from.scalar("hour", HOUR);
        if (value == null) {
            return null;
        }
        String text = value.text();
        boolean dated = text.length() > 10 && (text.charAt(10) == 'T' || text.charAt(10) == ' ');
        LocalDate day = dated ? Dates.of(text.substring(0, 10)) : null;
        LocalTime clock = ClockTime.of(dated ? text.substring(11) : text);
        if (clock == null || dated && day == null) {
            from.fault("hour", value.describe(), HOUR, "");
            return null;
        }
        if (dated && date == null) {
            from.fault("hour", value.describe(), "a time of day alone, as the event has no date", "Add a line \"date: " + day + "\" to the event.");
            return null;
        }
        double at = clock.toSecondOfDay() + (dated ? ChronoUnit.DAYS.between(date, day) * DAY : 0);
        while (!dated && before != null && at <= before.at()) {
            at += DAY;
        }
        if (before != null && (at <= before.at() || at - before.at() > WIDEST)) {
            from.fault("hour", value.describe(), ORDER, "Put the hours in order, without gaps.");
            return null;
        }
        return at;
    }

    /** What hours have to be together: all of a kind, and about the ride. */
    private void together(FieldReader forecast, List<WeatherHour> hours, List<FieldReader> from) {
        whole(hours, from, "temperature", WeatherHour::temperature);
        whole(hours, from, "wind", WeatherHour::wind);
        whole(hours, from, "gust", WeatherHour::gust);
        whole(hours, from, "rain", WeatherHour::rain);
        whole(hours, from, "humidity", WeatherHour::humidity);
        whole(hours, from, "from", hour -> hour.wind() != null && hour.wind() == 0 && hour.from() == null ? Double.valueOf(0) : hour.from());
        double begins = hours.get(0).at();
        double ends = hours.get(hours.size() - 1).at();
        if (start != null && (begins > start.toSecondOfDay() || ends + WIDEST < start.toSecondOfDay())) {
            FieldReader at = from.get(begins > start.toSecondOfDay() ? 0 : from.size() - 1);
            at.fault("hour", at.node("hour").describe(), "hours that begin at or before the start, " + start + ", and reach it",
                    "Add the hours that are missing, or check their day.");
        }
        if (WeatherHour.give(hours, WeatherHour::from) && !WeatherHour.give(hours, WeatherHour::wind) && !forecast.has("wind")) {
            from.get(0).fault("from", "a direction without a wind", "how strong the wind is beside it", "Add \"wind: 4 m/s\" to the hours or to the forecast.");
        }
    }

    private static void whole(List<WeatherHour> hours, List<FieldReader> from, String key, Function<WeatherHour, Double> figure) {
        boolean given = from.stream().anyMatch(each -> each.has(key));
        for (int i = 0; given && i < hours.size(); i++) {
            if (figure.apply(hours.get(i)) == null) {
                from.get(i).fault(key, "nothing", ALL_OR_NONE, "Add it here, or leave it out of all hours.");
                return;
            }
        }
    }
}
