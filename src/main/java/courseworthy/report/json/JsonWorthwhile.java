package courseworthy.report.json;

import courseworthy.build.Build;
import courseworthy.build.WorthwhileChanges.WorthwhileChange;
import courseworthy.build.WorthwhileChanges.Stay;
import courseworthy.workshop.Part;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Writes as JSON what is worth changing and what to leave alone: masses in kg, times in s. */
final class JsonWorthwhile {

    private final Json json;

    JsonWorthwhile(Json json) {
        this.json = json;
    }

    void of(Build build) throws IOException {
        json.list("changes");
        if (build.worthwhile() != null) {
            for (WorthwhileChange each : build.worthwhile().changes()) {
                change(each);
            }
        }
        json.endList();
        if (build.worthwhile() != null && build.worthwhile().all() != null) {
            json.object("changes_together");
            figures(build.worthwhile().all());
            json.close();
        }
        json.list("leave_alone");
        if (build.worthwhile() != null) {
            for (Stay each : build.worthwhile().leaveAlone()) {
                stay(each);
            }
        }
        json.endList();
    }

    private void change(WorthwhileChange change) throws IOException {
        json.open();
        json.string("place", change.place());
        json.strings("on", names(change.on()));
        json.strings("off", names(change.off()));
        figures(change);
        json.strings("serves", change.serves());
        json.strings("hardly_ridden", names(change.fresh()));
        json.close();
    }

    private void figures(WorthwhileChange change) throws IOException {
        json.number("mass_change_kg", change.grams() == null ? null : BigDecimal.valueOf(change.grams(), 3));
        json.range("returns_s", change.returns(), 1);
        json.number("work_s", Math.round(change.minutes() * 60));
    }

    private void stay(Stay stay) throws IOException {
        json.open();
        json.string("what", stay.part().name());
        json.string("place", stay.place());
        json.number("hours_used_s", stay.hours() == null ? null : BigDecimal.valueOf(Math.round(stay.hours())));
        json.range("returns_s", stay.returns(), 1);
        json.strings("because", stay.because());
        json.close();
    }

    private static List<String> names(List<Part> parts) {
        List<String> out = new ArrayList<>();
        for (Part part : parts) {
            out.add(part.name());
        }
        return out;
    }
}
