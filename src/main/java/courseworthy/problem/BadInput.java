package courseworthy.problem;

import java.util.List;

/** What a user gave cannot be used; carries every fault found. Ends a command with exit code 2 and no stack trace. */
public final class BadInput extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    public BadInput(List<Fault> faults) {
        super(faults.isEmpty() ? "" : faults.get(0).text());
        this.faults = List.copyOf(faults);
    }

    public BadInput(Fault fault) {
        this(List.of(fault));
    }

    public List<Fault> faults() {
        return faults;
    }
}
