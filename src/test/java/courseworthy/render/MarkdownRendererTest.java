package courseworthy.render;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.report.CheckboxList;
import courseworthy.report.Definition;
import courseworthy.report.Figure;
import courseworthy.report.ItemList;
import courseworthy.report.picture.Bar;
import courseworthy.report.picture.BarChart;
import courseworthy.report.Report;
import courseworthy.report.RichText;
import courseworthy.report.Section;
import courseworthy.report.Table;
import courseworthy.worth.Gear;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkdownRendererTest {

    @Test
    void sectionsAreHeadingsOfTheirLevel() {
        assertThat(markdown(report().subtitle("debrief").paragraph("One.").section(Section.builder("a", "The day").aside("start 09:00").paragraph("Two.")
                .section(Section.builder("b", "In detail").remark("Three."))))).isEqualTo("""
                # Heather Ridge, debrief

                One.

                ## The day, start 09:00

                Two.

                ### In detail

                *Three.*
                """);
    }

    @Test
    void definitionsAreBulletsWithBoldLabels() {
        assertThat(markdown(report().definitions("Tyres", List.of(Definition.of("width", "45 mm").remark(RichText.of("settled"))
                .details(List.of(RichText.of("by one rule"))))))).isEqualTo("""
                # Heather Ridge

                **Tyres**

                - **width:** 45 mm (settled)
                  - by one rule
                """);
    }

    @Test
    void tablesAndBarChartsAreTables() {
        Figure figure = new Figure(RichText.of("Use"), new BarChart("Gear", "Time", List.of(new Bar("32x50", 600, "10 min"))), RichText.EMPTY);
        assertThat(markdown(report().table(Table.builder().caption("Gears").column("").figures("Speed").row("32x50", "8 km/h").build()).figure(figure)))
                .isEqualTo("""
                # Heather Ridge

                **Gears**

                | | Speed |
                | --- | ---: |
                | 32x50 | 8 km/h |

                **Use**

                | Gear | Time |
                | --- | ---: |
                | 32x50 | 10 min |
                """);
    }

    @Test
    void listsChecklistsCalloutsAndListings() {
        assertThat(markdown(report().caution("Let the pads cool.")
                .items(List.of(ItemList.Item.of(RichText.of("one"), List.of(RichText.of("below one"))))).numbered(List.of(RichText.of("first")))
                .checkboxes(List.of(new CheckboxList.Entry(true, RichText.of("Seat the tyre"), RichText.of("both beads seated"), RichText.EMPTY)))
                .listing("yaml", List.of("a: b")))).isEqualTo("""
                # Heather Ridge

                > **Caution:** Let the pads cool.

                - one
                  - below one

                1. first

                - [ ] **(!) Seat the tyre**\s\s
                  Done when: both beads seated

                ```yaml
                a: b
                ```
                """);
    }

    @Test
    void referencesLinksAndSources() {
        assertThat(markdown(report().paragraph(RichText.of("See ").crossReference("the day", "day").text(", ").crossReference("nothing", "gone")
                .text(" and ").link("this!", "topics/front tyre.md").text(".").footnote("Paper *A*"))
                .section(Section.builder("day", "The day, at 9 h!").paragraph("x")))).isEqualTo("""
                # Heather Ridge

                See [the day](#the-day-at-9-h), nothing and [this!](topics/front%20tyre.md). \\[1\\]

                ## The day, at 9 h!

                x

                ## Sources

                1. Paper \\*A\\*
                """);
    }

    /** The marks are left out where a parser would show them as they are. */
    @ParameterizedTest
    @ValueSource(strings = {"b", " b ", "(b)", "b*", "**", "\u00a0b"})
    void emphasisNeverShowsItsMarks(String words) {
        for (String around : List.of("", "x", " ", "(", "*")) {
            MarkdownReading page = new MarkdownReading(markdown(report().paragraph(RichText.of(around).strong(words).emphasised(words).text(around))));
            assertThat(page.text().replace(" ", "")).isEqualTo(("HeatherRidge" + around + words + words + around).replace(" ", ""));
        }
    }

    @Test
    void aTextThatWouldOpenAListOrAHeadingDoesNot() {
        for (String text : List.of("1. one", "2) two", "- item", "+ plus", "# x", "===", "---", "12.", "> q", "    code", "~~~", "```")) {
            List<String> outline = new MarkdownReading(markdown(report().paragraph(text))).outline();
            assertThat(outline).containsExactly("Heading", "Paragraph");
        }
    }

    private static Report.Builder report() {
        return Report.builder(RichText.ofQuoted("Heather Ridge"));
    }

    private static String markdown(Report.Builder report) {
        return new MarkdownRenderer().render(report.build());
    }
}
