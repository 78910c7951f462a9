package courseworthy.schema;

import static courseworthy.schema.SchemaFragments.about;
import static courseworthy.schema.SchemaFragments.amount;

import courseworthy.event.WorkHoursReader;
import courseworthy.units.Dimension;
import java.util.Map;

/** The time for work on bikes, and the journey to an event: the same in the files of events and seasons. */
final class WorkSchema {

    private static final String DAY = "[0-9]{4}-[0-9]{2}-[0-9]{2}";

    private WorkSchema() {
    }

    /** One time for every evening, or a block by day. */
    static Map<String, Object> hours(String about) {
        SchemaFragments.KeyBlock block = new SchemaFragments.KeyBlock()
                .key("from", about("The first evening with time, YYYY-MM-DD", SchemaFragments.pattern(DAY)))
                .key("each evening", about("On evenings that are not named", amount(Dimension.TIME)));
        for (String day : WorkHoursReader.weekdays()) {
            block.key(day, amount(Dimension.TIME));
        }
        return about(about, SchemaFragments.anyOf(amount(Dimension.TIME), block.key("days", SchemaFragments.listOf(day())).shape()));
    }

    private static Map<String, Object> day() {
        return new SchemaFragments.KeyBlock()
                .key("date", about("The day, YYYY-MM-DD", SchemaFragments.pattern(DAY)))
                .key("time", about("Time for work on its evening", amount(Dimension.TIME)))
                .required("date", "time")
                .shape();
    }

    static Map<String, Object> travel() {
        return about("The journey to the event and back", new SchemaFragments.KeyBlock()
                .key("out", about("The day of departure, YYYY-MM-DD", SchemaFragments.pattern(DAY)))
                .key("home", about("The day of return, YYYY-MM-DD", SchemaFragments.pattern(DAY)))
                .shape());
    }
}
