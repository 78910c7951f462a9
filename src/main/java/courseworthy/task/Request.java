package courseworthy.task;

import java.util.List;

/**
 * What a brief is asked for, as typed; null where not given.
 *
 * @param course a profile or a GPX file, or the name of a shipped course
 * @param ground ground to take where none is written, {@code surface=gravel, smoothness=bad}
 * @param event  the event's file
 * @param rider  the rider's file
 * @param sheets coaches' sheets, in order
 * @param role   {@code training} or {@code race}; goes before the event's
 * @param date   {@code 2025-06-14}; goes before the event's
 * @param workshop the workshop's file
 */
public record Request(String course, String ground, String event, String rider, List<String> sheets, String role, String date,
        String workshop) {

    public Request {
        sheets = List.copyOf(sheets);
    }

    /** Without a workshop. */
    public Request(String course, String ground, String event, String rider, List<String> sheets, String role, String date) {
        this(course, ground, event, rider, sheets, role, date, null);
    }

    /** A course alone. */
    public static Request of(String course, String ground) {
        return new Request(course, ground, null, null, List.of(), null, null);
    }
}
