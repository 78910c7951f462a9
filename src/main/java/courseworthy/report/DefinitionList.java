package courseworthy.report;

import java.util.List;

/**
 * Labels with their values, row below row.
 *
 * @param title what the rows have in common; may be empty
 */
public record DefinitionList(RichText title, List<Definition> rows) implements Block {

    public DefinitionList {
        rows = List.copyOf(rows);
    }

    @Override
    public void accept(BlockVisitor visitor) {
        visitor.definitions(this);
    }
}
