package courseworthy.build;

import java.util.Arrays;

/**
 * The minutes that can be worked on the evenings from one on, as times in minutes from the midnight before the first of them.
 *
 * @param begin   the first minute of work
 * @param evenings minutes of each evening; after the last there is no more time, unless they repeat
 * @param repeats whether the same evenings come again and again
 * @param longest minutes of the longest evening
 */
record EveningTimes(int begin, int[] evenings, boolean repeats, int longest) {

    /** When work in the evening begins, min after midnight (common practice, no source). */
    static final int EVENING = 19 * 60;
    /** Later than any time (computing). */
    static final int NEVER = Integer.MAX_VALUE / 4;

    /** Minutes of a day (exact). */
    static final int DAY = 24 * 60;

    EveningTimes(int begin, int[] evenings, boolean repeats) {
        this(begin, evenings, repeats, Arrays.stream(evenings).max().orElse(0));
    }

    /** The same time on every evening, for ever. */
    static EveningTimes every(int minutes) {
        return new EveningTimes(EVENING, new int[] {minutes}, true);
    }

    /** The evenings of some days, and no more. */
    static EveningTimes of(int... minutes) {
        return new EveningTimes(EVENING, minutes, false);
    }

    /** Work without a pause. */
    static EveningTimes endless() {
        return new EveningTimes(0, new int[0], true);
    }

    /** The same, begun on at a later minute. */
    EveningTimes from(int minute) {
        return new EveningTimes(minute, evenings, repeats, longest);
    }

    /** The day of a minute, 0 for the first. */
    static int day(int minute) {
        return minute / DAY;
    }

    /** Minutes after midnight of a minute. */
    static int clock(int minute) {
        return minute % DAY;
    }

    private int free(int day) {
        return repeats ? evenings[day % evenings.length] : day < evenings.length ? evenings[day] : -1;
    }

    /** The first time from t on at which a job of some minutes can start; {@link #NEVER} where there is none. */
    int earliest(int t, int minutes) {
        if (evenings.length == 0 || t >= NEVER) {
            return repeats ? Math.min(t, NEVER) : NEVER;
        }
        int most = longest;
        int day = t / DAY;
        int at = Math.max(t % DAY, EVENING);
        while (free(day) >= 0 && most > 0) {
            boolean alone = minutes > most && at == EVENING && free(day) == most;
            if (alone || at + minutes <= EVENING + free(day)) {
                return day * DAY + at;
            }
            day++;
            at = EVENING;
        }
        return minutes == 0 && free(day) >= 0 ? day * DAY + at : NEVER;
    }

    /** When so many minutes from t on are done at the earliest, were they cut into any pieces. @param job the longest of them */
    int filled(int t, int minutes, int job) {
        if (minutes == 0 || t >= NEVER || evenings.length == 0) {
            return repeats || minutes == 0 ? Math.min(NEVER, t + minutes) : NEVER;
        }
        int most = longest;
        int left = minutes;
        int day = t / DAY;
        int at = Math.max(t % DAY, EVENING);
        while (free(day) >= 0 && most > 0) {
            int until = EVENING + (free(day) == most ? Math.max(most, job) : free(day));
            int tonight = Math.max(0, until - at);
            if (left <= tonight) {
                return day * DAY + at + left;
            }
            left -= tonight;
            day++;
            at = EVENING;
        }
        return NEVER;
    }
}
