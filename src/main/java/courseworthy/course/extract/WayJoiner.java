package courseworthy.course.extract;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Joins the parts of a way that several files have. Files that were cut along a border have either the whole way each, or the part on their
 * side: parts that overlap become one way, and of two that say the same the one of the file that was named first is taken,
 * with its tags. An id that stands twice in one file counts once.
 */
final class WayJoiner {

    /** Nodes of the longest ways that are joined: the most that the map takes (OpenStreetMap API 0.6, "capabilities"). */
    private static final int LONGEST = 2000;

    private WayJoiner() {
    }

    /** @param byId ways in the order of their ids, those of the file named first before the others */
    static List<WayDraft> join(List<WayDraft> byId) {
        List<WayDraft> out = new ArrayList<>();
        for (WayDraft way : byId) {
            int last = out.size() - 1;
            WayDraft joined = last >= 0 && out.get(last).id() == way.id() ? joined(out.get(last), way) : null;
            if (joined == null) {
                out.add(way);
            } else {
                out.set(last, joined);
            }
        }
        return out;
    }

    /** One way in place of two; null where they share no run of nodes at their ends. */
    private static WayDraft joined(WayDraft first, WayDraft second) {
        long[] a = first.nodes();
        long[] b = second.nodes();
        if (first.file() == second.file() || Arrays.equals(a, b)) {
            return first;
        }
        if (Math.max(a.length, b.length) > LONGEST) {
            return null;
        }
        if (holds(a, b)) {
            return first;
        }
        if (holds(b, a)) {
            return new WayDraft(second.file(), first.id(), b, first.tags());
        }
        int ahead = overlap(a, b);
        int behind = overlap(b, a);
        if (Math.max(ahead, behind) == 0) {
            return null;
        }
        return new WayDraft(second.file(), first.id(), ahead >= behind ? chained(a, b, ahead) : chained(b, a, behind), first.tags());
    }

    private static boolean holds(long[] longer, long[] shorter) {
        for (int at = 0; at + shorter.length <= longer.length; at++) {
            if (Arrays.equals(longer, at, at + shorter.length, shorter, 0, shorter.length)) {
                return true;
            }
        }
        return false;
    }

    /** Most nodes at the end of one that are those at the start of the other. */
    private static int overlap(long[] first, long[] second) {
        for (int length = Math.min(first.length, second.length); length > 0; length--) {
            if (Arrays.equals(first, first.length - length, first.length, second, 0, length)) {
                return length;
            }
        }
        return 0;
    }

    private static long[] chained(long[] first, long[] second, int overlap) {
        long[] out = Arrays.copyOf(first, first.length + second.length - overlap);
        System.arraycopy(second, overlap, out, first.length, second.length - overlap);
        return out;
    }
}
