package courseworthy.analysis;

import courseworthy.claim.Verb;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What each row says, laid out so that what one says is held against what all others say on the same topics. */
final class OverlapIndex {

    private static final int NONE = Integer.MAX_VALUE;

    private final RowRegion[] rows;
    /** A number for what each row says and how strongly: the same for the same. */
    private final int[] says;
    /** A number for what each row gives to do; 0 for nothing. */
    private final int[] tasks;
    private final Map<String, TopicIndex> topics = new HashMap<>();

    /** All that is said on one topic: each different saying once, and who says it, in the order of the sheet. */
    private static final class TopicIndex {

        private final List<Saying> different = new ArrayList<>();
        private final Map<String, Integer> numbers = new HashMap<>();
        private int[] row = new int[16];
        private int[] saying = new int[16];
        private int size;

        void add(int at, Saying said) {
            if (size == row.length) {
                row = Arrays.copyOf(row, 2 * size);
                saying = Arrays.copyOf(saying, 2 * size);
            }
            row[size] = at;
            saying[size++] = numbers.computeIfAbsent(RowRegion.says(said), text -> {
                different.add(said);
                return different.size() - 1;
            });
        }

        /** The first place after those of a row. */
        int after(int at) {
            int low = 0;
            int high = size;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (row[middle] <= at) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }

    OverlapIndex(RowRegion[] rows) {
        this.rows = rows;
        says = new int[rows.length];
        tasks = new int[rows.length];
        Map<String, Integer> texts = new HashMap<>();
        Map<List<Object>, Integer> given = new HashMap<>();
        for (RowRegion one : rows) {
            says[one.at()] = texts.computeIfAbsent(one.row().origin().force() + "\n" + one.says(), text -> texts.size());
            if (one.row().task() != null) {
                tasks[one.at()] = given.computeIfAbsent(Arrays.asList(one.row().task().what(), one.row().task().due(), one.row().task().find()),
                        task -> given.size() + 1);
            }
            if (one.reasoned()) {
                one.row().sayings().forEach(saying -> topics.computeIfAbsent(saying.topic().name(), name -> new TopicIndex()).add(one.at(), saying));
            }
        }
    }

    /** The same for rows that say the same as strongly. */
    int says(int row) {
        return says[row];
    }

    /** What the rows after one say, held against that. Made anew for each row. */
    final class Against {

        private final Row row;
        private final int at;
        /** Rows that say the same; to which it says no less; which say no less. */
        final RowSet same;
        final RowSet less;
        final RowSet more;
        /** Equals that say otherwise; where this row's preference meets a bound or veto of theirs; where theirs meets one of this row. */
        final RowSet otherwise;
        final RowSet bounding;
        final RowSet bounded;

        Against(int at, Tables tables) {
            this.at = at;
            this.row = rows[at].row();
            RowSet none = new RowSet(rows.length).from(at);
            same = none.copy();
            less = none.copy();
            more = none.copy();
            otherwise = none.copy();
            bounding = none.copy();
            bounded = none.copy();
            tables.start();
            for (String topic : rows[at].topics()) {
                scan(topics.get(topic), topic, tables);
            }
            for (int i = 0; i < tables.size; i++) {
                place(tables.met[i], tables);
            }
        }

        private void scan(TopicIndex said, String topic, Tables tables) {
            boolean[] covered = new boolean[said.different.size()];
            long[] covers = new long[covered.length];
            int[] clash = new int[covered.length];
            for (int i = 0; i < covered.length; i++) {
                clash[i] = NONE;
                compare(said.different.get(i), i, topic, covered, covers, clash);
            }
            for (int i = said.after(at); i < said.size; i++) {
                int saying = said.saying[i];
                if (covered[saying] || covers[saying] != 0 || clash[saying] != NONE) {
                    int other = said.row[i];
                    tables.meet(other);
                    tables.covered[other] += covered[saying] ? 1 : 0;
                    tables.covers[other] |= covers[saying];
                    if (clash[saying] < tables.clash[other]) {
                        tables.clash[other] = clash[saying];
                        tables.with[other] = said.different.get(saying).verb() == Verb.PREFER;
                    }
                }
            }
        }

        private void compare(Saying other, int number, String topic, boolean[] covered, long[] covers, int[] clash) {
            for (int i = row.sayings().size() - 1; i >= 0; i--) {
                Saying mine = row.sayings().get(i);
                if (mine.topic() == other.topic()) {
                    covered[number] |= SayingComparison.saysNoLess(mine, other);
                    covers[number] |= SayingComparison.saysNoLess(other, mine) ? 1L << i : 0;
                    clash[number] = SayingComparison.clashes(mine, other) ? i : clash[number];
                }
            }
        }

        private void place(int other, Tables tables) {
            if (says[other] == says[at]) {
                same.set(other);
                less.set(other);
                more.set(other);
                return;
            }
            Row that = rows[other].row();
            int stronger = that.origin().force().compareTo(row.origin().force());
            if (stronger >= 0 && tables.covered[other] == that.sayings().size() && (tasks[other] == 0 || tasks[other] == tasks[at])) {
                less.set(other);
            }
            if (stronger <= 0 && saysAll(that, tables.covers[other]) && (tasks[at] == 0 || tasks[other] == tasks[at])) {
                more.set(other);
            }
            if (tables.clash[other] != NONE) {
                clash(other, tables, stronger);
            }
        }

        private void clash(int other, Tables tables, int stronger) {
            Row that = rows[other].row();
            boolean mine = row.sayings().get(tables.clash[other]).verb() == Verb.PREFER;
            boolean theirs = tables.with[other];
            Topic topic = row.sayings().get(tables.clash[other]).topic();
            if (SayingComparison.isException(row, that, topic) || SayingComparison.isException(that, row, topic)) {
                SayingComparison.SayingClash besides = SayingComparison.clash(row, that);
                if (besides == null) {
                    return;
                }
                mine = besides.one().verb() == Verb.PREFER;
                theirs = besides.other().verb() == Verb.PREFER;
            }
            if (mine != theirs) {
                (mine ? bounding : bounded).set(other);
            } else if (stronger == 0) {
                otherwise.set(other);
            }
        }

        /** @param covers which of its sayings the other row covers, as far as there are bits */
        private boolean saysAll(Row that, long covers) {
            int size = row.sayings().size();
            return size > Long.SIZE ? SayingComparison.noLess(that, row) : covers == -1L >>> Long.SIZE - size;
        }

        /** All that what it says bears on. */
        RowSet all() {
            return less.copy().or(more).or(otherwise).or(bounding).or(bounded);
        }
    }

    /** What is noted of each row while one is held against all; one for each thread. */
    final class Tables {

        private final int[] covered = new int[rows.length];
        private final long[] covers = new long[rows.length];
        private final int[] clash = new int[rows.length];
        private final boolean[] with = new boolean[rows.length];
        private final int[] round = new int[rows.length];
        private final int[] met = new int[rows.length];
        private int size;
        private int now;

        private void start() {
            now++;
            size = 0;
        }

        private void meet(int row) {
            if (round[row] != now) {
                round[row] = now;
                covered[row] = 0;
                covers[row] = 0;
                clash[row] = NONE;
                met[size++] = row;
            }
        }
    }
}
