package courseworthy.rulebase.check;

import courseworthy.claim.Verb;
import courseworthy.rulebase.Row;
import courseworthy.rulebase.check.Remark.Kind;
import courseworthy.rulebase.check.Steps.TooMany;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Holds the rows of one sheet against each other. Rows are compared where they speak on one topic and what they say bears on each other;
 * where they speak is compared after that. Several threads share the rows; what they find does not depend on how.
 */
final class Pairs {

    /** Steps to be spent on rows with several alternatives, over all rows; and for a row at the least. */
    private static final long ALL_STEPS = 20_000_000;
    private static final long LEAST_STEPS = 2_000;
    /** What so many sayings have to do with each other is remembered, some 20 MB. */
    private static final int MOST_REMEMBERED = 2_000;

    private final Placed[] rows;
    private final Possible possible;
    /** So many partners of a row are named for each kind of remark. */
    private final int named;
    /** Rows that say again what an earlier one says: what holds of that one need not be said of them. */
    private final boolean[] doubles;
    /** A number for what each row says and how strongly: the same for the same. */
    private final int[] says;
    /** How what rows say compares, by their numbers; worked out where it is asked for. */
    private final Bearing[][] bearings;
    /** For each row the topics it speaks on, and for each topic its rows, ascending. */
    private final int[][] topics;
    private final int[][] onTopic;

    Pairs(List<Placed> placed, Possible possible, int named) {
        this.possible = possible;
        this.named = named;
        rows = placed.toArray(new Placed[0]);
        doubles = new boolean[rows.length];
        says = new int[rows.length];
        topics = new int[rows.length][];
        Map<String, Integer> texts = new HashMap<>();
        Map<String, Integer> numbers = new HashMap<>();
        List<List<Integer>> byTopic = new ArrayList<>();
        for (Placed one : rows) {
            says[one.at()] = texts.computeIfAbsent(one.row().author().force() + "\n" + one.says(), text -> texts.size());
            List<String> names = one.reasoned() ? one.topics() : List.of();
            topics[one.at()] = new int[names.size()];
            for (int i = 0; i < names.size(); i++) {
                int number = numbers.computeIfAbsent(names.get(i), name -> numbers.size());
                topics[one.at()][i] = number;
                if (number == byTopic.size()) {
                    byTopic.add(new ArrayList<>());
                }
                byTopic.get(number).add(one.at());
            }
        }
        bearings = new Bearing[texts.size()][];
        onTopic = new int[byTopic.size()][];
        for (int i = 0; i < onTopic.length; i++) {
            onTopic[i] = byTopic.get(i).stream().mapToInt(Integer::intValue).toArray();
        }
    }

    Tally tally() {
        Tally out = new Tally(rows.length, named);
        findDoubles(out);
        int threads = rows.length < 200 ? 1 : Math.min(8, Runtime.getRuntime().availableProcessors());
        Part[] parts = new Part[threads];
        for (int i = 0; i < threads; i++) {
            parts[i] = new Part(i, threads);
            if (i > 0) {
                parts[i].start();
            }
        }
        parts[0].run();
        for (Part part : parts) {
            out.add(part.tally());
        }
        return out;
    }

    /** The steps that may be spent on holding one row against those after it. */
    private Steps steps() {
        return new Steps(Math.max(LEAST_STEPS, ALL_STEPS / Math.max(1, rows.length)));
    }

    private void findDoubles(Tally out) {
        Map<String, List<Placed>> alike = new LinkedHashMap<>();
        for (Placed one : rows) {
            if (one.reasoned()) {
                alike.computeIfAbsent(one.row().author().force() + "\n" + one.says(), says -> new ArrayList<>()).add(one);
            }
        }
        for (List<Placed> group : alike.values()) {
            for (int i = 0; i < group.size(); i++) {
                Steps steps = steps();
                for (int j = i + 1; j < group.size() && !doubles[group.get(i).at()]; j++) {
                    findDouble(group.get(i), group.get(j), steps, out);
                }
            }
        }
    }

    private void findDouble(Placed first, Placed again, Steps steps, Tally out) {
        try {
            if (!doubles[again.at()] && first.region().within(again.region(), steps) && again.region().within(first.region(), steps)) {
                boolean alike = first.row().condition().canonical().equals(again.row().condition().canonical());
                out.add(alike ? Kind.IDENTICAL : Kind.EQUIVALENT, again.at(), first.at());
                doubles[again.at()] = true;
            }
        } catch (TooMany e) {
            // It is met again, and told, where all pairs are compared.
            return;
        }
    }

    /** Every so manieth row, against all after it. */
    private final class Part extends Thread {

        private final int first;
        private final int step;
        private final Tally found = new Tally(rows.length, named);
        /** The last row that each row was held against: one that shares several topics with it is met once. */
        private final int[] met = new int[rows.length];
        private Throwable trouble;

        Part(int first, int step) {
            super("rows " + first);
            setDaemon(true);
            this.first = first;
            this.step = step;
            Arrays.fill(met, -1);
        }

        @Override
        public void run() {
            try {
                for (int i = first; i < rows.length; i += step) {
                    if (!doubles[i]) {
                        against(i);
                    }
                }
            } catch (RuntimeException | Error e) {
                trouble = e;
            }
        }

        Tally tally() {
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

        private void against(int row) {
            Steps steps = steps();
            for (int topic : topics[row]) {
                int[] others = onTopic[topic];
                for (int i = Arrays.binarySearch(others, row) + 1; i < others.length; i++) {
                    int other = others[i];
                    if (met[other] != row && !doubles[other]) {
                        met[other] = row;
                        pair(rows[row], rows[other], steps);
                    }
                }
            }
        }

        private void pair(Placed a, Placed b, Steps steps) {
            try {
                Found what = Pairs.this.pair(a, b, steps);
                if (what.first != null) {
                    found.add(what.first, what.about.at(), what.against(a, b).at());
                }
                if (what.joinable) {
                    found.add(Kind.JOINABLE, b.at(), a.at());
                }
            } catch (TooMany e) {
                found.add(Kind.UNREASONED, a.at(), b.at());
            }
        }
    }

    /** What was found of a pair. */
    private record Found(Kind first, Placed about, boolean joinable) {

        static final Found NOTHING = new Found(null, null, false);
        static final Found JOINABLE = new Found(null, null, true);

        Placed against(Placed a, Placed b) {
            return about == a ? b : a;
        }
    }

    private Found pair(Placed a, Placed b, Steps steps) throws TooMany {
        Bearing bearing = bearing(a, b);
        if (!bearing.matters()) {
            return Found.NOTHING;
        }
        if (!a.region().meets(b.region(), steps)) {
            return bearing.same() && join(a, b) != null ? Found.JOINABLE : Found.NOTHING;
        }
        boolean aInB = a.region().within(b.region(), steps);
        boolean bInA = b.region().within(a.region(), steps);
        if (bInA && bearing.aAsMuch()) {
            return new Found(Kind.NEEDLESS, b, false);
        }
        if (aInB && bearing.bAsMuch()) {
            return new Found(Kind.NEEDLESS, a, false);
        }
        if (bearing.same()) {
            return !aInB && !bInA && join(a, b) != null ? Found.JOINABLE : Found.NOTHING;
        }
        Found found = bearing.clash() == null ? Found.NOTHING : clash(a, b, bearing, aInB, bInA);
        return found.first == Kind.OVERLAPS && !possible.together(a.region(), b.region()) ? Found.NOTHING : found;
    }

    private static Found clash(Placed a, Placed b, Bearing bearing, boolean aInB, boolean bInA) {
        Answers.Clash clash = bearing.clash();
        boolean hopeless = clash.uneven() && (clash.one().verb() == Verb.PREFER ? aInB : bInA);
        if (hopeless || bearing.equal() && !clash.uneven() && (aInB || bInA)) {
            return new Found(Kind.CONTRADICTS, aInB ? a : b, false);
        }
        return bearing.equal() && !clash.uneven() ? new Found(Kind.OVERLAPS, a, false) : Found.NOTHING;
    }

    /**
     * How what two rows say compares.
     *
     * @param same    whether they say the same with the same force
     * @param aAsMuch whether the first says no less than the second
     * @param bAsMuch whether the second says no less than the first
     * @param equal   whether they speak with equal force
     * @param clash   what they say that does not go together, null where nothing does
     */
    private record Bearing(boolean same, boolean aAsMuch, boolean bAsMuch, boolean equal, Answers.Clash clash) {

        static Bearing of(Row a, Row b, boolean same) {
            return new Bearing(same, same || Answers.noLess(a, b), same || Answers.noLess(b, a),
                    a.author().force() == b.author().force(), same ? null : Answers.clash(a, b));
        }

        /** A clash is told of equals, or of a preference that a bound leaves no room. */
        boolean matters() {
            return aAsMuch || bAsMuch || clash != null && (equal || clash.uneven());
        }
    }

    /** The same two sayings are compared once, unless there are too many kinds of them to remember. Threads may both do it. */
    private Bearing bearing(Placed a, Placed b) {
        int one = says[a.at()];
        int other = says[b.at()];
        if (bearings.length > MOST_REMEMBERED) {
            return Bearing.of(a.row(), b.row(), one == other);
        }
        Bearing[] of = bearings[one];
        if (of == null) {
            of = new Bearing[bearings.length];
            bearings[one] = of;
        }
        if (of[other] == null) {
            of[other] = Bearing.of(a.row(), b.row(), one == other);
        }
        return of[other];
    }

    /** The thing whose ranges are one range together, where two rows differ in that alone; else null. */
    static Thing join(Placed a, Placed b) {
        if (a.region().size() != 1 || b.region().size() != 1) {
            return null;
        }
        Thing thing = a.region().box(0).differing(b.region().box(0));
        return thing != null && a.region().box(0).of(thing).or(b.region().box(0).of(thing)).spans() == 1 ? thing : null;
    }
}
