package courseworthy.cli;

import java.util.Locale;

/** How a result is written. */
public enum Format {
    TEXT, JSON, MARKDOWN, CSV, GPX;

    /** As it is typed. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
