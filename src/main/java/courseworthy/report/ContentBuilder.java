package courseworthy.report;

import courseworthy.report.Callout.Kind;
import courseworthy.report.Paragraph.Role;
import java.util.ArrayList;
import java.util.List;

/**
 * Collects blocks and sections. What is empty is left out, a section with nothing in it included, so that a report class can name
 * everything that may stand on its page.
 *
 * @param <B> the builder itself
 */
public abstract class ContentBuilder<B extends ContentBuilder<B>> {

    private final List<Block> blocks = new ArrayList<>();
    private final List<Section> sections = new ArrayList<>();

    ContentBuilder() {
    }

    abstract B self();

    final List<Block> blocks() {
        return blocks;
    }

    final List<Section> sections() {
        return sections;
    }

    public final B paragraph(String words) {
        return paragraph(RichText.of(words));
    }

    public final B paragraph(RichText text) {
        return add(!text.isEmpty(), new Paragraph(text, Role.BODY));
    }

    public final B paragraphs(List<RichText> texts) {
        texts.forEach(this::paragraph);
        return self();
    }

    /** Small print: how to read what stands above it. */
    public final B remark(String words) {
        return remark(RichText.of(words));
    }

    public final B remark(RichText text) {
        return add(!text.isEmpty(), new Paragraph(text, Role.REMARK));
    }

    public final B caution(String words) {
        return caution(RichText.of(words));
    }

    public final B caution(RichText text) {
        return add(!text.isEmpty(), new Callout(Kind.CAUTION, text));
    }

    public final B note(RichText text) {
        return add(!text.isEmpty(), new Callout(Kind.NOTE, text));
    }

    public final B bullets(List<RichText> lines) {
        return add(!lines.isEmpty(), ItemList.bulleted(lines));
    }

    /** Bullets after a line that says what they are; neither where there are no lines. */
    public final B bullets(String introduction, List<RichText> lines) {
        return lines.isEmpty() ? self() : paragraph(introduction).bullets(lines);
    }

    public final B numbered(List<RichText> lines) {
        return add(!lines.isEmpty(), ItemList.numbered(lines));
    }

    /** A bulleted list of lines with something below them. */
    public final B items(List<ItemList.Item> items) {
        return add(!items.isEmpty(), new ItemList(false, items));
    }

    public final B definitions(List<Definition> rows) {
        return definitions("", rows);
    }

    /** @param title what the rows have in common */
    public final B definitions(String title, List<Definition> rows) {
        return add(!rows.isEmpty(), new DefinitionList(RichText.of(title), rows, false));
    }

    /** The few values that somebody sets or packs by this report. */
    public final B settings(List<Definition> rows) {
        return add(!rows.isEmpty(), new DefinitionList(RichText.EMPTY, rows, true));
    }

    /** A table; left out where it has no rows. */
    public final B table(Table table) {
        return add(!table.rows().isEmpty(), table);
    }

    public final B checkboxes(List<CheckboxList.Entry> entries) {
        return add(!entries.isEmpty(), new CheckboxList(entries));
    }

    /** A picture; left out where it is null. */
    public final B figure(Figure figure) {
        return add(figure != null, figure);
    }

    /** Lines of a file, as they are typed. */
    public final B listing(String language, List<String> lines) {
        return add(!lines.isEmpty(), new Listing(language, lines));
    }

    /** A section of the next level; left out where nothing stands under its heading. */
    public final B section(Section section) {
        if (!section.isEmpty()) {
            sections.add(section);
        }
        return self();
    }

    public final B section(Section.Builder section) {
        return section(section.build());
    }

    private B add(boolean wanted, Block block) {
        if (wanted) {
            blocks.add(block);
        }
        return self();
    }
}
