package courseworthy.report;

/** A piece of a section that stands by itself. */
public sealed interface Block
        permits Paragraph, DefinitionList, Table, ItemList, CheckboxList, Callout, Figure, Listing {

    /** Shows the block to a visitor. */
    void accept(BlockVisitor visitor);
}
