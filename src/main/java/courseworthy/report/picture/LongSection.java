package courseworthy.report.picture;

import java.util.List;
import java.util.Objects;

/**
 * One lap of a course as road builders draw one: its height line, and below it along the same kilometres ground, gears and clock.
 *
 * @param lengthMetres  of the lap
 * @param laps          how many laps the ride has
 * @param startOfDay    the start in seconds after midnight; null where it is not known, and time is then shown from the start
 * @param heights       the height line; null where no height is known
 * @param ground        in order, from the start of the lap to its end without a gap
 * @param gears         the gear in use along the first lap, in order, without a gap; empty where no gears are known
 * @param passages      when the rider is where on the first lap, in order; the first is the start, the last the end of the lap
 * @param climbs        in order, numbered from 1
 * @param marks         in order
 */
public record LongSection(double lengthMetres, int laps, Integer startOfDay, HeightProfile heights, List<GroundBand> ground, List<GearBand> gears,
        List<TimeMark> passages, List<ClimbBand> climbs, List<CourseMark> marks) implements Picture {

    public LongSection {
        ground = List.copyOf(ground);
        gears = List.copyOf(gears);
        passages = List.copyOf(passages);
        climbs = List.copyOf(climbs);
        marks = List.copyOf(marks);
    }

    /**
     * Heights along the lap.
     *
     * @param points   in order
     * @param aboveSea whether heights are above sea level; else above the start
     * @param measured whether the line was measured; else it is drawn from ascent and descent
     */
    public record HeightProfile(List<HeightPoint> points, boolean aboveSea, boolean measured) {

        public HeightProfile {
            points = List.copyOf(points);
        }
    }

    /** The height of a place; between two neighbours the line is straight. */
    public record HeightPoint(double atMetres, double heightMetres) {
    }

    /**
     * A length ridden in one way.
     *
     * @param effort   how
     * @param gear     {@code 34x50}; empty where it is not pedalled
     * @param sprocket teeth; 0 where it is not pedalled
     */
    public record GearBand(double fromMetres, double toMetres, EffortBand effort, String gear, int sprocket) {

        public GearBand {
            Objects.requireNonNull(effort);
            Objects.requireNonNull(gear);
        }
    }

    /** How a length is ridden. */
    public enum EffortBand { PEDALLED, COASTING, ON_FOOT, BY_FERRY }

    /** When the rider is at a place: seconds from the start of the ride, stops counted. */
    public record TimeMark(double atMetres, ValueRange afterSeconds) {
    }

    /**
     * A climb.
     *
     * @param number   from 1, in the order of the lap
     * @param gradient mean rise over length
     */
    public record ClimbBand(int number, double footMetres, double topMetres, double riseMetres, double gradient) {
    }

    /**
     * What is at a place of the lap.
     *
     * @param kinds         what there is; never empty
     * @param label         in words
     * @param lap           from 1; 0 where it is there on several laps
     * @param latestSeconds of a cut-off, from the start of the ride; else null
     */
    public record CourseMark(double atMetres, List<Kind> kinds, String label, int lap, Double latestSeconds) {

        public CourseMark {
            kinds = List.copyOf(kinds);
        }

        /** What a mark stands for. */
        public enum Kind { WATER, FOOD, BAG, CUT_OFF }
    }

    @Override
    public <T> T accept(PictureVisitor<T> visitor) {
        return visitor.longSection(this);
    }
}
