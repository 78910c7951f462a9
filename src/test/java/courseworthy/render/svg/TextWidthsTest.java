package courseworthy.render.svg;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.font.FontRenderContext;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextWidthsTest {

    private static final List<String> SAMPLES = List.of("0123456789", "1 \u00b7 14\u2009km \u00b7 4.7\u2009%", "WATER, MAMMOTH", "\u22121200", "useful at speed 48 km/h",
            "\u00c5ngstr\u00f6m, \u0141\u00f3d\u017a, \u0160umava", "\u0391\u03b8\u03ae\u03bd\u03b1", "\u0429\u0443\u043a\u0430", "fi fl ffi", "a\u0301e\u0300", "");

    /** The bound holds for the faces that it was taken from, where the machine has them. */
    @Test
    void noTextIsWiderThanItsBound() {
        List<String> families = Arrays.asList(GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames(java.util.Locale.ROOT));
        List<String> known = List.of("DejaVu Sans", "Noto Sans", "Liberation Sans", "Roboto", "Open Sans").stream().filter(families::contains).toList();
        assumeTrue(!known.isEmpty());
        FontRenderContext exact = new FontRenderContext(null, true, true);
        for (String family : known) {
            for (boolean bold : new boolean[] {false, true}) {
                Font font = new Font(family, bold ? Font.BOLD : Font.PLAIN, 12);
                for (String each : SAMPLES) {
                    assertThat(TextWidths.of(each, bold)).as(family + " " + each).isGreaterThanOrEqualTo(font.getStringBounds(each, exact).getWidth());
                }
            }
        }
    }

    /** Not so wide either that labels would be left out for want of room: ten figures of 0.636 em (DejaVu Sans) and the slack. */
    @Test
    void figuresAreAsWideAsTheyAre() {
        assertThat(TextWidths.of("0123456789", false)).isBetween(76.3, 78.5);
        assertThat(TextWidths.of("0123456789", true)).isBetween(83.5, 86.0);
        assertThat(TextWidths.of("e\u0301\u0302", false)).isEqualTo(TextWidths.of("e", false));
    }

    @Test
    void textIsCutWithAnEllipsisBetweenWholeCharacters() {
        assertThat(TextWidths.cut("gravel", 60, false)).isEqualTo("gravel");
        assertThat(TextWidths.cut("gravel", 34, false)).isEqualTo("gra\u2026");
        assertThat(TextWidths.cut("a \ud83d\udeb2\ud83d\udeb2", 40, false)).isEqualTo("a\u2026");
        assertThat(TextWidths.cut("gravel", 3, false)).isEmpty();
        assertThat(LabelLines.of("one two three four", 60, false, 2)).extracting(PictureText::metric)
                .containsExactly("one two", TextWidths.cut("three four", 60, false));
    }

    /** 60 mm has no other unit in customary pictures; 60 m is 197 ft (NIST Special Publication 811). What is cut short must not be read as either. */
    @Test
    void unitsAreReadBeforeTextIsCut() {
        PictureText whole = PictureText.of("wheel of 60 mm");
        PictureText cut = whole.cut(whole.width(false) - 1, false);
        assertThat(cut.metric()).endsWith("\u2026");
        assertThat(cut.customary()).isEqualTo(cut.metric());
        assertThat(PictureText.of("climb of 60 m").customary()).contains("ft");
    }

    @Test
    void aFigureAndItsUnitOnTwoLinesAreBothOfOneSystem() {
        double width = PictureText.of("a climb of 300").width(false) + 1;
        List<PictureText> lines = LabelLines.of("a climb of 300 m", width, false, 3);
        assertThat(lines).extracting(PictureText::metric).containsExactly("a climb of 300", "m");
        assertThat(lines).extracting(PictureText::customary).containsExactly("a climb of", "980\u202fft");
    }

    /** Text drawn in two systems of units is measured and cut in both. */
    @Test
    void onlyTextInBothUnitsIsMeasured() {
        noClasses().that().doNotHaveFullyQualifiedName(PictureText.class.getName()).and().doNotHaveFullyQualifiedName(TextWidths.class.getName())
                .should().callMethod(TextWidths.class, "of", String.class, boolean.class)
                .orShould().callMethod(TextWidths.class, "cut", String.class, double.class, boolean.class)
                .check(new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("courseworthy.render.svg"));
    }
}
