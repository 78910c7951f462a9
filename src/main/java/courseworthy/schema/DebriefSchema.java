package courseworthy.schema;

import static courseworthy.schema.SchemaFragments.about;
import static courseworthy.schema.SchemaFragments.amount;

import courseworthy.debrief.DebriefReader;
import courseworthy.debrief.OutcomeTable;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Dimension;
import java.util.List;
import java.util.Map;

/** A debrief: what really happened, and the brief that was given. */
final class DebriefSchema {

    private static final Map<String, Object> NONE = SchemaFragments.of("const", "none");

    private DebriefSchema() {
    }

    static Map<String, Object> of() {
        return new SchemaFragments.KeyBlock().keys(DebriefReader.KEY_FORMS)
                .key("brief", about("The brief as saved with --format json, beside this file or below it", SchemaFragments.of("type", "string")))
                .key("weather", about("As it was", weather()))
                .key("punctures", about("none, or a list", SchemaFragments.anyOf(NONE, SchemaFragments.oneOrMore(flat()))))
                .key("rim strikes", about("none, or at which wheels", noneOr(OutcomeTable.WHEELS)))
                .key("slid", about("none, or which wheels, where they should have held", noneOr(OutcomeTable.WHEELS)))
                .key("spun out at", about("Where, from the start", SchemaFragments.oneOrMore(amount(Dimension.LENGTH))))
                .key("walked", about("none, or a list", SchemaFragments.anyOf(NONE, SchemaFragments.oneOrMore(walked()))))
                .key("ran out of", about("none, or of what", noneOr(OutcomeTable.runsOut())))
                .key("changed on the day", about("What was ridden instead of the advice, by topic", SchemaFragments.anyOf(NONE, topics())))
                .key("would change", about("What the rider would ride the next time, by topic", SchemaFragments.anyOf(NONE, topics())))
                .required("debrief", "brief")
                .file("Debrief");
    }

    private static Map<String, Object> weather() {
        return new SchemaFragments.KeyBlock().keys(DebriefReader.WEATHER_FORMS).shape();
    }

    private static Map<String, Object> flat() {
        return new SchemaFragments.KeyBlock()
                .key("wheel", SchemaFragments.word(OutcomeTable.WHEELS))
                .key("cause", SchemaFragments.word(OutcomeTable.CAUSES))
                .key("at", about("From the start", amount(Dimension.LENGTH)))
                .key("repaired with", SchemaFragments.word(OutcomeTable.MENDS))
                .required("wheel").shape();
    }

    private static Map<String, Object> walked() {
        return new SchemaFragments.KeyBlock()
                .key("why", SchemaFragments.word(OutcomeTable.REASONS))
                .key("at", about("From the start", amount(Dimension.LENGTH)))
                .required("why").shape();
    }

    private static Map<String, Object> noneOr(List<String> words) {
        return SchemaFragments.anyOf(NONE, SchemaFragments.oneOrMore(SchemaFragments.word(words)));
    }

    private static Map<String, Object> topics() {
        SchemaFragments.KeyBlock out = new SchemaFragments.KeyBlock();
        for (Topic topic : Topics.all()) {
            out.key(topic.name(), about(topic.about(), topic.kind() == Topic.Kind.QUANTITY ? amount(topic.resolution().unit().dimension())
                    : SchemaFragments.word(topic.options())));
        }
        return out.shape();
    }
}
