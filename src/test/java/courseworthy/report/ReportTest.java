package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import courseworthy.render.MarkdownRenderer;
import courseworthy.render.TerminalRenderer;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReportTest {

    private final Section inner = Section.builder("inner", "Inner").paragraph("x").build();
    private final Report report = Report.builder(RichText.of("Title")).paragraph("first")
            .section(Section.builder("outer", "Outer").section(inner)).section(Section.builder("empty", "Empty")).build();

    @Test
    void sectionsAreFoundAtEveryLevelAndEmptyOnesAreNotThere() {
        assertThat(report.section("inner")).contains(inner);
        assertThat(report.section("empty")).isEmpty();
        assertThat(report.withOnly(List.of(inner)).sections()).containsExactly(inner);
        assertThat(report.withOnly(List.of(inner)).lead()).isEmpty();
    }

    @Test
    void anEmptyReportIsAnEmptyPage() {
        assertThat(new TerminalRenderer(80, true).render(Report.EMPTY)).isEmpty();
        assertThat(new MarkdownRenderer().render(Report.EMPTY)).isEmpty();
    }

    @Test
    void idsAreDistinctAndPlain() {
        assertThatThrownBy(() -> Report.builder(RichText.EMPTY).section(inner).section(inner).build()).hasMessageContaining("two sections with the id inner");
        assertThatThrownBy(() -> Section.builder("Two words", "x").build()).hasMessageContaining("not an id");
    }

    @Test
    void aRowHasACellForEveryColumn() {
        assertThatThrownBy(() -> Table.builder().column("a").column("b").row("1").build()).hasMessage("1 cells in a table of 2 columns");
    }

    @Test
    void linksLeadToPathsAndWebAddressesAlone() {
        assertThatThrownBy(() -> RichText.of("x").link("y", "javascript:alert(1)")).isInstanceOf(IllegalArgumentException.class);
        assertThat(RichText.of("x").link("y", "topics/z.md").plain()).isEqualTo("xy");
    }

    @Test
    void emptyPiecesAddNothing() {
        assertThat(RichText.of("").strong("").quoted("").footnote("").append(RichText.EMPTY)).isEqualTo(RichText.EMPTY);
        assertThat(RichText.join(", ", List.of(RichText.of("a"), RichText.EMPTY, RichText.of("b"))).plain()).isEqualTo("a, b");
    }
}
