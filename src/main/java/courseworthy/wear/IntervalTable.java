package courseworthy.wear;

import courseworthy.problem.FaultList;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import courseworthy.wear.ServiceInterval.Every;
import courseworthy.wear.ServiceInterval.Gauge;
import courseworthy.wear.ServiceInterval.ServiceJob;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.StockItem;
import courseworthy.workshop.Workshop;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The table of how long parts last and when they are serviced.
 *
 * @param dirt what dirt does
 * @param rows the first that holds for a part and a job counts
 */
public record IntervalTable(DirtFactors dirt, List<ServiceInterval> rows) {

    /** A job that the manufacturer states and the table does not have, min (judgement, no source). */
    private static final int UNKNOWN_JOB = 30;
    private static final String FILE = "rules/wear/intervals.yaml";
    private static final int LONGEST = 400;
    private static final int MINUTE = 60;
    private static final List<String> GOINGS = List.of("dry", "damp", "wet");
    private static final Map<PartKind, PartKind> LISTED_APART = Map.of(PartKind.HEADSET, PartKind.BIKE, PartKind.BOTTOM_BRACKET, PartKind.CRANK);
    private static final Map<String, Double> DIRT = Map.of("none", 0.0, "half", 0.5, "full", 1.0);

    public IntervalTable {
        rows = List.copyOf(rows);
    }

    private static final class Holder {
        private static final IntervalTable SHIPPED = read();
    }

    /** The shipped table. @throws IllegalStateException where it is missing or spoilt, which is a fault of the build */
    public static IntervalTable shipped() {
        return Holder.SHIPPED;
    }

    /** What is done to a part: as its manufacturer states it, else by the table. */
    public List<ServiceInterval> on(Part part) {
        Map<String, ServiceInterval> out = new LinkedHashMap<>();
        for (ServiceInterval row : rows) {
            if (row.holds(part)) {
                out.putIfAbsent(row.job(), row);
            }
        }
        for (Part.StatedInterval stated : part.intervals()) {
            ServiceInterval row = out.getOrDefault(stated.job(), unknown(part.kind(), stated.job()));
            out.put(stated.job(), row.stated(stated));
        }
        return List.copyOf(out.values());
    }

    /**
     * The same of a part in a workshop: what is serviced with it, unless it is listed by itself, is not counted twice. What the manufacturer states
     * of such a job goes over to the listed part, unless that part states its own.
     */
    List<ServiceInterval> on(Part part, Workshop workshop) {
        List<String> apart = new ArrayList<>();
        Map<String, ServiceInterval> out = new LinkedHashMap<>();
        on(part).forEach(each -> out.put(each.job(), each));
        for (Part other : workshop.parts()) {
            if (isServicedWith(other, part)) {
                apart.addAll(jobs(other.kind()));
            }
        }
        for (Part host : hosts(part, workshop)) {
            host.intervals().stream().filter(each -> out.containsKey(each.job()) && !out.get(each.job()).stated())
                    .forEach(each -> out.put(each.job(), out.get(each.job()).stated(each)));
        }
        return out.values().stream().filter(each -> !apart.contains(each.job())).toList();
    }

    /** The bike or the crank with which a part would be serviced if it were not listed. */
    private static List<Part> hosts(Part part, Workshop workshop) {
        List<Part> all = new ArrayList<>(workshop.bikes());
        all.addAll(workshop.parts());
        return all.stream().filter(each -> isServicedWith(part, each)).toList();
    }

    /** Whether a part would be serviced with another one if it were not listed: a headset with its bike, a bottom bracket with its crank. */
    static boolean isServicedWith(Part part, Part other) {
        return other.kind() == LISTED_APART.get(part.kind()) && part.bike() != null && part.bike() == (other.kind() == PartKind.BIKE ? other : other.bike());
    }

    /** The jobs that a kind of part may have, whatever is written of it. */
    public List<String> jobs(PartKind kind) {
        return rows.stream().filter(each -> each.part() == kind).map(ServiceInterval::job).distinct().toList();
    }

    /** Whether a job on a kind of part is done with another one. */
    boolean resets(PartKind kind, String done, String job) {
        return done.equals(ServiceStart.RENEW)
                || rows.stream().anyMatch(each -> each.part() == kind && each.job().equals(done) && each.work().resets().contains(job));
    }

    private static ServiceInterval unknown(PartKind kind, String job) {
        return new ServiceInterval("", kind, job, Map.of(), new Every(null, null, null), 1, null, new ServiceJob(UNKNOWN_JOB, null, 0, false, false, false, List.of()), true, "");
    }

    private static IntervalTable read() {
        Faults faults = new Faults();
        try (InputStream in = IntervalTable.class.getResourceAsStream("intervals.yaml")) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is not in the build");
            }
            IntervalTable out = of(YamlReader.read(in.readAllBytes(), FILE, faults), faults);
            if (!faults.faults().isEmpty()) {
                throw new IllegalStateException(FaultList.text(faults.faults()));
            }
            return out;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static IntervalTable of(Node.Mapping tree, Faults faults) {
        FieldReader fields = new FieldReader(FILE, tree, faults);
        fields.line("wear", LONGEST);
        fields.line("about", LONGEST);
        DirtFactors dirt = dirt(fields.fields("dirt"));
        List<ServiceInterval> rows = new ArrayList<>();
        for (FieldReader row : fields.blocks("intervals")) {
            rows.add(row(row));
        }
        fields.done();
        return new IntervalTable(dirt, rows);
    }

    private static DirtFactors dirt(FieldReader from) {
        Map<String, IntervalBounds> byGoing = new HashMap<>();
        for (String going : GOINGS) {
            byGoing.put(going, bounds(from, going, Dimension.NUMBER));
        }
        IntervalBounds mud = bounds(from, "mud", Dimension.NUMBER);
        from.done();
        return new DirtFactors(byGoing, mud);
    }

    private static ServiceInterval row(FieldReader from) {
        String id = from.line("id", LONGEST);
        PartKind kind = PartKind.of(from.line("part", LONGEST));
        String job = from.line("job", LONGEST);
        Map<String, List<String>> when = when(from.fields("when"));
        Every every = new Every(bounds(from, "hours", Dimension.TIME), null, bounds(from, "days", Dimension.NUMBER));
        double dirt = DIRT.getOrDefault(from.word("dirt", DIRT.keySet()), 1.0);
        Gauge gauge = gauge(from.fields("measured"));
        Amount minutes = from.amount("minutes", Dimension.TIME);
        String takes = from.word("takes", StockItem.KINDS);
        Amount amount = from.amount("amount", Dimension.VOLUME);
        boolean safety = Boolean.TRUE.equals(from.yesNo("safety"));
        boolean seen = Boolean.TRUE.equals(from.yesNo("seen"));
        boolean rests = Boolean.TRUE.equals(from.yesNo("rests"));
        ServiceJob work = new ServiceJob(minutes == null ? 0 : (int) Math.round(minutes.inBase() / MINUTE), takes, amount == null ? 1 : amount.inBase(), safety,
                seen, rests, from.texts("resets"));
        String because = from.line("because", LONGEST);
        from.done();
        return new ServiceInterval(id, kind, job, when, every, dirt, gauge, work, false, because);
    }

    private static Map<String, List<String>> when(FieldReader from) {
        Map<String, List<String>> out = new HashMap<>();
        for (Node.Entry each : from == null ? List.<Node.Entry>of() : from.block().entries()) {
            String key = each.key().text();
            out.put(key, from.texts(key));
            if (PartDetail.find(key) == null) {
                from.fault(key, "no key of a part", "a key of a part", "");
            }
        }
        return out;
    }

    private static Gauge gauge(FieldReader from) {
        if (from == null) {
            return null;
        }
        PartDetail measure = PartDetail.find(from.line("key", LONGEST));
        PartDetail limit = PartDetail.find(from.line("limit", LONGEST));
        Amount fresh = from.amount("new", measure.dimension());
        Amount fallback = from.amount("else", measure.dimension());
        from.done();
        return new Gauge(measure, fresh.inBase(), limit, fallback == null ? null : Double.valueOf(fallback.inBase()));
    }

    /** Two figures in a list, the lower first; null where the key is absent. */
    private static IntervalBounds bounds(FieldReader from, String key, Dimension dimension) {
        List<Node> items = from.items(key);
        if (items.size() != 2) {
            if (!items.isEmpty()) {
                from.fault(key, items.size() + " figures", "two, the lower first", "");
            }
            return null;
        }
        Amount low = from.amount(key, (Node.Scalar) items.get(0), dimension);
        Amount high = from.amount(key, (Node.Scalar) items.get(1), dimension);
        return low == null || high == null ? null : new IntervalBounds(low.inBase(), high.inBase());
    }
}
