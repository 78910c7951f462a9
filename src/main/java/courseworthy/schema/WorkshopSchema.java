package courseworthy.schema;

import static courseworthy.schema.Shape.about;
import static courseworthy.schema.Shape.amount;

import courseworthy.units.Dimension;
import courseworthy.workshop.Detail;
import courseworthy.workshop.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A workshop: bikes, and parts of each kind with the details of that kind. */
final class WorkshopSchema {

    private WorkshopSchema() {
    }

    static Map<String, Object> of() {
        return new Shape.Block()
                .key("workshop", about("Its name", Shape.text()))
                .key("minutes", about("How long one swap takes, by kind of part", minutes()))
                .key("bikes", Shape.listOf(bike()))
                .key("parts", Shape.listOf(Shape.of("oneOf", parts())))
                .file("Workshop");
    }

    private static Map<String, Object> minutes() {
        Shape.Block out = new Shape.Block();
        for (String word : Kind.partWords()) {
            out.key(word, amount(Dimension.TIME));
        }
        return out.shape();
    }

    private static Map<String, Object> bike() {
        Shape.Block out = new Shape.Block().key("name", about("A name of its own", Shape.text())).required("name");
        details(out, Kind.BIKE);
        return out.shape();
    }

    private static List<Object> parts() {
        List<Object> out = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            if (kind != Kind.BIKE) {
                out.add(part(kind));
            }
        }
        return out;
    }

    private static Map<String, Object> part(Kind kind) {
        Shape.Block out = new Shape.Block()
                .key("name", about("A name of its own", Shape.text()))
                .key("kind", Shape.of("const", kind.word()))
                .key("on", about("The bike or the part it is mounted on now", Shape.text()))
                .required("name", "kind");
        details(out, kind);
        return out.shape();
    }

    private static void details(Shape.Block to, Kind kind) {
        for (Detail detail : kind.details()) {
            Map<String, Object> shape = shape(detail);
            to.key(detail.written(), detail.about().isEmpty() ? shape : about(detail.about(), shape));
        }
    }

    private static Map<String, Object> shape(Detail detail) {
        return switch (detail.form()) {
            case AMOUNT -> amount(detail.dimension());
            case NUMBER -> amount(Dimension.NUMBER);
            case WHOLE -> Shape.whole((int) detail.least(), (int) detail.most());
            case YES_NO -> Shape.yesNo();
            case WORD -> Shape.word(detail.words());
            case WORDS -> Shape.oneOrMore(Shape.word(detail.words()));
            case LABEL -> Shape.text();
            case LABELS -> Shape.oneOrMore(Shape.text());
            case TEETH -> Shape.oneOrMore(Shape.whole((int) detail.least(), (int) detail.most()));
            case DAY -> Shape.pattern("[0-9]{4}-[0-9]{2}-[0-9]{2}");
            case SIZES -> Shape.oneOrMore(amount(detail.dimension()));
            case CLEARANCES -> Shape.anyOf(amount(Dimension.LENGTH), Shape.listOf(clearance()));
        };
    }

    private static Map<String, Object> clearance() {
        return new Shape.Block().key("bead seat", amount(Dimension.LENGTH)).key("width", amount(Dimension.LENGTH))
                .required("bead seat", "width").shape();
    }
}
