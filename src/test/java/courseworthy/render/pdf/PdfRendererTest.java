package courseworthy.render.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.render.HostileText;
import courseworthy.render.SampleReport;
import courseworthy.report.CheckboxList;
import courseworthy.report.Definition;
import courseworthy.report.PrintedReport;
import courseworthy.report.Report;
import courseworthy.report.RichText;
import courseworthy.report.Section;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reports on paper, read back by other programs than the one that wrote them. */
class PdfRendererTest {

    private static final String LACKING = "An empty square stands for a character that this PDF has no typeface for";

    @ParameterizedTest
    @EnumSource
    void aReportWithEveryKindOfBlockKeepsToTheStandard(PaperSize paper) {
        assertThat(new ReadPdf(PdfRenderer.render(sample("harmless"), "source", paper)).faults()).isEmpty();
    }

    @Test
    void noWordIsLost() {
        PrintedReport report = sample("harmless");
        assertThat(printed(report).words()).containsAll(ReadPdf.words(plain(report)));
    }

    @Test
    void eachTypefaceIsInTheFile() {
        assertThat(printed(sample("harmless")).embedded()).hasSize(2).allSatisfy((name, embedded) -> {
            assertThat(name).matches("[A-Z]{6}\\+LiberationSans(-Bold)?");
            assertThat(embedded).isTrue();
        });
    }

    @Test
    void theSameGivesTheSameBytes() {
        assertThat(PdfRenderer.render(sample("a"), "source", PaperSize.A4)).isEqualTo(PdfRenderer.render(sample("a"), "source", PaperSize.A4))
                .isNotEqualTo(PdfRenderer.render(sample("a"), "another source", PaperSize.A4));
    }

    /** A digest of "abc" that everybody can look up: FIPS 180-4's own example, SHA-256. */
    @Test
    void theFootSaysWhoAndFromWhat() {
        assertThat(new ReadPdf(PdfRenderer.render(boxes(3), "abc", PaperSize.A4)).text()).contains("Kim, 20 June 2026", "made from sha256 ba7816bf8f01cfea");
    }

    /** "fi" as one character (U+FB01) would not be found by a search. */
    @ParameterizedTest
    @ValueSource(strings = {"firm filled affluent", "\u0416\u0435\u043d\u044f \u0429\u0443\u043a\u0438\u043d\u0430", "\u0391\u03b8\u03b7\u03bd\u03ac \u03a3\u03af\u03c3\u03c5\u03c6\u03bf\u03c2",
        "\u0141\u00f3d\u017a \u0160tefan \u011eul \u00d8ystein Zo\u00eb"})
    void latinGreekAndCyrillicAreReadBack(String name) {
        ReadPdf read = printed(boxes(name, 1));
        assertThat(read.words()).containsAll(ReadPdf.words(name));
        assertThat(read.text()).doesNotContain(LACKING);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u4e2d\u6587", "\ud83d\udeb2", "\u05d3\u05df", "\u0939\u093f\u0928\u094d\u0926\u0940"})
    void whatHasNoFaceIsASquareAndIsSaidSo(String name) {
        ReadPdf read = printed(boxes(name, 1));
        assertThat(read.text().replaceAll("\\s+", " ")).contains("\u25a1").containsOnlyOnce(LACKING);
        assertThat(read.faults()).isEmpty();
    }

    @Property(tries = 60, seed = "14289")
    void textComesOutAsItWentIn(@ForAll("hostile") String text) {
        ReadPdf read = printed(boxes("begin " + text + " end", 1));
        assertThat(unspaced(read.text())).contains(unspaced("begin " + text + " end"));
        assertThat(read.text().codePoints()).noneMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\r' || c >= 0x202a && c <= 0x202e || c >= 0x2066 && c <= 0x2069);
    }

    /** What stands in the title stands in the metadata, which are XML, and at the foot. */
    @Property(tries = 20, seed = "14290")
    void aTitleOfAnyKindKeepsToTheStandard(@ForAll("hostile") String text) {
        PrintedReport report = new PrintedReport(RichText.ofQuoted("T" + text), RichText.ofQuoted(text), boxes(text, 2).sides(), RichText.ofQuoted(text), null);
        assertThat(printed(report).faults()).isEmpty();
    }

    /** Without what is not shown; what no face has is left out on both sides. */
    private static String unspaced(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC).replaceAll("[^\\x21-\\x7e\\u00c0-\\u00ff]", "");
    }

    /** Ten thousand characters stand on as many sides as they need. */
    @Test
    void aLongNameIsNotCut() {
        String name = "Abcdefghij".repeat(1000);
        PrintedReport report = new PrintedReport(RichText.ofQuoted(name), RichText.of("sub"), boxes(name, 1).sides(), RichText.ofQuoted(name), null);
        ReadPdf read = printed(report);
        String text = read.text().replaceAll("\\s", "");
        assertThat(text.split(name, -1)).hasSizeGreaterThanOrEqualTo(3);
        assertThat(read.faults()).isEmpty();
    }

    /** 75 by 105 mm between the marks to cut by, on the last side. */
    @Test
    void theCardHasItsSizeAndStaysWithinIt() {
        PrintedReport plain = boxes(30);
        Section card = Section.builder("top-tube", "Moor Cup").definitions(List.of(Definition.of("Eat", "70 g an hour"))).build();
        ReadPdf read = printed(new PrintedReport(plain.title(), plain.subtitle(), List.of(plain.sides().get(0).subList(0, 1), plain.sides().get(0).subList(1, 4)), plain.foot(), card));
        assertThat(read.pages()).isEqualTo(2);
        assertThat(read.text()).contains("For the top tube: cut out, 75 by 105 mm", "70 g an hour");
        assertThat(read.faults()).isEmpty();
        List<double[]> marks = read.thinBars(2);
        assertThat(marks).hasSize(8);
        // The inner ends of the marks are 1.5 mm off the corners.
        double wide = 75 * 72 / 25.4;
        double high = 105 * 72 / 25.4;
        assertThat(marks.stream().filter(bar -> bar[3] > bar[2]).mapToDouble(bar -> bar[0] + bar[2] / 2).distinct().sorted().toArray()).satisfies(x -> assertThat(x[x.length - 1] - x[0]).isEqualTo(wide, within(0.1)));
        assertThat(marks.stream().filter(bar -> bar[2] > bar[3]).mapToDouble(bar -> bar[1] + bar[3] / 2).distinct().sorted().toArray()).satisfies(y -> assertThat(y[y.length - 1] - y[0]).isEqualTo(high, within(0.1)));
    }

    @Test
    void aCardWithTooMuchOnItIsCutAtItsEnd() {
        Section card = Section.builder("top-tube", "x".repeat(10_000)).definitions(List.of(Definition.of("Eat", "70 g an hour"))).build();
        ReadPdf read = printed(new PrintedReport(RichText.of("Moor Cup"), RichText.of("Brief"), List.of(boxes(8).sides().get(0), boxes(8).sides().get(0)), RichText.EMPTY, card));
        assertThat(read.pages()).isEqualTo(2);
        assertThat(read.faults()).isEmpty();
    }

    @Test
    void aFewChecksTakeOneSideAndManyTakeTwo() {
        assertThat(printed(boxes(20)).pages()).isEqualTo(1);
        assertThat(printed(boxes(80)).pages()).isEqualTo(2);
        assertThat(printed(boxes(400)).pages()).isGreaterThan(2);
        assertThat(printed(boxes(400)).words()).containsAll(ReadPdf.words(plain(boxes(400))));
    }

    /** 210 mm and 8.5 inches, 72 points to the inch. */
    @Test
    void paperHasItsSize() {
        assertThat(new ReadPdf(PdfRenderer.render(boxes(1), "s", PaperSize.A4)).width()).isEqualTo(595.28f, within(0.01f));
        assertThat(new ReadPdf(PdfRenderer.render(boxes(1), "s", PaperSize.LETTER)).width()).isEqualTo(612f, within(0.01f));
    }

    private static ReadPdf printed(PrintedReport report) {
        return new ReadPdf(PdfRenderer.render(report, "source", PaperSize.A4));
    }

    private static PrintedReport boxes(int count) {
        return boxes("Look at the wheel", count);
    }

    /** Sections of eight things to do. */
    private static PrintedReport boxes(String what, int count) {
        List<Section> sections = new ArrayList<>();
        for (int from = 0; from < count; from += 8) {
            CheckboxList.Entry entry = new CheckboxList.Entry(from % 16 == 0, RichText.ofQuoted(what), RichText.of("It is true and nothing rubs"), RichText.EMPTY);
            sections.add(Section.builder("s-" + from, "Evening " + from).checkboxes(Collections.nCopies(Math.min(8, count - from), entry)).build());
        }
        return new PrintedReport(RichText.of("Moor Cup"), RichText.of("Checklist"), List.of(sections), RichText.of("Kim, 20 June 2026"), null);
    }

    private static PrintedReport sample(String text) {
        Report report = SampleReport.with(text);
        Section lead = new Section("lead", RichText.of("Lead"), RichText.EMPTY, report.lead(), List.of(), false);
        List<Section> sections = new ArrayList<>(List.of(lead));
        sections.addAll(report.sections());
        return new PrintedReport(report.title(), report.subtitle(), List.of(sections), RichText.of("Kim"), null);
    }

    private static String plain(PrintedReport report) {
        PlainText out = new PlainText();
        report.sides().forEach(side -> side.forEach(out::section));
        return report.title().plain() + " " + report.subtitle().plain() + " " + out.text();
    }

    @Provide
    Arbitrary<String> hostile() {
        return HostileText.any();
    }
}
