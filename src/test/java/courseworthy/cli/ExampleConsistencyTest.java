package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether what commands print for the shipped examples holds together: what a reader can check from one line to the next. */
class ExampleConsistencyTest {

    private static final Map<List<String>, String> PRINTED = new HashMap<>();

    /** In one line, with single blanks. */
    private static String text(String... args) {
        return PRINTED.computeIfAbsent(List.of(args), key -> {
            CommandRun run = CommandRun.of(args);
            assertThat(run.code()).as("%s", run.err()).isZero();
            return run.out().replaceAll("\\s+", " ");
        });
    }

    private static String brief(String course, String rider) {
        return text("brief", "course-profiles/" + course + ".yaml", "--event", "docs/examples/events/" + course + ".yaml", "--rider", "docs/examples/riders/" + rider + ".yaml", "--full");
    }

    /** A gain whose range reaches below nothing is too close to call, and no other is. */
    @Test
    void whatMayCostTimeAsWellIsTooCloseToCall() {
        Matcher gains = Pattern.compile("would save [\\d.:]+ \\w+ \\((-?)[^)]*\\)(, too close to call)?")
                .matcher(text("brief", "course-profiles/heather-ridge.yaml", "--workshop", "docs/examples/workshops/cellar.yaml", "--full"));
        int open = 0;
        int sure = 0;
        while (gains.find()) {
            assertThat(gains.group(2) != null).as(gains.group()).isEqualTo(!gains.group(1).isEmpty());
            open += gains.group(2) == null ? 0 : 1;
            sure += gains.group(2) == null ? 1 : 0;
        }
        assertThat(Math.min(open, sure)).isPositive();
    }

    /** The position of a build is made of the build's own spacers, and where the rider's saddle goes across the list of parts says so. */
    @Test
    void thePositionIsMadeOfThePartsOfTheBuild() {
        String text = text("brief", "course-profiles/beech-hollow.yaml", "--event", "docs/examples/events/beech-hollow.yaml", "--rider", "docs/examples/riders/ida-hardtail.yaml",
                "--workshop", "docs/examples/workshops/cellar.yaml", "--full");
        Matcher stack = Pattern.compile("Take [^.]* with \\d+ mm of ([a-z ]+?) under it").matcher(text);
        assertThat(stack.find()).isTrue();
        assertThat(text).contains(" spacers " + stack.group(1) + " (to fit) ").contains("Move Ida's saddle across", " saddle borrowed saddle (yours goes across: see Position) ");
    }

    /** Gears that are called too hard turn slower than the rider wants, where they are. */
    @ParameterizedTest
    @ValueSource(strings = {"beech-hollow", "fernbrake", "grey-shoulder", "heather-ridge", "quern-hills"})
    void gearsThatAreTooHardTurnTooSlowly(String course) {
        Matcher told = Pattern.compile("about (\\d+) rpm there[a-z ]*, where you want (\\d+) rpm").matcher(brief(course, "sam-novice"));
        int found = 0;
        while (told.find()) {
            found++;
            assertThat(Integer.parseInt(told.group(1))).as(told.group()).isLessThan(Integer.parseInt(told.group(2)));
        }
        assertThat(found).isPositive();
    }

    /** Less than an hour is given in minutes. */
    @ParameterizedTest
    @ValueSource(strings = {"heather-ridge", "grey-shoulder", "beech-hollow", "ochre-flats"})
    void shortTimesAreInMinutes(String course) {
        assertThat(brief(course, "sam-novice") + brief(course, "kim-cross-country"))
                .doesNotContainPattern("0:\\d\\d h (?:inside|before|after|of it)").doesNotContainPattern("miss it by 0:").doesNotContain("0:10 h");
    }

    /** A day that ends after midnight at the slow estimate says where the likely finish stands to the sunset. */
    @Test
    void aNightIsToldByTheLikelyFinish() {
        assertThat(brief("wide-fallow", "ida-hardtail")).containsPattern("you will probably finish \\d:\\d\\d h after sunset, and at the slow estimate the next day");
    }

    /** Advice that was not followed has the figure that it asked for, and not only the name of the measure that gave it. */
    @ParameterizedTest
    @ValueSource(strings = {"beech-hollow", "ochre-flats", "home-trails"})
    void adviceNotFollowedHasItsFigure(String course) {
        assertThat(brief(course, "joss-steel")).containsPattern("prefer (?:[\\d.]+ x )?(?:front|rear) reference pressure = \\d\\.\\d+ bar")
                .doesNotContainPattern("(?:reference pressure|useful at speed|is steepest), o(?:utvoted|verruled)");
    }

    /** A wider tyre that is also the faster has no puncture to weigh against its time; what no set-up has gets no line. */
    @Test
    void comparedSetUpsWeighPuncturesOnlyWhereTheFasterIsTheFrailer() {
        String[] sand = {"compare", "course-profiles/ochre-flats.yaml", "--event", "docs/examples/events/ochre-flats.yaml", "--set"};
        String narrow = text(with(sand, "front tyre width=45 mm, rear tyre width=45 mm"));
        assertThat(narrow).contains("against recommended costs ", "The effect of front tyre pressure and rear tyre pressure is not included.")
                .doesNotContain("break-even", "last long climb");
        assertThat(text(with(sand, "rear tyre casing=light"))).contains("break-even It is faster only if");
        assertThat(text(with(sand, "easiest gear=32x51"))).contains("against recommended no difference");
    }

    /** A kind of bike that the ground rules out gives way to another than the recommended one, which is told as such. */
    @Test
    void aRefusedBikeIsToldWithWhatComesNearest() {
        String out = text("compare", "course-profiles/heather-ridge.yaml", "--event", "docs/examples/events/heather-ridge.yaml", "--set", "bike=gravel");
        assertThat(out).contains("Bike cannot be gravel; the nearest that can be is cross-country hardtail, because of limit/ledge-over-15-cm.");
    }

    private static String gears(String course, String rider) {
        return text("gears", "course-profiles/" + course + ".yaml", "--event", "docs/examples/events/" + course + ".yaml", "--rider", "docs/examples/riders/" + rider + ".yaml");
    }

    /** A ramp on which the rider walks, or grinds, is not contradicted by no time on foot and none below the lowest cadence. */
    @Test
    void smoothedRampsExplainTimesThatKnowNothingOfThem() {
        String note = "These times follow the elevation line of the course, in which short ramps are smoothed out.";
        assertThat(gears("fernbrake", "joss-steel")).contains("you walk", "on foot 0 s", note);
        assertThat(gears("larch-common", "kim-cross-country")).doesNotContain(note);
    }

    /** Nothing is spun out for nothing: what may happen at most is told as such, and metres no finer than they are known. */
    @Test
    void whatIsSpunOutIsToldByWhatItMayBe() {
        assertThat(gears("flintmoor-100", "ida-hardtail")).containsPattern("Alone: spun out on \\d+0 m at most, which costs (\\d s or less|nothing)\\.").doesNotContain("0 m (0");
        assertThat(text("gears", "course-profiles/fernbrake.yaml")).contains("at most, which costs nothing.").doesNotContain("0 s or less");
        assertThat(gears("three-becks", "joss-steel")).containsPattern("In a group: \\d+0 m spun out").doesNotContain("932 m");
        assertThat(gears("beech-hollow", "joss-steel")).contains("the gear costs 0.3 s or less over 200 m").doesNotContain("0.0 s");
    }

    /** A flat course has no column of its last climb. */
    @Test
    void gearsOfAFlatCourseHaveNoColumnOfClimbs() {
        assertThat(gears("market-roads", "ida-hardtail")).contains("Chainrings and Steepest").doesNotContain("Last climb");
        assertThat(gears("heather-ridge", "ida-hardtail")).contains("Chainrings and Last climb");
    }

    /** The difference between two positions is that of the figures beside it. */
    @ParameterizedTest
    @ValueSource(strings = {"hardtail > borrowed bike", "hardtail > steel bike", "steel bike > borrowed bike", "borrowed bike > steel bike"})
    void positionsDifferByWhatIsShown(String bikes) {
        String[] fromTo = bikes.split(" > ");
        Matcher row = Pattern.compile("(?:forward|up|width|height|behind|hands|length|trail) (-?[\\d.]+) mm (-?[\\d.]+) mm ([+-]?[\\d.]+) mm")
                .matcher(text("position", "docs/examples/workshops/cellar.yaml", "--from", fromTo[0], "--to", fromTo[1]));
        int rows = 0;
        while (row.find()) {
            rows++;
            assertThat(Double.parseDouble(row.group(3))).as(row.group()).isEqualTo(Double.parseDouble(row.group(2)) - Double.parseDouble(row.group(1)));
        }
        assertThat(rows).isGreaterThan(6);
    }

    /** A flat course has no long climb, which is known, and nobody is asked for its climbing again. */
    @Test
    void whatAFlatCourseHasNotIsNotUnknown() {
        assertThat(text("course", "course-profiles/market-roads.yaml")).contains("There is none: last long climb, last long climb ascent, last long climb gradient. "
                + "Not known: sharp stones,");
        assertThat(brief("market-roads", "ida-hardtail")).contains("RULES NOT CHECKED").doesNotContain("ascent, descent (1 rule)");
    }

    /** Rain from the third hour on is in the first lines, too. */
    @Test
    void theFirstLinesSayWhatTheGroundTurnsTo() {
        assertThat(text("brief", "course-profiles/flintmoor-100.yaml", "--event", "docs/examples/by-the-hour/flintmoor-100.yaml")).contains("11 to 16 C, dry to damp");
        assertThat(brief("flintmoor-100", "ida-hardtail")).contains("13 to 17 C, dry ");
    }

    /** Nobody measures a gear or a skill: the one is tried, the other written. */
    @Test
    void whatSettlesADecisionIsWhatWouldSettleIt() {
        assertThat(text("brief", "course-profiles/quern-hills.yaml", "--event", "docs/examples/events/quern-hills.yaml"))
                .contains("A test ride: with ratio useful at speed").doesNotContain("A measurement: with ratio");
        assertThat(text("brief", "course-profiles/home-trails.yaml", "--event", "docs/examples/events/home-trails.yaml")).contains("Something to write: with skill fair");
        assertThat(text("brief", "course-profiles/heather-ridge.yaml", "--event", "docs/examples/events/heather-ridge.yaml")).contains("A measurement: with start-line mass");
    }

    /** Ida is not used to the saddle on Joss's bike, and Joss is. */
    @Test
    void nobodyIsUsedToTheSaddleOfAnother() {
        String ida = onWorkshop("flintmoor-100", "ida-hardtail");
        assertThat(ida).contains("THE BUILD steel bike", "Move Ida's saddle across from hardtail: you are used to it.")
                .doesNotContain("leather saddle (900 h ridden): you are used to it", "Ida's saddle (420 h ridden) as saddle would save");
        assertThat(onWorkshop("flintmoor-100", "joss-steel")).contains("THE BUILD steel bike", "leather saddle (900 h ridden): you are used to it");
    }

    private static String onWorkshop(String course, String rider) {
        return text("brief", "course-profiles/" + course + ".yaml", "--event", "docs/examples/events/" + course + ".yaml", "--rider", "docs/examples/riders/" + rider + ".yaml",
                "--workshop", "docs/examples/workshops/cellar.yaml", "--full");
    }

    /** A tenth of a litre of water is no reason to go and look at a track. */
    @Test
    void nobodyIsSentOutForADropOfWater() {
        String out = text("scout", "docs/examples/maps/sorrel-wood.gpx", "--map", "docs/examples/maps/sorrel-wood.osm", "--no-cache");
        assertThat(out).contains("on 3.4 km of 12.2 km", "surface=unpaved, mtb:scale=3").doesNotContain("water 0.6 L");
        assertThat(text("scout", "docs/examples/maps/sorrel-wood.gpx")).contains("on the whole course, 12.2 km.");
    }

    @Test
    void pitsAreToldByTheirPlaceAndTheirLaps() {
        String full = brief("larch-common", "joss-steel");
        assertThat(full).contains("At the start of each lap, your helper hands up: 3 bottles of 0.5 L on laps 3, 5 and 7, and one in reserve;", "marked for laps 3, 5 and 7, and one")
                .doesNotContain("0.0 km into each lap");
        assertThat(text("brief", "course-profiles/larch-common.yaml", "--event", "docs/examples/events/larch-common.yaml"))
                .contains("In the pit at the start of the lap: 2 bottles of 0.5 L on laps 4 and 7, and one in reserve.");
    }

    /** A bar is so far below the saddle, whether a rule applied or not; a factor of one goes without saying. */
    @Test
    void rulesThatDidNotApplySpeakAsThoseThatDid() {
        String[] why = {"why", "course-profiles/heather-ridge.yaml", "bar height", "--event", "docs/examples/events/heather-ridge.yaml"};
        assertThat(text(why)).contains("prefer 50 mm below the saddle: shipped/narrow-low-bar-on-fast-gravel").doesNotContain(" -50 mm", " -20 mm");
        assertThat(text("why", "course-profiles/heather-ridge.yaml", "easiest gear", "--rider", "docs/examples/riders/kim-cross-country.yaml"))
                .contains("prefer ratio needed where it is steepest: shipped/gear-for-the-steepest").doesNotContain(" 1 x ");
    }

    /** A climb has no length to the metre. */
    @Test
    void shortClimbsAreInTensOfMetres() {
        assertThat(text("brief", "course-profiles/home-trails.yaml") + text("brief", "course-profiles/flintmoor-100.yaml", "--full"))
                .doesNotContainPattern("climb starts: \\d*[1-9] m");
    }

    private static String[] with(String[] args, String last) {
        String[] out = Arrays.copyOf(args, args.length + 1);
        out[args.length] = last;
        return out;
    }

    /** What is decided reads the same beside another course as in the brief. */
    @Test
    void similarCoursesHaveDecisionsInTheWordsOfTheBrief() {
        String out = text("similar", "course-profiles/market-roads.yaml", "course-profiles", "--event", "docs/examples/events/market-roads.yaml");
        assertThat(out).contains("70 mm below the saddle").doesNotContain("-70 mm");
    }
}
