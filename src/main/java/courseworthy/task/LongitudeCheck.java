package courseworthy.task;

import courseworthy.course.Course;
import courseworthy.event.Event;
import courseworthy.event.TimeZones;
import courseworthy.problem.Faults;
import java.time.ZoneOffset;
import java.util.Locale;

/** Holds an event's local time against the longitude of its course: a slip there moves sunrise and the heat of the day by hours. */
final class LongitudeCheck {

    /** No zone's time is further from the sun's than this, summer time counted, h (by the map of zones; common practice, no source). */
    private static final double MOST = 3;
    private static final double A_DAY = 24;
    private static final double DEGREES_AN_HOUR = 15;

    private LongitudeCheck() {
    }

    /** Adds a fault where the two cannot be of one place; either may be null, and unknown is no fault. */
    static void of(Course course, Event event, Faults faults) {
        if (course == null || event == null || event.zone() == null || course.start() == null) {
            return;
        }
        ZoneOffset offset = TimeZones.on(event.zone(), event.date(), event.start());
        double sun = course.start().longitude() / DEGREES_AN_HOUR;
        if (apart(hours(offset), sun) <= MOST) {
            return;
        }
        boolean named = !(event.zone() instanceof ZoneOffset);
        String key = named ? "zone" : "utc offset";
        String turned = apart(-hours(offset), sun) <= MOST && !named
                ? " Perhaps the sign is turned: " + TimeZones.written(ZoneOffset.ofTotalSeconds(-offset.getTotalSeconds())) + "." : "";
        faults.add(event.file().isEmpty() ? course.file() : event.file(), event.lines().of(key), key,
                named ? event.zone().getId() + " (" + TimeZones.written(offset) + ")" : TimeZones.written(offset),
                "a time within 3 h of the sun's at the course, about " + TimeZones.written(solar(sun)) + " at longitude "
                        + String.format(Locale.ROOT, "%.1f", course.start().longitude()),
                "Write the zone there by name, such as \"zone: Africa/Nairobi\", or check where the course lies." + turned);
    }

    private static double hours(ZoneOffset offset) {
        return offset.getTotalSeconds() / 3600.0;
    }

    /** Hours between two clocks, the date line counted: a whole day is none. */
    private static double apart(double one, double other) {
        double difference = Math.abs(one - other) % A_DAY;
        return Math.min(difference, A_DAY - difference);
    }

    private static ZoneOffset solar(double hours) {
        return ZoneOffset.ofHours((int) Math.max(-12, Math.min(12, Math.round(hours))));
    }
}
