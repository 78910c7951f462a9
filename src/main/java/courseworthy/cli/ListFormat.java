package courseworthy.cli;

import courseworthy.Courseworthy.Format;
import java.util.Locale;

/** The formats of what is not made to be printed. */
enum ListFormat {
    TEXT(Format.TEXT), JSON(Format.JSON);

    private final Format format;

    ListFormat(Format format) {
        this.format = format;
    }

    /** The format; text where none is given. */
    static Format format(ListFormat given) {
        return given == null ? Format.TEXT : given.format;
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
