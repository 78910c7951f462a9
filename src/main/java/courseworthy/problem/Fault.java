package courseworthy.problem;

import java.util.Objects;

/**
 * One thing wrong in what a user wrote. Reads {@code file:line: field: found X, expected Y}, with the mend on a second line.
 *
 * @param file     the path as the user typed it, or {@code rules/...} for the shipped rules
 * @param line     1-based line, or 0 where no line applies (a missing file)
 * @param field    the key or element at fault; may be empty
 * @param found    what stands there, quoted where it is the user's text
 * @param expected what is accepted there
 * @param mend     how to put it right, as an instruction; may be empty
 * @param severity a warning is shown but does not stop the work
 */
public record Fault(String file, int line, String field, String found, String expected, String mend, Severity severity) {

    /** Whether the work can go on. */
    public enum Severity { FAULT, WARNING }

    /** Longest of what is shown, in characters: what a file says may be as long as the file. */
    private static final int LONGEST_FIELD = 80;
    private static final int LONGEST_FOUND = 400;
    private static final int LONGEST_EXPECTED = 4000;

    public Fault {
        Objects.requireNonNull(file);
        Objects.requireNonNull(field);
        Objects.requireNonNull(found);
        Objects.requireNonNull(expected);
        Objects.requireNonNull(mend);
        Objects.requireNonNull(severity);
        field = cut(field, LONGEST_FIELD);
        found = cut(found, LONGEST_FOUND);
        expected = cut(expected, LONGEST_EXPECTED);
        mend = cut(mend, LONGEST_EXPECTED);
        if (line < 0) {
            throw new IllegalArgumentException("line " + line);
        }
    }

    private static String cut(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 3) + "...";
    }

    /** A fault that stops the work. */
    public static Fault of(String file, int line, String field, String found, String expected, String mend) {
        return new Fault(file, line, field, found, expected, mend, Severity.FAULT);
    }

    /** A warning: shown, but the work goes on. */
    public static Fault warning(String file, int line, String field, String found, String expected, String mend) {
        return new Fault(file, line, field, found, expected, mend, Severity.WARNING);
    }

    /** The message as printed: one line, and an indented second line where there is a mend. */
    public String text() {
        StringBuilder out = new StringBuilder(file);
        if (line > 0) {
            out.append(':').append(line);
        }
        out.append(": ");
        if (severity == Severity.WARNING) {
            out.append("warning: ");
        }
        if (!field.isEmpty()) {
            out.append(field).append(": ");
        }
        out.append("found ").append(found);
        if (!expected.isEmpty()) {
            out.append(", expected ").append(expected);
        }
        if (!mend.isEmpty()) {
            out.append("\n    ").append(mend);
        }
        return out.toString();
    }
}
