package courseworthy.wear;

import java.time.LocalDate;

/**
 * Something to buy before a stock runs out.
 *
 * @param by       the day by which it is needed
 * @param workshop its name; may be empty
 * @param item     the name of the stock, or the kind of part where none is listed
 * @param quantity how much to buy, with its unit: {@code 2}, {@code 120 ml}
 * @param price    of all of it; null where no price is given
 * @param why      what it is needed for, in a phrase
 */
public record Purchase(LocalDate by, String workshop, String item, String quantity, Double price, String why) {
}
