package courseworthy.demand;

import courseworthy.units.Resolution;
import java.util.List;

/**
 * How the values of a measure are counted and written. Values are whole ticks for quantities and positions in the list of words
 * otherwise (for yes and no: 0 no, 1 yes).
 *
 * @param kind       what kind of values
 * @param resolution of a quantity, else null
 * @param words      the words of WORDS (least first) and OPTIONS, and the band names of a banded quantity (least first)
 * @param bands      for a banded quantity, the tick at which each band starts; else empty
 */
public record Scale(Kind kind, Resolution resolution, List<String> words, List<Long> bands) {

    /** Kinds of values. */
    public enum Kind { QUANTITY, WORDS, OPTIONS, YES_NO }

    static final List<String> NO_YES = List.of("no", "yes");

    public static Scale quantity(Resolution resolution) {
        return new Scale(Kind.QUANTITY, resolution, List.of(), List.of());
    }

    public static Scale banded(Resolution resolution, List<String> words, List<Long> bands) {
        return new Scale(Kind.QUANTITY, resolution, words, bands);
    }

    public static Scale words(List<String> words) {
        return new Scale(Kind.WORDS, null, List.copyOf(words), List.of());
    }

    public static Scale options(List<String> options) {
        return new Scale(Kind.OPTIONS, null, List.copyOf(options), List.of());
    }

    public static Scale yesNo() {
        return new Scale(Kind.YES_NO, null, NO_YES, List.of());
    }

    /** A value as text with its unit; a banded quantity with its word. */
    public String text(long value) {
        if (kind != Kind.QUANTITY) {
            return words.get((int) value);
        }
        return bands.isEmpty() ? resolution.text(value) : words.get(band(value)) + " (" + resolution.text(value) + ")";
    }

    /** The position of the band a value lies in. */
    public int band(long value) {
        int band = 0;
        for (int i = 1; i < bands.size(); i++) {
            if (value >= bands.get(i)) {
                band = i;
            }
        }
        return band;
    }
}
