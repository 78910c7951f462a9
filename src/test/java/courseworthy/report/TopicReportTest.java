package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.decision.Decision;
import courseworthy.render.MarkdownRenderer;
import courseworthy.render.TerminalRenderer;
import courseworthy.task.Brief;
import courseworthy.task.TopicResult;
import courseworthy.topic.Topics;
import java.util.List;
import org.junit.jupiter.api.Test;

class TopicReportTest {

    private final Brief brief = ExampleBrief.rich().brief();

    private Report report(String topic) {
        return TopicReport.of(new TopicResult(brief, Topics.of(topic), ExampleBrief.flips()));
    }

    private String text(String topic) {
        return new TerminalRenderer(TerminalRenderer.STANDARD_WIDTH, false).render(report(topic));
    }

    @Test
    void everyClaimIsNamedWithItsFactsAndItsPlace() {
        String topic = text("front tyre width");
        assertThat(topic.lines().toList().get(0)).startsWith("front tyre width: 45 mm").endsWith("firmness: thin");
        assertThat(topic.replaceAll("\\s+", " ")).contains("FOR - prefer 45 mm Sharp stones cut")
                .contains("should; common practice - roughness: rough (2.3), needs at least rough")
                .contains("shipped/wide-on-rough, rules/tyres/width.yaml:12")
                .contains("AGAINST - prefer 38 mm: outvoted by shipped/wide-on-rough, shipped/x")
                .contains("RULES NOT CHECKED: MISSING INFORMATION - shipped/a: needs sharp stones, roughness (");
    }

    /** A topic without a value has limits and rules that were set aside, and nothing for or against it. */
    @Test
    void everyTopicCanBeReadInFull() {
        for (String topic : Topics.names()) {
            Decision decision = brief.on(Topics.of(topic));
            String markdown = new MarkdownRenderer().render(report(topic));
            assertThat(markdown).startsWith("# " + topic + ": ").contains("\n## What would change it\n");
            assertThat(markdown.contains("\n## For\n")).isEqualTo(decision.value() != null);
            assertThat(markdown.contains("\n## Against\n")).isEqualTo(decision.value() != null);
            assertThat(markdown.contains("\n## Limits\n")).isEqualTo(decision.value() == null && !decision.taken().isEmpty());
            assertThat(markdown.contains("\n## Set aside\n")).isEqualTo(decision.value() == null && !decision.lost().isEmpty());
            assertThat(List.of(text(topic).split("\n"))).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        }
    }

    @Test
    void whereNothingIsPossibleTheCauseIsACaution() {
        assertThat(text("front tyre pressure").replaceAll("\\s+", " "))
                .contains("! The floor against rim strikes lies above the marking");
    }
}
