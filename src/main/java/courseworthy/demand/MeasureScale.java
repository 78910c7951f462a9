package courseworthy.demand;

import courseworthy.ride.Range;
import courseworthy.units.Resolution;
import courseworthy.units.Unit;
import java.util.List;

/**
 * How the values of a measure are counted and written. Values are whole ticks for quantities and positions in the list of words
 * otherwise (for yes and no: 0 no, 1 yes).
 *
 * @param kind       what kind of values
 * @param resolution of a quantity, else null
 * @param words      the words of WORDS (least first) and OPTIONS, and the band names of a banded quantity (least first)
 * @param bands      for a banded quantity, the tick at which each band starts; else empty
 * @param least      the least value there can be: a test beyond it never holds, and a fact beyond it is a slip
 * @param most       the most there can be, likewise
 */
public record MeasureScale(Kind kind, Resolution resolution, List<String> words, List<Long> bands, long least, long most) {

    /** Kinds of values. */
    public enum Kind { QUANTITY, WORDS, OPTIONS, YES_NO }

    /** How roughness is counted: tenths from 0 to 5, with a word from each whole number. */
    static final MeasureScale ROUGHNESS = new MeasureScale(Kind.QUANTITY, Resolution.of(Unit.ONE, "0.1"),
            List.of("smooth", "mixed", "rough", "rugged", "severe"), List.of(0L, 10L, 20L, 30L, 40L), 0, 50);

    /** A quantity in steps of its unit, with its least and its most in that unit. */
    static MeasureScale quantity(Unit unit, String step, double least, double most) {
        Resolution resolution = Resolution.of(unit, step);
        double tick = resolution.step().doubleValue();
        return quantity(resolution, Math.round(least / tick), Math.round(most / tick));
    }

    /** A quantity with its least and its most in ticks. */
    public static MeasureScale quantity(Resolution resolution, long least, long most) {
        return new MeasureScale(Kind.QUANTITY, resolution, List.of(), List.of(), least, most);
    }

    public static MeasureScale words(List<String> words) {
        return listed(Kind.WORDS, words);
    }

    public static MeasureScale options(List<String> options) {
        return listed(Kind.OPTIONS, options);
    }

    public static MeasureScale yesNo() {
        return listed(Kind.YES_NO, List.of("no", "yes"));
    }

    private static MeasureScale listed(Kind kind, List<String> words) {
        return new MeasureScale(kind, null, List.copyOf(words), List.of(), 0, words.size() - 1);
    }

    /** The same without words for bands. */
    public MeasureScale withoutBands() {
        return bands.isEmpty() ? this : quantity(resolution, least, most);
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

    /** A range in base units, counted to the nearest tick. */
    MeasureValue value(Range base) {
        return new MeasureValue(resolution.ticks(base.low()), resolution.ticks(base.mid()), resolution.ticks(base.high()));
    }

    /** A value in base units. */
    Range base(MeasureValue value) {
        return new Range(resolution.base(value.low()), resolution.base(value.mid()), resolution.base(value.high()));
    }

    /** The position of a word. */
    int position(String word) {
        int position = words.indexOf(word);
        if (position < 0) {
            throw new IllegalArgumentException(words + " has no " + word);
        }
        return position;
    }
}
