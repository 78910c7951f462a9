package courseworthy.rulebase.check;

import courseworthy.claim.Author;
import courseworthy.rulebase.Situation;
import java.util.List;

/**
 * Something to look at in a sheet.
 *
 * @param kind    what kind of thing
 * @param rows    the row it is about first, then the one it is held against where there is one; none where it is about a topic
 * @param topic   the topic it is about; empty where it is about rows
 * @param text    what is so, in a sentence
 * @param mend    what to do about it, in a sentence
 * @param more    how many more rows it could be held against with the same outcome, that are not listed
 * @param example a situation that shows it; empty where there is none, as for a row that can never speak
 * @param shown   the same whole; null where there is none, or where what it asks does not go together
 * @param on      the topic on which it is to be looked at
 */
public record Remark(Kind kind, List<Author> rows, String topic, String text, String mend, int more, List<Fact> example, Situation shown,
        String on) {

    /** Kinds of remarks, gravest first. */
    public enum Kind {
        NEVER("can never speak"), SET_ASIDE("never counts"), CONTRADICTS("contradicts"), IDENTICAL("identical"),
        EQUIVALENT("same in other words"), NEEDLESS("says nothing new"), REPEATS("repeats the house"), ALWAYS("always holds"),
        JOINABLE("could be one row"), OVERLAPS("overlaps with another answer"), GAP("nobody speaks"), UNREASONED("not reasoned about");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** One fact of an example, {@code hours} and {@code 4:01 h}. */
    public record Fact(String what, String value) {
    }

    public Remark {
        rows = List.copyOf(rows);
        example = List.copyOf(example);
    }
}
