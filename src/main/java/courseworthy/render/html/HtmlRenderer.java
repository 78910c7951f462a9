package courseworthy.render.html;

import courseworthy.render.FootnoteIndex;
import courseworthy.render.Renderer;
import courseworthy.report.Block;
import courseworthy.report.DefinitionList;
import courseworthy.report.Figure;
import courseworthy.report.Report;
import courseworthy.report.RichText;
import courseworthy.report.Section;
import courseworthy.report.Span;
import courseworthy.report.Table;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Writes a report as a page of HTML: one file with its style and script in it, which asks for nothing else and says so in its content security
 * policy. All of it can be read without the script, which adds what is only comfort ({@code page.js}).
 */
public final class HtmlRenderer implements Renderer {

    private static final int DEEPEST_HEADING = 6;

    @Override
    public String render(Report report) {
        HtmlWriter out = new HtmlWriter();
        out.markup("<!DOCTYPE html>\n").open("html").attribute("lang", "en").line();
        head(report, out);
        out.open("body").attribute("data-page", Digest.of(String.join("\n", report.identity()))).line();
        new PageWriter(report, out).write();
        out.open("script").markup(PageResources.SCRIPT).close("script").line();
        out.close("body").line().close("html").line();
        return out.finish();
    }

    private static void head(Report report, HtmlWriter out) {
        String title = RichText.join(", ", List.of(report.title(), report.subtitle())).plain();
        out.open("head").line();
        out.open("meta").attribute("charset", "utf-8").line();
        out.open("meta").attribute("http-equiv", "Content-Security-Policy").attribute("content", PageResources.CONTENT_SECURITY_POLICY).line();
        out.open("meta").attribute("name", "viewport").attribute("content", "width=device-width, initial-scale=1").line();
        out.open("meta").attribute("name", "color-scheme").attribute("content", "light dark").line();
        out.open("meta").attribute("name", "referrer").attribute("content", "no-referrer").line();
        out.element("title", title.isEmpty() ? "Courseworthy" : title).line();
        out.open("style").markup(PageResources.STYLE_SHEET).close("style").line();
        out.close("head").line();
    }

    /** The size of a page in bytes, as it is stored. */
    static int size(String page) {
        return page.getBytes(StandardCharsets.UTF_8).length;
    }

    /** What stands on one page. */
    private static final class PageWriter {
        private final Report report;
        private final HtmlWriter out;
        private final FootnoteIndex footnotes = new FootnoteIndex();
        private final Set<String> ids = new HashSet<>();
        private final HtmlBlocks blocks;
        private boolean leadHasTools;

        PageWriter(Report report, HtmlWriter out) {
            this.report = report;
            this.out = out;
            collectIds(report.sections());
            blocks = new HtmlBlocks(out, footnotes, ids);
        }

        private void collectIds(List<Section> sections) {
            for (Section section : sections) {
                ids.add(section.id());
                collectIds(section.sections());
            }
        }

        void write() {
            List<Section> sections = report.sections();
            boolean card = !sections.isEmpty() && sections.get(0).blocks().stream().anyMatch(PageWriter::isSettings);
            out.open("div", card ? "sheet with-card" : "sheet").line();
            if (card) {
                out.open("div", "card").line();
            }
            top();
            if (card) {
                section(sections.get(0), 2);
            }
            if (!leadHasTools) {
                tools();
            }
            if (card) {
                out.close("div").line();
            }
            out.open("main").line();
            sections.subList(card ? 1 : 0, sections.size()).forEach(each -> section(each, 2));
            sources();
            out.close("main").line().close("div").line();
            blocks.hatches();
        }

        private static boolean isSettings(Block block) {
            return block instanceof DefinitionList list && list.settings();
        }

        private void top() {
            out.open("header").line();
            heading(1, report.title());
            if (!report.subtitle().isEmpty()) {
                out.open("p", "subtitle");
                HtmlText.writeHeading(report.subtitle(), out, footnotes, ids);
                out.close("p").line();
            }
            List<Block> lead = report.lead();
            int words = (int) lead.stream().takeWhile(each -> !(each instanceof Table || each instanceof Figure)).count();
            blocks.write(lead.subList(0, words));
            if (words < lead.size()) {
                tools();
            }
            blocks.write(lead.subList(words, lead.size()));
            out.close("header").line();
            leadHasTools = words < lead.size();
        }

        /** Where the script puts its buttons: below the words at the top, and above a table or a picture that is there. */
        private void tools() {
            out.open("div", "tools").attribute("hidden").close("div").line();
        }

        private void heading(int level, RichText text) {
            if (!text.isEmpty()) {
                String element = "h" + Math.min(level, DEEPEST_HEADING);
                out.open(element);
                HtmlText.writeHeading(text, out, footnotes, ids);
                out.close(element).line();
            }
        }

        private void section(Section section, int level) {
            if (section.detail()) {
                out.open("details", "section").attribute("id", section.id()).line().open("summary");
            } else {
                out.open("section").attribute("id", section.id()).line();
            }
            title(section, level);
            if (section.detail()) {
                out.close("summary").line();
            }
            blocks.within(section);
            blocks.write(section.blocks());
            section.sections().forEach(each -> section(each, level + 1));
            out.close(section.detail() ? "details" : "section").line();
        }

        private void title(Section section, int level) {
            heading(level, section.heading());
            if (!section.aside().isEmpty()) {
                out.open("span", "aside");
                HtmlText.write(section.aside(), out, footnotes, ids);
                out.close("span").line();
            }
        }

        private void sources() {
            if (footnotes.sources().isEmpty()) {
                return;
            }
            out.open("section").attribute("id", "the-sources").line();
            heading(2, RichText.of(Span.Footnote.HEADING));
            out.open("ol", "sources").line();
            int number = 1;
            for (String source : footnotes.sources()) {
                out.open("li").attribute("id", "source-" + number++).open("bdi").text(source).close("bdi").close("li").line();
            }
            out.close("ol").line().close("section").line();
        }
    }
}
