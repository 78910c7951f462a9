package courseworthy.stage;

import courseworthy.decision.Decision;
import courseworthy.event.Event;
import courseworthy.ride.Range;
import courseworthy.stage.StageSetUp.EveningChange;
import courseworthy.stage.StageSetUp.RaceTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Work;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/** Finds what is worth changing between stages: the cheapest way through the days, in time lost on them and work on the evenings between. */
final class EveningChangeFinder {

    /** Work on an evening is taken on where a minute of it returns so much on the road, s (judgement, no source). */
    static final double SECONDS_A_MINUTE = 1;
    /** How long work takes where the event does not say, min: both ends of the bike, with what has to be set afterwards (common practice, no source). */
    private static final Map<Work, Integer> MINUTES = new EnumMap<>(Map.of(Work.BIKE, 30, Work.TRAVEL, 90, Work.SEATPOST, 20, Work.TYRES, 50, Work.WHEELS, 15,
            Work.GEARS, 45, Work.COCKPIT, 30, Work.CONTACT_POINTS, 20, Work.ELECTRONICS, 15, Work.BRAKES, 50));
    private static final int MINUTE = 60;

    private final List<StageDay> days;
    private final Map<Topic, RaceTopic> topics;
    private final Map<Topic, List<Decision>> wanted;

    /** @param wanted the decision of each day by topic, with what is settled for the race before */
    EveningChangeFinder(List<StageDay> days, Map<Topic, RaceTopic> topics, Map<Topic, List<Decision>> wanted) {
        this.days = days;
        this.topics = topics;
        this.wanted = wanted;
    }

    /** What is mounted on each day of the topics of a kind of work; null where it stays the same all through. */
    List<Map<Topic, Long>> of(Work work) {
        List<Topic> open = topics.values().stream().filter(each -> each.topic().work() == work && each.ground() != StageSetUp.ValueReason.AGREED).map(RaceTopic::topic).toList();
        if (open.isEmpty() || days.size() < 2) {
            return null;
        }
        List<Map<Topic, Long>> states = states(open);
        double[] cost = new double[states.size()];
        int[][] from = new int[days.size()][states.size()];
        for (int day = 0; day < days.size(); day++) {
            double[] next = new double[states.size()];
            for (int to = 0; to < states.size(); to++) {
                int best = best(cost, to, day == 0 ? 0 : minutes(work) * SECONDS_A_MINUTE);
                from[day][to] = best;
                next[to] = cost[best] + (best == to || day == 0 ? 0 : minutes(work) * SECONDS_A_MINUTE) + lost(day, states.get(to));
            }
            cost = next;
        }
        return back(states, cost, from);
    }

    /** That of the race first, then what each day wants. */
    private List<Map<Topic, Long>> states(List<Topic> open) {
        LinkedHashSet<Map<Topic, Long>> out = new LinkedHashSet<>();
        Map<Topic, Long> race = new LinkedHashMap<>();
        open.forEach(topic -> race.put(topic, topics.get(topic).value()));
        out.add(race);
        for (int i = 0; i < days.size(); i++) {
            Map<Topic, Long> own = new LinkedHashMap<>(race);
            for (Topic topic : open) {
                Long value = wanted.get(topic).get(i).value();
                own.computeIfPresent(topic, (key, was) -> value == null ? was : value);
            }
            out.add(own);
        }
        return new ArrayList<>(out);
    }

    private static int best(double[] cost, int to, double change) {
        int best = to;
        for (int i = 0; i < cost.length; i++) {
            if (cost[i] + (i == to ? 0 : change) < cost[best] + (best == to ? 0 : change) - 1e-9) {
                best = i;
            }
        }
        return best;
    }

    /** What a state loses on a day, s; without end where it does not give what the day must have. */
    private double lost(int day, Map<Topic, Long> state) {
        double sum = 0;
        for (Map.Entry<Topic, Long> each : state.entrySet()) {
            Decision own = wanted.get(each.getKey()).get(day);
            boolean race = topics.get(each.getKey()).value() == each.getValue();
            boolean fits = own.value() == null || RaceTopicSettler.keeps(own, each.getValue(), 0) && !RaceTopicSettler.isLessSafe(each.getKey(), each.getValue(), own.value());
            Range loss = days.get(day).loss(each.getKey(), each.getValue());
            sum += !fits && !race ? Double.POSITIVE_INFINITY : loss == null ? 0 : loss.mid();
        }
        return sum;
    }

    private List<Map<Topic, Long>> back(List<Map<Topic, Long>> states, double[] cost, int[][] from) {
        int at = 0;
        for (int i = 1; i < cost.length; i++) {
            at = cost[i] < cost[at] - 1e-9 ? i : at;
        }
        List<Map<Topic, Long>> out = new ArrayList<>();
        for (int day = days.size() - 1; day >= 0; day--) {
            out.add(0, states.get(at));
            at = day == 0 ? at : from[day][at];
        }
        return out.stream().allMatch(each -> each.equals(states.get(0))) ? null : out;
    }

    /** What is done on which evening, for what is mounted on each day; where one state serves all days there is none. */
    List<EveningChange> changes(Work work, List<Map<Topic, Long>> mounted) {
        List<EveningChange> out = new ArrayList<>();
        for (int i = 1; i < mounted.size(); i++) {
            if (!mounted.get(i).equals(mounted.get(i - 1))) {
                Map<Topic, Long> from = new LinkedHashMap<>();
                Map<Topic, Long> to = new LinkedHashMap<>();
                for (Topic topic : mounted.get(i).keySet()) {
                    if (!mounted.get(i).get(topic).equals(mounted.get(i - 1).get(topic))) {
                        from.put(topic, mounted.get(i - 1).get(topic));
                        to.put(topic, mounted.get(i).get(topic));
                    }
                }
                out.add(new EveningChange(days.get(i).number(), work, from, to, returns(mounted, i), (int) Math.round(minutes(work)), stated(work) != null));
            }
        }
        return out;
    }

    /** What the days around a change gain by it against what was mounted before, or against the set-up of the race. */
    private Range returns(List<Map<Topic, Long>> mounted, int at) {
        List<Range> out = new ArrayList<>();
        for (int day = at; day < mounted.size() && mounted.get(day).equals(mounted.get(at)); day++) {
            out.add(gain(day, mounted.get(day)));
        }
        boolean first = mounted.subList(0, at).stream().allMatch(each -> each.equals(mounted.get(0)));
        for (int day = 0; first && day < at; day++) {
            out.add(gain(day, mounted.get(day)));
        }
        Range sum = StageSetUp.sum(out);
        return sum == null ? Range.exact(0) : sum;
    }

    private Range gain(int day, Map<Topic, Long> state) {
        double low = 0;
        double mid = 0;
        double high = 0;
        for (Map.Entry<Topic, Long> each : state.entrySet()) {
            Range race = days.get(day).loss(each.getKey(), topics.get(each.getKey()).value());
            Range own = days.get(day).loss(each.getKey(), each.getValue());
            if (race != null && own != null) {
                low += race.low() - own.low();
                mid += race.mid() - own.mid();
                high += race.high() - own.high();
            }
        }
        return Range.around(low, mid, high);
    }

    private Double stated(Work work) {
        return days.get(0).ride().event().plan().changes().get(work);
    }

    private double minutes(Work work) {
        return minutes(days.get(0).ride().event(), work);
    }

    /** How long a kind of work takes, min: as the event states it, or as is common practice. */
    static double minutes(Event event, Work work) {
        Double stated = event.plan().changes().get(work);
        return stated == null ? MINUTES.get(work) : stated / MINUTE;
    }
}
