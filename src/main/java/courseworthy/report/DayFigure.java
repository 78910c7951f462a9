package courseworthy.report;

import courseworthy.demand.DayDemands;
import courseworthy.demand.HourWeather;
import courseworthy.event.WindDirection;
import courseworthy.report.picture.DayStrip;
import courseworthy.report.picture.DayStrip.LightBand;
import courseworthy.report.picture.DayStrip.LightSection;
import courseworthy.report.picture.ValueRange;
import courseworthy.task.Brief;
import courseworthy.worth.DayPlan;
import courseworthy.worth.DayPlan.PlanHour;
import courseworthy.worth.DayPlanSummary;
import java.util.List;

/** The day of a brief hour by hour: temperature, light, food and drink. */
final class DayFigure {

    private static final double KM_PER_H = 3.6;
    private static final double MM = 1000;

    private DayFigure() {
    }

    /** Null where no day was planned. */
    static Figure of(Brief brief) {
        DayPlan plan = brief.outlook().plan();
        if (plan == null) {
            return null;
        }
        boolean fed = plan.energy().rate() != null;
        DayStrip strip = new DayStrip(plan.start(), plan.hours().stream().map(each -> hour(each, fed)).toList(),
                plan.light() == null ? List.of() : plan.light().spans().stream().map(DayFigure::span).toList());
        return new Figure(RichText.of(title(plan)), strip, RichText.of(sentence(plan)), data(plan, fed));
    }

    private static DayStrip.HourColumn hour(PlanHour hour, boolean fed) {
        return new DayStrip.HourColumn(hour.from(), hour.to(), hour.temperature(), Ranges.of(hour.drink()), fed ? Ranges.of(hour.carbohydrate()) : null,
                hour.weather() == null ? null : weather(hour.weather()));
    }

    private static DayStrip.HourReading weather(HourWeather met) {
        return new DayStrip.HourReading(met.wind() == null ? null : Double.valueOf(met.wind() * KM_PER_H), met.from() == null ? "" : WindDirection.word(met.from()),
                met.rain() == null ? null : new ValueRange(met.rain() * MM, met.rain() * MM, met.rain() * MM), WeatherReport.going(met));
    }

    private static LightSection span(DayDemands.LightSpan span) {
        return new LightSection(span.from(), span.to(), switch (span.light()) {
            case DAY -> LightBand.DAY;
            case TWILIGHT -> LightBand.TWILIGHT;
            case NIGHT -> LightBand.NIGHT;
        });
    }

    private static String title(DayPlan plan) {
        PlanHour hottest = DayPlanSummary.hottest(plan.hours());
        return hottest == null ? "Food and drink by the hour" : "Warmest, " + Phrases.number(hottest.temperature(), 0) + " C, from "
                + clock(plan, hottest.from()) + (plan.start() == null ? " h after the start" : "");
    }

    private static String sentence(DayPlan plan) {
        return "Over the day " + (plan.energy().rate() == null ? "" : "eat about " + Phrases.number(plan.energy().food().mid(), 0) + " g of carbohydrate and ")
                + "drink about " + Phrases.number(plan.fluids().drink().mid(), 1) + " L.";
    }

    private static Table data(DayPlan plan, boolean fed) {
        Table.Builder out = Table.builder().column(plan.start() == null ? "Hours" : "Time").figures("Temperature, C").column("Drink, L").column("Carbohydrate, g");
        for (PlanHour each : plan.hours()) {
            out.row(clock(plan, each.from()) + " to " + clock(plan, each.to()), each.temperature() == null ? "" : Phrases.number(each.temperature(), 0),
                    Figures.plain(each.drink(), 1), fed ? Figures.plain(each.carbohydrate(), 0) : "");
        }
        return out.build();
    }

    private static String clock(DayPlan plan, double seconds) {
        return plan.start() == null ? PlanReport.clock(seconds) : PlanReport.ofDay(plan.start() + seconds);
    }
}
