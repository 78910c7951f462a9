package courseworthy.course.matching;

import java.util.List;

/**
 * A track laid on a map.
 *
 * @param pieces  in order and without gaps from the track's start to its end
 * @param noise   estimated standard deviation of the track's position error per axis, m; NaN where too little of it lies on mapped ways
 * @param outside m of the track that lie outside the area of the map
 */
public record MatchedTrack(List<MatchedPiece> pieces, double noise, double outside) {

    public MatchedTrack {
        pieces = List.copyOf(pieces);
    }
}
