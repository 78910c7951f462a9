package courseworthy.schema;

import static courseworthy.schema.Shape.about;
import static courseworthy.schema.Shape.amount;

import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.List;
import java.util.Map;

/** An event, or the typical ride of a training bike. */
final class EventSchema {

    private EventSchema() {
    }

    static Map<String, Object> of() {
        return new Shape.Block()
                .key("name", Shape.text())
                .key("role", about("What the bike is set up for", Shape.word(EventReader.ROLES)))
                .key("date", about("The day, YYYY-MM-DD", Shape.pattern("[0-9]{4}-[0-9]{2}-[0-9]{2}")))
                .key("start", about("Local time of the start, HH:MM", Shape.pattern("[0-9]{2}:[0-9]{2}")))
                .key("utc offset", about("Local time's offset from UTC, +HH:MM", Shape.pattern("[+-][0-9]{2}:[0-9]{2}")))
                .key("zone", about("The zone of local time by its IANA name; summer time follows from the date",
                        Shape.pattern("[A-Za-z_]+(/[A-Za-z0-9_+-]+)+")))
                .key("laps", Shape.whole(1, 100))
                .key("aim", about("What the rider wants", Shape.word(Event.AIMS)))
                .key("cut-off", about("Time allowed", amount(Dimension.TIME)))
                .key("cut-offs", about("Latest times on the way", Shape.listOf(cutoff())))
                .key("group share", about("Share of the distance in a group", amount(Dimension.SHARE)))
                .key("forecast", forecast())
                .key("support", about("Support points in order, or none", Shape.anyOf(Shape.of("const", "none"), Shape.listOf(support()))))
                .key("rules", about("The event's own rules on equipment", rules()))
                .key("start height", about("Height of the start, where the course does not tell", amount(Dimension.LENGTH)))
                .key("pumped at", about("Where the tyres are pumped, if not at the start", pumped()))
                .key("time to change", about("How long a change takes, where it is known", changes()))
                .key("bike", about("The bike for this event", RiderSchema.bike()))
                .file("Event");
    }

    private static Map<String, Object> forecast() {
        return weather()
                .key("good to", about("How far its temperatures may be off either way", amount(Dimension.TEMPERATURE)))
                .key("or", about("What the day may turn to; what is not written there is as in the forecast", weather().shape()))
                .shape();
    }

    private static Map<String, Object> cutoff() {
        return new Shape.Block()
                .key("at", about("Distance from the start, over all laps", amount(Dimension.LENGTH)))
                .key("by", about("The latest time of day, HH:MM", Shape.pattern("[0-9]{2}:[0-9]{2}")))
                .key("within", about("The latest time from the start", amount(Dimension.TIME)))
                .required("at")
                .also("oneOf", List.of(Shape.of("required", List.of("by")), Shape.of("required", List.of("within"))))
                .shape();
    }

    private static Map<String, Object> pumped() {
        return new Shape.Block()
                .key("temperature", amount(Dimension.TEMPERATURE))
                .key("height", about("Above sea level", amount(Dimension.LENGTH)))
                .shape();
    }

    private static Map<String, Object> changes() {
        Shape.Block block = new Shape.Block();
        for (String what : Event.Plan.CHANGES) {
            block.key(what, amount(Dimension.TIME));
        }
        return block.shape();
    }

    private static Shape.Block weather() {
        return new Shape.Block()
                .key("low", about("Lowest temperature of the day, at the height of the start", amount(Dimension.TEMPERATURE)))
                .key("high", about("Highest temperature of the day, at the height of the start", amount(Dimension.TEMPERATURE)))
                .key("ground", Shape.word(Event.Forecast.GROUNDS))
                .key("wind", about("Mean wind", amount(Dimension.SPEED)))
                .key("wind from", about("Where it comes from", Shape.anyOf(Shape.word(EventReader.COMPASS), amount(Dimension.ANGLE))))
                .key("humidity", about("Mean relative humidity of the ride", amount(Dimension.SHARE)))
                .key("air pressure", about("At sea level, as weather services give it", amount(Dimension.PRESSURE)));
    }

    private static Map<String, Object> support() {
        return new Shape.Block()
                .key("at", about("Distance from the start, over all laps", amount(Dimension.LENGTH)))
                .key("water", Shape.yesNo()).key("food", Shape.yesNo()).key("bag", about("A bag of one's own", Shape.yesNo()))
                .required("at")
                .also("anyOf", List.of(Shape.of("required", List.of("water")), Shape.of("required", List.of("food")),
                        Shape.of("required", List.of("bag"))))
                .shape();
    }

    private static Map<String, Object> rules() {
        return new Shape.Block()
                .key("aero extensions", Shape.word(EventReader.ALLOWED))
                .key("tyre width", about("at most, and a width", Shape.pattern("at most " + Amount.pattern(Dimension.LENGTH))))
                .key("lights", Shape.word(EventReader.REQUIRED))
                .key("mudguards", Shape.word(EventReader.REQUIRED))
                .key("outside help", Shape.word(EventReader.ALLOWED))
                .key("kit", about("Required kit", Shape.oneOrMore(Shape.text())))
                .key("edition", about("Date or year of the rules", Shape.text()))
                .shape();
    }
}
