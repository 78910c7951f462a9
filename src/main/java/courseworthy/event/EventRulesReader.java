package courseworthy.event;

import courseworthy.text.FieldReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.text.Node;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.List;

/** Reads the block of an event's file that has the event's own rules on equipment. */
final class EventRulesReader {

    private static final String AT_MOST = "at most ";
    /** Words for a rule that allows or forbids. */
    private static final List<String> ALLOWED = List.of("forbidden", "allowed");
    /** Words for a rule that requires. */
    private static final List<String> REQUIRED = List.of("not required", "required");

    private static final FileKeys DECLARED = new FileKeys();
    private static final FileKey<String> AERO_EXTENSIONS = DECLARED.word("aero extensions", "", ALLOWED);
    private static final FileKey<Double> LONGEST_DEVELOPMENT = DECLARED.others("tyre width").amount("longest development",
            "The highest gear allowed: how far a turn of the cranks takes the bike", Dimension.LENGTH, 3, 12, "a development from 3 m to 12 m");
    private static final FileKey<Integer> LONGEST_DEVELOPMENT_TO_AGE =
            DECLARED.whole("longest development to age", "The highest age it holds for, as reached in the year of the event", 8, 99);
    private static final FileKey<String> LIGHTS = DECLARED.word("lights", "", REQUIRED);
    private static final FileKey<String> MUDGUARDS = DECLARED.word("mudguards", "", REQUIRED);
    private static final FileKey<String> OUTSIDE_HELP = DECLARED.word("outside help", "", ALLOWED);

    /** The keys of {@code rules}, with the forms of their values. */
    static final List<FileKey<?>> KEY_FORMS = DECLARED.others("kit", "edition").all();

    private EventRulesReader() {
    }

    /** @param from the block; null where there is none */
    static Event.Rules read(FieldReader from) {
        if (from == null) {
            return Event.Rules.NONE;
        }
        String edition = from.prose("edition");
        Event.Rules rules = new Event.Rules(second(from, AERO_EXTENSIONS), tyreWidth(from), second(from, LIGHTS), second(from, MUDGUARDS),
                second(from, OUTSIDE_HELP), List.copyOf(from.texts("kit")), edition == null ? "" : edition, gearLimit(from));
        from.done();
        return rules;
    }

    private static Event.GearLimit gearLimit(FieldReader from) {
        Double longest = LONGEST_DEVELOPMENT.read(from);
        Integer age = LONGEST_DEVELOPMENT_TO_AGE.read(from);
        if (age != null && !from.has("longest development")) {
            from.fault("longest development to age", "an age without a development", "longest development beside it", "Add a line \"longest development: 7.93 m\".");
        }
        return longest == null ? null : new Event.GearLimit(longest, age);
    }

    /** Whether the second of two words is written; null where neither is. */
    private static Boolean second(FieldReader from, FileKey<String> key) {
        String word = key.read(from);
        return word == null ? null : Boolean.valueOf(word.equals(key.words().get(1)));
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
