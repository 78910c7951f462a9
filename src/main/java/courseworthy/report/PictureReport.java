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

    /** All that this brief has, in the order in which they are read. */
    public static List<Figure> all(Brief brief) {
        return Stream.of(longSection(brief)).filter(Objects::nonNull).toList();
    }
}
