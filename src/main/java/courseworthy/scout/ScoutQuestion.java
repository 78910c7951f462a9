package courseworthy.scout;

import courseworthy.course.GroundOrigin;
import courseworthy.course.GroundPairs;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Pieces of one class, which one look answers together: the same tags on the map, the same guess.
 *
 * @param pieces  in order of the course, at least one
 * @param origin  what the map says of them; null where they were not taken from a map
 * @param answers what may be found; empty where it was not worked out
 */
public record ScoutQuestion(List<UnknownPiece> pieces, GroundOrigin origin, List<PossibleAnswer> answers) {

    /** Less than this is not worth a way, s (judgement). */
    static final double WORTH_A_LOOK = 30;

    public ScoutQuestion {
        pieces = List.copyOf(pieces);
        answers = List.copyOf(answers);
    }

    /** Length in m. */
    public double length() {
        return pieces.stream().mapToDouble(UnknownPiece::length).sum();
    }

    /** Seconds between the fastest and the slowest that may be found. */
    public double hanging() {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (PossibleAnswer answer : answers) {
            least = Math.min(least, answer.seconds());
            most = Math.max(most, answer.seconds());
        }
        return answers.isEmpty() ? 0 : most - least;
    }

    /** Topics that one answer or another would decide otherwise, in alphabetical order. */
    public Set<String> topics() {
        Set<String> out = new TreeSet<>();
        answers.forEach(answer -> out.addAll(answer.changes().keySet()));
        return out;
    }

    /** Whether it is worth a look: an answer changes a decision, or the time by {@link #WORTH_A_LOOK}. */
    public boolean matters() {
        return hanging() >= WORTH_A_LOOK || !topics().isEmpty();
    }

    /** The keys in which answers differ, with what each may be, as a profile writes it. */
    public Map<String, Set<String>> differing() {
        Map<String, Set<String>> out = new LinkedHashMap<>();
        for (PossibleAnswer answer : answers) {
            GroundPairs.of(answer.ground()).forEach((key, value) -> out.computeIfAbsent(key, none -> new LinkedHashSet<>()).add(value));
        }
        out.values().removeIf(values -> values.size() < 2);
        return out;
    }
}
