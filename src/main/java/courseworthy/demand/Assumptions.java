package courseworthy.demand;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What was assumed under a measure. Only what moves it matters: an assumption counts where its own range moves the measure by more than a
 * twentieth, or to another word (judgement).
 */
public final class Assumptions {

    /** Stands for ground that is mostly inferred or unknown. */
    public static final String GROUND = "ground";
    /** Stands for rules of an event that are not written, and so taken to ask for nothing. */
    public static final String EVENT_RULES = "no rules of the event";
    private static final String RIDER_MASS = "rider mass";
    private static final String HOUR_POWER = "hour power";
    private static final String TEMPERATURE = "temperature, for the water to carry";
    private static final String PLACES = "places to fill bottles";
    private static final String BIKE = "bike, for the estimate of time";
    private static final List<String> TIME = List.of(HOUR_POWER, RIDER_MASS, BIKE);
    /** As much of the ground as must be known at the least for it to count as known, in parts of the whole. */
    private static final double HALF = 0.5;

    private Assumptions() {
    }

    /**
     * What was assumed under a fact, as {@link Demands.AssumedInput} names it.
     *
     * @param fact as a rule tests it: a measure, or something of stretches
     */
    public static List<String> under(String fact, Demands demands) {
        Measure measure = Measure.find(fact);
        Set<String> out = new LinkedHashSet<>();
        boolean ofGround = measure == null ? fact.startsWith("any stretch") || fact.startsWith("no stretch") || fact.startsWith("share of course")
                : measure.group() == MeasureGroup.TERRAIN;
        if (ofGround && mostlyUnknown(demands)) {
            out.add(GROUND);
        }
        if (measure != null) {
            demands.assumed().stream().map(Demands.AssumedInput::what).filter(names(measure)::contains).forEach(out::add);
        }
        return List.copyOf(out);
    }

    /** Whether all that is wanting to check a rule are rules of the event. */
    public static boolean areEventRules(List<String> wanting) {
        return !wanting.isEmpty() && wanting.stream().map(Measure::find).allMatch(measure -> measure != null && measure.group() == MeasureGroup.EVENT);
    }

    private static boolean mostlyUnknown(Demands demands) {
        MeasureValue known = demands.get(Measure.KNOWN_GROUND);
        return known != null && Measure.KNOWN_GROUND.scale().resolution().base(known.low()) < HALF;
    }

    /** The assumptions that bear on a measure where they are made, the one that moves it most first. */
    static List<String> names(Measure measure) {
        List<String> out = new ArrayList<>(List.of(measure.written()));
        out.addAll(switch (measure) {
            case START_LINE_MASS, MASS_ABOVE_THE_MARK -> List.of(RIDER_MASS);
            case POWER_PER_KG, HOUR_POWER -> List.of(HOUR_POWER, RIDER_MASS);
            case GROUP_SHARE -> List.of("share ridden in a group");
            case WATER_AT_THE_START, WATER_OVER_THE_HOTTEST_GAP -> List.of(TEMPERATURE, PLACES, HOUR_POWER, RIDER_MASS, BIKE);
            case SUPPORT_GAP -> List.of(PLACES);
            case RATIO_NEEDED_WHERE_IT_IS_STEEPEST, RATIO_NEEDED_ON_THE_LAST_CLIMB -> List.of(HOUR_POWER, RIDER_MASS, "climbing cadence");
            case RATIO_USEFUL_AT_SPEED -> List.of("highest cadence", HOUR_POWER, RIDER_MASS);
            case GEAR_RANGE_NEEDED -> List.of(HOUR_POWER, RIDER_MASS, "climbing cadence", "highest cadence");
            case AERO_SHARE -> List.of(HOUR_POWER, RIDER_MASS, "share ridden in a group");
            default -> measure.group() == MeasureGroup.RIDE ? TIME : List.of();
        });
        DerivedMeasures.measuresRead(measure).forEach(read -> out.addAll(names(read)));
        return out;
    }
}
