package courseworthy.course;

import java.util.List;

/**
 * The ground of one lap, ready to be judged.
 *
 * @param name      as written, or the file's name
 * @param summary   one line, may be empty
 * @param file      the path as the user typed it
 * @param stretches in order; at least one
 * @param track     null where the course is a profile alone
 * @param line      elevation along the course; null where no elevation is known
 * @param ascent    m climbed in one lap, by the stated method; null where unknown
 * @param descent   m descended in one lap; null where unknown
 * @param up        between what the metres climbed in one lap lie by other smoothings of the track; null where they are not measured
 * @param down      the same of the metres descended
 * @param repairs   what was mended while reading, in order
 * @param assumed   ground that was filled in from what the user assumed, in words, such as {@code surface gravel on 42.1 km}
 * @param notes     what else the user should know (elevation not believable, rise of the profile passed over, start height given)
 * @param latitude  of the start, degrees; NaN where unknown
 * @param longitude of the start, degrees; NaN where unknown
 */
public record Course(String name, String summary, String file, List<Stretch> stretches, Track track, ElevationLine line, Double ascent,
        Double descent, Interval up, Interval down, List<Repair> repairs, List<String> assumed, List<String> notes, double latitude, double longitude) {

    public Course {
        stretches = List.copyOf(stretches);
        repairs = List.copyOf(repairs);
        assumed = List.copyOf(assumed);
        notes = List.copyOf(notes);
    }

    /** A course whose climbing is written rather than measured. */
    public Course(String name, String summary, String file, List<Stretch> stretches, Track track, ElevationLine line, Double ascent, Double descent,
            List<Repair> repairs, List<String> assumed, List<String> notes, double latitude, double longitude) {
        this(name, summary, file, stretches, track, line, ascent, descent, null, null, repairs, assumed, notes, latitude, longitude);
    }

    /** Length of one lap in m. */
    public double length() {
        double sum = 0;
        for (Stretch stretch : stretches) {
            sum += stretch.length();
        }
        return sum;
    }
}
