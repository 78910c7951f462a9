package courseworthy.wear;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Service, renewal and shopping over a season.
 *
 * @param work      by evening, in the order in which it is done
 * @param purchases by the day on which each is needed
 * @param hours     what was ridden on each part by the last day of the log
 * @param notes     what the plan rests on and what it leaves out, in sentences
 */
public record UpkeepPlan(List<ServiceWork> work, List<Purchase> purchases, List<PartHours> hours, List<String> notes) {

    private static final Comparator<ServiceWork> ORDER = Comparator.comparing((ServiceWork each) -> each.evening().date())
            .thenComparing(each -> each.evening().begin()).thenComparing(ServiceWork::bike).thenComparing(each -> !each.safety()).thenComparing(ServiceWork::due).thenComparing(ServiceWork::part).thenComparing(ServiceWork::job);
    private static final Comparator<Purchase> BY_DAY = Comparator.comparing(Purchase::by).thenComparing(Purchase::item);

    /** No work and nothing to buy. */
    public static final UpkeepPlan NONE = new UpkeepPlan(List.of(), List.of(), List.of(), List.of());

    public UpkeepPlan {
        work = work.stream().sorted(ORDER).toList();
        purchases = purchases.stream().sorted(BY_DAY).toList();
        hours = List.copyOf(hours);
        notes = List.copyOf(notes);
    }

    /** The work of each week that has some, by its Monday. */
    public Map<LocalDate, List<ServiceWork>> weeks() {
        Map<LocalDate, List<ServiceWork>> out = new TreeMap<>();
        work.forEach(each -> out.computeIfAbsent(each.week(), week -> new ArrayList<>()).add(each));
        return new LinkedHashMap<>(out);
    }

    /** The plans of several workshops together. */
    public static UpkeepPlan of(List<UpkeepPlan> plans) {
        List<ServiceWork> work = new ArrayList<>();
        List<Purchase> purchases = new ArrayList<>();
        List<PartHours> hours = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (UpkeepPlan each : plans) {
            work.addAll(each.work);
            purchases.addAll(each.purchases);
            hours.addAll(each.hours);
            each.notes.stream().filter(note -> !notes.contains(note)).forEach(notes::add);
        }
        return new UpkeepPlan(work, purchases, hours, notes);
    }

    public boolean isEmpty() {
        return work.isEmpty() && purchases.isEmpty();
    }
}
