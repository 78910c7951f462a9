package courseworthy.problem;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Collects every fault of a reading, so that the user sees them all at once; and what was read, so that no result is written over it. Not
 * safe for use by several threads.
 */
public final class Faults {

    /** Written out: comparators put together from lambdas cost every run some milliseconds. */
    private static final Comparator<Fault> BY_PLACE = new Comparator<>() {
        @Override
        public int compare(Fault one, Fault other) {
            int byFile = one.file().compareTo(other.file());
            return byFile != 0 ? byFile : Integer.compare(one.line(), other.line());
        }
    };

    /** A key with no value after it: found, expected, and how to mend it. */
    public static final String NOTHING = "nothing";
    public static final String ANY_VALUE = "a value";
    public static final String EMPTY = "Write the value after the colon, or remove the line.";

    /** After so many the rest is counted: nobody mends more at one sitting. */
    private static final int MOST = 1000;

    private final Set<Fault> all = new LinkedHashSet<>();
    private int more;
    private final Set<Path> read = new LinkedHashSet<>();

    /** Adds a fault; the same fault twice counts once, and an empty value has one fault, with what would be right there. */
    public void add(Fault fault) {
        Fault generic = fault.found().equals("\"\"") ? Fault.of(fault.file(), fault.line(), fault.field(), NOTHING, ANY_VALUE, EMPTY) : null;
        if (generic != null && all.remove(generic)) {
            all.add(Fault.of(fault.file(), fault.line(), fault.field(), NOTHING, fault.expected(), EMPTY));
        } else if (all.size() < MOST) {
            all.add(fault);
        } else if (fault.severity() == Fault.Severity.FAULT) {
            more++;
        }
    }

    /** Adds a fault that stops the work. */
    public void add(String file, int line, String field, String found, String expected, String mend) {
        add(Fault.of(file, line, field, found, expected, mend));
    }

    public void addAll(Faults others) {
        others.all.forEach(this::add);
        more += others.more;
        read.addAll(others.read);
    }

    /** Notes that a file, or whatever lies in a folder, is read. */
    public void reads(Path path) {
        read.add(path);
    }

    /** Files and folders read. */
    public Set<Path> read() {
        return Set.copyOf(read);
    }

    /** True where at least one fault stops the work. */
    public boolean stop() {
        if (more > 0) {
            return true;
        }
        for (Fault fault : all) {
            if (fault.severity() == Fault.Severity.FAULT) {
                return true;
            }
        }
        return false;
    }

    /** Those that stop the work, by file and line. */
    public List<Fault> faults() {
        List<Fault> out = only(Fault.Severity.FAULT);
        if (more > 0) {
            String file = out.isEmpty() ? "" : out.get(out.size() - 1).file();
            out.add(Fault.of(file, 0, "", more + " more faults", "fewer", ""));
        }
        return out;
    }

    /** Those that do not stop the work, by file and line. */
    public List<Fault> warnings() {
        return only(Fault.Severity.WARNING);
    }

    /** @throws BadInput with all faults where there is at least one that stops the work */
    public void throwIfAny() {
        if (stop()) {
            throw new BadInput(faults());
        }
    }

    private List<Fault> only(Fault.Severity severity) {
        List<Fault> out = new ArrayList<>();
        for (Fault fault : all) {
            if (fault.severity() == severity) {
                out.add(fault);
            }
        }
        out.sort(BY_PLACE);
        return out;
    }
}
