package courseworthy.call;

import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.engine.DroolsRules;
import courseworthy.sheet.Row;
import courseworthy.sheet.RuleInputs;
import courseworthy.sheet.Saying;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Applies;
import courseworthy.topic.Topics;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What can bear on one topic: topics settled before it, rows that speak on any of them, and what those rows read. */
final class DependencyGraph {

    /** A row and a layer after which it speaks. */
    record RowLayer(Row row, int layer) {
    }

    private final Set<String> joined;
    private final Map<Topic, List<Row>> speaking = new HashMap<>();
    private final Set<Topic> topics = new HashSet<>();
    private final List<List<Topic>> byLayer = new ArrayList<>();
    private final Map<Topic, List<RowLayer>> speakers = new HashMap<>();
    private final Map<Measure, List<RowLayer>> readers = new EnumMap<>(Measure.class);
    private final Map<Topic, List<RowLayer>> testers = new HashMap<>();
    private boolean derives;
    private boolean derivesFromMeasures;

    /** @param target null for all topics */
    DependencyGraph(DroolsRules rules, Topic target) {
        this.joined = new HashSet<>(rules.topicsOfJoins().values());
        for (Row row : rules.rows()) {
            for (Topic topic : spokenOn(row)) {
                speaking.computeIfAbsent(topic, t -> new ArrayList<>()).add(row);
            }
        }
        if (target == null) {
            Topics.all().forEach(this::reach);
        } else {
            reach(target);
        }
        for (int layer = 0; layer <= Topics.LAST_LAYER; layer++) {
            byLayer.add(new ArrayList<>());
        }
        for (Topic topic : Topics.all()) {
            if (topics.contains(topic)) {
                byLayer.get(topic.layer()).add(topic);
            }
        }
        index();
    }

    private static Set<Topic> spokenOn(Row row) {
        Set<Topic> out = new HashSet<>();
        for (Saying saying : row.sayings()) {
            out.add(saying.topic());
        }
        return out;
    }

    private void reach(Topic target) {
        Deque<Topic> open = new ArrayDeque<>(List.of(target));
        while (!open.isEmpty()) {
            Topic topic = open.pop();
            if (topics.add(topic)) {
                open.addAll(before(topic));
            }
        }
    }

    /** The topics that bear on a topic directly. A join may read any topic of an earlier layer. */
    private Set<Topic> before(Topic topic) {
        Set<Topic> out = new HashSet<>();
        for (Applies applies : topic.applies()) {
            out.add(applies.topic());
        }
        if (joined.contains(topic.name())) {
            for (Topic earlier : Topics.all()) {
                if (earlier.layer() < topic.layer()) {
                    out.add(earlier);
                }
            }
        }
        for (Row row : speaking.getOrDefault(topic, List.of())) {
            out.addAll(RuleInputs.topics(row));
            for (Measure measure : RuleInputs.measures(row)) {
                derives |= measure.derived();
                derivesFromMeasures |= DerivedMeasures.readsMeasures(measure);
                out.addAll(DerivedMeasures.topicsRead(measure));
            }
        }
        return out;
    }

    private void index() {
        Set<Row> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (List<Topic> layer : byLayer) {
            for (Topic topic : layer) {
                for (Row row : speaking.getOrDefault(topic, List.of())) {
                    if (seen.add(row)) {
                        index(row);
                    }
                }
            }
        }
    }

    private void index(Row row) {
        for (int layer : row.layers()) {
            if (row.after(layer).stream().noneMatch(saying -> topics.contains(saying.topic()))) {
                continue; // After this layer it says nothing that bears on the topic.
            }
            RowLayer slot = new RowLayer(row, layer);
            for (Saying saying : row.sayings()) {
                List<RowLayer> on = speakers.computeIfAbsent(saying.topic(), t -> new ArrayList<>());
                if (row.layer(saying) == layer && (on.isEmpty() || on.get(on.size() - 1) != slot)) {
                    on.add(slot);
                }
            }
            for (Measure measure : RuleInputs.measures(row)) {
                readers.computeIfAbsent(measure, m -> new ArrayList<>()).add(slot);
            }
            for (Topic topic : RuleInputs.topics(row)) {
                testers.computeIfAbsent(topic, t -> new ArrayList<>()).add(slot);
            }
        }
    }

    /** The topics of a layer, in the order of the catalogue. */
    List<Topic> ofLayer(int layer) {
        return byLayer.get(layer);
    }

    /** Rows that speak on a topic. */
    List<RowLayer> speakers(Topic topic) {
        return speakers.getOrDefault(topic, List.of());
    }

    /** Rows that read a measure. */
    List<RowLayer> readers(Measure measure) {
        return readers.getOrDefault(measure, List.of());
    }

    /** Rows that test what is settled on a topic. */
    List<RowLayer> testers(Topic topic) {
        return testers.getOrDefault(topic, List.of());
    }

    boolean isJoined(Topic topic) {
        return joined.contains(topic.name());
    }

    /** Whether measures that derive from decisions bear on it. */
    boolean derives() {
        return derives;
    }

    /** Whether measures that derive from other measures bear on it. */
    boolean derivesFromMeasures() {
        return derivesFromMeasures;
    }

    /** Every measure that may be stated and bears on it, in the order of the catalogue. */
    Set<Measure> measures() {
        Set<Measure> out = EnumSet.noneOf(Measure.class);
        out.addAll(readers.keySet());
        if (derivesFromMeasures) {
            out.addAll(DerivedMeasures.read());
        }
        out.removeIf(Measure::derived);
        return out;
    }
}
