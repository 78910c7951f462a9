package courseworthy.call;

import courseworthy.call.DependencyGraph.RowLayer;
import courseworthy.claim.Claim;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.decision.Settler;
import courseworthy.demand.Demands;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.ClaimsWithoutGrounds;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.GearPairs;
import courseworthy.sheet.Saying;
import courseworthy.sheet.Stage;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Settles one topic anew with one measure changed, through all layers. Rows that read nothing that changed say what they said, and
 * topics on which the same is said stay as they are, so only the rest is asked again; it comes out as the whole call would.
 */
public final class WhatIfCall {

    private static final Topic BIKE = Topics.BIKE;

    private final DroolsRules rules;
    private final Topic target;
    private final DependencyGraph upstream;
    private final Demands demands;
    private final Map<Topic, Decision> decisions = new HashMap<>();
    private final Map<Topic, SettledTopic> settled = new HashMap<>();
    private final Map<RowLayer, List<Claim>> said = new IdentityHashMap<>();
    private final List<Claim> joined;
    private final Map<Joins, List<Claim>> joinsAsked = new HashMap<>();

    /** What joins are asked of: the topics settled otherwise, up to a layer, and the hardest gear that the event allows. */
    private record Joins(int layer, Map<Topic, Long> changed, Long hardest) {
    }

    /** For every topic of a call. */
    public WhatIfCall(DroolsRules rules, Call call) {
        this(rules, call, null);
    }

    /** @param target the topic to settle anew; null for all of them */
    WhatIfCall(DroolsRules rules, Call call, Topic target) {
        this.rules = rules;
        this.target = target;
        this.upstream = new DependencyGraph(rules, target);
        this.demands = target == null ? call.demands() : call.demands().settling(target);
        for (Decision decision : call.decisions()) {
            decisions.put(decision.topic(), decision);
            settled.put(decision.topic(), settled(decision));
        }
        for (int layer = 0; layer <= last(); layer++) {
            for (Topic topic : upstream.ofLayer(layer)) {
                for (RowLayer slot : upstream.speakers(topic)) {
                    said.computeIfAbsent(slot, s -> claimsOf(s, new Stage(s.layer(), demands, settled)));
                }
            }
        }
        this.joined = rules.joined(demands, settled.values());
    }

    /** What a row says; of the kind of bike, what it says on the bike at hand. */
    private static List<Claim> claimsOf(RowLayer slot, Stage stage) {
        Demands choosing = stage.demands().choosing();
        List<Claim> claims = ClaimsWithoutGrounds.claims(slot.row(), stage);
        if (choosing == null || slot.layer() > 0 || !slot.row().topics().contains(BIKE.name())) {
            return claims;
        }
        List<Claim> out = new ArrayList<>(claims);
        out.removeIf(claim -> claim.topic().equals(BIKE));
        on(BIKE, ClaimsWithoutGrounds.claims(slot.row(), new Stage(0, choosing, Map.of())), out);
        return out;
    }

    private int last() {
        return target == null ? Topics.LAST_LAYER : target.layer();
    }

    DependencyGraph upstream() {
        return upstream;
    }

    /** The values that rules may say of a topic: those written, those that measures give now, and those that exist. */
    List<Long> mayBeSaid(Topic topic) {
        List<Long> out = new ArrayList<>();
        for (RowLayer slot : upstream.speakers(topic)) {
            for (Saying saying : slot.row().sayings()) {
                if (saying.topic().equals(topic) && saying.source() instanceof Saying.Literal literal) {
                    out.add(literal.value());
                } else if (saying.topic().equals(topic) && saying.source() instanceof Saying.Times times
                        && demands.known(times.measure())) {
                    out.add(times.on(topic, demands.get(times.measure()).mid()));
                }
            }
        }
        for (Claim claim : on(topic, joined)) {
            out.addAll(claim.values());
        }
        return out;
    }

    private static SettledTopic settled(Decision decision) {
        boolean known = decision.status() == Status.SETTLED;
        return new SettledTopic(decision.topic(), known, known ? decision.value() : 0);
    }

    /**
     * What comes of a change.
     *
     * @param decision on the target
     * @param tyre     where the target is a pressure, what is decided otherwise of the tyre it is for
     */
    record TurnedDecision(Decision decision, List<Decision> tyre) {
    }

    /** The decision on the target where a measure has another value and all other stated measures are held. */
    TurnedDecision with(Measure measure, long value) {
        WhatIfRun run = new WhatIfRun(measure, value);
        return new TurnedDecision(run.decision(), run.tyre());
    }

    /** What comes out otherwise where a measure has another value and all other stated measures are held, by topic. */
    Map<Topic, Decision> all(Measure measure, long value) {
        return new WhatIfRun(measure, value).turned();
    }

    /** Whether two decisions on a topic differ in what a rider would do. */
    static boolean differ(Decision a, Decision b) {
        return a.status() != b.status() || !Objects.equals(a.value(), b.value());
    }

    private final class WhatIfRun {
        private Demands now;
        /** What is settled; copied once something is settled otherwise, as are the decisions. */
        private Map<Topic, SettledTopic> so = settled;
        private Map<Topic, Decision> decided = decisions;
        private final Map<Topic, Long> changed = new HashMap<>();
        private final Map<RowLayer, List<Claim>> saying = new IdentityHashMap<>();
        /** Rows to ask again after each layer; null where there are none. */
        private final List<Set<RowLayer>> asked = new ArrayList<>(Collections.nCopies(Topics.LAST_LAYER + 1, null));
        private final Set<Topic> otherwise = new HashSet<>();
        private final Set<Measure> moved;
        private boolean joinedAsBefore;

        WhatIfRun(Measure measure, long value) {
            now = demands.with(Map.of(measure, MeasureValue.exact(value)));
            moved = EnumSet.of(measure);
            ask(upstream.readers(measure));
        }

        private void ask(List<RowLayer> slots) {
            for (RowLayer slot : slots) {
                Set<RowLayer> of = asked.get(slot.layer());
                if (of == null) {
                    of = Collections.newSetFromMap(new IdentityHashMap<>());
                    asked.set(slot.layer(), of);
                }
                of.add(slot);
            }
        }

        Decision decision() {
            run();
            return decided.get(target);
        }

        /** The decisions that come out otherwise, by topic. */
        Map<Topic, Decision> turned() {
            run();
            Map<Topic, Decision> out = new HashMap<>();
            changed.keySet().forEach(topic -> out.put(topic, decided.get(topic)));
            return out;
        }

        private void run() {
            hear(0);
            for (int layer = 1; layer <= last(); layer++) {
                settle(layer);
                hear(layer);
            }
        }

        private List<Decision> tyre() {
            List<Decision> out = new ArrayList<>();
            for (Topic topic : Topics.ofTyre(target)) {
                if (differ(decided.get(topic), decisions.get(topic))) {
                    out.add(decided.get(topic));
                }
            }
            return out;
        }

        private void hear(int layer) {
            if (asked.get(layer) == null) {
                return;
            }
            Stage stage = new Stage(layer, now, so);
            for (RowLayer slot : asked.get(layer)) {
                List<Claim> claims = claimsOf(slot, stage);
                List<Claim> before = said.get(slot);
                if (!claims.equals(before)) {
                    saying.put(slot, claims);
                    claims.forEach(claim -> otherwise.add(claim.topic()));
                    before.forEach(claim -> otherwise.add(claim.topic()));
                }
            }
        }

        private void settle(int layer) {
            joinedAsBefore = isJoinedAsBefore();
            if (!otherwise.isEmpty() || !joinedAsBefore) {
                Map<Topic, Decision> news = new HashMap<>();
                for (Topic topic : upstream.ofLayer(layer)) {
                    if (otherwise.contains(topic) || appliesAnew(topic) || joinedAnew(topic)) {
                        settle(topic, news);
                    }
                }
                change(news);
            }
            derive(layer);
        }

        private void change(Map<Topic, Decision> news) {
            if (news.isEmpty()) {
                return;
            }
            if (changed.isEmpty()) {
                so = new HashMap<>(settled);
                decided = new HashMap<>(decisions);
            }
            decided.putAll(news);
            news.forEach((topic, decision) -> {
                SettledTopic one = settled(decision);
                so.put(topic, one);
                changed.put(topic, one.known() ? one.value() : null);
                ask(upstream.testers(topic));
            });
        }

        private void settle(Topic topic, Map<Topic, Decision> news) {
            List<Claim> claims = claims(topic);
            String why = Applicability.whyNot(topic, decided);
            Decision decision = why.isEmpty() ? Settler.settle(topic, claims) : Settler.notApplicable(topic, claims, why);
            if (differ(decision, decisions.get(topic))) {
                news.put(topic, decision);
            }
        }

        private List<Claim> claims(Topic topic) {
            List<Claim> out = new ArrayList<>();
            for (RowLayer slot : upstream.speakers(topic)) {
                List<Claim> now = saying.get(slot);
                on(topic, now == null ? said.get(slot) : now, out);
            }
            if (upstream.isJoined(topic)) {
                on(topic, joined(topic), out);
            }
            return out;
        }

        private boolean appliesAnew(Topic topic) {
            for (Topic.Applies applies : topic.applies()) {
                if (changed.containsKey(applies.topic())) {
                    return true;
                }
            }
            return false;
        }

        private boolean joinedAnew(Topic topic) {
            return !joinedAsBefore && upstream.isJoined(topic) && !on(topic, joined(topic)).equals(on(topic, joined));
        }

        private boolean isJoinedAsBefore() {
            return changed.isEmpty() && Objects.equals(GearPairs.allowed(now), GearPairs.allowed(demands));
        }

        private List<Claim> joined(Topic topic) {
            if (joinedAsBefore) {
                return joined;
            }
            return joinsAsked.computeIfAbsent(new Joins(topic.layer(), new HashMap<>(changed), GearPairs.allowed(now)), key -> {
                List<SettledTopic> before = new ArrayList<>();
                for (SettledTopic one : so.values()) {
                    if (one.topic().layer() < key.layer()) {
                        before.add(one);
                    }
                }
                return rules.joined(now, before);
            });
        }

        /** Measures that derive from decisions are known once their layer is settled. */
        private void derive(int layer) {
            if (layer == BIKE.layer()) {
                called();
            }
            if (!upstream.derives()) {
                return;
            }
            Map<Measure, MeasureValue> derived = DerivedMeasures.after(layer, now, so, this::derivesAnew);
            for (Measure measure : DerivedMeasures.ofLayer(layer)) {
                if (derivesAnew(measure) && !Objects.equals(derived.get(measure), now.get(measure))) {
                    moved.add(measure);
                    now = derived.containsKey(measure) ? now.with(Map.of(measure, derived.get(measure))) : now.without(measure);
                    ask(upstream.readers(measure));
                }
            }
        }

        private boolean derivesAnew(Measure measure) {
            return !Collections.disjoint(DerivedMeasures.measuresRead(measure), moved)
                    || !Collections.disjoint(DerivedMeasures.topicsRead(measure), changed.keySet());
        }

        /** Figures of the bike at hand hold where it is called. */
        private void called() {
            Demands before = now;
            now = now.calling(so.get(BIKE));
            for (Measure measure : now == before ? new Measure[0] : Measure.values()) {
                if (measure.ofTheBike() && !Objects.equals(before.get(measure), now.get(measure))) {
                    moved.add(measure);
                    ask(upstream.readers(measure));
                }
            }
        }
    }

    private static List<Claim> on(Topic topic, List<Claim> claims) {
        List<Claim> out = new ArrayList<>();
        on(topic, claims, out);
        return out;
    }

    private static void on(Topic topic, List<Claim> claims, List<Claim> out) {
        for (Claim claim : claims) {
            if (claim.topic().equals(topic)) {
                out.add(claim);
            }
        }
    }
}
