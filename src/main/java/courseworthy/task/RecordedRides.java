package courseworthy.task;

/**
 * Recorded rides that the command line adds to the log of a workshop.
 *
 * @param typed the path of a recording or a folder of them
 * @param bike  the name of the bike they were ridden on; null where not given
 */
public record RecordedRides(String typed, String bike) {
}
