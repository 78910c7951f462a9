package courseworthy.render.pdf;

import courseworthy.render.pdf.PdfRow.RowMark;
import courseworthy.render.pdf.PdfRow.RowPiece;
import courseworthy.render.pdf.PdfRow.GlyphRun;
import courseworthy.render.pdf.Rows.TypeStyle;
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
import courseworthy.report.RichText;
import courseworthy.report.Section;
import courseworthy.report.Table;
import java.util.ArrayList;
import java.util.List;

/** Sections and blocks of a report as rows of a column, each with its place in the structure of the document. */
final class BlockRows implements BlockVisitor {

    /** A box to tick, 5 mm, so that it can be ticked with a thick pencil and seen from the work stand. */
    private static final double BOX = PaperSize.points(5);
    private static final double THIN = 0.6;
    private static final double THICK = 1.6;
    private static final String BULLET = "\u2022";
    private static final int DEEPEST_HEADING = 6;

    private final Rows rows;
    private StructureTag parent;
    /** How far in from the column's left edge. */
    private double indent;

    private BlockRows(Rows rows, StructureTag parent) {
        this.rows = rows;
        this.parent = parent;
    }

    /** Adds a section at the end of rows and as the last part of an element. */
    static void section(Section section, int level, StructureTag parent, Rows rows) {
        new BlockRows(rows, parent).section(section, level);
    }

    private void section(Section section, int level) {
        StructureTag outer = parent;
        parent = outer.add("Sect");
        heading(section, level);
        section.blocks().forEach(block -> block.accept(this));
        section.sections().forEach(each -> section(each, level + 1));
        parent = outer;
    }

    private void heading(Section section, int level) {
        StructureTag tag = parent.add("H" + Math.min(level, DEEPEST_HEADING));
        RichText words = section.aside().isEmpty() ? section.heading() : section.heading().text(", ").append(section.aside());
        TypeStyle type = level <= 2 ? TypeStyle.HEADING : TypeStyle.SUBHEADING;
        List<PdfRow> lines = rows.lines(tag, words, type, 0);
        if (level <= 2 && !lines.isEmpty()) {
            double drop = rows.size() * 0.35;
            PdfRow first = lines.get(0);
            lines.set(0, new PdfRow(0, first.height() + drop, first.ascent() + drop, first.keep(), first.pieces(), List.of(new RowMark(null, 0, 0, rows.width(), THICK, 0))));
        }
        add(rows.size() * (level <= 2 ? 1.1 : 0.5), lines);
        if (!lines.isEmpty()) {
            rows.keepLast();
        }
    }

    private void add(double gap, List<PdfRow> lines) {
        rows.add(Rows.above(gap, lines));
    }

    private double gap() {
        return rows.size() * 0.3;
    }

    @Override
    public void paragraph(Paragraph paragraph) {
        TypeStyle type = paragraph.role() == Paragraph.Role.REMARK ? TypeStyle.SMALL : TypeStyle.BODY;
        add(gap(), rows.lines(parent.add("P"), paragraph.text(), type, indent));
    }

    @Override
    public void definitions(DefinitionList list) {
        if (!list.title().isEmpty()) {
            add(gap(), rows.lines(parent.add("P"), list.title(), TypeStyle.STRONG, indent));
            rows.keepLast();
        }
        StructureTag whole = parent.add("L");
        TypeStyle type = list.settings() ? TypeStyle.VALUE : TypeStyle.BODY;
        double labels = labels(list);
        for (Definition each : list.rows()) {
            StructureTag item = whole.add("LI");
            List<PdfRow> label = rows.lines(item.add("Lbl"), each.label(), TypeStyle.BODY, indent);
            StructureTag body = item.add("LBody");
            RichText value = each.remark().isEmpty() ? each.value() : each.value().text("  ").append(each.remark());
            List<PdfRow> values = new ArrayList<>(rows.lines(body.add("P"), value, type, indent + labels));
            each.details().forEach(line -> values.addAll(rows.lines(body.add("P"), line, TypeStyle.SMALL, indent + labels)));
            add(gap(), rows.beside(label, values));
        }
    }

    private double labels(DefinitionList list) {
        double widest = 0;
        for (Definition each : list.rows()) {
            widest = Math.max(widest, PdfTextLines.natural(each.label(), rows.faces(), rows.size(), false));
        }
        return Math.min(widest, rows.width() * 0.35) + rows.size() * 0.8;
    }

    @Override
    public void table(Table table) {
        if (!table.caption().isEmpty()) {
            add(gap(), rows.lines(parent.add("P"), table.caption(), TypeStyle.STRONG, indent));
            rows.keepLast();
        }
        new TableRows(table, rows, indent).addTo(parent);
    }

    @Override
    public void items(ItemList list) {
        StructureTag whole = parent.add("L");
        StructureTag outer = parent;
        double step = rows.size() * (list.numbered() ? 1.8 : 1.1);
        int number = 0;
        for (ItemList.Item each : list.items()) {
            number++;
            StructureTag item = whole.add("LI");
            List<PdfRow> label = rows.lines(item.add("Lbl"), RichText.of(list.numbered() ? number + "." : BULLET), TypeStyle.BODY, indent);
            parent = item.add("LBody");
            add(gap(), rows.beside(label, rows.lines(parent.add("P"), each.text(), TypeStyle.BODY, indent + step)));
            indent += step;
            each.below().forEach(block -> block.accept(this));
            indent -= step;
        }
        parent = outer;
    }

    @Override
    public void checkboxes(CheckboxList list) {
        StructureTag whole = parent.add("L");
        for (CheckboxList.Entry each : list.entries()) {
            add(gap() * 1.2, checkbox(each, whole.add("LI")));
        }
    }

    /** The box, heavier where safety depends on it; what to do; in bold what is found when it is done. */
    private List<PdfRow> checkbox(CheckboxList.Entry entry, StructureTag item) {
        StructureTag label = item.add("Lbl").spoken(entry.critical() ? "To do, safety-critical" : "To do");
        StructureTag body = item.add("LBody");
        double in = indent + BOX + rows.size() * 1.1;
        List<PdfRow> out = new ArrayList<>(rows.lines(body.add("P"), entry.what(), TypeStyle.BODY, in));
        if (!entry.doneWhen().isEmpty()) {
            out.addAll(rows.lines(body.add("P"), entry.doneWhen(), TypeStyle.STRONG, in));
        }
        if (!entry.why().isEmpty()) {
            out.addAll(rows.lines(body.add("P"), entry.why(), TypeStyle.SMALL, in));
        }
        if (out.isEmpty()) {
            out.add(new PdfRow(0, BOX, BOX, false, List.of(), List.of()));
        }
        double line = entry.critical() ? THICK : THIN;
        List<RowPiece> pieces = new ArrayList<>(out.get(0).pieces());
        if (entry.critical()) {
            pieces.add(0, new RowPiece(label, indent + BOX + rows.size() * 0.5, List.of(new GlyphRun(Face.BOLD, rows.size(), 0, "!"))));
        }
        out.set(0, out.get(0).with(pieces, List.of(new RowMark(label, indent + line / 2, line / 2, BOX - line, BOX - line, line))));
        double height = out.stream().mapToDouble(PdfRow::height).sum();
        out.set(out.size() - 1, out.get(out.size() - 1).taller(Math.max(0, BOX + 1 - height)));
        return Rows.together(out);
    }

    /** With a bar in the margin, as long as it is. */
    @Override
    public void callout(Callout callout) {
        double in = indent + rows.size() * 0.8;
        List<PdfRow> lines = new ArrayList<>();
        RichText words = RichText.ofStrong(callout.kind().word() + ": ").append(callout.text());
        double thickness = callout.kind() == Callout.Kind.CAUTION ? THICK * 1.5 : THIN;
        for (PdfRow row : rows.lines(parent.add("P"), words, TypeStyle.BODY, in)) {
            lines.add(row.with(row.pieces(), List.of(new RowMark(null, indent, 0, thickness, row.height(), 0))));
        }
        add(gap() * 1.5, lines);
    }

    /** Its sentence: paper has no room for what the page shows as a picture, nor for all its figures. */
    @Override
    public void figure(Figure figure) {
        paragraph(new Paragraph(figure.textEquivalent(), Paragraph.Role.BODY));
    }

    @Override
    public void listing(Listing listing) {
        listing.lines().forEach(line -> add(0, rows.lines(parent.add("P"), RichText.ofQuoted(line), TypeStyle.SMALL, indent)));
    }
}
