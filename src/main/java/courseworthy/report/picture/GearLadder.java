package courseworthy.report.picture;

import java.util.List;

/**
 * The gradients that each gear holds on the power that is left late in the ride, from the lowest cadence of the rider to the highest, and
 * what the course asks for. Gradients are rise over length and may be below 0: the hardest gears are turned downhill alone.
 *
 * @param rungs      the gears, the easiest first
 * @param steep      steep pieces of the course, the shortest first
 * @param speeds     the top end
 */
public record GearLadder(List<Rung> rungs, List<SteepMark> steep, List<SpeedMark> speeds) implements Picture {

    public GearLadder {
        rungs = List.copyOf(rungs);
        steep = List.copyOf(steep);
        speeds = List.copyOf(speeds);
    }

    /**
     * One gear.
     *
     * @param gear             {@code 34x50}
     * @param ring             teeth
     * @param sprocket         teeth
     * @param flattestGradient held at the highest cadence
     * @param steepestGradient held at the lowest cadence
     * @param slowest          speed at the lowest cadence, m/s
     * @param fastest          speed at the highest cadence, m/s
     * @param usedSeconds      how long the ride uses it
     */
    public record Rung(String gear, int ring, int sprocket, double flattestGradient, double steepestGradient, double slowest, double fastest,
            double usedSeconds) {
    }

    /**
     * A steep piece of the course.
     *
     * @param label    in words: {@code steepest 100 m}
     * @param gradient rise over length
     * @param atMetres its middle from the start of a lap
     * @param held     whether a gear holds it on the power that is ridden there, which is more than the ladder's where it is short
     * @param cadence  in the easiest gear, turns a minute
     */
    public record SteepMark(String label, ValueRange gradient, double atMetres, boolean held, ValueRange cadence) {
    }

    /** A speed that matters at the top end, m/s: {@code spun out}, {@code useful at speed}. */
    public record SpeedMark(String label, ValueRange speed) {
    }

    @Override
    public <T> T accept(PictureVisitor<T> visitor) {
        return visitor.gearLadder(this);
    }
}
