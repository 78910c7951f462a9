package courseworthy.topic;

import courseworthy.units.PressureSteps;
import courseworthy.units.Resolution;
import courseworthy.units.Unit;
import java.util.List;
import java.util.Objects;

/**
 * One thing to decide. Values are whole ticks of the resolution for quantities, and positions in the list of options otherwise.
 *
 * @param name       as sheets write it, {@code front tyre width}
 * @param about      what is decided, in the trade's words
 * @param kind       quantity, ordered options, or options without order
 * @param resolution of a quantity; null for options
 * @param step       a decision's rounding step, in ticks (1 for options)
 * @param least      smallest sensible value
 * @param most       largest sensible value
 * @param options    the words of options, in order from least; empty for quantities
 * @param standard   the value taken where nothing is said
 * @param layer      when it settles; rules on it may test topics of earlier layers
 * @param safe       the safe side, to which ties and rounding go
 * @param applies    conditions on earlier topics, all of which must hold for the topic to make sense
 */
public record Topic(String name, String about, Kind kind, Resolution resolution, long step, long least, long most,
        List<String> options, long standard, int layer, Safe safe, List<Applies> applies) {

    /** Quantities and ordered options can be bounded; options can be avoided or ruled out. */
    public enum Kind { QUANTITY, ORDERED, OPTIONS }

    /** The side on which an error hurts least. */
    public enum Safe { UP, DOWN, NONE }

    /** The topic applies only where an earlier topic has one of some options. */
    public record Applies(String topic, List<String> options) {

        @Override
        public boolean equals(Object other) {
            return other instanceof Applies that && topic.equals(that.topic) && options.equals(that.options);
        }

        @Override
        public int hashCode() {
            return topic.hashCode();
        }
    }

    /** A value as text with its unit. */
    public String text(long value) {
        return kind == Kind.QUANTITY ? resolution.text(value) : options.get((int) value);
    }

    /** Whether it is a damper's setting, which is counted open from fully closed. */
    public boolean isDamping() {
        return name.equals("rebound") || name.equals("compression");
    }

    /** A decision's rounding step near a value, in ticks: pressures are told in wider steps where they are high. */
    public long step(long value) {
        return resolution == null || resolution.unit() != Unit.BAR ? step
                : Math.max(step, resolution.ticks(PressureSteps.step(resolution.base(value))));
    }

    /** The position of an option, or -1. */
    public int option(String word) {
        return options.indexOf(word);
    }

    /** Written out here, and in other records that are compared in every run: what the language supplies is slow to start. */
    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Topic that && name.equals(that.name) && about.equals(that.about) && kind == that.kind
                && Objects.equals(resolution, that.resolution) && step == that.step && least == that.least && most == that.most
                && options.equals(that.options) && standard == that.standard && layer == that.layer && safe == that.safe
                && applies.equals(that.applies);
    }

    /** By name alone: topics are the keys of many maps. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
