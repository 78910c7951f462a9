package courseworthy.worth;

import courseworthy.demand.FluidBalance;
import courseworthy.ride.Range;
import courseworthy.units.RuleValue;
import courseworthy.worth.DayPlan.SupplyGap;
import courseworthy.worth.DayPlan.PlanHour;
import courseworthy.worth.DayPlan.Kind;
import courseworthy.worth.DayPlan.Split;
import java.util.ArrayList;
import java.util.List;

/**
 * A day's plan drawn together for a page: its places row by row, its hours in a few rows, and what stands out among its figures.
 *
 * @param places            the splits of the short plan, those at one place together
 * @param hours             the hours; several of them together on a long day
 * @param water             to carry
 * @param hot               somewhere on the way heat calls for care
 * @param carbohydrateShare of the energy used that what is eaten gives; null where nothing is used
 * @param lossCostsPower    the likely loss of mass is more than costs power in heat
 * @param lossDangerous     the loss of a rider who sweats much is one at which to stop
 * @param beforeSunset      how long before sunset the slow estimate finishes, s, below 0 after it; null where that is not known
 * @param nextDay           the slow estimate finishes after midnight
 */
public record DayPlanSummary(List<List<Split>> places, List<PlanHour> hours, CarriedWater water, boolean hot, Double carbohydrateShare,
        boolean lossCostsPower, boolean lossDangerous, Double beforeSunset, boolean nextDay) {

    /** An hour and a day, s; exact by definition. */
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;
    /** Splits nearer to each other than this are at one place, m (judgement). */
    private static final double TOGETHER = 150;
    /** So many rows of hours at most; longer days have two, three or more hours to a row (judgement: a table that is read at a glance). */
    private static final int MOST_ROWS = 12;
    /** From here on heat calls for care, C (common practice, no source). */
    private static final double HOT = 28;
    /** kcal in a gram of carbohydrate (Atwater's factor, from memory). */
    private static final double KCAL_PER_GRAM = 4;
    /** Figures of water are shown to a tenth of a litre, L: half of that (computing). */
    private static final double HALF_SHOWN = 0.05;
    /** Loss beyond which nobody should ride on, as a share of mass (ISO 7933: the limit that protects 95 % of workers). */
    private static final double DANGEROUS = 0.05;
    /** Shares of mass are shown to a tenth of a percent: half of that (computing). */
    private static final double HALF_SHOWN_SHARE = 0.0005;

    /**
     * Water to carry.
     *
     * @param most         the most to leave a place with; null where the gaps are not known
     * @param cooling      more is carried than can be drunk on the way
     * @param overCapacity more is needed than bottles and a pack hold
     */
    public record CarriedWater(SupplyGap most, boolean cooling, boolean overCapacity) {
    }

    public DayPlanSummary {
        places = List.copyOf(places);
        hours = List.copyOf(hours);
    }

    public static DayPlanSummary of(DayPlan plan) {
        double used = plan.energy().used().mid() / DayPlan.KCAL;
        Double left = beforeSunset(plan);
        return new DayPlanSummary(places(plan.splits()), rows(plan.hours()), water(plan), hot(plan.hours()),
                used < 1 ? null : Double.valueOf(plan.energy().food().mid() * KCAL_PER_GRAM / used),
                plan.fluids().lossShare().mid() > FluidBalance.ALLOWED + HALF_SHOWN_SHARE, plan.fluids().lossShare().high() > DANGEROUS, left,
                plan.start() != null && plan.start() + finish(plan).after().high() > DAY);
    }

    private static CarriedWater water(DayPlan plan) {
        List<SupplyGap> gaps = plan.fluids().gaps();
        SupplyGap most = mostCarried(gaps);
        return new CarriedWater(most, gaps.stream().anyMatch(gap -> exceedsDrinking(plan, gap)),
                most != null && most.carry().mid() >= RuleValue.BOTTLES_WITH_PACK.inBase() + HALF_SHOWN);
    }

    private static List<List<Split>> places(List<Split> splits) {
        List<List<Split>> out = new ArrayList<>();
        for (Split split : splits) {
            List<Split> last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && split.at() - last.get(0).at() <= TOGETHER && split.kind() != Kind.FOOT && split.kind() != Kind.TOP) {
                last.add(split);
            } else {
                out.add(new ArrayList<>(List.of(split)));
            }
        }
        return out.stream().map(List::copyOf).toList();
    }

    private static List<PlanHour> rows(List<PlanHour> hours) {
        int step = Math.max(1, (hours.size() + MOST_ROWS - 1) / MOST_ROWS);
        List<PlanHour> out = new ArrayList<>();
        for (int i = 0; i < hours.size(); i += step) {
            out.add(together(hours.subList(i, Math.min(hours.size(), i + step))));
        }
        return out;
    }

    /** Several hours as one: sums, and the highest temperature; weather is given hour by hour. */
    private static PlanHour together(List<PlanHour> hours) {
        PlanHour out = hours.get(0);
        for (PlanHour hour : hours.subList(1, hours.size())) {
            Double hottest = out.temperature() == null ? hour.temperature() : hour.temperature() == null ? out.temperature()
                    : Double.valueOf(Math.max(out.temperature(), hour.temperature()));
            out = new PlanHour(out.from(), hour.to(), sum(out.work(), hour.work()), sum(out.energy(), hour.energy()),
                    sum(out.carbohydrate(), hour.carbohydrate()), sum(out.drink(), hour.drink()), sum(out.sweat(), hour.sweat()), hottest, null);
        }
        return out;
    }

    /** Ends add up: who eats or drinks little does so all day. */
    private static Range sum(Range one, Range other) {
        return new Range(one.low() + other.low(), one.mid() + other.mid(), one.high() + other.high());
    }

    /** The first of those that are as much as any, as shown. */
    private static SupplyGap mostCarried(List<SupplyGap> gaps) {
        SupplyGap most = null;
        for (SupplyGap gap : gaps) {
            most = most == null || gap.carry().mid() > most.carry().mid() + HALF_SHOWN ? gap : most;
        }
        return most;
    }

    /** Whether more is carried over a gap, beside the reserve, than may be drunk on it at the slow estimate. */
    private static boolean exceedsDrinking(DayPlan plan, SupplyGap gap) {
        double hours = (slowest(plan, gap.to()) - slowest(plan, gap.from())) / HOUR;
        return gap.carry().mid() > FluidBalance.RESERVE * Math.max(1, FluidBalance.STOMACH * hours) + HALF_SHOWN;
    }

    private static double slowest(DayPlan plan, double at) {
        double after = 0;
        for (Split split : plan.splits()) {
            after = split.at() <= at + 1 ? Math.max(after, split.after().high()) : after;
        }
        return after;
    }

    /** The first of the hottest hours; null where no temperature is known. */
    public static PlanHour hottest(List<PlanHour> hours) {
        PlanHour out = null;
        for (PlanHour hour : hours) {
            out = hour.temperature() != null && (out == null || hour.temperature() > out.temperature()) ? hour : out;
        }
        return out;
    }

    private static boolean hot(List<PlanHour> hours) {
        return hours.stream().anyMatch(hour -> hour.temperature() != null && hour.temperature() >= HOT);
    }

    private static Split finish(DayPlan plan) {
        return plan.splits().get(plan.splits().size() - 1);
    }

    private static Double beforeSunset(DayPlan plan) {
        boolean known = plan.light() != null && plan.start() != null && !Double.isNaN(plan.light().set());
        return known ? Double.valueOf(plan.light().set() - plan.start() - finish(plan).after().high()) : null;
    }
}
