package courseworthy.schema;

import static courseworthy.schema.SchemaFragments.about;
import static courseworthy.schema.SchemaFragments.amount;

import courseworthy.event.SeasonReader;
import courseworthy.event.Travel;
import courseworthy.event.WorkHoursReader;
import courseworthy.units.Dimension;
import courseworthy.workshop.PartKind;
import java.util.List;
import java.util.Map;

/** A season: who rides, and when what is ridden. */
final class SeasonSchema {

    private SeasonSchema() {
    }

    static Map<String, Object> of() {
        return new SchemaFragments.KeyBlock().keys(SeasonReader.KEY_FORMS)
                .key("a minute is worth", about("What a minute at an event is worth, in that currency", amount(Dimension.NUMBER)))
                .key(WorkHoursReader.KEY, WorkSchema.hours("Time for work on bikes on each evening"))
                .key("riders", atLeastOne(rider()))
                .key("events", atLeastOne(event()))
                .required("riders", "events")
                .file("Season");
    }

    private static Map<String, Object> atLeastOne(Map<String, Object> item) {
        Map<String, Object> out = SchemaFragments.listOf(item);
        out.put("minItems", 1);
        return out;
    }

    private static Map<String, Object> rider() {
        return new SchemaFragments.KeyBlock().keys(SeasonReader.RIDER_FORMS)
                .key("name", about("A name of its own", SchemaFragments.text()))
                .key("rider", about("The rider's file", SchemaFragments.text()))
                .key("workshop", about("The workshop's file; riders who name the same share it", SchemaFragments.text()))
                .key("log", about("The log of that workshop, where the workshop's file names none", SchemaFragments.text()))
                .key("sheets", about("Coaches' sheets, in order", SchemaFragments.listOf(SchemaFragments.text())))
                .required("name", "workshop")
                .shape();
    }

    private static Map<String, Object> event() {
        return new SchemaFragments.KeyBlock().keys(SeasonReader.EVENT_FORMS)
                .key("event", about("The event's file", SchemaFragments.text()))
                .key("course", about("A file, or the name of a shipped course; left out where the event has stages and all are ridden", SchemaFragments.text()))
                .key("ground", about("Ground where the course tells none", SchemaFragments.text()))
                .key("map", about("Map data that the ground under the track is taken from", SchemaFragments.oneOrMore(SchemaFragments.text())))
                .key("elevation", about("A folder of elevation tiles that heights are taken from", SchemaFragments.text()))
                .key("date", about("The day, YYYY-MM-DD", SchemaFragments.pattern("[0-9]{4}-[0-9]{2}-[0-9]{2}")))
                .key(Travel.KEY, WorkSchema.travel())
                .key("starts", about("The riders who start; all of them where it is not given", SchemaFragments.listOf(start())))
                .also("anyOf", List.of(SchemaFragments.of("required", List.of("course")), SchemaFragments.of("required", List.of("event"))))
                .shape();
    }

    private static Map<String, Object> start() {
        return new SchemaFragments.KeyBlock()
                .key("rider", about("A name from the riders", SchemaFragments.text()))
                .key("bike", about("The bike it must be", SchemaFragments.text()))
                .key("may change", about("Kinds of parts that may be changed on it", SchemaFragments.listOf(SchemaFragments.word(PartKind.mountedWords()))))
                .required("rider")
                .shape();
    }
}
