package courseworthy.render.html;

import courseworthy.render.Quantity;
import courseworthy.render.FootnoteIndex;
import courseworthy.render.svg.SvgPictures;
import courseworthy.report.Block;
import courseworthy.report.BlockVisitor;
import courseworthy.report.Callout;
import courseworthy.report.CheckboxList;
import courseworthy.report.Definition;
import courseworthy.report.DefinitionList;
import courseworthy.report.Figure;
import courseworthy.report.ItemList;
import courseworthy.report.Listing;
import courseworthy.report.LongSectionFigure;
import courseworthy.report.Paragraph;
import courseworthy.report.Paragraph.Role;
import courseworthy.report.RichText;
import courseworthy.report.Section;
import courseworthy.report.Style;
import courseworthy.report.Table;
import courseworthy.report.TableColumn;
import courseworthy.report.TableColumn.Alignment;
import courseworthy.report.picture.Bar;
import courseworthy.report.picture.BarChart;
import courseworthy.report.picture.GroundBand;
import courseworthy.report.picture.LongSection;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The blocks of a report as HTML. */
final class HtmlBlocks implements BlockVisitor {

    private static final String DATA_OF_FIGURE = "The figures of this picture";

    /** From here on a table is to be scrolled anyway, so that its columns may be as wide as they read well (judgement). */
    private static final int MANY_COLUMNS = 10;

    private final HtmlWriter out;
    private final FootnoteIndex footnotes;
    private final Set<String> sections;
    private final Set<String> boxes = new HashSet<>();
    private final SvgPictures pictures = new SvgPictures("picture-");
    private RichText heading = RichText.EMPTY;

    HtmlBlocks(HtmlWriter out, FootnoteIndex footnotes, Set<String> sections) {
        this.out = out;
        this.footnotes = footnotes;
        this.sections = sections;
    }

    /** What follows stands in this section. */
    void within(Section section) {
        heading = section.heading();
    }

    void write(List<Block> blocks) {
        blocks.forEach(block -> block.accept(this));
    }

    private void inline(RichText text) {
        HtmlText.write(text, out, footnotes, sections);
    }

    private void element(String element, String cssClass, RichText text) {
        if (!text.isEmpty()) {
            out.open(element);
            if (!cssClass.isEmpty()) {
                out.attribute("class", cssClass);
            }
            inline(text);
            out.close(element).line();
        }
    }

    @Override
    public void paragraph(Paragraph paragraph) {
        element("p", paragraph.role() == Role.REMARK ? "remark" : "", paragraph.text());
    }

    @Override
    public void definitions(DefinitionList list) {
        element("p", "list-title", list.title());
        out.open("dl", list.settings() ? "settings" : "values").line();
        for (Definition row : list.rows()) {
            out.open("div");
            element("dt", "", row.label());
            out.open("dd");
            inline(list.settings() ? row.value().in(Style.PLAIN) : row.value());
            if (!row.remark().isEmpty()) {
                out.text(" ").open("span", "beside");
                inline(row.remark());
                out.close("span");
            }
            out.close("dd");
            row.details().forEach(line -> element("dd", "detail", line));
            out.close("div").line();
        }
        out.close("dl").line();
    }

    @Override
    public void table(Table table) {
        table(table, "", CellMark.NONE);
    }

    /** What stands before the text of a cell of a table: a hatch, a few strokes. */
    @FunctionalInterface
    interface CellMark {
        CellMark NONE = (row, column) -> "";

        /** Markup of this package or that of the pictures; empty for none. */
        String before(int row, int column);
    }

    private void table(Table table, String cssClass, CellMark marks) {
        String label = table.caption().isEmpty() ? heading.plain() : table.caption().plain();
        boolean strip = marks != CellMark.NONE;
        String stacked = (strip || ColumnFit.PHONE.fits(table) ? "" : " stacked") + (ColumnFit.PAPER.fits(table) ? "" : " stacked-on-paper");
        out.open("div", (table.columns().size() > MANY_COLUMNS ? "table many" : "table") + stacked).attribute("role", "region").attribute("tabindex", "0").attribute("aria-label", label.isEmpty() ? "Table" : "Table: " + label);
        out.open("table");
        if (!cssClass.isEmpty()) {
            out.attribute("class", cssClass);
        }
        out.line();
        element("caption", "", table.caption());
        out.open("thead").open("tr");
        for (TableColumn column : table.columns()) {
            open(column.heading().isEmpty() ? "td" : "th", column, "col");
            content(column.heading().isEmpty() ? "td" : "th", "", column.heading(), customaryHeading(column));
        }
        out.close("tr").close("thead").line().open("tbody").line();
        List<String> units = table.columns().stream().map(each -> Quantity.unitOfColumn(each.heading().plain())).toList();
        for (int row = 0; row < table.rows().size(); row++) {
            out.open("tr");
            for (int i = 0; i < table.columns().size(); i++) {
                String element = i < table.keyColumns() ? "th" : "td";
                open(element, table.columns().get(i), "row");
                if ((strip || !stacked.isEmpty()) && (i >= table.keyColumns() || !strip && isNumber(table.rows().get(row).get(i)))) {
                    label(table.columns().get(i));
                }
                content(element, marks.before(row, i), table.rows().get(row).get(i),
                        units.get(i).isEmpty() ? "" : Quantity.customaryNumber(table.rows().get(row).get(i).plain(), units.get(i)));
            }
            out.close("tr").line();
        }
        out.close("tbody").close("table").close("div").line();
    }

    /** What heads a row and says nothing without the heading of its column. */
    private static boolean isNumber(RichText text) {
        return !text.isEmpty() && text.plain().chars().noneMatch(Character::isLetter);
    }

    /** The same heading with its unit exchanged; empty where it has none. */
    private static String customaryHeading(TableColumn column) {
        String heading = column.heading().plain();
        String unit = Quantity.unitOfColumn(heading);
        return unit.isEmpty() ? "" : heading.substring(0, heading.length() - unit.length()) + Quantity.customaryUnit(unit);
    }

    /** What a cell is about, for where it does not stand below its heading. */
    private void label(TableColumn column) {
        String label = Quantity.unbroken(column.heading().plain());
        String unit = customaryHeading(column);
        String customary = unit.isEmpty() ? Quantity.customary(column.heading().plain()) : unit;
        out.attribute("data-label", label);
        if (!customary.equals(column.heading().plain())) {
            out.attribute("data-label-us", customary);
        }
    }

    private void open(String element, TableColumn column, String scope) {
        out.open(element);
        if (element.equals("th")) {
            out.attribute("scope", scope);
        }
        if (column.alignment() == Alignment.RIGHT) {
            out.attribute("class", "figures");
        }
    }

    private void content(String element, String mark, RichText text, String customary) {
        out.markup(mark);
        if (customary.isEmpty()) {
            inline(text);
        } else {
            out.open("span").attribute("data-us", customary).text(text.plain()).close("span");
        }
        out.close(element);
    }

    @Override
    public void items(ItemList list) {
        String element = list.numbered() ? "ol" : "ul";
        out.open(element).line();
        for (ItemList.Item item : list.items()) {
            out.open("li");
            inline(item.text());
            write(item.below());
            out.close("li").line();
        }
        out.close(element).line();
    }

    @Override
    public void checkboxes(CheckboxList list) {
        out.open("ul", "boxes").line();
        for (CheckboxList.Entry entry : list.entries()) {
            out.open("li").open("label");
            out.open("input").attribute("type", "checkbox").attribute("data-box", box(entry));
            out.open("span", entry.critical() ? "what critical" : "what");
            if (entry.critical()) {
                out.element("strong", "Safety:").text(" ");
            }
            inline(entry.what());
            out.close("span").close("label").line();
            labelled("find", CheckboxList.DONE_WHEN, entry.doneWhen());
            labelled("why", CheckboxList.WHY, entry.why());
            out.close("li").line();
        }
        out.close("ul").line();
    }

    /** The name by which a tick is kept: what is to be done, and a number where the same is to be done twice. */
    private String box(CheckboxList.Entry entry) {
        String text = heading.plain() + "\n" + entry.what().plain() + "\n" + entry.doneWhen().plain();
        String name = Digest.of(text);
        for (int i = 2; !boxes.add(name); i++) {
            name = Digest.of(text + "\n" + i);
        }
        return name;
    }

    private void labelled(String cssClass, String label, RichText text) {
        if (!text.isEmpty()) {
            out.open("p", cssClass).open("span", "label").text(label + ":").close("span").text(" ");
            inline(text);
            out.close("p").line();
        }
    }

    @Override
    public void callout(Callout callout) {
        out.open("p", callout.kind() == Callout.Kind.CAUTION ? "caution" : "note").element("strong", callout.kind().word() + ":").text(" ");
        inline(callout.text());
        out.close("p").line();
    }

    /** What all pictures of the page share. */
    void hatches() {
        out.markup(pictures.hatches()).line();
    }

    @Override
    public void figure(Figure figure) {
        out.open("figure").line();
        element("p", "figure-title", figure.title());
        out.markup(pictures.draw(figure));
        element("figcaption", "", figure.textEquivalent());
        Table data = figure.picture() instanceof BarChart chart ? bars(chart) : figure.data();
        if (data != null) {
            out.open("details", "data").element("summary", DATA_OF_FIGURE).line();
            if (figure.picture() instanceof LongSection section) {
                table(data, "road-strip", (row, column) -> roadStripMark(section, row, column));
            } else {
                table(data);
            }
            out.close("details").line();
        }
        out.close("figure").line();
    }

    /** A row a piece of ground, kilometres downward, with its hatch and its strokes. */
    private String roadStripMark(LongSection section, int row, int column) {
        if (row >= section.ground().size()) {
            return "";
        }
        GroundBand ground = section.ground().get(row);
        return switch (column) {
            case LongSectionFigure.SURFACE_COLUMN -> pictures.swatch(ground.material());
            case LongSectionFigure.ROUGHNESS_COLUMN -> ground.roughness() == null ? "" : pictures.strokes(ground.roughness().mid());
            default -> "";
        };
    }

    private static Table bars(BarChart chart) {
        Table.Builder data = Table.builder().column(chart.labelHeading()).figures(chart.valueHeading());
        List<List<RichText>> rows = new ArrayList<>();
        for (Bar bar : chart.bars()) {
            rows.add(List.of(RichText.ofQuoted(bar.label()), RichText.of(bar.written())));
        }
        rows.forEach(data::row);
        return data.build();
    }

    @Override
    public void listing(Listing listing) {
        out.open("pre").attribute("tabindex", "0").open("code").text(String.join("\n", listing.lines())).close("code").close("pre").line();
    }
}
