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
    private static final long ALL_STEPS = 60_000_000;
    private static final long LEAST_STEPS = 2_000;

    private final Placed[] rows;
    /** Rows that say again what an earlier one says: what holds of that one need not be said of them. */
    private final boolean[] doubles;
    /** A number for what each row says: the same for the same, whatever the force. */
    private final int[] says;
    /** For each row the topics it speaks on, and for each topic its rows, ascending. */
    private final int[][] topics;
    private final int[][] onTopic;

    Pairs(List<Placed> placed) {
        rows = placed.toArray(new Placed[0]);
        doubles = new boolean[rows.length];
        says = new int[rows.length];
        topics = new int[rows.length][];
        Map<String, Integer> texts = new HashMap<>();
        Map<String, Integer> numbers = new HashMap<>();
        List<List<Integer>> byTopic = new ArrayList<>();
        for (Placed one : rows) {
            says[one.at()] = texts.computeIfAbsent(one.says(), text -> texts.size());
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
        onTopic = new int[byTopic.size()][];
        for (int i = 0; i < onTopic.length; i++) {
            onTopic[i] = byTopic.get(i).stream().mapToInt(Integer::intValue).toArray();
        }
    }

    Tally tally() {
        Tally out = new Tally(rows.length);
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
        private final Tally found = new Tally(rows.length);
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

        Placed against(Placed a, Placed b) {
            return about == a ? b : a;
        }
    }

    private Found pair(Placed a, Placed b, Steps steps) throws TooMany {
        boolean same = a.row().author().force() == b.row().author().force() && says[a.at()] == says[b.at()];
        boolean aAsMuch = same || Answers.noLess(a.row(), b.row());
        boolean bAsMuch = same || Answers.noLess(b.row(), a.row());
        Answers.Clash clash = aAsMuch || bAsMuch ? null : Answers.clash(a.row(), b.row());
        if (!aAsMuch && !bAsMuch && (clash == null || !tells(a.row(), b.row(), clash))) {
            return Found.NOTHING;
        }
        if (!a.region().meets(b.region(), steps)) {
            return new Found(null, null, same && join(a, b) != null);
        }
        return together(a, b, same, aAsMuch, bAsMuch, clash, steps);
    }

    /** Whether a clash is told at all: of equals, or of a preference that a bound leaves no room. */
    private static boolean tells(Row a, Row b, Answers.Clash clash) {
        return clash.uneven() || a.author().force() == b.author().force();
    }

    private static Found together(Placed a, Placed b, boolean same, boolean aAsMuch, boolean bAsMuch, Answers.Clash clash, Steps steps)
            throws TooMany {
        boolean aInB = a.region().within(b.region(), steps);
        boolean bInA = b.region().within(a.region(), steps);
        if (bInA && aAsMuch) {
            return new Found(Kind.NEEDLESS, b, false);
        }
        if (aInB && bAsMuch) {
            return new Found(Kind.NEEDLESS, a, false);
        }
        boolean joinable = same && !aInB && !bInA && join(a, b) != null;
        Answers.Clash told = clash != null || same ? clash : Answers.clash(a.row(), b.row());
        return told == null ? new Found(null, null, joinable) : clash(a, b, told, aInB, bInA);
    }

    private static Found clash(Placed a, Placed b, Answers.Clash clash, boolean aInB, boolean bInA) {
        boolean equal = a.row().author().force() == b.row().author().force();
        boolean hopeless = clash.uneven() && (clash.one().verb() == Verb.PREFER ? aInB : bInA);
        if (hopeless || equal && !clash.uneven() && (aInB || bInA)) {
            return new Found(Kind.CONTRADICTS, aInB ? a : b, false);
        }
        return equal && !clash.uneven() ? new Found(Kind.OVERLAPS, a, false) : Found.NOTHING;
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
