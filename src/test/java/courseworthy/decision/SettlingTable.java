package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Kind;
import courseworthy.topic.Topic.Safe;
import courseworthy.topic.TopicGroup;
import courseworthy.topic.Work;
import courseworthy.units.Resolution;
import courseworthy.units.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the table of settling cases. */
final class SettlingTable {

    /** One case: what is claimed, and what must come of it. */
    record Case(String sentence, Topic topic, List<Claim> claims, String gives, String consensus, Map<String, String> lost, String why) {
        @Override
        public String toString() {
            return sentence;
        }
    }

    private static final String FILE = "settling.cases.yaml";
    private static final Pattern CLAIM =
            Pattern.compile("(limit|rider|coach|shipped)(?: ([0-9]))? (must|should|may) (at least|at most|prefer|avoid|rule out|one of) (.+)");
    private static final Pattern MEMBER = Pattern.compile("([0-9.]+)(?: \\((.+)\\))?");

    private final Faults faults = new Faults();
    private final Map<String, Topic> topics = new LinkedHashMap<>();
    private final List<Case> cases = new ArrayList<>();

    private SettlingTable() {
        FieldReader top = new FieldReader(FILE, YamlReader.read(bytes(), FILE, faults), faults);
        FieldReader declared = top.fields("topics");
        for (Node.Entry entry : declared.block().entries()) {
            topics.put(entry.key().text(), topic(entry.key().text(), declared.fields(entry.key().text())));
        }
        for (FieldReader one : top.blocks("cases")) {
            cases.add(read(one));
        }
        top.done();
        faults.throwIfAny();
    }

    static List<Case> cases() {
        return new SettlingTable().cases;
    }

    private static byte[] bytes() {
        try (InputStream in = SettlingTable.class.getResourceAsStream(FILE)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Topic topic(String name, FieldReader fields) {
        Kind kind = Kind.valueOf(fields.prose("kind").toUpperCase(Locale.ROOT));
        Safe safe = Safe.valueOf(fields.prose("safe").toUpperCase(Locale.ROOT));
        long standard = Long.parseLong(fields.prose("default"));
        if (kind != Kind.QUANTITY) {
            List<String> options = fields.texts("options");
            return new Topic(name, "", kind, null, 1, 0, options.size() - 1, options, standard, 1, safe, List.of(), TopicGroup.BIKE, Work.BIKE, Set.of(), false, 1);
        }
        String symbol = fields.prose("unit");
        Unit unit = symbol.equals("ratio") ? Unit.RATIO : symbol.equals("count") ? Unit.ONE : Unit.ofSymbol(symbol);
        return new Topic(name, "", kind, Resolution.of(unit, fields.prose("resolution")), Long.parseLong(fields.prose("step")),
                Long.parseLong(fields.prose("from")), Long.parseLong(fields.prose("to")), List.of(), standard, 1, safe, List.of(), TopicGroup.BIKE, Work.BIKE, Set.of(), false, 1);
    }

    private Case read(FieldReader fields) {
        Topic topic = topics.get(fields.prose("topic"));
        List<Claim> claims = new ArrayList<>();
        FieldReader said = fields.fields("claims");
        for (Node.Entry entry : said.block().entries()) {
            claims.add(claim(entry.key().text(), topic, said.prose(entry.key().text())));
        }
        Map<String, String> lost = new LinkedHashMap<>();
        if (fields.has("lost")) {
            FieldReader listed = fields.fields("lost");
            listed.block().entries().forEach(entry -> lost.put(entry.key().text(), listed.prose(entry.key().text())));
        }
        Case read = new Case(fields.prose("case"), topic, claims, fields.prose("gives"), fields.prose("consensus"), lost,
                fields.prose("why"));
        fields.done();
        return read;
    }

    static Claim claim(String id, Topic topic, String text) {
        Matcher matcher = CLAIM.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(id + ": " + text);
        }
        Rank rank = Rank.valueOf(matcher.group(1).toUpperCase(Locale.ROOT));
        int sheet = matcher.group(2) == null ? 0 : Integer.parseInt(matcher.group(2));
        Force force = Force.valueOf(matcher.group(3).toUpperCase(Locale.ROOT));
        RuleOrigin author = origin(id, rank, sheet, force);
        for (Verb verb : Verb.values()) {
            if (verb.word().equals(matcher.group(4))) {
                return verb == Verb.ONE_OF ? existing(author, topic, matcher.group(5))
                        : Claim.of(author, topic, verb, value(topic, matcher.group(5)), matcher.group(5), List.of());
            }
        }
        throw new IllegalArgumentException(text);
    }

    static RuleOrigin origin(String id, Rank rank, int sheet, Force force) {
        return new RuleOrigin(id, rank, sheet, force, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
    }

    private static Claim existing(RuleOrigin author, Topic topic, String list) {
        List<Long> values = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        for (String member : list.split(", ")) {
            Matcher matcher = MEMBER.matcher(member);
            if (!matcher.matches()) {
                throw new IllegalArgumentException(member);
            }
            values.add(value(topic, matcher.group(1)));
            labels.add(matcher.group(2) == null ? "" : matcher.group(2));
        }
        return new Claim(author, topic, Verb.ONE_OF, values, labels, list, List.of());
    }

    private static long value(Topic topic, String text) {
        if (topic.kind() != Kind.QUANTITY) {
            int position = topic.option(text);
            if (position < 0) {
                throw new IllegalArgumentException(topic + " has no " + text);
            }
            return position;
        }
        for (long ticks = 0; ticks < 10_000; ticks++) {
            if (topic.text(ticks).equals(text)) {
                return ticks;
            }
        }
        throw new IllegalArgumentException(text + " of " + topic);
    }
}
