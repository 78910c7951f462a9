package courseworthy.course.matching;

import java.util.Arrays;

/**
 * Network distances from the end of a link to the starts of those that can be reached from it without turning back, by Dijkstra's method up
 * to a bound; kept for every link that was asked for.
 */
final class TransitionDistances {

    /** Most links reached from one (some 40 lie within 60 m in a village). */
    private static final int MOST_REACHED = 300;
    /** Most departures looked at for one: bounds the work on maps where thousands of ways meet. */
    private static final int MOST_TRIED = 1000;

    /** Most links kept for all: 40 MB; a course of 1000 km has fewer. */
    private static final int MOST_KEPT = 1_500_000;

    private final RoadNetwork network;
    private final double[][] rates;
    private final double bound;
    private final Reach[] kept;

    private int keptLinks;
    /** Number of the search that last reached a link, and the shortest distance to it then. */
    private final int[] search;
    private final double[] shortest;
    private int searches;
    private int tried;
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
        search = new int[2 * network.links()];
        shortest = new double[2 * network.links()];
    }

    /** What can be reached from the end of a direction of a link. */
    Reach from(int directed) {
        if (kept[directed] == null) {
            if (keptLinks > MOST_KEPT) {
                Arrays.fill(kept, null);
                keptLinks = 0;
            }
            kept[directed] = search(directed);
            keptLinks += kept[directed].link().length;
        }
        return kept[directed];
    }

    /** The queue is sorted by insertion, since it is short; a link that was reached by a longer way before is passed over when its turn comes. */
    private Reach search(int directed) {
        searches++;
        tried = 0;
        int settled = 0;
        int size = depart(directed, -1, 0, 0, 0);
        while (settled < size && settled < MOST_REACHED) {
            int reached = queue[settled];
            if (distance[settled] > shortest[reached]) {
                size = remove(settled, size);
                continue;
            }
            double length = network.length(reached >> 1);
            if (distance[settled] + length <= bound) {
                size = depart(reached, settled, distance[settled] + length, cost[settled] + length * rates[reached & 1][reached >> 1], size);
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
        for (int i = network.firstDeparture(junction); i < network.endDeparture(junction) && tried < MOST_TRIED; i++) {
            int next = network.departure(i);
            tried++;
            if (next == (from ^ 1) || search[next] == searches && shortest[next] <= at) {
                continue;
            }
            search[next] = searches;
            shortest[next] = at;
            boolean leaves = goesOn && !network.sameWay(from, next);
            to = insert(next, number, at, paid + TransitionModel.junction(network.straightness(from, next), leaves), to);
        }
        return to;
    }

    private int remove(int place, int size) {
        for (int i = place; i < size - 1; i++) {
            copy(i + 1, i);
        }
        return size - 1;
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
