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
import courseworthy.stage.StageSetUp.BikeSetUp;
import courseworthy.stage.StageSetUp.EveningChange;
import courseworthy.stage.StageSetUp.RaceTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.topic.Work;
import courseworthy.worth.Sensitivity;
import courseworthy.worth.WorthCalculator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

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
    private final List<StageDay> days = new ArrayList<>();

    /** Null where none is decided. */
    private final String kind;

    private StageSettler(RuleSet rules, StageRace race, String kind) {
        this.rules = rules;
        this.race = race;
        this.kind = kind;
    }

    /** On whatever bikes the days want. @param rides of each day, in order; their hours have to be known only where minutes are wanted */
    public static StageSetUp of(RuleSet rules, StageRace race, List<RideInput> rides) {
        return of(rules, race, rides, null);
    }

    /** @param kinds of bike that the rider has; null where that is not known, and any may be had */
    public static StageSetUp of(RuleSet rules, StageRace race, List<RideInput> rides, Set<String> kinds) {
        List<Call> calls = rides.stream().map(ride -> CallMaker.call(rules, ride)).toList();
        BikeSchedule schedule = BikeSchedule.of(race, rides, calls, kinds);
        List<StageSetUp> bikes = new ArrayList<>();
        for (String kind : schedule.kinds()) {
            StageSettler settler = new StageSettler(rules, race, kind);
            for (int i = 0; i < rides.size(); i++) {
                if (Objects.equals(kind, schedule.on(i))) {
                    settler.day(i + 1, rides.get(i), calls.get(i));
                }
            }
            settler.layers();
            bikes.add(settler.result());
        }
        return together(bikes, schedule.changes());
    }

    /** The set-ups of the bikes as one of the race. */
    private static StageSetUp together(List<StageSetUp> bikes, List<EveningChange> ofBikes) {
        List<EveningChange> changes = new ArrayList<>(ofBikes);
        bikes.forEach(each -> changes.addAll(each.changes()));
        changes.sort((one, other) -> one.before() != other.before() ? one.before() - other.before() : one.work().compareTo(other.work()));
        List<StageDay> days = new ArrayList<>();
        bikes.forEach(each -> days.addAll(each.days()));
        days.sort(Comparator.comparing(StageDay::number));
        return new StageSetUp(days, bikes.stream().map(each -> each.bikes().get(0)).toList(), changes,
                bikes.stream().flatMap(each -> each.impossible().stream()).distinct().toList());
    }

    private void day(int number, RideInput ride, Call alone) {
        Demands atHand = ride.atHand();
        Demands on = kind == null || kind.equals(atHand.ridden()) ? atHand : ride.on(kind).chosenBy(atHand);
        boolean same = kind == null || kind.equals(alone.on(Topics.BIKE).text());
        Call there = same ? alone : CallMaker.call(rules, on, Map.of(Topics.BIKE, (long) Topics.BIKE.option(kind)));
        demands.add(on);
        days.add(new StageDay(number, ride, alone, there, new WorthCalculator(there, there.demands().estimated() == null ? null : Sensitivity.of(there.demands()))));
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
        RaceTopic settled = topic == Topics.BIKE && kind != null ? settler.settleAs(Topics.BIKE.option(kind)) : settler.settle();
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
        List<StageDay> out = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            out.add(days.get(i).settledAs(CallMaker.call(rules, demands.get(i), byDay.get(i))));
        }
        return new StageSetUp(out, List.of(new BikeSetUp(kind, days.stream().map(StageDay::number).toList(), inOrder())), changes, impossible);
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
                .filter(each -> each.claim().origin().rank() == Rank.LIMIT && each.claim().verb() != Verb.PREFER && each.claim().verb() != Verb.AVOID).count();
    }
}
