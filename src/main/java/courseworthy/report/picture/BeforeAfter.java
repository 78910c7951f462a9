package courseworthy.report.picture;

import java.util.List;

/**
 * The parts of a bike as it stands now and as it is built for the day.
 *
 * @param bike name
 * @param rows place by place, in the order of a mechanic's work
 */
public record BeforeAfter(String bike, List<PlaceComparison> rows) implements Picture {

    public BeforeAfter {
        rows = List.copyOf(rows);
    }

    /**
     * One place on the bike.
     *
     * @param place   {@code front tyre}
     * @param before  the part that is on it now; empty for none
     * @param after   the part that is on it for the day; empty for none
     * @param changed whether they differ
     * @param from    the other bike that the new part comes from; empty where it lies on the shelf or nothing changes
     * @param to      the other bike that the old part goes to; empty where it goes on the shelf or nothing changes
     */
    public record PlaceComparison(String place, String before, String after, boolean changed, String from, String to) {
    }

    @Override
    public <T> T accept(PictureVisitor<T> visitor) {
        return visitor.beforeAfter(this);
    }
}
