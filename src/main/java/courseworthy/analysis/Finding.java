package courseworthy.analysis;

import courseworthy.claim.RuleOrigin;
import courseworthy.sheet.Situation;
import java.util.List;
import java.util.Set;

/**
 * Something to look at in a sheet.
 *
 * @param kind    what kind of thing
 * @param rows    the row it is about first, then the one it is held against where there is one; none where it is about a topic
 * @param topic   the topic it is about; empty where it is about rows
 * @param text    what is so, in a sentence
 * @param mend    what to do about it, in a sentence
 * @param more    how many more rows it could be held against with the same outcome, that are not listed
 * @param example a situation that shows it, for a row that can never speak the nearest to its speaking; empty where none was found
 * @param shown   the same whole; null where none was found, or where it is a course
 * @param on      the topic on which it is to be looked at; empty for rows that only say what is to be done
 * @param asked   the row whose conditions show it, where one keeps silent in the example; else null
 * @param unmet   which of that row's conditions do not hold in the example, from 0 in the order written; all others do
 */
public record Finding(Kind kind, List<RuleOrigin> rows, String topic, String text, String mend, int more, List<Fact> example, Situation shown,
        String on, RuleOrigin asked, Set<Integer> unmet) {

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

    public Finding {
        rows = List.copyOf(rows);
        example = List.copyOf(example);
        unmet = Set.copyOf(unmet);
    }

    /** A remark without a row that keeps silent. */
    public Finding(Kind kind, List<RuleOrigin> rows, String topic, String text, String mend, int more, List<Fact> example, Situation shown,
            String on) {
        this(kind, rows, topic, text, mend, more, example, shown, on, null, Set.of());
    }

    /** The same, shown by a situation in which a row keeps silent, or none does. */
    Finding shown(List<Fact> facts, Situation situation, RuleOrigin silent, Set<Integer> without) {
        return new Finding(kind, rows, topic, text, mend, more, facts, situation, on, silent, without);
    }
}
