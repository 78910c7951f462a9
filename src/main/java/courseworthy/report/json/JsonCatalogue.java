package courseworthy.report.json;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.task.RuleEntry;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The lists of {@link Catalogue} as JSON. */
public final class JsonCatalogue {

    private JsonCatalogue() {
    }

    /** A schema, as it is made. */
    public static String schema(Map<String, Object> schema) {
        return Json.tree(schema);
    }

    public static String topics() {
        return Json.written(json -> {
            json.objects("topics", Topics.all(), topic -> topic(json, topic));
        });
    }

    private static void topic(Json json, Topic topic) throws IOException {
        json.string("name", topic.name());
        json.string("about", topic.about());
        json.string("kind", topic.kind().name().toLowerCase(Locale.ROOT));
        json.string("unit", Json.unit(topic));
        json.strings("options", topic.options());
        json.value("least", topic, topic.least());
        json.value("most", topic, topic.most());
        json.value("standard", topic, topic.standard());
        json.number("layer", BigDecimal.valueOf(topic.layer()));
        json.string("safe", topic.safe().name().toLowerCase(Locale.ROOT));
    }

    public static String measures() {
        return Json.written(json -> {
            json.objects("measures", List.of(Measure.values()), measure -> measure(json, measure));
        });
    }

    private static void measure(Json json, Measure measure) throws IOException {
        MeasureScale scale = measure.scale();
        json.string("name", measure.written());
        json.string("about", measure.about());
        json.string("kind", scale.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        json.string("unit", Json.unit(scale));
        json.strings("words", scale.words());
        if (scale.kind() == MeasureScale.Kind.QUANTITY) {
            json.string("resolution", scale.resolution().text(1));
        }
        json.number("layer", BigDecimal.valueOf(measure.layer()));
    }

    public static String rules(List<RuleEntry> rules) {
        return Json.written(json -> {
            json.objects("rules", rules, rule -> {
                json.origin(rule.origin());
                json.strings("says", rule.says());
                json.strings("topics", List.copyOf(rule.topics()));
                json.string("do", rule.does());
            });
        });
    }
}
