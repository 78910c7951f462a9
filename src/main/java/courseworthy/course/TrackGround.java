package courseworthy.course;

import courseworthy.problem.Faults;

/** A source of the ground under a track, such as a map. */
public interface TrackGround {

    /**
     * The ground along a track.
     *
     * @param shown the track's path as the user typed it
     * @return null where the source cannot be read; the faults say why
     */
    SurveyedGround under(Track track, String shown, Faults faults);
}
