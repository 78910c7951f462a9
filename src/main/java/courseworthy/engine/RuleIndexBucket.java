package courseworthy.engine;

import courseworthy.claim.Rank;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Stage;
import courseworthy.sheet.Truth;
import courseworthy.sheet.ValueTest;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Rows of a large rulebase that are one rule of the network together: all ask the same thing for values near each other, so that a
 * single look at it passes over most of them.
 *
 * @param name  of its own among all bundles
 * @param layer after which they speak
 * @param key   what all of them ask for; {@link Key#NONE} where there is no such thing
 * @param rank  whose they are
 * @param least smallest value of the key for which one of them may hold
 * @param most  largest such value
 * @param rows  the rows
 * @param spans what measures each of them asks to lie in some range, side by side in memory: most rows are passed over by these alone
 */
record RuleIndexBucket(String name, Rank rank, int layer, Key key, long least, long most, List<Row> rows, Spans spans) {

    /** So many rows at the most: fewer would take longer to build, more would be passed over less often. */
    private static final int ROWS = 32;

    /** A measure or a settled topic. */
    record Key(Measure measure, Topic topic) {

        static final Key NONE = new Key(null, null);

        private String name() {
            return measure != null ? measure.written() : topic != null ? "decided " + topic.name() : "";
        }
    }

    /** A row with the one of its tests that leaves the least. */
    private record KeyedRow(Row row, int layer, Key key, int shape, long least, long most) {

        static final Comparator<KeyedRow> ORDER = Comparator.comparing((KeyedRow one) -> one.row.origin().rank()).thenComparingInt(KeyedRow::layer)
                .thenComparing(one -> one.key.name()).thenComparingInt(KeyedRow::shape).thenComparingLong(KeyedRow::middle);

        /** For a test that is open on one side, where it turns. */
        long middle() {
            return shape == OVER ? least : shape == UNDER ? most : least / 2 + most / 2;
        }

        boolean near(KeyedRow other) {
            return row.origin().rank() == other.row.origin().rank() && layer == other.layer && key.equals(other.key) && shape == other.shape;
        }
    }

    /** Shapes of tests, those that leave the least first. */
    private static final int ONE = 0;
    private static final int BETWEEN = 1;
    private static final int OVER = 2;
    private static final int UNDER = 3;
    private static final int ANY = 4;

    /** All rows in bundles, each once for every layer after which it speaks. */
    static List<RuleIndexBucket> of(List<Row> rows) {
        List<KeyedRow> keyed = new ArrayList<>();
        for (Row row : rows) {
            for (int layer : row.layers()) {
                keyed.add(keyed(row, layer));
            }
        }
        keyed.sort(KeyedRow.ORDER);
        List<RuleIndexBucket> out = new ArrayList<>();
        for (int from = 0; from < keyed.size(); ) {
            int to = from + 1;
            while (to < keyed.size() && to - from < ROWS && keyed.get(to).near(keyed.get(from))) {
                to++;
            }
            out.add(bundle(keyed.subList(from, to), out.size()));
            from = to;
        }
        return out;
    }

    private static RuleIndexBucket bundle(List<KeyedRow> near, int number) {
        List<Row> rows = new ArrayList<>();
        long least = Long.MAX_VALUE;
        long most = Long.MIN_VALUE;
        for (KeyedRow one : near) {
            least = Math.min(least, one.least());
            most = Math.max(most, one.most());
            rows.add(one.row());
        }
        KeyedRow first = near.get(0);
        return new RuleIndexBucket("rows " + number, first.row().origin().rank(), first.layer(), first.key(), least, most, rows, Spans.of(rows));
    }

    /** For each row the measures that it asks to lie from one value to another, and what of its condition that does not tell in full. */
    private record Spans(int[] from, Measure[] measures, long[] ends, Condition[][] rest) {

        static Spans of(List<Row> rows) {
            int[] from = new int[rows.size() + 1];
            Condition[][] rest = new Condition[rows.size()][];
            List<Measure> measures = new ArrayList<>();
            List<Long> ends = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                List<Condition> more = new ArrayList<>();
                for (Condition part : rows.get(i).condition().parts()) {
                    if (part instanceof Condition.MeasureCondition measured) {
                        KeyedRow keyed = keyed(rows.get(i), 0, Key.NONE, measured.test());
                        measures.add(measured.measure());
                        ends.add(keyed.least());
                        ends.add(keyed.most());
                        if (measured.test() instanceof ValueTest.Within || keyed.shape() == ONE) {
                            continue;
                        }
                    }
                    more.add(part);
                }
                rest[i] = more.toArray(new Condition[0]);
                from[i + 1] = measures.size();
            }
            return new Spans(from, measures.toArray(new Measure[0]), ends.stream().mapToLong(Long::longValue).toArray(), rest);
        }

        /** The truth of a row, as {@link Condition.AllOf} has it. */
        Truth on(int row, Stage stage) {
            Demands demands = stage.demands();
            Truth out = Truth.TRUE;
            for (int i = from[row]; i < from[row + 1]; i++) {
                MeasureValue value = demands.get(measures[i]);
                if (value == null) {
                    out = Truth.UNKNOWN;
                } else if (value.mid() < ends[2 * i] || value.mid() > ends[2 * i + 1]) {
                    return Truth.FALSE;
                }
            }
            for (Condition part : rest[row]) {
                Truth truth = part.on(stage);
                if (truth == Truth.FALSE) {
                    return truth;
                }
                out = truth == Truth.UNKNOWN ? truth : out;
            }
            return out;
        }
    }

    private static KeyedRow keyed(Row row, int layer) {
        KeyedRow best = new KeyedRow(row, layer, Key.NONE, ANY, Long.MIN_VALUE, Long.MAX_VALUE);
        for (Condition part : row.condition().parts()) {
            KeyedRow one = part instanceof Condition.MeasureCondition measured ? keyed(row, layer, new Key(measured.measure(), null), measured.test())
                    : part instanceof Condition.DecisionCondition decided ? keyed(row, layer, new Key(null, decided.topic()), decided.test()) : best;
            best = one.shape() < best.shape() ? one : best;
        }
        return best;
    }

    private static KeyedRow keyed(Row row, int layer, Key key, ValueTest test) {
        if (test instanceof ValueTest.Among among) {
            long least = among.values().get(0);
            long most = among.values().get(among.values().size() - 1);
            return new KeyedRow(row, layer, key, least == most ? ONE : BETWEEN, least, most);
        }
        ValueTest.Within within = (ValueTest.Within) test;
        int shape = within.least() == Long.MIN_VALUE ? UNDER : within.most() == Long.MAX_VALUE ? OVER : BETWEEN;
        return new KeyedRow(row, layer, key, shape, within.least(), within.most());
    }

    /** False only where every row is false, or waits for a topic that does not apply. */
    boolean mayHold(Stage stage) {
        if (key.measure() != null) {
            MeasureValue value = stage.demands().get(key.measure());
            return value == null || value.mid() >= least && value.mid() <= most;
        }
        if (key.topic() != null) {
            SettledTopic settled = stage.settled().get(key.topic());
            return settled != null && settled.known() && settled.value() >= least && settled.value() <= most;
        }
        return true;
    }

    /** Adds the claims of the rows that hold, and notes those whose condition is not known. */
    void emit(Stage stage, ClaimEmitter speaker) {
        for (int i = 0; i < rows.size(); i++) {
            Truth truth = spans.on(i, stage);
            if (truth == Truth.TRUE) {
                speaker.emit(rows.get(i), stage);
            } else if (truth == Truth.UNKNOWN) {
                speaker.noteUnknown(rows.get(i), stage);
            }
        }
    }
}
