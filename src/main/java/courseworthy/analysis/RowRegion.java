package courseworthy.analysis;

import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A row with where it speaks.
 *
 * @param at     its place in the sheet, 0 first
 * @param row    the row
 * @param region where it speaks; null where that is not reasoned about
 * @param says   the same text for rows that say the same, whatever their force
 * @param topics on what, as the row names them
 */
record RowRegion(int at, Row row, Region region, String says, List<String> topics) {

    static RowRegion of(int at, Row row, Region region) {
        return new RowRegion(at, row, region, says(row), row.topics());
    }

    /** Whether it is held against others. */
    boolean reasoned() {
        return region != null && !region.isEmpty();
    }

    static String says(Row row) {
        TreeSet<String> out = new TreeSet<>();
        for (Saying saying : row.sayings()) {
            out.add(says(saying));
        }
        List<String> all = new ArrayList<>(out);
        if (row.task() != null) {
            all.add(row.task().what() + '\n' + row.task().due() + '\n' + row.task().find());
        }
        return String.join("\n", all);
    }

    static String says(Saying saying) {
        return saying.topic().name() + ' ' + saying.verb() + ' ' + value(saying);
    }

    private static String value(Saying saying) {
        if (saying.source() instanceof Saying.Literal literal) {
            return Long.toString(literal.value());
        }
        Saying.Times times = (Saying.Times) saying.source();
        return times.factor().stripTrailingZeros().toPlainString() + ' ' + times.measure().name();
    }
}
