package courseworthy.task;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.demand.RideInput;
import courseworthy.engine.RuleSet;
import courseworthy.event.Event.Forecast;
import courseworthy.event.WeatherHour;
import courseworthy.worth.PlanB;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** Surveys and calls anew for each day that the forecast says may come instead; where it says none, does nothing. */
final class AlternativeForecasts {

    private AlternativeForecasts() {
    }

    /** @param refit what a workshop mounts for another day; null where there is no build */
    static List<PlanB> of(RuleSet rules, RideInput ride, Call call, RefitAfterTurn refit) {
        Forecast forecast = ride.event().forecast();
        List<PlanB> out = new ArrayList<>();
        if (forecast.or() != null) {
            out.add(of(rules, ride, call, refit, forecast.or(), turns(forecast, forecast.or())));
        }
        if (forecast.goodTo() != null && (forecast.low() != null || forecast.high() != null)) {
            String by = degrees(forecast.goodTo());
            out.add(of(rules, ride, call, refit, forecast.warmer(-forecast.goodTo()), by + " colder"));
            out.add(of(rules, ride, call, refit, forecast.warmer(forecast.goodTo()), by + " warmer"));
        }
        return out;
    }

    private static PlanB of(RuleSet rules, RideInput ride, Call call, RefitAfterTurn refit, Forecast forecast, String turns) {
        RideInput other = ride.with(ride.event().with(forecast));
        Call second = CallMaker.call(rules, other);
        return refit == null ? PlanB.of(turns, call, second) : refit.of(turns, second, other);
    }

    /** What differs, in words. */
    private static String turns(Forecast first, Forecast or) {
        StringBuilder out = new StringBuilder();
        if (or.going() != null && !or.going().equals(first.going())) {
            add(out, or.going());
        }
        if (or.low() != null && !or.low().equals(first.low()) || or.high() != null && !or.high().equals(first.high())) {
            add(out, or.low() == null ? degrees(or.high()) : or.high() == null ? degrees(or.low())
                    : Math.round(or.low()) + " to " + degrees(or.high()));
        }
        if (or.wind() != null && !or.wind().equals(first.wind())) {
            add(out, "wind " + Math.round(or.wind() * 3.6) + " km/h");
        }
        if (or.from() != null && !or.from().equals(first.from())) {
            add(out, "wind from " + Math.round(or.from()) + " deg");
        }
        add(out, first, or, WeatherHour::wind, most -> "wind to " + Math.round(most * 3.6) + " km/h");
        add(out, first, or, WeatherHour::gust, most -> "gusts to " + Math.round(most * 3.6) + " km/h");
        add(out, first, or, WeatherHour::rain, most -> "rain to " + Math.round(most * 10_000) / 10.0 + " mm an hour");
        return out.length() == 0 ? "as the forecast's other says" : out.toString();
    }

    /** The most that the hours bring of something, where it is not the same. */
    private static void add(StringBuilder out, Forecast first, Forecast or, Function<WeatherHour, Double> figure, Function<Double, String> words) {
        Optional<Double> most = most(or.hours(), figure);
        if (most.isPresent() && !most.equals(most(first.hours(), figure))) {
            add(out, words.apply(most.get()));
        }
    }

    private static Optional<Double> most(List<WeatherHour> hours, Function<WeatherHour, Double> figure) {
        return hours.stream().map(figure).filter(Objects::nonNull).max(Comparator.naturalOrder());
    }

    private static void add(StringBuilder out, String what) {
        out.append(out.length() == 0 ? "" : ", ").append(what);
    }

    private static String degrees(double celsius) {
        return Math.round(celsius) + " C";
    }
}
