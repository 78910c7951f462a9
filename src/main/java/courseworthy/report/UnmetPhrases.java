package courseworthy.report;

import courseworthy.build.Build.UnmetDecision;
import java.util.ArrayList;
import java.util.List;

/** What a build falls short of, in words: front and rear in one line where they fall short by the same. */
final class UnmetPhrases {

    private static final String FRONT = "front ";
    private static final String REAR = "rear ";
    private static final String AT_THE_FRONT = " at the front";
    private static final String AT_THE_REAR = " at the rear";

    private UnmetPhrases() {
    }

    /** {@code front and rear rim material: alloy, recommended carbon}, with the part that would do, where one is known. */
    static List<String> lines(List<UnmetDecision> unmet) {
        return joined(unmet).stream().map(each -> each.topic() + ": " + each.got() + ", recommended " + each.wanted()
                + (each.part().isEmpty() ? "" : ". You would need: " + each.part())).toList();
    }

    /** The same without parts. */
    static List<String> withoutParts(List<UnmetDecision> unmet) {
        return lines(unmet.stream().map(each -> new UnmetDecision(each.topic(), each.wanted(), each.got(), "")).toList());
    }

    /** {@code front and rear rim material alloy (recommended carbon), ...}. */
    static String inARow(List<UnmetDecision> unmet) {
        return String.join(", ", joined(unmet).stream().map(each -> each.topic() + " " + each.got() + " (recommended " + each.wanted() + ")").toList());
    }

    private static List<UnmetDecision> joined(List<UnmetDecision> unmet) {
        List<UnmetDecision> out = new ArrayList<>();
        List<UnmetDecision> left = new ArrayList<>(unmet);
        while (!left.isEmpty()) {
            UnmetDecision first = left.remove(0);
            UnmetDecision both = null;
            for (int i = 0; both == null && i < left.size(); i++) {
                both = both(first, left.get(i));
                if (both != null) {
                    left.remove(i);
                }
            }
            out.add(both == null ? first : both);
        }
        return out;
    }

    /** Two as one; null where they are not the same at the other end. */
    private static UnmetDecision both(UnmetDecision front, UnmetDecision rear) {
        if (!front.wanted().equals(rear.wanted())) {
            return null;
        }
        String part = front.part().isEmpty() || front.part().equals(rear.part()) ? rear.part() : front.part() + "; and " + rear.part();
        boolean ends = front.topic().startsWith(FRONT) && rear.topic().equals(REAR + front.topic().substring(FRONT.length()));
        if (ends && front.got().equals(rear.got())) {
            return new UnmetDecision("front and " + rear.topic(), front.wanted(), front.got(), part);
        }
        boolean got = front.got().endsWith(AT_THE_FRONT) && rear.got().equals(front.got().replace(AT_THE_FRONT, AT_THE_REAR));
        return front.topic().equals(rear.topic()) && got
                ? new UnmetDecision(front.topic(), front.wanted(), front.got().replace(AT_THE_FRONT, " at both ends"), part) : null;
    }
}
