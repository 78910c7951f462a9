package courseworthy.sheet;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.StretchMeasure;
import courseworthy.units.Dimension;
import courseworthy.units.Resolution;
import java.util.EnumMap;
import java.util.Map;

/**
 * The least and the most that any day, rider or stretch can have of a measure. A test beyond them never holds, and a fact beyond them is a
 * slip. They follow from what the readers of courses, riders and events take (BikeReader, RiderReader, EventReader, ProfileReader); where
 * those set no limit they are what no day comes near (judgement, no source).
 *
 * <p>Not {@link MeasureRange}: those are how far a search goes for what would change a decision.
 */
public final class MeasureLimits {

    private static final double TOO_LONG = 5000;
    private static final double TOO_HIGH = 9000;
    private static final double TOO_MUCH_CLIMBING = 200_000;
    private static final double FORDS = 10_000;
    private static final double MINUTES = 60 * 3000;
    private static final double STOP = 4 * 3600;

    /** In the shown unit of the measure; shares, words and roughness have the ends of their scale. */
    private static final Map<Measure, double[]> OF_MEASURES = new EnumMap<>(Measure.class);
    private static final Map<StretchMeasure, double[]> OF_STRETCHES = new EnumMap<>(StretchMeasure.class);

    static {
        put(0, TOO_LONG, Measure.DISTANCE, Measure.LONGEST_CLIMB, Measure.LAST_LONG_CLIMB, Measure.SUPPORT_GAP);
        put(1, 100, Measure.LAPS);
        put(0, TOO_MUCH_CLIMBING, Measure.ASCENT, Measure.DESCENT);
        put(0, 1000, Measure.CLIMBING_PER_KM, Measure.DESCENT_PER_KM);
        put(-450, TOO_HIGH, Measure.HIGHEST_POINT);
        put(0, FORDS, Measure.CLIMBS, Measure.WATER_CROSSINGS);
        put(0, TOO_HIGH, Measure.LONGEST_CLIMB_ASCENT, Measure.LAST_LONG_CLIMB_ASCENT);
        put(0, 6, Measure.MTB_SCALE, Measure.HARDEST_MTB_SCALE);
        put(0, 5, Measure.LEDGE_HEIGHT, Measure.BIKE_LEDGE_LIMIT, Measure.LEDGE_ABOVE_THE_MARK);
        put(0, 100, Measure.TURNS_PER_KM);
        put(0, MINUTES, Measure.HOURS, Measure.SLOW_HOURS, Measure.DARK_HOURS, Measure.SUNLESS_HOURS,
                Measure.SUPPORT_GAP_HOURS);
        put(0, 24 * 60, Measure.DAYLIGHT_TO_SPARE);
        put(0, 20, Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST, Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB, Measure.RATIO_USEFUL_AT_SPEED);
        put(0, 200, Measure.GEAR_RANGE_NEEDED);
        put(0, 5000, Measure.WATER_OVER_THE_HOTTEST_GAP, Measure.WATER_AT_THE_START);
        put(0, 10_000, Measure.BRAKING_POWER);
        put(-110, 70, Measure.START_TEMPERATURE, Measure.SUMMIT_TEMPERATURE, Measure.COLDEST_TEMPERATURE, Measure.HOTTEST_TEMPERATURE,
                Measure.NIGHT_TEMPERATURE);
        put(0, 180, Measure.WIND);
        put(30, 500, Measure.START_LINE_MASS);
        put(30, 200, Measure.RIDER_MASS);
        put(20, 1000, Measure.HOUR_POWER);
        put(0, 15, Measure.POWER_PER_KG);
        put(30, 110, Measure.CLIMBING_CADENCE);
        put(60, 160, Measure.HIGHEST_CADENCE);
        put(0, 200, Measure.RACES_A_YEAR);
        put(0, STOP, Measure.PLUG_STOP, Measure.TUBE_STOP, Measure.LOST_GROUP);
        put(300, 900, Measure.USED_BAR_WIDTH);
        put(12, 60, Measure.RIM_INNER_WIDTH);
        put(0.5, 15, Measure.MARKED_TYRE_PRESSURE, Measure.MARKED_RIM_PRESSURE, Measure.LOWER_MARKED_PRESSURE, Measure.PRESSURE_CEILING);
        put(17, 65, Measure.LEAST_TYRE_WIDTH_ON_THE_RIM);
        put(0, 300, Measure.NARROWEST_FRONT_TYRE, Measure.NARROWEST_REAR_TYRE);
        put(18, 130, Measure.TYRE_CLEARANCE, Measure.TYRE_WIDTH_ALLOWED);
        put(60, 300, Measure.BIKE_MASS_LIMIT);
        put(0, 500, Measure.MASS_ABOVE_THE_MARK);
        put(20, 250, Measure.MOST_FORK_TRAVEL);
        put(0, 300, Measure.SHORTEST_REAR_TRAVEL, Measure.LONGEST_REAR_TRAVEL);
        put(120, 250, Measure.MOST_ROTOR);
        put(0, 6000, Measure.LIGHTS_AT_HAND);
        put(10, 240 * 60, Measure.TIME_LIMIT);
        put(0, 30, Measure.FRONT_REFERENCE_PRESSURE, Measure.REAR_REFERENCE_PRESSURE, Measure.FRONT_PRESSURE_FLOOR, Measure.REAR_PRESSURE_FLOOR);
        OF_STRETCHES.put(StretchMeasure.LENGTH, new double[] {0, TOO_LONG});
        OF_STRETCHES.put(StretchMeasure.ASCENT, new double[] {0, TOO_MUCH_CLIMBING});
        OF_STRETCHES.put(StretchMeasure.DESCENT, new double[] {0, TOO_MUCH_CLIMBING});
        OF_STRETCHES.put(StretchMeasure.GRADIENT, new double[] {-100, 100});
        OF_STRETCHES.put(StretchMeasure.MTB_SCALE, new double[] {0, 6});
        OF_STRETCHES.put(StretchMeasure.WATER_CROSSINGS, new double[] {0, FORDS});
        OF_STRETCHES.put(StretchMeasure.LEDGE_HEIGHT, new double[] {0, 5});
        OF_STRETCHES.put(StretchMeasure.TURNS_PER_KM, new double[] {0, 100});
    }

    private MeasureLimits() {
    }

    private static void put(double least, double most, Measure... measures) {
        for (Measure measure : measures) {
            OF_MEASURES.put(measure, new double[] {least, most});
        }
    }

    /** The least value there can be, in ticks or positions. */
    public static long least(TestSubject subject) {
        double[] limits = limits(subject);
        return limits == null ? subject.least() : ticks(subject, limits[0]);
    }

    /** The largest value there can be, in ticks or positions. */
    public static long most(TestSubject subject) {
        double[] limits = limits(subject);
        return limits == null ? subject.most() : ticks(subject, limits[1]);
    }

    private static long ticks(TestSubject subject, double shown) {
        return Math.round(shown / subject.scale().resolution().step().doubleValue());
    }

    /** In the shown unit; null where the subject has limits of its own. */
    static double[] limits(TestSubject subject) {
        Resolution resolution = subject.scale().resolution();
        if (resolution == null || subject.kind() == TestSubject.Kind.DECIDED) {
            return null;
        }
        double[] known = subject.kind() == TestSubject.Kind.MEASURE ? OF_MEASURES.get(Measure.find(subject.written()))
                : subject.kind() == TestSubject.Kind.STRETCH ? OF_STRETCHES.get(StretchMeasure.find(subject.written())) : null;
        if (known != null) {
            return known;
        }
        MeasureScale scale = subject.scale();
        return !scale.bands().isEmpty() ? new double[] {0, 5} : resolution.unit().dimension() == Dimension.SHARE ? new double[] {0, 100} : null;
    }
}
