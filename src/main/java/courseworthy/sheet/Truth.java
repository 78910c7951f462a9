package courseworthy.sheet;

/** Kleene's three truth values: what is not known makes a condition unknown only where it matters. */
public enum Truth {
    TRUE, FALSE, UNKNOWN;

    public static Truth of(boolean truth) {
        return truth ? TRUE : FALSE;
    }

    public Truth not() {
        return switch (this) {
            case TRUE -> FALSE;
            case FALSE -> TRUE;
            case UNKNOWN -> UNKNOWN;
        };
    }

    public Truth and(Truth other) {
        if (this == FALSE || other == FALSE) {
            return FALSE;
        }
        return this == UNKNOWN || other == UNKNOWN ? UNKNOWN : TRUE;
    }

    public Truth or(Truth other) {
        if (this == TRUE || other == TRUE) {
            return TRUE;
        }
        return this == UNKNOWN || other == UNKNOWN ? UNKNOWN : FALSE;
    }
}
