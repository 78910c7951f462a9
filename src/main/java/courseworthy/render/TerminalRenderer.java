package courseworthy.render;

import courseworthy.report.Block;
import courseworthy.report.BlockVisitor;
import courseworthy.report.Callout;
import courseworthy.report.CheckboxList;
import courseworthy.report.DefinitionList;
import courseworthy.report.Figure;
import courseworthy.report.ItemList;
import courseworthy.report.Listing;
import courseworthy.report.Paragraph;
import courseworthy.report.Paragraph.Role;
import courseworthy.report.picture.BarChart;
import courseworthy.report.picture.ElevationProfile;
import courseworthy.report.Report;
import courseworthy.report.RichText;
import courseworthy.report.Section;
import courseworthy.report.Span;
import courseworthy.report.Style;
import courseworthy.report.Table;
import java.util.List;

/**
 * Writes reports for a terminal. No line is wider than the page. Emphasis is bold, italic, faint and one colour for what needs
 * attention; without colour the page reads the same.
 */
public final class TerminalRenderer implements Renderer {

    /** Columns of a page where the width of the terminal is not known, or the result is piped. */
    public static final int STANDARD_WIDTH = 80;
    private static final int LEAST_WIDTH = 60;
    private static final int MOST_WIDTH = 100;
    /** How far the content of a section is indented. */
    private static final int INDENT = 2;

    private final int width;
    private final boolean colour;

    /**
     * @param width  columns of the terminal; the page takes 60 to 100 of them
     * @param colour whether emphasis may be shown
     */
    public TerminalRenderer(int width, boolean colour) {
        this.width = Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, width));
        this.colour = colour;
    }

    @Override
    public String render(Report report) {
        TerminalWriter writer = new TerminalWriter(new TerminalPage(width, colour));
        writer.report(report);
        return writer.page.toString();
    }

    /** Writes one report. */
    private static final class TerminalWriter implements BlockVisitor {
        private final TerminalPage page;
        private final FootnoteIndex footnotes = new FootnoteIndex();
        private int indent;
        /** The widths of labels and remarks in the section at hand. */
        private TerminalDefinitions definitions;

        TerminalWriter(TerminalPage page) {
            this.page = page;
        }

        void report(Report report) {
            StyledText title = line(report.title()).in(Style.STRONG);
            if (!title.isEmpty() || !report.subtitle().isEmpty()) {
                page.spread(title, line(report.subtitle()));
            }
            if (!report.lead().isEmpty() && isWide(report.lead().get(0))) {
                page.blank();
            }
            blocks(report.lead(), 0);
            report.sections().forEach(section -> section(section, 1));
            sources();
        }

        private void section(Section section, int level) {
            page.blank();
            StyledText heading = level == 1 ? TerminalText.inCapitals(section.heading(), footnotes) : line(section.heading());
            page.spread(heading.in(Style.STRONG), line(section.aside()).in(Style.SECONDARY));
            blocks(section.blocks(), INDENT);
            section.sections().forEach(each -> section(each, level + 1));
        }

        private void sources() {
            if (footnotes.sources().isEmpty()) {
                return;
            }
            page.blank();
            page.wrapped("", TerminalText.inCapitals(RichText.of(Span.Footnote.HEADING), footnotes).in(Style.STRONG));
            for (int i = 0; i < footnotes.sources().size(); i++) {
                page.wrapped("  [" + (i + 1) + "] ", line(RichText.ofQuoted(footnotes.sources().get(i))));
            }
        }

        private void blocks(List<Block> blocks, int at) {
            int indentBefore = indent;
            TerminalDefinitions definitionsBefore = definitions;
            indent = at;
            definitions = TerminalDefinitions.of(blocks, page, at, footnotes);
            Block previous = null;
            for (Block block : blocks) {
                if (previous != null && setApart(previous, block)) {
                    page.blank();
                }
                block.accept(this);
                previous = block;
            }
            indent = indentBefore;
            definitions = definitionsBefore;
        }

        /** Whether there is an empty line between two blocks: around tables and pictures, and before small print never. */
        private static boolean setApart(Block above, Block below) {
            boolean remark = below instanceof Paragraph paragraph && paragraph.role() == Role.REMARK;
            return isWide(below) || isWide(above) && !remark;
        }

        private static boolean isWide(Block block) {
            return block instanceof Table || block instanceof Listing
                    || block instanceof Figure figure && !(figure.picture() instanceof ElevationProfile profile && profile.compact());
        }

        private StyledText line(RichText text) {
            return TerminalText.of(text, footnotes);
        }

        private String margin() {
            return " ".repeat(indent);
        }

        @Override
        public void paragraph(Paragraph paragraph) {
            StyledText text = line(paragraph.text());
            page.wrapped(margin(), paragraph.role() == Role.REMARK ? text.in(Style.SECONDARY) : text);
        }

        @Override
        public void definitions(DefinitionList list) {
            definitions.write(list);
        }

        @Override
        public void table(Table table) {
            if (!table.caption().isEmpty()) {
                page.wrapped(margin(), line(table.caption()).in(Style.STRONG));
            }
            new TerminalTable(page, table, indent, footnotes).write();
        }

        @Override
        public void items(ItemList list) {
            int number = 1;
            for (ItemList.Item item : list.items()) {
                String mark = list.numbered() ? number++ + ". " : "- ";
                page.wrapped(margin() + mark, line(item.text()));
                blocks(item.below(), indent + mark.length());
            }
        }

        @Override
        public void checkboxes(CheckboxList list) {
            for (CheckboxList.Entry entry : list.entries()) {
                String box = margin() + (entry.critical() ? "[ ] ! " : "[ ]   ");
                page.wrapped(box, line(entry.what()).in(Style.STRONG));
                below(box.length(), CheckboxList.DONE_WHEN, line(entry.doneWhen()));
                below(box.length(), CheckboxList.WHY, line(entry.why()).in(Style.SECONDARY));
            }
        }

        private void below(int at, String label, StyledText text) {
            if (!text.isEmpty()) {
                page.wrapped(" ".repeat(at), StyledText.drawn(label, Style.SECONDARY).labelling(text));
            }
        }

        @Override
        public void callout(Callout callout) {
            if (callout.kind() == Callout.Kind.CAUTION) {
                page.wrapped(margin() + "! ", line(callout.text()).in(Style.ATTENTION));
            } else {
                page.wrapped(margin(), StyledText.drawn(callout.kind().word(), Style.STRONG).labelling(line(callout.text())));
            }
        }

        @Override
        public void figure(Figure figure) {
            if (!figure.title().isEmpty()) {
                page.wrapped(margin(), line(figure.title()).in(Style.STRONG));
            }
            TerminalFigure drawing = new TerminalFigure(page, indent);
            if (figure.picture() instanceof ElevationProfile profile) {
                drawing.elevation(profile);
            } else if (figure.picture() instanceof BarChart chart) {
                drawing.bars(chart);
            } else {
                page.wrapped(margin(), line(figure.textEquivalent()));
            }
        }

        /** Lines to copy: as they are, and cut where the page ends rather than wrapped at spaces. */
        @Override
        public void listing(Listing listing) {
            for (String each : listing.lines()) {
                page.cut(margin(), each);
            }
        }
    }
}
