package courseworthy.render.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import courseworthy.render.SampleReport;
import courseworthy.report.CheckboxList;
import courseworthy.report.Definition;
import courseworthy.report.Report;
import courseworthy.report.RichText;
import courseworthy.report.Section;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;

class HtmlRendererTest {

    private static String html(Report report) {
        return new HtmlRenderer().render(report);
    }

    private static Document page(Report.Builder report) {
        return Jsoup.parse(html(report.build()));
    }

    @Test
    void aPageIsTheSameEachTime() {
        assertThat(html(SampleReport.with("a"))).isEqualTo(html(SampleReport.with("a"))).endsWith("</html>\n");
    }

    /** Content Security Policy Level 3, 2.3.1: a source of the form 'sha256-' and the digest in base 64 allows the very element whose text has it. */
    @Test
    void thePolicyAllowsTheStyleAndScriptOfThePageAlone() throws Exception {
        Document page = Jsoup.parse(html(SampleReport.with("a")));
        String policy = page.select("meta[http-equiv=Content-Security-Policy]").attr("content");
        assertThat(policy).startsWith("default-src 'none'; ")
                .contains("style-src '" + digest(page.select("style").first().data()) + "'")
                .contains("script-src '" + digest(page.select("script").first().data()) + "'")
                .doesNotContain("unsafe").doesNotContain("http").doesNotContain("*");
    }

    private static String digest(String text) throws Exception {
        return "sha256-" + Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** HTML, 4.3.11: headings tell the levels of sections. */
    @Test
    void headingsFollowTheLevelsOfSections() {
        Document page = page(Report.builder(RichText.of("Title"))
                .section(Section.builder("a", "First").section(Section.builder("b", "Second").section(Section.builder("c", "Third").paragraph("x")))));
        assertThat(page.select("h1, h2, h3, h4").eachText()).containsExactly("Title", "First", "Second", "Third");
        assertThat(page.select("#b > h3")).hasSize(1);
        assertThat(page.select("#c > h4")).hasSize(1);
    }

    @Test
    void whatOnlySomeLookUpIsClosedUntilItIsAskedFor() {
        Document page = page(Report.builder(RichText.of("t")).section(Section.builder("more", "More").detail().paragraph("all of it")));
        assertThat(page.select("details#more > summary > h2").text()).isEqualTo("More");
        assertThat(page.select("details#more > p").text()).isEqualTo("all of it");
        assertThat(page.select("details[open]")).isEmpty();
    }

    @Test
    void ticksAreNamedByWhatIsToBeDoneAndThePageByItsIdentity() {
        CheckboxList.Entry brakes = new CheckboxList.Entry(true, RichText.of("Brakes"), RichText.of("firm"), RichText.EMPTY);
        CheckboxList.Entry tyres = new CheckboxList.Entry(false, RichText.of("Tyres"), RichText.of("1.30 bar"), RichText.EMPTY);
        CheckboxList.Entry softer = new CheckboxList.Entry(false, RichText.of("Tyres"), RichText.of("1.20 bar"), RichText.EMPTY);
        List<String> names = boxes(List.of(brakes, tyres, tyres));
        assertThat(names).hasSize(3).doesNotHaveDuplicates().allMatch(name -> name.matches("[0-9a-f]{16}"));
        assertThat(boxes(List.of(tyres, softer, brakes))).containsExactly(names.get(1), boxes(List.of(softer)).get(0), names.get(0))
                .doesNotHaveDuplicates();
        assertThat(identity("Fen", "Kim", "2026-06-20")).isEqualTo(identity("Fen", "Kim", "2026-06-20"))
                .isNotEqualTo(identity("Fen", "Kim", "2026-06-21")).isNotEqualTo(identity("Fen", "Sam", "2026-06-20"));
    }

    private static List<String> boxes(List<CheckboxList.Entry> entries) {
        return page(Report.builder(RichText.of("t")).section(Section.builder("todo", "To do").checkboxes(entries))).select("input").eachAttr("data-box");
    }

    private static String identity(String... parts) {
        return page(Report.builder(RichText.of("t")).identity(parts)).body().attr("data-page");
    }

    /** HTML, 4.10.4: a label that holds its control needs no other tie. */
    @Test
    void aBoxHasItsWordsForALabel() {
        CheckboxList.Entry brakes = new CheckboxList.Entry(true, RichText.of("Brakes"), RichText.of("firm"), RichText.of("they stop you"));
        Element label = page(Report.builder(RichText.of("t")).section(Section.builder("todo", "To do").checkboxes(List.of(brakes)))).select("label").first();
        assertThat(label.select("input[type=checkbox]")).hasSize(1);
        assertThat(label.text()).isEqualTo("Safety: Brakes");
        assertThat(label.parent().text()).isEqualTo("Safety: Brakes Done when: firm Why: they stop you");
    }

    @Test
    void cellsSayWhatTheyHead() {
        Elements cells = Jsoup.parse(html(SampleReport.with("x"))).select("#values table").first().select("th");
        assertThat(cells.eachAttr("scope")).containsExactly("col", "col", "col", "row", "row");
    }

    @Test
    void aSourceIsListedOnceAndReferredToByItsNumber() {
        Document page = page(Report.builder(RichText.of("t")).paragraph(RichText.of("A").footnote("Book, 1984"))
                .paragraph(RichText.of("B").footnote("Paper, 1999")).paragraph(RichText.of("C").footnote("Book, 1984")));
        assertThat(page.select("a.source").eachText()).containsExactly("[1]", "[2]", "[1]");
        assertThat(page.select("a.source").eachAttr("href")).containsExactly("#source-1", "#source-2", "#source-1");
        assertThat(page.select("ol.sources li").eachText()).containsExactly("Book, 1984", "Paper, 1999");
        assertThat(page.select("#source-2").text()).isEqualTo("Paper, 1999");
    }

    @Test
    void aReferenceLeadsToItsSectionAndIsPlainWordsWhereThereIsNone() {
        Document page = page(Report.builder(RichText.of("t")).paragraph(RichText.of("see ").crossReference("there", "a").text(" and ").crossReference("nowhere", "b"))
                .section(Section.builder("a", "A").paragraph("x")));
        assertThat(page.select("a").eachAttr("href")).containsExactly("#a");
        assertThat(page.select("p").first().text()).isEqualTo("see there and nowhere");
    }

    @Test
    void theSettingsOfTheFirstSectionMakeACard() {
        Report.Builder report = Report.builder(RichText.of("t")).section(Section.builder("short", "In short").settings(List.of(Definition.of("Tyres", "60 mm"))))
                .section(Section.builder("rest", "The rest").paragraph("x"));
        Document page = page(report);
        assertThat(page.select(".card > #short .settings dd").text()).isEqualTo("60\u202fmm");
        assertThat(page.select("main > #rest")).hasSize(1);
        assertThat(page.select("main #short")).isEmpty();
    }

    @Test
    void tagsAreClosedInTheOrderInWhichTheyWereOpened() {
        HtmlWriter crossed = new HtmlWriter().open("p").open("b");
        assertThatThrownBy(() -> crossed.close("p")).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(crossed::finish).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> new HtmlWriter().open("p").text("x").attribute("id", "late")).isInstanceOf(IllegalStateException.class);
    }
}
