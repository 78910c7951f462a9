package courseworthy.schema;

import static courseworthy.schema.Shape.about;
import static courseworthy.schema.Shape.amount;

import courseworthy.debrief.DebriefReader;
import courseworthy.debrief.Outcomes;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Dimension;
import java.util.List;
import java.util.Map;

/** A debrief: what really happened, and the brief that was given. */
final class DebriefSchema {

    private static final Map<String, Object> NONE = Shape.of("const", "none");

    private DebriefSchema() {
    }

    static Map<String, Object> of() {
        Shape.Block out = new Shape.Block()
                .key("debrief", about("Its name, such as the event's", Shape.text()))
                .key("brief", about("The brief as saved with --format json, beside this file or below it", Shape.of("type", "string")))
                .key("hours", about("From start to finish", amount(Dimension.TIME)))
                .key("weather", about("As it was", weather()))
                .key("flats", about("none, or a list", Shape.anyOf(NONE, Shape.oneOrMore(flat()))))
                .key("rim strikes", about("none, or at which wheels", noneOr(Outcomes.WHEELS)))
                .key("slid", about("none, or which wheels, where they should have held", noneOr(Outcomes.WHEELS)))
                .key("spun out at", about("Where, from the start", Shape.oneOrMore(amount(Dimension.LENGTH))))
                .key("walked", about("none, or a list", Shape.anyOf(NONE, Shape.oneOrMore(walked()))))
                .key("ran out of", about("none, or of what", noneOr(Outcomes.runsOut())));
        for (String question : Outcomes.questions()) {
            out.key(question, Shape.word(Outcomes.answers(question)));
        }
        return out.key("changed on the day", about("What was ridden instead of the advice, by topic", Shape.anyOf(NONE, topics())))
                .key("would change", about("What the rider would ride the next time, by topic", Shape.anyOf(NONE, topics())))
                .key("notes", Shape.text())
                .required("debrief", "brief")
                .file("Debrief");
    }

    private static Map<String, Object> weather() {
        return new Shape.Block()
                .key("ground", Shape.word(DebriefReader.GROUNDS))
                .key("low", about("The coldest", amount(Dimension.TEMPERATURE)))
                .key("high", about("The hottest", amount(Dimension.TEMPERATURE)))
                .shape();
    }

    private static Map<String, Object> flat() {
        return new Shape.Block()
                .key("wheel", Shape.word(Outcomes.WHEELS))
                .key("cause", Shape.word(Outcomes.CAUSES))
                .key("at", about("From the start", amount(Dimension.LENGTH)))
                .key("mended with", Shape.word(Outcomes.MENDS))
                .required("wheel").shape();
    }

    private static Map<String, Object> walked() {
        return new Shape.Block()
                .key("why", Shape.word(Outcomes.REASONS))
                .key("at", about("From the start", amount(Dimension.LENGTH)))
                .required("why").shape();
    }

    private static Map<String, Object> noneOr(List<String> words) {
        return Shape.anyOf(NONE, Shape.oneOrMore(Shape.word(words)));
    }

    private static Map<String, Object> topics() {
        Shape.Block out = new Shape.Block();
        for (Topic topic : Topics.all()) {
            out.key(topic.name(), about(topic.about(), topic.kind() == Topic.Kind.QUANTITY ? amount(topic.resolution().unit().dimension())
                    : Shape.word(topic.options())));
        }
        return out.shape();
    }
}
