package courseworthy.task;

import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.LinkedHashMap;
import java.util.Map;

/** Reads a set-up: topics and their values as sheets write them, {@code front tyre width=45 mm, front insert=fitted}. */
final class SetUpReader {

    private static final String OPTION = "--set";
    private static final String EXAMPLE = "such as 'front tyre width=45 mm, rear tyre width=45 mm'";

    private final Faults faults;

    SetUpReader(Faults faults) {
        this.faults = faults;
    }

    /** Values in the topics' ticks or positions; what is at fault is left out. */
    Map<Topic, Long> read(String written) {
        Map<Topic, Long> out = new LinkedHashMap<>();
        for (String each : written.split(",", -1)) {
            int sign = each.indexOf('=');
            if (sign < 0) {
                fault("", RequestReader.quoted(each.strip()), "topic=value, " + EXAMPLE, "");
                continue;
            }
            String name = each.substring(0, sign).strip();
            Topic topic = Topics.find(name);
            if (topic == null) {
                String near = Spelling.didYouMean(name, Topics.names());
                fault("", RequestReader.quoted(name), "a topic", near.isEmpty() ? "'courseworthy topics' lists them." : near);
                continue;
            }
            Long value = value(topic, each.substring(sign + 1).strip());
            if (value != null && out.put(topic, value) != null) {
                fault(name, "a second value", "each topic once in a set-up", "Write another --set for another set-up.");
            }
        }
        return out;
    }

    private Long value(Topic topic, String written) {
        if (topic.kind() != Topic.Kind.QUANTITY) {
            int position = topic.option(written);
            if (position < 0) {
                fault(topic.name(), RequestReader.quoted(written), "one of: " + String.join(", ", topic.options()), Spelling.didYouMean(written, topic.options()));
            }
            return position < 0 ? null : Long.valueOf(position);
        }
        Dimension dimension = topic.resolution().unit().dimension();
        try {
            long ticks = topic.resolution().ticks(Amount.parse(written, dimension));
            if (ticks < topic.least() || ticks > topic.most()) {
                fault(topic.name(), RequestReader.quoted(written), "from " + topic.text(topic.least()) + " to " + topic.text(topic.most()), "");
                return null;
            }
            return ticks;
        } catch (Amount.NotAnAmount e) {
            fault(topic.name(), RequestReader.quoted(written), e.getMessage(), FieldReader.mend(written, dimension));
            return null;
        }
    }

    private void fault(String field, String found, String expected, String mend) {
        faults.add(OPTION, 0, field, found, expected, mend);
    }
}
