package courseworthy.wear;

import courseworthy.workshop.Part;
import courseworthy.workshop.RideLog;
import courseworthy.workshop.StockItem;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Finds what a stock lacks for the work that is planned, and by when. */
final class StockPlanner {

    private static final double NONE = 1e-9;
    /** Sealant that a puncture loses before it closes, and that is topped up, L (judgement, no source). */
    private static final double SEALED = 0.03;
    /** What is carried on every ride: where none is left, it is bought before the next one. */
    private static final List<String> CARRIED = List.of("tube", "plugs");

    private final Workshop workshop;
    private final LocalDate from;
    private final Map<String, Double> left = new LinkedHashMap<>();
    private final Map<String, Lack> lacks = new LinkedHashMap<>();

    /**
     * What a job uses up.
     *
     * @param day    on which it is needed
     * @param amount pieces, or L of a liquid
     */
    record StockNeed(LocalDate day, String kind, double amount, String bike, String part, String job) {
    }

    private static final class Lack {
        private final LocalDate by;
        private final StockItem item;
        private final boolean liquid;
        private final String why;
        private double amount;

        private Lack(LocalDate by, StockItem item, String kind, String why) {
            this.by = by;
            this.item = item;
            this.liquid = StockItem.LIQUIDS.contains(kind);
            this.why = why;
        }
    }

    private StockPlanner(Workshop workshop, LocalDate from) {
        this.workshop = workshop;
        this.from = from;
    }

    /** Nothing where the workshop has no stock written. */
    static List<Purchase> of(Workshop workshop, List<StockNeed> needs, LocalDate from, LocalDate until) {
        if (workshop.stock().isEmpty()) {
            return List.of();
        }
        StockPlanner planner = new StockPlanner(workshop, from);
        workshop.stock().forEach(planner::count);
        needs.stream().filter(each -> !each.day().isAfter(until)).sorted(Comparator.comparing(StockNeed::day)).forEach(planner::take);
        return planner.purchases();
    }

    /** What is there now: as counted, less what was used since. */
    private void count(StockItem item) {
        Map<LocalDate, Double> taken = taken(item);
        double now = item.quantity();
        LocalDate ranOut = null;
        for (Map.Entry<LocalDate, Double> each : taken.entrySet()) {
            now -= each.getValue();
            ranOut = ranOut == null && now <= NONE ? each.getKey() : ranOut;
        }
        left.put(item.name(), Math.max(0, now));
        if (left.get(item.name()) < item.keep() - NONE) {
            String since = ranOut == null ? "" : ", none since " + ranOut;
            lack(item.name(), from, item, item.kind(), "less left than to keep" + since).amount += item.keep() - left.get(item.name());
            left.put(item.name(), item.keep());
        } else if (ranOut != null && CARRIED.contains(item.kind())) {
            lack(item.name(), from, item, item.kind(), "none left since " + ranOut).amount += 1;
        }
    }

    /** What the log took of it, by day. */
    private Map<LocalDate, Double> taken(StockItem item) {
        Map<LocalDate, Double> out = new TreeMap<>();
        RideLog log = workshop.log();
        for (RideLog.StockUse use : log.uses()) {
            if (use.stock().equals(item.name()) && after(use.date(), item)) {
                out.merge(use.date(), use.quantity(), Double::sum);
            }
        }
        for (RideLog.Puncture each : log.punctures()) {
            if (after(each.date(), item) && item == first(each.kind(), each.bike(), each.bike())) {
                out.merge(each.date(), item.liquid() ? SEALED : 1, Double::sum);
            }
        }
        for (RideLog.Service each : log.services()) {
            ServiceInterval row = each.job() == null || !after(each.date(), item) ? null : row(each);
            Part part = workshop.find(each.part());
            if (row != null && row.work().takes() != null && item == first(row.work().takes(), part.bike() == null ? "" : part.bike().name(), part.name())) {
                out.merge(each.date(), row.work().amount(), Double::sum);
            }
        }
        return out;
    }

    private static boolean after(LocalDate day, StockItem item) {
        return item.counted() == null || day.isAfter(item.counted());
    }

    private ServiceInterval row(RideLog.Service service) {
        Part part = workshop.find(service.part());
        return part == null ? null : IntervalTable.shipped().on(part).stream().filter(each -> each.job().equals(service.job())).findFirst().orElse(null);
    }

    private StockItem first(String kind, String bike, String part) {
        StockItem any = null;
        for (StockItem each : workshop.stock()) {
            boolean serves = each.serves(kind, bike, part);
            any = serves && (any == null || any.serves().isEmpty() && !each.serves().isEmpty()) ? each : any;
        }
        return any;
    }

    private void take(StockNeed need) {
        StockItem item = first(need.kind(), need.bike(), need.part());
        String name = item == null ? need.kind() + " for " + need.part() : item.name();
        double after = left.getOrDefault(name, 0.0) - need.amount();
        double keep = item == null ? 0 : item.keep();
        if (after < keep - NONE) {
            lack(name, need.day(), item, need.kind(), need.part() + ": " + ServiceWork.task(need.job())).amount += keep - after;
            after = keep;
        }
        left.put(name, after);
    }

    private Lack lack(String name, LocalDate by, StockItem item, String kind, String why) {
        return lacks.computeIfAbsent(name, key -> new Lack(by, item, kind, why));
    }

    private List<Purchase> purchases() {
        List<Purchase> out = new ArrayList<>();
        lacks.forEach((name, lack) -> {
            boolean liquid = lack.liquid;
            String quantity = liquid ? Math.round(lack.amount * 1000) + " ml" : Long.toString((long) Math.ceil(lack.amount - NONE));
            Double price = lack.item == null || lack.item.price() == null ? null
                    : Double.valueOf(lack.item.price() * (liquid ? lack.amount : Math.ceil(lack.amount - NONE)));
            out.add(new Purchase(lack.by, workshop.name(), name, quantity, price, lack.why));
        });
        return out;
    }
}
