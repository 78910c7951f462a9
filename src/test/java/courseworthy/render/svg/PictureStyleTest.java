package courseworthy.render.svg;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.report.picture.Picture;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Colours and classes of pictures. */
class PictureStyleTest {

    private static final Pattern PROPERTY = Pattern.compile("--([a-z]+): (#[0-9a-f]{6});");

    /** The colours of light, dark and print, in the order of the style sheet of the page. */
    private static List<Map<String, String>> themes() throws IOException {
        String sheet = Files.readString(Path.of("src/main/resources/courseworthy/render/html/page.css"), StandardCharsets.UTF_8);
        List<Map<String, String>> out = new ArrayList<>();
        Matcher roots = Pattern.compile(":root \\{([^}]*)}").matcher(sheet);
        while (roots.find()) {
            Map<String, String> theme = new HashMap<>();
            PROPERTY.matcher(roots.group(1)).results().forEach(each -> theme.put(each.group(1), each.group(2)));
            out.add(theme);
        }
        return out;
    }

    /** Web Content Accessibility Guidelines 2.2: 7:1 for text (1.4.6), 3:1 for lines that are needed to understand (1.4.11). */
    @Test
    void textAndLinesStandOutFromThePaper() throws IOException {
        assertThat(themes()).hasSize(3).allSatisfy(theme -> {
            String paper = theme.get("paper");
            for (String text : List.of("ink", "pale", "accent")) {
                assertThat(contrast(theme.get(text), paper)).as(text + " on " + paper).isGreaterThanOrEqualTo(7);
            }
            assertThat(contrast(theme.get("rule"), paper)).as("rule on " + paper).isGreaterThanOrEqualTo(3);
        });
    }

    /** The formula on the two ends that the guidelines give. */
    @Test
    void contrastIsThatOfTheGuidelines() {
        assertThat(contrast("#000000", "#ffffff")).isEqualTo(21);
        assertThat(contrast("#777777", "#ffffff")).isBetween(4.47, 4.49);
    }

    /** Hair lines only lead the eye along an axis: nothing that has a meaning is drawn in them. */
    @Test
    void onlyGridsAreFainterThanTheGuidelinesAsk() {
        List<String> faint = Pattern.compile("\\.drawing ([^{]*)\\{[^}]*--hair").matcher(SvgPictures.STYLE_SHEET).results().map(each -> each.group(1).strip()).toList();
        assertThat(faint).containsExactly(".grid");
    }

    @Test
    void everyClassThatIsDrawnIsInTheStyleSheetAndNoOther() {
        Set<String> drawn = new TreeSet<>(Set.of("swatch", "strokes"));
        SvgPictures pictures = new SvgPictures("p");
        List<Picture> all = new ArrayList<>(SamplePictures.all());
        all.add(SamplePictures.dayStrip(30, 12));
        for (int seed = 0; seed < 5; seed++) {
            all.add(SamplePictures.trackPlan(62, 40, seed));
            all.add(SamplePictures.longSection(62, 40, seed));
        }
        for (Picture each : all) {
            String markup = pictures.draw(SamplePictures.figure(each));
            Pattern.compile("class=\"([^\"]*)\"").matcher(markup).results().forEach(found -> drawn.addAll(List.of(found.group(1).split(" "))));
        }
        drawn.removeAll(KINDS);
        drawn.add("hatches");
        Set<String> styled = new TreeSet<>();
        Pattern.compile("\\.([a-z][a-z-]*)").matcher(SvgPictures.STYLE_SHEET.replaceAll("/\\*.*?\\*/", "")).results().forEach(each -> styled.add(each.group(1)));
        styled.remove("road-strip");
        assertThat(drawn).isEqualTo(styled);
    }

    /** Classes that say which picture it is, for whoever styles a page. */
    private static final Set<String> KINDS = Set.of("long-section", "gear-ladder", "pressure-line", "worth", "day-strip", "back-plan", "before-after",
            "track-plan", "elevation-profile", "bar-chart");

    /** WCAG 2.2, definitions of relative luminance and contrast ratio. */
    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double share = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weights[i] * (share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
