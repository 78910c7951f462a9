package courseworthy.render.pdf;

import courseworthy.report.BlockVisitor;
import courseworthy.report.Callout;
import courseworthy.report.CheckboxList;
import courseworthy.report.DefinitionList;
import courseworthy.report.Figure;
import courseworthy.report.ItemList;
import courseworthy.report.Listing;
import courseworthy.report.Paragraph;
import courseworthy.report.RichText;
import courseworthy.report.Section;
import courseworthy.report.Table;

/** All words of sections, in their order. */
public final class PlainText implements BlockVisitor {

    private final StringBuilder out = new StringBuilder();

    public String text() {
        return out.toString();
    }

    public void section(Section section) {
        add(section.heading());
        add(section.aside());
        section.blocks().forEach(block -> block.accept(this));
        section.sections().forEach(this::section);
    }

    private void add(RichText text) {
        out.append(text.plain()).append('\n');
    }

    @Override
    public void paragraph(Paragraph paragraph) {
        add(paragraph.text());
    }

    @Override
    public void definitions(DefinitionList list) {
        add(list.title());
        list.rows().forEach(row -> {
            add(row.label());
            add(row.value());
            add(row.remark());
            row.details().forEach(this::add);
        });
    }

    @Override
    public void table(Table table) {
        add(table.caption());
        table.columns().forEach(column -> add(column.heading()));
        table.rows().forEach(row -> row.forEach(this::add));
    }

    @Override
    public void items(ItemList list) {
        list.items().forEach(item -> {
            add(item.text());
            item.below().forEach(block -> block.accept(this));
        });
    }

    @Override
    public void checkboxes(CheckboxList list) {
        list.entries().forEach(entry -> {
            add(entry.what());
            add(entry.doneWhen());
            add(entry.why());
        });
    }

    @Override
    public void callout(Callout callout) {
        add(callout.text());
    }

    @Override
    public void figure(Figure figure) {
        add(figure.textEquivalent());
    }

    @Override
    public void listing(Listing listing) {
        listing.lines().forEach(line -> out.append(line).append('\n'));
    }
}
