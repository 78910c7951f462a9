package courseworthy.worth;

import courseworthy.course.ElevationLine;
import courseworthy.course.ElevationThinner;
import courseworthy.course.GroundCertainty;
import courseworthy.course.Surface;
import courseworthy.demand.DayDemands.Ascent;
import courseworthy.ride.Range;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/**
 * A course from start to finish as the rider of the estimate meets it: ground, heights, gear in use, clock, climbs and what is at the
 * wayside. Places on a lap are in m from its start, along the way that is ridden; the ground covers the lap without a gap, and so do the gears.
 *
 * @param lap        length of a lap, m
 * @param laps       how many are ridden
 * @param heights    of a lap; null where no height is known
 * @param ground     of a lap, in order
 * @param drivetrain whose gears are in use; null where the decisions name none that is made
 * @param gears      in use along the lap, over all laps: by the kilometre where the line is measured, else by the stretch; empty without a
 *                   drivetrain
 * @param passages   when the rider is where, in order: every kilometre and change of ground of the first lap, then the end of each lap
 * @param climbs     of a lap, in order
 * @param deciding   the climb, from 1, on which the easiest gear is asked for; null where that is on none
 * @param marks      what is at the wayside, in order; what is at one place is one mark
 */
public record RoadBook(double lap, int laps, SimplifiedHeights heights, List<RoadBookGround> ground, Drivetrain drivetrain, List<GearPiece> gears,
        List<RoadBookPassage> passages, List<Ascent> climbs, Integer deciding, List<SupportMark> marks) {

    public RoadBook {
        ground = List.copyOf(ground);
        gears = List.copyOf(gears);
        passages = List.copyOf(passages);
        climbs = List.copyOf(climbs);
        marks = List.copyOf(marks);
    }

    /**
     * The heights of a lap with as few points as show them.
     *
     * @param line      what stays
     * @param tolerance how far the course is above or below that line at most, m
     */
    public record SimplifiedHeights(ElevationLine line, double tolerance) {

        /** So many parts of the whole height may be off: half a pixel where the heights are drawn 180 pixels high (computing). */
        private static final double HEIGHT_PARTS = 360;
        /** Nobody reads a height more closely than this, m (judgement). */
        private static final double LEAST_TOLERANCE = 0.5;

        /** The points of a line that show it; null for no line. */
        public static SimplifiedHeights of(ElevationLine line) {
            if (line == null) {
                return null;
            }
            DoubleSummaryStatistics heights = Arrays.stream(line.elevation()).summaryStatistics();
            double tolerance = Math.max(LEAST_TOLERANCE, (heights.getMax() - heights.getMin()) / HEIGHT_PARTS);
            return new SimplifiedHeights(ElevationThinner.thinned(line, tolerance), tolerance);
        }

        /** The first of the highest points. */
        public int highest() {
            int out = 0;
            for (int i = 1; i < line.size(); i++) {
                out = line.elevation()[i] > line.elevation()[out] ? i : out;
            }
            return out;
        }
    }

    /**
     * Ground of one kind.
     *
     * @param from      m from the start of the lap
     * @param to        m from the start of the lap
     * @param look      what it is
     * @param change    of height on it; null where not known
     * @param use       how it is ridden
     * @param reached   time from the start of the ride to its start, on the first lap, s
     */
    public record RoadBookGround(double from, double to, GroundLook look, HeightChange change, GearUse use, Range reached) {
    }

    /** Climbed and lost, m. */
    public record HeightChange(double ascent, double descent) {
    }

    /**
     * What makes ground of one kind.
     *
     * @param surface   null where not known
     * @param others    surfaces that it may have instead, in the order in which they are given; empty where it is certain
     * @param certainty where it is known from
     * @param roughness 0 to 5; null where not known
     * @param grade     mtb:scale; null where not known
     */
    public record GroundLook(Surface surface, List<Surface> others, GroundCertainty certainty, Range roughness, Range grade) {

        public GroundLook {
            others = List.copyOf(others);
        }
    }

    /** How a length is ridden for most of its time. */
    public enum EffortLevel { PEDALLED, COASTING, ON_FOOT, BY_FERRY }

    /**
     * How a length is ridden.
     *
     * @param effort for most of the time
     * @param gear   of what is pedalled, the one in use longest; null where the length is not pedalled, or without a drivetrain
     */
    public record GearUse(EffortLevel effort, Gear gear) {
    }

    /** A length on which one gear is in use: m from the start of the lap. */
    public record GearPiece(double from, double to, GearUse use) {
    }

    /**
     * When the rider is at a place.
     *
     * @param at    m from the start over all laps
     * @param lap   from 1
     * @param after time from the start, stops before it counted, s
     */
    public record RoadBookPassage(double at, int lap, Range after) {
    }

    /**
     * What is at the wayside.
     *
     * @param at     m from the start over all laps
     * @param lap    from 1
     * @param water  whether bottles can be filled
     * @param food   whether there is food
     * @param bag    whether a bag of one's own waits there
     * @param latest of a cut-off: s from the start; else null
     */
    public record SupportMark(double at, int lap, boolean water, boolean food, boolean bag, Double latest) {
    }
}
