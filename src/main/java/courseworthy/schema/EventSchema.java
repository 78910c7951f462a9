package courseworthy.schema;

import static courseworthy.schema.SchemaFragments.about;
import static courseworthy.schema.SchemaFragments.amount;

import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.event.ForecastReader;
import courseworthy.event.PitReader;
import courseworthy.event.StageRace;
import courseworthy.event.StageReader;
import courseworthy.event.Travel;
import courseworthy.event.WorkHoursReader;
import courseworthy.event.WindDirection;
import courseworthy.topic.Work;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** An event, or the typical ride of a training bike. */
final class EventSchema {

    private EventSchema() {
    }

    static Map<String, Object> of() {
        return new SchemaFragments.KeyBlock().keys(EventReader.KEY_FORMS)
                .key("date", about("The day, YYYY-MM-DD", SchemaFragments.pattern("[0-9]{4}-[0-9]{2}-[0-9]{2}")))
                .key("start", about("Local time of the start, HH:MM", SchemaFragments.pattern("[0-9]{2}:[0-9]{2}")))
                .key("utc offset", about("Local time's offset from UTC, +HH:MM", SchemaFragments.pattern("[+-][0-9]{2}:[0-9]{2}")))
                .key("zone", about("The zone of local time by its IANA name; summer time follows from the date",
                        SchemaFragments.pattern("[A-Za-z_]+(/[A-Za-z0-9_+-]+)+")))
                .key("cut-offs", about("Latest times on the way", SchemaFragments.listOf(cutoff())))
                .key("forecast", forecast())
                .key("support", about("Support points in order, or none", SchemaFragments.anyOf(SchemaFragments.of("const", "none"), SchemaFragments.listOf(support()))))
                .key("rules", about("The event's own rules on equipment", rules()))
                .key("pumped at", about("Where the tyres are pumped, if not at the start", pumped()))
                .key("time to change", about("How long a change takes, where it is known", changes()))
                .key("pits", about("Places on each lap where things of one's own may wait", SchemaFragments.listOf(pit())))
                .key(StageReader.KEY, about("The days of a race over several, in order", SchemaFragments.listOf(stage())))
                .key(StageReader.CHANGES_KEY, about("What the rules let the rider change on the bike between stages",
                        SchemaFragments.anyOf(SchemaFragments.word(Stream.concat(StageReader.ALL_OR_NOTHING.stream(), StageRace.CHANGES.stream()).toList()),
                                SchemaFragments.listOf(SchemaFragments.word(StageRace.CHANGES)))))
                .key(WorkHoursReader.KEY, WorkSchema.hours("Time for work on bikes on each evening before it"))
                .key(Travel.KEY, WorkSchema.travel())
                .key("bike", about("The bike for this event", RiderSchema.bike()))
                .file("Event");
    }

    private static Map<String, Object> forecast() {
        return weather()
                .key("good to", about("How far its temperatures may be off either way", amount(Dimension.TEMPERATURE)))
                .key("or", about("What the day may turn to; what is not given there is as in the forecast", weather().shape()))
                .shape();
    }

    private static Map<String, Object> cutoff() {
        return new SchemaFragments.KeyBlock()
                .key("at", about("Distance from the start, over all laps", amount(Dimension.LENGTH)))
                .key("by", about("The latest time of day, HH:MM", SchemaFragments.pattern("[0-9]{2}:[0-9]{2}")))
                .key("within", about("The latest time from the start", amount(Dimension.TIME)))
                .required("at")
                .also("oneOf", List.of(SchemaFragments.of("required", List.of("by")), SchemaFragments.of("required", List.of("within"))))
                .shape();
    }

    private static Map<String, Object> pit() {
        return new SchemaFragments.KeyBlock().keys(PitReader.KEY_FORMS)
                .key("at", about("Distance from the start of the lap", amount(Dimension.LENGTH)))
                .required("at")
                .shape();
    }

    private static Map<String, Object> stage() {
        return new SchemaFragments.KeyBlock()
                .key("course", about("A file beside this one, or the name of a shipped course", SchemaFragments.text()))
                .key("date", about("The day, YYYY-MM-DD", SchemaFragments.pattern("[0-9]{4}-[0-9]{2}-[0-9]{2}")))
                .key("start", about("Local time of the start, HH:MM; that of the event if not given", SchemaFragments.pattern("[0-9]{2}:[0-9]{2}")))
                .key("laps", SchemaFragments.whole(1, 100))
                .key("time limit", about("Time allowed for the stage", amount(Dimension.TIME)))
                .key("group share", about("Share of the distance in a group; that of the event if not given", amount(Dimension.SHARE)))
                .key("forecast", forecast())
                .key("support", about("Support points in order, or none", SchemaFragments.anyOf(SchemaFragments.of("const", "none"), SchemaFragments.listOf(support()))))
                .key("cut-offs", about("Latest times on the way", SchemaFragments.listOf(cutoff())))
                .key("pits", about("Places on each lap where things of one's own may wait", SchemaFragments.listOf(pit())))
                .key("start height", about("Height of the start, where the course does not tell", amount(Dimension.LENGTH)))
                .required("course", "date")
                .shape();
    }

    private static Map<String, Object> pumped() {
        return new SchemaFragments.KeyBlock()
                .key("temperature", amount(Dimension.TEMPERATURE))
                .key("height", about("Above sea level", amount(Dimension.LENGTH)))
                .shape();
    }

    private static Map<String, Object> changes() {
        SchemaFragments.KeyBlock block = new SchemaFragments.KeyBlock();
        for (String what : Work.words()) {
            block.key(what, amount(Dimension.TIME));
        }
        return block.shape();
    }

    private static SchemaFragments.KeyBlock weather() {
        return new SchemaFragments.KeyBlock().keys(ForecastReader.KEY_FORMS)
                .key("wind from", about("Where it comes from", direction()))
                .key("hours", about("The forecast hour by hour, or the name of a CSV file with these columns",
                        SchemaFragments.anyOf(SchemaFragments.text(), SchemaFragments.listOf(hour()))));
    }

    private static Map<String, Object> hour() {
        return new SchemaFragments.KeyBlock().keys(ForecastReader.HOUR_FORMS)
                .key("hour", about("Local time, HH:MM or YYYY-MM-DDTHH:MM", SchemaFragments.pattern("([0-9]{4}-[0-9]{2}-[0-9]{2}[T ])?[0-9]{2}:[0-9]{2}")))
                .key("from", about("Where the wind comes from", direction()))
                .required("hour")
                .shape();
    }

    private static Map<String, Object> direction() {
        return SchemaFragments.anyOf(SchemaFragments.word(WindDirection.COMPASS), amount(Dimension.ANGLE));
    }

    private static Map<String, Object> support() {
        return new SchemaFragments.KeyBlock()
                .key("at", about("Distance from the start, over all laps", amount(Dimension.LENGTH)))
                .key("water", SchemaFragments.yesNo()).key("food", SchemaFragments.yesNo()).key("bag", about("A bag of one's own", SchemaFragments.yesNo()))
                .required("at")
                .also("anyOf", EventReader.SUPPORT_KEYS.stream().skip(1).map(what -> SchemaFragments.of("required", List.of(what))).toList())
                .shape();
    }

    private static Map<String, Object> rules() {
        return new SchemaFragments.KeyBlock().keys(EventReader.RULES_FORMS)
                .key("tyre width", about("at most, and a width", SchemaFragments.pattern("at most " + Amount.pattern(Dimension.LENGTH))))
                .key("kit", about("Required kit", SchemaFragments.oneOrMore(SchemaFragments.text())))
                .key("edition", about("Date or year of the rules", SchemaFragments.text()))
                .shape();
    }
}
