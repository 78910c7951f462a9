package courseworthy.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import courseworthy.claim.RuleOrigin;
import courseworthy.demand.MeasureScale;
import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import courseworthy.units.Resolution;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/** One JSON document: line feeds, no exponents, no half characters, numbers in the units that {@link Resolution#jsonUnit} fixes. */
public final class Json {

    /** The format's number; it changes when a name or a meaning does. */
    static final int FORMAT = 2;

    private final JsonGenerator out;

    private Json(JsonGenerator out) {
        this.out = out;
    }

    /** What is written into the outermost object, after its format. */
    public interface ObjectBody {
        void write(Json json) throws IOException;
    }

    public static String written(ObjectBody body) {
        return pretty(inObject(body));
    }

    /** The same on one line, which takes little more than half the room. */
    static String onOneLine(ObjectBody body) {
        return text(inObject(body), null);
    }

    private static ObjectBody inObject(ObjectBody body) {
        return json -> {
            json.out.writeStartObject();
            json.out.writeNumberField("format", FORMAT);
            body.write(json);
            json.out.writeEndObject();
        };
    }

    /** A tree of maps, lists, texts, whole numbers and truths, as it is. */
    static String tree(Object tree) {
        return pretty(json -> json.node(tree));
    }

    private static String pretty(ObjectBody body) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter pretty = new DefaultPrettyPrinter();
        pretty.indentObjectsWith(indenter);
        pretty.indentArraysWith(indenter);
        return text(body, pretty);
    }

    /** @param printer puts in line feeds and spaces; null for none */
    private static String text(ObjectBody body, PrettyPrinter printer) {
        StringWriter text = new StringWriter(65_536);
        try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
            out.enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN.mappedFeature());
            out.setPrettyPrinter(printer);
            body.write(new Json(out));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private void node(Object node) throws IOException {
        if (node instanceof Map<?, ?> map) {
            out.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                out.writeFieldName((String) entry.getKey());
                node(entry.getValue());
            }
            out.writeEndObject();
        } else if (node instanceof List<?> list) {
            out.writeStartArray();
            for (Object item : list) {
                node(item);
            }
            out.writeEndArray();
        } else if (node instanceof Boolean truth) {
            out.writeBoolean(truth);
        } else if (node instanceof Integer number) {
            out.writeNumber(number);
        } else {
            out.writeString(wellFormed((String) node));
        }
    }

    /** What is written of a thing, as fields of the open object. */
    interface Fields<T> {
        void write(T each) throws IOException;
    }

    /** An object; null where there is no such thing. */
    <T> void object(String field, T value, Fields<T> fields) throws IOException {
        if (value == null) {
            out.writeNullField(field);
        } else {
            object(field);
            fields.write(value);
            close();
        }
    }

    /** A list of objects. */
    <T> void objects(String field, Iterable<T> values, Fields<? super T> fields) throws IOException {
        list(field);
        for (T value : values) {
            open();
            fields.write(value);
            close();
        }
        endList();
    }

    /** Opens an object in a list. */
    public void open() throws IOException {
        out.writeStartObject();
    }

    public void object(String field) throws IOException {
        out.writeObjectFieldStart(field);
    }

    public void close() throws IOException {
        out.writeEndObject();
    }

    public void list(String field) throws IOException {
        out.writeArrayFieldStart(field);
    }

    public void endList() throws IOException {
        out.writeEndArray();
    }

    /** A text, or null. */
    public void string(String field, String value) throws IOException {
        out.writeFieldName(field);
        if (value == null) {
            out.writeNull();
        } else {
            out.writeString(wellFormed(value));
        }
    }

    public void strings(String field, List<String> values) throws IOException {
        list(field);
        for (String value : values) {
            out.writeString(wellFormed(value));
        }
        endList();
    }

    /** The rule that speaks, as fields of the open object. */
    void origin(RuleOrigin author) throws IOException {
        string("rule", author.rule());
        string("rank", author.rank().word());
        string("force", author.force().word());
        string("evidence", author.evidence().word());
        string("source", author.source());
        string("because", author.because());
        string("where", author.where().toString());
    }

    /** Null where not known. */
    public void yesNo(String field, Boolean value) throws IOException {
        if (value == null) {
            out.writeNullField(field);
        } else {
            out.writeBooleanField(field, value);
        }
    }

    /** Null where not known. */
    public void number(String field, BigDecimal value) throws IOException {
        if (value == null) {
            out.writeNullField(field);
            return;
        }
        out.writeFieldName(field);
        out.writeNumber(plain(value));
    }

    /** A bare number in a list. */
    void number(long value) throws IOException {
        out.writeNumber(value);
    }

    public void number(String field, long value) throws IOException {
        out.writeNumberField(field, value);
    }

    /** To some decimals. */
    public void decimal(String field, double value, int decimals) throws IOException {
        number(field, BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
    }

    /** To some decimals; null where not known. */
    public void decimal(String field, Double value, int decimals) throws IOException {
        if (value == null) {
            out.writeNullField(field);
        } else {
            decimal(field, value.doubleValue(), decimals);
        }
    }

    /** Numbers to some decimals, on one line. */
    void decimals(String field, int count, IntToDoubleFunction of, int decimals) throws IOException {
        StringBuilder line = new StringBuilder("[");
        for (int i = 0; i < count; i++) {
            BigDecimal number = plain(BigDecimal.valueOf(of.applyAsDouble(i)).setScale(decimals, RoundingMode.HALF_UP));
            line.append(i == 0 ? "" : ", ").append(number.toPlainString());
        }
        out.writeFieldName(field);
        out.writeRawValue(line.append(']').toString());
    }

    /** A likely value and its ends, to some decimals; null where not known. */
    public void range(String field, Range range, int decimals) throws IOException {
        object(field, range, known -> {
            decimal("value", known.mid(), decimals);
            decimal("low", known.low(), decimals);
            decimal("high", known.high(), decimals);
        });
    }

    /** Metres to a tenth; null where unknown. */
    void metres(String field, Double metres) throws IOException {
        decimal(field, metres, 1);
    }

    /** A topic's value: a number in its unit or an option's word; null where there is none. */
    public void value(String field, Topic topic, Long value) throws IOException {
        if (value == null) {
            string(field, null);
        } else {
            out.writeFieldName(field);
            value(topic, value);
        }
    }

    void values(String field, Topic topic, List<Long> values) throws IOException {
        list(field);
        for (long value : values) {
            value(topic, value);
        }
        endList();
    }

    private void value(Topic topic, long value) throws IOException {
        if (topic.kind() == Topic.Kind.QUANTITY) {
            out.writeNumber(topic.resolution().json(value));
        } else {
            out.writeString(topic.options().get((int) value));
        }
    }

    /** A measure's value. */
    public void scaled(String field, MeasureScale scale, long value) throws IOException {
        if (scale.kind() == MeasureScale.Kind.QUANTITY) {
            number(field, scale.resolution().json(value));
        } else {
            string(field, scale.words().get((int) value));
        }
    }

    public static String unit(Topic topic) {
        return topic.kind() == Topic.Kind.QUANTITY ? topic.resolution().jsonUnit().symbol() : "";
    }

    public static String unit(MeasureScale scale) {
        return scale.kind() == MeasureScale.Kind.QUANTITY ? scale.resolution().jsonUnit().symbol() : "";
    }

    /** Without trailing zeros. */
    private static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
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
