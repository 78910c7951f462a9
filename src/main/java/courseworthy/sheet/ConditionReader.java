package courseworthy.sheet;

import courseworthy.demand.Measure;
import courseworthy.demand.StretchMeasure;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.Node;
import courseworthy.topic.BothEnds;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.List;

/** Reads a {@code when} block into a condition, and remembers what it needs settled first, and in which line it says so. */
final class ConditionReader {

    private static final List<String> SPECIAL =
            List.of("decided", "any stretch", "no stretch", "share of course", "rider", "rider tag", "date", "any of", "none of");

    /** Something a condition tests that is known only after a layer. */
    record Needs(String key, String what, int layer, int line) {
    }

    private final String file;
    private final Faults faults;
    private final ValueTestReader tests;
    private final List<Needs> needs = new ArrayList<>();

    ConditionReader(String file, Faults faults, NamedValues named) {
        this.file = file;
        this.faults = faults;
        this.tests = new ValueTestReader(file, faults, named);
    }

    List<Needs> needs() {
        return needs;
    }

    /** A set of conditions, all of which must hold. What is wrong is left out, with a fault. */
    Condition.AllOf read(String key, Node node) {
        List<Condition> out = new ArrayList<>();
        if (node instanceof Node.Mapping block) {
            if (block.entries().isEmpty()) {
                faults.add(file, node.line(), key, "no condition", "at least one condition", "Remove the line if the rule always holds.");
            }
            for (Node.Entry entry : block.entries()) {
                condition(entry.key(), entry.value(), out);
            }
        } else {
            faults.add(file, node.line(), key, node.describe(), "a block of conditions", "");
        }
        return new Condition.AllOf(out);
    }

    private void condition(Node.Scalar key, Node value, List<Condition> out) {
        switch (key.text()) {
            case "decided" -> decided(value, out);
            case "any stretch" -> stretches(key.text(), true, value, out);
            case "no stretch" -> stretches(key.text(), false, value, out);
            case "share of course" -> share(value, out);
            case "rider", "rider tag", "date" -> occasion(key.text(), value, out);
            case "any of" -> out.add(new Condition.AnyOf(sets(key.text(), value)));
            case "none of" -> out.add(new Condition.NoneOf(sets(key.text(), value)));
            default -> measure(key, value, out);
        }
    }

    private void occasion(String key, Node value, List<Condition> out) {
        OccasionCondition test = new OccasionReader(file, faults).test(key, value);
        if (test != null) {
            out.add(new Condition.OccasionTest(test, ValueTestReader.written(value)));
        }
    }

    private void measure(Node.Scalar key, Node value, List<Condition> out) {
        Measure measure = Measure.find(key.text());
        if (measure == null) {
            unknownMeasure(key);
            return;
        }
        if (measure.layer() > 0) {
            needs.add(new Needs(key.text(), measure.written(), measure.layer(), key.line()));
        }
        ValueTest test = tests.test(value, TestSubject.of(measure));
        if (test != null) {
            out.add(new Condition.MeasureCondition(measure, test, tests.shown(value)));
        }
    }

    private void unknownMeasure(Node.Scalar key) {
        List<String> accepted = new ArrayList<>(SPECIAL);
        accepted.addAll(Measure.names());
        String mend = Spelling.didYouMean(key.text(), accepted);
        if (Topics.find(key.text()) != null) {
            mend = "It is a topic: write it under \"decided:\".";
        } else if (StretchMeasure.find(key.text()) != null) {
            mend = "It is a property of a stretch: write it under \"any stretch:\".";
        }
        faults.add(file, key.line(), key.text(), "an unknown measure", "a measure, or one of: " + String.join(", ", SPECIAL), mend);
    }

    private void decided(Node node, List<Condition> out) {
        if (!(node instanceof Node.Mapping block)) {
            faults.add(file, node.line(), "decided", node.describe(), "a block of topics", "");
            return;
        }
        for (Node.Entry entry : block.entries()) {
            Topic topic = Topics.find(entry.key().text());
            if (topic == null) {
                faults.add(file, entry.key().line(), "decided", entry.key().describe(), "a topic", topicMend(entry.key().text()));
                continue;
            }
            needs.add(new Needs("decided", topic.name(), topic.layer(), entry.key().line()));
            ValueTest test = tests.test(entry.value(), TestSubject.of(topic));
            if (test != null) {
                out.add(new Condition.DecisionCondition(topic, test, tests.shown(entry.value())));
            }
        }
    }

    /** Both ends at once would leave it open whether one of them is enough. */
    private static String topicMend(String name) {
        List<Topic> ends = BothEnds.topics(name);
        return ends.isEmpty() ? Spelling.didYouMean(name, Topics.names())
                : "Write \"" + ends.get(0).name() + "\" and \"" + ends.get(1).name()
                        + "\" on a line each where both must hold, or in a set each under \"any of:\" where one is enough.";
    }

    /** A set, or a list of sets each of which must be met. */
    private void stretches(String key, boolean any, Node node, List<Condition> out) {
        for (Node item : listOf(node)) {
            StretchConditions set = set(key, item);
            if (set == null) {
                continue;
            }
            if (set.each().isEmpty()) {
                faults.add(file, item.line(), key, "no condition on the ground of a stretch", "at least one besides length, ascent and descent",
                        "For the whole course, test distance, ascent or descent.");
                continue;
            }
            out.add(new Condition.Stretches(any, set));
        }
    }

    private StretchConditions set(String key, Node node) {
        if (!(node instanceof Node.Mapping block) || block.entries().isEmpty()) {
            faults.add(file, node.line(), key, node.describe(), "conditions on stretches, such as {sharp stones: yes, length: over 1 km}", "");
            return null;
        }
        List<StretchConditions.One> out = new ArrayList<>();
        for (Node.Entry entry : block.entries()) {
            StretchMeasure measure = StretchMeasure.find(entry.key().text());
            if (measure == null) {
                faults.add(file, entry.key().line(), key, entry.key().describe(), "one of: " + String.join(", ", StretchMeasure.names()),
                        Spelling.didYouMean(entry.key().text(), StretchMeasure.names()));
                continue;
            }
            ValueTest test = tests.test(entry.value(), TestSubject.of(measure));
            if (test != null) {
                out.add(new StretchConditions.One(measure, test, tests.shown(entry.value())));
            }
        }
        if (out.size() != block.entries().size()) {
            return null;
        }
        climbsMoreThanItIsLong(key, block, out);
        return StretchConditions.of(out);
    }

    private void climbsMoreThanItIsLong(String key, Node.Mapping block, List<StretchConditions.One> set) {
        double length = Double.POSITIVE_INFINITY;
        double climbed = 0;
        for (StretchConditions.One one : set) {
            if (one.test() instanceof ValueTest.Within within && one.measure().summed()) {
                boolean isLength = one.measure() == StretchMeasure.LENGTH;
                boolean open = within.most() == Long.MAX_VALUE;
                length = isLength && !open ? one.measure().scale().resolution().base(within.most() + 1) : length;
                climbed += isLength ? 0 : one.measure().scale().resolution().base(Math.max(0, within.least()));
            }
        }
        if (climbed > length) {
            faults.add(file, block.line(), key, "more ascent and descent than length", "a test that can hold", "No stretch climbs more than it is long.");
        }
    }

    private void share(Node node, List<Condition> out) {
        String key = "share of course";
        for (Node item : listOf(node)) {
            Node where = item instanceof Node.Mapping block ? block.get("where") : null;
            Node is = item instanceof Node.Mapping block ? block.get("is") : null;
            if (where == null || is == null || ((Node.Mapping) item).entries().size() != 2) {
                faults.add(file, item.line(), key, item.describe(), "where and is, such as {where: {surface: sand}, is: over 10 %}", "");
                continue;
            }
            StretchConditions set = set(key, where);
            ValueTest test = tests.test(is, TestSubject.SHARE);
            if (set != null && !set.summed().isEmpty()) {
                faults.add(file, where.line(), key, set.summed().get(0).measure().written(), "conditions on each stretch alone",
                        "Length, ascent and descent are for \"any stretch:\" and \"no stretch:\".");
            } else if (set != null && test != null) {
                out.add(new Condition.StretchShareCondition(set, test, tests.shown(is)));
            }
        }
    }

    /** Each set stands in a list of its own: in a block without dashes two lines would be one set, of which both must hold. */
    private List<Condition> sets(String key, Node node) {
        List<Condition> out = new ArrayList<>();
        if (node instanceof Node.Mapping block) {
            faults.add(file, node.line(), key, node.describe(), "a list of sets of conditions", dashes(block));
            return out;
        }
        if (listOf(node).isEmpty()) {
            faults.add(file, node.line(), key, "an empty list", "at least one set of conditions", "");
        }
        for (Node item : listOf(node)) {
            out.add(read(key, item));
        }
        return out;
    }

    private static String dashes(Node.Mapping block) {
        if (block.entries().isEmpty()) {
            return "";
        }
        String first = "- " + block.entries().get(0).key().text() + ": ...";
        if (block.entries().size() == 1) {
            return "Start it with a dash: \"" + first + "\".";
        }
        String second = block.entries().get(1).key().text() + ": ...";
        return "Start each set with a dash: \"" + first + "\" and \"- " + second + "\"; what must hold together stands in one set: \""
                + "- {" + first.substring(2) + ", " + second + "}\".";
    }

    private static List<Node> listOf(Node node) {
        return node instanceof Node.Sequence list ? list.items() : List.of(node);
    }
}
