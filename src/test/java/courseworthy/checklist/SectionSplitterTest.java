package courseworthy.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.claim.Deadline;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cuts of long sections, by hand: at most nine items each (WHO 2009), as even as may be, and between two parts of the bike where that is near. */
class SectionSplitterTest {

    /** A letter an item, by its part. */
    @ParameterizedTest
    @CsvSource({
        "aaaaaaaaa, aaaaaaaaa",
        // All of one part: even shares, the longer ones first.
        "aaaaaaaaaa, aaaaa aaaaa",
        "aaaaaaaaaaa, aaaaaa aaaaa",
        "aaaaaaaaaaaaaaaaaaaaaa, aaaaaaaa aaaaaaa aaaaaaa",
        // The border nearest to the even share of 6.
        "aaaaaaabbbbb, aaaaaaa bbbbb",
        "aaaaabbbbbbb, aaaaa bbbbbbb",
        "aaaaaabbbbbb, aaaaaa bbbbbb",
        // Two borders as near: the earlier.
        "aaaaabbccccc, aaaaa bbccccc",
        // The nearer of two.
        "aaaabbbccccc, aaaabbb ccccc",
        "aaaaabbbcccc, aaaaa bbbcccc",
        // A border that leaves too much for the rest, or is too far on, is none.
        "aabbbbbbbbbb, aabbbb bbbbbb",
        "aaaaaaaaaabb, aaaaaa aaaabb",
        "aaabbbbbbbbb, aaa bbbbbbbbb",
        "aaaaaaaaabbb, aaaaaaaaa bbb",
        // Eighteen leave no choice.
        "aaaaaaaabbbbbbbbbb, aaaaaaaab bbbbbbbbb",
        // Three pieces of 19: 9, and then 10 more in two.
        "aaaaaaaaabbbbbbbbbb, aaaaaaaaa bbbbb bbbbb",
        "aaaaabbbbbbbbbcccccccc, aaaaa bbbbbbbbb cccccccc"})
    void piecesEndWhereAPartEnds(String parts, String pieces) {
        assertThat(String.join(" ", cut(parts))).isEqualTo(pieces);
    }

    /** Of two pieces each possible cut is looked at: none between parts is nearer to the middle than the one taken. */
    @Test
    void noCutBetweenPartsIsNearer() {
        Random random = new Random(20261129);
        for (int i = 0; i < 2000; i++) {
            StringBuilder parts = new StringBuilder("a");
            int size = 10 + random.nextInt(9);
            while (parts.length() < size) {
                char last = parts.charAt(parts.length() - 1);
                parts.append(random.nextInt(4) == 0 ? (char) (last + 1) : last);
            }
            List<String> pieces = cut(parts.toString());
            assertThat(pieces).hasSize(2);
            double middle = Math.ceil(size / 2.0);
            double nearest = Double.MAX_VALUE;
            for (int at = size - 9; at <= 9; at++) {
                if (parts.charAt(at - 1) != parts.charAt(at)) {
                    nearest = Math.min(nearest, Math.abs(at - middle));
                }
            }
            double taken = Math.abs(pieces.get(0).length() - middle);
            assertThat(taken).as("%s", parts).isEqualTo(nearest == Double.MAX_VALUE ? 0 : nearest);
        }
    }

    private static List<String> cut(String parts) {
        List<PendingItem> entries = new ArrayList<>();
        for (char part : parts.toCharArray()) {
            entries.add(new PendingItem(new ChecklistItem("Do", "Done", "Why.", false, String.valueOf(part), "", null), "", Deadline.NIGHT_BEFORE, 0, List.of()));
        }
        List<String> out = new ArrayList<>();
        for (List<PendingItem> piece : SectionSplitter.of(entries)) {
            StringBuilder text = new StringBuilder();
            piece.forEach(entry -> text.append(entry.item().part()));
            out.add(text.toString());
        }
        return out;
    }
}
