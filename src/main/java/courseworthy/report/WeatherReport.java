package courseworthy.report;

import courseworthy.demand.HourWeather;
import courseworthy.event.Event;
import courseworthy.event.WindDirection;
import courseworthy.worth.DayPlan;
import courseworthy.worth.DayPlan.PlanHour;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The weather that a rider meets hour by hour; nothing where the forecast is of the whole day. */
final class WeatherReport {

    static final String ID = "weather";
    private static final double KM_PER_H = 3.6;
    private static final double MM = 1000;
    /** Less along the way is a side wind, m/s (judgement). */
    private static final double SIDE = 0.5;
    /** Less rain needs no word, m (judgement). */
    private static final double RAIN = 0.00005;

    private WeatherReport() {
    }

    /** A table of the hours; empty where the forecast is of the whole day. */
    static Section.Builder section(DayPlan plan) {
        Section.Builder out = Section.builder(ID, "Weather by the hour");
        if (plan.hours().stream().allMatch(hour -> hour.weather() == null)) {
            return out;
        }
        Table.Builder table = Table.builder().column(plan.start() == null ? "Hours" : "Time").figures("C");
        boolean wind = gives(plan, HourWeather::wind);
        boolean gusts = gives(plan, HourWeather::gust);
        boolean rain = gives(plan, HourWeather::rain);
        if (wind) {
            table.column("Wind, km/h").column("Along the way, km/h");
        }
        if (gusts) {
            table.figures("Gusts, km/h");
        }
        if (rain) {
            table.figures("Rain, mm").column("Going");
        }
        for (PlanHour hour : plan.hours()) {
            List<String> row = new ArrayList<>(List.of(clock(plan, hour.from()) + " to " + clock(plan, hour.to()),
                    hour.temperature() == null ? "" : Phrases.number(hour.temperature(), 0)));
            if (wind) {
                row.add(wind(hour.weather()));
                row.add(along(hour.weather()));
            }
            if (gusts) {
                row.add(hour.weather().gust() == null ? "" : speed(hour.weather().gust()));
            }
            if (rain) {
                row.add(Phrases.number(hour.weather().rain() * MM, 1));
                row.add(going(hour.weather()));
            }
            table.row(row.toArray(String[]::new));
        }
        out.table(table.build());
        return wind && !gives(plan, HourWeather::headwind) ? out.remark(WITHOUT_HEADINGS) : out;
    }

    private static final String WITHOUT_HEADINGS = "Which way the course heads, or where the wind comes from, is not given, so the wind counts by its strength alone:"
            + " against you, across, and from behind in turn. Give a track and the wind's direction to have it counted by heading.";

    /** One sentence on what turns while riding; empty where the forecast is of the whole day. */
    static String inShort(DayPlan plan) {
        StringBuilder out = new StringBuilder();
        if (gives(plan, HourWeather::wind)) {
            PlanHour most = most(plan, hour -> hour.weather().wind());
            out.append("Windiest from ").append(clock(plan, most.from())).append(": ").append(speed(most.weather().wind())).append(" km/h")
                    .append(most.weather().from() == null ? "" : " from " + WindDirection.word(most.weather().from()))
                    .append(most.weather().headwind() == null ? "" : Math.abs(most.weather().headwind()) < SIDE ? ", mostly across"
                            : ", " + speed(Math.abs(most.weather().headwind())) + " km/h of it " + (most.weather().headwind() > 0 ? "against you" : "from behind"))
                    .append(". ");
        }
        if (gives(plan, HourWeather::rain)) {
            PlanHour first = plan.hours().stream().filter(hour -> hour.weather().rain() > RAIN).findFirst().orElse(null);
            double sum = plan.hours().stream().mapToDouble(hour -> hour.weather().rain()).sum();
            out.append(first == null ? "No rain while you ride. " : "Rain from " + clock(plan, first.from()) + ", " + Phrases.number(sum * MM, 1) + " mm while you ride. ");
        }
        return out.toString().strip();
    }

    private static boolean gives(DayPlan plan, Function<HourWeather, ?> figure) {
        return plan.hours().stream().anyMatch(hour -> hour.weather() != null && figure.apply(hour.weather()) != null);
    }

    private static PlanHour most(DayPlan plan, Function<PlanHour, Double> figure) {
        PlanHour out = null;
        for (PlanHour hour : plan.hours()) {
            out = out == null || figure.apply(hour) > figure.apply(out) ? hour : out;
        }
        return out;
    }

    static String wind(HourWeather met) {
        return met.wind() == null ? "" : speed(met.wind()) + (met.from() == null ? "" : " " + WindDirection.word(met.from()));
    }

    private static String along(HourWeather met) {
        if (met.headwind() == null) {
            return "not known";
        }
        return Math.abs(met.headwind()) < SIDE ? "mostly across" : speed(Math.abs(met.headwind())) + (met.headwind() > 0 ? " against" : " behind");
    }

    /** {@code dry}, {@code dry to wet}. */
    static String going(HourWeather met) {
        if (met.driest() == null) {
            return "";
        }
        List<String> words = Event.Forecast.GOINGS;
        return met.driest().equals(met.wettest()) ? words.get(met.driest()) : words.get(met.driest()) + " to " + words.get(met.wettest());
    }

    private static String speed(double metresPerSecond) {
        return Phrases.number(metresPerSecond * KM_PER_H, 0);
    }

    private static String clock(DayPlan plan, double seconds) {
        return plan.start() == null ? PlanReport.clock(seconds) : PlanReport.ofDay(plan.start() + seconds);
    }
}
