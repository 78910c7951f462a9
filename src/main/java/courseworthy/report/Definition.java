package courseworthy.report;

import java.util.List;

/**
 * A row of a list of definitions: a label, its value, and what is to be said beside the value.
 *
 * @param remark  such as how sure the value is; may be empty
 * @param details lines below the row
 */
public record Definition(RichText label, RichText value, RichText remark, List<RichText> details) {

    public Definition {
        details = List.copyOf(details);
    }

    public static Definition of(String label, RichText value) {
        return new Definition(RichText.of(label), value, RichText.EMPTY, List.of());
    }

    public static Definition of(String label, String value) {
        return of(label, RichText.of(value));
    }

    public Definition remark(RichText text) {
        return new Definition(label, value, text, details);
    }

    public Definition details(List<RichText> lines) {
        return new Definition(label, value, remark, lines);
    }
}
