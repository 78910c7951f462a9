package courseworthy.schema;

import static courseworthy.schema.SchemaFragments.about;
import static courseworthy.schema.SchemaFragments.amount;

import courseworthy.units.Dimension;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.RideLogReader;
import java.util.Map;

/** A log: what was ridden on the bikes of a workshop, and what was done to their parts. */
final class RideLogSchema {

    private RideLogSchema() {
    }

    static Map<String, Object> of() {
        return new SchemaFragments.KeyBlock()
                .key("log", about("Its name", SchemaFragments.text()))
                .key("rides", about("What was ridden, a ride or some days together a line", SchemaFragments.listOf(ride())))
                .key("service", about("What was done to parts, and what was measured of them", SchemaFragments.listOf(service())))
                .key("used", about("What was taken from the stock, besides what services use up", SchemaFragments.listOf(use())))
                .key("each week", about("What is ridden in a usual week to come", SchemaFragments.listOf(weekly())))
                .file("Log");
    }

    private static Map<String, Object> day(String what) {
        return about(what + ", YYYY-MM-DD", SchemaFragments.pattern("[0-9]{4}-[0-9]{2}-[0-9]{2}"));
    }

    private static SchemaFragments.KeyBlock conditions() {
        return new SchemaFragments.KeyBlock()
                .key("bike", about("A bike of the workshop", SchemaFragments.text()))
                .key("going", about("As it was", SchemaFragments.word(RideLogReader.GOINGS)))
                .key("mud", about("Share of the way that was mud", amount(Dimension.SHARE)))
                .key("with", about("Parts that were on the bike in place of those mounted now", SchemaFragments.oneOrMore(SchemaFragments.text())));
    }

    private static Map<String, Object> ride() {
        return conditions()
                .key("date", day("The day of the ride"))
                .key("from", day("The first day of several rides together"))
                .key("to", day("The last day of several rides together"))
                .key("hours", about("Ridden", amount(Dimension.TIME)))
                .key("length", about("Ridden", amount(Dimension.LENGTH)))
                .key("punctures", about("What each puncture was repaired with", SchemaFragments.oneOrMore(SchemaFragments.word(RideLogReader.REPAIR_WORDS))))
                .key("debrief", about("A debrief that gives hours, going and punctures, beside the log or below it", SchemaFragments.text()))
                .key("recordings", about("A recorded ride (GPX) or a folder of them, beside the log or below it", SchemaFragments.text()))
                .required("bike").shape();
    }

    private static Map<String, Object> service() {
        SchemaFragments.KeyBlock out = new SchemaFragments.KeyBlock()
                .key("date", day("The day"))
                .key("part", about("A part or a bike of the workshop", SchemaFragments.text()))
                .key("job", about("What was done, such as renew", SchemaFragments.text()));
        for (PartDetail each : RideLogReader.MEASURED) {
            out.key(each.written(), about(each.about(), amount(each.dimension())));
        }
        return out.required("date", "part").shape();
    }

    private static Map<String, Object> use() {
        return new SchemaFragments.KeyBlock()
                .key("date", day("The day"))
                .key("stock", about("A stock of the workshop", SchemaFragments.text()))
                .key("quantity", about("Pieces, 1 where it is not given, or the volume of a liquid",
                        SchemaFragments.anyOf(SchemaFragments.whole(0, 10_000), amount(Dimension.VOLUME))))
                .required("date", "stock").shape();
    }

    private static Map<String, Object> weekly() {
        return conditions().key("hours", about("In a week", amount(Dimension.TIME))).key("length", about("In a week", amount(Dimension.LENGTH)))
                .required("bike", "hours").shape();
    }
}
