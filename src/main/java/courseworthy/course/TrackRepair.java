package courseworthy.course;

/**
 * Something mended in a track while reading it.
 *
 * @param what  in words, {@code elevation spikes removed}
 * @param count how many
 */
public record TrackRepair(String what, int count) {
}
