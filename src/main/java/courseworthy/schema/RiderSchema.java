package courseworthy.schema;

import static courseworthy.schema.SchemaFragments.about;
import static courseworthy.schema.SchemaFragments.amount;

import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import courseworthy.units.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A rider, with the bike at hand and constraints of the rider's own. */
final class RiderSchema {

    private RiderSchema() {
    }

    static Map<String, Object> of() {
        return new SchemaFragments.KeyBlock().keys(RiderReader.KEY_FORMS)
                .key("power", about("Best mean power, with held for; or a list of best efforts",
                        SchemaFragments.anyOf(amount(Dimension.POWER), SchemaFragments.listOf(effort()))))
                .key("injuries", about("What is injured or sore and is to be spared", SchemaFragments.listOf(SchemaFragments.word(Rider.INJURIES))))
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
        return new SchemaFragments.KeyBlock().keys(BikeReader.KEY_FORMS)
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
