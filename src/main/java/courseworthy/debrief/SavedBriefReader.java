package courseworthy.debrief;

import courseworthy.claim.Verb;
import courseworthy.debrief.SavedBrief.Advice;
import courseworthy.debrief.SavedBrief.SavedClaim;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.sheet.SheetInForce;
import courseworthy.text.JsonReader;
import courseworthy.text.Node;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Amount;
import courseworthy.units.Unit;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Reads a brief that was saved with {@code --format json}. Topics,
 * options and verbs that this version does not know are passed over: a brief may be years old.
 */
final class SavedBriefReader {

    /** Largest brief read, in bytes: those of long sheets come to some hundred kB. */
    private static final int MOST_BYTES = 8_000_000;
    /** No figure of a brief comes near. */
    private static final double BEYOND_ANY = 1e9;
    /** Formats that are read; of the first, ids of rules and words of options are put into those of today. */
    private static final Set<String> FORMATS = Set.of("1", "2");
    /** Measures that have another name than they had in earlier briefs. */
    private static final Map<String, String> RENAMED_MEASURES = Map.of("ground", "going");
    /** Rules that bear another id than they did in earlier briefs. */
    private static final Map<String, String> RENAMED_RULES = Map.ofEntries(
            Map.entry("house/food-for-who-seldom-races", "shipped/food-with-few-races-a-year"),
            Map.entry("house/known-pedals-for-who-seldom-races", "shipped/usual-pedals-with-few-races-a-year"),
            Map.entry("house/mechanic-of-ones-own", "shipped/kit-without-support"),
            Map.entry("house/plugs-for-a-mechanic-of-ones-own", "shipped/plugs-without-support"),
            Map.entry("house/burn-the-light", "shipped/time-the-main-light"),
            Map.entry("house/mend-a-flat-at-home", "shipped/practise-a-puncture-at-home"),
            Map.entry("house/told-where-and-when", "shipped/tell-someone-the-loop"),
            Map.entry("house/practise-a-flat-at-home", "shipped/practise-a-puncture-at-home"),
            Map.entry("limit/drop-over-15-cm", "limit/ledge-over-15-cm"),
            Map.entry("limit/drop-over-60-cm", "limit/ledge-over-60-cm"),
            Map.entry("limit/drop-over-120-cm", "limit/ledge-over-120-cm"));
    /** What the ids of shipped rules began with in earlier briefs. */
    private static final String SHIPPED_BEFORE = "house/";
    private static final String EXPECTED = "a brief saved with 'courseworthy brief ... --format json -o FILE'";

    private SavedBriefReader() {
    }

    /** @return null where it cannot be used; the faults say why */
    static SavedBrief read(Path path, String shown, Faults faults) {
        Node.Mapping tree = JsonReader.read(path, shown, MOST_BYTES, EXPECTED, faults);
        if (tree == null) {
            return null;
        }
        if (!FORMATS.contains(orEmpty(text(tree, "format"))) || !(tree.get("decisions") instanceof Node.Sequence decisions)) {
            faults.add(shown, 1, "", "another kind of file, or another format of brief", EXPECTED, "");
            return null;
        }
        Node.Mapping ride = block(tree, "ride");
        Node.Mapping total = ride == null ? null : block(ride, "total_s");
        Node.Mapping course = block(tree, "course");
        return new SavedBrief(shown, course == null ? "" : orEmpty(text(course, "name")), orEmpty(text(tree, "event")), orEmpty(text(tree, "rider")),
                text(tree, "date"), sheets(tree), time(total), orEmpty(text(tree, "attribution")), new SavedBrief.SavedWeather(demandText(tree, "going"), demand(tree, "coldest temperature"),
                        demand(tree, "hottest temperature")), advice(decisions, block(tree, "build")));
    }

    /** A time without its range, or a range without its time, is none that a day can be held against. */
    private static SavedBrief.Time time(Node.Mapping total) {
        Double likely = number(total, "value");
        Double fast = number(total, "low");
        Double slow = number(total, "high");
        return likely == null || fast == null || slow == null ? null : new SavedBrief.Time(likely, fast, slow);
    }

    /** A brief that names none was made with none. */
    private static List<SheetInForce> sheets(Node.Mapping tree) {
        List<SheetInForce> out = new ArrayList<>();
        for (Node item : tree.get("sheets") instanceof Node.Sequence list ? list.items() : List.<Node>of()) {
            if (item instanceof Node.Mapping sheet) {
                out.add(new SheetInForce(orEmpty(text(sheet, "name")), orEmpty(text(sheet, "author")), orEmpty(text(sheet, "version")),
                        orEmpty(text(sheet, "licence")), orEmpty(text(sheet, "file")), orEmpty(text(sheet, "sha256"))));
            }
        }
        return out;
    }

    private static List<Advice> advice(Node.Sequence decisions, Node.Mapping build) {
        List<Advice> out = new ArrayList<>();
        for (Node each : decisions.items()) {
            Topic topic = each instanceof Node.Mapping decision ? topic(orEmpty(text(decision, "topic"))) : null;
            Long value = topic == null ? null : value(topic, ((Node.Mapping) each).get("value"), text((Node.Mapping) each, "unit"));
            if (value != null) {
                Node.Mapping decision = (Node.Mapping) each;
                List<SavedClaim> claims = new ArrayList<>();
                said(claims, topic, decision.get("for"));
                said(claims, topic, decision.get("against"));
                out.add(new Advice(topic, value, words(topic, value, orEmpty(text(decision, "text"))), built(topic, value, build), claims));
            }
        }
        return out;
    }

    /** As it was shown; an option in its present word, which may be another than that of the day. */
    private static String words(Topic topic, Long value, String shown) {
        return value == null || topic.kind() == Topic.Kind.QUANTITY ? shown : topic.text(value);
    }

    /** What follows a value as it was written for people: a gear's ratio after its teeth, at which end, or why it is not allowed. */
    private static final Pattern REMARK = Pattern.compile("( \\(|, | at the (front|rear)).*");

    /** What the build had where it did not meet the advice, as it was written for people; null where that is not known. */
    private static Long built(Topic topic, long advised, Node.Mapping build) {
        if (build == null || !(build.get("not_met") instanceof Node.Sequence list)) {
            return advised;
        }
        for (Node item : list.items()) {
            if (item instanceof Node.Mapping notMet && topic.equals(topic(orEmpty(text(notMet, "topic"))))) {
                return shown(topic, REMARK.matcher(orEmpty(text(notMet, "got"))).replaceFirst(""));
            }
        }
        return advised;
    }

    private static Long shown(Topic topic, String text) {
        if (topic.kind() != Topic.Kind.QUANTITY) {
            return option(topic, text);
        }
        try {
            return topic.resolution().ticks(Amount.parse(text, topic.resolution().unit().dimension()));
        } catch (Amount.NotAnAmount | ArithmeticException e) {
            return null;
        }
    }

    /** The position of an option, which an older brief may have in other words; null where it is none. */
    private static Long option(Topic topic, String word) {
        int option = topic.option(topic.option(word) < 0 ? Spelling.synonym(word, topic.options()) : word);
        return option < 0 ? null : Long.valueOf(option);
    }

    private static void said(List<SavedClaim> to, Topic topic, Node claims) {
        if (!(claims instanceof Node.Sequence list)) {
            return;
        }
        for (Node item : list.items()) {
            Node.Mapping claim = item instanceof Node.Mapping mapping ? mapping : null;
            Node.Mapping says = claim == null ? null : block(claim, "says");
            Verb verb = says == null ? null : verb(text(says, "verb"));
            String id = claim == null ? null : text(claim, "rule");
            String rule = id == null ? null : presentId(id);
            if (verb != null && rule != null) {
                to.add(new SavedClaim(rule, "limit".equals(text(claim, "rank")), verb, value(topic, says.get("value"), text(says, "unit")),
                        words(topic, value(topic, says.get("value"), text(says, "unit")), orEmpty(text(says, "written"))), orEmpty(text(claim, "where")), grounds(claim)));
            }
        }
    }

    private static String presentId(String id) {
        String unchanged = id.startsWith(SHIPPED_BEFORE) ? "shipped/" + id.substring(SHIPPED_BEFORE.length()) : id;
        return RENAMED_RULES.getOrDefault(id, unchanged);
    }

    private static List<String> grounds(Node.Mapping claim) {
        List<String> out = new ArrayList<>();
        if (claim.get("grounds") instanceof Node.Sequence list) {
            for (Node ground : list.items()) {
                String measure = ground instanceof Node.Mapping block ? text(block, "measure") : null;
                if (measure != null) {
                    out.add(measure(measure));
                }
            }
        }
        return out;
    }

    private static Verb verb(String word) {
        for (Verb verb : Verb.values()) {
            if (verb.word().equals(word)) {
                return verb;
            }
        }
        return null;
    }

    /** Ticks or a position; null where it is not one value that this version knows. */
    private static Long value(Topic topic, Node node, String unit) {
        if (!(node instanceof Node.Scalar scalar)) {
            return null;
        }
        if (topic.kind() != Topic.Kind.QUANTITY) {
            return option(topic, scalar.text());
        }
        Unit expected = topic.resolution().jsonUnit();
        Double number = number(scalar);
        return number == null || !expected.symbol().equals(orEmpty(unit)) ? null
                : Long.valueOf(topic.resolution().ticks(expected == Unit.ONE ? number : expected.toBase(number)));
    }

    private static Double demand(Node.Mapping tree, String name) {
        Node.Mapping demand = demandOf(tree, name);
        return demand == null ? null : number(demand, "value");
    }

    private static String demandText(Node.Mapping tree, String name) {
        Node.Mapping demand = demandOf(tree, name);
        return demand == null ? null : text(demand, "value");
    }

    private static Node.Mapping demandOf(Node.Mapping tree, String name) {
        if (tree.get("demands") instanceof Node.Sequence list) {
            for (Node item : list.items()) {
                if (item instanceof Node.Mapping demand && name.equals(measure(text(demand, "name")))) {
                    return demand;
                }
            }
        }
        return null;
    }

    /** The topic of this name, or of the name that it had in an earlier brief; null where there is none. */
    private static Topic topic(String name) {
        Topic topic = Topics.find(name);
        return topic == null ? Topics.find(Spelling.synonym(name, Topics.names())) : topic;
    }

    private static String measure(String written) {
        return RENAMED_MEASURES.getOrDefault(orEmpty(written), written);
    }

    private static Node.Mapping block(Node.Mapping tree, String key) {
        return tree.get(key) instanceof Node.Mapping block ? block : null;
    }

    /** Null where it is absent or null. */
    private static String text(Node.Mapping tree, String key) {
        return tree.get(key) instanceof Node.Scalar scalar && (scalar.quoted() || !scalar.text().equals("null")) ? scalar.text() : null;
    }

    private static Double number(Node.Mapping tree, String key) {
        return tree != null && tree.get(key) instanceof Node.Scalar scalar ? number(scalar) : null;
    }

    private static Double number(Node.Scalar scalar) {
        try {
            double number = scalar.quoted() || scalar.text().length() > 40 ? Double.NaN : new BigDecimal(scalar.text()).doubleValue();
            return Math.abs(number) < BEYOND_ANY ? Double.valueOf(number) : null;
        } catch (NumberFormatException e) {
            return null;
        }
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }
}
