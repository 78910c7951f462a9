package courseworthy.analysis;

import courseworthy.analysis.Finding.Kind;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What is to be looked at in a sheet.
 *
 * @param list     remarks in the order of the sheet's rows, for one row the gravest first; only so many of a kind
 * @param unlisted how many more there are of each kind that has more
 */
public record Findings(List<Finding> list, Map<Kind, Integer> unlisted) {

    public Findings {
        list = List.copyOf(list);
        unlisted = unlisted.isEmpty() ? Map.of() : new EnumMap<>(unlisted);
    }

    /** How many there are of a kind, listed or not. */
    public int count(Kind kind) {
        int out = unlisted.getOrDefault(kind, 0);
        for (Finding remark : list) {
            out += remark.kind() == kind ? 1 + remark.more() : 0;
        }
        return out;
    }

    /** How many there are of all kinds. */
    public int count() {
        int out = 0;
        for (Kind kind : Kind.values()) {
            out += count(kind);
        }
        return out;
    }
}
