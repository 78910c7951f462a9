package courseworthy.stage;

import courseworthy.decision.Decision;
import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.wear.WearCounter.Outlook;
import courseworthy.workshop.PartKind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Packs the bag for the days of a stage race: spares by count, food by hours. What one day carries comes from that day's decisions. */
public final class WeekBag {

    /** One puncture that uses up what is carried is allowed for in so many days (common practice, no source). */
    private static final int DAYS_A_REFILL = 3;
    /** A spare is taken of what may use up so much of its interval over the race, although none of it falls due (judgement, no source). */
    private static final double HALF = 0.5;
    /** For each tyre once more on the way, as after a large hole (common practice, no source). */
    private static final int TOP_UPS = 2;
    private static final double HOUR = 3600;
    private static final double ML = 1000;
    private static final Map<PartKind, String> SPARES = new EnumMap<>(Map.of(PartKind.CHAIN, "chains", PartKind.PADS, "pairs of brake pads", PartKind.TYRE, "tyres"));

    private final List<StageDay> days;
    private final List<Outlook> wear;
    private final List<BagItem> out = new ArrayList<>();

    private WeekBag(List<StageDay> days, List<Outlook> wear) {
        this.days = days;
        this.wear = wear;
    }

    public static List<BagItem> of(List<StageDay> days, List<Outlook> wear) {
        WeekBag bag = new WeekBag(days, wear);
        bag.food();
        bag.refilled(Topics.TUBES);
        bag.refilled(Topics.PLUGS);
        bag.sealant();
        SPARES.forEach(bag::worn);
        bag.small();
        return bag.out;
    }

    /** Carbohydrate of a day, g; null where the hours or the decision are not known. */
    public static Range carbohydrate(StageDay day) {
        Decision food = day.settled().on(Topics.FOOD);
        return food.value() == null || day.hours() == null ? null : day.hours().times(food.value() / HOUR);
    }

    private void food() {
        double low = 0;
        double high = 0;
        for (StageDay day : days) {
            Range grams = carbohydrate(day);
            low += grams == null ? 0 : grams.low();
            high += grams == null ? 0 : grams.high();
        }
        if (high > 0) {
            out.add(new BagItem("carbohydrate for the bike", round(low, 10), round(high, 10), "g", "Grams an hour times each day's hours, from the fastest to the slowest estimate; less what you eat at support points."));
        }
    }

    private static long round(double value, int to) {
        return Math.round(value / to) * to;
    }

    private long most(Topic topic) {
        return days.stream().map(day -> day.settled().on(topic).value()).filter(each -> each != null).mapToLong(each -> each).max().orElse(0);
    }

    private void refilled(Topic topic) {
        long carried = most(topic);
        long refills = (days.size() - 1) / DAYS_A_REFILL + (days.size() > 1 ? 1 : 0);
        if (carried > 0) {
            out.add(new BagItem(topic.name(), carried * (1 + refills), carried * (1 + refills), "", carried + " on the bike"
                    + (refills == 0 ? "." : ", and as many again for every " + DAYS_A_REFILL + " days after the first, or part of them (common practice, no source).")));
        }
    }

    private void sealant() {
        boolean tubeless = days.stream().anyMatch(day -> day.settled().on(Topics.REAR_SEALANT).text().equals("tubeless"));
        Outlook of = wear.stream().filter(each -> each.part().kind() == PartKind.SEALANT).findFirst().orElse(null);
        if (tubeless && of != null && days.size() > 1) {
            long each = Math.round(of.interval().work().amount() * ML);
            out.add(new BagItem("sealant", each * TOP_UPS, each * TOP_UPS, "mL", each + " mL a tyre: one top-up of both (common practice, no source)."));
        }
    }

    private void worn(PartKind kind, String name) {
        long due = 0;
        long reserve = 0;
        for (Outlook each : wear) {
            if (each.part().kind() == kind && each.interval().job().equals("renew")) {
                long before = each.due().stream().filter(day -> day == 0).count();
                due += each.due().size() - before;
                reserve += each.due().size() == before && each.used().high() >= HALF ? 1 : 0;
            }
        }
        boolean cut = kind == PartKind.TYRE && days.size() > 1 && due + reserve == 0;
        if (due + reserve > 0 || cut) {
            out.add(new BagItem(name, due, due + reserve + (cut ? 1 : 0), "", cut ? "None should wear out; a tyre that is cut open cannot be repaired (common practice, no source)."
                    : (due == 0 ? "None should fall due on the way" : due + " may fall due on the way") + (reserve == 0 ? "." : "; " + reserve + " may use up half of " + (reserve == 1 ? "its" : "their") + " life or more.")));
        }
    }

    private void small() {
        boolean links = days.stream().anyMatch(day -> day.settled().on(Topics.SPARES).value() != null && day.settled().on(Topics.SPARES).value() > 0);
        if (links && days.size() > 1) {
            out.add(new BagItem("quick links for the chain", 2, 2, "", "One on the bike, one in the bag (common practice, no source)."));
        }
        boolean hanger = days.stream().anyMatch(day -> day.settled().on(Topics.SPARES).text().contains("hanger"));
        if (hanger && days.size() > 1) {
            out.add(new BagItem("derailleur hangers", 2, 2, "", "One on the bike, one in the bag (common practice, no source)."));
        }
        out.add(new BagItem("doses of chain lubricant", days.size(), days.size(), "", "The chain is cleaned and lubricated every evening."));
    }
}
