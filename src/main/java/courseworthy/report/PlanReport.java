package courseworthy.report;

import courseworthy.demand.DayDemands.Ascent;
import courseworthy.demand.DayDemands.SupportStop;
import courseworthy.ride.Endurance;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import courseworthy.task.Brief;
import courseworthy.topic.Topics;
import courseworthy.units.RuleValue;
import courseworthy.worth.DayPlan;
import courseworthy.worth.DayPlan.SupplyGap;
import courseworthy.worth.DayPlan.PlanHour;
import courseworthy.worth.DayPlan.DaylightTimes;
import courseworthy.worth.DayPlan.Split;
import courseworthy.worth.DayPlanSummary;
import java.util.ArrayList;
import java.util.List;

/** The plan for the day: where you are when, what to carry, eat and drink, and when it is light. */
final class PlanReport {

    static final String ID = "plan";
    private static final String NEEDS_ID = "plan-food";
    private static final String EFFORT_ID = "plan-effort";
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;
    private static final double MINUTE = 60;
    private static final double KJ = 1000;
    /** The foot and the top of a climb are known no better than to so much, m (judgement). */
    private static final double TENS = 10;
    /**
     * Sodium and carbohydrate to a litre drunk on rides over an hour and a half, as advised: 400 to 1100 mg, 4 to 8 % (sodium: published
     * advice; carbohydrate: Thomas, Erdman and Burke 2016, Med. Sci. Sports Exerc. 48:543). Trials of more sodium by the hour found
     * no gain in four of five (McCubbin and Costa 2018), so none is asked for by the hour.
     */
    private static final String SODIUM = "400 to 1100 mg of sodium and 40 to 80 g of carbohydrate per litre";
    private static final String NOT_TO_DRINK = " Of this, do not drink more than 1 L an hour: in heat, pour the rest over head and arms,"
            + " where it cools you too.";
    private static final String TOO_MUCH = " Bottles and a pack hold " + RuleValue.BOTTLES_WITH_PACK.text() + ", so you cannot carry this: filter or buy water on"
            + " the way, ask the organiser for a point, ride slower, start at a cooler hour or on another day, or do not start.";
    private static final String DOCTOR = "If you are ill, pregnant or on medication, ask a doctor first.";

    private final Brief brief;
    private final DayPlan plan;
    private final DayPlanSummary summary;

    private PlanReport(Brief brief) {
        this.brief = brief;
        plan = brief.outlook().plan();
        summary = DayPlanSummary.of(plan);
    }

    /** The whole plan; empty where none was made. */
    static Section section(Brief brief) {
        return brief.outlook().plan() == null ? Section.builder(ID, "Plan for the day").build() : new PlanReport(brief).whole();
    }

    /** What a rider wants on the bar; empty where no plan was made. */
    static Section inShort(Brief brief) {
        return brief.outlook().plan() == null ? Section.builder(ID, "Plan for the day").build() : new PlanReport(brief).main();
    }

    /** What to take in pits and when, for the checklist; empty where there are none. */
    static Section.Builder pits(Brief brief) {
        Section.Builder out = Section.builder(PitReport.ID, "In the pit");
        return brief.outlook().pits().pits().isEmpty() ? out : PitReport.addStops(out, brief.outlook().pits(), new PlanReport(brief)::time);
    }

    /** The same in words, a line each time the rider comes by. */
    static List<String> pitLines(Brief brief) {
        return brief.outlook().pits().pits().isEmpty() ? List.of() : PitReport.lines(brief.outlook().pits(), new PlanReport(brief)::time);
    }

    private Section.Builder start() {
        Section.Builder out = Section.builder(ID, "Plan for the day").aside(plan.start() == null ? "time from the start" : "start " + ofDay(plan.start()))
                .table(places());
        for (double at : plan.beyond()) {
            out.caution("A cut-off is given for " + Phrases.number(at / 1000, 1) + " km, which is past the finish: check it.");
        }
        return out;
    }

    private Section whole() {
        Section.Builder needs = Section.builder(NEEDS_ID, "Food and drink by the hour").table(intake());
        fuel().forEach(needs::paragraph);
        return start().paragraph(WeatherReport.inShort(plan)).paragraph(power()).paragraph(carry()).paragraph(light())
                .section(WeatherReport.section(plan))
                .section(PitReport.section(brief.outlook().pits(), this::time)).section(needs)
                .section(Section.builder(EFFORT_ID, "Effort by the hour").table(effort()).paragraph(sums())).build();
    }

    private Section main() {
        return start().paragraph(WeatherReport.inShort(plan)).paragraph(food() + " " + water()).paragraph(light()).paragraph(PitReport.inShort(brief.outlook().pits())).bullets(ForecastReport.inShort(brief)).build();
    }

    private Table places() {
        Table.Builder out = Table.builder().keyColumns(2).figures("At").column("Time").column("What");
        for (List<Split> place : summary.places()) {
            List<String> what = new ArrayList<>();
            place.forEach(split -> what.add(what(split)));
            Split first = place.get(0);
            out.row(Phrases.number(first.at() / 1000, 1) + " km", time(first.after()), String.join("; ", what));
        }
        return out.build();
    }

    private String what(Split split) {
        return switch (split.kind()) {
            case FOOT -> "climb starts: " + climb(split.climb());
            case TOP -> "top of climb, " + Phrases.number(split.climb().rise(), 0) + " m gained";
            case LAP -> "end of lap " + split.lap();
            case SUPPORT -> support(split);
            case CUT_OFF -> cutoff(split);
            case FINISH -> "finish" + (split.latest() == null ? "" : "; " + cutoff(split));
        };
    }

    static String climb(Ascent climb) {
        double length = climb.top() - climb.foot();
        return Figures.distance(length < 1000 ? TENS * Math.round(length / TENS) : length) + " at " + Phrases.number(100 * climb.rise() / length, 1) + " %";
    }

    private String support(Split split) {
        SupportStop stop = split.stop();
        String out = (stop.water() ? "water" : "") + (stop.food() ? stop.water() ? ", food" : "food" : "");
        out = out + (stop.bag() ? out.isEmpty() ? "own bag" : ", own bag" : "");
        SupplyGap gap = stop.water() ? gap(split.at()) : null;
        return out + (gap == null ? "" : ": leave with " + litres(gap.carry()));
    }

    private SupplyGap gap(double from) {
        for (SupplyGap gap : plan.fluids().gaps()) {
            if (Math.abs(gap.from() - from) < 1) {
                return gap;
            }
        }
        return null;
    }

    private String cutoff(Split split) {
        double latest = split.latest();
        String limit = "cut-off " + (plan.start() == null ? clock(latest) + " h" : ofDay(plan.start() + latest)) + ": ";
        Range after = split.after();
        return limit + switch (split.stands()) {
            case IN_TIME -> "even at the slow estimate, " + span(latest - after.high()) + " inside it";
            case SLOW_END_MISSES -> "likely " + span(latest - after.mid()) + " inside it, but at the slow estimate you miss it by "
                    + span(after.high() - latest);
            case MIDDLE_MISSES -> "you will probably miss it by " + span(after.mid() - latest) + "; at the fast estimate you are "
                    + span(latest - after.low()) + " inside it";
            case ALL_MISS -> "even at the fast estimate you miss it by " + span(after.low() - latest);
        };
    }

    /** A time from the start with its range: by the clock where the start is known. */
    private String time(Range after) {
        boolean known = plan.start() != null;
        double start = known ? plan.start() : 0;
        String mid = known ? ofDay(start + after.mid()) : clock(after.mid()) + " h";
        String low = known ? ofDay(start + after.low()) : clock(after.low());
        String high = known ? ofDay(start + after.high()) : clock(after.high());
        return low.equals(high) ? mid : mid + " (" + low + " to " + high + ")";
    }

    /** A time of day, with the days after the start's where it is a later one: {@code 7:05}, {@code 1:20 next day}. */
    static String ofDay(double seconds) {
        long minutes = Math.round(seconds / MINUTE);
        long days = Math.floorDiv(minutes, 1440L);
        String clock = clock(Math.floorMod(minutes, 1440L) * MINUTE);
        return days == 0 ? clock : days == 1 ? clock + " next day" : days == -1 ? clock + " the day before" : days < 0
                ? clock + ", " + -days + " days before" : clock + ", day " + (days + 1);
    }

    /** Hours and minutes: {@code 0:25}. */
    static String clock(double seconds) {
        long minutes = Math.round(seconds / MINUTE);
        long rest = Math.abs(minutes) % 60;
        return (minutes < 0 ? "-" : "") + Math.abs(minutes) / 60 + (rest < 10 ? ":0" : ":") + rest;
    }

    /** How long something lasts: {@code 25 min}, {@code 1:05 h}. */
    static String span(double seconds) {
        long minutes = Math.round(seconds / MINUTE);
        return minutes < 60 ? minutes + " min" : clock(seconds) + " h";
    }

    /** What to eat and drink each hour; several hours to a row on long days. */
    private Table intake() {
        Table.Builder out = Table.builder().column("Hours").column("Carbohydrate, g").column("Drink, L").figures("Hottest, C");
        for (PlanHour row : summary.hours()) {
            out.row(hours(row), plan.energy().rate() == null ? "" : rounded(row.carbohydrate(), 1, 1, ""), tenths(row.drink()),
                    row.temperature() == null ? "" : Phrases.number(row.temperature(), 0));
        }
        return out.build();
    }

    /** What each hour takes; several hours to a row on long days. */
    private Table effort() {
        Table.Builder out = Table.builder().column("Hours").column("Work, kJ").column("Energy used, kcal");
        for (PlanHour row : summary.hours()) {
            out.row(hours(row), rounded(row.work(), 1 / KJ, 10, ""), rounded(row.energy(), 1 / DayPlan.KCAL, 10, ""));
        }
        return out.build();
    }

    private static String hours(PlanHour row) {
        return clock(row.from()) + " to " + clock(row.to());
    }

    /** {@code 650 kcal (560 to 760)}, rounded to what it is good for. */
    private static String rounded(Range range, double factor, double step, String unit) {
        String low = rounded(range.low() * factor, step);
        String high = rounded(range.high() * factor, step);
        return rounded(range.mid() * factor, step) + unit + (low.equals(high) ? "" : " (" + low + " to " + high + ")");
    }

    private static String rounded(double value, double step) {
        return Phrases.number(Math.round(value / step) * step, 0);
    }

    private static String tenths(Range range) {
        String low = Phrases.number(range.low(), 1);
        String high = Phrases.number(range.high(), 1);
        return Phrases.number(range.mid(), 1) + (low.equals(high) ? "" : " (" + low + " to " + high + ")");
    }

    private static String litres(Range litres) {
        return Figures.range(litres, 1, "L");
    }

    /** The day's food and drink, and what to watch in both. */
    private List<String> fuel() {
        List<String> out = new ArrayList<>();
        out.add(eat());
        out.add("Drink to thirst: about " + litres(plan.fluids().drink()) + " over the day, never more than you sweat, nor more than 1 L an hour, the most a stomach"
                + " is shown to pass.");
        out.add(loss());
        if (plan.hours().get(plan.hours().size() - 1).to() > 1.5 * HOUR) {
            out.add("On rides over 1.5 h, " + SODIUM + " are usual.");
        }
        out.add((summary.hot() ? "In heat start slower, cool head and arms with water at each tap, and stop if you feel dizzy, chilled or confused. " : "") + DOCTOR);
        return out;
    }

    private String sums() {
        return "In all " + rounded(plan.energy().work(), 1 / KJ, 50, " kJ") + " at the pedals, " + rounded(plan.energy().used(), 1 / DayPlan.KCAL, 50, " kcal")
                + " used, at a gross efficiency of 20 to 24 %" + (DayPlan.walks(plan.energy().walked()) ? ", walking included" : "") + ".";
    }

    private String eat() {
        if (plan.energy().rate() == null) {
            return "";
        }
        Range rate = plan.energy().rate();
        String share = summary.carbohydrateShare() == null ? "" : ", about " + Phrases.number(100 * summary.carbohydrateShare(), 0)
                + " % of what you use; the body's stores give the rest";
        return "To eat: " + rounded(plan.energy().food(), 1, 10, " g") + " of carbohydrate, " + rounded(rate, 1, 1, " g") + " an hour" + share + "."
                + (rate.high() > 60 ? " Above 60 g an hour only as mixed sugars, and only if you have practised it." : "");
    }

    /** Food and drink over the day in one line. */
    private String food() {
        return eaten() + "Drink to thirst, about " + litres(plan.fluids().drink()) + " over the day.";
    }

    private String eaten() {
        if (plan.energy().rate() == null) {
            return "";
        }
        Range food = plan.energy().food();
        return rounded(food.mid(), 10).equals("0") ? "You need not eat on the way. "
                : "Eat about " + rounded(food, 1, 10, " g") + " of carbohydrate, " + rounded(plan.energy().rate(), 1, 1, " g") + " an hour. ";
    }

    /** What is sweated and not drunk, and what that does. */
    private String loss() {
        return "You finish about " + Phrases.number(plan.fluids().loss().mid(), 1) + " kg lighter by sweat, " + Phrases.number(100 * plan.fluids().lossShare().mid(), 1)
                + " % of your mass" + (summary.lossDangerous() ? ", and much more if you sweat more than most. " : ". ") + (summary.lossCostsPower()
                ? "That is more than 2 %, which costs power in heat: start slower, cool head and arms, and stop early if you feel unwell. "
                : "Over 2 % costs power in heat; in the cool at your own pace that is disputed. ")
                + (plan.fluids().sweatKnown() ? "Your own sweat rate is used as given: carry more if you weighed it on a cooler day."
                        : "Sweat differs by half and more between riders: weigh yourself before and after an hour's ride.");
    }

    /** Water to leave the start with, apart from what is drunk. */
    private String carry() {
        if (plan.fluids().gaps().isEmpty()) {
            return "Where bottles can be filled is not given, so what to carry from where is not known.";
        }
        return "Water to carry is worked out separately from water to drink: enough, even at the slow estimate, to have sweated off no more"
                + " than 2 % of your mass by the next tap, plus 15 %. " + water();
    }

    /** How much to leave the start with, and the most from a tap. */
    private String water() {
        if (plan.fluids().gaps().isEmpty()) {
            return "";
        }
        SupplyGap most = summary.water().most();
        return "Leave the start with " + litres(plan.fluids().gaps().get(0).carry()) + "."
                + (most == plan.fluids().gaps().get(0) ? "" : " The most is " + litres(most.carry()) + ", from " + Phrases.number(most.from() / 1000, 1) + " km.")
                + (summary.water().cooling() ? NOT_TO_DRINK : "") + (summary.water().overCapacity() ? TOO_MUCH : "");
    }

    /** Sunrise and sunset, and how the finish stands to them. */
    private String light() {
        DaylightTimes light = plan.light();
        if (light == null) {
            return "Without the date and the place of the ride, when it is light is not known.";
        }
        String sun = Double.isNaN(light.rise()) || Double.isNaN(light.set()) ? "The sun does not both rise and set that day"
                : "Sunrise " + ofDay(light.rise()) + ", sunset " + ofDay(light.set()) + dusk(light);
        String lights = brief.on(Topics.LIGHTS).value() == null ? "" : "; lights: " + brief.on(Topics.LIGHTS).text();
        if (summary.beforeSunset() == null) {
            return sun + lights + ".";
        }
        String early = plan.start() < light.rise() ? "; the start is " + span(light.rise() - plan.start()) + " before sunrise" : "";
        return sun + early + finish() + lights + ".";
    }

    private String finish() {
        double left = summary.beforeSunset();
        if (summary.nextDay()) {
            Range after = summary.places().get(summary.places().size() - 1).get(0).after();
            return "; you will probably finish " + fromSunset(left + after.high() - after.mid()) + ", and at the slow estimate the next day";
        }
        return (left >= 0 ? "; even at the slow estimate you finish " : "; at the slow estimate you finish ") + fromSunset(left);
    }

    private static String fromSunset(double before) {
        return span(Math.abs(before)) + (before >= 0 ? " before sunset" : " after sunset");
    }

    private static String dusk(DaylightTimes light) {
        return Double.isNaN(light.dusk()) || Double.isNaN(light.dawn()) ? ", no real dark" : ", dark before " + ofDay(light.dawn()) + " and after "
                + ofDay(light.dusk());
    }

    /** What power the times rest on, and how it is shared out. */
    private String power() {
        RideEstimate estimate = brief.demands().estimated().estimate();
        String parts = power("", estimate.powerOn(RideEstimate.CLIMBING, 1), "uphill");
        parts = power(parts, estimate.powerOn(-RideEstimate.LEVEL, RideEstimate.LEVEL), "on the level");
        parts = power(parts, estimate.powerOn(-1, -RideEstimate.CLIMBING), "downhill");
        String walked = DayPlan.walks(estimate.walked()) ? "about " + span(estimate.walked()) + " of it on foot, pushing the bike." : "";
        if (parts.isEmpty()) {
            return "Next to none of it is ridden: " + walked;
        }
        long falls = Math.round(100 * Endurance.fade(estimate.riding().mid()).mid());
        return "Times assume about " + parts + (falls > 0 ? ", fading " + falls + " % by the finish" : "")
                + ". Push where power gains most time, ease off where it gains least." + (walked.isEmpty() ? "" : " These watts are for riding; " + walked);
    }

    private static String power(String before, Range watts, String where) {
        if (watts == null) {
            return before;
        }
        boolean sure = fives(watts.low()) == fives(watts.high());
        String ends = sure ? " W " : " W (" + fives(watts.low()) + " to " + fives(watts.high()) + ") ";
        String here = fives(watts.mid()) + ends + where;
        return before.isEmpty() ? here : before + ", " + here;
    }

    private static long fives(double watts) {
        return 5 * Math.round(watts / 5);
    }
}
