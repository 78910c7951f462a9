package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.build.Build.UnmetDecision;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is the same at both ends is said once; what differs by end keeps its end. */
class UnmetPhrasesTest {

    private static UnmetDecision unmet(String topic, String wanted, String got, String part) {
        return new UnmetDecision(topic, wanted, got, part);
    }

    @Test
    void bothEndsStandInOneLine() {
        List<UnmetDecision> rims = List.of(unmet("front rim material", "carbon", "alloy", "a front wheel"), unmet("saddle", "long", "short", ""),
                unmet("rear rim material", "carbon", "alloy", "a rear wheel"));
        assertThat(UnmetPhrases.lines(rims)).containsExactly("front and rear rim material: alloy, recommended carbon. You would need: a front wheel; and a rear wheel",
                "saddle: short, recommended long");
        assertThat(UnmetPhrases.inARow(rims)).isEqualTo("front and rear rim material alloy (recommended carbon), saddle short (recommended long)");
    }

    @Test
    void aTopicOfBothEndsNamesThem() {
        assertThat(UnmetPhrases.withoutParts(List.of(unmet("pad compound", "sintered", "organic at the front", ""), unmet("pad compound", "sintered", "organic at the rear", ""))))
                .containsExactly("pad compound: organic at both ends, recommended sintered");
        assertThat(UnmetPhrases.withoutParts(List.of(unmet("pad compound", "sintered", "organic at the rear", "")))).containsExactly("pad compound: organic at the rear, recommended sintered");
    }

    @Test
    void whatDiffersStandsApart() {
        assertThat(UnmetPhrases.withoutParts(List.of(unmet("front rotor", "180 mm", "160 mm", ""), unmet("rear rotor", "160 mm", "140 mm", ""),
                unmet("front tyre width", "60 mm", "58 mm", ""), unmet("rear tyre width", "60 mm", "56 mm", "")))).hasSize(4);
    }
}
