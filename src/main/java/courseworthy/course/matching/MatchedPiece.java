package courseworthy.course.matching;

import courseworthy.course.extract.MapWay;
import java.util.List;

/**
 * A part of a track and the way that it follows.
 *
 * @param from       m along the track
 * @param to         m along the track, more than {@code from}
 * @param way        null where the track follows no mapped way
 * @param confidence least posterior probability along the part that the ground has this way's tags, 0 to 1
 * @param sure       whether the tags can be taken for the ground: the probability is high, the track is accurate enough and fits the way
 * @param possible   a way of each ground that the part may be on, where it is not sure; empty where it may follow no mapped way
 */
public record MatchedPiece(double from, double to, MapWay way, double confidence, boolean sure, List<MapWay> possible) {

    public MatchedPiece {
        possible = List.copyOf(possible);
        if (!(from < to)) {
            throw new IllegalArgumentException("from " + from + " to " + to);
        }
        if (way == null && sure) {
            throw new IllegalArgumentException("sure of no way");
        }
    }

    /** Length in m. */
    public double length() {
        return to - from;
    }
}
