package courseworthy.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.analysis.Finding.Kind;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.sheet.Stage;
import courseworthy.sheet.Truth;
import courseworthy.sheet.ValueTest;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * What the check reasons out, against every situation of a small grid: all thresholds lie within it, so each cell of the real space has
 * a point in it, and one for not knowing.
 */
class GridTest {

    private static final int SHEETS = Integer.getInteger("courseworthy.sheets", 2000);
    private static final Topic BIKE = Topics.BIKE;
    private static final Topic WIDTH = Topics.FRONT_TYRE_WIDTH;
    private static final long[] HOURS = {0, 1, 2, 3, 4, 5, -1};
    private static final long[] SHARE = {0, 1, 2, 3, 4, 5, 100, -1};
    private static final long[] SKILL = {0, 1, 2, 3, -1};
    private static final long[] BIKES = {0, 1, 2, 3, 4, -1};

    /** A point of the grid, -1 for what is unknown. */
    private record Point(long hours, long share, long skill, long bike) {

        Stage stage() {
            Map<Measure, MeasureValue> known = new EnumMap<>(Measure.class);
            put(known, Measure.HOURS, hours);
            put(known, Measure.AERO_SHARE, share);
            put(known, Measure.SKILL, skill);
            return new Stage(9, new Demands(known, List.of(), List.of()), Map.of(BIKE, new SettledTopic(BIKE, bike >= 0, Math.max(0, bike))));
        }

        private static void put(Map<Measure, MeasureValue> known, Measure measure, long value) {
            if (value >= 0) {
                known.put(measure, MeasureValue.exact(value));
            }
        }
    }

    private final List<Point> points = new ArrayList<>();
    private final List<Stage> stages = new ArrayList<>();
    private final SplittableRandom chance = new SplittableRandom(5);

    GridTest() {
        for (long hours : HOURS) {
            for (long share : SHARE) {
                for (long skill : SKILL) {
                    for (long bike : BIKES) {
                        points.add(new Point(hours, share, skill, bike));
                        stages.add(points.get(points.size() - 1).stage());
                    }
                }
            }
        }
    }

    @Test
    void itFindsWhatEverySituationShows() {
        Map<Kind, Integer> counts = new TreeMap<>();
        for (int i = 0; i < SHEETS; i++) {
            List<Row> rows = rows();
            TreeSet<String> expected = new TreeSet<>();
            rows.forEach(row -> alone(row, expected));
            pairs(rows, expected);
            TreeSet<String> found = new TreeSet<>();
            for (Finding remark : SheetCheck.of(rows, List.of()).list()) {
                if (remark.kind() != Kind.JOINABLE) {
                    found.add(remark.kind() + " " + ids(remark));
                    counts.merge(remark.kind(), 1, Integer::sum);
                }
            }
            assertThat(found).as(rows.toString()).isEqualTo(expected);
        }
        for (Kind kind : List.of(Kind.NEVER, Kind.ALWAYS, Kind.NEEDLESS, Kind.CONTRADICTS, Kind.OVERLAPS, Kind.EQUIVALENT, Kind.IDENTICAL)) {
            assertThat(counts.getOrDefault(kind, 0)).as("%s of %s", kind, counts).isGreaterThan(10);
        }
    }

    /** Of many rows the remarks are counted where they are not listed, and rows are shared among threads. */
    @Test
    void itCountsWhatEverySituationShows() {
        for (int size : new int[] {30, 60, 260}) {
            List<Row> rows = new ArrayList<>();
            for (int i = 0; i < size; i++) {
                rows.add(i % 10 == 9 ? again(rows.get(i - 5), row(i)) : row(i));
            }
            TreeSet<String> expected = new TreeSet<>();
            rows.forEach(row -> alone(row, expected));
            pairs(rows, expected);
            Findings remarks = SheetCheck.of(rows, List.of());
            for (Kind kind : Kind.values()) {
                long wanted = expected.stream().filter(one -> one.startsWith(kind + " ")).count();
                if (kind != Kind.JOINABLE) {
                    assertThat(remarks.count(kind)).as("%s of %s rows", kind, size).isEqualTo((int) wanted);
                }
            }
            remarks.list().stream().filter(one -> one.kind() != Kind.JOINABLE)
                    .forEach(one -> assertThat(expected).contains(one.kind() + " " + ids(one)));
            assertThat(SheetCheck.of(rows, List.of())).isEqualTo(remarks);
        }
    }

    /** Where everything is known that the rows ask about, and none speaks. */
    @Test
    void itFindsWhereNobodySpeaks() {
        int gaps = 0;
        int none = 0;
        for (int i = 0; i < SHEETS / 4; i++) {
            List<Row> rows = new ArrayList<>(List.of(row(0), row(1), row(2)));
            if (i % 3 == 0) {
                rows.add(new Row(rows.get(0).origin(), new Condition.AllOf(List.of(new Condition.NoneOf(List.of(rows.get(1).condition())))),
                        rows.get(0).sayings(), null));
            }
            String asked = rows.stream().map(row -> row.condition().canonical()).toList().toString();
            BitSet open = new BitSet();
            for (int at = 0; at < points.size(); at++) {
                open.set(at, known(points.get(at), asked));
            }
            rows.forEach(row -> open.andNot(speaks(row)));
            Findings remarks = SheetCheck.of(rows, List.of(), rows, Set.of(WIDTH.name()));
            assertThat(remarks.count(Kind.GAP)).as(rows.toString()).isEqualTo(open.isEmpty() ? 0 : 1);
            for (Finding remark : remarks.list()) {
                if (remark.kind() == Kind.GAP) {
                    rows.forEach(row -> assertThat(row.condition().on(remark.witness().situation().after(9))).as(row.toString()).isNotEqualTo(Truth.TRUE));
                }
            }
            gaps += open.isEmpty() ? 0 : 1;
            none += open.isEmpty() ? 1 : 0;
        }
        assertThat(gaps).isGreaterThan(20);
        assertThat(none).isGreaterThan(20);
    }

    /** Two rows are one where the situations in which either speaks are all that share what each thing may be in them. */
    @Test
    void rowsThatCouldBeOneAreOne() {
        int joined = 0;
        for (int i = 0; i < SHEETS * 2; i++) {
            Row first = row(0);
            Row second = new Row(row(1).origin(), new Condition.AllOf(parts(1 + chance.nextInt(2), 0)), first.sayings(), null);
            Row other = new Row(first.origin(), new Condition.AllOf(parts(1 + chance.nextInt(2), 0)), first.sayings(), null);
            List<Row> rows = List.of(other, second);
            for (Finding remark : SheetCheck.of(rows, List.of()).list()) {
                if (remark.kind() == Kind.JOINABLE) {
                    BitSet either = speaks(other);
                    either.or(speaks(second));
                    assertThat(filled(either)).as(rows.toString()).isEqualTo(either);
                    joined++;
                }
            }
        }
        assertThat(joined).isGreaterThan(20);
    }

    /** All points each of whose values occurs in one of some points, and, of what has an order, lies between two of them. */
    private BitSet filled(BitSet some) {
        List<TreeSet<Long>> seen = List.of(new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
        some.stream().forEach(at -> {
            Point point = points.get(at);
            seen.get(0).add(point.hours);
            seen.get(1).add(point.share);
            seen.get(2).add(point.skill);
            seen.get(3).add(point.bike);
        });
        BitSet out = new BitSet();
        for (int at = 0; at < points.size(); at++) {
            Point point = points.get(at);
            out.set(at, between(seen.get(0), point.hours) && between(seen.get(1), point.share) && between(seen.get(2), point.skill)
                    && seen.get(3).contains(point.bike));
        }
        return out;
    }

    private static boolean between(TreeSet<Long> seen, long value) {
        return seen.contains(value) || value >= 0 && seen.last() > value && seen.ceiling(0L) != null && seen.ceiling(0L) < value;
    }

    private static boolean known(Point point, String asked) {
        return (point.hours >= 0 || !asked.contains("hours")) && (point.share >= 0 || !asked.contains("aero share"))
                && (point.skill >= 0 || !asked.contains("skill")) && (point.bike >= 0 || !asked.contains("bike"));
    }

    /** An example shows what it is an example of: all rows of the remark speak in it. */
    @Test
    void allRowsOfARemarkSpeakInItsExample() {
        int shown = 0;
        for (int i = 0; i < SHEETS / 10; i++) {
            List<Row> rows = List.of(row(0), row(1), row(2));
            for (Finding remark : SheetCheck.of(rows, List.of()).list()) {
                if (remark.kind() == Kind.JOINABLE || remark.kind() == Kind.NEVER) {
                    continue;
                }
                Stage stage = stage(remark);
                assertThat(remark.witness().situation()).isNotNull();
                for (RuleOrigin author : remark.rows()) {
                    Row row = rows.stream().filter(one -> one.origin().equals(author)).findFirst().orElseThrow();
                    assertThat(row.condition().on(stage)).as("%s in %s", row, remark).isEqualTo(Truth.TRUE);
                    assertThat(row.condition().on(remark.witness().situation().after(9))).as("%s in %s", row, remark).isEqualTo(Truth.TRUE);
                    shown++;
                }
            }
        }
        assertThat(shown).isGreaterThan(20);
    }

    private Stage stage(Finding remark) {
        long[] at = {-1, -1, -1, -1};
        for (Finding.Fact fact : remark.witness().facts()) {
            if (fact.what().equals("hours")) {
                at[0] = value(Measure.HOURS, fact.value());
            } else if (fact.what().equals("aero share")) {
                at[1] = value(Measure.AERO_SHARE, fact.value());
            } else if (fact.what().equals("skill")) {
                at[2] = value(Measure.SKILL, fact.value());
            } else {
                assertThat(fact.what()).isEqualTo("decided: bike");
                at[3] = BIKE.option(fact.value());
            }
        }
        return new Point(at[0], at[1], at[2], at[3]).stage();
    }

    private static long value(Measure measure, String text) {
        for (long value = 0; value <= 100 && (measure != Measure.SKILL || value < 4); value++) {
            if (measure.scale().text(value).equals(text)) {
                return value;
            }
        }
        throw new AssertionError(text);
    }

    private static String ids(Finding remark) {
        return remark.rows().stream().map(RuleOrigin::rule).sorted(GridTest::byNumber).toList().toString();
    }

    private static int byNumber(String a, String b) {
        return a.length() != b.length() ? Integer.compare(a.length(), b.length()) : a.compareTo(b);
    }

    private BitSet speaks(Row row) {
        BitSet out = new BitSet();
        for (int i = 0; i < stages.size(); i++) {
            out.set(i, row.condition().on(stages.get(i)) == Truth.TRUE);
        }
        return out;
    }

    private void alone(Row row, TreeSet<String> out) {
        BitSet speaks = speaks(row);
        if (speaks.isEmpty()) {
            out.add(Kind.NEVER + " [" + row.origin().rule() + "]");
            return;
        }
        String asked = row.condition().canonical();
        boolean always = true;
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            always &= speaks.get(i) || !known(point, asked);
        }
        if (always) {
            out.add(Kind.ALWAYS + " [" + row.origin().rule() + "]");
        }
    }

    /** A row that says again what an earlier one says is held against no other. */
    private void pairs(List<Row> rows, TreeSet<String> out) {
        List<BitSet> speaks = rows.stream().map(this::speaks).toList();
        BitSet again = new BitSet();
        for (boolean doubles : new boolean[] {true, false}) {
            for (int i = 0; i < rows.size(); i++) {
                for (int j = i + 1; j < rows.size(); j++) {
                    Kind kind = again.get(i) || again.get(j) ? null : pair(rows.get(i), speaks.get(i), rows.get(j), speaks.get(j));
                    boolean same = kind == Kind.IDENTICAL || kind == Kind.EQUIVALENT;
                    if (kind != null && same == doubles) {
                        out.add(kind + " [" + rows.get(i).origin().rule() + ", " + rows.get(j).origin().rule() + "]");
                        again.set(j, same);
                    }
                }
            }
        }
    }

    private static Kind pair(Row a, BitSet one, Row b, BitSet other) {
        return one.intersects(other) ? kind(a, b, within(one, other), within(other, one)) : null;
    }

    private static boolean within(BitSet inner, BitSet outer) {
        BitSet left = (BitSet) inner.clone();
        left.andNot(outer);
        return left.isEmpty();
    }

    /** Written again from the meaning of the remarks, for rows that say one thing on one topic. */
    private static Kind kind(Row a, Row b, boolean aInB, boolean bInA) {
        Force one = a.origin().force();
        Force other = b.origin().force();
        if (aInB && bInA && one == other && says(a, b)) {
            return a.condition().canonical().equals(b.condition().canonical()) ? Kind.IDENTICAL : Kind.EQUIVALENT;
        }
        if (bInA && asMuch(a, b) || aInB && asMuch(b, a)) {
            return Kind.NEEDLESS;
        }
        if (!clash(a, b)) {
            return null;
        }
        boolean aPrefers = verb(a) == Verb.PREFER;
        boolean bPrefers = verb(b) == Verb.PREFER;
        if (aPrefers != bPrefers) {
            return aInB || bInA ? Kind.CONTRADICTS : null;
        }
        return one != other ? null : aInB || bInA ? Kind.CONTRADICTS : Kind.OVERLAPS;
    }

    private static Verb verb(Row row) {
        return row.sayings().get(0).verb();
    }

    private static long said(Row row) {
        return ((Saying.Literal) row.sayings().get(0).source()).value();
    }

    private static boolean says(Row a, Row b) {
        return verb(a) == verb(b) && said(a) == said(b);
    }

    private static boolean asMuch(Row strong, Row weak) {
        if (verb(strong) != verb(weak) || strong.origin().force().weight() < weak.origin().force().weight()) {
            return false;
        }
        long more = said(strong) - said(weak);
        return verb(strong) == Verb.AT_LEAST ? more >= 0 : verb(strong) == Verb.AT_MOST ? more <= 0 : more == 0;
    }

    private static boolean clash(Row a, Row b) {
        if (verb(a) == Verb.PREFER && verb(b) == Verb.PREFER) {
            return Math.abs(said(a) - said(b)) > WIDTH.step();
        }
        if (verb(a) == verb(b)) {
            return false;
        }
        Row low = verb(a) == Verb.AT_MOST || verb(b) == Verb.AT_LEAST ? a : b;
        Row high = low == a ? b : a;
        return said(low) < said(high);
    }

    /** Three rows; now and then the last is the first again, word for word or in other words. */
    private List<Row> rows() {
        Row first = row(0);
        Row last = row(2);
        return List.of(first, row(1), chance.nextInt(20) == 0 ? again(first, last) : last);
    }

    /** A row again under the name of another, word for word or in other words. */
    private Row again(Row first, Row named) {
        List<Condition> parts = new ArrayList<>(first.condition().parts());
        Collections.reverse(parts);
        Condition.AllOf again = new Condition.AllOf(parts);
        boolean reworded = chance.nextBoolean();
        RuleOrigin author = new RuleOrigin(named.origin().rule(), Rank.COACH, 0, first.origin().force(), Evidence.OPINION, "", "Why.",
                named.origin().where());
        return new Row(author, reworded ? new Condition.AllOf(List.of(new Condition.AnyOf(List.of(again)))) : again, first.sayings(), null);
    }

    private Row row(int number) {
        Verb verb = List.of(Verb.PREFER, Verb.AT_LEAST, Verb.AT_MOST).get(chance.nextInt(3));
        long value = 40 + 3L * chance.nextInt(3);
        RuleOrigin author = new RuleOrigin("grid/row-" + number, Rank.COACH, 0, Force.values()[1 + chance.nextInt(2)], Evidence.OPINION, "", "Why.",
                new SourceLocation("grid.yaml", number));
        return new Row(author, new Condition.AllOf(parts(1 + chance.nextInt(3), 2)),
                List.of(new Saying(WIDTH, verb, new Saying.Literal(value), WIDTH.text(value))), null);
    }

    private List<Condition> parts(int count, int depth) {
        List<Condition> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            out.add(part(depth));
        }
        return out;
    }

    private Condition part(int depth) {
        switch (chance.nextInt(depth > 0 ? 8 : 5)) {
            case 0:
                return new Condition.MeasureCondition(Measure.SKILL, within(3), "some");
            case 1:
                return new Condition.DecisionCondition(BIKE, new ValueTest.Among(chance.nextBoolean() ? List.of((long) chance.nextInt(5))
                        : List.of(0L, 1L + chance.nextInt(4))), "some");
            case 2:
                return new Condition.MeasureCondition(Measure.AERO_SHARE, within(4), "some");
            case 5:
                return new Condition.AnyOf(sets(depth));
            case 6:
                return new Condition.NoneOf(sets(depth));
            default:
                return new Condition.MeasureCondition(Measure.HOURS, within(4), "some");
        }
    }

    private List<Condition> sets(int depth) {
        List<Condition> out = new ArrayList<>();
        for (int i = chance.nextInt(2); i >= 0; i--) {
            out.add(new Condition.AllOf(parts(1 + chance.nextInt(2), depth - 1)));
        }
        return out;
    }

    private ValueTest within(int most) {
        long at = chance.nextInt(most + 1);
        return switch (chance.nextInt(3)) {
            case 0 -> new ValueTest.Within(at, Long.MAX_VALUE);
            case 1 -> new ValueTest.Within(Long.MIN_VALUE, at);
            default -> new ValueTest.Within(at, Math.min(most, at + chance.nextInt(2)));
        };
    }
}
