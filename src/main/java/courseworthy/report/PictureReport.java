package courseworthy.report;

import courseworthy.task.Brief;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** The pictures of a brief, each with its title, its sentence and its data. */
public final class PictureReport {

    private PictureReport() {
    }

    /** The course as a long section; null where no ride was estimated. */
    public static Figure longSection(Brief brief) {
        return LongSectionFigure.of(brief);
    }

    /** The gears over the gradients they hold late in the day; null where no ride was estimated or no gears are known. */
    public static Figure gearLadder(Brief brief) {
        return GearLadderFigure.of(brief);
    }

    /** What decisions are worth in time; null where none is known. */
    public static Figure worth(Brief brief) {
        return WorthFigure.of(brief);
    }

    /** Tyre pressures on a number line; null where none is set. */
    public static Figure pressures(Brief brief) {
        return PressureFigure.of(brief);
    }

    /** The day hour by hour; null where none was planned. */
    public static Figure day(Brief brief) {
        return DayFigure.of(brief);
    }

    /** The days before the start; null where its day or time is not known. */
    public static Figure backPlan(Brief brief) {
        return BackPlanFigure.of(brief);
    }

    /** The bike before and after; null where no bike is built from a workshop. */
    public static Figure beforeAfter(Brief brief) {
        return BeforeAfterFigure.of(brief);
    }

    /** The track from above; null where there is none. */
    public static Figure track(Brief brief) {
        return TrackFigure.of(brief);
    }

    /** All that this brief has, in the order in which they are read. */
    public static List<Figure> all(Brief brief) {
        return Stream.of(longSection(brief), gearLadder(brief), pressures(brief), day(brief), worth(brief), backPlan(brief), beforeAfter(brief), track(brief)).filter(Objects::nonNull).toList();
    }
}
