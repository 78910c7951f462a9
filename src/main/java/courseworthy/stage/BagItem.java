package courseworthy.stage;

/**
 * Something that goes into the bag for the days of a stage race.
 *
 * @param item    what
 * @param least   how much at the least
 * @param most    how much at the most; the same where it is exact
 * @param unit    {@code g}, {@code mL}, {@code L}; empty for pieces
 * @param because why so much
 */
public record BagItem(String item, long least, long most, String unit, String because) {
}
