package courseworthy.schema;

import static courseworthy.schema.SchemaFragments.about;
import static courseworthy.schema.SchemaFragments.amount;

import courseworthy.units.Dimension;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.StockItem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A workshop: bikes, and parts of each kind with the details of that kind. */
final class WorkshopSchema {

    private WorkshopSchema() {
    }

    static Map<String, Object> of() {
        return new SchemaFragments.KeyBlock()
                .key("workshop", about("Its name", SchemaFragments.text()))
                .key("minutes", about("How long one swap takes, by kind of part", minutes()))
                .key("bikes", SchemaFragments.listOf(bike()))
                .key("parts", SchemaFragments.listOf(SchemaFragments.of("oneOf", parts())))
                .key("log", about("The file of its log, beside this one or below it", SchemaFragments.text()))
                .key("stock", about("What is used up and bought again", SchemaFragments.listOf(stock())))
                .file("Workshop");
    }

    private static Map<String, Object> minutes() {
        SchemaFragments.KeyBlock out = new SchemaFragments.KeyBlock();
        for (String word : PartKind.mountedWords()) {
            out.key(word, amount(Dimension.TIME));
        }
        return out.shape();
    }

    private static Map<String, Object> bike() {
        SchemaFragments.KeyBlock out = new SchemaFragments.KeyBlock().key("name", about("A name of its own", SchemaFragments.text())).required("name");
        details(out, PartKind.BIKE);
        return out.shape();
    }

    private static List<Object> parts() {
        List<Object> out = new ArrayList<>();
        for (PartKind kind : PartKind.values()) {
            if (kind != PartKind.BIKE) {
                out.add(part(kind));
            }
        }
        return out;
    }

    private static Map<String, Object> part(PartKind kind) {
        SchemaFragments.KeyBlock out = new SchemaFragments.KeyBlock()
                .key("name", about("A name of its own", SchemaFragments.text()))
                .key("kind", SchemaFragments.of("const", kind.word()))
                .required("name", "kind");
        if (!kind.isSpare()) {
            out.key("on", about("The bike or the part it is mounted on now", SchemaFragments.text()));
        }
        details(out, kind);
        return out.shape();
    }

    private static void details(SchemaFragments.KeyBlock to, PartKind kind) {
        for (PartDetail detail : kind.details()) {
            Map<String, Object> shape = shape(detail);
            to.key(detail.written(), detail.about().isEmpty() ? shape : about(detail.about(), shape));
        }
    }

    private static Map<String, Object> shape(PartDetail detail) {
        return switch (detail.form()) {
            case AMOUNT -> amount(detail.dimension());
            case NUMBER -> amount(Dimension.NUMBER);
            case WHOLE -> SchemaFragments.whole((int) detail.least(), (int) detail.most());
            case YES_NO -> SchemaFragments.yesNo();
            case WORD -> SchemaFragments.word(detail.words());
            case WORDS -> SchemaFragments.oneOrMore(SchemaFragments.word(detail.words()));
            case LABEL -> SchemaFragments.text();
            case LABELS -> SchemaFragments.oneOrMore(SchemaFragments.text());
            case TEETH -> SchemaFragments.oneOrMore(SchemaFragments.whole((int) detail.least(), (int) detail.most()));
            case DAY -> SchemaFragments.pattern("[0-9]{4}-[0-9]{2}-[0-9]{2}");
            case SIZES -> SchemaFragments.oneOrMore(amount(detail.dimension()));
            case INTERVALS -> SchemaFragments.oneOrMore(interval());
            case CLEARANCES -> SchemaFragments.anyOf(amount(Dimension.LENGTH), SchemaFragments.listOf(clearance()));
            case CHART -> SchemaFragments.listOf(chartRow());
        };
    }

    private static Map<String, Object> interval() {
        return new SchemaFragments.KeyBlock().key("job", about("What is done", SchemaFragments.text())).key("hours", amount(Dimension.TIME))
                .key("length", amount(Dimension.LENGTH)).key("days", SchemaFragments.whole(1, 7300)).required("job").shape();
    }

    private static Map<String, Object> stock() {
        Map<String, Object> quantity = SchemaFragments.anyOf(SchemaFragments.whole(0, 10_000), amount(Dimension.VOLUME));
        return new SchemaFragments.KeyBlock()
                .key("name", about("A name of its own", SchemaFragments.text()))
                .key("kind", about("What it is", SchemaFragments.word(StockItem.KINDS)))
                .key("quantity", about("Pieces, or the volume of a liquid, as counted", quantity))
                .key("keep", about("How much should always be there", quantity))
                .key("for", about("Bikes and parts it is for; all where it is not given", SchemaFragments.oneOrMore(SchemaFragments.text())))
                .key("price", about("Of one piece, or of a litre", amount(Dimension.NUMBER)))
                .key("counted", about("The day it was counted; before the log begins where it is not given", SchemaFragments.pattern("[0-9]{4}-[0-9]{2}-[0-9]{2}")))
                .required("name", "kind", "quantity").shape();
    }

    private static Map<String, Object> chartRow() {
        return new SchemaFragments.KeyBlock().key("rider", amount(Dimension.MASS)).key("pressure", amount(Dimension.PRESSURE))
                .required("rider", "pressure").shape();
    }

    private static Map<String, Object> clearance() {
        return new SchemaFragments.KeyBlock().key("bead seat", amount(Dimension.LENGTH)).key("width", amount(Dimension.LENGTH))
                .required("bead seat", "width").shape();
    }
}
