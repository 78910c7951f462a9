package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.build.Build;
import courseworthy.checklist.Checklist;
import courseworthy.claim.Deadline;
import courseworthy.report.picture.BackPlan;
import courseworthy.report.picture.BeforeAfter;
import courseworthy.report.picture.DayStrip;
import courseworthy.report.picture.GearLadder;
import courseworthy.report.picture.GroundBand;
import courseworthy.report.picture.GroundMaterial;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.LongSection.ClimbBand;
import courseworthy.report.picture.LongSection.CourseMark;
import courseworthy.report.picture.PressureLine;
import courseworthy.report.picture.TrackPlan;
import courseworthy.report.picture.WorthChart;
import courseworthy.task.Brief;
import courseworthy.task.BriefTask;
import courseworthy.task.Request;
import courseworthy.task.Workspace;
import courseworthy.workshop.MountingPlace;
import courseworthy.worth.PlanB;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
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

    /** Water at the line of a race of seven laps is one mark on the picture of a lap. */
    @Test
    void whatIsThereOnEveryLapIsOneMark() {
        LongSection section = (LongSection) PictureReport.longSection(brief("larch-common")).picture();
        assertThat(section.laps()).isEqualTo(7);
        assertThat(section.marks()).singleElement().satisfies(mark -> {
            assertThat(mark.kinds()).containsExactly(CourseMark.Kind.WATER);
            assertThat(mark.lap()).isZero();
        });
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
        GearLadder.SteepMark slowest = ladder.steep().get(0);
        for (GearLadder.SteepMark each : ladder.steep()) {
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
        WorthChart.WorthBar largest = null;
        for (WorthChart.WorthBar row : chart.rows()) {
            boolean sure = row.savedSeconds().low() >= 0 || row.savedSeconds().high() <= 0;
            assertThat(row.close()).isEqualTo(!sure);
            largest = sure && (largest == null || Math.abs(row.savedSeconds().mid()) > Math.abs(largest.savedSeconds().mid())) ? row : largest;
        }
        assertThat(figure.title().plain()).isEqualTo(Phrases.capital(largest.topic()) + " makes the most difference");
        assertThat(figure.textEquivalent().plain()).startsWith(Phrases.capital(largest.topic()) + ": " + largest.alternative() + " in place of the recommended " + largest.recommended());
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
        for (DayStrip.HourColumn hour : strip.hours()) {
            assertThat(hour.fromSeconds()).isEqualTo(at);
            at = hour.toSeconds();
            drunk += hour.drinkLitres().mid();
        }
        assertThat(drunk).isEqualTo(brief.outlook().plan().fluids().drink().mid(), within(1e-6));
        assertThat(at).isEqualTo(brief.demands().estimated().estimate().total().mid());
        assertThat(strip.light()).extracting(DayStrip.LightSection::light).containsExactly(DayStrip.LightBand.DAY);
        assertThat(figure.title().plain()).startsWith("Warmest, ").endsWith(" C, from 11:00");
        assertThat(figure.data().rows()).hasSize(strip.hours().size());
    }

    /** All there is to do before the start, each thing in one sitting; fresh sealant has its twelve hours before the start. */
    @Test
    void theBackPlanHasTheWholeChecklist() {
        Brief brief = brief("heather-ridge");
        BackPlan plan = (BackPlan) PictureReport.backPlan(brief).picture();
        int items = 0;
        for (Checklist.ChecklistSection section : brief.checklist().sections()) {
            items += section.due() == Deadline.AFTER_THE_RACE ? 0 : section.items().size();
        }
        assertThat(plan.sittings().stream().mapToInt(BackPlan.SessionBar::items).sum()).isEqualTo(items);
        double before = Double.NEGATIVE_INFINITY;
        for (BackPlan.SessionBar sitting : plan.sittings()) {
            assertThat(sitting.endSeconds()).isBetween(before, 0.0);
            before = sitting.endSeconds();
        }
        assertThat(plan.waits()).anySatisfy(wait -> assertThat(wait.toSeconds() - wait.fromSeconds()).isEqualTo(12 * 3600.0));
        assertThat(plan.waits()).allSatisfy(wait -> assertThat(wait.toSeconds()).as(wait.label()).isLessThanOrEqualTo(0));
        assertThat(plan.startDate()).isEqualTo("2026-06-20");
        assertThat(plan.startOfDay()).isEqualTo(8 * 3600);
    }

    @Test
    void lastMomentsAreThoseOfTheTurnsOfTheForecast() {
        Brief brief = brief("heather-ridge");
        BackPlan plan = (BackPlan) PictureReport.backPlan(brief).picture();
        List<PlanB> turning = brief.outlook().otherwise().stream().filter(each -> !each.lines().isEmpty()).toList();
        assertThat(plan.lastMoments()).hasSameSizeAs(turning);
        for (PlanB other : turning) {
            double first = other.lines().stream().mapToDouble(PlanB.PlanBLine::latest).min().orElseThrow();
            assertThat(plan.lastMoments()).anySatisfy(each -> assertThat(each.atSeconds()).isEqualTo(first));
        }
    }

    @Test
    void withoutADayThereIsNoBackPlan() {
        Brief brief = brief(Request.builder("course-profiles/fernbrake.yaml").build());
        assertThat(PictureReport.backPlan(brief)).isNull();
        assertThat(PictureReport.beforeAfter(brief)).isNull();
        assertThat(PictureReport.track(brief)).isNull();
        assertThat(PictureReport.longSection(brief)).isNotNull();
    }

    /** What is on the bike for the day is the build; every swap on it is a changed row, with where its part comes from. */
    @Test
    void beforeAndAfterIsTheBuild() {
        Build build = brief("heather-ridge").build();
        BeforeAfter parts = (BeforeAfter) PictureReport.beforeAfter(brief("heather-ridge")).picture();
        Map<String, BeforeAfter.PlaceComparison> rows = new HashMap<>();
        parts.rows().forEach(row -> rows.put(row.place(), row));
        for (Build.FittedPart each : build.parts()) {
            if (each.place() != MountingPlace.LIGHTS) {
                assertThat(rows.get(each.place().words()).after()).isEqualTo(each.part().name());
            }
        }
        assertThat(build.swaps()).isNotEmpty();
        for (Build.Swap swap : build.swaps()) {
            if (swap.bike() == build.bike() && swap.place() != MountingPlace.LIGHTS && swap.on() != null) {
                BeforeAfter.PlaceComparison row = rows.get(swap.place().words());
                assertThat(row.changed()).isTrue();
                assertThat(row.from()).isEqualTo(swap.from() == null ? "" : swap.from().name());
            }
        }
        assertThat(parts.rows()).filteredOn(row -> !row.changed()).allSatisfy(row -> assertThat(row.before()).isEqualTo(row.after()).isNotEmpty());
    }

    /** North and south ends of the track in its file are as far apart on the plan: 111.2 km to a degree of latitude. */
    @Test
    void thePlanIsTheTrackOfTheFile() throws IOException {
        TrackPlan plan = (TrackPlan) PictureReport.track(brief("home-trails")).picture();
        List<Double> north = new ArrayList<>();
        plan.legs().forEach(leg -> leg.points().forEach(point -> north.add(point.northMetres())));
        Path file;
        try (Stream<Path> files = Files.walk(Path.of("course-profiles/tracks"))) {
            file = files.filter(each -> each.getFileName().toString().startsWith("home-trails")).findFirst().orElseThrow();
        }
        List<Double> latitudes = new ArrayList<>();
        Pattern.compile("lat=\"([-0-9.]+)\"").matcher(text(file)).results().forEach(each -> latitudes.add(Double.parseDouble(each.group(1))));
        double spread = Collections.max(latitudes) - Collections.min(latitudes);
        assertThat(Collections.max(north) - Collections.min(north)).isEqualTo(111_200 * spread, within(0.01 * 111_200 * spread));
        for (int i = 1; i < plan.kilometres().size(); i++) {
            TrackPlan.PlanPoint from = plan.kilometres().get(i - 1).at();
            TrackPlan.PlanPoint to = plan.kilometres().get(i).at();
            assertThat(Math.hypot(to.eastMetres() - from.eastMetres(), to.northMetres() - from.northMetres())).isLessThan(1005);
        }
        double drawn = 0;
        for (TrackPlan.TrackLeg leg : plan.legs()) {
            for (int i = 1; i < leg.points().size(); i++) {
                drawn += Math.hypot(leg.points().get(i).eastMetres() - leg.points().get(i - 1).eastMetres(),
                        leg.points().get(i).northMetres() - leg.points().get(i - 1).northMetres());
            }
        }
        double length = brief("home-trails").course().distance();
        assertThat(drawn).isBetween(0.9 * length, 1.005 * length);
    }

    private static String text(Path file) throws IOException {
        return file.toString().endsWith(".gz") ? new String(new GZIPInputStream(Files.newInputStream(file)).readAllBytes(), StandardCharsets.UTF_8) : Files.readString(file);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heather-ridge", "larch-common", "market-roads", "flintmoor-100", "home-trails"})
    void everyPictureHasATitleAndOneSentence(String course) {
        for (Figure figure : PictureReport.all(brief(course))) {
            assertThat(figure.title().plain()).isNotBlank().doesNotEndWith(".");
            assertThat(figure.textEquivalent().plain()).endsWith(".").doesNotContain(". ");
            assertThat(figure.data().rows()).isNotEmpty();
        }
    }
}
