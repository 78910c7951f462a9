package courseworthy.course;

import java.util.List;

/**
 * What a source says of the ground along a track.
 *
 * @param stretches   in order, over the whole track, without climbing
 * @param bridged     where the track runs over bridges and through tunnels, m along it
 * @param notes       what else the user should know
 * @param attribution who must be named in all that is made from it; empty for nobody
 */
public record SurveyedGround(List<Stretch> stretches, List<Interval> bridged, List<String> notes, String attribution) {

    public SurveyedGround {
        stretches = List.copyOf(stretches);
        bridged = List.copyOf(bridged);
        notes = List.copyOf(notes);
    }
}
