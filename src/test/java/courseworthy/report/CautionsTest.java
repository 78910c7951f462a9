package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.task.Request;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cautions on loads, and pressures as the brief tells them. */
class CautionsTest {

    private static String brief(String course, String rider) {
        String file = rider == null ? null : "docs/examples/riders/" + rider + ".yaml";
        Request request = Request.builder(course).event("docs/examples/events/" + course + ".yaml").rider(file).build();
        return new ToolOutput().brief(request, Format.TEXT).replaceAll("\\s+", " ");
    }

    /** Over the 100 kg in all for which brakes are tested (ISO 4210-4, adopted 2017) the marks have to be read. */
    @Test
    void aHeavyLoadReadsTheMarks() {
        assertThat(brief("flintmoor-100", "joss-steel")).contains("the mass limit of the bike is not given");
        assertThat(brief("flintmoor-100", null)).doesNotContain("the mass limit of the bike");
    }

    /** The heat test is of one brake (ISO 4210-2, 4.6.9): what both turn into heat together is not held against it as one. */
    @Test
    void theHeatTestIsOfOneBrake() {
        assertThat(brief("grey-shoulder", null)).contains("both brakes together turn about", "One brake by itself is tested at 300 W or so");
    }

    @Test
    void pressuresInTheWetHavePsiToo() {
        assertThat(brief("grey-shoulder", null)).containsPattern("if it turns wet front \\d\\.\\d+ bar \\(\\d+ psi\\), rear \\d\\.\\d+ bar \\(\\d+ psi\\)");
    }
}
