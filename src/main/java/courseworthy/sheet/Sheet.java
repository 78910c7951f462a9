package courseworthy.sheet;

import courseworthy.claim.SourceLocation;
import java.util.List;

/**
 * A sheet of advice.
 *
 * @param title     its name
 * @param by        who wrote it
 * @param file      the path as typed, or {@code rules/...}
 * @param line      where its title stands
 * @param rows      its rows, in the order written
 * @param leaveOuts the rules it leaves out
 * @param origin    what else it says of itself; empty for the shipped ones
 */
public record Sheet(String title, String by, String file, int line, List<Row> rows, List<LeaveOut> leaveOuts, Origin origin) {

    /**
     * What a sheet says of itself, and what it is known by.
     *
     * @param version which one it is, in its author's words; empty where not written
     * @param licence what others may do with it, as an SPDX identifier or in words; empty where not written
     * @param sha256  the SHA-256 digest of its file, in 64 hexadecimal digits; empty where it was not read from one
     */
    public record Origin(String version, String licence, String sha256) {
        static final Origin NONE = new Origin("", "", "");
    }

    /** A rule left out, and why. */
    public record LeaveOut(String rule, String because, SourceLocation where) {
    }

    public Sheet(String title, String by, String file, int line, List<Row> rows, List<LeaveOut> leaveOuts) {
        this(title, by, file, line, rows, leaveOuts, Origin.NONE);
    }

    public Sheet {
        rows = List.copyOf(rows);
        leaveOuts = List.copyOf(leaveOuts);
    }

    /** The same sheet, read from a file of this digest. */
    Sheet from(String sha256) {
        return new Sheet(title, by, file, line, rows, leaveOuts, new Origin(origin.version(), origin.licence(), sha256));
    }
}
