package courseworthy.demand;

import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A property of a stretch that {@code any stretch}, {@code no stretch} and {@code share of course} may test. Length, ascent and descent
 * are summed over a maximal run of adjacent stretches that satisfy the other conditions.
 */
public enum StretchMeasure {
    LENGTH("length", Measure.quantity(Unit.KM, "0.01"),
            "Length of the run of stretches"),
    ASCENT("ascent", Measure.quantity(Unit.M, "1"),
            "Climbing over the run"),
    DESCENT("descent", Measure.quantity(Unit.M, "1"),
            "Descending over the run"),
    GRADIENT("gradient", Measure.quantity(Unit.PERCENT, "0.5"),
            "Ascent less descent over length, of each stretch"),
    SURFACE("surface", MeasureScale.options(Surface.tags()),
            "OpenStreetMap surface"),
    SMOOTHNESS("smoothness", MeasureScale.words(Smoothness.tags()),
            "OpenStreetMap smoothness, best first"),
    TRACKTYPE("tracktype", MeasureScale.words(List.of("grade1", "grade2", "grade3", "grade4", "grade5")),
            "OpenStreetMap tracktype, firmest first"),
    MTB_SCALE("mtb:scale", Measure.quantity(Unit.ONE, "0.1"),
            "OpenStreetMap mtb:scale, + and - as a third"),
    ROUGHNESS("roughness", Measure.ROUGHNESS_SCALE,
            "Roughness of the stretch, as for the course"),
    LOOSE("loose", MeasureScale.yesNo(),
            "Whether wheels slip on loose stones or sand"),
    PAVED("paved", MeasureScale.yesNo(),
            "Whether the surface is paved"),
    SHARP_STONES("sharp stones", MeasureScale.yesNo(),
            "Whether the profile says sharp stones"),
    RUTS("ruts", MeasureScale.yesNo(),
            "Whether the profile says ruts"),
    ROOTS("roots", MeasureScale.yesNo(),
            "Whether the profile says roots"),
    SAND("sand", MeasureScale.yesNo(),
            "Whether the profile says sand"),
    MUD_WHEN_WET("mud when wet", MeasureScale.yesNo(),
            "Whether the profile says mud when wet"),
    WATER_CROSSINGS("water crossings", Measure.quantity(Unit.ONE, "1"),
            "Fords on the stretch"),
    LEDGE_HEIGHT("ledge height", Measure.quantity(Unit.M, "0.05"),
            "Highest ledge on the stretch that must be ridden"),
    TURNS_PER_KM("turns per km", Measure.quantity(Unit.ONE, "0.5"),
            "Turns on the stretch that must be braked for, per km");

    private static final Map<String, StretchMeasure> BY_NAME = new LinkedHashMap<>();

    static {
        for (StretchMeasure measure : values()) {
            BY_NAME.put(measure.written, measure);
        }
    }

    private final String written;
    private final MeasureScale scale;
    private final String about;

    StretchMeasure(String written, MeasureScale scale, String about) {
        this.written = written;
        this.scale = scale;
        this.about = about;
    }

    public String written() {
        return written;
    }

    public MeasureScale scale() {
        return scale;
    }

    public String about() {
        return about;
    }

    /** Whether it is summed over a run rather than tested on each stretch. */
    public boolean summed() {
        return this == LENGTH || this == ASCENT || this == DESCENT;
    }

    /** The measure sheets write so, or null. */
    public static StretchMeasure find(String written) {
        return BY_NAME.get(written);
    }

    public static List<String> names() {
        return new ArrayList<>(BY_NAME.keySet());
    }

    @Override
    public String toString() {
        return written;
    }
}
