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
 * @param on      the topic on which it is to be looked at; empty for rows that only say what is to be done
 * @param witness what shows it
 */
public record Finding(Kind kind, List<RuleOrigin> rows, String topic, String text, String mend, int more, String on,
        Witness witness) {

    /** Kinds of remarks, gravest first. */
    public enum Kind {
        NEVER("can never apply"), SET_ASIDE("never counts"), CONTRADICTS("contradicts"), IDENTICAL("identical"),
        EQUIVALENT("same in other words"), NEEDLESS("adds nothing"), REPEATS("repeats a shipped rule"), ALWAYS("always holds"),
        JOINABLE("could be one row"), OVERLAPS("overlaps with another answer"), GAP("no rule applies"), SILENT("applies to nobody"),
        TAG_WITHOUT_RIDERS("nobody has the tag"), UNREASONED("not reasoned about");

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

    /**
     * A situation that shows a finding, for a row that can never apply the nearest to its speaking.
     *
     * @param facts     of it; empty where none was found
     * @param situation the same whole; null where none was found, or where it is a course
     * @param silent    the row whose conditions show it, where one keeps silent there; else null
     * @param unmet     which of that row's conditions do not hold there, from 0 in the order written; all others do
     */
    public record Witness(List<Fact> facts, Situation situation, RuleOrigin silent, Set<Integer> unmet) {

        public static final Witness NONE = new Witness(List.of(), null, null, Set.of());

        public Witness {
            facts = List.copyOf(facts);
            unmet = Set.copyOf(unmet);
        }
    }

    public Finding {
        rows = List.copyOf(rows);
    }

    /** The same, shown by a situation. */
    Finding shownBy(Witness situation) {
        return new Finding(kind, rows, topic, text, mend, more, on, situation);
    }
}
