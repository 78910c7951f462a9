package courseworthy.text;

import courseworthy.problem.Faults;
import courseworthy.units.Unit;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a table of comma-separated values (RFC 4180) whose first line names the columns, into one block of keys a row, as if each had been written
 * in YAML. A column's unit may stand in its name, {@code wind (km/h)}; its cells are then bare numbers. An empty cell is a key that is not given.
 */
public final class CsvReader {

    private static final String TABLE = "comma-separated values, the first line naming the columns";
    /** Largest file read, in bytes. */
    private static final int MOST_BYTES = 1_000_000;

    private final String file;
    private final Faults faults;
    private final List<String> names = new ArrayList<>();
    private final List<String> units = new ArrayList<>();

    private CsvReader(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
    }

    /**
     * Reads a file.
     *
     * @param shown its path as the user typed it
     * @return the rows; null where it cannot be read at all
     */
    public static Node.Sequence read(Path path, String shown, Faults faults) {
        byte[] bytes = YamlReader.bytes(path, shown, MOST_BYTES, faults);
        if (bytes != null && bytes.length > MOST_BYTES) {
            faults.add(shown, 0, "", "a file over 1 MB", "at most 1 MB", "Leave out the rows that are not needed.");
            return null;
        }
        String text = bytes == null ? null : YamlReader.decode(bytes, shown, faults);
        return text == null ? null : new CsvReader(shown, faults).rows(text);
    }

    private Node.Sequence rows(String text) {
        List<Node> out = new ArrayList<>();
        int line = 1;
        try (CSVParser parser = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get().parse(new StringReader(text))) {
            for (CSVRecord row : parser) {
                if (line == 1 && !columns(row)) {
                    return null;
                }
                Node block = line == 1 || blank(row) ? null : block(row, line);
                if (block != null) {
                    out.add(block);
                }
                line = (int) parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException e) {
            faults.add(file, line, "", "a quote that is not closed, or followed by more text", "a cell in quotes, with each quote in it doubled",
                    "Write \"a \"\"b\"\" c\" for a \"b\" c.");
            return null;
        }
        if (names.isEmpty()) {
            faults.add(file, 1, "", "an empty file", TABLE, "");
            return null;
        }
        return new Node.Sequence(out, 1, 1);
    }

    private static boolean blank(CSVRecord row) {
        return row.size() == 1 && row.get(0).isBlank();
    }

    /** Takes the names of the columns and their units from the first line. */
    private boolean columns(CSVRecord row) {
        if (row.size() == 1 && (row.get(0).indexOf(';') >= 0 || row.get(0).indexOf('\t') >= 0)) {
            faults.add(file, 1, "", "columns separated by semicolons or tabs", TABLE, "Save it with commas, and decimals with points.");
            return false;
        }
        for (String cell : row) {
            String name = cell.strip();
            int open = name.endsWith(")") ? name.lastIndexOf('(') : -1;
            String unit = open < 0 ? "" : name.substring(open + 1, name.length() - 1).strip();
            name = open < 0 ? name : name.substring(0, open).strip();
            if (!unit.isEmpty() && Unit.ofSymbol(unit) == null) {
                faults.add(file, 1, name, "\"" + unit + "\" as its unit", "a unit in brackets, such as wind (km/h)", "");
                return false;
            }
            if (name.isEmpty() || names.contains(name)) {
                faults.add(file, 1, name, name.isEmpty() ? "a column without a name" : "a second column of this name", "a name of its own for each column", "");
                return false;
            }
            names.add(name);
            units.add(unit);
        }
        return true;
    }

    private Node block(CSVRecord row, int line) {
        if (row.size() != names.size()) {
            faults.add(file, line, "", row.size() + (row.size() == 1 ? " cell" : " cells"), names.size() + ", one for each column",
                    "Put a cell that has a comma in it in quotes.");
            return null;
        }
        List<Node.Entry> entries = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            String cell = row.get(i).strip();
            if (!cell.isEmpty()) {
                String text = units.get(i).isEmpty() ? cell : cell + " " + units.get(i);
                entries.add(new Node.Entry(new Node.Scalar(names.get(i), false, false, line, 1), new Node.Scalar(text, false, false, line, 1)));
            }
        }
        return new Node.Mapping(entries, line, 1);
    }
}
