package courseworthy.render;

import courseworthy.problem.TextSanitiser;
import courseworthy.report.Block;
import courseworthy.report.BlockVisitor;
import courseworthy.report.Callout;
import courseworthy.report.CheckboxList;
import courseworthy.report.Definition;
import courseworthy.report.DefinitionList;
import courseworthy.report.Figure;
import courseworthy.report.ItemList;
import courseworthy.report.Listing;
import courseworthy.report.Paragraph;
import courseworthy.report.Paragraph.Role;
import courseworthy.report.picture.Bar;
import courseworthy.report.picture.BarChart;
import courseworthy.report.Report;
import courseworthy.report.RichText;
import courseworthy.report.Section;
import courseworthy.report.Span;
import courseworthy.report.Style;
import courseworthy.report.Table;
import courseworthy.report.TableColumn;
import courseworthy.report.TableColumn.Alignment;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes reports as Markdown: CommonMark with tables as GitHub Flavored Markdown defines them. All text is escaped, so that it shows as
 * it was written and makes no markup of its own.
 */
public final class MarkdownRenderer implements Renderer {

    private static final int DEEPEST_HEADING = 6;

    @Override
    public String render(Report report) {
        MarkdownWriter writer = new MarkdownWriter(new FootnoteIndex(), new MarkdownAnchors(report));
        writer.report(report);
        return writer.lines.isEmpty() ? "" : String.join("\n", writer.lines) + "\n";
    }

    /** A heading with what stands beside it. */
    static RichText beside(RichText heading, RichText aside) {
        return RichText.join(", ", List.of(heading, aside));
    }

    /** Writes a report, or what stands below an item of a list. */
    private static final class MarkdownWriter implements BlockVisitor {
        private final List<String> lines = new ArrayList<>();
        private final FootnoteIndex footnotes;
        private final MarkdownAnchors anchors;

        MarkdownWriter(FootnoteIndex footnotes, MarkdownAnchors anchors) {
            this.footnotes = footnotes;
            this.anchors = anchors;
        }

        void report(Report report) {
            heading(1, beside(report.title(), report.subtitle()));
            report.lead().forEach(block -> block.accept(this));
            report.sections().forEach(section -> section(section, 2));
            sources();
        }

        private void heading(int level, RichText text) {
            if (!text.isEmpty()) {
                apart("#".repeat(Math.min(level, DEEPEST_HEADING)) + " " + unmarked(text));
            }
        }

        /** A heading is one weight throughout. A number sign at its end would be taken for a closing one. */
        private String unmarked(RichText text) {
            String line = inline(text.in(Style.PLAIN));
            return line.endsWith("#") ? line.substring(0, line.length() - 1) + "\\#" : line;
        }

        private void section(Section section, int level) {
            heading(level, beside(section.heading(), section.aside()));
            section.blocks().forEach(block -> block.accept(this));
            section.sections().forEach(each -> section(each, level + 1));
        }

        private void sources() {
            if (!footnotes.sources().isEmpty()) {
                heading(2, RichText.of(Span.Footnote.HEADING));
                items(ItemList.numbered(footnotes.sources().stream().map(RichText::ofQuoted).toList()));
            }
        }

        /** A line with an empty line before it, except at the top. */
        private void apart(String line) {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            lines.add(line);
        }

        private String inline(RichText text) {
            return MarkdownText.of(text, footnotes, anchors, false);
        }

        /** Text at the beginning of a line. */
        private String line(RichText text) {
            return MarkdownEscaper.lineStart(inline(text));
        }

        private static RichText emphasised(RichText text) {
            return restyled(text, Style.EMPHASIS);
        }

        private static RichText restyled(RichText text, Style style) {
            RichText out = RichText.EMPTY;
            for (Span span : text.spans()) {
                boolean plain = span instanceof Span.Text words && words.style() == Style.PLAIN;
                RichText each = new RichText(List.of(span));
                out = out.append(plain ? each.in(style) : each);
            }
            return out;
        }

        @Override
        public void paragraph(Paragraph paragraph) {
            apart(line(paragraph.role() == Role.REMARK ? emphasised(paragraph.text()) : paragraph.text()));
        }

        @Override
        public void definitions(DefinitionList list) {
            title(list.title());
            List<ItemList.Item> items = new ArrayList<>();
            for (Definition row : list.rows()) {
                RichText label = row.label().isEmpty() ? row.label() : restyled(row.label().text(":"), Style.STRONG).text(" ");
                RichText remark = row.remark().isEmpty() ? row.remark() : RichText.of(" (").append(row.remark()).text(")");
                items.add(ItemList.Item.of(label.append(row.value()).append(remark), row.details()));
            }
            items(new ItemList(false, items));
        }

        private void title(RichText text) {
            if (!text.isEmpty()) {
                apart(line(restyled(text, Style.STRONG)));
            }
        }

        @Override
        public void table(Table table) {
            title(table.caption());
            apart(row(table.columns().stream().map(TableColumn::heading).toList()));
            StringBuilder rule = new StringBuilder("|");
            for (TableColumn column : table.columns()) {
                rule.append(column.alignment() == Alignment.RIGHT ? " ---: |" : " --- |");
            }
            lines.add(rule.toString());
            table.rows().forEach(row -> lines.add(row(row)));
        }

        private String row(List<RichText> cells) {
            StringBuilder out = new StringBuilder("|");
            for (RichText cell : cells) {
                String text = MarkdownText.of(cell, footnotes, anchors, true);
                out.append(text.isEmpty() ? " |" : " " + text + " |");
            }
            return out.toString();
        }

        @Override
        public void items(ItemList list) {
            int number = 1;
            boolean first = true;
            for (ItemList.Item item : list.items()) {
                String mark = list.numbered() ? number++ + ". " : "- ";
                String line = mark + line(item.text());
                if (first) {
                    apart(line);
                } else {
                    lines.add(line);
                }
                below(item.below(), " ".repeat(mark.length()));
                first = false;
            }
        }

        /** What stands below an item, indented; a list directly, anything else after an empty line. */
        private void below(List<Block> blocks, String indent) {
            MarkdownWriter inner = new MarkdownWriter(footnotes, anchors);
            blocks.forEach(block -> block.accept(inner));
            if (!blocks.isEmpty() && !(blocks.get(0) instanceof ItemList)) {
                lines.add("");
            }
            inner.lines.forEach(line -> lines.add(line.isEmpty() ? "" : indent + line));
        }

        @Override
        public void checkboxes(CheckboxList list) {
            boolean first = true;
            for (CheckboxList.Entry entry : list.entries()) {
                RichText what = restyled((entry.critical() ? RichText.of("(!) ") : RichText.EMPTY).append(entry.what()), Style.STRONG);
                StringBuilder out = new StringBuilder("- [ ] ").append(inline(what));
                labelled(out, CheckboxList.DONE_WHEN, entry.doneWhen());
                labelled(out, CheckboxList.WHY, entry.why());
                if (first) {
                    apart(out.toString());
                } else {
                    lines.add(out.toString());
                }
                first = false;
            }
        }

        private void labelled(StringBuilder out, String label, RichText text) {
            if (!text.isEmpty()) {
                out.append("  \n  ").append(label).append(": ").append(inline(text));
            }
        }

        @Override
        public void callout(Callout callout) {
            apart("> **" + callout.kind().word() + ":** " + inline(callout.text()));
        }

        @Override
        public void figure(Figure figure) {
            title(figure.title());
            if (figure.picture() instanceof BarChart chart) {
                Table.Builder data = Table.builder().column(chart.labelHeading()).figures(chart.valueHeading());
                for (Bar bar : chart.bars()) {
                    data.row(RichText.ofQuoted(bar.label()), RichText.of(bar.written()));
                }
                table(data.build());
            } else {
                paragraph(new Paragraph(figure.textEquivalent(), Role.BODY));
            }
        }

        @Override
        public void listing(Listing listing) {
            String text = TextSanitiser.text(String.join("\n", listing.lines()));
            String fence = MarkdownEscaper.fence(text, 3);
            apart(fence + listing.language());
            lines.addAll(List.of(text.split("\n", -1)));
            lines.add(fence);
        }
    }
}
