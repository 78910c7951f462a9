package courseworthy.stage;

import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.RideInput;
import courseworthy.event.Event;
import courseworthy.event.StageRace;
import courseworthy.ride.Range;
import courseworthy.stage.StageSetUp.EveningChange;
import courseworthy.topic.Topics;
import courseworthy.topic.Work;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which kind of bike is ridden on which day of a stage race: the one that takes least time over all days, and where the event lets the bike be
 * changed, the way through the days that takes least time with the evenings' work.
 */
final class BikeSchedule {

    /** What a bike more has to save over the race, s: it has to be brought, washed and looked after (judgement, no source). */
    static final double A_BIKE_MORE = 120;
    /** More than any race takes, s: a bike that a day's limits forbid, or on which no time is known. */
    private static final double FORBIDDEN = 1e9;

    private final List<RideInput> rides;
    private final List<Call> calls;
    private final List<String> candidates;
    /** Seconds by day and candidate. */
    private final double[][] seconds;
    private final double work;
    private final List<String> byDay = new ArrayList<>();

    private BikeSchedule(List<RideInput> rides, List<Call> calls, List<String> candidates) {
        this.rides = rides;
        this.calls = calls;
        this.candidates = candidates;
        this.seconds = new double[rides.size()][candidates.size()];
        this.work = EveningChangeFinder.minutes(event(), Work.BIKE) * EveningChangeFinder.SECONDS_A_MINUTE;
        for (int day = 0; day < rides.size(); day++) {
            for (int kind = 0; kind < candidates.size(); kind++) {
                seconds[day][kind] = candidates.size() < 2 ? 0 : seconds(day, candidates.get(kind));
            }
        }
    }

    /**
     * @param calls of each day alone
     * @param kinds that the rider has; null where any may be had
     */
    static BikeSchedule of(StageRace race, List<RideInput> rides, List<Call> calls, Set<String> kinds) {
        Set<String> wanted = new LinkedHashSet<>();
        calls.stream().map(call -> call.on(Topics.BIKE)).filter(each -> each.value() != null).map(Decision::text).forEach(wanted::add);
        BikeSchedule out = new BikeSchedule(rides, calls, List.copyOf(wanted));
        boolean open = race.mayChange().contains(Work.BIKE);
        int one = out.one();
        int[] way = new int[rides.size()];
        Arrays.fill(way, one);
        if (open && out.candidates.size() > 1) {
            way = out.best(one, kinds);
        }
        for (int each : way) {
            out.byDay.add(each < 0 ? null : out.candidates.get(each));
        }
        return out;
    }

    private Event event() {
        return rides.get(0).event();
    }

    private double seconds(int day, String kind) {
        Decision decision = calls.get(day).on(Topics.BIKE);
        Demands on = decision.text().equals(kind) ? calls.get(day).demands() : rides.get(day).on(kind);
        boolean allowed = RaceTopicSettler.keeps(decision, Topics.BIKE.option(kind), 1);
        return !allowed || on.estimated() == null ? FORBIDDEN : on.estimated().estimate().trace().total();
    }

    /** The candidate that takes least time over all days; -1 where no bike is decided. */
    private int one() {
        int best = candidates.isEmpty() ? -1 : 0;
        for (int kind = 1; kind < candidates.size(); kind++) {
            best = over(kind) < over(best) ? kind : best;
        }
        return best;
    }

    private double over(int kind) {
        double sum = 0;
        for (double[] day : seconds) {
            sum += day[kind];
        }
        return sum;
    }

    /** A way through the days by candidate, and its time with the evenings' work, s. */
    private record BikeSequence(int[] byDay, double cost) {
    }

    /** The cheapest way on any of the bikes that the rider has, each bike more counted; the one bike for all days where nothing is less. */
    private int[] best(int one, Set<String> kinds) {
        BikeSequence best = way(one, Set.of(one));
        for (int mask = 0; mask < 1 << candidates.size(); mask++) {
            Set<Integer> ridden = new LinkedHashSet<>(Set.of(one));
            for (int kind = 0; kind < candidates.size(); kind++) {
                if ((mask & 1 << kind) != 0 && (kinds == null || kinds.contains(candidates.get(kind)))) {
                    ridden.add(kind);
                }
            }
            BikeSequence way = way(one, ridden);
            long used = Arrays.stream(way.byDay).distinct().count();
            BikeSequence counted = new BikeSequence(way.byDay, way.cost + (used - 1) * A_BIKE_MORE);
            best = counted.cost < best.cost - 1e-9 ? counted : best;
        }
        return best.byDay;
    }

    /** The least time through the days, a change of bike counted as its work: on each the one bike, or that which the day alone would want, where it is among those ridden. */
    private BikeSequence way(int one, Set<Integer> ridden) {
        int size = candidates.size();
        double[] cost = new double[size];
        int[][] from = new int[rides.size()][size];
        for (int day = 0; day < rides.size(); day++) {
            double[] next = new double[size];
            for (int to = 0; to < size; to++) {
                int best = best(cost, to, day == 0 ? 0 : work);
                from[day][to] = best;
                boolean wanted = ridden.contains(to) && calls.get(day).on(Topics.BIKE).text().equals(candidates.get(to));
                next[to] = cost[best] + (best == to || day == 0 ? 0 : work) + (to == one || wanted ? seconds[day][to] : FORBIDDEN);
            }
            cost = next;
        }
        int at = one;
        for (int kind = 0; kind < size; kind++) {
            at = cost[kind] < cost[at] - 1e-9 ? kind : at;
        }
        double least = cost[at];
        int[] out = new int[rides.size()];
        for (int day = rides.size() - 1; day >= 0; day--) {
            out[day] = at;
            at = day == 0 ? at : from[day][at];
        }
        return new BikeSequence(out, least);
    }

    private static int best(double[] cost, int to, double change) {
        int best = to;
        for (int i = 0; i < cost.length; i++) {
            best = cost[i] + (i == to ? 0 : change) < cost[best] + (best == to ? 0 : change) - 1e-9 ? i : best;
        }
        return best;
    }

    /** The kind of bike on a day, null where none is decided. @param day from 0 */
    String on(int day) {
        return byDay.get(day);
    }

    /** The kinds that are ridden, the one with most hours first; one that is null where no bike is decided. */
    List<String> kinds() {
        List<String> out = new ArrayList<>(new LinkedHashSet<>(byDay));
        if (out.size() > 1) {
            out.sort(Comparator.comparing((String kind) -> -ridden(kind)));
        }
        return out;
    }

    private double ridden(String kind) {
        double sum = 0;
        for (int day = 0; day < byDay.size(); day++) {
            sum += kind.equals(byDay.get(day)) ? seconds[day][candidates.indexOf(kind)] : 0;
        }
        return sum;
    }

    /** On which evening the bike is changed, and what that saves against one bike for all days. */
    List<EveningChange> changes() {
        if (kinds().size() < 2) {
            return List.of();
        }
        List<EveningChange> out = new ArrayList<>();
        double before = 0;
        for (int day = 0; day < byDay.size(); day++) {
            String kind = byDay.get(day);
            if (day > 0 && !kind.equals(byDay.get(day - 1))) {
                double saved = (out.isEmpty() ? before : 0) + saved(day);
                out.add(new EveningChange(day + 1, Work.BIKE, Map.of(Topics.BIKE, option(byDay.get(day - 1))), Map.of(Topics.BIKE, option(kind)),
                        Range.exact(Math.max(0, saved)), (int) Math.round(EveningChangeFinder.minutes(event(), Work.BIKE)), event().plan().changes().containsKey(Work.BIKE)));
            }
            before += gain(day);
        }
        return Collections.unmodifiableList(out);
    }

    /** From a day on, as long as the bike stays the same. */
    private double saved(int from) {
        double sum = 0;
        for (int day = from; day < byDay.size() && byDay.get(day).equals(byDay.get(from)); day++) {
            sum += gain(day);
        }
        return sum;
    }

    /** Against the one bike for all days; nothing on a day on which that one is forbidden. */
    private double gain(int day) {
        double one = seconds[day][one()];
        return one >= FORBIDDEN ? 0 : one - seconds[day][candidates.indexOf(byDay.get(day))];
    }

    private static long option(String kind) {
        return Topics.BIKE.option(kind);
    }
}
