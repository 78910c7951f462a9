package courseworthy.report.json;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.Checklist.ChecklistSection;
import java.io.IOException;
import java.util.List;

/** Writes the sections of a checklist as JSON. */
final class JsonChecklist {

    private final Json json;

    private JsonChecklist(Json json) {
        this.json = json;
    }

    static void write(List<ChecklistSection> sections, Json json) throws IOException {
        new JsonChecklist(json).sections(sections);
    }

    private void sections(List<ChecklistSection> sections) throws IOException {
        json.objects("checklist", sections, section -> {
            json.string("when", section.when());
            json.objects("items", section.items(), this::item);
            json.string("done", section.done());
        });
    }

    private void item(ChecklistItem item) throws IOException {
        json.string("do", item.what());
        json.string("find", item.find());
        json.string("because", item.because());
        json.yesNo("critical", item.critical());
        json.string("part", item.part());
        json.string("rule", item.rule());
        json.string("where", item.where() == null ? null : item.where().toString());
    }
}
