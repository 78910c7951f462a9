package courseworthy.demand;

import courseworthy.course.Course;
import courseworthy.course.Stretch;
import courseworthy.event.Event;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Finds what a course, a rider and a day ask for. */
public final class Survey {

    private Survey() {
    }

    /**
     * The demands, with what had to be assumed.
     *
     * @param course one lap
     * @param rider  {@link Rider#UNKNOWN} where nothing is known
     * @param event  {@link Event#UNKNOWN} where nothing is known
     * @param bike   the bike at hand, already merged (see {@link #bike})
     */
    public static Demands of(Course course, Rider rider, Event event, Bike bike) {
        Map<Measure, Value> values = new EnumMap<>(Measure.class);
        int laps = event.laps() == null ? 1 : event.laps();
        values.put(Measure.DISTANCE, exact(Measure.DISTANCE, course.length() * laps));
        values.put(Measure.LAPS, Value.exact(laps));
        if (course.ascent() != null) {
            values.put(Measure.ASCENT, exact(Measure.ASCENT, course.ascent() * laps));
        }
        if (course.descent() != null) {
            values.put(Measure.DESCENT, exact(Measure.DESCENT, course.descent() * laps));
        }
        List<StretchFacts> facts = new ArrayList<>();
        for (Stretch stretch : course.stretches()) {
            facts.add(new StretchFacts(Map.of(StretchMeasure.LENGTH,
                    StretchMeasure.LENGTH.scale().resolution().ticks(stretch.length()))));
        }
        return new Demands(values, facts, List.of());
    }

    /** The bike at hand: what is written in the event's block wins over the rider's, field by field. */
    public static Bike bike(Bike fromRider, Bike fromEvent) {
        Bike a = fromEvent;
        Bike b = fromRider;
        return new Bike(or(a.kind(), b.kind()), or(a.mass(), b.mass()), or(a.rimInnerWidth(), b.rimInnerWidth()),
                or(a.hookless(), b.hookless()), or(a.tyreMarking(), b.tyreMarking()), or(a.rimMarking(), b.rimMarking()),
                or(a.tyreClearance(), b.tyreClearance()), or(a.tubeless(), b.tubeless()), or(a.dropLimit(), b.dropLimit()),
                or(a.useCategory(), b.useCategory()), or(a.massLimit(), b.massLimit()), or(a.forkTravel(), b.forkTravel()),
                or(a.lights(), b.lights()), or(a.rotorLimit(), b.rotorLimit()), or(a.powerMeter(), b.powerMeter()));
    }

    private static <T> T or(T first, T second) {
        return first != null ? first : second;
    }

    private static Value exact(Measure measure, double base) {
        return Value.exact(measure.scale().resolution().ticks(base));
    }
}
