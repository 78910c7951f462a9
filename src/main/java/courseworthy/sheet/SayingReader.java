package courseworthy.sheet;

import courseworthy.claim.Verb;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.Node;
import courseworthy.topic.BothEnds;
import courseworthy.topic.Topic;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a {@code say} block: topics, each with one verb and value or a list of them. What is said of both ends becomes a saying on the
 * front topic and one on the rear topic.
 */
final class SayingReader {

    private static final List<Verb> VERBS = List.of(Verb.AT_LEAST, Verb.AT_MOST, Verb.PREFER, Verb.AVOID, Verb.RULE_OUT);
    private static final Pattern TIMES = Pattern.compile("((?:0|[1-9][0-9]{0,8})(?:\\.[0-9]{1,20})?|the .+?) x (.+)");

    private final String file;
    private final Faults faults;
    private final ValueTestReader values;
    private final NamedValues named;
    private final List<Saying> out = new ArrayList<>();
    private final Map<Topic, Set<Verb>> said = new HashMap<>();
    /** The name of the topic, or of both, as the row writes it. */
    private String name = "";

    SayingReader(String file, Faults faults, NamedValues named) {
        this.file = file;
        this.faults = faults;
        this.named = named;
        this.values = new ValueTestReader(file, faults, named);
    }

    List<Saying> read(Node node) {
        if (!(node instanceof Node.Mapping block) || block.entries().isEmpty()) {
            faults.add(file, node.line(), "say", node.describe(), "a block of topics, such as {fork travel: at least 120 mm}", "");
            return out;
        }
        for (Node.Entry entry : block.entries()) {
            name = entry.key().text();
            List<Topic> topics = BothEnds.topics(name);
            if (topics.isEmpty()) {
                faults.add(file, entry.key().line(), "say", entry.key().describe(), "a topic", Spelling.didYouMean(name, BothEnds.names()));
            }
            for (Topic topic : topics) {
                onTopic(topic, entry.value());
            }
        }
        return out;
    }

    private void onTopic(Topic topic, Node node) {
        Set<Verb> verbs = said.computeIfAbsent(topic, t -> EnumSet.noneOf(Verb.class));
        for (Node item : node instanceof Node.Sequence list ? list.items() : List.of(node)) {
            Saying saying = saying(topic, item);
            if (saying == null) {
                continue;
            }
            boolean once = saying.verb() != Verb.AVOID && saying.verb() != Verb.RULE_OUT;
            if (!verbs.add(saying.verb()) && once) {
                fault(item, "\"" + saying.verb().word() + "\" a second time", "each of at least, at most and prefer once", "");
            }
            out.add(saying);
        }
    }

    private Saying saying(Topic topic, Node node) {
        if (!(node instanceof Node.Scalar scalar)) {
            fault(node, node.describe(), "a verb and a value, or a list of them", "");
            return null;
        }
        Verb verb = verb(scalar);
        if (verb == null || !fits(verb, topic, scalar)) {
            return null;
        }
        String written = scalar.text().substring(verb.word().length() + 1);
        written = BothEnds.isPair(name) ? BothEnds.at(topic, written) : written;
        Node.Scalar value = new Node.Scalar(written, scalar.quoted(), scalar.cut(), scalar.line(), scalar.column());
        Saying.ValueSource worth = source(topic, value);
        return worth == null ? null : new Saying(topic, verb, worth, withFigure(written));
    }

    /** A factor that is named is shown with its figure; of a value by itself the claim has the figure. */
    private String withFigure(String written) {
        Matcher times = TIMES.matcher(written);
        return times.matches() ? named.shown(times.group(1)) + " x " + times.group(2) : written;
    }

    private Verb verb(Node.Scalar scalar) {
        for (Verb verb : VERBS) {
            if (scalar.text().startsWith(verb.word() + " ")) {
                return verb;
            }
        }
        List<String> words = VERBS.stream().map(Verb::word).toList();
        fault(scalar, scalar.describe(), "one of: " + String.join(", ", words) + ", then a value", nearestVerb(scalar.text(), words));
        return null;
    }

    private static String nearestVerb(String text, List<String> words) {
        String[] parts = text.split(" ");
        String mend = Spelling.didYouMean(parts[0], words);
        return mend.isEmpty() && parts.length > 1 ? Spelling.didYouMean(parts[0] + " " + parts[1], words) : mend;
    }

    private boolean fits(Verb verb, Topic topic, Node.Scalar scalar) {
        boolean bound = verb == Verb.AT_LEAST || verb == Verb.AT_MOST;
        boolean dislike = verb == Verb.AVOID || verb == Verb.RULE_OUT;
        if (bound && topic.kind() == Topic.Kind.OPTIONS) {
            fault(scalar, scalar.describe(), "prefer, avoid or rule out, since its options have no order", "");
            return false;
        }
        if (dislike && topic.kind() == Topic.Kind.QUANTITY) {
            fault(scalar, scalar.describe(), "at least, at most or prefer, since it is a quantity", "");
            return false;
        }
        return true;
    }

    private Saying.ValueSource source(Topic topic, Node.Scalar value) {
        Matcher times = TIMES.matcher(value.text());
        if (times.matches()) {
            BigDecimal factor = factor(value, times.group(1));
            return factor == null ? null : times(topic, value, factor, times.group(2));
        }
        boolean option = topic.kind() != Topic.Kind.QUANTITY && topic.option(value.text()) >= 0;
        if (!option && Measure.find(value.text()) != null) {
            return times(topic, value, BigDecimal.ONE, value.text());
        }
        if (topic.kind() == Topic.Kind.QUANTITY && value.text().matches("[a-z].*") && !NamedValues.isName(value.text())) {
            fault(value, value.describe(), "a value or a measure", Spelling.didYouMean(value.text(), Measure.names()));
            return null;
        }
        Long literal = values.value(value, TestSubject.of(topic).as(name));
        return literal == null || !sensible(topic, value, literal) ? null : new Saying.Literal(literal);
    }

    /** A written factor, or one that is named; null with a fault. */
    private BigDecimal factor(Node.Scalar value, String written) {
        if (!NamedValues.isName(written)) {
            return new BigDecimal(written);
        }
        Node.Scalar name = new Node.Scalar(written, value.quoted(), value.cut(), value.line(), value.column());
        Amount amount = named.amount(this.name, name, Dimension.NUMBER, file, faults);
        return amount == null ? null : amount.base();
    }

    private Saying.ValueSource times(Topic topic, Node.Scalar value, BigDecimal factor, String measured) {
        Measure measure = Measure.find(measured);
        if (measure == null) {
            fault(value, "\"" + measured + "\"", "a measure", Spelling.didYouMean(measured, Measure.names()));
            return null;
        }
        if (!alike(topic, measure.scale(), factor)) {
            String expected = topic.kind() == Topic.Kind.QUANTITY ? "a measure of the same dimension, or a value with its unit"
                    : "one of: " + String.join(", ", topic.options());
            fault(value, value.describe(), expected, "");
            return null;
        }
        if (measure.layer() >= topic.layer()) {
            fault(value, "\"" + measured + "\", known once layer " + measure.layer() + " is settled",
                    "a measure known before layer " + topic.layer(), "");
            return null;
        }
        return new Saying.Times(factor, measure);
    }

    private static boolean alike(Topic topic, MeasureScale scale, BigDecimal factor) {
        if (topic.kind() == Topic.Kind.QUANTITY) {
            return scale.kind() == MeasureScale.Kind.QUANTITY
                    && scale.resolution().unit().dimension() == topic.resolution().unit().dimension();
        }
        return scale.kind() != MeasureScale.Kind.QUANTITY && scale.words().equals(topic.options()) && factor.equals(BigDecimal.ONE);
    }

    private boolean sensible(Topic topic, Node.Scalar value, long literal) {
        if (literal >= topic.least() && literal <= topic.most()) {
            return true;
        }
        fault(value, value.describe(), "between " + topic.text(topic.least()) + " and " + topic.text(topic.most()), "");
        return false;
    }

    private void fault(Node node, String found, String expected, String mend) {
        faults.add(file, node.line(), name, found, expected, mend);
    }
}
