package courseworthy.checklist;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.claim.Deadline;
import courseworthy.worth.PitPlan;
import courseworthy.worth.PitPlan.PitChoice;
import courseworthy.worth.PitPlan.Kind;
import courseworthy.worth.PitPlan.PitPassage;
import courseworthy.worth.PitPlan.PitStop;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** What waits in the pits of a race of laps as things to do: wheels and a second bike two days before, bottles on the morning. */
final class PitItems {

    private static final String WHEELS = "wheels";
    private static final double MINUTE = 60;
    private static final double KILOMETRE = 1000;
    /** A bottle filled and marked, min (common practice, no source). */
    private static final double BOTTLE_MINUTES = 2;

    private final PitPlan plan;
    private final List<PendingItem> items = new ArrayList<>();

    private PitItems(PitPlan plan) {
        this.plan = plan;
    }

    /** Empty where there are no pits. */
    static List<PendingItem> of(PitPlan plan) {
        PitItems out = new PitItems(plan);
        plan.choices().forEach(out::add);
        plan.pits().stream().filter(each -> each.pit().bottles()).forEach(out::bottles);
        return out.items;
    }

    private void add(PitChoice choice) {
        double minutes = choice.work() / MINUTE;
        String wheels = places(each -> each.pit().wheels());
        switch (choice.kind()) {
            case SPARE_WHEELS -> add(Deadline.TWO_DAYS_BEFORE, new ChecklistItem("Get the spare wheels ready for the pit" + wheels,
                    "Front " + plan.wheels().front() + ", rear " + plan.wheels().rear() + "; wheels true, rotors and cassette as on the bike",
                    "After a puncture that no plug holds, wheels in the pit are what gets you going again.", true, WHEELS, "", null, minutes));
            case WET_WHEELS -> add(Deadline.TWO_DAYS_BEFORE, new ChecklistItem("Get wheels for the wet ready for the pit" + wheels,
                    sentence(String.join(", ", plan.wetTyres())) + "; beads seated, pressure held overnight; rotors and cassette as on the bike", saving(choice), true, WHEELS, "", null, minutes));
            case SECOND_BIKE -> add(Deadline.TWO_DAYS_BEFORE, new ChecklistItem("Get the second bike ready for the pit" + places(each -> each.pit().bike()),
                    "Saddle, bar, tyres and gears as on the first; brakes, axles and bolts checked, ridden once",
                    "A bike that fits and brakes like the first is the quickest way out of a fault that wheels do not mend.", true, "frame", "", null, minutes));
        }
    }

    private static String saving(PitChoice choice) {
        String cost = "If it turns, changing to them costs " + Math.round(choice.exchange().mid()) + " s; ";
        if (choice.worth() != null && choice.worth().wet() != null && !choice.worth().wet().canPay()) {
            return cost + "by time they cannot pay for that on this course: they are there for control, or after a flat.";
        }
        return cost + "it pays where they save " + Math.round(choice.pays().mid()) + " s a lap over "
                + laps(choice.laps()) + ".";
    }

    private static String laps(int laps) {
        return laps == 1 ? "the lap left" : "the " + laps + " laps left";
    }

    /** The bottles that are handed up or taken at a pit, and one in reserve. */
    private void bottles(PitStop stop) {
        List<String> laps = stop.passages().stream().filter(PitPassage::bottle).map(each -> Integer.toString(each.lap())).toList();
        long count = stop.bottles() + 1;
        add(Deadline.RACE_MORNING, new ChecklistItem("Fill the bottles for the pit" + at(List.of(stop)), count + (count == 1 ? " bottle" : " bottles") + " of " + litres(PitPlan.BOTTLE)
                + (laps.isEmpty() ? ", kept in reserve" : ", marked for lap" + (laps.size() == 1 ? " " : "s ") + list(laps) + ", and one in reserve"),
                "What you drink on the way is counted from the bottles that wait there.", false, "food and water", "", null, BOTTLE_MINUTES * count));
    }

    private void add(Deadline due, ChecklistItem item) {
        items.add(new PendingItem(item, "pit/" + (items.size() < 10 ? "0" : "") + items.size(), due, 0, List.of()));
    }

    /** {@code at the start and km 3.2 of the lap}. */
    private String places(Predicate<PitStop> which) {
        return at(plan.pits().stream().filter(which).toList());
    }

    private static String at(List<PitStop> stops) {
        return " at " + String.join(" and ", stops.stream().map(each -> each.pit().at() == 0 ? "the start" : "km " + String.format(Locale.ROOT, "%.1f", each.pit().at() / KILOMETRE)).toList())
                + " of the lap";
    }

    private static String list(List<String> laps) {
        int last = laps.size() - 1;
        return last < 1 ? laps.get(0) : String.join(", ", laps.subList(0, last)) + " and " + laps.get(last);
    }

    private static String litres(double litres) {
        return String.format(Locale.ROOT, "%.1f L", litres);
    }

    private static String sentence(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
