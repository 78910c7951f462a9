package courseworthy.wear;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The table of how long parts last, against the cases beside it: no condition, no figure and nothing that a job takes in it without a case. */
class IntervalTableTest {

    private static final IntervalTable SHIPPED = IntervalTable.shipped();
    private static final String FILE = "rules/wear/intervals.cases.yaml";
    private static final double CLOSE = 1e-9;
    private static final double HOUR = 3600;

    /** What is written of a row in the cases, by kind: {@code holds}, {@code overdue} ... */
    private record Case(String rule, String kind, String name, FieldReader fields) {
    }

    @Test
    void everyRowIsAsItsCasesSay() {
        assertThat(SHIPPED.rows().stream().flatMap(row -> failures(row, SHIPPED).stream())).isEmpty();
        assertThat(SHIPPED.rows().stream().map(ServiceInterval::id)).doesNotHaveDuplicates()
                .containsExactlyElementsOf(cases().stream().map(Case::rule).distinct().toList());
    }

    @Test
    void whatIsMovedByAStepIsNoticed() {
        for (ServiceInterval row : SHIPPED.rows()) {
            for (ServiceInterval moved : moved(row)) {
                List<ServiceInterval> rows = SHIPPED.rows().stream().map(each -> each == row ? moved : each).toList();
                assertThat(failures(moved, new IntervalTable(SHIPPED.dirt(), rows))).as(row.id() + ": " + moved).isNotEmpty();
            }
        }
    }

    @Test
    void whatDirtDoesIsNoticed() {
        for (String going : List.of("dry", "damp", "wet")) {
            for (IntervalBounds other : List.of(step(SHIPPED.dirt().byGoing().get(going), 0.05, 0), step(SHIPPED.dirt().byGoing().get(going), 0, 0.05))) {
                Map<String, IntervalBounds> changed = new HashMap<>(SHIPPED.dirt().byGoing());
                changed.put(going, other);
                IntervalTable table = new IntervalTable(new DirtFactors(changed, SHIPPED.dirt().mud()), SHIPPED.rows());
                // Nothing is known to wear less than in the dry, so both of its ends are 1 by definition.
                boolean noticed = SHIPPED.rows().stream().anyMatch(row -> !failures(row, table).isEmpty());
                assertThat(noticed || going.equals("damp") && other.low() != SHIPPED.dirt().byGoing().get(going).low()).as(going + " " + other).isTrue();
            }
        }
        IntervalTable muddier = new IntervalTable(new DirtFactors(SHIPPED.dirt().byGoing(), step(SHIPPED.dirt().mud(), 0, 0.1)), SHIPPED.rows());
        assertThat(SHIPPED.rows().stream().anyMatch(row -> !failures(row, muddier).isEmpty())).isTrue();
    }

    /** Words are of the trade's kinds; each row says why, takes a time that a person spends at a stand, and resets jobs that are there. */
    @Test
    void everyRowIsWhole() {
        for (ServiceInterval row : SHIPPED.rows()) {
            assertThat(row.part()).as(row.id()).isNotNull();
            assertThat(row.because()).as(row.id()).endsWith(".");
            assertThat(row.work().minutes()).as(row.id()).isBetween(5, 180);
            assertThat(row.work().takes() == null || StockItem.KINDS.contains(row.work().takes())).as(row.id()).isTrue();
            assertThat(row.work().takes() == null || !StockItem.LIQUIDS.contains(row.work().takes()) || row.work().amount() < 1).as(row.id()).isTrue();
            assertThat(SHIPPED.jobs(row.part())).as(row.id()).containsAll(row.work().resets());
            assertThat(row.every().hours() != null || row.every().days() != null).as(row.id()).isTrue();
        }
    }

    /** Where the manufacturer states an interval it counts, with the time and stock of the job; a job of the manufacturer's own is added. */
    @Test
    void theManufacturerTakesPrecedence() {
        Part fork = new Part("fork", PartKind.FORK, 1, Map.of(PartDetail.TRAVEL, 0.12, PartDetail.INTERVALS,
                List.of(new Part.StatedInterval("oil and seals", 50 * HOUR, null, 180), new Part.StatedInterval("bushings", null, 5e6, null))));
        Map<String, ServiceInterval> byJob = new HashMap<>();
        SHIPPED.on(fork).forEach(each -> byJob.put(each.job(), each));
        assertThat(byJob).containsOnlyKeys("oil and seals", "full service", "bushings");
        ServiceInterval stated = byJob.get("oil and seals");
        assertThat(stated.stated()).isTrue();
        assertThat(stated.every()).isEqualTo(new Every(new IntervalBounds(50 * HOUR, 50 * HOUR), null, new IntervalBounds(180, 180)));
        assertThat(stated.work().takes()).isEqualTo("seals");
        assertThat(byJob.get("full service").stated()).isFalse();
        assertThat(byJob.get("bushings").every()).isEqualTo(new Every(null, new IntervalBounds(5e6, 5e6), null));
    }

    // The cases

    private static List<String> failures(ServiceInterval row, IntervalTable table) {
        List<String> out = new ArrayList<>();
        for (Case each : cases()) {
            if (each.rule.equals(row.id()) && !right(each, row, table)) {
                out.add(row.id() + ", " + each.kind + ", " + each.name);
            }
        }
        return out;
    }

    private static boolean right(Case of, ServiceInterval row, IntervalTable table) {
        return switch (of.kind) {
            case "does" -> does(of.fields, row.work());
            case "holds", "does not hold" -> (first(table, part(of.fields, row), row.job()) == row) == of.kind.equals("holds");
            case "worn" -> worn(of.fields, row);
            case "may be due", "not yet due" -> over(of.fields, row, table.dirt(), true) == of.kind.equals("may be due");
            default -> over(of.fields, row, table.dirt(), false) == of.kind.equals("overdue");
        };
    }

    private static boolean does(FieldReader fields, ServiceJob work) {
        List<String> resets = fields.texts("resets");
        Amount amount = fields.amount("amount", Dimension.VOLUME);
        String takes = fields.line("takes", 40);
        return Math.round(fields.amount("minutes", Dimension.TIME).inBase() / 60) == work.minutes() && fields.yesNo("safety") == work.safety()
                && fields.yesNo("seen") == work.seen() && Boolean.TRUE.equals(fields.yesNo("rests")) == work.rests() && java.util.Objects.equals(takes, work.takes()) && resets.equals(work.resets())
                && Math.abs(work.amount() - (amount == null ? 1 : amount.inBase())) < CLOSE;
    }

    private static ServiceInterval first(IntervalTable table, Part part, String job) {
        return table.on(part).stream().filter(each -> each.job().equals(job)).findFirst().orElse(null);
    }

    private static boolean over(FieldReader fields, ServiceInterval row, DirtFactors dirt, boolean early) {
        Amount days = fields.amount("days", Dimension.NUMBER);
        Amount hours = fields.amount("hours", Dimension.TIME);
        String going = fields.has("going") ? fields.line("going", 20) : "dry";
        Amount mud = fields.amount("mud", Dimension.SHARE);
        if (days != null) {
            return row.every().days() != null && days.inBase() >= (early ? row.every().days().low() : row.every().days().high()) - CLOSE;
        }
        if (row.every().hours() == null) {
            return false;
        }
        IntervalBounds factor = dirt.on(going, mud == null ? null : Double.valueOf(mud.inBase()), row.dirt());
        return early ? hours.inBase() * factor.high() >= row.every().hours().low() - CLOSE : hours.inBase() * factor.low() >= row.every().hours().high() - CLOSE;
    }

    private static boolean worn(FieldReader fields, ServiceInterval row) {
        Amount share = fields.amount("share", Dimension.SHARE);
        if (row.gauge() == null) {
            return false;
        }
        Part part = part(fields, row);
        Double used = row.gauge().used(part.number(row.gauge().measure()), part);
        return share == null ? used == null : used != null && Math.abs(used - share.inBase()) < 0.001;
    }

    /** A part as a case has it; one with an end stands on a wheel at that end. */
    private static Part part(FieldReader fields, ServiceInterval row) {
        Map<PartDetail, Object> details = new EnumMap<>(PartDetail.class);
        for (Node.Entry each : fields.block().entries()) {
            PartDetail detail = PartDetail.find(each.key().text());
            String key = each.key().text();
            if (detail != null) {
                details.put(detail, switch (detail.form()) {
                    case AMOUNT -> fields.amount(key, detail.dimension()).inBase();
                    case YES_NO -> fields.yesNo(key);
                    default -> fields.line(key, 40);
                });
            }
        }
        return new Part("it", row.part(), 1, details);
    }

    // What is moved

    private static List<ServiceInterval> moved(ServiceInterval row) {
        List<ServiceInterval> out = new ArrayList<>();
        Every every = row.every();
        if (every.hours() != null) {
            for (IntervalBounds hours : List.of(step(every.hours(), HOUR, 0), step(every.hours(), -HOUR, 0), step(every.hours(), 0, HOUR), step(every.hours(), 0, -HOUR))) {
                out.add(with(row, row.when(), new Every(hours, null, every.days()), row.dirt(), row.gauge(), row.work()));
            }
        }
        if (every.days() != null) {
            for (IntervalBounds days : List.of(step(every.days(), 1, 0), step(every.days(), -1, 0), step(every.days(), 0, 1), step(every.days(), 0, -1))) {
                out.add(with(row, row.when(), new Every(every.hours(), null, days), row.dirt(), row.gauge(), row.work()));
            }
        }
        row.when().forEach((key, words) -> {
            Map<String, List<String>> without = new HashMap<>(row.when());
            without.remove(key);
            out.add(with(row, without, every, row.dirt(), row.gauge(), row.work()));
            for (String word : words.size() > 1 ? words : List.<String>of()) {
                Map<String, List<String>> fewer = new HashMap<>(row.when());
                fewer.put(key, words.stream().filter(each -> !each.equals(word)).toList());
                out.add(with(row, fewer, every, row.dirt(), row.gauge(), row.work()));
            }
        });
        for (double dirt : every.hours() == null ? List.<Double>of() : List.of(0.0, 0.5, 1.0)) {
            if (dirt != row.dirt()) {
                out.add(with(row, row.when(), every, dirt, row.gauge(), row.work()));
            }
        }
        Gauge gauge = row.gauge();
        if (gauge != null) {
            double step = gauge.measure() == PartDetail.WEAR ? 0.0005 : 0.0001;
            out.add(with(row, row.when(), every, row.dirt(), null, row.work()));
            out.add(with(row, row.when(), every, row.dirt(), new Gauge(gauge.measure(), gauge.fresh() + step, gauge.limit(), gauge.fallback()), row.work()));
            out.add(with(row, row.when(), every, row.dirt(), new Gauge(gauge.measure(), gauge.fresh(), gauge.limit(),
                    gauge.fallback() == null ? Double.valueOf(0.0015) : Double.valueOf(gauge.fallback() + (gauge.measure() == PartDetail.WEAR ? step : -step))), row.work()));
        }
        ServiceJob work = row.work();
        out.add(with(row, row.when(), every, row.dirt(), gauge, new ServiceJob(work.minutes() + 5, work.takes(), work.amount(), work.safety(), work.seen(), work.rests(), work.resets())));
        out.add(with(row, row.when(), every, row.dirt(), gauge, new ServiceJob(work.minutes(), "tube", work.amount(), work.safety(), work.seen(), work.rests(), work.resets())));
        out.add(with(row, row.when(), every, row.dirt(), gauge, new ServiceJob(work.minutes(), work.takes(), work.amount() + 0.01, work.safety(), work.seen(), work.rests(), work.resets())));
        out.add(with(row, row.when(), every, row.dirt(), gauge, new ServiceJob(work.minutes(), work.takes(), work.amount(), !work.safety(), work.seen(), work.rests(), work.resets())));
        out.add(with(row, row.when(), every, row.dirt(), gauge, new ServiceJob(work.minutes(), work.takes(), work.amount(), work.safety(), !work.seen(), work.rests(), work.resets())));
        out.add(with(row, row.when(), every, row.dirt(), gauge, new ServiceJob(work.minutes(), work.takes(), work.amount(), work.safety(), work.seen(), !work.rests(), work.resets())));
        out.add(with(row, row.when(), every, row.dirt(), gauge, new ServiceJob(work.minutes(), work.takes(), work.amount(), work.safety(), work.seen(), work.rests(), List.of("a job"))));
        return out;
    }

    private static IntervalBounds step(IntervalBounds bounds, double low, double high) {
        return new IntervalBounds(bounds.low() + low, Math.max(bounds.low() + low, bounds.high() + high));
    }

    private static ServiceInterval with(ServiceInterval row, Map<String, List<String>> when, Every every, double dirt, Gauge gauge, ServiceJob work) {
        return new ServiceInterval(row.id(), row.part(), row.job(), when, every, dirt, gauge, work, false, row.because());
    }

    private static List<Case> cases() {
        return Holder.CASES;
    }

    private static final class Holder {
        private static final List<Case> CASES = read();
    }

    private static List<Case> read() {
        Faults faults = new Faults();
        List<Case> out = new ArrayList<>();
        for (FieldReader rule : new FieldReader(FILE, YamlReader.read(Path.of(FILE), FILE, faults), faults).blocks("cases")) {
            String id = rule.line("rule", 100);
            out.add(new Case(id, "does", "", rule.fields("does")));
            for (String kind : List.of("holds", "does not hold", "worn", "may be due", "not yet due", "overdue", "not yet overdue")) {
                for (Node.Entry each : rule.has(kind) ? rule.fields(kind).block().entries() : List.<Node.Entry>of()) {
                    out.add(new Case(id, kind, each.key().text(), new FieldReader(FILE, (Node.Mapping) each.value(), faults)));
                }
            }
            rule.done();
        }
        faults.throwIfAny();
        return out;
    }
}
