package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.report.picture.DayStrip;
import courseworthy.report.picture.GearLadder;
import courseworthy.report.picture.GroundBand;
import courseworthy.report.picture.GroundMaterial;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.LongSection.ClimbBand;
import courseworthy.report.picture.LongSection.CourseMark;
import courseworthy.report.picture.PressureLine;
import courseworthy.report.picture.WorthChart;
import courseworthy.task.Brief;
import courseworthy.task.BriefTask;
import courseworthy.task.Request;
import courseworthy.task.Workspace;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pictures of briefs: what is drawn is what the brief says, and titles and sentences are made from it. */
class PictureReportTest {

    private static final Map<String, Brief> BRIEFS = new HashMap<>();

    private static Brief brief(String course) {
        return BRIEFS.computeIfAbsent(course, name -> brief(Request.builder("course-profiles/" + name + ".yaml")
                .event("docs/examples/events/" + name + ".yaml").rider("docs/examples/riders/kim-cross-country.yaml")
                .workshop("docs/examples/workshops/cellar.yaml").build()));
    }

    private static Brief brief(Request request) {
        return BriefTask.of(new Workspace(Path.of("").toAbsolutePath(), warning -> { }), request).brief();
    }

    /** The one long climb to the highest point, of twice the gain of any other but the first, and steeper than that. */
    @Test
    void theTitleOfTheLongSectionNamesTheClimbThatDecidesTheGear() {
        Figure figure = PictureReport.longSection(brief("heather-ridge"));
        LongSection section = (LongSection) figure.picture();
        ClimbBand fifth = section.climbs().get(4);
        assertThat(figure.title().plain()).isEqualTo("The fifth climb decides the lowest gear");
        assertThat(fifth.gradient()).isGreaterThan(section.climbs().get(0).gradient());
        assertThat(figure.textEquivalent().plain()).startsWith("The fifth climb, kilometre 33.3 to 45.6, gains 730 m at 5.9 %; 62.0 km of gravel")
                .contains(", finished after ").endsWith(".");
    }

    @Test
    void aCourseWithoutAClimbIsToldByItsGround() {
        Figure figure = PictureReport.longSection(brief("larch-common"));
        LongSection section = (LongSection) figure.picture();
        if (section.climbs().isEmpty()) {
            assertThat(figure.title().plain()).doesNotContain("climb").contains(" % of it ");
        }
        assertThat(section.laps()).isEqualTo(7);
        assertThat(section.passages()).last().satisfies(end -> assertThat(end.atMetres()).isEqualTo(section.lengthMetres()));
        assertThat(figure.textEquivalent().plain()).contains(" a lap, 7 laps of ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"heather-ridge", "larch-common", "market-roads", "flintmoor-100"})
    void theLongSectionIsTheRoadBook(String course) {
        LongSection section = (LongSection) PictureReport.longSection(brief(course)).picture();
        Table data = PictureReport.longSection(brief(course)).data();
        assertThat(data.rows()).hasSize(section.ground().size() + 1);
        double at = 0;
        for (GroundBand band : section.ground()) {
            assertThat(band.fromMetres()).isEqualTo(at);
            at = band.toMetres();
            assertThat(band.material() == GroundMaterial.UNKNOWN).isEqualTo(band.surface().equals("unknown"));
        }
        assertThat(at).isEqualTo(section.lengthMetres());
        assertThat(section.passages().get(0).afterSeconds().high()).isZero();
        assertThat(section.heights().points()).allSatisfy(point -> assertThat(point.atMetres()).isBetween(0.0, section.lengthMetres() + 0.5));
    }

    @Test
    void aCutOffStandsWithTheStopWhereItIs() {
        LongSection section = (LongSection) PictureReport.longSection(brief("heather-ridge")).picture();
        CourseMark mark = section.marks().get(2);
        assertThat(mark.atMetres()).isEqualTo(50_000, within(0.1));
        assertThat(mark.kinds()).containsExactly(CourseMark.Kind.WATER, CourseMark.Kind.CUT_OFF);
        assertThat(mark.label()).isEqualTo("water, cut-off 13:00");
    }

    @Test
    void grades() {
        LongSection section = (LongSection) PictureReport.longSection(brief("heather-ridge")).picture();
        assertThat(section.ground()).extracting(band -> band.grade() == null ? "" : band.grade().text())
                .isEqualTo(List.of("", "", "1+", "2+", "1", "", "0+", "", "2", "3-", "1+", ""));
    }

    /** The title follows the piece on which the lowest gear is turned slowest: 34x50 on a ramp of 24 % at under 55 rpm. */
    @Test
    void theGearLadderSaysWhatTheLowestGearHolds() {
        Figure figure = PictureReport.gearLadder(brief("heather-ridge"));
        GearLadder ladder = (GearLadder) figure.picture();
        GearLadder.SteepPiece slowest = ladder.steep().get(0);
        for (GearLadder.SteepPiece each : ladder.steep()) {
            slowest = each.cadence().mid() < slowest.cadence().mid() ? each : slowest;
        }
        assertThat(figure.title().plain()).isEqualTo("The lowest gear, " + ladder.rungs().get(0).gear() + ", "
                + (slowest.held() ? "holds the " : "is too hard on the ") + slowest.label());
        for (int i = 1; i < ladder.rungs().size(); i++) {
            assertThat(ladder.rungs().get(i).steepestGradient()).isLessThan(ladder.rungs().get(i - 1).steepestGradient());
            assertThat(ladder.rungs().get(i).flattestGradient()).isLessThan(ladder.rungs().get(i).steepestGradient());
        }
    }

    /** The row at which most time hangs for sure is the one the title names, and its sentence has its figures. */
    @Test
    void theChartOfWorthNamesWhereMostTimeHangs() {
        Figure figure = PictureReport.worth(brief("heather-ridge"));
        WorthChart chart = (WorthChart) figure.picture();
        WorthChart.Row largest = null;
        for (WorthChart.Row row : chart.rows()) {
            boolean sure = row.savedSeconds().low() >= 0 || row.savedSeconds().high() <= 0;
            assertThat(row.close()).isEqualTo(!sure);
            largest = sure && (largest == null || Math.abs(row.savedSeconds().mid()) > Math.abs(largest.savedSeconds().mid())) ? row : largest;
        }
        assertThat(figure.title().plain()).isEqualTo("Most time hangs on the " + largest.topic());
        assertThat(figure.textEquivalent().plain()).contains(largest.topic() + " " + largest.alternative() + " in place of " + largest.recommended());
        assertThat(figure.data().rows()).hasSizeGreaterThan(chart.rows().size() + 20);
    }

    @Test
    void aPressureLineGoesFromFloorToCeiling() {
        Figure figure = PictureReport.pressures(brief("heather-ridge"));
        for (PressureLine.Wheel wheel : ((PressureLine) figure.picture()).wheels()) {
            assertThat(wheel.lowPascals()).isGreaterThanOrEqualTo(wheel.floorPascals()).isLessThanOrEqualTo(wheel.startPascals());
            assertThat(wheel.highPascals()).isGreaterThanOrEqualTo(wheel.startPascals());
            assertThat(wheel.startPascals()).isBetween(1e5, 3e5);
        }
        assertThat(figure.title().plain()).matches("Front \\d\\.\\d+ bar, rear \\d\\.\\d+ bar");
    }

    @Test
    void theDayStripHasTheHoursOfThePlan() {
        Brief brief = brief("heather-ridge");
        Figure figure = PictureReport.day(brief);
        DayStrip strip = (DayStrip) figure.picture();
        double drunk = 0;
        double at = 0;
        for (DayStrip.Hour hour : strip.hours()) {
            assertThat(hour.fromSeconds()).isEqualTo(at);
            at = hour.toSeconds();
            drunk += hour.drinkLitres().mid();
        }
        assertThat(drunk).isEqualTo(brief.outlook().plan().fluids().drink().mid(), within(1e-6));
        assertThat(at).isEqualTo(brief.demands().estimated().estimate().total().mid());
        assertThat(strip.light()).extracting(DayStrip.LightSpan::light).containsExactly(DayStrip.Light.DAY);
        assertThat(figure.title().plain()).startsWith("Hottest, ");
        assertThat(figure.data().rows()).hasSize(strip.hours().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"heather-ridge", "larch-common", "market-roads", "flintmoor-100"})
    void everyPictureHasATitleAndOneSentence(String course) {
        for (Figure figure : PictureReport.all(brief(course))) {
            assertThat(figure.title().plain()).isNotBlank().doesNotEndWith(".");
            assertThat(figure.textEquivalent().plain()).endsWith(".").doesNotContain(". ");
            assertThat(figure.data().rows()).isNotEmpty();
        }
    }
}
