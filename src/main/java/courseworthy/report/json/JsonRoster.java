package courseworthy.report.json;

import courseworthy.decision.Decision;
import courseworthy.task.RosterResult;
import courseworthy.task.RosterResult.Comparison;
import courseworthy.task.RosterResult.Entry;
import java.io.IOException;

/** Writes a roster as JSON: the riders with their decisions, and topic by topic what most of them have. Times are in s. */
public final class JsonRoster {

    private final Json json;
    private final RosterResult roster;

    private JsonRoster(Json json, RosterResult roster) {
        this.json = json;
        this.roster = roster;
    }

    public static String of(RosterResult roster) {
        return Json.written(json -> new JsonRoster(json, roster).write());
    }

    private void write() throws IOException {
        json.string("role", roster.role());
        json.string("date", roster.date() == null ? null : roster.date().toString());
        json.string("event", roster.event());
        JsonSheets.write(roster.sheets(), json);
        JsonGround.origin(roster.course(), json);
        json.string("course", roster.course().name());
        json.string("folder", roster.folder());
        json.objects("topics", roster.topics(), this::topic);
        json.list("riders");
        for (int i = 0; i < roster.entries().size(); i++) {
            rider(i);
        }
        json.endList();
    }

    private void topic(Comparison topic) throws IOException {
        json.string("topic", topic.topic().name());
        json.string("unit", Json.unit(topic.topic()));
        json.string("most", topic.most());
        json.yesNo("alike", topic.isAlike());
    }

    private void rider(int at) throws IOException {
        Entry entry = roster.entries().get(at);
        json.open();
        json.string("rider", entry.name());
        json.string("file", entry.file());
        json.strings("tags", entry.tags());
        json.string("notes", entry.notes());
        json.range("time_s", entry.time(), 0);
        json.object("least_firm", entry.leastFirm(), open -> {
            json.string("topic", open.decision().topic().name());
            json.string("text", open.decision().phrase());
        });
        json.objects("decisions", roster.topics(), topic -> decision(topic.decisions().get(at), topic.differs(at)));
        json.close();
    }

    private void decision(Decision decision, boolean differs) throws IOException {
        json.string("topic", decision.topic().name());
        json.string("status", decision.status().words());
        json.value("value", decision.topic(), decision.value());
        json.string("text", decision.phrase());
        json.yesNo("differs", differs);
    }
}
