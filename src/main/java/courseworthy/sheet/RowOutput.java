package courseworthy.sheet;

import courseworthy.claim.Task;
import courseworthy.claim.Verb;
import courseworthy.demand.MeasureValue;
import courseworthy.topic.Topic;
import courseworthy.units.Resolution;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a row gives where it applies, one line for each thing, in alphabetical order, so that what a case expects can be compared with it.
 *
 * @param says what it says on topics, {@code gloves: at least winter}; a value that comes from a measure as it is in the situation
 * @param does by when its checklist item is due and what else bears on its place in the list, {@code by: night before}
 */
public record RowOutput(List<String> says, List<String> does) {

    private static final Resolution MINUTES = Resolution.of(Unit.MIN, "1");
    private static final int SECONDS_PER_MINUTE = 60;

    public RowOutput {
        says = says.stream().sorted().toList();
        does = does.stream().sorted().toList();
    }

    /** What a row gives in a situation in which it applies; nothing on a topic whose value is not known there. */
    public static RowOutput of(Row row, Situation facts) {
        List<String> says = new ArrayList<>();
        for (Saying saying : row.sayings()) {
            Long value = value(saying, facts);
            if (value != null) {
                says.add(line(saying.topic(), saying.verb(), value));
            }
        }
        return new RowOutput(says, row.task() == null ? List.of() : lines(row.task()));
    }

    /** The measures whose values it says, and which are not known in a situation. */
    public static List<String> unknown(Row row, Situation facts) {
        List<String> out = new ArrayList<>();
        for (Saying saying : row.sayings()) {
            if (saying.source() instanceof Saying.Times times && value(saying, facts) == null) {
                out.add(times.measure().written());
            }
        }
        return out.stream().distinct().toList();
    }

    private static Long value(Saying saying, Situation facts) {
        if (saying.source() instanceof Saying.Literal literal) {
            return literal.value();
        }
        Saying.Times times = (Saying.Times) saying.source();
        MeasureValue value = facts.demands().get(times.measure());
        return value == null ? null : times.on(saying.topic(), value.mid());
    }

    /** One thing said on a topic. */
    static String line(Topic topic, Verb verb, long value) {
        return topic.name() + ": " + verb.word() + " " + topic.text(value);
    }

    private static List<String> lines(Task task) {
        List<String> out = new ArrayList<>(List.of("by: " + task.due().words()));
        if (task.needs() > 0) {
            out.add("needs: " + time(task.needs()));
        }
        if (task.critical()) {
            out.add("critical: yes");
        }
        for (String id : task.after()) {
            out.add("after: " + id.substring(id.lastIndexOf('/') + 1));
        }
        return out;
    }

    /** A time that an item needs, to the minute. */
    static String time(long seconds) {
        return MINUTES.text(seconds / SECONDS_PER_MINUTE);
    }

    /** As a case would expect it, {@code says: {gloves: [at least long, prefer winter]}}. */
    public String written() {
        List<String> out = new ArrayList<>();
        if (!says.isEmpty()) {
            out.add("says: " + block(says));
        }
        if (!does.isEmpty()) {
            out.add("does: " + block(does));
        }
        return String.join(", ", out);
    }

    private static String block(List<String> lines) {
        Map<String, List<String>> byKey = new LinkedHashMap<>();
        for (String line : lines) {
            int end = line.indexOf(": ");
            byKey.computeIfAbsent(line.substring(0, end), key -> new ArrayList<>()).add(line.substring(end + 2));
        }
        List<String> out = new ArrayList<>();
        byKey.forEach((key, values) -> out.add(key + ": " + (values.size() == 1 ? values.get(0) : "[" + String.join(", ", values) + "]")));
        return "{" + String.join(", ", out) + "}";
    }
}
