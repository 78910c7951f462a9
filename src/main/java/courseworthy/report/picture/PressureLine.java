package courseworthy.report.picture;

import java.util.List;

/**
 * Tyre pressures on a number line, a line a wheel; gauge pressures in Pa.
 *
 * @param wheels front, then rear
 */
public record PressureLine(List<Wheel> wheels) implements Picture {

    public PressureLine {
        wheels = List.copyOf(wheels);
    }

    /**
     * One wheel.
     *
     * @param label          {@code front}
     * @param floorPascals   below it the rim strikes
     * @param lowPascals     low end of what is worth trying
     * @param highPascals    high end of what is worth trying
     * @param startPascals   set value at the start
     * @param gaugePascals   what the gauge shows where it is pumped
     * @param wetPascals     on wet ground; null where it is wet already or would be no lower
     * @param ceilingPascals the lowest limit from above; null where none is known
     */
    public record Wheel(String label, double floorPascals, double lowPascals, double highPascals, double startPascals, double gaugePascals,
            Double wetPascals, Double ceilingPascals) {
    }

    @Override
    public <T> T accept(PictureVisitor<T> visitor) {
        return visitor.pressureLine(this);
    }
}
