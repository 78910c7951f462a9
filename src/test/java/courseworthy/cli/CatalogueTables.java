package courseworthy.cli;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.call.FirmnessTable;
import courseworthy.report.json.OutputSchema;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Topics, measures and parts as Markdown tables, from the catalogue that the tool itself uses. */
final class CatalogueTables {

    private CatalogueTables() {
    }

    /** A row for each layer: the topics settled in it, and the measures known from then on. */
    static String layers() {
        StringBuilder out = new StringBuilder("| layer | topics decided | measures known from then on |\n| --- | --- | --- |\n");
        JsonNode measures = catalogue("measures");
        for (int layer = 1; layer <= Topics.LAST_LAYER; layer++) {
            List<String> known = new ArrayList<>();
            for (JsonNode measure : measures) {
                if (measure.get("layer").asInt() == layer) {
                    known.add(measure.get("name").asText());
                }
            }
            List<String> decided = Topics.ofLayer(layer).stream().map(Topic::name).toList();
            out.append(row(Integer.toString(layer), String.join(", ", decided), String.join(", ", known)));
        }
        return out.toString();
    }

    static String topics() {
        StringBuilder out = new StringBuilder("| topic | what is decided | values | default | notch |\n| --- | --- | --- | --- | --- |\n");
        for (Topic topic : Topics.all()) {
            out.append(row("`" + topic.name() + "`", topic.about(), values(topic), topic.text(topic.standard()),
                    topic.kind() == Topic.Kind.QUANTITY ? topic.resolution().text(topic.notch()) : "another word"));
        }
        return out.toString();
    }

    /** A row for each grade of firmness, with what is found and the word for it. */
    static String firmness() {
        StringBuilder out = new StringBuilder("| best evidence | advice that agrees | under it | firmness | why |\n| --- | --- | --- | --- | --- |\n");
        for (FirmnessTable.Grade grade : FirmnessTable.shipped().grades()) {
            out.append(row(String.join(", ", grade.evidence()), String.join(", ", grade.agreement()), String.join(", ", grade.knowledge()),
                    "**" + grade.level().word() + "**", grade.because()));
        }
        return out.toString();
    }

    /** A row for each of how firm a decision is by itself and what it rests on. */
    static String foundations() {
        StringBuilder out = new StringBuilder("| by itself | rests on what is | firmness | why |\n| --- | --- | --- | --- |\n");
        for (FirmnessTable.Foundation row : FirmnessTable.shipped().foundations()) {
            out.append(row(String.join(", ", row.itself()), String.join(", ", row.restsOn()), "**" + row.level().word() + "**", row.because()));
        }
        return out.toString();
    }

    private static String values(Topic topic) {
        return switch (topic.kind()) {
            case QUANTITY -> topic.text(topic.least()) + " to " + topic.text(topic.most());
            case ORDERED -> String.join(" < ", topic.options());
            case OPTIONS -> String.join(", ", topic.options());
        };
    }

    static String measures() {
        StringBuilder out = new StringBuilder("| measure | what it is | steps or words |\n| --- | --- | --- |\n");
        for (JsonNode measure : catalogue("measures")) {
            List<String> words = new ArrayList<>();
            measure.get("words").forEach(word -> words.add(word.asText()));
            String steps = measure.path("resolution").asText("");
            String joint = measure.get("kind").asText().equals("options") ? ", " : " < ";
            String values = (steps.isEmpty() ? "" : "steps of " + steps) + (steps.isEmpty() || words.isEmpty() ? "" : "; ") + String.join(joint, words);
            out.append(row("`" + measure.get("name").asText() + "`", measure.get("about").asText(), values.isEmpty() ? "yes, no" : values));
        }
        return out.toString();
    }

    /** A row for each kind of part: what it may be mounted on, and its keys beside those that every part has. */
    static String partKinds() {
        StringBuilder out = new StringBuilder("| kind | mounted on | keys |\n| --- | --- | --- |\n");
        for (PartKind kind : PartKind.values()) {
            List<String> hosts = new ArrayList<>(kind.onABike() ? List.of("bike") : List.of());
            kind.hosts().forEach(host -> hosts.add(host.word()));
            List<String> keys = kind.details().stream().filter(detail -> !ofEveryPart(detail)).map(detail -> "`" + detail.written() + "`").toList();
            out.append(row(kind.word(), String.join(", ", hosts), String.join(", ", keys)));
        }
        return out.toString();
    }

    private static boolean ofEveryPart(PartDetail detail) {
        for (PartKind kind : PartKind.values()) {
            if (kind != PartKind.BIKE && !kind.details().contains(detail)) {
                return false;
            }
        }
        return true;
    }

    /** A row for each key of a part or a bike, in the order of the alphabet. */
    static String partKeys() {
        TreeMap<String, String> rows = new TreeMap<>();
        for (PartKind kind : PartKind.values()) {
            for (PartDetail detail : kind.details()) {
                rows.put(detail.written(), row("`" + detail.written() + "`", form(detail), detail.about()));
            }
        }
        return "| key | value | what it is |\n| --- | --- | --- |\n" + String.join("", rows.values());
    }

    private static String form(PartDetail detail) {
        return switch (detail.form()) {
            case WORD -> String.join(", ", detail.words());
            case WORDS -> "one or several of: " + String.join(", ", detail.words());
            case YES_NO -> "yes, no";
            case LABEL -> "a label of yours";
            case LABELS -> "one or several labels of yours";
            case DAY -> "a date";
            case NUMBER -> "a number";
            case WHOLE -> "a whole number from " + (int) detail.least() + " to " + (int) detail.most();
            case TEETH -> "one or several whole numbers from " + (int) detail.least() + " to " + (int) detail.most();
            case SIZES -> "one or several sizes";
            case INTERVALS -> "one or several blocks of job with hours, length or days";
            case CLEARANCES -> "a width, or one for each wheel size";
            case CHART -> "rows of a rider's mass and a pressure from 0.5 bar to 30 bar";
            case AMOUNT -> detail.range();
        };
    }

    private static JsonNode catalogue(String name) {
        CommandRun run = CommandRun.of(name, "--format", "json");
        return OutputSchema.tree(run.out()).get(name);
    }

    private static String row(String... cells) {
        StringBuilder out = new StringBuilder("|");
        for (String cell : cells) {
            out.append(' ').append(cell.replace("|", "\\|")).append(cell.isEmpty() ? "|" : " |");
        }
        return out.append('\n').toString();
    }
}
