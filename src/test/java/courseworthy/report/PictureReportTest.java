package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.report.picture.GroundBand;
import courseworthy.report.picture.GroundMaterial;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.LongSection.ClimbBand;
import courseworthy.report.picture.LongSection.CourseMark;
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
}
