package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.call.Flip;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Consensus;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Measure;
import courseworthy.render.MarkdownRenderer;
import courseworthy.topic.Topics;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How a change is shown. */
class FlipReportTest {

    private static Decision settled(String topic, long value) {
        return new Decision(Topics.of(topic), Status.SETTLED, value, "", Consensus.UNANIMOUS, List.of(), List.of(), "");
    }

    /** More air in mud is the narrower tyre's, and never reads as if mud asked for it. */
    @Test
    void aPressureInAnotherTyreNamesTheTyre() {
        Decision pressure = settled("front tyre pressure", 29);
        Flip same = new Flip(Measure.MUD, 5, 20, Flip.FlipDirection.UP, false, pressure, List.of());
        assertThat(FlipReport.line(same)).isEqualTo("mud from 5 % to 20 %: 1.45 bar (21 psi)");
        Flip other = new Flip(Measure.MUD, 5, 50, Flip.FlipDirection.UP, false, pressure, List.of(settled("front tyre width", 54)));
        assertThat(FlipReport.line(other)).isEqualTo("mud from 5 % to 50 %: 1.45 bar (21 psi) in another tyre, front tyre width 54 mm");
    }

    @Test
    void sixAreShownAndTheOthersCounted() {
        List<Flip> eight = java.util.stream.LongStream.range(0, 8)
                .mapToObj(i -> new Flip(Measure.MUD, 5, 20 + i, Flip.FlipDirection.UP, i == 0, settled("front tyre pressure", 29), List.of())).toList();
        String page = new MarkdownRenderer().render(Report.builder(RichText.of("x")).section(FlipReport.section(eight)).build());
        assertThat(page).contains("- mud from 5 % to 20 %: 1.45 bar (21 psi) (20 % is within the present uncertainty)",
                "- mud from 5 % to 25 %: 1.45 bar (21 psi)\n- and 2 larger changes (`--format json` lists all)\n").doesNotContain("26 %");
    }
}
