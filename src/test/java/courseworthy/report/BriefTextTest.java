package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Consensus;
import courseworthy.decision.Decision.Status;
import courseworthy.render.TerminalRenderer;
import courseworthy.render.TextWidth;
import courseworthy.task.Brief;
import courseworthy.task.CourseResult;
import courseworthy.task.CourseSummary;
import courseworthy.topic.Topics;
import courseworthy.worth.RoadBook.SimplifiedHeights;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BriefTextTest {

    private final Brief brief = ExampleBrief.rich().brief();
    private final String text = text(BriefReport.of(brief));

    @Test
    void itReadsFromTheCourseDownToTheChecklist() {
        assertThat(text.lines().toList().get(0)).isEqualTo("Heather Ridge                                  set up for the race, 14 June 2025");
        assertThat(text).containsSubsequence("24.6 km in 3 laps", "IN SHORT", "RECOMMENDED SET-UP", "LEAVE ALONE", "REASONS", "ADVICE THAT WAS NOT FOLLOWED",
                "ASSUMED (NOT GIVEN IN YOUR FILES)", "RULES NOT CHECKED: MISSING INFORMATION", "NOTES ON THE COURSE FILE", "CAUTIONS", "CHECKLIST (! = SAFETY-CRITICAL)");
    }

    @Test
    void everyTopicHasItsLineOrIsNamedAsNotApplying() {
        for (Decision decision : brief.decisions()) {
            if (decision.status() == Status.SETTLED) {
                assertThat(text.lines()).anyMatch(line -> line.matches("  " + decision.topic().name() + " +" + java.util.regex.Pattern.quote(
                        decision.phrase()) + " +" + brief.firmness(decision).word()));
            } else {
                assertThat(text.replaceAll("\\s+", " ")).contains(decision.topic().name());
            }
        }
    }

    @Test
    void whereNothingIsPossibleItSaysWhy() {
        assertThat(text.replaceAll("\\s+", " "))
                .contains("front tyre pressure none possible: the floor against rim strikes lies above the marking")
                .contains("Pressure front none possible, rear 2.00 bar");
    }

    @Test
    void aReasonIsNeverSurerThanItsEvidence() {
        assertThat(text.replaceAll("\\s+", " "))
                .contains("REASONS Common practice, unless a source or a sheet is named. - front and rear tyre width 45 mm:"
                        + " Sharp stones cut what is narrow and light.")
                .contains("front tyre width: prefer 38 mm, outvoted by shipped/wide-on-rough, shipped/x. Sharp stones cut what is narrow and"
                        + " light. (Fast lines; an opinion)");
    }

    @Test
    void missingGroundIsAskedForInOneSentence() {
        assertThat(text.replaceAll("\\s+", " "))
                .contains("ground smoothness, mtb:scale, sharp stones (in the profile or with --ground; 1 rule) event support (1 rule)");
    }

    @Test
    void noLineIsWiderThanThePage() {
        assertNarrow(text);
        assertNarrow(text(ChecklistReport.of(brief)));
        assertNarrow(new TerminalRenderer(80, false).render(CatalogueReport.topics()));
        assertNarrow(new TerminalRenderer(80, false).render(CatalogueReport.measures()));
    }

    @Test
    void theWidestValuesFitToo() {
        ExampleBrief widest = ExampleBrief.rich();
        Topics.all().forEach(topic -> {
            long value = topic.most();
            for (int i = 0; i < topic.options().size(); i++) {
                value = topic.text(i).length() > topic.text(value).length() ? i : value;
            }
            widest.decided(topic.name(), value, Consensus.BOUNDS_ALONE, List.of(), List.of());
        });
        assertNarrow(text(BriefReport.of(widest.brief())));
    }

    @Test
    void hostileNamesCannotCommandTheTerminalNorWidenThePage() {
        for (String name : List.of(ExampleBrief.HOSTILE, "x".repeat(300), "\u5c71".repeat(100), "a\nb\tc".repeat(40))) {
            ExampleBrief hostile = ExampleBrief.rich();
            hostile.name = name;
            hostile.task("shipped/h", name, name, courseworthy.claim.Deadline.NIGHT_BEFORE, 0, false, name);
            String written = text(BriefReport.of(hostile.brief()));
            assertThat(written).doesNotContain("\u001b", "\u0007", "\u202e", "\t", "\ud800");
            assertNarrow(written);
            assertNarrow(new TerminalRenderer(80, false).render(CourseReport.of(new CourseResult(CourseSummary.of(hostile.course()), SimplifiedHeights.of(hostile.course().line()), hostile.call().demands()))));
        }
    }

    @Test
    void withoutColoursThePageIsTheSameButForThem() {
        String coloured = new TerminalRenderer(80, true).render(BriefReport.of(brief));
        assertThat(coloured).contains("\u001b[1m");
        assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(text);
        assertThat(text).doesNotContain("\u001b");
    }

    /** Widths of UAX #11, from memory: combining marks none, East Asian wide two, others one. */
    @ParameterizedTest
    @ValueSource(strings = {"abc", "e\u0301bc", "\u5c71c", "\u00e9\u0308bc", "\ud83d\udeb2c"})
    void widthIsCountedInColumns(String three) {
        assertThat(TextWidth.of(three)).isEqualTo(3);
    }

    private static String text(Report report) {
        return new TerminalRenderer(80, false).render(report);
    }

    static void assertNarrow(String page) {
        assertThat(page.lines()).allSatisfy(line -> {
            assertThat(TextWidth.of(line)).as(line).isLessThanOrEqualTo(80);
            assertThat(line).doesNotContain("\t").doesNotEndWith(" ");
        });
        assertThat(page).endsWith("\n").doesNotContain("\r");
    }
}
