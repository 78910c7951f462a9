package courseworthy.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The order of jobs for one pair of hands that finishes earliest, and of those the one that changes bikes least: exact up to
 * {@link #EXACT} jobs, by branch and bound over orders, with states that are no better than another of the same jobs left out. A job starts
 * once all it waits for is done and its waits are over, in the first evening that has room for it; one longer than any evening takes one of
 * the longest for itself and runs over. Of more jobs the best order found within so many tries is taken.
 */
final class WorkScheduler {

    /** So many jobs are planned exactly. */
    static final int EXACT = 20;
    /** Tries for more than that (computing). */
    private static final int TRIES = 5_000;

    private final int[] minutes;
    private final int[][] waits;
    private final int[] bikes;
    private final EveningTimes evenings;
    private final int longest;
    private final int n;
    private final int[] tail;
    private final int[] waitTail;
    private final Map<Long, List<int[]>> seen = new HashMap<>();

    private final int[] order;
    private final int[] start;
    /** By the number of jobs done, for each job: when what it waits for is over, of the jobs done. */
    private final int[][] ready;
    /** By the number of jobs done, for each job that is left: when it would start if it were the next. */
    private final int[][] next;
    private int[] bestOrder;
    private int[] bestStart;
    private int bestEnd;
    private int bestChanges = Integer.MAX_VALUE;
    private int nodes;
    private int tries;
    /** Whether what can be done on the same bike is tried before what others wait for longest. */
    private boolean sameBikeFirst;

    /**
     * @param minutes  of each job
     * @param waits    [i][j] minutes from the end of i to the start of j; -1 where j does not wait for i
     * @param bikes    the bike of each job, by number
     * @param evenings when there is time
     */
    WorkScheduler(int[] minutes, int[][] waits, int[] bikes, EveningTimes evenings) {
        this.minutes = minutes;
        this.waits = waits;
        this.bikes = bikes;
        this.evenings = evenings;
        this.n = minutes.length;
        this.longest = Arrays.stream(minutes).max().orElse(0);
        this.order = new int[n];
        this.start = new int[n];
        this.ready = new int[n + 1][n];
        this.next = new int[n + 1][n];
        this.tail = tails(minutes);
        this.waitTail = tails(new int[n]);
        this.bestEnd = EveningTimes.NEVER;
        search();
    }

    /** Where not all orders can be tried, those that finish one bike before the next have their share of the tries: of equal ends, theirs change least. */
    private void search() {
        tries = n > EXACT ? TRIES / 2 : Integer.MAX_VALUE;
        sameBikeFirst = n > EXACT;
        if (n > EXACT) {
            extend(0, new boolean[n], evenings.begin(), -1, 0);
            tries = TRIES;
            sameBikeFirst = false;
        }
        if (n > 0) {
            extend(0, new boolean[n], evenings.begin(), -1, 0);
        }
    }

    /** Whether all of it is done before the last evening is over. */
    boolean fits() {
        return n == 0 || bestOrder != null;
    }

    /** Jobs in the order in which they are done. */
    int[] order() {
        return n == 0 ? new int[0] : bestOrder;
    }

    /** When each starts, in minutes from the midnight before the first evening, in the order of {@link #order()}. */
    int[] starts() {
        return n == 0 ? new int[0] : bestStart;
    }

    int end() {
        return n == 0 ? 0 : bestEnd;
    }

    /** How many beginnings of orders were tried: to see that the bound does its work. */
    int nodes() {
        return nodes;
    }

    int changes() {
        return n == 0 ? 0 : bestChanges;
    }

    /** The longest time from the start of a job to the end of whatever waits for it. @throws IllegalArgumentException for a circle */
    private int[] tails(int[] of) {
        int[] out = new int[n];
        for (int round = 0; round <= n; round++) {
            boolean changed = false;
            for (int i = 0; i < n; i++) {
                int longest = of[i];
                for (int j = 0; j < n; j++) {
                    longest = waits[i][j] >= 0 ? Math.max(longest, of[i] + waits[i][j] + out[j]) : longest;
                }
                changed |= longest != out[i];
                out[i] = longest;
            }
            if (!changed) {
                return circleFree(out);
            }
        }
        throw new IllegalArgumentException("jobs that wait for each other");
    }

    private int[] circleFree(int[] out) {
        boolean[] done = new boolean[n];
        for (int round = 0; round < n; round++) {
            for (int i = 0; i < n; i++) {
                done[i] |= ready(i, done);
            }
        }
        for (boolean each : done) {
            if (!each) {
                throw new IllegalArgumentException("jobs that wait for each other");
            }
        }
        return out;
    }

    private boolean ready(int j, boolean[] done) {
        for (int i = 0; i < n; i++) {
            if (waits[i][j] >= 0 && !done[i]) {
                return false;
            }
        }
        return true;
    }

    /** When each job that is left would start if it were the next, t at the earliest. */
    private void startNext(int depth, boolean[] done, int t) {
        for (int job = 0; job < n; job++) {
            next[depth][job] = done[job] ? 0 : evenings.earliest(Math.max(t, ready[depth][job]), minutes[job]);
        }
    }

    /** When what each job waits for is over, with one more job done. */
    private void readyAfter(int job, int depth) {
        for (int other = 0; other < n; other++) {
            int wait = waits[job][other];
            int before = ready[depth][other];
            ready[depth + 1][other] = wait >= 0 ? Math.max(before, start[depth] + minutes[job] + wait) : before;
        }
    }

    private void extend(int depth, boolean[] done, int t, int bike, int changes) {
        if (depth == n) {
            bestEnd = t;
            bestChanges = changes;
            bestOrder = order.clone();
            bestStart = start.clone();
            return;
        }
        nodes++;
        if (nodes > tries) {
            return;
        }
        startNext(depth, done, t);
        if (!better(depth, done, t, bike, changes) || known(depth, done, t, bike, changes)) {
            return;
        }
        for (int job : candidates(done, bike, depth, t)) {
            int at = next[depth][job];
            if (at >= EveningTimes.NEVER) {
                continue;
            }
            order[depth] = job;
            start[depth] = at;
            done[job] = true;
            readyAfter(job, depth);
            extend(depth + 1, done, at + minutes[job], bikes[job], changes + (bike >= 0 && bike != bikes[job] ? 1 : 0));
            done[job] = false;
        }
    }

    /** Whether it may come out better than the best so far: all that is left, one after another, and each with what waits for it. */
    private boolean better(int depth, boolean[] done, int t, int bike, int changes) {
        int left = 0;
        int end = t;
        boolean[] bikesLeft = new boolean[n];
        for (int job = 0; job < n; job++) {
            if (!done[job]) {
                left += minutes[job];
                end = Math.max(end, next[depth][job] + tail[job]);
                bikesLeft[bikes[job]] |= bikes[job] != bike;
            }
        }
        end = Math.max(end, evenings.filled(t, left, longest));
        int least = changes - (bike < 0 ? 1 : 0);
        for (boolean each : bikesLeft) {
            least += each ? 1 : 0;
        }
        return end < bestEnd || end == bestEnd && end < EveningTimes.NEVER && least < bestChanges;
    }

    /** Whether the same jobs were done no later before, with nothing that still waits ready later, on the same bike with no more changes. */
    private boolean known(int depth, boolean[] done, int t, int bike, int changes) {
        if (n > EXACT) {
            return false;
        }
        long key = bike + 1;
        int[] state = new int[n + 2];
        state[0] = t;
        state[1] = changes;
        for (int job = 0; job < n; job++) {
            key = key << 1 | (done[job] ? 1 : 0);
            state[job + 2] = next[depth][job];
        }
        List<int[]> others = seen.computeIfAbsent(key, each -> new ArrayList<>());
        for (int[] other : others) {
            if (noLater(other, state)) {
                return true;
            }
        }
        others.removeIf(other -> noLater(state, other));
        others.add(state);
        return false;
    }

    private static boolean noLater(int[] one, int[] other) {
        for (int k = 0; k < one.length; k++) {
            if (one[k] > other[k]) {
                return false;
            }
        }
        return true;
    }

    /** What can be done next: first what others wait for longest, then the same bike, then in the order given; or the same bike first, as far as it need not wait. */
    private int[] candidates(boolean[] done, int bike, int depth, int t) {
        List<Integer> out = new ArrayList<>();
        for (int job = 0; job < n; job++) {
            if (!done[job] && ready(job, done)) {
                out.add(job);
            }
        }
        Comparator<Integer> waitedFor = Comparator.comparingInt(job -> -waitTail[job]);
        Comparator<Integer> same = Comparator.comparingInt(job -> bikes[job] == bike ? 0 : 1);
        Comparator<Integer> now = Comparator.comparingInt(job -> ready[depth][job] > t ? 1 : 0);
        out.sort((sameBikeFirst ? now.thenComparing(same).thenComparing(waitedFor) : waitedFor.thenComparing(same)).thenComparing(job -> job));
        return out.stream().mapToInt(Integer::intValue).toArray();
    }
}
