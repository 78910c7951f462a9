package courseworthy.analysis;

import courseworthy.analysis.Finding.Kind;
import courseworthy.analysis.ReasoningBudget.TooMany;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Holds the rows of one sheet against each other. Rows are compared where they speak on one topic and what they say bears on each other;
 * where they speak is compared after that. A row is held against all others at once as far as that tells, and against each of the rest by
 * itself. Several threads share the rows; what they find does not depend on how.
 */
final class RowPairs {

    /** Steps to be spent on rows with several alternatives, over all rows; and for a row at the least. */
    private static final long ALL_STEPS = 20_000_000;
    private static final long LEAST_STEPS = 2_000;
    /** Rows of more alternatives than this are held against each other row by itself; and so is a row that bears on few others. */
    private static final int MOST_AT_ONCE = 8;
    private static final int FEW = 400;
    /** The same where one has several alternatives. */
    private static final int FEWER = 20;
    private static final Box[] NONE = {};

    private final RowRegion[] rows;
    private final Feasibility possible;
    /** So many partners of a row are named for each kind of remark. */
    private final int named;
    /** Rows whose conditions may not go together with those of others though nothing they ask about is the same. */
    private final RowSet delicate;
    /** Rows that say again what an earlier one says: what holds of that one need not be said of them. */
    private final RowSet doubles;
    private final OverlapIndex bearings;
    private final RowSet narrow;
    private final RowSet several;
    private final IntervalIndex boxes;
    private final IntervalIndex lowCorners;
    private final IntervalIndex highCorners;

    RowPairs(List<RowRegion> placed, Feasibility possible, int named) {
        this.possible = possible;
        this.named = named;
        rows = placed.toArray(new RowRegion[0]);
        delicate = new RowSet(rows.length);
        doubles = new RowSet(rows.length);
        bearings = new OverlapIndex(rows);
        narrow = new RowSet(rows.length);
        several = new RowSet(rows.length);
        List<Box[]> at = new ArrayList<>();
        for (RowRegion one : rows) {
            boolean few = one.reasoned() && one.region().size() <= MOST_AT_ONCE;
            at.add(few ? one.region().all() : NONE);
            if (few) {
                narrow.set(one.at());
            }
            if (one.reasoned() && one.region().size() > 1) {
                several.set(one.at());
            }
            if (one.reasoned() && possible.delicate(one.region())) {
                delicate.set(one.at());
            }
        }
        boxes = new IntervalIndex(at);
        boolean cornered = !several.isEmpty();
        lowCorners = cornered ? new IntervalIndex(corners(at, true)) : boxes;
        highCorners = cornered ? new IntervalIndex(corners(at, false)) : boxes;
    }

    private static List<Box[]> corners(List<Box[]> boxes, boolean low) {
        List<Box[]> out = new ArrayList<>();
        for (Box[] some : boxes) {
            Box[] corners = new Box[some.length];
            for (int i = 0; i < some.length; i++) {
                corners[i] = some[i].corner(low);
            }
            out.add(corners);
        }
        return out;
    }

    PairTally tally() {
        PairTally out = new PairTally(rows.length, named);
        findDoubles(out);
        int threads = rows.length < 200 ? 1 : Math.min(8, Runtime.getRuntime().availableProcessors());
        RowWorker[] parts = new RowWorker[threads];
        for (int i = 0; i < threads; i++) {
            parts[i] = new RowWorker(i, threads);
            if (i > 0) {
                parts[i].start();
            }
        }
        parts[0].run();
        for (RowWorker part : parts) {
            out.add(part.tally());
        }
        return out;
    }

    /** The steps that may be spent on holding one row against those after it. */
    private ReasoningBudget steps() {
        return new ReasoningBudget(Math.max(LEAST_STEPS, ALL_STEPS / Math.max(1, rows.length)));
    }

    /** What rows that speak in the same situations have in common, once they say the same. */
    private record Alike(int says, Box hull, long glimpse) {
    }

    private void findDoubles(PairTally out) {
        List<Region> regions = new ArrayList<>();
        for (RowRegion one : rows) {
            if (one.reasoned()) {
                regions.add(one.region());
            }
        }
        SampleSignature glimpse = new SampleSignature(regions);
        Map<Alike, List<RowRegion>> alike = new LinkedHashMap<>();
        for (RowRegion one : rows) {
            if (one.reasoned()) {
                alike.computeIfAbsent(new Alike(bearings.says(one.at()), one.region().hull(), glimpse.of(one.region())),
                        says -> new ArrayList<>()).add(one);
            }
        }
        for (List<RowRegion> group : alike.values()) {
            for (int i = 0; i < group.size(); i++) {
                ReasoningBudget steps = steps();
                for (int j = i + 1; j < group.size() && !doubles.has(group.get(i).at()); j++) {
                    findDouble(group.get(i), group.get(j), steps, out);
                }
            }
        }
    }

    private void findDouble(RowRegion first, RowRegion again, ReasoningBudget steps, PairTally out) {
        try {
            if (!doubles.has(again.at()) && first.region().within(again.region(), steps) && again.region().within(first.region(), steps)) {
                boolean alike = first.row().condition().canonical().equals(again.row().condition().canonical());
                out.add(alike ? Kind.IDENTICAL : Kind.EQUIVALENT, again.at(), first.at());
                doubles.set(again.at());
            }
        } catch (TooMany e) {
            // It is met again, and told, where all pairs are compared.
            return;
        }
    }

    /** Every so manieth row, against all after it. */
    private final class RowWorker extends Thread {

        private final int first;
        private final int step;
        private final PairTally found = new PairTally(rows.length, named);
        private final OverlapIndex.Tables tables = bearings.new Tables();
        private Throwable trouble;

        RowWorker(int first, int step) {
            super("rows " + first);
            setDaemon(true);
            this.first = first;
            this.step = step;
        }

        @Override
        public void run() {
            try {
                for (int i = first; i < rows.length; i += step) {
                    if (rows[i].reasoned() && !doubles.has(i)) {
                        against(rows[i]);
                    }
                }
            } catch (RuntimeException | Error e) {
                trouble = e;
            }
        }

        PairTally tally() {
            try {
                join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
            if (trouble != null) {
                throw new IllegalStateException(trouble);
            }
            return found;
        }

        private void against(RowRegion row) {
            OverlapIndex.Against said = bearings.new Against(row.at(), tables);
            RowSet others = said.all().without(doubles);
            int bearing = others.count();
            if (bearing > 0) {
                Where where = new Where(row, others);
                where.find(bearing > FEW);
                tally(Kind.UNREASONED, row.at(), where.unreasoned);
                place(row, said, where);
            }
        }

        /** What is remarked of rows that bear on each other, by where they speak. */
        private void place(RowRegion row, OverlapIndex.Against said, Where where) {
            RowSet joinable = where.others.copy().and(said.same).without(where.inside).without(where.around);
            if (joinable.next(0) >= 0) {
                joinable.and(joinable(row));
            }
            RowSet broader = where.inside.copy().and(said.less);
            RowSet narrower = where.around.copy().and(said.more).without(broader);
            RowSet rest = where.meeting.copy().without(broader).without(narrower).without(said.same);
            RowSet nested = where.inside.copy().or(where.around);
            RowSet against = said.otherwise.copy().or(said.bounding).or(said.bounded).and(nested).and(rest);
            tallyOf(Kind.NEEDLESS, broader, row.at());
            tally(Kind.NEEDLESS, row.at(), narrower);
            tally(Kind.CONTRADICTS, row.at(), against.copy().and(where.around));
            tallyOf(Kind.CONTRADICTS, against.without(where.around), row.at());
            tally(Kind.OVERLAPS, row.at(), together(row, rest.and(said.otherwise).without(nested)));
            tallyOf(Kind.JOINABLE, joinable, row.at());
        }

        /** Those of some rows that may speak with one on some day. */
        private RowSet together(RowRegion row, RowSet some) {
            RowSet asked = delicate.has(row.at()) ? some.copy() : some.copy().and(delicate);
            for (int i = asked.next(0); i >= 0; i = asked.next(i + 1)) {
                if (!possible.together(row.region(), rows[i].region())) {
                    some.clear(i);
                }
            }
            return some;
        }

        private RowSet joinable(RowRegion row) {
            return row.region().size() == 1 ? boxes.besides(row.region().box(0), row.at()) : new RowSet(rows.length);
        }

        /** Of one row, with some partners. */
        private void tally(Kind kind, int row, RowSet partners) {
            found.add(kind, row, partners);
        }

        /** Of some rows, with one partner. */
        private void tallyOf(Kind kind, RowSet some, int partner) {
            for (int i = some.next(0); i >= 0; i = some.next(i + 1)) {
                found.add(kind, i, partner);
            }
        }
    }

    /** Where one row speaks, held against where others do. */
    private final class Where {

        private final RowRegion row;
        private final Box[] mine;
        private final ReasoningBudget steps = steps();
        private RowSet others;
        private final RowSet unreasoned = new RowSet(rows.length);
        /** Rows that speak in some situation in which it does; in none in which it does not; in all in which it does. */
        private RowSet meeting = new RowSet(rows.length);
        private RowSet inside = new RowSet(rows.length);
        private RowSet around = new RowSet(rows.length);

        Where(RowRegion row, RowSet others) {
            this.row = row;
            this.mine = row.region().all();
            this.others = others;
        }

        void find(boolean many) {
            RowSet one = others;
            if (many && narrow.has(row.at())) {
                atOnce(others.copy().and(narrow));
                one = others.copy().without(narrow);
            }
            for (int i = one.next(0); i >= 0; i = one.next(i + 1)) {
                by(rows[i]);
            }
            others.without(unreasoned);
            meeting.without(unreasoned);
            inside.without(unreasoned);
            around.without(unreasoned);
        }

        /** By itself. */
        private void by(RowRegion other) {
            try {
                if (row.region().meets(other.region(), steps)) {
                    meeting.set(other.at());
                    if (row.region().within(other.region(), steps)) {
                        around.set(other.at());
                    }
                    if (other.region().within(row.region(), steps)) {
                        inside.set(other.at());
                    }
                }
            } catch (TooMany e) {
                unreasoned.set(other.at());
            }
        }

        private void atOnce(RowSet some) {
            meeting = boxes.meeting(mine, some, row.at());
            around = aroundAtOnce(meeting);
            inside = insideAtOnce(meeting);
        }

        /** What several boxes hold together no single one may hold: what their corners do not rule out is left to reason out. */
        private RowSet aroundAtOnce(RowSet some) {
            if (some.copy().and(several).isEmpty()) {
                return some.count() <= FEW ? left(some, true) : boxes.containing(mine, some, row.at());
            }
            RowSet may = boxes.containing(corners(false), boxes.containing(corners(true), some, row.at()), row.at());
            RowSet out = may.count() <= FEWER ? new RowSet(rows.length) : boxes.containing(mine, may, row.at());
            return out.or(left(may.without(out), true));
        }

        private RowSet insideAtOnce(RowSet some) {
            if (mine.length == 1) {
                return some.count() <= FEW ? left(some, false) : boxes.within(mine, some, row.at());
            }
            RowSet may = highCorners.within(mine, lowCorners.within(mine, some, row.at()), row.at());
            RowSet out = may.count() <= FEWER ? new RowSet(rows.length) : boxes.within(mine, may, row.at());
            return out.or(left(may.without(out), false));
        }

        /** Those of some rows in all of which it speaks, or that speak in all in which it does, each by itself. */
        private RowSet left(RowSet some, boolean outside) {
            RowSet out = new RowSet(rows.length);
            for (int i = some.next(0); i >= 0; i = some.next(i + 1)) {
                try {
                    if (outside ? row.region().within(rows[i].region(), steps) : rows[i].region().within(row.region(), steps)) {
                        out.set(i);
                    }
                } catch (TooMany e) {
                    unreasoned.set(i);
                }
            }
            return out;
        }

        private Box[] corners(boolean low) {
            Box[] out = new Box[mine.length];
            for (int i = 0; i < out.length; i++) {
                out[i] = mine[i].corner(low);
            }
            return out;
        }
    }

    /** The thing whose ranges are one range together, where two rows differ in that alone; else null. */
    static Variable join(RowRegion a, RowRegion b) {
        if (a.region().size() != 1 || b.region().size() != 1) {
            return null;
        }
        Variable thing = a.region().box(0).differing(b.region().box(0));
        return thing != null && a.region().box(0).of(thing).or(b.region().box(0).of(thing)).spans() == 1 ? thing : null;
    }
}
