package courseworthy.report;

import java.util.List;

/**
 * Labels with their values, row below row.
 *
 * @param title    what the rows have in common; may be empty
 * @param settings true for the few values that somebody sets or packs by this report, to be read from an arm's length
 */
public record DefinitionList(RichText title, List<Definition> rows, boolean settings) implements Block {

    public DefinitionList {
        rows = List.copyOf(rows);
    }

    @Override
    public void accept(BlockVisitor visitor) {
        visitor.definitions(this);
    }
}
