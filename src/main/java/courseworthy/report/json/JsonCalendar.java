package courseworthy.report.json;

import courseworthy.report.Calendar;
import java.io.IOException;

/** Writes as JSON when the entries of a calendar begin, end and are announced, as local times. */
final class JsonCalendar {

    private JsonCalendar() {
    }

    /** @param calendar null where nothing has a time */
    static void add(Json json, Calendar calendar) throws IOException {
        json.object("calendar", calendar, all -> {
            json.string("zone", all.zone() == null ? null : all.zone().getId());
            json.objects("entries", all.entries(), each -> {
                json.string("what", each.title().plain());
                json.string("from", (each.wholeDay() ? each.from().toLocalDate() : each.from()).toString());
                json.string("to", (each.wholeDay() ? each.to().toLocalDate() : each.to()).toString());
                json.string("reminded", each.reminded() == null ? null : each.reminded().toString());
            });
        });
    }
}
