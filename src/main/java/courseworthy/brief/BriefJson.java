package courseworthy.brief;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import courseworthy.brief.Brief.LeaveAlone;
import courseworthy.brief.CourseLine.SurfaceShare;
import courseworthy.checklist.Checklist.Item;
import courseworthy.checklist.Checklist.Section;
import courseworthy.claim.Author;
import courseworthy.claim.Claim;
import courseworthy.claim.Ground;
import courseworthy.claim.Verb;
import courseworthy.course.Repair;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Lost;
import courseworthy.demand.Demands.Assumed;
import courseworthy.demand.Measure;
import courseworthy.demand.Scale;
import courseworthy.demand.Value;
import courseworthy.rulebase.Untold;
import courseworthy.topic.Topic;
import courseworthy.units.Resolution;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;

/**
 * Writes a brief as JSON, format 1. Units are fixed by name: lengths in m (parts of a bike in mm), masses in kg, times in s,
 * pressures in kPa, temperatures in C, volumes in L, shares as fractions of one. The order is the catalogue's; within a decision
 * claims stand by rank, force and id.
 */
public final class BriefJson {

    /** The format's number; it changes when a name or a meaning does. */
    public static final int FORMAT = 1;

    private final JsonGenerator json;

    private BriefJson(JsonGenerator json) {
        this.json = json;
    }

    /** The whole brief. */
    public static String of(Brief brief) {
        return written(writer -> writer.brief(brief, brief.decisions()));
    }

    /** The brief with the decision on one topic alone. */
    public static String of(Brief brief, String topic) {
        return written(writer -> writer.brief(brief, List.of(brief.on(topic))));
    }

    /** The course and its demands alone. */
    public static String course(CourseLine course, Map<Measure, Value> demands) {
        return written(writer -> {
            writer.course(course);
            writer.demands(demands);
        });
    }

    /** The checklist alone. */
    public static String checklist(Brief brief) {
        return written(writer -> {
            writer.head(brief);
            writer.sections(brief.checklist().sections());
        });
    }

    /** What is written into the outermost object. */
    interface Body {
        void write(BriefJson writer) throws IOException;
    }

    private static String written(Body body) {
        StringWriter out = new StringWriter(65_536);
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN.mappedFeature());
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            DefaultPrettyPrinter pretty = new DefaultPrettyPrinter();
            pretty.indentObjectsWith(indenter);
            pretty.indentArraysWith(indenter);
            json.setPrettyPrinter(pretty);
            json.writeStartObject();
            json.writeNumberField("format", FORMAT);
            body.write(new BriefJson(json));
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.append('\n').toString();
    }

    private void brief(Brief brief, List<Decision> decisions) throws IOException {
        head(brief);
        course(brief.course());
        demands(brief.demands().values());
        assumed(brief);
        decisions(decisions);
        leaveAlone(brief.leaveAlone());
        couldNotTell(brief.couldNotTell());
        strings("cautions", brief.cautions());
        sections(brief.checklist().sections());
    }

    private void head(Brief brief) throws IOException {
        string("role", brief.role());
        string("date", brief.date() == null ? null : brief.date().toString());
        string("event", brief.event());
        string("rider", brief.rider());
    }

    private void course(CourseLine course) throws IOException {
        json.writeObjectFieldStart("course");
        string("name", course.name());
        string("summary", course.summary());
        string("file", course.file());
        metres("distance_m", course.distance());
        metres("ascent_m", course.ascent());
        metres("descent_m", course.descent());
        json.writeArrayFieldStart("surfaces");
        for (SurfaceShare surface : course.surfaces()) {
            json.writeStartObject();
            string("surface", surface.surface());
            json.writeFieldName("share");
            json.writeNumber(plain(surface.share()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("repairs");
        for (Repair repair : course.repairs()) {
            json.writeStartObject();
            string("what", repair.what());
            json.writeNumberField("count", repair.count());
            json.writeEndObject();
        }
        json.writeEndArray();
        strings("notes", course.notes());
        json.writeEndObject();
    }

    private void demands(Map<Measure, Value> demands) throws IOException {
        json.writeArrayFieldStart("demands");
        for (Map.Entry<Measure, Value> demand : demands.entrySet()) {
            Scale scale = demand.getKey().scale();
            Value value = demand.getValue();
            json.writeStartObject();
            string("name", demand.getKey().written());
            scaled("value", scale, value.mid());
            scaled("low", scale, value.low());
            scaled("high", scale, value.high());
            string("unit", scale.kind() == Scale.Kind.QUANTITY ? scale.resolution().jsonUnit().symbol() : "");
            string("text", Words.range(scale, value));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void assumed(Brief brief) throws IOException {
        json.writeArrayFieldStart("assumed");
        for (String ground : brief.course().assumed()) {
            assumed("ground", ground);
        }
        for (Assumed each : brief.demands().assumed()) {
            assumed(each.what(), each.value());
        }
        json.writeEndArray();
    }

    private void assumed(String what, String value) throws IOException {
        json.writeStartObject();
        string("what", what);
        string("value", value);
        json.writeEndObject();
    }

    private void decisions(List<Decision> decisions) throws IOException {
        json.writeArrayFieldStart("decisions");
        for (Decision decision : decisions) {
            decision(decision);
        }
        json.writeEndArray();
    }

    private void decision(Decision decision) throws IOException {
        json.writeStartObject();
        string("topic", decision.topic().name());
        string("status", decision.status().words());
        json.writeFieldName("value");
        if (decision.value() == null) {
            json.writeNull();
        } else {
            value(decision.topic(), decision.value());
        }
        string("unit", unit(decision.topic()));
        string("text", decision.text());
        string("standing", decision.standing() == null ? null : decision.standing().word());
        string("why", decision.why());
        json.writeArrayFieldStart("for");
        for (Claim claim : decision.taken()) {
            json.writeStartObject();
            claim(claim);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("against");
        for (Lost lost : decision.lost()) {
            lost(lost);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void lost(Lost lost) throws IOException {
        json.writeStartObject();
        claim(lost.claim());
        string("how", lost.how().words());
        if (!lost.by().isEmpty()) {
            string("overruled_by", lost.by().get(0));
            strings("lost_to", lost.by());
        }
        json.writeEndObject();
    }

    private void claim(Claim claim) throws IOException {
        Author author = claim.author();
        author(author);
        says(claim);
        json.writeArrayFieldStart("grounds");
        for (Ground ground : claim.grounds()) {
            ground(ground);
        }
        json.writeEndArray();
    }

    private void author(Author author) throws IOException {
        string("rule", author.rule());
        string("rank", author.rank().word());
        string("force", author.force().word());
        string("evidence", author.evidence().word());
        string("source", author.source());
        string("because", author.because());
        string("where", author.where().toString());
    }

    private void says(Claim claim) throws IOException {
        json.writeObjectFieldStart("says");
        string("verb", claim.verb().word());
        json.writeFieldName("value");
        if (claim.verb() == Verb.ONE_OF) {
            json.writeStartArray();
            for (long value : claim.values()) {
                value(claim.topic(), value);
            }
            json.writeEndArray();
        } else {
            value(claim.topic(), claim.value());
        }
        string("unit", unit(claim.topic()));
        string("written", claim.written());
        json.writeEndObject();
    }

    private void ground(Ground ground) throws IOException {
        json.writeStartObject();
        string("measure", ground.measure());
        json.writeFieldName("value");
        if (ground.number() == null) {
            json.writeString(ground.value());
        } else {
            json.writeNumber(plain(ground.number()));
        }
        string("unit", ground.unit());
        string("text", ground.value());
        string("test", ground.test());
        json.writeBooleanField("met", ground.met());
        json.writeBooleanField("near", ground.near());
        json.writeEndObject();
    }

    private void leaveAlone(List<LeaveAlone> things) throws IOException {
        json.writeArrayFieldStart("leave_alone");
        for (LeaveAlone thing : things) {
            json.writeStartObject();
            string("what", thing.what());
            string("because", thing.because());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void couldNotTell(List<Untold> rules) throws IOException {
        json.writeArrayFieldStart("could_not_tell");
        for (Untold rule : rules) {
            json.writeStartObject();
            string("rule", rule.author().rule());
            strings("topics", rule.topics());
            strings("wanting", rule.wanting());
            string("where", rule.author().where().toString());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void sections(List<Section> sections) throws IOException {
        json.writeArrayFieldStart("checklist");
        for (Section section : sections) {
            json.writeStartObject();
            string("when", section.when());
            json.writeArrayFieldStart("items");
            for (Item item : section.items()) {
                item(item);
            }
            json.writeEndArray();
            string("done", section.done());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void item(Item item) throws IOException {
        json.writeStartObject();
        string("do", item.what());
        string("find", item.find());
        string("because", item.because());
        json.writeBooleanField("critical", item.critical());
        string("part", item.part());
        string("rule", item.rule());
        string("where", item.where() == null ? null : item.where().toString());
        json.writeEndObject();
    }

    private void value(Topic topic, long value) throws IOException {
        if (topic.kind() == Topic.Kind.QUANTITY) {
            json.writeNumber(topic.resolution().json(value));
        } else {
            json.writeString(topic.options().get((int) value));
        }
    }

    private static String unit(Topic topic) {
        Resolution resolution = topic.resolution();
        return resolution == null ? "" : resolution.jsonUnit().symbol();
    }

    private void scaled(String field, Scale scale, long value) throws IOException {
        json.writeFieldName(field);
        if (scale.kind() == Scale.Kind.QUANTITY) {
            json.writeNumber(scale.resolution().json(value));
        } else {
            json.writeString(scale.words().get((int) value));
        }
    }

    /** Metres to a tenth; null where unknown. */
    private void metres(String field, Double metres) throws IOException {
        json.writeFieldName(field);
        if (metres == null) {
            json.writeNull();
        } else {
            json.writeNumber(plain(BigDecimal.valueOf(metres).setScale(1, RoundingMode.HALF_UP)));
        }
    }

    /** Without an exponent and without trailing zeros. */
    private static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private void strings(String field, List<String> values) throws IOException {
        json.writeArrayFieldStart(field);
        for (String value : values) {
            json.writeString(wellFormed(value));
        }
        json.writeEndArray();
    }

    private void string(String field, String value) throws IOException {
        json.writeFieldName(field);
        if (value == null) {
            json.writeNull();
        } else {
            json.writeString(wellFormed(value));
        }
    }

    /** Half a surrogate pair cannot be written as UTF-8; it becomes U+FFFD. */
    private static String wellFormed(String text) {
        StringBuilder out = null;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!Character.isSurrogate(c)) {
                continue;
            }
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                i++;
                continue;
            }
            out = out == null ? new StringBuilder(text) : out;
            out.setCharAt(i, '\ufffd');
        }
        return out == null ? text : out.toString();
    }
}
