package courseworthy.sheet;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.Occasion;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.Dates;
import courseworthy.text.Node;
import courseworthy.topic.BothEnds;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Reads situations: measures by name, {@code decided}, {@code stretches}, {@code rider}, {@code rider tag} and {@code date}.
 * {@code unknown} takes a fact away.
 */
public final class SituationReader {

    private static final String UNKNOWN = "unknown";
    private static final String STRETCHES = "stretches";
    private static final String DECIDED = "decided";

    private final String file;
    private final Faults faults;
    private final ValueTestReader values;

    /** @param file the path as the user typed it, for faults */
    public SituationReader(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
        this.values = new ValueTestReader(file, faults);
    }

    /** A situation that differs from another as a block says; stretches are replaced as a whole. */
    public Situation changed(Situation base, String key, Node node) {
        Situation facts = base.copy();
        if (!(node instanceof Node.Mapping changes)) {
            faults.add(file, node.line(), key, node.describe(), "facts, such as {roughness: 2.4}", "");
            return facts;
        }
        List<StretchFacts> stretches = facts.stretches();
        Occasion occasion = facts.occasion();
        for (Node.Entry change : changes.entries()) {
            switch (change.key().text()) {
                case STRETCHES -> stretches = stretches(change.value());
                case DECIDED -> decided(change.value(), facts.settled());
                case OccasionCondition.Riders.KEY, OccasionCondition.Tags.KEY, OccasionCondition.Days.KEY -> occasion = occasion(change, occasion);
                default -> measure(change, facts.measures());
            }
        }
        return new Situation(facts.measures(), facts.settled(), stretches, occasion);
    }

    /** As {@link #changed}, for a whole call: it works out anew what follows from decisions, so that nobody can write it. */
    public Situation called(Situation base, String key, Node node) {
        for (Node.Entry entry : node instanceof Node.Mapping block ? block.entries() : List.<Node.Entry>of()) {
            Measure measure = Measure.find(entry.key().text());
            if (measure != null && measure.derived()) {
                faults.add(file, entry.key().line(), measure.written(), "what follows from decisions", "what it follows from",
                        "It is worked out from other figures: write start-line mass, and under decided the bike, tyre widths, casings and inserts.");
            }
        }
        return changed(base, key, node);
    }

    private Occasion occasion(Node.Entry change, Occasion was) {
        String key = change.key().text();
        if (key.equals(OccasionCondition.Days.KEY)) {
            return new Occasion(was.rider(), was.tags(), isUnknown(change.value()) ? null : date(change.value()));
        }
        if (isUnknown(change.value())) {
            return new Occasion(null, List.of(), was.date());
        }
        List<String> words = new OccasionReader(file, faults).words(key, change.value());
        if (words == null) {
            return was;
        }
        if (key.equals(OccasionCondition.Tags.KEY)) {
            return new Occasion(was.rider() == null ? "" : was.rider(), words, was.date());
        }
        if (words.size() > 1) {
            faults.add(file, change.value().line(), key, change.value().describe(), "one name", "");
        }
        return new Occasion(words.get(0), was.tags(), was.date());
    }

    private LocalDate date(Node node) {
        String text = node instanceof Node.Scalar scalar ? scalar.text() : "";
        LocalDate day = text.length() == "2026-05-09".length() ? OccasionReader.day(text) : null;
        if (day == null) {
            faults.add(file, node.line(), OccasionCondition.Days.KEY, node.describe(), "a day of the calendar such as 2026-05-09",
                    Dates.mend(text));
        }
        return day;
    }

    private void measure(Node.Entry change, Map<Measure, MeasureValue> measures) {
        Measure measure = Measure.find(change.key().text());
        if (measure == null) {
            unknown(change, "a measure, decided, stretches, rider, rider tag or date", Measure.names());
        } else if (isUnknown(change.value())) {
            measures.remove(measure);
        } else {
            Long value = values.value(change.value(), TestSubject.of(measure));
            if (value != null) {
                measures.put(measure, MeasureValue.exact(value));
            }
        }
    }

    private void decided(Node node, Map<Topic, SettledTopic> settled) {
        if (!(node instanceof Node.Mapping block)) {
            faults.add(file, node.line(), DECIDED, node.describe(), "topics, such as {bike: gravel}", "");
            return;
        }
        for (Node.Entry entry : block.entries()) {
            List<Topic> topics = BothEnds.topics(entry.key().text());
            if (topics.isEmpty()) {
                unknown(entry, "a topic", BothEnds.names());
            }
            for (Topic topic : topics) {
                decided(topic, entry, settled);
            }
        }
    }

    private void decided(Topic topic, Node.Entry entry, Map<Topic, SettledTopic> settled) {
        if (isUnknown(entry.value())) {
            settled.put(topic, new SettledTopic(topic, false, 0));
            return;
        }
        Long value = values.value(entry.value(), TestSubject.of(topic).as(entry.key().text()));
        if (value != null) {
            settled.put(topic, new SettledTopic(topic, true, value));
        }
    }

    /** Stretches, each with its length. */
    List<StretchFacts> stretches(Node node) {
        List<StretchFacts> out = new ArrayList<>();
        if (isUnknown(node)) {
            return out;
        }
        for (Node item : node instanceof Node.Sequence list ? list.items() : List.of(node)) {
            Map<StretchMeasure, Long> known = new EnumMap<>(StretchMeasure.class);
            if (item instanceof Node.Mapping block) {
                block.entries().forEach(entry -> stretch(entry, known));
            }
            if (known.getOrDefault(StretchMeasure.LENGTH, -1L) >= 0) {
                steep(item, known);
                out.add(new StretchFacts(known));
            } else {
                faults.add(file, item.line(), STRETCHES, item.describe(), "stretches, each with its length, such as {length: 1.5 km}", "");
            }
        }
        return out;
    }

    /** Nothing rises or drops by more than it is long; both are compared as the steps of their measures let them be known. */
    private void steep(Node item, Map<StretchMeasure, Long> known) {
        double rise = known.getOrDefault(StretchMeasure.ASCENT, 0L) + known.getOrDefault(StretchMeasure.DESCENT, 0L);
        double length = StretchMeasure.LENGTH.scale().resolution().base(known.get(StretchMeasure.LENGTH) + 1);
        if (rise > length) {
            faults.add(file, item.line(), STRETCHES, TestSubject.of(StretchMeasure.ASCENT).text((long) rise) + " up and down in "
                    + TestSubject.of(StretchMeasure.LENGTH).text(known.get(StretchMeasure.LENGTH)), "less climbing and descending than it is long",
                    "Check the units of length, ascent and descent.");
        }
    }

    private void stretch(Node.Entry entry, Map<StretchMeasure, Long> known) {
        StretchMeasure measure = StretchMeasure.find(entry.key().text());
        if (measure == null) {
            unknown(entry, "a property of a stretch", StretchMeasure.names());
        } else if (!isUnknown(entry.value())) {
            Long value = values.value(entry.value(), TestSubject.of(measure));
            if (value != null) {
                known.put(measure, value);
            }
        }
    }

    private void unknown(Node.Entry entry, String expected, List<String> accepted) {
        faults.add(file, entry.key().line(), "", entry.key().describe(), expected, Spelling.didYouMean(entry.key().text(), accepted));
    }

    private static boolean isUnknown(Node node) {
        return node instanceof Node.Scalar scalar && scalar.text().equals(UNKNOWN);
    }
}
