package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The order of jobs against every order there is, and against what can be counted by hand. */
class WorkSchedulerTest {

    private static final int DAY = 24 * 60;
    private static final int EVENING = 19 * 60;

    private int[] minutes;
    private int[][] waits;
    private int[] bikes;
    private int free;
    private int end;
    private int changes;

    /** Two thousand sets of up to seven jobs: none of their orders ends earlier, or as early with fewer changes of bike. */
    @Test
    void noOrderEndsEarlier() {
        for (int seed = 0; seed < 2_000; seed++) {
            draw(new Random(seed), 1 + seed % 7);
            WorkScheduler plan = new WorkScheduler(minutes, waits, bikes, times(free));
            end = Integer.MAX_VALUE;
            changes = Integer.MAX_VALUE;
            everyOrder(new int[minutes.length], new int[minutes.length], 0, new boolean[minutes.length], free == 0 ? 0 : EVENING, 0);
            assertThat(new int[] {plan.end(), plan.changes()}).as("seed " + seed).containsExactly(end, changes);
            keepsToTheRules(plan, "seed " + seed);
        }
    }

    private static EveningTimes times(int free) {
        return free == 0 ? EveningTimes.endless() : EveningTimes.every(free);
    }

    private void draw(Random random, int n) {
        minutes = new int[n];
        waits = new int[n][n];
        bikes = new int[n];
        free = random.nextInt(3) * 60;
        for (int i = 0; i < n; i++) {
            minutes[i] = 1 + random.nextInt(80);
            bikes[i] = random.nextInt(3) % n;
            for (int j = 0; j < n; j++) {
                waits[i][j] = i < j && random.nextInt(4) == 0 ? random.nextInt(3) == 0 ? random.nextInt(900) : 0 : -1;
            }
        }
    }

    private void everyOrder(int[] order, int[] start, int depth, boolean[] done, int t, int changed) {
        if (depth == order.length) {
            if (t < end || t == end && changed < changes) {
                end = t;
                changes = changed;
            }
            return;
        }
        for (int job = 0; job < order.length; job++) {
            int at = t;
            boolean ready = !done[job];
            for (int i = 0; i < order.length; i++) {
                ready &= waits[i][job] < 0 || done[i];
                for (int k = 0; k < depth; k++) {
                    at = order[k] == i && waits[i][job] >= 0 ? Math.max(at, start[k] + minutes[i] + waits[i][job]) : at;
                }
            }
            if (ready) {
                while (!open(at, minutes[job])) {
                    at++;
                }
                order[depth] = job;
                start[depth] = at;
                done[job] = true;
                everyOrder(order, start, depth + 1, done, at + minutes[job], changed + (depth > 0 && bikes[order[depth - 1]] != bikes[job] ? 1 : 0));
                done[job] = false;
            }
        }
    }

    private boolean open(int at, int length) {
        int of = at % DAY;
        return free == 0 || of == EVENING || of > EVENING && of + length <= EVENING + free;
    }

    private void keepsToTheRules(WorkScheduler plan, String seed) {
        int[] begins = new int[minutes.length];
        int last = 0;
        for (int k = 0; k < minutes.length; k++) {
            int job = plan.order()[k];
            begins[job] = plan.starts()[k];
            assertThat(begins[job]).as(seed).isGreaterThanOrEqualTo(last);
            assertThat(open(begins[job], minutes[job])).as(seed).isTrue();
            last = begins[job] + minutes[job];
        }
        for (int i = 0; i < minutes.length; i++) {
            for (int j = 0; j < minutes.length; j++) {
                assertThat(waits[i][j] < 0 || begins[j] >= begins[i] + minutes[i] + waits[i][j]).as(seed).isTrue();
            }
        }
    }

    /** The tyre that has to hold overnight is done first, so that the ride is the next evening and not the one after. */
    @Test
    void whatWaitsOvernightIsDoneFirst() {
        int[][] overnight = {{-1, -1, -1, 0}, {-1, -1, -1, 0}, {-1, -1, -1, 12 * 60}, {-1, -1, -1, -1}};
        WorkScheduler plan = new WorkScheduler(new int[] {60, 50, 20, 45}, overnight, new int[4], times(120));
        assertThat(plan.order()).containsExactly(2, 0, 1, 3);
        assertThat(plan.starts()).containsExactly(EVENING, EVENING + 20, DAY + EVENING, DAY + EVENING + 50);
    }

    /** Nothing tells the jobs apart but the bike: one is finished before the next. */
    @Test
    void oneBikeBeforeTheNext() {
        int[][] none = {{-1, -1, -1, -1}, {-1, -1, -1, -1}, {-1, -1, -1, -1}, {-1, -1, -1, -1}};
        assertThat(new WorkScheduler(new int[] {5, 5, 5, 5}, none, new int[] {0, 1, 0, 1}, times(0)).order()).containsExactly(0, 2, 1, 3);
        none[1][2] = 0;
        assertThat(new WorkScheduler(new int[] {5, 5, 5, 5}, none, new int[] {0, 1, 0, 1}, times(0)).changes()).as("a part moves between them").isEqualTo(1);
    }

    /** Twenty jobs over three bikes are planned within a hundred thousand tries of the 2.4 x 10^18 orders that there are. */
    @Test
    void twentyJobsAreExact() {
        for (int seed = 0; seed < 40; seed++) {
            draw(new Random(seed), WorkScheduler.EXACT);
            free = 120;
            WorkScheduler plan = new WorkScheduler(minutes, waits, bikes, times(free));
            keepsToTheRules(plan, "seed " + seed);
            assertThat(plan.nodes()).as("seed " + seed).isLessThan(100_000);
        }
    }

    @Test
    void moreJobsThanThatKeepToTheRules() {
        for (int seed = 0; seed < 20; seed++) {
            draw(new Random(seed), 30);
            keepsToTheRules(new WorkScheduler(minutes, waits, bikes, times(free)), "seed " + seed);
        }
    }

    /** Of 24 jobs on two bikes, each with tyres that wait for a ride the day after: when all ends at the same time, a bike is finished before the next. */
    @Test
    void manyJobsFinishOneBikeBeforeTheNext() {
        int[][] none = new int[24][24];
        for (int[] row : none) {
            Arrays.fill(row, -1);
        }
        int[] bike = new int[24];
        for (int i = 0; i < 24; i++) {
            bike[i] = i % 2;
        }
        for (int tyre = 0; tyre < 8; tyre++) {
            none[tyre][22 + tyre % 2] = 12 * 60 - tyre;
        }
        int[] minutes = new int[24];
        Arrays.fill(minutes, 5);
        WorkScheduler plan = new WorkScheduler(minutes, none, bike, times(120));
        assertThat(plan.changes()).as("one bike, the other, and the two rides the day after").isLessThanOrEqualTo(3);
    }

    @Test
    void jobsThatWaitForEachOtherAreRefused() {
        assertThatThrownBy(() -> new WorkScheduler(new int[] {5, 5}, new int[][] {{-1, 0}, {0, -1}}, new int[2], times(0))).hasMessage("jobs that wait for each other");
    }
}
