package courseworthy.task;

import java.util.List;

/**
 * What a brief is asked for, as typed; null where not given.
 *
 * @param course   a profile or a GPX file, or the name of a shipped course
 * @param ground   ground to take where none is written, {@code surface=gravel, smoothness=bad}
 * @param event    the event's file
 * @param rider    the rider's file
 * @param sheets   coaches' sheets, in order
 * @param role     {@code training} or {@code race}; overrides the event's
 * @param date     {@code 2025-06-14}; overrides the event's
 * @param workshop the workshop's file
 * @param map      what is taken from a map
 * @param recorded rides besides those of the workshop's log
 */
public record Request(String course, String ground, String event, String rider, List<String> sheets, String role, String date,
        String workshop, MapRequest map, RecordedRides recorded) {

    public Request {
        sheets = List.copyOf(sheets);
    }

    public static Builder builder(String course) {
        return new Builder(course);
    }

    /** Names each part as it is given. */
    public static final class Builder {

        private final String course;
        private String ground;
        private String event;
        private String rider;
        private List<String> sheets = List.of();
        private String role;
        private String date;
        private String workshop;
        private MapRequest map = MapRequest.NONE;
        private RecordedRides recorded;

        private Builder(String course) {
            this.course = course;
        }

        public Builder ground(String value) {
            ground = value;
            return this;
        }

        public Builder event(String value) {
            event = value;
            return this;
        }

        public Builder rider(String value) {
            rider = value;
            return this;
        }

        public Builder sheets(List<String> value) {
            sheets = value;
            return this;
        }

        public Builder role(String value) {
            role = value;
            return this;
        }

        public Builder date(String value) {
            date = value;
            return this;
        }

        public Builder workshop(String value) {
            workshop = value;
            return this;
        }

        public Builder map(MapRequest value) {
            map = value;
            return this;
        }

        public Builder recorded(RecordedRides value) {
            recorded = value;
            return this;
        }

        public Request build() {
            return new Request(course, ground, event, rider, sheets, role, date, workshop, map, recorded);
        }
    }
}
