package courseworthy.report;

import courseworthy.demand.DayDemands.Ascent;
import courseworthy.demand.DayDemands.Stop;
import courseworthy.demand.FluidBalance;
import courseworthy.ride.Endurance;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import courseworthy.task.Brief;
import courseworthy.units.RuleValue;
import courseworthy.worth.DayPlan;
import courseworthy.worth.DayPlan.Gap;
import courseworthy.worth.DayPlan.Hour;
import courseworthy.worth.DayPlan.Kind;
import courseworthy.worth.DayPlan.Light;
import courseworthy.worth.DayPlan.Split;
import courseworthy.worth.PlanB;
import java.util.ArrayList;
import java.util.List;

/** The day's plan and what changes if the forecast turns, in rows and sentences, the same for terminal and page. */
final class PlanWords {

    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;
    private static final double MINUTE = 60;
    /** Splits nearer to each other than this share a row, m. */
    private static final double TOGETHER = 150;
    /** So many rows of hours at most; longer days are told by two, three or more hours. */
    private static final int MOST_ROWS = 12;
    /** From here on heat needs a word, C (common practice, no source). */
    private static final double HOT = 28;
    /** kcal in a gram of carbohydrate (Atwater's factor, from memory). */
    private static final double KCAL_PER_GRAM = 4;
    private static final double KJ = 1000;
    /**
     * Sodium and carbohydrate to a litre drunk on rides over an hour and a half, as advised: 400 to 1100 mg, 4 to 8 % (sodium: published
     * advice; carbohydrate: Thomas, Erdman and Burke 2016, Med. Sci. Sports Exerc. 48:543). Trials of more sodium by the hour found
     * no gain in four of five (McCubbin and Costa 2018), so none is asked for by the hour.
     */
    private static final String SODIUM = "400 to 1100 mg of sodium and 40 to 80 g of carbohydrate to the litre";

    private PlanWords() {
    }

    /** A row of the splits. */
    record Place(String at, String time, String what) {
    }

    /** What stands over the hours, in the order of {@link Needs}. */
    static final List<String> NEEDS = List.of("hours", "kJ of work", "kcal used", "g carbohydrate", "L to drink", "up to C");

    /** A row of the hours, numbers with their ranges. */
    record Needs(String hour, String work, String energy, String food, String drink, String temperature) {
    }

    /** The day's splits that belong in a short plan, those at one place together. */
    static List<Place> places(DayPlan plan) {
        List<Place> out = new ArrayList<>();
        Split first = null;
        StringBuilder what = new StringBuilder();
        for (Split split : plan.splits()) {
            if (first != null && (split.at() - first.at() > TOGETHER || split.kind() == Kind.FOOT || split.kind() == Kind.TOP)) {
                out.add(place(plan, first, what.toString()));
                first = null;
            }
            if (first == null) {
                first = split;
                what.setLength(0);
            }
            what.append(what.length() == 0 ? "" : "; ").append(what(plan, split));
        }
        out.add(place(plan, first, what.toString()));
        return out;
    }

    private static Place place(DayPlan plan, Split split, String what) {
        return new Place(Phrases.number(split.at() / 1000, 1) + " km", time(plan, split.after()), what);
    }

    private static String what(DayPlan plan, Split split) {
        return switch (split.kind()) {
            case FOOT -> "foot of " + climb(split.climb());
            case TOP -> "top of it, up " + Phrases.number(split.climb().rise(), 0) + " m";
            case LAP -> "end of lap " + split.lap();
            case SUPPORT -> support(plan, split);
            case CUT_OFF -> cutoff(plan, split);
            case FINISH -> "finish" + (split.latest() == null ? "" : "; " + cutoff(plan, split));
        };
    }

    static String climb(Ascent climb) {
        double length = climb.top() - climb.foot();
        return Figures.distance(length) + " at " + Phrases.number(100 * climb.rise() / length, 1) + " %";
    }

    private static String support(DayPlan plan, Split split) {
        Stop stop = split.stop();
        String out = (stop.water() ? "water" : "") + (stop.food() ? stop.water() ? ", food" : "food" : "");
        out = out + (stop.bag() ? out.isEmpty() ? "own bag" : ", own bag" : "");
        Gap gap = stop.water() ? gap(plan, split.at()) : null;
        return out + (gap == null ? "" : ": leave with " + litres(gap.carry()));
    }

    private static Gap gap(DayPlan plan, double from) {
        for (Gap gap : plan.gaps()) {
            if (Math.abs(gap.from() - from) < 1) {
                return gap;
            }
        }
        return null;
    }

    private static String cutoff(DayPlan plan, Split split) {
        double latest = split.latest();
        String limit = "cut-off " + (plan.start() == null ? clock(latest) + " h" : ofDay(plan.start() + latest)) + ": ";
        Range after = split.after();
        return limit + switch (split.stands()) {
            case IN_TIME -> "the slow end has " + clock(latest - after.high()) + " h to spare";
            case SLOW_END_MISSES -> "the slow end misses it by " + clock(after.high() - latest) + " h, the likely time has "
                    + clock(latest - after.mid()) + " h to spare";
            case MIDDLE_MISSES -> "the likely time misses it by " + clock(after.mid() - latest) + " h, the fast end has "
                    + clock(latest - after.low()) + " h to spare";
            case ALL_MISS -> "even the fast end misses it by " + clock(after.low() - latest) + " h";
        };
    }

    /** A time from the start with its range: by the clock where the start is known. */
    static String time(DayPlan plan, Range after) {
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

    /** What each hour asks; several hours to a row on long days. */
    static List<Needs> needs(DayPlan plan) {
        List<Needs> out = new ArrayList<>();
        List<Hour> hours = plan.hours();
        int step = 1;
        while (hours.size() > step * MOST_ROWS) {
            step++;
        }
        for (int i = 0; i < hours.size(); i += step) {
            out.add(needs(plan, hours.subList(i, Math.min(hours.size(), i + step)), i));
        }
        return out;
    }

    private static Needs needs(DayPlan plan, List<Hour> hours, int first) {
        double[] work = new double[3];
        double[] energy = new double[3];
        double[] food = new double[3];
        double[] drink = new double[3];
        Double hot = null;
        for (Hour hour : hours) {
            add(work, hour.work());
            add(energy, hour.energy());
            add(food, hour.carbohydrate());
            add(drink, hour.drink());
            if (hour.temperature() != null) {
                hot = hot == null ? hour.temperature() : Double.valueOf(Math.max(hot, hour.temperature()));
            }
        }
        String name = clock(hours.get(0).from()) + " to " + clock(hours.get(hours.size() - 1).to());
        return new Needs(name, ends(work, 1 / KJ, 10, ""), ends(energy, 1 / DayPlan.KCAL, 10, ""), plan.carbohydrateRate() == null
                ? "" : ends(food, 1, 1, ""), tenths(drink), hot == null ? "" : Phrases.number(hot, 0));
    }

    private static void add(double[] sum, Range range) {
        sum[0] += range.low();
        sum[1] += range.mid();
        sum[2] += range.high();
    }

    /** {@code 650 kcal (560 to 760)}, rounded to what it is good for. */
    private static String ends(double[] ends, double factor, double step, String unit) {
        String low = rounded(ends[0] * factor, step);
        String high = rounded(ends[2] * factor, step);
        return rounded(ends[1] * factor, step) + unit + (low.equals(high) ? "" : " (" + low + " to " + high + ")");
    }

    private static String rounded(double value, double step) {
        return Phrases.number(Math.round(value / step) * step, 0);
    }

    private static String ends(Range range, double factor, double step, String unit) {
        return ends(new double[] {range.low(), range.mid(), range.high()}, factor, step, unit);
    }

    private static String tenths(double[] ends) {
        String low = Phrases.number(ends[0], 1);
        String high = Phrases.number(ends[2], 1);
        return Phrases.number(ends[1], 1) + (low.equals(high) ? "" : " (" + low + " to " + high + ")");
    }

    static String litres(Range litres) {
        return Figures.range(litres, 1, "L");
    }

    /** The day's sums, and what to mind of food and drink. */
    static List<String> fuel(DayPlan plan) {
        List<String> out = new ArrayList<>();
        out.add("In all " + ends(plan.work(), 1 / KJ, 50, " kJ") + " at the pedals, " + ends(plan.energy(), 1 / DayPlan.KCAL, 50, " kcal")
                + " used, at a gross efficiency of 20 to 24 %" + (plan.walked() < WALKED ? "" : " and what walking takes") + ".");
        if (plan.carbohydrateRate() != null) {
            Range rate = plan.carbohydrateRate();
            double used = plan.energy().mid() / DayPlan.KCAL;
            String share = used < 1 ? "" : ", about " + Phrases.number(100 * plan.food().mid() * KCAL_PER_GRAM / used, 0)
                    + " % of what is used; the body's stores give the rest";
            out.add("To eat: " + ends(plan.food(), 1, 10, " g") + " of carbohydrate, " + ends(rate, 1, 1, " g") + " an hour" + share + "."
                    + (rate.high() > 60 ? " Above 60 g an hour only as mixed sugars, and only where it was practised." : ""));
        }
        out.add("Drink to thirst: about " + litres(plan.drink()) + " over the day, never more than you sweat, nor more than 1 L an hour, the"
                + " most a stomach is shown to pass.");
        out.add(loss(plan));
        if (plan.hours().get(plan.hours().size() - 1).to() > 1.5 * HOUR) {
            out.add("From an hour and a half on " + SODIUM + " are usual.");
        }
        if (hottest(plan) >= HOT) {
            out.add("In heat start slower, cool head and arms with water at each tap, and stop with dizziness, chills or confusion. Who is"
                    + " ill, pregnant, or on medication asks a doctor first.");
        } else {
            out.add("Who is ill, pregnant, or on medication asks a doctor first.");
        }
        return out;
    }

    /** Loss beyond which nobody should ride on, % of mass (ISO 7933: the limit that protects 95 % of workers). */
    private static final double DANGEROUS = 5;

    /** What is sweated and not drunk, and what that does. */
    private static String loss(DayPlan plan) {
        Range share = plan.behindShare().times(100);
        return "You finish about " + Phrases.number(plan.behind().mid(), 1) + " kg lighter by sweat, " + Phrases.number(share.mid(), 1)
                + " % of your mass" + (share.high() > DANGEROUS ? ", and much more if you sweat more than most. " : ". ") + (share.mid() > 100 * FluidBalance.ALLOWED + 0.05
                ? "That is more than 2 %, which costs power in heat: start slower, cool head and arms, and stop early if you feel unwell. "
                : "Over 2 % costs power in heat; in the cool at your own pace that is disputed. ")
                + (plan.sweatKnown() ? "Your own sweat rate is taken as it stands: carry more if you weighed it on a cooler day."
                        : "Sweat differs by half and more between riders: weigh yourself before and after an hour's ride.");
    }

    private static double hottest(DayPlan plan) {
        double hottest = -Double.MAX_VALUE;
        for (Hour hour : plan.hours()) {
            hottest = hour.temperature() == null ? hottest : Math.max(hottest, hour.temperature());
        }
        return hottest;
    }

    /** Half a step of what rules compare water in, L (arithmetic). */
    private static final double HALF_A_STEP = 0.05;
    private static final String NOT_TO_DRINK = " What is over 1 L an hour of it is not to drink: pour it over head and arms, where it cools as well.";
    private static final String TOO_MUCH = " Bottles and a pack hold " + RuleValue.BOTTLES_WITH_PACK.text()
            + ", so this cannot be carried: filter or buy water on the way, ask the organiser for a point, ride slower, start at a cooler hour or on another day, or do not start.";

    /** What power the times rest on, and how it is shared out. */
    static String power(Brief brief) {
        RideEstimate estimate = brief.demands().estimated().estimate();
        String parts = power("", estimate.powerOn(RideEstimate.CLIMBING, 1), "uphill");
        parts = power(parts, estimate.powerOn(-RideEstimate.LEVEL, RideEstimate.LEVEL), "on the level");
        parts = power(parts, estimate.powerOn(-1, -RideEstimate.CLIMBING), "downhill");
        if (parts.isEmpty()) {
            return "Next to none of it is ridden:" + onFoot(estimate.walked()).replace(" They are of the riding alone;", "");
        }
        long falls = Math.round(100 * Endurance.fade(estimate.riding().mid()).mid());
        return "The times rest on about " + parts + (falls > 0 ? ", falling by " + falls + " % from start to finish" : "")
                + ": harder where power buys most time, easing where it buys least." + onFoot(estimate.walked());
    }

    /** Less on foot needs no word, s. */
    private static final double WALKED = 30;

    private static String onFoot(double seconds) {
        return seconds < WALKED ? "" : " They are of the riding alone; about " + clock(seconds) + " h of it is walked, pushing the bike.";
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

    /** Water to leave the start with, apart from what is drunk. */
    static String carry(DayPlan plan) {
        if (plan.gaps().isEmpty()) {
            return "Where bottles can be filled is not written, so what to carry from where is not known.";
        }
        Gap most = plan.gaps().get(0);
        for (Gap gap : plan.gaps()) {
            most = gap.carry().mid() > most.carry().mid() + 0.05 ? gap : most;
        }
        return "Water to carry is worked out separately from water to drink: enough at the slow estimate to stay within 2 % of your mass to the"
                + " next tap in that heat, plus 15 %. Leave the start with " + litres(plan.gaps().get(0).carry()) + "."
                + (most == plan.gaps().get(0) ? "" : " The most is " + litres(most.carry()) + ", from " + Phrases.number(most.from() / 1000, 1)
                + " km.") + (plan.gaps().stream().anyMatch(gap -> overDrinking(plan, gap)) ? NOT_TO_DRINK : "")
                + (most.carry().mid() >= RuleValue.BOTTLES_WITH_PACK.inBase() + HALF_A_STEP ? TOO_MUCH : "");
    }

    /** Whether more is carried over a gap than may be drunk on it at the slow estimate. */
    private static boolean overDrinking(DayPlan plan, Gap gap) {
        double hours = (slowest(plan, gap.to()) - slowest(plan, gap.from())) / HOUR;
        return gap.carry().mid() > Math.max(1, FluidBalance.STOMACH * hours) + 0.05;
    }

    private static double slowest(DayPlan plan, double at) {
        double after = 0;
        for (DayPlan.Split split : plan.splits()) {
            after = split.at() <= at + 1 ? Math.max(after, split.after().high()) : after;
        }
        return after;
    }

    /** Sunrise and sunset, and how the finish stands to them; empty where date or place are not known. */
    static String light(DayPlan plan, Brief brief) {
        Light light = plan.light();
        if (light == null) {
            return "Date or place are not written, so when it is light is not known.";
        }
        String sun = Double.isNaN(light.rise()) || Double.isNaN(light.set()) ? "The sun does not both rise and set that day"
                : "Sunrise " + ofDay(light.rise()) + ", sunset " + ofDay(light.set()) + dusk(light);
        String lights = brief.on("lights").value() == null ? "" : "; lights: " + brief.on("lights").text();
        if (plan.start() == null || Double.isNaN(light.set())) {
            return sun + lights + ".";
        }
        double slow = plan.start() + plan.splits().get(plan.splits().size() - 1).after().high();
        double left = light.set() - slow;
        String end = slow > DAY ? "; the slow end finishes next day" : left >= 0 ? "; the slow end finishes " + clock(left) + " h before sunset"
                : "; the slow end finishes " + clock(-left) + " h after sunset";
        String early = plan.start() < light.rise() ? "; the start is " + clock(light.rise() - plan.start()) + " h before sunrise" : "";
        return sun + early + end + lights + ".";
    }

    private static String dusk(Light light) {
        return Double.isNaN(light.dusk()) || Double.isNaN(light.dawn()) ? ", no real dark" : ", dark before " + ofDay(light.dawn()) + " and after "
                + ofDay(light.dusk());
    }

    /** Latest times past the finish. */
    static List<String> beyond(DayPlan plan) {
        List<String> out = new ArrayList<>();
        for (double at : plan.beyond()) {
            out.add("A cut-off is written for " + Phrases.number(at / 1000, 1) + " km, which is not before the finish: check it.");
        }
        return out;
    }

    static String turns(PlanB other) {
        return "If it turns " + other.turns();
    }

    /** The time of the day then. */
    static String about(PlanB other) {
        return "About " + clock(other.time().mid()) + " h (" + clock(other.time().low()) + " to " + clock(other.time().high()) + ").";
    }

    /** The last moment to begin: {@code 7:05}, {@code 18:55 the day before}. */
    static String latest(PlanB.Line line, DayPlan plan) {
        return plan == null || plan.start() == null ? clock(-line.latest()) + " h before" : ofDay(plan.start() + line.latest());
    }

    /** How long each change takes: {@code Takes: tyres 12:45 h (estimate)}. */
    static String takes(PlanB other) {
        StringBuilder out = new StringBuilder();
        for (PlanB.Line line : other.lines()) {
            String each = line.change() + " " + clock(line.takes()) + " h" + (line.written() ? "" : " (estimate)");
            if (out.indexOf(each) < 0) {
                out.append(out.length() == 0 ? "Takes: " : ", ").append(each);
            }
        }
        return out.append(". ").append(LAST_MOMENT).toString();
    }

    private static final String LAST_MOMENT = "One pair of hands makes all of them one after another, and waits run beside the work; the bike is in the"
            + " line-up 20 min before the start. Times you know go under time to change in the event.";

    /** What would have to change and stays; empty where nothing has to. */
    static String lacking(PlanB other) {
        StringBuilder out = new StringBuilder();
        for (PlanB.Lacking each : other.lacking()) {
            out.append(out.length() == 0 ? "Called for then, and not met by your parts: " : "; ").append(each.topic()).append(' ').append(each.wanted())
                    .append(", stays ").append(each.has());
        }
        return out.length() == 0 ? "" : out.append('.').toString();
    }

    /** Where no line differs. */
    static String nothingDiffers(PlanB other) {
        return other.lacking().isEmpty() ? "The call stays as it is." : "Nothing on the build changes.";
    }
}
