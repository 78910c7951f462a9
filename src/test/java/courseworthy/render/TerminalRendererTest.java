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
import courseworthy.report.Style;
import courseworthy.report.Table;
import courseworthy.worth.Gear;
import java.util.List;
import org.junit.jupiter.api.Test;

class TerminalRendererTest {

    @Test
    void titleAndSubtitleStandAtBothEndsOfALine() {
        assertThat(text(report().subtitle("debrief").paragraph("One."))).isEqualTo(
                "Heather Ridge" + " ".repeat(60) + "debrief\nOne.\n");
        assertThat(text(report().subtitle("x".repeat(70)))).isEqualTo("Heather Ridge\n" + "x".repeat(70) + "\n");
    }

    @Test
    void ofAHeadingOurWordsAreInCapitalsAndQuotedOnesAreNot() {
        assertThat(text(report().section(Section.builder("a", RichText.of("The day of ").quoted("Kim")).aside("start 09:00").paragraph("One.")
                .section(Section.builder("b", "In detail").paragraph("Two."))))).isEqualTo("""
                Heather Ridge

                THE DAY OF Kim                                                       start 09:00
                  One.

                In detail
                  Two.
                """);
    }

    @Test
    void sectionsWithNothingInThemAreLeftOut() {
        assertThat(text(report().section(Section.builder("a", "Empty").paragraph("").bullets(List.of())
                .section(Section.builder("b", "Empty too"))))).isEqualTo("Heather Ridge\n");
    }

    @Test
    void valuesAndRemarksOfOneSectionStandAtTheSameColumns() {
        assertThat(text(report().section(Section.builder("a", "Set-up")
                .definitions("Tyres", List.of(Definition.of("front tyre width", "45 mm").remark(RichText.of("settled"))))
                .definitions("Gears", List.of(Definition.of("easiest gear", "word ".repeat(14).strip()).remark(RichText.of("split"))
                        .details(List.of(RichText.of("by one rule")))))))).isEqualTo("""
                Heather Ridge

                SET-UP
                Tyres
                  front tyre width  45 mm                                                settled
                Gears
                  easiest gear      word word word word word word word word word word    split
                                    word word word word
                    by one rule
                """);
    }

    @Test
    void aLabelThatIsTooWideStandsAboveItsValue() {
        assertThat(text(report().definitions(List.of(Definition.of("short", "1"), Definition.of("a label " + "of many words ".repeat(3).strip(), "2")))))
                .isEqualTo("""
                Heather Ridge
                short  1
                a label of many words of many words of many words
                       2
                """);
    }

    @Test
    void figuresAreFlushRightAndHeadingsMayTakeTwoLines() {
        Table table = Table.builder().column("Gear").figures("Last long climb of the day").figures("Speed")
                .row("32x50", "51 rpm", "8.1 km/h").row("32x46", "112 rpm", "10.0 km/h").build();
        assertThat(text(report().section(Section.builder("a", "Gears").table(table).remark("Late in the day.")))).isEqualTo("""
                Heather Ridge

                GEARS
                  Gear   Last long climb of the day      Speed
                  32x50                      51 rpm   8.1 km/h
                  32x46                     112 rpm  10.0 km/h
                  Late in the day.
                """);
    }

    @Test
    void optionalColumnsAreLeftOutBeforeAnythingIsWrapped() {
        Table table = Table.builder().column("Hour").column(RichText.of("Work"), courseworthy.report.TableColumn.Alignment.LEFT, true)
                .column("Food").row("first", "w".repeat(50), "f".repeat(22)).build();
        assertThat(text(report().table(table))).isEqualTo("Heather Ridge\n\nHour   Food\nfirst  " + "f".repeat(22) + "\n");
    }

    @Test
    void aTableWithTooManyColumnsIsShownInPartsThatRepeatItsKeyColumns() {
        Table.Builder table = Table.builder().keyColumns(2).column("").column("recommended");
        for (String setUp : List.of("set-up A", "set-up B", "set-up C", "set-up D")) {
            table.column(setUp);
        }
        table.row("riding time", "1:41 h (1:36 to 1:46)", "1:42 h (1:37 to 1:47)", "1:43 h (1:38 to 1:48)", "1:44 h (1:39 to 1:49)",
                "1:45 h (1:40 to 1:50)");
        assertThat(text(report().table(table.build()))).isEqualTo("""
                Heather Ridge

                             recommended            set-up A               set-up B
                riding time  1:41 h (1:36 to 1:46)  1:42 h (1:37 to 1:47)  1:43 h (1:38 to 1:48)

                             recommended            set-up C               set-up D
                riding time  1:41 h (1:36 to 1:46)  1:44 h (1:39 to 1:49)  1:45 h (1:40 to 1:50)
                """);
    }

    @Test
    void whereNotEvenTwoColumnsFitEachRowIsAListOfItsCells() {
        Table table = Table.builder().figures("Piece").figures("Cadence").row("x".repeat(50), "y".repeat(50)).build();
        assertThat(text(report().table(table))).isEqualTo("Heather Ridge\n\n" + "x".repeat(50) + "\n  Cadence: " + "y".repeat(50) + "\n");
    }

    @Test
    void listsChecklistsAndCallouts() {
        assertThat(text(report().section(Section.builder("a", "All")
                .caution("Let the pads cool.").note(RichText.of("No date is given."))
                .items(List.of(ItemList.Item.of(RichText.of("one"), List.of(RichText.of("below one")))))
                .numbered(List.of(RichText.of("first"), RichText.of("second")))
                .checkboxes(List.of(new CheckboxList.Entry(true, RichText.of("Seat the tyre"), RichText.of("both beads seated"), RichText.of("It holds air.")),
                        new CheckboxList.Entry(false, RichText.of("Pack food"), RichText.of("120 g"), RichText.EMPTY)))))).isEqualTo("""
                Heather Ridge

                ALL
                  ! Let the pads cool.
                  Note: No date is given.
                  - one
                    - below one
                  1. first
                  2. second
                  [ ] ! Seat the tyre
                        Done when: both beads seated
                        Why: It holds air.
                  [ ]   Pack food
                        Done when: 120 g
                """);
    }

    @Test
    void sourcesAreNumberedByTheirFirstMentionAndListedOnce() {
        assertThat(text(report().paragraph(RichText.of("One.").footnote("Book B, table 2")).paragraph(RichText.of("Two.").footnote("Paper A"))
                .paragraph(RichText.of("Three").footnote("Book B, table 2").text(", and so on.")))).isEqualTo("""
                Heather Ridge
                One. [1]
                Two. [2]
                Three [1], and so on.

                SOURCES
                  [1] Book B, table 2
                  [2] Paper A
                """);
    }

    @Test
    void barsAreDrawnToOneScale() {
        Figure figure = new Figure(RichText.EMPTY, new BarChart("Gear", "Time", List.of(new Bar("32x50", 600, "10 min"), new Bar("32x46", 300, "5 min"))),
                RichText.EMPTY);
        assertThat(text(report().section(Section.builder("a", "Use").figure(figure)))).isEqualTo("Heather Ridge\n\nUSE\n"
                + "  32x50  10 min  " + "\u2588".repeat(40) + "\n  32x46   5 min  " + "\u2588".repeat(20) + "\n");
    }

    @Test
    void codeIsInQuotesWithinASentenceAndBareAlone() {
        assertThat(text(report().paragraph(RichText.of("Try ").code("--full").text(".")).paragraph(RichText.EMPTY.code("brief --full"))))
                .isEqualTo("Heather Ridge\nTry '--full'.\nbrief --full\n");
    }

    @Test
    void emphasisIsShownOnlyInColour() {
        Report report = report().paragraph(RichText.of("a ").strong("b").text(" ").emphasised("c").text(" ").styled("d", Style.ATTENTION)).build();
        assertThat(new TerminalRenderer(80, false).render(report)).isEqualTo("Heather Ridge\na b c d\n");
        assertThat(new TerminalRenderer(80, true).render(report)).isEqualTo("\u001b[1mHeather Ridge\u001b[0m\n"
                + "a \u001b[1mb\u001b[0m \u001b[3mc\u001b[0m \u001b[1;33md\u001b[0m\n");
    }

    @Test
    void aNumberKeepsItsUnitAndAPageIsNeverWiderThanAHundredColumns() {
        String words = "word ".repeat(15) + "abc ";
        assertThat(text(report().paragraph(words + "12 mm"))).isEqualTo("Heather Ridge\n" + words.strip() + "\n12 mm\n");
        assertThat(new TerminalRenderer(300, false).render(report().paragraph("word ".repeat(30)).build()).lines().skip(1).findFirst())
                .hasValueSatisfying(line -> assertThat(line).hasSize(99));
    }

    private static Report.Builder report() {
        return Report.builder(RichText.ofQuoted("Heather Ridge"));
    }

    private static String text(Report.Builder report) {
        return new TerminalRenderer(TerminalRenderer.STANDARD_WIDTH, false).render(report.build());
    }
}
