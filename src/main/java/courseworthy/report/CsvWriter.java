package courseworthy.report;

import courseworthy.problem.TextSanitiser;
import java.util.List;

/**
 * Writes comma-separated values (RFC 4180, with line feeds). A text that a spreadsheet would take for a formula gets an apostrophe before it.
 */
final class CsvWriter {

    private final StringBuilder out = new StringBuilder();
    private final int columns;

    /** @param head the names of the columns */
    CsvWriter(List<String> head) {
        columns = head.size();
        row(head);
    }

    /** A row; cells that it lacks at its end are empty. */
    void row(List<String> cells) {
        for (int i = 0; i < columns; i++) {
            out.append(i == 0 ? "" : ",").append(i < cells.size() ? cell(cells.get(i)) : "");
        }
        out.append('\n');
    }

    String text() {
        return out.toString();
    }

    private static String cell(String text) {
        String plain = TextSanitiser.line(text);
        boolean figure = !plain.isEmpty() && plain.chars().allMatch(c -> c >= '0' && c <= '9' || c == '.' || c == '-');
        String safe = !figure && !plain.isEmpty() && "=+-@".indexOf(plain.charAt(0)) >= 0 ? "'" + plain : plain;
        return safe.contains(",") || safe.contains("\"") ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }
}
