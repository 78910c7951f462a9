package courseworthy.course;

/**
 * What a course is read with besides its own file.
 *
 * @param assumed ground to take where none is known; null for none
 * @param ground  where the ground under the track comes from; null for nowhere but the file
 */
public record CourseSources(AssumedGround assumed, TrackGround ground) {

    public static final CourseSources NONE = new CourseSources(null, null);

    public static CourseSources of(AssumedGround assumed) {
        return new CourseSources(assumed, null);
    }
}
