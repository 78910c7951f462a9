package courseworthy.schema;

import static courseworthy.schema.SchemaFragments.about;
import static courseworthy.schema.SchemaFragments.amount;

import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.units.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A rider, with the bike at hand and constraints of the rider's own. */
final class RiderSchema {

    private RiderSchema() {
    }

    static Map<String, Object> of() {
        return new SchemaFragments.KeyBlock()
                .key("name", SchemaFragments.text())
                .key("mass", about("Body mass", amount(Dimension.MASS)))
                .key("height", about("Standing, without shoes", amount(Dimension.LENGTH)))
                .key("kit", about("Clothing, helmet, shoes and what is carried, without water", amount(Dimension.MASS)))
                .key("power", about("Best mean power, with held for; or a list of best efforts",
                        SchemaFragments.anyOf(amount(Dimension.POWER), SchemaFragments.listOf(effort()))))
                .key("held for", about("How long that power was held", amount(Dimension.TIME)))
                .key("skill", about("Skill on rough ground", SchemaFragments.word(Rider.SKILLS)))
                .key("climbing cadence", about("Lowest cadence turned for long on a climb", amount(Dimension.CADENCE)))
                .key("highest cadence", about("Highest cadence turned on the flat", amount(Dimension.CADENCE)))
                .key("races a year", about("On this bike", SchemaFragments.whole(0, 200)))
                .key("sweat rate", about("Known sweat loss in an hour", amount(Dimension.VOLUME)))
                .key("bar width", about("The width the rider is used to", amount(Dimension.LENGTH)))
                .key("shoulder width", about("Across the bony points at the tips of the shoulders", amount(Dimension.LENGTH)))
                .key("hand strength", about("For pulling brake levers all day", SchemaFragments.word(Rider.HAND_STRENGTHS)))
                .key("year of birth", about("By which age groups of events go", SchemaFragments.whole(1900, 2100)))
                .key("injuries", about("What is injured or sore and is to be spared", SchemaFragments.listOf(SchemaFragments.word(Rider.INJURIES))))
                .key("preference", about("What to favour where comfort and speed pull apart", SchemaFragments.word(Rider.PREFERENCES)))
                .key("plug stop", about("Time a puncture costs that a plug mends", amount(Dimension.TIME)))
                .key("tube stop", about("Time a puncture costs that takes a tube", amount(Dimension.TIME)))
                .key("lost group", about("Time lost by riding on alone after a stop", amount(Dimension.TIME)))
                .key("tags", about("What the rider belongs to, for sheets to ask for", SchemaFragments.names("")))
                .key("notes", about("What to keep in mind of the rider, for the brief", SchemaFragments.text()))
                .key("bike", about("The bike at hand", bike()))
                .key("constraints", about("Rows of advice of the rider's own", SchemaFragments.listOf(SchemaFragments.reference(SheetSchema.ROW))))
                .also("$defs", SheetSchema.definitions())
                .file("Rider");
    }

    private static Map<String, Object> effort() {
        return new SchemaFragments.KeyBlock().key("for", amount(Dimension.TIME)).key("power", amount(Dimension.POWER))
                .required("for", "power").shape();
    }

    /** A {@code bike:} block, of a rider's or an event's file. */
    static Map<String, Object> bike() {
        return new SchemaFragments.KeyBlock()
                .key("kind", SchemaFragments.word(BikeReader.KINDS))
                .key("mass", about("Ready to ride, without water and kit", amount(Dimension.MASS)))
                .key("rim inner width", amount(Dimension.LENGTH))
                .key("hookless", SchemaFragments.yesNo())
                .key("marked tyre pressure", about("Highest pressure marked on the tyre", amount(Dimension.PRESSURE)))
                .key("marked rim pressure", about("Highest pressure marked on the rim", amount(Dimension.PRESSURE)))
                .key("tyre clearance", about("Widest tyre that frame and fork take", amount(Dimension.LENGTH)))
                .key("tubeless", about("Whether rims and tyres are made to run tubeless", SchemaFragments.yesNo()))
                .key("use category", about("Marked intended-use category", SchemaFragments.word(BikeReader.CATEGORIES)))
                .key("ledge limit", about("Highest ledge it is marked for", amount(Dimension.LENGTH)))
                .key("mass limit", about("Highest marked mass of rider, kit and bike", amount(Dimension.MASS)))
                .key("most fork travel", about("Longest fork travel the frame permits", amount(Dimension.LENGTH)))
                .key("lights", about("Run time of the lights at the mode used", amount(Dimension.TIME)))
                .key("most rotor", about("Largest rotor that frame and fork permit", amount(Dimension.LENGTH)))
                .key("power meter", SchemaFragments.yesNo())
                .key("rebound clicks", about("Of the fork, from closed to open", SchemaFragments.whole(1, 60)))
                .key("compression clicks", about("Of the fork at low speed, from closed to open", SchemaFragments.whole(1, 60)))
                .key("shock rebound clicks", about("From closed to open", SchemaFragments.whole(1, 60)))
                .key("shock compression clicks", about("From closed to open", SchemaFragments.whole(1, 60)))
                .key("shock stroke", about("Stroke of the rear shock", amount(Dimension.LENGTH)))
                .also("dependentRequired", ofSomeKind())
                .shape();
    }

    /** Figures of one bike ask for its kind. */
    private static Map<String, Object> ofSomeKind() {
        Map<String, Object> out = new LinkedHashMap<>();
        BikeReader.OF_ONE_BIKE.forEach(key -> out.put(key, List.of("kind")));
        return out;
    }
}
