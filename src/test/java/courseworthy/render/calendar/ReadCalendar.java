package courseworthy.render.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.validate.ValidationResult;

/** A file as a library for iCalendar (ical4j) reads it. */
public final class ReadCalendar {

    private final Calendar calendar;

    public ReadCalendar(String file) {
        try {
            calendar = new CalendarBuilder().build(new StringReader(file));
        } catch (IOException | ParserException e) {
            throw new AssertionError(e + "\n" + file, e);
        }
    }

    /** The same, once the library has nothing to say against it. */
    public ReadCalendar valid() {
        ValidationResult result = calendar.validate(true);
        assertThat(result.getEntries()).isEmpty();
        return this;
    }

    public List<VEvent> events() {
        return calendar.getComponents("VEVENT");
    }

    public List<String> uids() {
        return events().stream().map(event -> event.getUid().orElseThrow().getValue()).toList();
    }
}
