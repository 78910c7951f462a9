package courseworthy.workshop;

import java.time.LocalDate;
import java.util.List;

/**
 * Something that is used up and bought again.
 *
 * @param name     of its own
 * @param kind     one of {@link #KINDS}
 * @param quantity pieces, or L of a liquid, as counted
 * @param keep     how much should always be there; 0 where not given
 * @param serves   names of bikes and parts that it is for; empty for all
 * @param price    of one piece, or of a litre; null where not given
 * @param counted  the day on which it was counted; null for before the log begins
 * @param line     1-based
 */
public record StockItem(String name, String kind, double quantity, double keep, List<String> serves, Double price, LocalDate counted, int line) {

    /** Liquids, counted by volume. */
    public static final List<String> LIQUIDS = List.of("sealant", "lubricant", "brake fluid", "suspension oil");
    /** What is counted by pieces. */
    public static final List<String> PIECES = List.of("chain", "brake pads", "tyre", "rotor", "cassette", "chainring", "cables", "bearings", "seals", "battery",
            "tube", "plugs");
    /** All kinds of stock. */
    public static final List<String> KINDS = java.util.stream.Stream.concat(LIQUIDS.stream(), PIECES.stream()).toList();

    public StockItem {
        serves = List.copyOf(serves);
    }

    public boolean liquid() {
        return LIQUIDS.contains(kind);
    }

    /** Whether it is for a part of some kind on a bike. */
    public boolean serves(String wanted, String bike, String part) {
        return kind.equals(wanted) && (serves.isEmpty() || serves.contains(bike) || serves.contains(part));
    }
}
