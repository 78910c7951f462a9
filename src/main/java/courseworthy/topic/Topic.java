package courseworthy.topic;

import courseworthy.units.Amount;
import courseworthy.units.PressureSteps;
import courseworthy.units.Resolution;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

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
 * @param group      the topics that it is shown among
 * @param work       what kind of work a change on it means
 * @param concerns   what hangs on it besides speed
 * @param isLimit    whether its value is a limit to keep to, such as a least thickness, and not what is fitted or set
 * @param notch      by how many ticks a value is another one to a rider or mechanic: one part a size from another, one setting from another that is felt (practice); 1 for options
 */
public record Topic(String name, String about, Kind kind, Resolution resolution, long step, long least, long most,
        List<String> options, long standard, int layer, Safe safe, List<Applies> applies, TopicGroup group, Work work, Set<Concern> concerns, boolean isLimit, long notch) {

    /** Quantities and ordered options can be bounded; options can be avoided or ruled out. */
    public enum Kind { QUANTITY, ORDERED, OPTIONS }

    /** The side on which an error hurts least. */
    public enum Safe { UP, DOWN, NONE }

    /** The topic applies only where an earlier topic has one of some options. */
    public record Applies(Topic topic, List<String> options) {
    }

    /** A value as text with its unit. */
    public String text(long value) {
        return kind == Kind.QUANTITY ? resolution.text(value) : options.get((int) value);
    }

    /** A value as a mechanic says it: heights of the bar against the saddle, {@code 25 mm below the saddle}; else as its text. */
    public String phrase(long value) {
        if (!equals(Topics.BAR_HEIGHT)) {
            return text(value);
        }
        return value == 0 ? "level with the saddle" : resolution.text(Math.abs(value)) + (value < 0 ? " below" : " above") + " the saddle";
    }

    /** What comes before a value that is a limit to keep, {@code at least }; empty where the value itself is recommended. */
    public String limit() {
        return !isLimit ? "" : safe == Safe.UP ? "at least " : "at most ";
    }

    /** Whether it is a damper's setting, which is counted open from fully closed. */
    public boolean isDamping() {
        return equals(Topics.REBOUND) || equals(Topics.COMPRESSION);
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

    /** The end of the bike that its name begins with; null where it has none. */
    public End end() {
        return End.in(name);
    }

    /** The topic of the same at the other end of the bike; null where there is none. */
    public Topic otherEnd() {
        return end() == null ? null : at(end().other());
    }

    /** The topic of the same at an end of the bike, for one that names an end; null where there is none. */
    public Topic at(End at) {
        return Topics.find(at.word() + name.substring(end().word().length()));
    }

    /** What is at both ends without their names: {@code tyre width}; the whole name where it does not name an end. */
    public String plain() {
        return end() == null ? name : name.substring(end().word().length() + 1);
    }

    /** Whether another is the same at the rear of what this is at the front. */
    public boolean isFrontOf(Topic other) {
        return end() == End.FRONT && other.equals(otherEnd());
    }

    /** By name, written out as in other records that are compared in every run: what the language supplies is slow to start. */
    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Topic that && name.equals(that.name);
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

    /** A topic of a quantity in steps of a resolution. */
    public static Builder quantity(String name, Unit unit, String resolution) {
        return new Builder(name, Kind.QUANTITY, Resolution.of(unit, resolution), List.of());
    }

    /** A topic of options, from least to most. */
    public static Builder ordered(String name, String... options) {
        return new Builder(name, Kind.ORDERED, null, List.of(options));
    }

    /** A topic of options without order. */
    public static Builder options(String name, String... options) {
        return new Builder(name, Kind.OPTIONS, null, List.of(options));
    }

    /** A builder of a topic, which has no safe side and applies always unless that is said. */
    public static final class Builder {

        private final String name;
        private final Kind kind;
        private final Resolution resolution;
        private final List<String> options;
        private final List<Applies> applies = new ArrayList<>();
        private String about = "";
        private long step = 1;
        private long least;
        private long most;
        private long standard;
        private int layer = 1;
        private Safe safe = Safe.NONE;
        private TopicGroup group;
        private Work work;
        private Set<Concern> concerns = Set.of();
        private boolean isLimit;
        private long notch;

        private Builder(String name, Kind kind, Resolution resolution, List<String> options) {
            this.name = name;
            this.kind = kind;
            this.resolution = resolution;
            this.options = options;
            most = options.size() - 1;
        }

        /** The smallest and the largest sensible value. */
        public Builder range(String smallest, String largest) {
            least = ticks(smallest);
            most = ticks(largest);
            return this;
        }

        /** The value taken where nothing is said. */
        public Builder standard(String value) {
            standard = kind == Kind.QUANTITY ? ticks(value) : options.indexOf(value);
            if (standard < 0 && kind != Kind.QUANTITY) {
                throw new IllegalStateException(name + " has no option " + value);
            }
            return this;
        }

        /** A decision's rounding step, in ticks. */
        public Builder step(long ticks) {
            step = ticks;
            return this;
        }

        /** When it settles. */
        public Builder layer(int number) {
            layer = number;
            return this;
        }

        public Builder safe(Safe side) {
            safe = side;
            return this;
        }

        /** It applies only where an earlier topic has one of these options. */
        public Builder where(Topic earlier, String... words) {
            applies.add(new Applies(earlier, List.of(words)));
            return this;
        }

        public Builder group(TopicGroup shown) {
            group = shown;
            return this;
        }

        public Builder work(Work change) {
            work = change;
            return this;
        }

        /** What hangs on it besides speed. */
        public Builder concerns(Concern... besides) {
            concerns = Set.of(besides);
            return this;
        }

        /** Its value is a limit to keep to, on its safe side. */
        public Builder limit() {
            isLimit = true;
            return this;
        }

        /** By how many ticks a value is another one to a rider or mechanic, where that is not the rounding step. */
        public Builder notch(long ticks) {
            notch = ticks;
            return this;
        }

        /** What is decided, in the trade's words. */
        public Builder about(String words) {
            about = words;
            return this;
        }

        public Topic build() {
            return new Topic(name, about, kind, resolution, step, least, most, options, standard, layer, safe, List.copyOf(applies), group,
                    work, concerns, isLimit, notch == 0 ? step : notch);
        }

        private long ticks(String number) {
            Unit unit = resolution.unit();
            String symbol = unit == Unit.MIN ? Unit.H.symbol() : unit.symbol();
            try {
                return resolution.ticks(Amount.parse(symbol.isEmpty() ? number : number + " " + symbol, unit.dimension()));
            } catch (Amount.NotAnAmount e) {
                throw new IllegalStateException(number, e);
            }
        }
    }
}
