package courseworthy.report;

/** One method for each kind of block, so that a new kind is missed by no renderer. */
public interface BlockVisitor {

    void paragraph(Paragraph paragraph);

    void definitions(DefinitionList list);

    void table(Table table);

    void items(ItemList list);

    void checkboxes(CheckboxList list);

    void callout(Callout callout);

    void figure(Figure figure);

    void listing(Listing listing);
}
