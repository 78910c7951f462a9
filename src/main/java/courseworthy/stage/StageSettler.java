package courseworthy.stage;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.RideInput;
import courseworthy.engine.RuleSet;
import courseworthy.event.StageRace;
import courseworthy.stage.StageSetUp.EveningChange;
import courseworthy.stage.StageSetUp.RaceTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.topic.Work;
import courseworthy.worth.Sensitivity;
import courseworthy.worth.WorthCalculator;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Settles one set-up for all days of a stage race, layer by layer as a call does: every topic of a layer is settled for the race before the
 * rules of any day are asked about the next. What is seen to every day, such as pressure and water, is left to each day.
 */
public final class StageSettler {

    private final RuleSet rules;
    private final StageRace race;
    private final List<Demands> demands = new ArrayList<>();
    private final Map<Topic, RaceTopic> topics = new LinkedHashMap<>();
    private final Map<Topic, Long> given = new LinkedHashMap<>();
    private final Map<Topic, List<Decision>> wanted = new LinkedHashMap<>();
    private final List<Topic> impossible = new ArrayList<>();
    private List<StageDay> days = new ArrayList<>();

    private StageSettler(RuleSet rules, StageRace race) {
        this.rules = rules;
        this.race = race;
    }

    /** @param rides of each day, in order; their hours have to be known only where minutes are wanted */
    public static StageSetUp of(RuleSet rules, StageRace race, List<RideInput> rides) {
        StageSettler settler = new StageSettler(rules, race);
        settler.alone(rides);
        settler.layers();
        return settler.result();
    }

    private void alone(List<RideInput> rides) {
        List<Call> calls = rides.stream().map(ride -> CallMaker.call(rules, ride)).toList();
        String bike = bike(rides, calls);
        for (int i = 0; i < rides.size(); i++) {
            RideInput ride = rides.get(i);
            Demands atHand = ride.atHand();
            Demands on = bike == null || bike.equals(atHand.ridden()) ? atHand : ride.on(bike).chosenBy(atHand);
            Call alone = calls.get(i);
            boolean same = bike == null || bike.equals(alone.on(Topics.BIKE).text());
            Call there = same ? alone : CallMaker.call(rules, on, Map.of(Topics.BIKE, (long) Topics.BIKE.option(bike)));
            demands.add(on);
            days.add(new StageDay(i + 1, ride, alone, there, new WorthCalculator(there, there.demands().estimated() == null ? null : Sensitivity.of(there.demands()))));
        }
    }

    /** The kind of bike that takes least time over all days, of those that some day wants and no day's limits forbid; null where none is decided. */
    private static String bike(List<RideInput> rides, List<Call> calls) {
        List<String> kinds = calls.stream().map(call -> call.on(Topics.BIKE)).filter(each -> each.value() != null).map(Decision::text).distinct().toList();
        String best = kinds.isEmpty() ? null : kinds.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (String kind : kinds.size() < 2 ? List.<String>of() : kinds) {
            double sum = 0;
            for (int i = 0; i < rides.size(); i++) {
                Demands on = calls.get(i).on(Topics.BIKE).text().equals(kind) ? calls.get(i).demands() : rides.get(i).on(kind);
                boolean allowed = RaceTopicSettler.keeps(calls.get(i).on(Topics.BIKE), Topics.BIKE.option(kind), 1);
                sum += !allowed || on.estimated() == null ? 1e9 : on.estimated().estimate().trace().total();
            }
            if (sum < least) {
                least = sum;
                best = kind;
            }
        }
        return best;
    }

    private void layers() {
        for (int layer = 1; layer <= Topics.LAST_LAYER; layer++) {
            List<Call> calls = calls();
            for (Topic topic : Topics.ofLayer(layer)) {
                if (!StageRace.DAILY.contains(topic.work())) {
                    settle(topic, calls.stream().map(call -> call.on(topic)).toList());
                }
            }
        }
    }

    private List<Call> calls() {
        List<Call> out = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            out.add(CallMaker.call(rules, demands.get(i), given));
        }
        return out;
    }

    private void settle(Topic topic, List<Decision> here) {
        RaceTopicSettler settler = new RaceTopicSettler(topic, days, here);
        RaceTopic settled = settler.settle();
        if (settled != null) {
            topics.put(topic, settled);
            given.put(topic, settled.value());
            wanted.put(topic, here);
        } else if (settler.applies()) {
            impossible.add(topic);
        }
    }

    private StageSetUp result() {
        EveningChangeFinder finder = new EveningChangeFinder(days, topics, wanted);
        List<EveningChange> changes = new ArrayList<>();
        List<Map<Topic, Long>> byDay = new ArrayList<>();
        days.forEach(day -> byDay.add(new LinkedHashMap<>(given)));
        for (Work work : race.mayChange()) {
            List<Map<Topic, Long>> mounted = work == Work.BIKE ? null : finder.of(work);
            if (mounted != null && keepsLimits(byDay, mounted)) {
                for (int i = 0; i < byDay.size(); i++) {
                    byDay.get(i).putAll(mounted.get(i));
                }
                changes.addAll(finder.changes(work, mounted));
            }
        }
        changes.sort((one, other) -> one.before() != other.before() ? one.before() - other.before() : one.work().compareTo(other.work()));
        List<StageDay> out = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            out.add(days.get(i).settledAs(CallMaker.call(rules, demands.get(i), byDay.get(i))));
        }
        return new StageSetUp(out, inOrder(), changes, impossible);
    }

    private List<RaceTopic> inOrder() {
        return Topics.all().stream().map(topics::get).filter(each -> each != null).toList();
    }

    /** Whether what is mounted day by day breaks no limit that the set-up of the race keeps. */
    private boolean keepsLimits(List<Map<Topic, Long>> byDay, List<Map<Topic, Long>> mounted) {
        for (int i = 0; i < byDay.size(); i++) {
            Map<Topic, Long> all = new LinkedHashMap<>(byDay.get(i));
            all.putAll(mounted.get(i));
            if (broken(CallMaker.call(rules, demands.get(i), all)) > broken(CallMaker.call(rules, demands.get(i), byDay.get(i)))) {
                return false;
            }
        }
        return true;
    }

    private static long broken(Call call) {
        return call.decisions().stream().flatMap(each -> each.lost().stream())
                .filter(each -> each.claim().author().rank() == Rank.LIMIT && each.claim().verb() != Verb.PREFER && each.claim().verb() != Verb.AVOID).count();
    }
}
