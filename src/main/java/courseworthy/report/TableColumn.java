package courseworthy.report;

/**
 * A column of a table.
 *
 * @param optional may be left out where there is no room for all columns
 */
public record TableColumn(RichText heading, Alignment alignment, boolean optional) {

    /** The side on which the cells of a column are flush. */
    public enum Alignment {
        LEFT, RIGHT
    }
}
