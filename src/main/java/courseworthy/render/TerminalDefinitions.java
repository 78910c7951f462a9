package courseworthy.render;

import courseworthy.report.Block;
import courseworthy.report.Definition;
import courseworthy.report.DefinitionList;
import courseworthy.report.RichText;
import courseworthy.report.Style;
import java.util.List;

/** Writes the lists of definitions of one section for the terminal, all with their values and their remarks at the same columns. */
final class TerminalDefinitions {

    private static final int GAP = 2;
    private static final int DETAIL_INDENT = 2;

    private final TerminalPage page;
    private final int indent;
    private final FootnoteIndex footnotes;
    private int labels;
    private int remarks;

    private TerminalDefinitions(TerminalPage page, int indent, FootnoteIndex footnotes) {
        this.page = page;
        this.indent = indent;
        this.footnotes = footnotes;
    }

    /** Measures all lists among some blocks. Wider labels and remarks than a part of the page get lines of their own. */
    static TerminalDefinitions of(List<Block> blocks, TerminalPage page, int indent, FootnoteIndex footnotes) {
        TerminalDefinitions out = new TerminalDefinitions(page, indent, footnotes);
        int mostRemark = page.width() / 4;
        for (Block block : blocks) {
            if (block instanceof DefinitionList list) {
                for (Definition row : list.rows()) {
                    int remark = measured(row.remark()).width();
                    out.remarks = Math.max(out.remarks, remark > mostRemark ? 0 : remark);
                }
            }
        }
        int mostLabel = out.remarks > 0 ? page.width() * 3 / 8 : page.width() / 2;
        for (Block block : blocks) {
            if (block instanceof DefinitionList list) {
                for (Definition row : list.rows()) {
                    int label = measured(row.label()).width();
                    out.labels = Math.max(out.labels, label > mostLabel ? 0 : label);
                }
            }
        }
        return out;
    }

    /** For its width alone: its footnotes are not yet numbered. */
    private static StyledText measured(RichText text) {
        return TerminalText.of(text, new FootnoteIndex());
    }

    void write(DefinitionList list) {
        if (!list.title().isEmpty()) {
            page.wrapped(" ".repeat(Math.max(0, indent - GAP)), line(list.title()).in(Style.SECONDARY));
        }
        list.rows().forEach(this::row);
    }

    private void row(Definition row) {
        StyledText label = line(row.label());
        StyledText remark = line(row.remark()).in(Style.SECONDARY);
        int at = indent + (labels == 0 ? GAP : labels + GAP);
        if (label.width() > labels) {
            page.wrapped(" ".repeat(indent), label);
            label = StyledText.EMPTY;
        }
        boolean beside = remark.width() <= remarks;
        List<StyledText> values = line(row.value()).lines(page.width() - at - (remarks > 0 ? remarks + GAP : 0));
        for (int i = 0; i < values.size(); i++) {
            TerminalPage.TerminalLine out = page.row().at(indent, i == 0 ? label : StyledText.EMPTY).at(at, values.get(i));
            out.at(page.width() - remarks, i == 0 && beside ? remark : StyledText.EMPTY).end();
        }
        if (!beside) {
            page.wrapped(" ".repeat(at), remark);
        }
        for (RichText detail : row.details()) {
            page.wrapped(" ".repeat(indent + DETAIL_INDENT), indent + 2 * DETAIL_INDENT, line(detail));
        }
    }

    private StyledText line(RichText text) {
        return TerminalText.of(text, footnotes);
    }
}
