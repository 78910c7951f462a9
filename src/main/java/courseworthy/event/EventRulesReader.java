package courseworthy.event;

import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.List;

/** Reads the block of an event's file that has the event's own rules on equipment. */
final class EventRulesReader {

    private static final String AT_MOST = "at most ";

    private EventRulesReader() {
    }

    /** @param from the block; null where there is none */
    static Event.Rules read(FieldReader from) {
        if (from == null) {
            return Event.Rules.NONE;
        }
        String edition = from.prose("edition");
        Event.Rules rules = new Event.Rules(second(from, "aero extensions", EventReader.ALLOWED), tyreWidth(from), second(from, "lights", EventReader.REQUIRED),
                second(from, "mudguards", EventReader.REQUIRED), second(from, "outside help", EventReader.ALLOWED), List.copyOf(from.texts("kit")),
                edition == null ? "" : edition, gearLimit(from));
        from.done();
        return rules;
    }

    private static Event.GearLimit gearLimit(FieldReader from) {
        Amount longest = from.amount("longest development", Dimension.LENGTH, 3, 12, "a development from 3 m to 12 m");
        Integer age = from.whole("longest development to age", 8, 99);
        if (age != null && !from.has("longest development")) {
            from.fault("longest development to age", "an age without a development", "longest development beside it", "Add a line \"longest development: 7.93 m\".");
        }
        return longest == null ? null : new Event.GearLimit(longest.inBase(), age);
    }

    /** Whether the second of two words is written; null where neither is. */
    private static Boolean second(FieldReader from, String key, List<String> words) {
        String word = from.word(key, words);
        return word == null ? null : Boolean.valueOf(word.equals(words.get(1)));
    }

    private static Double tyreWidth(FieldReader from) {
        String expected = "the widest tyre allowed, such as at most 45 mm";
        Node.Scalar value = from.scalar("tyre width", expected);
        if (value == null) {
            return null;
        }
        String question = value.text().startsWith(AT_MOST) ? Amount.question(value.text().substring(AT_MOST.length())) : "";
        try {
            if (value.text().startsWith(AT_MOST)) {
                double width = Amount.parse(value.text().substring(AT_MOST.length()), Dimension.LENGTH).inBase();
                if (width >= 0.018 && width <= 0.130) {
                    return width;
                }
            }
        } catch (Amount.NotAnAmount e) {
            // Said below.
        }
        from.fault("tyre width", value.describe(), expected, question.isEmpty() ? "Widths run from 18 mm to 130 mm." : question);
        return null;
    }
}
