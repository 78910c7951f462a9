package courseworthy.course.matching;

import java.util.Arrays;

/**
 * Network distances from the end of a link to the starts of those that can be reached from it without turning back, by Dijkstra's method up
 * to a bound; kept for every link that was asked for.
 */
final class TransitionDistances {

    /** Most links reached from one (measured: 60 m through the densest villages reach some 40). */
    private static final int MOST_REACHED = 400;
    /** Most departures looked at for one. */
    private static final int MOST_TRIED = 2000;

    private final RoadNetwork network;
    private final double[][] rates;
    private final double bound;
    private final Reach[] kept;

    private final int[] queue = new int[MOST_TRIED + 1];
    private final double[] distance = new double[MOST_TRIED + 1];
    private final double[] cost = new double[MOST_TRIED + 1];
    private final int[] before = new int[MOST_TRIED + 1];

    /**
     * What can be reached, nearest first.
     *
     * @param link     direction of a link
     * @param distance m to its start
     * @param cost     of the junctions and links between, by {@link TransitionModel} and {@link WayPreference}
     * @param before   number of the reached link that leads there, -1 where it is next to the first
     */
    record Reach(int[] link, double[] distance, double[] cost, int[] before) {

        /** Number of a direction of a link among what is reached, -1 where it is not. */
        int indexOf(int directed) {
            int i = link.length - 1;
            while (i >= 0 && link[i] != directed) {
                i--;
            }
            return i;
        }

        /** Numbers of the links on the way to one of them, itself last. */
        int[] chain(int last) {
            int size = 0;
            for (int i = last; i >= 0; i = before[i]) {
                size++;
            }
            int[] chain = new int[size];
            for (int i = last; i >= 0; i = before[i]) {
                chain[--size] = i;
            }
            return chain;
        }
    }

    /**
     * @param rates cost of a metre of each link, forward and backward
     * @param bound m: the farthest that matters
     */
    TransitionDistances(RoadNetwork network, double[][] rates, double bound) {
        this.network = network;
        this.rates = rates;
        this.bound = bound;
        kept = new Reach[2 * network.links()];
    }

    /** What can be reached from the end of a direction of a link. */
    Reach from(int directed) {
        if (kept[directed] == null) {
            kept[directed] = search(directed);
        }
        return kept[directed];
    }

    /** A link that was reached is settled when it is taken out: its queue is sorted by insertion, since it is short. */
    private Reach search(int directed) {
        int settled = 0;
        int size = depart(directed, -1, 0, 0, 0);
        while (settled < size && settled < MOST_REACHED) {
            int reached = queue[settled];
            double beyond = distance[settled] + network.length(reached >> 1);
            if (beyond <= bound) {
                size = depart(reached, settled, beyond, cost[settled] + network.length(reached >> 1) * rates[reached & 1][reached >> 1], size);
            }
            settled++;
        }
        return new Reach(Arrays.copyOf(queue, settled), Arrays.copyOf(distance, settled), Arrays.copyOf(cost, settled),
                Arrays.copyOf(before, settled));
    }

    private int depart(int from, int number, double at, double paid, int size) {
        int junction = network.target(from);
        int to = size;
        boolean goesOn = goesOn(from);
        int end = Math.min(network.endDeparture(junction), network.firstDeparture(junction) + MOST_TRIED);
        for (int i = network.firstDeparture(junction); i < end && to < MOST_TRIED; i++) {
            int next = network.departure(i);
            int known = next == (from ^ 1) ? -1 : find(next, to);
            if (next == (from ^ 1) || known >= 0 && distance[known] <= at) {
                continue;
            }
            to = known >= 0 ? remove(known, to) : to;
            boolean leaves = goesOn && !network.sameWay(from, next);
            to = insert(next, number, at, paid + TransitionModel.junction(network.straightness(from, next), leaves), to);
        }
        return to;
    }

    /** Whether the way of a link goes on beyond its end. */
    private boolean goesOn(int from) {
        int junction = network.target(from);
        int end = Math.min(network.endDeparture(junction), network.firstDeparture(junction) + MOST_TRIED);
        for (int i = network.firstDeparture(junction); i < end; i++) {
            int next = network.departure(i);
            if (next != (from ^ 1) && network.sameWay(from, next)) {
                return true;
            }
        }
        return false;
    }

    private int find(int link, int size) {
        int i = size - 1;
        while (i >= 0 && queue[i] != link) {
            i--;
        }
        return i;
    }

    private int remove(int place, int size) {
        for (int i = place; i < size - 1; i++) {
            copy(i + 1, i);
        }
        return size - 1;
    }

    private void copy(int from, int to) {
        queue[to] = queue[from];
        distance[to] = distance[from];
        cost[to] = cost[from];
        before[to] = before[from];
    }

    private int insert(int link, int number, double at, double paid, int size) {
        int place = size;
        while (place > number + 1 && distance[place - 1] > at) {
            place--;
        }
        for (int i = size; i > place; i--) {
            copy(i - 1, i);
        }
        queue[place] = link;
        distance[place] = at;
        cost[place] = paid;
        before[place] = number;
        return size + 1;
    }
}
