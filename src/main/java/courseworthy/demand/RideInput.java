package courseworthy.demand;

import courseworthy.course.Course;
import courseworthy.event.Event;
import courseworthy.ride.BikeKind;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;

/**
 * What is ridden, as read.
 *
 * @param course one lap
 * @param rider  {@link Rider#UNKNOWN} where nothing is known
 * @param event  {@link Event#UNKNOWN} where nothing is known
 * @param bike   the bike at hand, already merged (see {@link Survey#bike})
 */
public record RideInput(Course course, Rider rider, Event event, Bike bike) {

    /** What it asks for on the bike at hand; where none is written, on one that suits the ground. */
    public Demands atHand() {
        return Survey.of(course, rider, event, bike);
    }

    /** What it asks for on a kind of bike, of which no more is known than that, unless the bike at hand is of it. */
    public Demands on(String kind) {
        return Survey.of(course, rider, event, bike, BikeKind.of(kind));
    }

    /** The same on another day. */
    public RideInput with(Event other) {
        return new RideInput(course, rider, other, bike);
    }

    /** The same on another course. */
    public RideInput with(Course other) {
        return new RideInput(other, rider, event, bike);
    }
}
