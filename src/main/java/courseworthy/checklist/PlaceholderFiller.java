package courseworthy.checklist;

import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.Map;

/**
 * Puts values where a task names a topic or a measure in braces. A clause (what stands between commas or semicolons) that names
 * something without a value on this bike is left out, since it asks for something that is not there.
 */
final class PlaceholderFiller {

    /** Stands where advice leaves no value: the rider must not guess one. */
    static final String NO_VALUE = "none possible (see the brief)";

    private final Call call;
    private final Map<String, String> ofTheBuild;

    /** @param ofTheBuild what the parts of a build make of a topic's value, by topic; empty where there is none */
    PlaceholderFiller(Call call, Map<String, String> ofTheBuild) {
        this.call = call;
        this.ofTheBuild = ofTheBuild;
    }

    /** The text with its values, less the clauses that do not apply; empty where none is left. */
    String fill(String text) {
        if (text.indexOf('{') < 0) {
            return text;
        }
        StringBuilder out = new StringBuilder();
        int from = 0;
        while (from < text.length()) {
            int to = clauseEnd(text, from);
            String clause = filled(text.substring(from, to));
            if (clause != null) {
                out.append(clause);
            }
            from = to;
        }
        return tidy(out);
    }

    /** Whether everything the text names has a value. */
    boolean applies(String text) {
        return filled(text) != null;
    }

    /** The text with the names themselves where there is no value: for what must stay on the list in any case. */
    static String named(String text) {
        return text.replace("{", "").replace("}", "");
    }

    private String filled(String text) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', from)) {
            int close = text.indexOf('}', open);
            if (close < 0) {
                break;
            }
            String value = value(text.substring(open + 1, close));
            if (value == null) {
                return null;
            }
            out.append(text, from, open).append(value);
            from = close + 1;
        }
        return out.append(text, from, text.length()).toString();
    }

    private String value(String name) {
        Topic topic = Topics.find(name);
        if (topic != null) {
            return ofTheBuild.containsKey(name) ? ofTheBuild.get(name) : decided(call.on(topic));
        }
        Measure measure = Measure.find(name);
        if (measure == null) {
            return '{' + name + '}';
        }
        MeasureValue known = call.demands().get(measure);
        return known == null ? null : measure.scale().text(known.mid());
    }

    private static String decided(Decision decision) {
        return switch (decision.status()) {
            case SETTLED -> decision.text();
            case NONE_POSSIBLE -> NO_VALUE;
            case NOT_APPLICABLE -> null;
        };
    }

    /** The end of the clause that starts here, its comma or semicolon included; braces are never cut. */
    private static int clauseEnd(String text, int from) {
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '{') {
                int close = text.indexOf('}', i);
                i = close < 0 ? i : close;
            } else if ((c == ',' || c == ';') && i + 1 < text.length() && text.charAt(i + 1) == ' ') {
                return i + 1;
            }
        }
        return text.length();
    }

    private static String tidy(StringBuilder text) {
        String out = text.toString().strip();
        if (out.endsWith(",") || out.endsWith(";")) {
            out = out.substring(0, out.length() - 1);
        }
        return out.isEmpty() ? out : out.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + out.substring(1);
    }
}
