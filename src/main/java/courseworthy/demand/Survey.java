package courseworthy.demand;

import courseworthy.course.Course;
import courseworthy.event.Event;
import courseworthy.ride.BikeKind;
import courseworthy.ride.Range;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Finds what a course, a rider and a day ask for: every measure of the catalogue that needs no decision. What is not written of the ground
 * stays unknown; what is not written of rider and day is assumed, with a range, and kept account of.
 */
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
        return of(course, rider, event, bike, null);
    }

    /**
     * The demands on a kind of bike, whatever is at hand.
     *
     * @param ridden the kind that is called; null for the bike at hand, or one that suits the ground where none is written
     */
    static Demands of(Course course, Rider rider, Event event, Bike bike, BikeKind ridden) {
        SurveyInput input = new SurveyInput(new SurveyAssumptions(course, rider, event, bike, ridden));
        Map<Measure, MeasureValue> values = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            MeasureValue value = measure.calculate(input);
            if (value != null) {
                values.put(measure, value);
            }
        }
        Occasion occasion = new Occasion(rider == Rider.UNKNOWN ? null : rider.name(), rider.tags(), event.date());
        return new Demands(values, input.terrain.facts(), input.assumptions.assumed(), ride(input), occasion).ofBike(bike.kind());
    }

    private static EstimatedRide ride(SurveyInput input) {
        DayDemands day = new DayDemands(input.assumptions, input.estimate, input.weather, input.support, input.climbing.climbs());
        return new EstimatedRide(input.estimate, pieces(input.steepness, input.climbing.lastLong(), input.gears), input.gears.easiest(), input.gears.sprintPower(),
                input.extensions, day);
    }

    /** The steep pieces that are known, and the last long climb. */
    private static List<EstimatedRide.RidePiece> pieces(Steepness steepness, Climbs.Climb lastLong, GearDemands gears) {
        List<EstimatedRide.RidePiece> out = new ArrayList<>();
        piece(out, EstimatedRide.Kind.RAMP, 20, steepness.rampPlace(), gears);
        piece(out, EstimatedRide.Kind.HUNDRED, 100, steepness.over(100), gears);
        piece(out, EstimatedRide.Kind.FIVE_HUNDRED, 500, steepness.over(500), gears);
        piece(out, EstimatedRide.Kind.KILOMETRE, 1000, steepness.over(1000), gears);
        if (lastLong != null) {
            Range gradient = Range.exact(lastLong.gradient());
            Steepness.Steepest climb = new Steepness.Steepest(gradient, (lastLong.from() + lastLong.to()) / 2);
            piece(out, EstimatedRide.Kind.LAST_CLIMB, lastLong.length(), climb, gears);
        }
        return out;
    }

    private static void piece(List<EstimatedRide.RidePiece> out, EstimatedRide.Kind kind, double length, Steepness.Steepest place, GearDemands gears) {
        if (place != null) {
            out.add(new EstimatedRide.RidePiece(kind, place.gradient(), place.middle(), length, gears.power(kind, place.middle(), length)));
        }
    }

    /**
     * The bike at hand: what is written in the event's block wins over the rider's, field by field where both are of one kind. Of two kinds the
     * event's is at hand, and of the rider's only what is taken from bike to bike is known.
     */
    public static Bike bike(Bike fromRider, Bike fromEvent) {
        Bike a = fromEvent;
        Bike b = a.kind() == null ? fromRider : fromRider.as(a.kind());
        return a.orElse(b);
    }
}
