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
public record MeasureScale(Kind kind, Resolution resolution, List<String> words, List<Long> bands) {

    /** Kinds of values. */
    public enum Kind { QUANTITY, WORDS, OPTIONS, YES_NO }

    static final List<String> NO_YES = List.of("no", "yes");

    public static MeasureScale quantity(Resolution resolution) {
        return new MeasureScale(Kind.QUANTITY, resolution, List.of(), List.of());
    }

    public static MeasureScale banded(Resolution resolution, List<String> words, List<Long> bands) {
        return new MeasureScale(Kind.QUANTITY, resolution, words, bands);
    }

    public static MeasureScale words(List<String> words) {
        return new MeasureScale(Kind.WORDS, null, List.copyOf(words), List.of());
    }

    public static MeasureScale options(List<String> options) {
        return new MeasureScale(Kind.OPTIONS, null, List.copyOf(options), List.of());
    }

    public static MeasureScale yesNo() {
        return new MeasureScale(Kind.YES_NO, null, NO_YES, List.of());
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
