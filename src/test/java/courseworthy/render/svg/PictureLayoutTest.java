package courseworthy.render.svg;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.report.Figure;
import courseworthy.report.RichText;
import courseworthy.report.picture.GearLadder;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.Picture;
import courseworthy.report.picture.PictureVisitor;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What holds for every picture at both widths. */
class PictureLayoutTest {

    static Stream<Picture> pictures() {
        return SamplePictures.all().stream();
    }

    private static List<Element> drawn(Picture picture) {
        List<Element> out = new ArrayList<>();
        for (String each : new SvgPictures("p").draw(SamplePictures.figure(picture)).strip().split("\n")) {
            out.add(DrawnText.parse(each));
        }
        assertThat(out).hasSize(2);
        return out;
    }

    private static void assertLaidOut(Picture picture) {
        for (Element svg : drawn(picture)) {
            assertThat(DrawnText.of(svg)).isNotEmpty();
            assertThat(DrawnText.faults(svg)).as(svg.getAttribute("class")).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void noTextOverlapsAnotherOrLeavesThePicture(Picture picture) {
        assertLaidOut(picture);
    }

    /** 20, 40 and 60 km are too few numbers along 62 km, tens are enough, and nothing finer is mixed with them. */
    @Test
    void numbersAlongATrackAreOfOneStep() {
        for (Element svg : drawn(SamplePictures.trackPlan(62, 12, 1))) {
            List<Integer> numbers = DrawnText.of(svg).stream().map(DrawnText::words).filter(each -> each.matches("\\d+")).map(Integer::valueOf).sorted().toList();
            assertThat(numbers).hasSizeGreaterThan(3).contains(10).allMatch(each -> each % 10 == 0);
        }
    }

    /** On soft ground the easiest gear may hold little more than 1 %: it has its bar, and what no gear holds is shaded. */
    @ParameterizedTest
    @ValueSource(doubles = {0.004, 0.011, 0.018, 0.03})
    void theEasiestGearHasABarHoweverLittleItHolds(double held) {
        List<GearLadder.Rung> rungs = new ArrayList<>();
        for (int sprocket : new int[] {52, 42, 10}) {
            rungs.add(new GearLadder.Rung("30x" + sprocket, 30, sprocket, held * sprocket / 52 - 0.02, held * sprocket / 52, 1, 2, 600));
        }
        GearLadder sample = SamplePictures.gearLadder(List.of(34));
        GearLadder ladder = new GearLadder(rungs, sample.steep(), sample.speeds());
        assertLaidOut(ladder);
        for (Element svg : drawn(ladder)) {
            assertThat(DrawnText.of(svg)).extracting(DrawnText::words).contains("52", "held by no gear");
        }
    }

    @ParameterizedTest
    @CsvSource({"0.8, 1", "15, 5", "62, 12", "62, 40", "200, 20", "200, 80", "330, 41", "330, 80"})
    void longSectionsOfAnyLengthAreReadable(double kilometres, int stretches) {
        for (int seed = 0; seed < 20; seed++) {
            assertLaidOut(SamplePictures.longSection(kilometres, stretches, seed));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.8, 1", "15, 5", "62, 12", "200, 80", "330, 80"})
    void tracksOfAnyLengthAreReadable(double kilometres, int stretches) {
        for (int seed = 0; seed < 5; seed++) {
            assertLaidOut(SamplePictures.trackPlan(kilometres, stretches, seed));
        }
    }

    @Test
    void gearsOfOneToThreeChainringsAreReadable() {
        assertLaidOut(SamplePictures.gearLadder(List.of(34)));
        assertLaidOut(SamplePictures.gearLadder(List.of(30, 46)));
        assertLaidOut(SamplePictures.gearLadder(List.of(24, 36, 50)));
    }

    @Test
    void everySteepPieceOfALadderIsNamedAtBothWidths() {
        GearLadder ladder = SamplePictures.gearLadder(List.of(34));
        for (Element svg : drawn(ladder)) {
            List<String> words = DrawnText.of(svg).stream().map(DrawnText::words).toList();
            assertThat(ladder.steep()).hasSize(5).allSatisfy(piece -> assertThat(words).anyMatch(each -> each.startsWith(piece.label())));
        }
    }

    @Test
    void daysOfAnyLengthAreReadable() {
        for (int hours = 1; hours < 40; hours++) {
            assertLaidOut(SamplePictures.dayStrip(hours, 5 + hours % 14));
            assertLaidOut(SamplePictures.dayStripByHour(hours, 5 + hours % 14));
        }
    }

    /** The first climb, the last label of an axis and the like are never given up for want of room. */
    @ParameterizedTest
    @CsvSource({"15, 5", "62, 12", "200, 80", "330, 80"})
    void everyClimbOfALongSectionKeepsABracketAndTheSteepestItsNumber(double kilometres, int stretches) {
        LongSection section = SamplePictures.longSection(kilometres, stretches, 5);
        assertThat(section.climbs()).isNotEmpty();
        for (Element svg : drawn(section)) {
            NodeList paths = svg.getElementsByTagName("path");
            String brackets = IntStream.range(0, paths.getLength()).mapToObj(i -> (Element) paths.item(i)).filter(each -> each.getAttribute("class").equals("bracket"))
                    .map(each -> each.getAttribute("d")).reduce("", String::concat);
            assertThat(brackets.chars().filter(c -> c == 'M').count()).isEqualTo(section.climbs().size());
            int greatest = section.climbs().stream().max(java.util.Comparator.comparingDouble(LongSection.ClimbBand::riseMetres)).orElseThrow().number();
            assertThat(DrawnText.of(svg)).anyMatch(each -> each.words().equals(greatest + "") || each.words().startsWith(greatest + " "));
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void everyPictureHasARoleATitleAndADescription(Picture picture) {
        Set<String> ids = new HashSet<>();
        for (Element svg : drawn(picture)) {
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            String[] labels = svg.getAttribute("aria-labelledby").split(" ");
            Element title = (Element) svg.getElementsByTagName("title").item(0);
            Element description = (Element) svg.getElementsByTagName("desc").item(0);
            assertThat(labels).containsExactly(title.getAttribute("id"), description.getAttribute("id"));
            assertThat(title.getTextContent()).isEqualTo("The second climb decides the gear");
            assertThat(description.getTextContent()).startsWith("The second long climb");
            assertThat(ids.add(labels[0]) && ids.add(labels[1])).isTrue();
            assertThat(svg.getAttribute("viewBox")).isEqualTo("0 0 " + svg.getAttribute("width") + " " + svg.getAttribute("height"));
        }
    }

    /** Places and figures that the script reads are those of the picture's data, and of what is drawn. */
    @Test
    void figuresForTheScriptAreThoseOfThePicture() {
        LongSection section = SamplePictures.longSection(62, 12, 1);
        for (Element svg : drawn(section)) {
            assertThat(Double.parseDouble(svg.getAttribute("data-length-m"))).isEqualTo(section.lengthMetres());
            double left = Double.parseDouble(svg.getAttribute("data-left"));
            double right = Double.parseDouble(svg.getAttribute("data-right"));
            DrawnText twenty = DrawnText.of(svg).stream().filter(each -> each.words().equals("20")).findFirst().orElseThrow();
            assertThat((twenty.box().left() + twenty.box().right()) / 2).isCloseTo(left + (right - left) * 20_000 / 62_000, org.assertj.core.data.Offset.offset(0.1));
        }
        Element narrow = drawn(section).get(0);
        assertThat(narrow.getAttribute("data-passages-at-m").split(" ")).extracting(Double::parseDouble)
                .containsExactlyElementsOf(section.passages().stream().map(LongSection.TimeMark::atMetres).toList());
    }

    @Test
    void idsAreCountedOverThePage() {
        SvgPictures pictures = new SvgPictures("p");
        Figure figure = SamplePictures.figure(SamplePictures.barChart());
        assertThat(pictures.draw(figure)).contains("id=\"p1-narrow-title\"", "id=\"p1-wide-title\"");
        assertThat(pictures.draw(figure)).contains("id=\"p2-narrow-title\"").doesNotContain("p1-");
    }

    /** Nothing is asked for, nothing runs, and how it looks is the style sheet's. */
    @ParameterizedTest
    @MethodSource("pictures")
    void noPictureHasScriptStyleOrAddress(Picture picture) {
        for (Element svg : drawn(picture)) {
            NodeList all = svg.getElementsByTagName("*");
            for (int i = 0; i < all.getLength(); i++) {
                Element each = (Element) all.item(i);
                assertThat(each.getTagName()).isIn("title", "desc", "text", "line", "path", "rect", "circle", "svg", "use");
                for (int a = 0; a < each.getAttributes().getLength(); a++) {
                    String name = each.getAttributes().item(a).getNodeName();
                    assertThat(name).isNotIn("style", "xlink:href", "fill").doesNotStartWith("on");
                }
                assertThat(each.getAttribute("href")).matches("|#hatch-[a-z]+");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void everyHatchThatIsUsedIsDefined(Picture picture) {
        SvgPictures pictures = new SvgPictures("p");
        String drawn = pictures.draw(SamplePictures.figure(picture));
        String hatches = pictures.hatches();
        java.util.regex.Pattern.compile("href=\"#([^\"]*)\"").matcher(drawn).results()
                .forEach(each -> assertThat(hatches).contains("<path id=\"" + each.group(1) + "\""));
        DrawnText.parse(hatches);
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void theSamePictureIsTheSameBytes(Picture picture) {
        assertThat(new SvgPictures("p").draw(SamplePictures.figure(picture))).isEqualTo(new SvgPictures("p").draw(SamplePictures.figure(picture)));
    }

    @Test
    void bothVersionsOfALongSectionOfALongCourseAreUnder40Kilobytes() {
        for (int seed = 0; seed < 20; seed++) {
            String drawn = new SvgPictures("p").draw(SamplePictures.figure(SamplePictures.longSection(200, 80, seed)));
            assertThat(drawn.getBytes(StandardCharsets.UTF_8)).hasSizeBetween(8_000, 40_000);
        }
    }

    @Test
    void titleAndTextEquivalentComeFromTheFigureWhateverTheyHold() {
        String hostile = "</title><script>alert(1)</script>\u202e\u0000\"'&";
        String drawn = new SvgPictures("p").draw(new Figure(RichText.ofQuoted(hostile), SamplePictures.barChart(), RichText.ofQuoted(hostile)));
        Element svg = DrawnText.parse(drawn.split("\n")[0]);
        assertThat(svg.getElementsByTagName("script").getLength()).isZero();
        assertThat(svg.getElementsByTagName("desc").item(0).getTextContent()).isEqualTo("</title><script>alert(1)</script>\ufffd\"'&");
    }

    /** The samples above leave out no kind of picture. */
    @Test
    void everyKindOfPictureIsAmongTheSamples() {
        assertThat(pictures().map(Object::getClass).distinct().count()).isEqualTo(PictureVisitor.class.getDeclaredMethods().length);
    }
}
