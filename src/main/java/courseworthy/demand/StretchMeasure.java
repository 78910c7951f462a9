package courseworthy.demand;

import static courseworthy.demand.InputKeys.ALWAYS;
import static courseworthy.demand.InputKeys.climbing;
import static courseworthy.demand.InputKeys.ground;
import static courseworthy.demand.MeasureCalculator.exact;
import static courseworthy.demand.MeasureCalculator.range;
import static courseworthy.demand.MeasureCalculator.word;
import static courseworthy.demand.MeasureCalculator.yesNo;
import static courseworthy.demand.MeasureScale.options;
import static courseworthy.demand.MeasureScale.quantity;
import static courseworthy.demand.MeasureScale.words;
import static courseworthy.demand.MeasureScale.yesNo;
import static courseworthy.demand.TerrainDemands.orNotOnRoads;

import courseworthy.course.GroundReader;
import courseworthy.course.Smoothness;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import courseworthy.ride.Roughness;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A property of a stretch that {@code any stretch}, {@code no stretch} and {@code share of course} may test. Length, ascent and descent
 * are summed over a maximal run of adjacent stretches that satisfy the other conditions. Each declares the name that sheets use; how it is
 * counted; the keys that make it known; how it is worked out; and its definition.
 */
public enum StretchMeasure {
    LENGTH("length", quantity(Unit.KM, "0.01", 0, 5000), ALWAYS, exact(Stretch::length),
            "Length of the run of stretches"),
    ASCENT("ascent", quantity(Unit.M, "1", 0, 200_000), climbing("ascent", "descent"), exact(Stretch::ascent),
            "Climbing over the run"),
    DESCENT("descent", quantity(Unit.M, "1", 0, 200_000), climbing("ascent", "descent"), exact(Stretch::descent),
            "Descending over the run"),
    GRADIENT("gradient", quantity(Unit.PERCENT, "0.5", -100, 100), climbing("ascent", "descent"), exact(TerrainDemands::gradient),
            "Ascent less descent over length, of each stretch"),
    SURFACE("surface", options(Surface.tags()), ground("surface"), word(s -> s.ground().surface() == null ? null : s.ground().surface().tag()),
            "OpenStreetMap surface"),
    SMOOTHNESS("smoothness", words(Smoothness.tags()), ground("smoothness", "mtb:scale"),
            word(s -> s.ground().smoothness() == null ? null : s.ground().smoothness().tag()),
            "OpenStreetMap smoothness, best first"),
    TRACKTYPE("tracktype", words(GroundReader.TRACKTYPES), ground("tracktype"),
            word(s -> s.ground().trackGrade() == null ? null : GroundReader.TRACKTYPES.get(s.ground().trackGrade() - 1)),
            "OpenStreetMap tracktype, firmest first"),
    MTB_SCALE("mtb:scale", quantity(Unit.ONE, "0.1", 0, 6), ground("mtb:scale"), exact(s -> TerrainDemands.technicalGrade(s.ground())),
            "OpenStreetMap mtb:scale, + and - as a third"),
    ROUGHNESS("roughness", MeasureScale.ROUGHNESS, ground("smoothness", "mtb:scale"), range(s -> Roughness.of(s.ground())),
            "Roughness of the stretch, as for the course"),
    LOOSE("loose", yesNo(), ground("surface"), yesNo(s -> TerrainDemands.loose(s.ground())),
            "Whether wheels slip on loose stones or sand"),
    PAVED("paved", yesNo(), ground("surface"), yesNo(s -> s.ground().surface() == null ? null : TerrainDemands.isPaved(s.ground())),
            "Whether the surface is paved"),
    SHARP_STONES("sharp stones", yesNo(), ground("sharp stones"), yesNo(s -> TerrainDemands.sharpStones(s.ground())),
            "Whether the profile says sharp stones"),
    RUTS("ruts", yesNo(), ground("ruts"), yesNo(s -> orNotOnRoads(s.ground().ruts(), s.ground())),
            "Whether the profile says ruts"),
    ROOTS("roots", yesNo(), ground("roots"), yesNo(s -> orNotOnRoads(s.ground().roots(), s.ground())),
            "Whether the profile says roots"),
    SAND("sand", yesNo(), ground("sand"), yesNo(s -> TerrainDemands.sandy(s.ground())),
            "Whether the profile says sand"),
    MUD_WHEN_WET("mud when wet", yesNo(), ground("mud when wet"), yesNo(s -> orNotOnRoads(s.ground().mudWhenWet(), s.ground())),
            "Whether the profile says mud when wet"),
    WATER_CROSSINGS("water crossings", quantity(Unit.ONE, "1", 0, 10_000), ground("water crossings"), exact(s -> s.ground().waterCrossings()),
            "Fords on the stretch"),
    LEDGE_HEIGHT("ledge height", quantity(Unit.M, "0.05", 0, 5), ground("ledge height"), exact(s -> s.ground().ledgeHeight()),
            "Highest ledge on the stretch that must be ridden"),
    TURNS_PER_KM("turns per km", quantity(Unit.ONE, "0.5", 0, 100), ground("turns per km"), exact(s -> s.ground().turnsPerKm()),
            "Turns on the stretch that must be braked for, per km");

    private static final Map<String, StretchMeasure> BY_NAME = new LinkedHashMap<>();

    static {
        for (StretchMeasure measure : values()) {
            BY_NAME.put(measure.written, measure);
        }
    }

    private final String written;
    private final MeasureScale scale;
    private final InputKeys input;
    private final MeasureCalculator<Stretch> calculator;
    private final String about;

    StretchMeasure(String written, MeasureScale scale, InputKeys input, MeasureCalculator<Stretch> calculator, String about) {
        this.written = written;
        this.scale = scale;
        this.input = input;
        this.calculator = Objects.requireNonNull(calculator);
        this.about = about;
    }

    public String written() {
        return written;
    }

    public MeasureScale scale() {
        return scale;
    }

    /** What a user writes to make it known. */
    public InputKeys input() {
        return input;
    }

    public String about() {
        return about;
    }

    /** The value on one stretch; null where it cannot be known. */
    MeasureValue calculate(Stretch stretch) {
        return calculator.calculate(stretch, scale);
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
